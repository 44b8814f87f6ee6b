import { cite } from '../../engine/calculator';
import type { InputValue } from '../../formula/outcome';
import { decayRate, heatingRate, temperature } from '../../quantity/kinds';
import { telling, type Told } from '../../engine/order';
import type { ModelData } from '../../engine/spec';
import { lines } from './cells';
import { fitCurve, type Point } from './fit';
import type words from './words/en';

export const LEAST = 5;
/** Of the loss rate in its own value: beyond that a heating curve is as good as straight. */
const TOO_UNSURE = 0.25;

const source = cite('JCGM 100:2008, and Birge, Physical Review 40 (1932) 207', 'leastSquaresExact', true);
const { problem } = telling<typeof words>();

/** Readings with both numbers, whatever line they stand in. */
function pointsOf(inputs: Readonly<Record<string, InputValue | undefined>>): Point[] {
  return lines.flatMap(({ time, temperature: shown }) => {
    const [t, T] = [inputs[time], inputs[shown]];
    return t && T ? [{ t: t.value, T: T.value, ut: t.u, uT: T.u }] : [];
  });
}

/** Rate and loss rate of a recorded curve; the temperature they hold at is chosen so that the two do not correlate. */
export const model = {
  outputs: {
    T_m: {
      measure: temperature.C,
      cite: source,
    },
    r_m: { measure: heatingRate.K_s, cite: source },
    k: { measure: decayRate.per_min, cite: source },
  },
  compute(inputs, choices) {
    // A loss worked out from the surface needs no curve: whatever stands in the table is for the eye, beside the drawing.
    if (choices.loss !== 'heating' && choices.loss !== 'cooling') return { ok: true, values: {} };
    const points = pointsOf(inputs);
    const no = (why: Told) => ({ ok: false, problem: why }) as const;
    if (points.length < LEAST) return no(problem('fewReadings', { least: LEAST, taken: points.length }));
    if (new Set(points.map(({ t }) => t)).size < points.length) return no(problem('sameTime'));
    const fit = fitCurve(points);
    if (!fit) return no(problem('noCurve'));
    if (choices.loss === 'cooling' && fit.rate >= 0) return no(problem('notFalling'));
    if (choices.loss === 'heating') {
      if (fit.rate <= 0) return no(problem('notRising'));
      // A curve that bends upwards has a loss rate below zero, and is refused with the straight ones.
      if (fit.uk > TOO_UNSURE * fit.k) return no(problem('tooStraight'));
    }
    const exact = (value: number, u: number): InputValue => ({ value, u, shape: 'normal' });
    return {
      ok: true,
      values: { T_m: exact(fit.at, 0), r_m: exact(fit.rate, fit.uRate), k: exact(fit.k, fit.uk) },
    };
  },
} as const satisfies ModelData;
