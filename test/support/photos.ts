import type { GreyPicture, Point } from '../../src/signal/ridge-types';

/*
 * Photographs by ray casting, for trials of what reads pictures; made by other means than test/support/walls.ts, which the
 * ridges were tuned on. Each pixel's ray goes back through the lens (Brown's radial term, solved by Newton), meets a plane or
 * a cylinder, and takes the light that the surface there throws back: Lambert's law on the relief's own normal, lit by a
 * small lamp low along the wall, with its falloff by the square of the distance, some light from all round and a weak gloss.
 * Then noise that grows with the light, and the rounding of JPEG's coefficients (ITU-T T.81, table K.1 of luminance, from
 * memory). Lengths in m, x right, y down, z away from the camera's side.
 */

export type Vec = readonly [number, number, number];
export type Random = () => number;

export const even = (random: Random, most: number): number => (2 * random() - 1) * most;
export const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** A pinhole camera with a lens that bends: looks at the origin, `distance` m before it. */
export interface Camera {
  readonly width: number;
  readonly height: number;
  /** px. */
  readonly reach: number;
  readonly distance: number;
  /** rad: about x, y and the line of sight. */
  readonly pitch: number;
  readonly yaw: number;
  readonly roll: number;
  /** Brown's first radial coefficient in units of the reach: seen at r (1 + lens r²). Below 0: a barrel. */
  readonly lens: number;
}

/** Camera's axes in the world, and its place. */
function rig(camera: Camera) {
  const [cp, sp] = [Math.cos(camera.pitch), Math.sin(camera.pitch)];
  const [cy, sy] = [Math.cos(camera.yaw), Math.sin(camera.yaw)];
  const [cr, sr] = [Math.cos(camera.roll), Math.sin(camera.roll)];
  const away: Vec = [sy * cp, sp, cy * cp];
  const flatRight: Vec = [cy, 0, -sy];
  const flatDown: Vec = [-sy * sp, cp, -cy * sp];
  const mix = (a: number, b: number): Vec => [
    a * flatRight[0] + b * flatDown[0],
    a * flatRight[1] + b * flatDown[1],
    a * flatRight[2] + b * flatDown[2],
  ];
  const place: Vec = [-camera.distance * away[0], -camera.distance * away[1], -camera.distance * away[2]];
  return { right: mix(cr, sr), down: mix(-sr, cr), away, place };
}

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Where a place in the world is seen, px. */
export function seen(camera: Camera, at: Vec): Point {
  const { right, down, away, place } = rig(camera);
  const from: Vec = [at[0] - place[0], at[1] - place[1], at[2] - place[2]];
  const depth = dot(from, away);
  const x = dot(from, right) / depth;
  const y = dot(from, down) / depth;
  const bent = 1 + camera.lens * (x * x + y * y);
  return {
    x: (camera.width - 1) / 2 + camera.reach * x * bent,
    y: (camera.height - 1) / 2 + camera.reach * y * bent,
  };
}

/** The direction, not of unit length, in which a place in the picture looks. */
function rayOf(camera: Camera, { right, down, away }: ReturnType<typeof rig>, px: number, py: number): Vec {
  const x = (px - (camera.width - 1) / 2) / camera.reach;
  const y = (py - (camera.height - 1) / 2) / camera.reach;
  const bent = Math.hypot(x, y);
  let r = bent;
  for (let k = 0; k < 6; k += 1) r -= (r + camera.lens * r ** 3 - bent) / Math.max(0.2, 1 + 3 * camera.lens * r * r);
  const s = bent > 0 ? r / bent : 1;
  return [0, 1, 2].map((i) => s * x * right[i]! + s * y * down[i]! + away[i]!) as unknown as Vec;
}

/** What a wall looks like at a place on it: how much light it throws back, 0 to 1, and how its height changes, m/m. */
export interface Skin {
  readonly albedo: number;
  readonly slopeX: number;
  readonly slopeY: number;
}

export interface Scene {
  /** X along the wall (round a cylinder: along its arc), Y down it. */
  readonly skin: (X: number, Y: number) => Skin;
  /** m: of a cylinder that stands upright and touches the plane z = 0; 0 for a plane. */
  readonly radius: number;
  readonly lamp: Vec;
  /** Share of the lamp's light that comes from all round. */
  readonly ambient: number;
  readonly gloss: number;
  /** Grey value that plain wall at the origin gets. */
  readonly level: number;
  readonly noise: number;
}

/** Light thrown back at a place: Lambert, from all round, and Blinn's gloss. */
function shade(scene: Scene, at: Vec, across: Vec, outward: Vec, skin: Skin, eye: Vec): number {
  // A relief h outward over (X, Y): its normal is outward - hx across - hy down.
  const n: Vec = [
    outward[0] - skin.slopeX * across[0],
    outward[1] - skin.slopeX * across[1] - skin.slopeY,
    outward[2] - skin.slopeX * across[2],
  ];
  const size = Math.hypot(n[0], n[1], n[2]);
  const to: Vec = [scene.lamp[0] - at[0], scene.lamp[1] - at[1], scene.lamp[2] - at[2]];
  const far = Math.hypot(to[0], to[1], to[2]);
  const falloff = dot(scene.lamp, scene.lamp) / far ** 2;
  const lambert = Math.max(0, dot(n, to) / (size * far));
  const half: Vec = [to[0] / far - eye[0], to[1] / far - eye[1], to[2] / far - eye[2]];
  const gloss = Math.max(0, dot(n, half) / (size * Math.hypot(half[0], half[1], half[2]))) ** 40;
  return skin.albedo * (scene.ambient + (1 - scene.ambient) * falloff * lambert) + scene.gloss * falloff * gloss;
}

/** Part of the picture that is rendered; the rest stays grey. */
export interface Window {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** Where in a pixel its light is gathered. */
const SUBS = Array.from({ length: 4 }, (_, k) => [k % 2 === 0 ? -0.25 : 0.25, (k + 0.5) / 4 - 0.5] as const);

/** A picture as a phone would keep it. */
export function shoot(scene: Scene, camera: Camera, random: Random, window?: Window, quality = 85): GreyPicture {
  const { width, height } = camera;
  const luminance = new Float32Array(width * height).fill(scene.level);
  const { x0, x1, y0, y1 } = window ?? { x0: 0, x1: width, y0: 0, y1: height };
  const body = rig(camera);
  const lit = (at: Vec, across: Vec, outward: Vec, skin: Skin, eye: Vec) =>
    shade(scene, at, across, outward, skin, eye);
  const plain = lit([0, 0, 0], [1, 0, 0], [0, 0, -1], { albedo: 0.6, slopeX: 0, slopeY: 0 }, body.away);
  const light = (px: number, py: number): number => {
    const ray = rayOf(camera, body, px, py);
    const eye = ((size) => ray.map((part) => part / size) as unknown as Vec)(Math.hypot(...ray));
    if (scene.radius === 0) {
      const t = -body.place[2] / ray[2];
      const at: Vec = [body.place[0] + t * ray[0], body.place[1] + t * ray[1], 0];
      return lit(at, [1, 0, 0], [0, 0, -1], scene.skin(at[0], at[1]), eye);
    }
    // Its axis stands at z = radius.
    const oz = body.place[2] - scene.radius;
    const a = ray[0] ** 2 + ray[2] ** 2;
    const b = body.place[0] * ray[0] + oz * ray[2];
    const c = body.place[0] ** 2 + oz ** 2 - scene.radius ** 2;
    const under = b * b - a * c;
    if (under <= 0) return 0.3 * plain;
    const t = (-b - Math.sqrt(under)) / a;
    const at: Vec = [body.place[0] + t * ray[0], body.place[1] + t * ray[1], body.place[2] + t * ray[2]];
    const outward: Vec = [at[0] / scene.radius, 0, (at[2] - scene.radius) / scene.radius];
    const round = Math.atan2(outward[0], -outward[2]);
    return lit(at, [-outward[2], 0, outward[0]], outward, scene.skin(scene.radius * round, at[1]), eye);
  };
  for (let y = y0; y < y1; y += 1) {
    for (let x = x0; x < x1; x += 1) {
      let sum = 0;
      for (const [dx, dy] of SUBS) sum += light(x + dx, y + dy);
      const mean = (scene.level * sum) / (SUBS.length * plain);
      luminance[y * width + x] = mean + scene.noise * Math.sqrt(Math.max(0.1, mean / 128)) * normal(random);
    }
  }
  squeeze(luminance, width, { x0, x1, y0, y1 }, quality);
  return { width, height, luminance };
}

const TABLE = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51, 87, 80, 62,
  18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99,
]; // prettier-ignore
const COS = Array.from({ length: 64 }, (_, i) => {
  const [k, x] = [i >> 3, i & 7];
  return (k === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * x + 1) * k * Math.PI) / 16);
});

/** Rounds the coefficients of blocks of 8 by 8 as JPEG does, and the values to whole ones. */
function squeeze(values: Float32Array, width: number, window: Window, quality: number): void {
  const share = quality < 50 ? 50 / quality : 2 - quality / 50;
  const turn = (from: Float64Array, forward: boolean): Float64Array => {
    const half = new Float64Array(64);
    const out = new Float64Array(64);
    for (let r = 0; r < 8; r += 1)
      for (let k = 0; k < 8; k += 1) {
        let sum = 0;
        for (let x = 0; x < 8; x += 1) sum += from[r * 8 + x]! * (forward ? COS[k * 8 + x]! : COS[x * 8 + k]!);
        half[r * 8 + k] = sum;
      }
    for (let c = 0; c < 8; c += 1)
      for (let k = 0; k < 8; k += 1) {
        let sum = 0;
        for (let y = 0; y < 8; y += 1) sum += half[y * 8 + c]! * (forward ? COS[k * 8 + y]! : COS[y * 8 + k]!);
        out[k * 8 + c] = sum;
      }
    return out;
  };
  const block = new Float64Array(64);
  for (let top = window.y0; top + 8 <= window.y1; top += 8) {
    for (let left = window.x0; left + 8 <= window.x1; left += 8) {
      const at = (i: number) => (top + (i >> 3)) * width + left + (i & 7);
      for (let i = 0; i < 64; i += 1) block[i] = Math.min(255, Math.max(0, values[at(i)]!)) - 128;
      const coefficients = turn(block, true).map((value, i) => {
        const step = Math.max(1, Math.round(TABLE[i]! * share));
        return step * Math.round(value / step);
      });
      const back = turn(coefficients, false);
      for (let i = 0; i < 64; i += 1) values[at(i)] = Math.min(255, Math.max(0, Math.round(back[i]! + 128)));
    }
  }
}
