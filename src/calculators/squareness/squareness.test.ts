import { describe, expect, it } from 'vitest';
import { calculators, situation } from '../../../test/support/calculators';
import type { Choices } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';

const calc = calculators.find(([id]) => id === 'squareness')![1];
const measure = (given: Record<string, string>, choices: Choices = {}) =>
  evaluate(calc, situation(calc, given, choices));
const frame = { d_1: '424.76 ± 0.03', d_2: '423.76 ± 0.03', A: '300 ± 0.03', B: '300 ± 0.03' };
const swapped = { ...frame, d_1: frame.d_2, d_2: frame.d_1 };

describe('the published figures', () => {
  // references.md, section 9: ε 2.357e-3 rad = 0.1350° = 0.236 mm per 100, and 0.1699° = 0.297 mm per 100.
  it.each([
    ['424.76', '423.76', '300', 0.135, 0.236],
    ['141.42', '141.00', '100', 0.1699, 0.297],
  ])('diagonals %s and %s over sides of %s mm', (d_1, d_2, side, degrees, per100) => {
    const { outcomes } = measure({ d_1, d_2, A: side, B: side });
    const { epsilon, e_0 } = outcomes;
    if (!epsilon?.ok || !e_0?.ok) throw new Error('no result');
    expect(Math.abs((epsilon.value * 180) / Math.PI / degrees - 1)).toBeLessThan(1e-3);
    expect(Math.abs((e_0.value * 1e3) / per100 - 1)).toBeLessThan(2e-3);
  });

  // The same section: u(ε) ≈ u(d) √2 d / (2 A B), so a caliper of 0.03 mm on 100 mm leaves 0.03 mm per 100.
  it('leave the doubt that the approximation says', () => {
    const { e_0 } = measure({ d_1: '141.42 ± 0.03', d_2: '141.42 ± 0.03', A: '100 ± 0', B: '100 ± 0' }).outcomes;
    if (!e_0?.ok) throw new Error('no result');
    expect(e_0.u * Math.sqrt(3) * 1e3).toBeCloseTo(0.03, 4);
  });

  it('do not change with a print’s shrinkage, the same along both sides', () => {
    const shrunk = (text: string): string => String(Number(text) * 0.995);
    const plain = measure({ d_1: '141.42', d_2: '141.00', A: '99.85', B: '99.85' }).outcomes.epsilon;
    const less = measure({ d_1: shrunk('141.42'), d_2: shrunk('141.00'), A: shrunk('99.85'), B: shrunk('99.85') });
    expect(less.outcomes.epsilon?.ok && plain?.ok && less.outcomes.epsilon.value / plain.value).toBeCloseTo(1, 12);
  });
});

describe('which way', () => {
  // Front left to back right the longer: the right end of X lies too far back, or the back side too far right.
  it.each([
    ['beam', 'right end of the beam', 'forward', 'back'],
    ['bed', 'right end of the beam', 'forward', 'back'],
    ['frame', 'back of the frame', 'left', 'right'],
  ])('%s: the long diagonal is shortened, and mirrors', (of, part, way, other) => {
    const [there, back] = [measure(frame, { of }), measure(swapped, { of })].map(
      (found) => found.instruction!.movements,
    );
    expect(there).toEqual([{ part, direction: way, amount: expect.any(Number) as number }]);
    expect(back).toEqual([{ part, direction: other, amount: there![0]!.amount }]);
  });

  it('moves what it measured: a frame sheared back by that much has equal diagonals', () => {
    const dx = measure({ ...frame, L_f: '300 ± 0' }, { of: 'frame' }).instruction!.movements[0]!.amount;
    const lean = Math.asin((424.76 ** 2 - 423.76 ** 2) / (4 * 300 * 300));
    const [x, y] = [300 * Math.sin(lean) - 1e3 * dx, 300 * Math.cos(lean)];
    // The back is moved by tenths of a millimetre: half of one leaves 0.07 mm between the diagonals at most.
    expect(Math.abs(Math.hypot(300 + x, y) - Math.hypot(300 - x, y))).toBeLessThan(0.075);
    expect(dx * 1e4 - Math.round(dx * 1e4)).toBeCloseTo(0, 9);
  });

  it('is the same by square as by diagonals, for the same skew', () => {
    for (const way of ['square', 'reversal']) {
      const given = way === 'square' ? { m: '0.24 ± 0.01', i_e: '0 ± 0' } : { m_1: '0.34 ± 0.01', m_2: '0.14 ± 0.01' };
      const found = measure(given, { way });
      expect(found.verdict.state).toBe('beyond');
      expect(found.instruction!.movements[0]).toMatchObject({ part: 'right end of the beam', direction: 'forward' });
    }
  });

  it('tells the square’s own error from the machine’s, with its sign', () => {
    const wide = measure({ m_1: '0.20 ± 0.01', m_2: '-0.20 ± 0.01' }, { way: 'reversal' });
    expect(wide.verdict.state).toBe('within');
    expect(wide.instruction!.steps[0]).toBe('Square as far as these readings tell.');
    expect(wide.instruction!.steps.join(' ')).toMatch(/square itself is wider than 90° by 2\.0+\smm\/m/);
    const narrow = measure({ m_1: '-0.20 ± 0.01', m_2: '0.20 ± 0.01' }, { way: 'reversal' });
    expect(narrow.instruction!.steps.join(' ')).toMatch(/narrower than 90°/);
    const alike = measure({ m_1: '0.01 ± 0.01', m_2: '0.01 ± 0.01' }, { way: 'reversal' });
    expect(alike.instruction!.steps.join(' ')).toMatch(/true as far as these readings tell/);
  });

  it('counts what a try square may be out itself: a poor one settles nothing', () => {
    expect(measure({ m: '0.13' }, { way: 'square' }).verdict.state).toBe('too close');
    expect(measure({ m: '0.13 ± 0', i_e: '0 ± 0' }, { way: 'square' }).verdict.state).toBe('beyond');
  });
});

describe('sides and diagonals that do not fit together', () => {
  it('are measured again, whatever the verdict: a trapezoid is not skewed', () => {
    // Ptolemy: d² = 100² + 100 · 102.
    const d = String(Math.sqrt(20_200));
    const found = measure({ d_1: `${d} ± 0.03`, d_2: `${d} ± 0.03`, A: '100 ± 0.03', B: '100 ± 0.03' });
    expect(found.instruction).toMatchObject({ measureAgain: true, movements: [] });
    expect(found.instruction!.sentence).toMatch(/do not fit together/);
    expect(found.instruction!.steps[0]).toMatch(/0\.705?\d?\smm longer/);
  });

  it('are let pass where the doubt covers it', () => {
    expect(
      measure({ d_1: '141.44 ± 0.03', d_2: '141.42 ± 0.03', A: '100 ± 0.03', B: '100 ± 0.03' }).instruction!.sentence,
    ).toMatch(/^Leave it/);
  });

  it('have no angle where no parallelogram is that lean', () => {
    expect(measure({ d_1: '300', d_2: '10', A: '100', B: '100' }).cannot).toMatch(
      /asin needs a number between −1 and 1/,
    );
  });
});

it('asks for what it needs', () => {
  expect(measure({}).cannot).toMatch(/Still needed: diagonal, front left to back right/);
});
