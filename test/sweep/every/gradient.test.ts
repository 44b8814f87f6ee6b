import { describe, expect, it } from 'vitest';
import { systemFor } from '../../../src/engine/system';
import { propagate } from '../../../src/formula/propagate';
import type { System } from '../../../src/formula/system';
import { fewCases, generator, nearbyInputs, randomInputs } from '../../support/calculators';
import { compileOnce, inMathjs } from '../../support/mathjs';
import { isWhole, times } from '../../support/sweep';

/*
 * Gradients of every result with respect to every input, through the whole chain, against central differences of the same
 * chain worked out by mathjs on plain numbers. Steps of 1e-3 of the input, half and a quarter of that, extrapolated
 * (Richardson: Press et al., Numerical Recipes, section 5.7, from memory), which leaves an error of order h^6, and
 * the rounding of f over h. Rounding moves f by about 1e-16 of the sum of |slope × input| over all inputs (large numbers may
 * cancel in f itself), so slopes may differ by 1e-6 of themselves, by 1e-9 of that sum over the input, by what the last
 * extrapolation changed, or by what the result's own last bits make of it. A whole number between is held, as the engine holds it. Left out, and counted,
 * is a slope whose steps straddle a kink or leave the domain.
 */
const RELATIVE = 1e-6;
const STEP = 1e-3;
/** Allowed of what all inputs together do to the result. */
const ROUNDING = 1e-9;
/** Differences that are less sure than this of themselves compare nothing. */
const UNSURE = 1e-4;
const NEAR = times(2, 1);
const WIDE = times(1, 0);

type Results = Readonly<Record<string, number | undefined>>;

/** All results of a system by mathjs on plain SI numbers, some of them held. Undefined where there is none. */
function plainChain(system: System, held: Results): (inputs: Results) => Results {
  const steps = system.steps.map(({ formula }) => {
    const text = inMathjs(formula.text.split('=')[1]!, {
      g_n: '9.80665',
      one_s: '1',
      one_ohm: '1',
      sigma_SB: '5.67037441918443e-8',
      zero_C: '273.15',
      magnus_e: '611.2',
      magnus_T: '243.12',
      magnus_i: '272.62',
      pt_A: '3.9083e-3',
      pt_B: '(-5.775e-7)',
      pt_C: '(-4.183e-12)',
      pt_T: '100',
      R_v: '461.5',
      R_gas: '8.31446261815324',
    });
    return { symbol: formula.symbol, code: compileOnce(text) };
  });
  return (inputs) => {
    // A model may leave one of its outputs out.
    const scope = new Map(system.inputs.map((name) => [`s_${name}`, inputs[name] ?? NaN]));
    const results: Record<string, number | undefined> = {};
    for (const { symbol, code } of steps) {
      const found: unknown = held[symbol] ?? code.evaluate(scope);
      results[symbol] = typeof found === 'number' && Number.isFinite(found) ? found : undefined;
      scope.set(`s_${symbol}`, results[symbol] ?? NaN);
    }
    return results;
  };
}

interface Slope {
  readonly slope: number;
  /** What the last extrapolation changed: near a pole, or where large numbers cancel, the differences themselves are no surer. */
  readonly doubt: number;
  /** What the last bits of the result make of a difference: next to the point it moves by so much for no reason. */
  readonly noise: number;
  /** Slopes to the left and to the right agree to one percent. */
  readonly smooth: boolean;
}

/** The slope of each result along one input, undefined where a step leaves the domain. */
function slopes(chain: (inputs: Results) => Results, at: Readonly<Record<string, number>>, name: string) {
  const x = at[name]!;
  const h = Math.abs(x) * STEP || STEP * 1e-3;
  const middle = chain(at);
  const pairs = [h, h / 2, h / 4].map(
    (step) => [step, chain({ ...at, [name]: x + step }), chain({ ...at, [name]: x - step })] as const,
  );
  const beside = [-5, -3, -2, -1, 1, 2, 3, 5].map((bits) => {
    const dx = x * bits * 1e-9;
    return [dx, chain({ ...at, [name]: x + dx })] as const;
  });
  return (symbol: string): Slope | undefined => {
    const here = middle[symbol];
    const d = pairs.map(([step, up, down]) => (up[symbol]! - down[symbol]!) / (2 * step));
    if (here === undefined || d.some((one) => Number.isNaN(one))) return undefined;
    const first = [(4 * d[1]! - d[0]!) / 3, (4 * d[2]! - d[1]!) / 3] as const;
    const slope = (16 * first[1] - first[0]) / 15;
    const [right, left] = [pairs[0]![1][symbol]! - here, here - pairs[0]![2][symbol]!];
    const smooth = Math.abs(right - left) <= 0.01 * Math.max(Math.abs(right), Math.abs(left));
    const moved = beside.map(([dx, found]) => Math.abs((found[symbol] ?? NaN) - here - slope * dx));
    // The differences over h/4, h/2 and h go into the extrapolation with 64/45, 20/45 and 1/45.
    const weight = (64 / 45) * 4 + (20 / 45) * 2 + 1 / 45;
    const noise = (weight * Math.max(0, ...moved.filter(Number.isFinite))) / h;
    return { slope, doubt: Math.abs(slope - first[1]), noise, smooth };
  };
}

/** How many slopes of each calculator were compared and left out, over all its options. */
const shares = new Map<string, { compared: number; leftOut: number }>();

describe('the gradient of every result against finite differences', () => {
  it.each(fewCases)('%s (%s)', (id, _options, calc, choices) => {
    const random = generator(7);
    const system = systemFor(calc, choices);
    let compared = 0;
    let leftOut = 0;
    for (let sample = 0; sample < NEAR + WIDE; sample += 1) {
      const inputs = (sample < NEAR ? nearbyInputs : randomInputs)(calc, choices, random);
      const outcomes = propagate(system, inputs);
      const whole = system.steps.flatMap(({ rounded, formula: { symbol } }) => {
        const outcome = outcomes[symbol];
        return rounded && outcome?.ok ? [[symbol, outcome.value] as const] : [];
      });
      const chain = plainChain(system, Object.fromEntries(whole));
      const at = Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value]));
      for (const name of Object.keys(inputs)) {
        const along = slopes(chain, at, name);
        for (const { formula, rounded, kinks } of system.steps) {
          const outcome = outcomes[formula.symbol];
          if (!outcome?.ok || rounded) continue;
          const ours = outcome.gradient[name] ?? 0;
          const found = along(formula.symbol);
          const isUnsure = found && found.doubt > UNSURE * Math.abs(found.slope);
          if (!found || isUnsure || (kinks.length > 0 && !found.smooth)) {
            leftOut += 1;
            continue;
          }
          const all = Object.entries(outcome.gradient).map(([other, g]) => Math.abs(g * at[other]!));
          const sum = Math.abs(outcome.value) + all.reduce((total, one) => total + one, 0);
          const allowed =
            RELATIVE * Math.abs(ours) + (ROUNDING * sum) / Math.abs(at[name]! || 1) + found.doubt + found.noise;
          const where = `d ${formula.symbol} / d ${name} at ${at[name]} of ${formula.text}: ${ours} against ${found.slope}`;
          expect(Math.abs(ours - found.slope), where).toBeLessThanOrEqual(allowed);
          compared += 1;
        }
      }
    }
    expect(compared, 'no result has a slope here: add a worked example under these options').toBeGreaterThan(0);
    const before = shares.get(id) ?? { compared: 0, leftOut: 0 };
    shares.set(id, { compared: before.compared + compared, leftOut: before.leftOut + leftOut });
  });

  // Over all its options: among the few draws of one, a kink is a large share; in a part of the sweep, everywhere.
  it.runIf(isWhole)('leaves out less than a tenth of any calculator', () => {
    const tooMany = [...shares].filter(([, { compared, leftOut }]) => leftOut >= 0.1 * (compared + leftOut));
    expect(shares.size).toBeGreaterThan(0);
    expect(tooMany).toEqual([]);
  });
});
