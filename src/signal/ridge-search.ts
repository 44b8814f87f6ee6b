import { floorOf, hann, powerOf, powerOfTwo } from './ridge-noise';
import { fitWaves, type Fitted, type Known, type Model } from './ridge-model';
import { slowColumns, without } from './ridge-solve';
import { SLOW } from './ridge-model';

/** The slowest wave looked for, over the strip's length: what is slower is shading. */
const SLOWEST = 1.8;
/** The finest, per value of the profile. */
const FINEST = 0.45;
/** How far a bend is looked for, in standard deviations of what is known beforehand. */
const REACH = 3.5;
/** Power over the floor at which a wave is believed: a strip without ridges reaches it by chance less than once in a hundred (measured). */
const BELIEVED = 20;
const MOST_WAVES = 8;
/** Waves nearer than this, over the strip's length, are one whose strength changes along it. */
const APART = 1.5;

/** The profile as it would be seen square on, at equal steps on the wall. */
export function straightened(values: Float64Array, step: number, bend: number): Float64Array {
  const n = values.length;
  const h = ((n - 1) / 2) * step;
  const first = -h / (1 - bend * h);
  const last = h / (1 + bend * h);
  const count = Math.floor((last - first) / step) + 1;
  return Float64Array.from({ length: count }, (_, i) => {
    const X = first + i * step;
    const at = Math.min(n - 1, Math.max(0, X / (1 - bend * X) / step + (n - 1) / 2));
    const low = Math.min(n - 2, Math.floor(at));
    const a = values[low] ?? 0;
    return a + (at - low) * ((values[low + 1] ?? a) - a);
  });
}

/** A wave found: cycles per middle pixel, the bend at which it is sharpest, its power over the floor. */
interface Found {
  readonly frequency: number;
  readonly bend: number;
  readonly overNoise: number;
  readonly floor: number;
}

function sharpest(
  values: Float64Array,
  known: Known,
  bendAt: { readonly middle: number; readonly spread: number },
  taken: readonly number[],
): Found | undefined {
  const { step } = known;
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
    const square = straightened(values, step, bend);
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
    const score = most - (bend - bendAt.middle) ** 2 / (2 * bendAt.spread ** 2);
    return { frequency: best * perBin, bend, overNoise: most, floor: noise[best] ?? 0, score };
  };
  const square = straightened(values, step, bendAt.middle);
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
  let bendAt = { middle: 0, spread: known.bendSpread };
  let fitted: Fitted | undefined;
  let noise = 0;
  const overNoise: number[] = [];
  for (let k = 0; k < MOST_WAVES; k += 1) {
    const found = sharpest(rest, { ...known, noise }, bendAt, fitted?.model.frequencies ?? []);
    if (!found || found.overNoise < BELIEVED) break;
    if (k === 0) noise = found.floor;
    const start: Model = {
      waves: [...(fitted?.model.waves ?? []), { family: k, multiple: 1 }],
      frequencies: [...(fitted?.model.frequencies ?? []), found.frequency],
      bend: k === 0 ? found.bend : (fitted?.model.bend ?? 0),
    };
    const next = fitWaves(values, start, { ...known, noise });
    if (!next) break;
    fitted = next;
    overNoise.push(found.overNoise);
    rest = fitted.rest;
    const last = fitted.covariance.size - 1;
    const spread = Math.sqrt(fitted.covariance.cells[last * fitted.covariance.size + last] ?? 0);
    bendAt = {
      middle: fitted.model.bend,
      spread: Math.min(known.bendSpread, Math.max(spread, known.bendSpread / 1000)),
    };
  }
  return fitted ? { fitted, overNoise, noise } : undefined;
}
