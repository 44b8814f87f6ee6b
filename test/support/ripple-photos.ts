import type { Point, Scale, Strip } from '../../src/signal/ridge-types';
import { even, normal, seen, shoot, type Camera, type Random, type Scene, type Skin } from './photos';
import { shaken } from './sheet-photos';

/*
 * Photographs by ray casting of a wall beside a corner. What stands out on the wall is what a mass on a spring and a damper
 * does after its axis was stopped over a ramp: the equation of motion in steps of a thousandth of a swing, not a damped sine
 * put down. A rule with its marks lies on the wall.
 */
const MM = 1e-3;
const DEGREE = Math.PI / 180;

export interface RippleTrial {
  /** Hz, undamped; share of critical damping; m/s along the wall. */
  readonly natural: number;
  readonly damping: number;
  readonly speed: number;
  /** m/s²: of the ramps at the corner. */
  readonly acceleration: number;
  /** m: from crest to the middle, where the strip begins. */
  readonly height: number;
  readonly yaw: number;
  readonly pitch: number;
  readonly lens: number;
  /** m: height of slow waves without a period. */
  readonly waviness: number;
  readonly noise: number;
  readonly shake: number;
  readonly logo: boolean;
}

export const RIPPLED: RippleTrial = {
  natural: 40,
  damping: 0.05,
  speed: 0.1,
  acceleration: 5,
  height: 0.02 * MM,
  yaw: 0,
  pitch: 0,
  lens: 0,
  waviness: 0,
  noise: 3,
  shake: 0,
  logo: false,
};

const WIDE = 900;
const HIGH = 420;
/** m: what the longer side of the picture sees; the wall's corner stands at the left. */
const VIEW = 60 * MM;

/** m from ripple to ripple at full speed, of a damped swing (Thomson, Theory of Vibration, 2.6). */
const spacingOf = ({ natural, damping, speed }: RippleTrial): number => speed / (natural * Math.sqrt(1 - damping ** 2));

/** What the mass lags behind its axis, as a slope along the wall in equal steps of it, by semi-implicit steps in time. */
function swing(
  trial: RippleTrial,
  step: number,
  count: number,
): { readonly slopes: Float64Array; readonly from: number } {
  const omega = 2 * Math.PI * trial.natural;
  const dt = 1 / (1000 * trial.natural);
  const stops = trial.speed / trial.acceleration;
  let [x, v, along, speed, time] = [0, 0, 0, 0, 0];
  const heights = new Float64Array(count);
  let next = 0;
  while (next < count) {
    const driven = time < stops ? trial.acceleration : 0;
    v += dt * (driven - omega * omega * x - 2 * trial.damping * omega * v);
    x += dt * v;
    speed = Math.min(trial.speed, speed + trial.acceleration * dt);
    along += dt * speed;
    time += dt;
    while (next < count && along >= next * step) heights[next++] = x;
  }
  const from = (trial.speed * trial.speed) / (2 * trial.acceleration);
  const start = Math.round((from + 0.5 * spacingOf(trial)) / step);
  const peak = heights
    .slice(start, start + Math.round(spacingOf(trial) / step))
    .reduce((most, h) => Math.max(most, Math.abs(h)), 1e-12);
  const slopes = Float64Array.from(
    heights,
    (h, i) => ((trial.height / peak) * ((heights[i + 1] ?? h) - (heights[i - 1] ?? h))) / (2 * step),
  );
  return { slopes, from };
}

export interface RippleShot {
  readonly picture: ReturnType<typeof shoot>;
  readonly strip: Strip;
  readonly scale: Scale;
  readonly period: number;
  /** Two marks of the rule as they are, and m between them: what a hand that misses nothing would set. */
  readonly rule: { readonly from: Point; readonly to: Point; readonly length: number };
}

/** One photo, with the strip from past the ramp to where a hand stops, and marks that miss by a pixel and a half. */
export function shootRipples(trial: RippleTrial, random: Random): RippleShot {
  const reach = WIDE * (0.7 + 0.2 * random());
  const camera: Camera = {
    width: WIDE,
    height: HIGH,
    reach,
    distance: (reach * VIEW) / WIDE,
    lens: trial.lens,
    pitch: trial.pitch + even(random, 3 * DEGREE),
    yaw: trial.yaw + even(random, 3 * DEGREE),
    roll: even(random, 3 * DEGREE),
  };
  const corner = -0.46 * VIEW;
  const step = 0.02 * MM;
  const { slopes, from } = swing(trial, step, Math.ceil(VIEW / step));
  const layer = 0.3 * MM;
  const stands = Array.from({ length: 400 }, () => 0.001 * MM * normal(random));
  const waves = Array.from(
    { length: trial.waviness > 0 ? 20 : 0 },
    (_, k) =>
      [
        2 * Math.PI * ((k + 1) / 2 / VIEW),
        (trial.waviness * normal(random)) / Math.max(1, (k + 1) / 2),
        6.3 * random(),
      ] as const,
  );
  const letters = trial.logo
    ? Array.from(
        { length: 6 },
        () => [corner + VIEW * random() * 0.8, even(random, 8 * MM), (1 + 3 * random()) * MM] as const,
      )
    : [];
  const ruleY = 6 * MM;
  const skin = (X: number, Y: number): Skin => {
    if (X < corner) return { albedo: 0.1, slopeX: 0, slopeY: 0 };
    if (Y > ruleY && Y < ruleY + 5 * MM) {
      const at = (X - corner) / MM;
      const isMark = Math.abs(at - Math.round(at)) < 0.12 && Y < ruleY + (Math.round(at) % 5 === 0 ? 4 : 2.5) * MM;
      return { albedo: isMark ? 0.08 : 0.8, slopeX: 0, slopeY: 0 };
    }
    let slopeX = slopes[Math.round((X - corner) / step)] ?? 0;
    for (const [k, a, p] of waves) slopeX += a * k * Math.cos(k * X + p);
    const n = Math.floor(Y / layer) + 200;
    let slopeY = 0.15 * (Y / layer + 200 - n - 0.5) + (((stands[n + 1] ?? 0) - (stands[n] ?? 0)) / layer) * 0.5;
    for (const [lx, ly, r] of letters) {
      const [dx, dy] = [X - lx, Y - ly];
      const d = Math.hypot(dx, dy);
      const edge = Math.exp(-(((d - r) / (0.3 * MM)) ** 2));
      slopeX -= (0.5 * edge * dx) / Math.max(d, 1e-6);
      slopeY -= (0.5 * edge * dy) / Math.max(d, 1e-6);
    }
    return { albedo: 0.6, slopeX, slopeY };
  };
  const scene: Scene = {
    skin,
    radius: 0,
    lamp: [-(150 + 50 * random()) * MM, even(random, 30 * MM), -(35 + 20 * random()) * MM],
    ambient: 0.15 + 0.15 * random(),
    gloss: 0.05 * random(),
    level: 120,
    noise: trial.noise,
  };
  const picture = shaken(shoot(scene, camera, random), trial.shake);
  const begin = corner + from + (0.4 + 0.3 * random()) * spacingOf(trial);
  const end = Math.min(0.46 * VIEW, begin + (9 + 2 * random()) * spacingOf(trial));
  const y = -6 * MM + even(random, 1.5 * MM);
  const missed = (at: Point): Point => ({ x: at.x + even(random, 1.5), y: at.y + even(random, 1.5) });
  const marks = [Math.ceil((begin - corner) / MM), Math.floor((end - corner) / MM)].map((n) => corner + n * MM) as [
    number,
    number,
  ];
  const [from0, to0] = marks.map((X) => seen(camera, [X, ruleY, 0])) as [Point, Point];
  const [a, b] = [missed(from0), missed(to0)];
  const width = 70;
  return {
    picture,
    period: spacingOf(trial),
    rule: { from: from0, to: to0, length: marks[1] - marks[0] },
    strip: { from: seen(camera, [begin, y, 0]), to: seen(camera, [end, y, 0]), width },
    scale: {
      from: a,
      to: b,
      distance: marks[1] - marks[0] + even(random, 0.1 * MM),
      halfWidth: 0.1 * MM,
      pointing: 1.5,
      measured: 'points',
    },
  };
}
