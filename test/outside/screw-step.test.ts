import { fraction, multiply, divide, unit, type Fraction, type Unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate';
import calc from '../../src/calculators/screw-step/index';
import { layerErrors, LONGEST_REPEAT, patternOf } from '../../src/calculators/screw-step/model';
import { asFraction, convergents } from '../../src/formula/fraction';
import { some, times } from '../support/sweep';

/** Results for typed entries, SI. */
function results(given: Readonly<Record<string, string>>, choices: Readonly<Record<string, string>> = {}) {
  const entries = Object.fromEntries(
    Object.entries(given).map(([symbol, text]) => [symbol, { text, unit: '', tool: '' }]),
  );
  const found = evaluate(calc, { entries, choices, kept: {}, mark: 'point' });
  return (symbol: string): number => {
    const outcome = found.outcomes[symbol];
    if (!outcome?.ok) throw new Error(`${symbol} has no result`);
    return outcome.value;
  };
}

// Sines of 90°/m as in any table of them: torque of one microstep of lag as a percentage of the holding torque, to two decimals
// (half a unit of the last is the tolerance).
const PAPER: readonly (readonly [number, number])[] = [
  [1, 100],
  [2, 70.71],
  [4, 38.27],
  [8, 19.51],
  [16, 9.8],
  [32, 4.91],
  [64, 2.45],
  [128, 1.23],
  [256, 0.61],
];

describe('torque of one microstep', () => {
  it.each(PAPER)('at %i microsteps is %f %% of the holding torque', (m, percent) => {
    const at = results({ m: String(m), tau_h: '100 N·mm' });
    expect(Math.abs(at('tau_inc') * 1e3 - percent)).toBeLessThanOrEqual(0.005 + 1e-9);
  });

  // The same table read backwards: friction of that share is overcome after exactly one microstep.
  it.each(PAPER.filter(([m]) => m > 1))('friction of that share at %i swallows one microstep', (m, percent) => {
    const at = results({ m: String(m), tau_h: '100 N·mm', tau_f: `${percent} N·mm ± 0` });
    // Half a unit of the printed percentage, through the slope of the arc sine.
    const slack = ((2 / Math.PI) * m * 5e-5) / Math.sqrt(1 - (percent / 100) ** 2);
    expect(Math.abs(at('m_f') - 1)).toBeLessThanOrEqual(slack);
    expect(Math.abs(at('x_f') - at('q_m'))).toBeLessThanOrEqual(slack * at('q_m'));
  });
});

// Independent: mathjs units carry the millimetres and degrees.
describe('travel of a step', () => {
  const travel = (perTurn: Unit, angle: string): number =>
    (divide(multiply(perTurn, unit(angle)), unit('360 deg')) as Unit).toNumber('m');

  it.each([
    ['8 mm', '1.8 deg', 0.04, 0.0025, 2],
    ['2 mm', '1.8 deg', 0.01, 0.000625, 0.5],
    ['5.08 mm', '0.9 deg', 0.0127, 0.00079375, 0.635],
  ])('lead %s, step %s', (P_h, theta_s, full, sixteenth, error) => {
    const at = results({ P_h, theta_s, m: '16', a: '5 %' });
    expect(at('q')).toBeCloseTo(travel(unit(P_h), theta_s), 15);
    expect(at('q') * 1e3).toBeCloseTo(full, 12);
    expect(at('q_m') * 1e3).toBeCloseTo(sixteenth, 12);
    expect(at('x_a') * 1e6).toBeCloseTo(error, 9);
  });

  it('belt of 2 mm on 20 teeth', () => {
    const at = results({ p: '2 mm', z: '20', theta_s: '1.8 deg', m: '16', a: '5 %' }, { lift: 'belt' });
    expect(at('q')).toBeCloseTo(travel(unit('40 mm'), '1.8 deg'), 15);
    expect(at('q_m') * 1e3).toBeCloseTo(0.0125, 12);
    expect(at('x_a') * 1e6).toBeCloseTo(10, 9);
  });
});

describe('continued fractions', () => {
  // Textbook: Hardy & Wright, An Introduction to the Theory of Numbers, ch. 10 (from memory).
  it.each([
    ['π', Math.PI, '3/1 22/7 333/106 355/113'],
    ['e', Math.E, '2/1 3/1 8/3 11/4 19/7 87/32 106/39 193/71'],
    ['√2', Math.SQRT2, '1/1 3/2 7/5 17/12 41/29 99/70'],
    ['golden ratio', (1 + Math.sqrt(5)) / 2, '1/1 2/1 3/2 5/3 8/5 13/8 21/13 34/21 55/34 89/55'],
  ])('of %s', (_, x, listed) => {
    const expected = listed.split(' ');
    const found = convergents(x, 200).map((f) => `${f.numerator}/${f.denominator}`);
    expect(found.slice(0, expected.length)).toEqual(expected);
  });

  // mathjs takes the decimals as typed and divides them exactly, in whole numbers.
  const exact = (h: string, P_h: string, theta_s: string, m: number): Fraction =>
    divide(
      fraction(h),
      divide(multiply(fraction(P_h), fraction(theta_s)), fraction(360 * m)) as Fraction,
    ) as unknown as Fraction;

  const every = ['8', '2', '4', '1.5', '5.08', '6.35', '40'].flatMap((P_h) =>
    ['0.04', '0.05', '0.1', '0.12', '0.125', '0.13', '0.2', '0.25', '0.3175', '0.4'].flatMap((h) =>
      ['1.8', '0.9', '7.5'].flatMap((theta_s) => [1, 4, 16].map((m) => ({ P_h, h, theta_s, m }))),
    ),
  );

  it('agree with mathjs for every usual lead, step and height', () => {
    let compared = 0;
    for (const { P_h, h, theta_s, m } of some(every, 10)) {
      const wanted = exact(h, P_h, theta_s, m);
      if (wanted.d > BigInt(LONGEST_REPEAT)) continue;
      const at = results(
        { P_h: `${P_h} mm`, h: `${h} mm`, theta_s: `${theta_s} deg`, m: String(m) },
        { grid: 'micro' },
      );
      const found = asFraction(at('n'), LONGEST_REPEAT);
      expect(`${found?.numerator}/${found?.denominator}`).toBe(`${wanted.n}/${wanted.d}`);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(times(600, 60));
  });

  it('0.25 mm on 0.04 mm is 25/4, 0.20 mm is 5', () => {
    expect(exact('0.25', '8', '1.8', 1).toFraction()).toBe('25/4');
    expect(asFraction(0.25e-3 / 0.04e-3, LONGEST_REPEAT)).toEqual({ numerator: 25, denominator: 4 });
    expect(patternOf(0.2e-3, 0.04e-3).repeat).toBe(1);
  });

  it('the layers are those of exact arithmetic', () => {
    for (const [h, g] of [
      ['0.25', '0.04'],
      ['0.13', '0.0254'],
      ['0.065', '0.01'],
      ['0.3', '0.2'],
    ] as const) {
      const layers = layerErrors(Number(h) / 1000, Number(g) / 1000, 40);
      for (const layer of layers) {
        const asked = multiply(fraction(h), fraction(layer.number)) as Fraction;
        // floor(x + 1/2): a half goes up.
        const steps = (divide(asked, fraction(g)) as unknown as Fraction).add(fraction(1, 2)).floor();
        const error = (multiply(steps, fraction(g)) as Fraction).sub(asked).valueOf();
        expect(layer.height * 1e3).toBeCloseTo(error, 12);
      }
    }
  });
});
