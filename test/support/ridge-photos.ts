import type { Point, Scale, Strip } from '../../src/signal/ridge-types';
import { even, normal, seen, shoot, type Camera, type Random, type Scene, type Skin } from './photos';

const DEGREE = Math.PI / 180;
const MM = 1e-3;

/** What a ridged wall and its photo are drawn from; everything left out is as in `PLAIN`. */
export interface WallTrial {
  readonly ridges: number;
  /** m, height of a ridge from the mean. */
  readonly depth: number;
  /** rad. */
  readonly yaw: number;
  readonly pitch: number;
  readonly lens: number;
  /** m; 0: a flat wall. */
  readonly radius: number;
  /** m: layer height, and how much a layer stands out from its neighbours. */
  readonly layer: number;
  readonly layerSpread: number;
  /** m: how far the rule stands before the wall; a hand says so, off by a rectangle of half a millimetre, and how far the camera was, by a tenth. */
  readonly ruleBefore: number;
  /** A second regular pattern: its period as a share of the ridges', 0 for none. */
  readonly second: number;
  /** m: height of slow waves without a period. */
  readonly waviness: number;
  /** Letters raised on the wall. */
  readonly logo: boolean;
  readonly noise: number;
  /** Whether the marks span the strip, or a part of it. */
  readonly marks: 'long' | 'short';
  /** px: of the strip, as a hand lays it; narrow between letters. */
  readonly strip: number;
}

export const PLAIN: WallTrial = {
  ridges: 12, depth: 0.02 * MM, yaw: 0, pitch: 0, lens: 0, radius: 0, layer: 0.4 * MM, layerSpread: 0.001 * MM,
  ruleBefore: 0, second: 0, waviness: 0, logo: false, noise: 3, marks: 'long', strip: 100,
}; // prettier-ignore

const LONG = 900;
const WIDE = 680;
/** m: what the longer side of the picture sees. */
const VIEW = 120 * MM;

/** Slopes of slow waves: sums of waves of every length over the wall, their height falling off with their number. */
function waves(random: Random, height: number, steep: number): (Y: number) => number {
  const parts = Array.from({ length: 24 }, (_, k) => {
    const n = (k + 1) / 2;
    return {
      k: (2 * Math.PI * n) / VIEW,
      a: (height * normal(random)) / Math.max(1, n) ** steep,
      p: 2 * Math.PI * random(),
    };
  });
  return (Y) => parts.reduce((sum, { k, a, p }) => sum + a * k * Math.cos(k * Y + p), 0);
}

function skinOf(trial: WallTrial, period: number, random: Random): Scene['skin'] {
  const [p1, p2, q] = [random(), random(), random()].map((one) => 2 * Math.PI * one) as [number, number, number];
  const sharp = 0.5 * random();
  const slow = trial.waviness > 0 ? waves(random, trial.waviness, 1 + random()) : () => 0;
  const offset = new Map<number, number>();
  const stands = (n: number) => {
    const known = offset.get(n) ?? trial.layerSpread * normal(random);
    offset.set(n, known);
    return known;
  };
  const k = (2 * Math.PI) / period;
  const start = random();
  const letters = trial.logo ? Array.from({ length: 7 }, () => [even(random, 45 * MM), even(random, 12 * MM), (2 + 5 * random()) * MM] as const) : []; // prettier-ignore
  return (X, Y): Skin => {
    let slopeY = trial.depth * k * (Math.cos(k * Y + p1) + 2 * sharp * Math.cos(2 * k * Y + p2)) + slow(Y);
    if (trial.second > 0) slopeY += (trial.depth * 0.7 * k) / trial.second * Math.cos((k * Y) / trial.second + q); // prettier-ignore
    // Beads: each layer is a shallow arc, and stands out or back from its neighbours.
    const at = Y / trial.layer + start;
    const n = Math.floor(at);
    slopeY += 0.15 * (at - n - 0.5) + ((stands(n + 1) - stands(n)) / trial.layer) * 0.5;
    let slopeX = 0;
    for (const [ly, lx, r] of letters) {
      const [dx, dy] = [X - lx, Y - ly];
      const d = Math.hypot(dx, dy);
      const edge = Math.exp(-(((d - r) / (0.35 * MM)) ** 2));
      slopeX -= (0.5 * edge * dx) / Math.max(d, 1e-6);
      slopeY -= (0.5 * edge * dy) / Math.max(d, 1e-6);
    }
    return { albedo: 0.6, slopeX, slopeY };
  };
}

export interface WallShot {
  readonly picture: ReturnType<typeof shoot>;
  readonly strip: Strip;
  readonly scale: Scale;
  readonly period: number;
}

/** What a person types of a rule: its length, and where it stands before the wall, that brought onto it by like triangles. */
function toldDistance(
  length: number,
  before: number,
  away: number,
  random: Random,
): Pick<Scale, 'distance' | 'halfWidth'> {
  const read = length + even(random, 0.1 * MM);
  if (before === 0) return { distance: read, halfWidth: 0.1 * MM };
  const [b, D] = [before + even(random, 0.5 * MM), away * (1 + even(random, 0.1))];
  const share = Math.hypot((0.1 * MM) / length, ((b / D) * Math.hypot((0.5 * MM) / b, 0.1)) / (1 - b / D));
  return { distance: read / (1 - b / D), halfWidth: (read * share) / (1 - b / D) };
}

/** One photo of a wall with what is laid on it by a hand that misses by a pixel and a half. */
export function shootWall(trial: WallTrial, random: Random): WallShot {
  const reach = LONG * (0.65 + 0.2 * random());
  const camera: Camera = {
    width: WIDE, height: LONG, reach, distance: (reach * VIEW) / LONG, lens: trial.lens,
    pitch: trial.pitch + even(random, 3 * DEGREE), yaw: trial.yaw + even(random, 3 * DEGREE), roll: even(random, 4 * DEGREE),
  }; // prettier-ignore
  const stripX = even(random, 10 * MM);
  const half = 0.4 * VIEW;
  const top = seen(camera, [stripX, -half, 0]);
  const end = seen(camera, [stripX, half, 0]);
  const period = (2 * half) / (trial.ridges * (1 + even(random, 0.05)));
  const scene: Scene = {
    skin: skinOf(trial, period, random), radius: trial.radius,
    lamp: [even(random, 40 * MM), -(180 + 60 * random()) * MM, -(35 + 25 * random()) * MM],
    ambient: 0.15 + 0.15 * random(), gloss: 0.05 * random(), level: 120, noise: trial.noise,
  }; // prettier-ignore
  const left = Math.max(0, Math.floor(Math.min(top.x, end.x)) - trial.strip / 2 - 12);
  const right = Math.min(WIDE, Math.ceil(Math.max(top.x, end.x)) + trial.strip / 2 + 12);
  const window = { x0: left, x1: left + 8 * Math.floor((right - left) / 8), y0: 0, y1: LONG };
  const picture = shoot(scene, camera, random, window);
  const reachY = (trial.marks === 'long' ? 0.95 : 0.45) * half;
  const ruleX = stripX + (12 + 6 * random()) * MM;
  const low = trial.marks === 'long' ? -reachY : even(random, 0.3 * half) - reachY;
  const ends = [low, low + 2 * reachY];
  const missed = (at: Point): Point => ({ x: at.x + even(random, 1.5), y: at.y + even(random, 1.5) });
  const [from, to] = ends.map((Y) => missed(seen(camera, [ruleX, Y, -trial.ruleBefore]))) as [Point, Point];
  return {
    picture, period,
    strip: { from: top, to: end, width: trial.strip },
    scale: { from, to, ...toldDistance(2 * reachY, trial.ruleBefore, camera.distance, random), pointing: 1.5, measured: 'points' },
  }; // prettier-ignore
}
