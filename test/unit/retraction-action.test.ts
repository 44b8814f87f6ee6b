import { describe, expect, it } from 'vitest';
import calc from '../../src/calculators/retraction/index';
import { evaluate } from '../../src/calculators/evaluate';
import { situation } from '../support/calculators';

/** Everything exact but the backlash; the pressure from a measured push force. */
const bench = {
  d: '0.4 mm ± 0', l: '0.6 mm ± 0', d_0: '2 mm ± 0', d_f: '1.75 mm ± 0', n: '0.45 ± 0', F_m: '5 N ± 0', L: '450 mm ± 0',
  E: '3.5 GPa ± 0', B: '1.4 GPa ± 0', V: '40 mm3 ± 0', D_t: '2 mm ± 0', Theta: '180 deg ± 0', s_b: '0.1 mm ± 0.05 mm',
  a_lo: '0.5 mm', a_hi: '0.5 mm',
}; // prettier-ignore
const pushed = { drive: 'tube', source: 'force' };

const run = (given: Readonly<Record<string, string>>, choices: Readonly<Record<string, string>> = pushed) =>
  evaluate(calc, situation(calc, { ...bench, ...given }, choices));

/** The computed length in mm. */
function stored(): number {
  const outcome = run({ x_set: '1 mm' }).outcomes.x_r;
  return outcome?.ok ? outcome.value * 1e3 : NaN;
}

describe('what to do about the pull-back length', () => {
  it('mirrors: as far above the computed length as below gives the opposite turn of the same amount', () => {
    const low = run({ x_set: `${stored() - 0.9} mm` });
    const high = run({ x_set: `${stored() + 0.9} mm` });
    expect([low.verdict.state, high.verdict.state]).toEqual(['beyond', 'beyond']);
    expect(low.instruction?.headline).toMatch(/^Raise .* from 0\.\d+\smm towards 1\.\d+\smm, in steps of 0\.5\smm/);
    expect(high.instruction?.headline).toMatch(/^Lower /);
    const [up] = low.instruction?.movements ?? [];
    const [down] = high.instruction?.movements ?? [];
    expect([up?.direction, down?.direction]).toEqual(['longer', 'shorter']);
    expect(up?.amount).toBeCloseTo(0.9e-3, 9);
    expect(down?.amount).toBeCloseTo(0.9e-3, 9);
  });

  it('leaves a length inside the band alone', () => {
    const found = run({ x_set: `${stored() + 0.2} mm` });
    expect(found.verdict.state).toBe('within');
    expect(found.instruction?.headline).toMatch(/^Leave .* nothing to change/);
    expect(found.instruction?.movements).toBeUndefined();
  });

  it('prints before changing when the band’s end lies inside the uncertainty, and names what dominates it', () => {
    const found = run({ x_set: `${stored() + 0.5} mm` });
    expect(found.verdict.state).toBe('too close');
    expect(found.verdict.settling?.symbol).toBe('s_b');
    expect(found.instruction?.headline).toMatch(/^Print the test piece/);
    expect(found.instruction?.steps.join(' ')).toContain('(100 %) comes from the backlash');
    expect(found.instruction?.movements).toBeUndefined();
  });

  it('changes nothing on a flow below the power law’s reach, or with a tube that the filament cannot pass', () => {
    const slow = run({ x_set: '1 mm', v: '1 mm/s', d: '1.2 mm ± 0' }, { drive: 'tube', source: 'table' });
    expect(slow.verdict.checks.find(({ limit }) => limit.of === 'gamma_w')?.state).toBe('beyond');
    expect(slow.instruction?.headline).toContain('flow is too slow');
    const narrow = run({ x_set: '1 mm', D_t: '1.7 mm ± 0' });
    expect(narrow.verdict.state).toBe('beyond');
    expect(narrow.instruction?.headline).toContain('measure tube, filament and nozzle');
    for (const { instruction } of [slow, narrow]) expect(instruction?.movements).toBeUndefined();
  });

  it('still says what to do when the flow index comes so near 1 that the bleeding time has no value', () => {
    const found = run({ x_set: '4 mm', n: '1 ± 0' });
    expect(found.outcomes.t_b?.ok).toBe(false);
    expect(found.instruction?.headline).toMatch(/^Lower /);
    expect(found.instruction?.steps.at(-1)).toContain('cannot be told');
  });

  it('asks for the flow values of a plastic it knows nothing of, and gives no instruction', () => {
    const found = evaluate(calc, situation(calc, { x_set: '4 mm' }, { material: 'other' }));
    expect(found.instruction).toBeUndefined();
    expect(found.cannot).toMatch(/^Still needed: consistency of the melt/);
  });

  it('keeps the whole factor of three in the pressure: the interval of Δp leans as equal ratios do', () => {
    const given = { d: bench.d, l: bench.l, d_0: bench.d_0, n: bench.n, K: '8000', beta: '0 ± 1', x_set: '4 mm' };
    const found = evaluate(calc, situation(calc, given, { source: 'table' }));
    const dp = found.outcomes.dp;
    if (!dp?.ok) throw new Error('no pressure');
    // 2.5 % and 97.5 % of an exponent even between −1 and 1 are ∓0.95.
    expect(dp.low / dp.value).toBeCloseTo(3 ** -0.95, 1);
    expect(dp.high / dp.value / 3 ** 0.95).toBeCloseTo(1, 1);
  });

  it.each(calc.examples.map((example) => [example.title, example] as const))('works the example: %s', (_, example) => {
    const found = evaluate(calc, situation(calc, example.given, example.choices));
    for (const [symbol, expected] of Object.entries(example.expect)) {
      const [value, tolerance] = expected as readonly [number, number];
      const outcome = found.outcomes[symbol];
      const unit = found.formulas.find((f) => f.text.startsWith(`${symbol} =`))!.measure.unit;
      expect(outcome?.ok && Math.abs(outcome.value / unit.factor - value), symbol).toBeLessThanOrEqual(tolerance);
    }
    if (example.verdict) expect(found.verdict.state).toBe(example.verdict);
  });
});
