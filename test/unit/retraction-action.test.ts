import { describe, expect, it } from 'vitest';
import calc from '../../src/calculators/retraction/index';
import { evaluate } from '../../src/engine/evaluate';
import { situation } from '../support/calculators';

/** Everything exact but the backlash; the pressure from a measured push force. */
const bench = {
  d: '0.4 mm ± 0', l: '0.6 mm ± 0', d_0: '2 mm ± 0', d_f: '1.75 mm ± 0', n: '0.45 ± 0', F_m: '5 N ± 0', L: '450 mm ± 0',
  E: '3.5 GPa ± 0', B: '1.4 GPa ± 0', V: '40 mm3 ± 0', D_t: '2 mm ± 0', Theta: '180 deg ± 0', s_b: '0.1 mm ± 0.05 mm',
  a_lo: '0.5 mm', a_hi: '0.5 mm', f_c: '1 ± 0', mu_t: '0 ± 0',
}; // prettier-ignore
const pushed = { drive: 'tube', source: 'force' };

const run = (given: Readonly<Record<string, string>>, choices: Readonly<Record<string, string>> = pushed) =>
  evaluate(calc, situation(calc, { ...bench, ...given }, choices));

const step = (found: ReturnType<typeof run>, key: string) =>
  found.instruction?.order.steps.find(({ say }) => say === key);

/** The computed length in mm. */
function stored(): number {
  const outcome = run({ x_set: '1 mm' }).outcomes.x_r;
  return outcome?.ok ? outcome.value * 1e3 : NaN;
}

describe('what to do about the retraction length', () => {
  it('mirrors: as far above the computed length as below gives the opposite turn of the same amount', () => {
    const low = run({ x_set: `${stored() - 0.9} mm` });
    const high = run({ x_set: `${stored() + 0.9} mm` });
    expect([low.verdict.state, high.verdict.state]).toEqual(['beyond', 'beyond']);
    expect(low.instruction?.order).toMatchObject({ say: 'setLength', args: { longer: true } });
    expect(high.instruction?.order).toMatchObject({ say: 'setLength', args: { longer: false } });
    const [up] = low.instruction?.movements ?? [];
    const [down] = high.instruction?.movements ?? [];
    expect([up?.direction, down?.direction]).toEqual(['longer', 'shorter']);
    // To one length, from as far above as below.
    expect(low.instruction?.order.effect).toEqual(high.instruction?.order.effect);
    expect((up?.amount ?? 0) + (down?.amount ?? 0)).toBeCloseTo(1.8e-3, 9);
  });

  it('sets a length in steps that can be set, and the same check passes', () => {
    for (const x_set of [stored() - 0.9, stored() + 0.9]) {
      const { x_set: to } = run({ x_set: `${x_set} mm` }).instruction!.order.effect as { x_set: number };
      expect(run({ x_set: `${to * 1e3} mm` }).verdict.state).toBe('within');
      expect((to * 1e3) / 0.05).toBeCloseTo(Math.round((to * 1e3) / 0.05), 6);
    }
    // A wide band: by the usual half millimetre.
    const wide = run({ x_set: '6.2 mm', a_hi: '2 mm' }).instruction!.order.effect as { x_set: number };
    expect(2e3 * wide.x_set).toBeCloseTo(Math.round(2e3 * wide.x_set), 9);
  });

  it('judges nothing by listed flow values: the piece is printed', () => {
    for (const x_set of ['0.2 mm', '2 mm', '6.5 mm']) {
      const found = evaluate(calc, situation(calc, { x_set }, {}));
      expect(found.verdict.state, x_set).toBe('none');
      expect(found.instruction?.order).toMatchObject({ say: 'printPiece', measureAgain: true, movements: [] });
      expect(found.instruction?.order.effect).toBeUndefined();
    }
    const { start } = evaluate(calc, situation(calc, { x_set: '2 mm' }, {})).instruction!.order.args as {
      start: { si: number };
    };
    expect(2e3 * start.si).toBeCloseTo(Math.round(2e3 * start.si), 9);
    const far = evaluate(calc, situation(calc, { x_set: '9.3 mm' }, {}));
    expect(far.verdict.state).toBe('beyond');
    expect(far.instruction?.order).toMatchObject({ say: 'lowerToMost', effect: { x_set: 7e-3 } });
  });

  it('sets what the test piece showed, once it was printed', () => {
    const piece = (x_set: string, x_p: string) => evaluate(calc, situation(calc, { x_set, x_p }, {}));
    const far = piece('1 mm', '3.5 mm');
    expect(far.verdict.state).toBe('beyond');
    expect(far.instruction?.order).toMatchObject({ say: 'setAsPiece', effect: { x_set: 3.5e-3 } });
    expect(piece('3.5 mm', '3.5 mm').verdict.state).toBe('within');
    expect(piece('3.5 mm', '3.5 mm').instruction?.order.say).toBe('leave');
    expect(piece('1 mm', '9 mm').instruction?.order.effect).toEqual({ x_set: 7e-3 });
  });

  it('leaves a length inside the band alone', () => {
    const found = run({ x_set: `${stored() + 0.2} mm` });
    expect(found.verdict.state).toBe('within');
    expect(found.instruction?.order.say).toBe('leave');
    expect(found.instruction?.movements).toEqual([]);
  });

  it('prints before changing when the band’s end lies inside the uncertainty, and names what dominates it', () => {
    const found = run({ x_set: `${stored() + 0.5} mm` });
    expect(found.verdict.state).toBe('too close');
    expect(found.verdict.settling?.symbol).toBe('s_b');
    expect(found.instruction?.order.say).toBe('printFirst');
    expect(step(found, 'mostOfTheDoubt')?.args).toMatchObject({ of: 's_b', share: 100 });
    expect(found.instruction?.movements).toEqual([]);
  });

  it('changes nothing on a flow below the power law’s reach, or with a tube that the filament cannot pass', () => {
    const slow = run({ x_set: '1 mm', v: '1 mm/s', d: '1.2 mm ± 0' }, { drive: 'tube', source: 'table' });
    expect(slow.verdict.checks.find(({ limit }) => limit.of === 'gamma_w')?.state).toBe('beyond');
    expect(slow.instruction?.order.say).toBe('flowTooSlow');
    const narrow = run({ x_set: '1 mm', D_t: '1.7 mm ± 0' });
    expect(narrow.verdict.state).toBe('beyond');
    expect(narrow.instruction?.order.say).toBe('measureBores');
    for (const { instruction } of [slow, narrow]) expect(instruction?.movements).toEqual([]);
  });

  it('has a bleeding time up to the end of the flow index’s range, and refuses 1, where its formula divides by zero', () => {
    const found = run({ x_set: '4 mm', n: '0.99 ± 0' });
    const [t_b, s_f, s_m, v_f] = ['t_b', 's_f', 's_m', 'v_f'].map((symbol) => {
      const outcome = found.outcomes[symbol];
      return outcome?.ok ? outcome.value : NaN;
    }) as [number, number, number, number];
    // At n = 1 the pressure falls as e^(−t): half is left after ln 2 time constants.
    expect(Math.abs(t_b / (((s_f + s_m) / v_f) * Math.LN2) - 1)).toBeLessThan(0.005);
    expect(found.instruction?.order).toMatchObject({ say: 'setLength', args: { longer: false } });
    expect(run({ x_set: '4 mm', n: '1' }).inputs.n).toMatchObject({ ok: false, blank: false });
  });

  it('still says what to do where an index of wide doubt reaches past 1', () => {
    const found = run({ x_set: '4 mm', n: '0.95 ± 0.1' });
    expect(found.instruction?.order).toMatchObject({ say: 'setLength', args: { longer: false } });
    for (const outcome of Object.values(found.outcomes)) if (outcome.ok) expect(outcome.u).toBeGreaterThanOrEqual(0);
  });

  it('asks for slower printing, not for a longer retraction, where no drive could push that hard', () => {
    // The review's case: ABS, 0.1 mm bore, 300 mm/s, from 5 mm.
    const fast = { x_set: '5 mm', d: '0.1 mm', w: '0.44 mm', v: '300 mm/s' };
    const found = evaluate(calc, situation(calc, fast, { material: 'abs' }));
    expect(found.verdict.state).toBe('none');
    expect(found.instruction?.order.say).toBe('printPiece');
    expect(step(found, 'pushTooHard')).toBeDefined();
    expect(found.instruction?.movements).toEqual([]);
    const head = run({ x_set: '0.5 mm', F_m: '300 N', L: '45 mm' }, { drive: 'head', source: 'force' });
    expect(head.instruction?.order).toMatchObject({ say: 'printSlower', args: { set: { si: 0.0005 } } });
    expect(head.instruction?.movements).toEqual([]);
  });

  it('never pulls the soft end past the cold part: a soft filament in a tube', () => {
    const soft = { E: '0.02 GPa ± 0', F_m: '10 N ± 0' };
    const found = run({ ...soft, x_set: '2 mm' });
    expect(found.outcomes.x_r?.ok && found.outcomes.x_r.value).toBeGreaterThan(50e-3);
    expect(found.instruction?.order).toMatchObject({ say: 'printSlower', args: { set: { si: 0.002 } } });
    expect(found.instruction?.movements).toEqual([]);
    const far = run({ ...soft, x_set: '9 mm' });
    expect(far.instruction?.order).toMatchObject({
      say: 'lowerAndSlower',
      args: { from: { si: expect.closeTo(0.009, 12) as number }, to: { si: 0.007 } },
    });
    expect(far.instruction?.movements[0]).toMatchObject({ direction: 'shorter' });
    expect(far.instruction?.movements[0]?.amount).toBeCloseTo(2e-3, 12);
    const near = run({ x_set: '0.2 mm', x_max: '0.9 mm' });
    expect(near.instruction?.order).toMatchObject({ say: 'printSlower', args: { set: { si: 0.0002 } } });
    const raised = run({ x_set: '0.2 mm' });
    expect(step(raised, 'neverBeyond')?.args).toMatchObject({ most: { si: 0.007 } });
  });

  it('brings a length inside the band down to the most for this hot end', () => {
    const found = run({ x_set: `${stored() + 0.2} mm`, x_max: `${stored() + 0.1} mm` });
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction?.order.say).toBe('lowerToMost');
    const { x_set: to } = found.instruction!.order.effect as { x_set: number };
    expect(to).toBeLessThanOrEqual((stored() + 0.1) * 1e-3);
    expect(run({ x_set: `${to * 1e3} mm`, x_max: `${stored() + 0.1} mm` }).verdict.state).toBe('within');
  });

  it('says that the other nozzle does not fit, and lets the verdict on the length be', () => {
    const [fits, wide] = ['0.6 mm', '2 mm'].map((d_2) => run({ x_set: '4 mm', d_2, d_0: '1.5 mm ± 0' }));
    expect(wide?.verdict.state).toBe(fits?.verdict.state);
    expect(wide?.instruction?.sentence).toBe(fits?.instruction?.sentence);
    expect(wide?.instruction?.order.steps.at(-1)).toMatchObject({
      say: 'otherTooWide',
      args: { other: { si: 0.002 } },
    });
    expect(fits?.instruction?.order.steps.length).toBeGreaterThan(0);
    expect(fits && step(fits, 'otherTooWide')).toBeUndefined();
    for (const symbol of ['x_q', 'x_v']) expect(wide?.outcomes[symbol]?.ok).toBe(false);
  });

  it('counts the stretching of the melt and the friction of the tube among the doubt', () => {
    const pla = { x_set: '5 mm' };
    const wide = evaluate(calc, situation(calc, pla, {})).outcomes.x_r;
    const before = evaluate(calc, situation(calc, { ...pla, f_c: '1 ± 0', mu_t: '0 ± 0' }, {})).outcomes.x_r;
    if (!wide?.ok || !before?.ok) throw new Error('no length');
    expect(wide.budget.map((part) => part.symbol)).toEqual(expect.arrayContaining(['f_c', 'mu_t']));
    expect(wide.high).toBeGreaterThan(before.high);
    expect(wide.high - wide.low).toBeGreaterThan(before.high - before.low);
  });

  it('says so where the doubt reaches further than a drive pushes', () => {
    const found = run({ x_set: '1 mm', F_m: '55 N ± 10 N', L: '50 mm' }, { drive: 'head', source: 'force' });
    expect(found.verdict.checks.find(({ limit }) => limit.of === 'F_g')?.state).toBe('too close');
    expect(step(found, 'reachesPush')?.args).toMatchObject({ most: { si: 60 } });
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
