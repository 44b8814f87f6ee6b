import type { GreyPicture, Point, Scale, Strip } from '../../src/signal/ridge';

/** A wall as printed: everything along it depends on the height alone. Grey values 0 to 255. */
export interface Wall {
  /** m: period of the ridges. */
  readonly period: number;
  /** Amplitudes of the ridges' first, second … harmonic, with their phases (rad). */
  readonly harmonics: readonly { readonly amplitude: number; readonly phase: number }[];
  /** m: layer height, with the amplitude of its lines and the spread of grey from one layer to the next. */
  readonly layer: number;
  readonly layerAmplitude: number;
  readonly layerSpread: number;
}

/** A pinhole camera before the wall: radians off square, pixels. */
export interface Camera {
  readonly width: number;
  readonly height: number;
  /** px: the lens's reach. */
  readonly reach: number;
  /** px per m in the middle of the picture. */
  readonly scale: number;
  /** About the picture's horizontal axis: periods change from top to bottom. */
  readonly pitch: number;
  /** About its vertical axis: the ridges fan out. */
  readonly yaw: number;
  /** About the line of sight: the ridges tilt. */
  readonly roll: number;
}

export interface Light {
  readonly level: number;
  /** Grey from end to end of slow shading along x and y, its bow, and the darkening towards the corners. */
  readonly slopeX: number;
  readonly slopeY: number;
  readonly bow: number;
  readonly corners: number;
  /** Standard deviation of each pixel's own noise. */
  readonly noise: number;
}

/** Two normal numbers from two even ones (Box and Muller). */
export function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

type Axis = readonly [number, number, number];

/** Rows of the camera's axes in the wall's coordinates (x right, y down, z away), roll after yaw after pitch. */
function axes({ pitch, yaw, roll }: Camera): readonly Axis[] {
  const [cp, sp, cy, sy, cr, sr] = [pitch, yaw, roll].flatMap((a) => [Math.cos(a), Math.sin(a)]) as [
    number, number, number, number, number, number,
  ]; // prettier-ignore
  const x = [cy, sy * sp, sy * cp] as const;
  const y = [0, cp, -sp] as const;
  const z = [-sy, cy * sp, cy * cp] as const;
  const mix = (a: number, b: number) => [0, 1, 2].map((i) => a * x[i]! + b * y[i]!) as [number, number, number];
  return [mix(cr, sr), mix(-sr, cr), z];
}

/** Where a place on the wall (m from the middle of the picture, right and down) is seen. */
export function seenAt(camera: Camera, X: number, Y: number): Point {
  const distance = camera.reach / camera.scale;
  const [right, down, away] = axes(camera);
  // The camera stands `distance` before the wall's origin along its own line of sight.
  const at = [X + distance * away![0], Y + distance * away![1], distance * away![2]] as const;
  const along = (axis: Axis) => axis[0] * at[0] + axis[1] * at[1] + axis[2] * at[2];
  const depth = along(away!);
  return {
    x: (camera.width - 1) / 2 + (camera.reach * along(right!)) / depth,
    y: (camera.height - 1) / 2 + (camera.reach * along(down!)) / depth,
  };
}

/** The height on the wall, m, that a place in the picture sees. */
function heightSeer(camera: Camera): (x: number, y: number) => number {
  const distance = camera.reach / camera.scale;
  const [right, down, away] = axes(camera) as [Axis, Axis, Axis];
  return (x, y) => {
    const a = (x - (camera.width - 1) / 2) / camera.reach;
    const b = (y - (camera.height - 1) / 2) / camera.reach;
    const t = (distance * away[2]) / (away[2] + a * right[2] + b * down[2]);
    return t * (away[1] + a * right[1] + b * down[1]) - distance * away[1];
  };
}

/** Sub-rows a pixel's light is gathered from, so that fine layer lines are dimmed as a sensor dims them. */
const SUB_ROWS = 4;

/** A picture of a wall: 8-bit grey values, as a phone would keep them. */
export function photograph(wall: Wall, camera: Camera, light: Light, random: () => number): GreyPicture {
  const { width, height } = camera;
  const luminance = new Uint8ClampedArray(width * height);
  const heightAt = heightSeer(camera);
  const layerPhase = random();
  const grey = new Map<number, number>();
  const ofLayer = (n: number) => {
    const known = grey.get(n) ?? wall.layerSpread * normal(random);
    grey.set(n, known);
    return known;
  };
  for (let y = 0; y < height; y += 1) {
    const down = y / (height - 1) - 0.5;
    for (let x = 0; x < width; x += 1) {
      let seen = 0;
      for (let sub = 0; sub < SUB_ROWS; sub += 1) {
        const Y = heightAt(x, y + (sub + 0.5) / SUB_ROWS - 0.5);
        const turn = (2 * Math.PI * Y) / wall.period;
        for (let k = 0; k < wall.harmonics.length; k += 1) {
          const { amplitude, phase } = wall.harmonics[k]!;
          if (amplitude !== 0) seen += amplitude * Math.cos((k + 1) * turn + phase);
        }
        const layers = Y / wall.layer + layerPhase;
        if (wall.layerAmplitude !== 0) seen += wall.layerAmplitude * Math.cos(2 * Math.PI * layers);
        if (wall.layerSpread !== 0) seen += ofLayer(Math.floor(layers));
      }
      const right = x / (width - 1) - 0.5;
      const shade =
        light.slopeX * right +
        light.slopeY * down +
        light.bow * 4 * down * down -
        light.corners * (right * right + down * down);
      luminance[y * width + x] = light.level + seen / SUB_ROWS + shade + light.noise * normal(random);
    }
  }
  return { width, height, luminance };
}

/** What a random shot is drawn from. */
export interface Shot {
  readonly ridges: number;
  /** Standard deviation of a pixel's noise, and of the grey from layer to layer, in grey values. */
  readonly noise: number;
  readonly layerSpread: number;
  /** Amplitudes of the ridges' first harmonic and of the layers' line, in grey values. */
  readonly amplitude: number;
  readonly layerAmplitude: number;
  /** Half-width of the distance as a share, and of setting a mark in pixels. */
  readonly distance: number;
  readonly pointing: number;
  /** Marks at the strip's ends, or anywhere in the upper and the lower half. */
  readonly marks: 'ends' | 'free';
}

export interface Taken {
  readonly picture: GreyPicture;
  readonly strip: Strip;
  readonly scale: Scale;
  readonly period: number;
  readonly layer: number;
}

const DEGREE = Math.PI / 180;
const HEIGHT = 700;
const WIDTH = 110;
const PER_METRE = 8000;

/**
 * A random shot of a wall: camera up to 5° off square about every axis, uneven light, the marks set by a hand that misses
 * by up to `pointing`, the distance stated wrong by up to `distance`. The picture is a slice of one as wide as high.
 */
export function takeShot(shot: Shot, random: () => number): Taken {
  const even = (most: number) => (2 * random() - 1) * most;
  const turn = () => random() * 2 * Math.PI;
  const period = (0.9 * HEIGHT) / PER_METRE / (shot.ridges * (1 + even(0.05)));
  const layer = Math.max(5 / PER_METRE, period / (8 + 8 * random()));
  const camera: Camera = {
    width: WIDTH,
    height: HEIGHT,
    reach: 0.75 * HEIGHT,
    scale: PER_METRE,
    pitch: even(5 * DEGREE),
    yaw: even(5 * DEGREE),
    roll: even(5 * DEGREE),
  };
  const harmonics = [1, 0.8 * random(), 0.4 * random()].map((share) => ({ amplitude: share * shot.amplitude, phase: turn() })); // prettier-ignore
  const light: Light = {
    level: 128,
    slopeX: even(30),
    slopeY: even(40),
    bow: even(20),
    corners: 30,
    noise: shot.noise,
  };
  const wall: Wall = { period, harmonics, layer, layerAmplitude: shot.layerAmplitude, layerSpread: shot.layerSpread };
  const picture = photograph(wall, camera, light, random);
  const [a, b] = [-1, 1].map((side) =>
    shot.marks === 'ends'
      ? ([0, (side * 0.44 * HEIGHT) / PER_METRE] as const)
      : ([even(40) / PER_METRE, ((side * 0.25 + even(0.2)) * HEIGHT) / PER_METRE] as const),
  ) as [readonly [number, number], readonly [number, number]];
  const measured = random() < 0.5 ? 'across' : 'points';
  const distance = measured === 'across' ? Math.abs(b[1] - a[1]) : Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [from, to] = [a, b].map(([X, Y]) => {
    const seen = seenAt(camera, X, Y);
    return { x: seen.x + even(shot.pointing), y: seen.y + even(shot.pointing) };
  }) as [Point, Point];
  const halfWidth = shot.distance * distance;
  return {
    picture,
    strip: {
      from: { x: WIDTH / 2 + even(5), y: 0.05 * HEIGHT },
      to: { x: WIDTH / 2 + even(5), y: 0.95 * HEIGHT },
      width: 60,
    },
    scale: { from, to, distance: distance + even(halfWidth), halfWidth, pointing: shot.pointing, measured },
    period,
    layer,
  };
}
