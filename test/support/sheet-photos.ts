import type { GreyPicture } from '../../src/signal/ridge-types';
import { even, shoot, type Camera, type Random, type Scene, type Skin } from './photos';

/*
 * Photographs by ray casting of a printed square on a sheet of paper: the part is a prism of its own height, whose sides and
 * upper face the ray meets before the sheet. Corners of sheet and part as lengths, so that what is sought is known exactly.
 */
const MM = 1e-3;
const DEGREE = Math.PI / 180;

export interface SheetTrial {
  /** Slope by which the part's corner front left is sharper than 90°. */
  readonly skew: number;
  /** m: side, and height over the sheet. */
  readonly side: number;
  readonly height: number;
  /** rad: of the camera off straight down, most; of the part on the sheet, most. */
  readonly tilt: number;
  readonly turn: number;
  readonly lens: number;
  /** m: each corner of the sheet is off by up to this. */
  readonly sheetOff: number;
  /** Grey of the table, of the part, 0 to 1. */
  readonly table: number;
  readonly colour: number;
  /** px: of a shake, along one diagonal. */
  readonly shake: number;
  readonly noise: number;
  /** m: size of the sheet; a cut off one lies half out of the picture. */
  readonly sheet: readonly [number, number];
  readonly aside: number;
  readonly round: boolean;
}

export const SQUARE: SheetTrial = {
  skew: 0, side: 100 * MM, height: 3 * MM, tilt: 6 * DEGREE, turn: 2 * DEGREE, lens: 0, sheetOff: 0.4 * MM, table: 0.2, colour: 0.25,
  shake: 0, noise: 2, sheet: [297 * MM, 210 * MM], aside: 0, round: false,
}; // prettier-ignore

type Corner = readonly [number, number];
const inside = (corners: readonly Corner[], x: number, y: number): boolean =>
  corners.every(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length]!;
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0;
  });

const turned = ([x, y]: Corner, angle: number, [ox, oy]: Corner): Corner => [ox + x * Math.cos(angle) - y * Math.sin(angle), oy + x * Math.sin(angle) + y * Math.cos(angle)]; // prettier-ignore

/** As printed, and turned over; what stays between the two is the sheet as it was cut. */
export function shootPair(trial: SheetTrial, random: Random, width = 1000): readonly [GreyPicture, GreyPicture] {
  const take = onSheet(trial, random, width);
  return [take(trial.skew), take(-trial.skew)];
}

/** The first of the two alone. */
export const shootSheet = (trial: SheetTrial, random: Random, width: number): GreyPicture => onSheet(trial, random, width)(trial.skew); // prettier-ignore

/** One sheet, and a camera that takes a part of some skew on it. */
function onSheet(trial: SheetTrial, random: Random, width: number): (skew: number) => GreyPicture {
  const [w, h] = [trial.sheet[0] / 2, trial.sheet[1] / 2];
  const off = () => even(random, trial.sheetOff);
  const sheet: Corner[] = [[-w + off(), -h + off()], [w + off(), -h + off()], [w + off(), h + off()], [-w + off(), h + off()]]; // prettier-ignore
  return (skew) => {
    const height = Math.round((width * 3) / 4);
    const reach = width * (0.7 + 0.15 * random());
    const camera: Camera = {
      width, height, reach, distance: ((0.39 + 0.03 * random()) * reach) / width, lens: trial.lens,
      pitch: even(random, trial.tilt), yaw: even(random, trial.tilt), roll: even(random, 4 * DEGREE),
    }; // prettier-ignore
    const s = trial.side / 2;
    const turn = even(random, trial.turn);
    const place: Corner = [even(random, 15 * MM) + trial.aside, even(random, 10 * MM)];
    // Y runs down here: front is at the bottom, and a corner front left that is sharp has its back leaning right.
    const lean = s * skew;
    const part = ([[-s + lean, -s], [s + lean, -s], [s - lean, s], [-s - lean, s]] as const).map((one) => turned(one, turn, place)); // prettier-ignore
    const moved = sheet.map((one): Corner => [one[0] + trial.aside, one[1]]);
    const onPart = (x: number, y: number) => (trial.round ? Math.hypot(x - place[0], y - place[1]) < s : inside(part, x, y)); // prettier-ignore
    // The camera's place, as photos.ts has it: rays towards the sheet pass the upper face before.
    const [cp, sp, cy, sy] = [Math.cos(camera.pitch), Math.sin(camera.pitch), Math.cos(camera.yaw), Math.sin(camera.yaw)]; // prettier-ignore
    const eye = [-camera.distance * sy * cp, -camera.distance * sp, -camera.distance * cy * cp] as const;
    const skin = (X: number, Y: number): Skin => {
      // The ray from the eye to (X, Y, 0), where it is at the part's height, and in steps down its side.
      const near = Math.max(Math.abs(X - place[0]), Math.abs(Y - place[1])) < 1.2 * s + 2 * trial.height;
      const at = (z: number): boolean => {
        if (!near) return false;
        const t = -z / -eye[2];
        return onPart(X + (eye[0] - X) * t, Y + (eye[1] - Y) * t);
      };
      if (at(-trial.height)) return { albedo: trial.colour, slopeX: 0, slopeY: 0 };
      if ([0.75, 0.5, 0.25, 0].some((share) => at(-trial.height * share))) return { albedo: 0.8 * trial.colour, slopeX: 0, slopeY: 0 }; // prettier-ignore
      return { albedo: inside(moved, X, Y) ? 0.85 : trial.table, slopeX: 0, slopeY: 0 };
    };
    const scene: Scene = {
      skin, radius: 0, lamp: [even(random, 300 * MM), even(random, 300 * MM), -800 * MM], ambient: 0.6, gloss: 0, level: 150, noise: trial.noise,
    }; // prettier-ignore
    return shaken(shoot(scene, camera, random), trial.shake);
  };
}

/** Means along a diagonal of so many pixels. */
export function shaken(picture: GreyPicture, by: number): GreyPicture {
  if (by < 1) return picture;
  const { width, height, luminance } = picture;
  const out = Float32Array.from(luminance, (_, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    let sum = 0;
    for (let k = 0; k < by; k += 1) {
      const o = k - (by >> 1);
      sum += luminance[Math.min(height - 1, Math.max(0, y + o)) * width + Math.min(width - 1, Math.max(0, x + o))]!;
    }
    return sum / by;
  });
  return { width, height, luminance: out };
}
