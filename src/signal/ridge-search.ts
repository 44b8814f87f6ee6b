import { floorOf, hann, powerOf, powerOfTwo } from './ridge-noise';
import { fitWaves, lensMoves, SLOW, type Fitted, type Known, type Model } from './ridge-model';
import { slowColumns, without } from './ridge-solve';
import type { Point } from './ridge-types';

/** The slowest wave looked for, over the strip's length: what is slower is shading. */
const SLOWEST = 1.8;
/** The finest, per value of the profile. */
const FINEST = 0.45;
/** How far a bend is looked for, in standard deviations of what is known beforehand. */
const REACH = 3.5;
/** Power over the floor at which a wave is believed: a strip without ridges reaches it by chance less than once in a hundred (measured). */
const BELIEVED = 20;
/** Lenses under which the first wave is looked for, in standard deviations: between them the fit finds its way. */
const FIRST_LENSES = [0, -1, 1] as const;
/** Layers whose line is smeared take several: the ridges' own must still be among them. */
const MOST_WAVES = 12;
/** Waves nearer than this, over the strip's length, are one whose strength changes along it. */
const APART = 1.5;

/** How perspective and lens bend a strip. */
export interface Bent {
  readonly bend: number;
  readonly lens: number;
  readonly centre: Point;
}

/** The profile as it would be seen square on, at equal steps on the wall. */
export function straightened(values: Float64Array, step: number, { bend, lens, centre }: Bent): Float64Array {
  const n = values.length;
  const h = ((n - 1) / 2) * step;
  const onWall = (u: number) => {
    const U = u + lens * lensMoves(u, centre);
    return U / (1 + bend * U);
  };
  const first = onWall(-h);
  const last = onWall(h);
  const count = Math.floor((last - first) / step) + 1;
  return Float64Array.from({ length: count }, (_, i) => {
    const X = first + i * step;
    const U = X / (1 - bend * X);
    let u = U;
    if (lens !== 0) for (let k = 0; k < 4; k += 1) u = U - lens * lensMoves(u, centre);
    const at = Math.min(n - 1, Math.max(0, u / step + (n - 1) / 2));
    const low = Math.min(n - 2, Math.floor(at));
    const a = values[low] ?? 0;
    return a + (at - low) * ((values[low + 1] ?? a) - a);
  });
}

/** A wave found: cycles per middle pixel, the bend at which it is sharpest, its power over the floor. */
interface Found {
  readonly frequency: number;
  readonly bend: number;
  readonly lens: number;
  readonly overNoise: number;
  readonly floor: number;
}

function sharpest(
  values: Float64Array,
  known: Known,
  bendAt: { readonly middle: number; readonly spread: number; readonly lens: number },
  taken: readonly number[],
): (Found & { readonly score: number }) | undefined {
  const { step, centre } = known;
  const { lens } = bendAt;
  const n = values.length;
  const length = n * step;
  const size = powerOfTwo(2.7 * n);
  const perBin = 1 / (size * step);
  const apart = taken.map(
    (frequency) => [(frequency - APART / length) / perBin, (frequency + APART / length) / perBin] as const,
  );
  const low = Math.max(1, Math.ceil(SLOWEST / length / perBin));
  const high = Math.floor(FINEST / step / perBin);
  const at = (bend: number, floor?: Float64Array): Found & { readonly score: number } => {
    const square = straightened(values, step, { bend, lens, centre });
    const power = powerOf(square, hann(square.length), size);
    const noise = floor ?? floorOf(power, size / n);
    let best = low;
    let most = 0;
    for (let k = low; k <= high; k += 1) {
      const over = (power[k] ?? 0) / (noise[k] ?? Infinity);
      if (over > most && !apart.some(([from, to]) => k > from && k < to)) {
        most = over;
        best = k;
      }
    }
    const score =
      most - (bend - bendAt.middle) ** 2 / (2 * bendAt.spread ** 2) - lens ** 2 / (2 * known.lensSpread ** 2);
    return { frequency: best * perBin, bend, lens, overNoise: most, floor: noise[best] ?? 0, score };
  };
  const square = straightened(values, step, { bend: bendAt.middle, lens, centre });
  const floor = floorOf(powerOf(square, hann(square.length), size), size / n);
  const bendStep = 3.2 / ((FINEST / step) * length ** 2);
  const each = Math.ceil((REACH * bendAt.spread) / bendStep);
  let best = at(bendAt.middle, floor);
  for (let k = -each; k <= each; k += 1) {
    const bend = bendAt.middle + k * bendStep;
    if (Math.abs(bend) * length > 1.2) continue;
    const tried = at(bend, floor);
    if (tried.score > best.score) best = tried;
  }
  return at(best.bend);
}

/** Every wave in the profile, strongest first, fitted together; undefined where there is none. */
export function findWaves(
  values: Float64Array,
  known: Omit<Known, 'noise'>,
): { readonly fitted: Fitted; readonly overNoise: readonly number[]; readonly noise: number } | undefined {
  const slow = slowColumns(values.length, SLOW);
  let rest = without(values, slow);
  let bendAt = { middle: 0, spread: known.bendSpread, lens: 0 };
  let fitted: Fitted | undefined;
  let noise = 0;
  const overNoise: number[] = [];
  for (let k = 0; k < MOST_WAVES; k += 1) {
    const at = (lens: number) =>
      sharpest(rest, { ...known, noise }, { ...bendAt, lens }, fitted?.model.frequencies ?? []);
    const found =
      k > 0
        ? at(bendAt.lens)
        : FIRST_LENSES.map((lens) => at(lens * known.lensSpread)).reduce((a, b) =>
            (b?.score ?? 0) > (a?.score ?? 0) ? b : a,
          );
    if (!found || found.overNoise < BELIEVED) break;
    if (k === 0) noise = found.floor;
    const start: Model = {
      waves: [...(fitted?.model.waves ?? []), { family: k, multiple: 1 }],
      frequencies: [...(fitted?.model.frequencies ?? []), found.frequency],
      bend: k === 0 ? found.bend : (fitted?.model.bend ?? 0),
      lens: k === 0 ? found.lens : (fitted?.model.lens ?? 0),
    };
    const next = fitWaves(values, start, { ...known, noise });
    if (!next) break;
    fitted = next;
    overNoise.push(found.overNoise);
    rest = fitted.rest;
    const last = fitted.covariance.size - 2;
    const spread = Math.sqrt(fitted.covariance.cells[last * fitted.covariance.size + last] ?? 0);
    bendAt = {
      middle: fitted.model.bend,
      lens: fitted.model.lens,
      spread: Math.min(known.bendSpread, Math.max(spread, known.bendSpread / 1000)),
    };
  }
  return fitted ? { fitted, overNoise, noise } : undefined;
}
