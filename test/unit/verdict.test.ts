import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  calculator,
  choice,
  derived,
  formula,
  input,
  type AskOf,
  type VerdictState,
} from '../../src/engine/calculator';
import { telling, type Amount, type Print } from '../../src/engine/order';
import twoZScrews from '../../src/calculators/two-z-screws';
import { evaluate, type Evaluation } from '../../src/engine/evaluate';
import { length, ratio } from '../../src/quantity/kinds';
import { fromSi } from '../../src/quantity/unit';
import { situation } from '../support/calculators';
import { times } from '../support/sweep';

const byHand = derived('byHand');
const NONE = { choices: {}, cautions: {}, beware: {}, examples: {}, proof: '', steps: {} };
const sources = { byHand: 'this test' };

const inputs = {
  x: input(length.mm, { feature: 'outside', range: [-400, 400], signed: 'scale' }),
  most: input(length.mm, { range: [0, 400], typical: 10 }),
  least: input(length.mm, { range: [0, 100], typical: 2 }),
};
const formulas = [formula('y = x', length.mm, byHand)] as const;
const choices = { side: choice({ above: {}, below: {}, both: {}, size: {} }, 'above') };
const words = {
  ...NONE,
  sources,
  inputs: { x: { label: 'Length' }, most: { label: 'Most' }, least: { label: 'Least' } },
  choices: { side: { label: 'Limit', options: { above: 'above', below: 'below', both: 'both', size: 'size' } } },
  results: { y: 'Length again' },
  limits: { y: 'Within' },
  orders: {
    state: (a: { state: string; lacks: readonly string[] }, p: Print) => ({
      glance: a.state,
      sentence: `${a.state}; lacks ${a.lacks.map(p.called).join(', ')}`,
    }),
  },
};
type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell } = telling<typeof words>();
const action = (ask: Ask) =>
  tell('state', { state: ask.verdict, lacks: ask.lacking('y') }, { measureAgain: ask.verdict !== 'within' });

/** One length against limits from above, below, or both ways; the smallest calculator there can be. */
const gauge = calculator(
  {
    choices,
    inputs,
    formulas,
    limits: [
      { of: 'y', max: 'most', cite: byHand, when: { side: ['above', 'both'] } },
      { of: 'y', min: 'least', cite: byHand, when: { side: ['below', 'both'] } },
      { of: 'y', max: 'most', symmetric: true, cite: byHand, when: { side: 'size' } },
    ],
    cautions: [],
    measured: [],
    action,
    examples: [],
  },
  words,
);

const stateOf = (x: string, side: string, more: Record<string, string> = {}): VerdictState =>
  evaluate(gauge, situation(gauge, { x, ...more }, { side })).verdict.state;

// A rectangular half-width a has u = a/√3, but alone it is never wider than its own ends (JCGM 100, 4.3.7 and G.6.5): ± a, not 2u = ± 1.1547 a.
const U = 1;

describe('three verdicts (JCGM 106: the limit inside or outside the expanded uncertainty)', () => {
  it.each([
    [`${10 - U - 0.001} ± 1`, 'within'],
    [`${10 - U + 0.001} ± 1`, 'too close'],
    ['10 ± 1', 'too close'],
    [`${10 + U - 0.001} ± 1`, 'too close'],
    [`${10 + U + 0.001} ± 1`, 'beyond'],
    ['10 ± 0', 'within'],
    ['10.000001 ± 0', 'beyond'],
    ['9.999999 ± 0', 'within'],
  ])('at most 10 mm: %s is %s', (x, state) => {
    expect(stateOf(x, 'above')).toBe(state);
  });

  it.each([
    [`${2 + U + 0.001} ± 1`, 'within'],
    [`${2 + U - 0.001} ± 1`, 'too close'],
    [`${2 - U + 0.001} ± 1`, 'too close'],
    [`${2 - U - 0.001} ± 1`, 'beyond'],
    ['2 ± 0', 'within'],
    ['1.999999 ± 0', 'beyond'],
  ])('at least 2 mm: %s is %s', (x, state) => {
    expect(stateOf(x, 'below')).toBe(state);
  });

  it.each([
    ['6 ± 1', 'within'],
    ['1 ± 0.1', 'beyond'],
    ['11 ± 0.1', 'beyond'],
    ['2.5 ± 1', 'too close'],
    ['9.5 ± 1', 'too close'],
    // Both limits lie inside the uncertainty.
    ['6 ± 10', 'too close'],
    ['0.5 ± 10', 'too close'],
  ])('between 2 and 10 mm: %s is %s', (x, state) => {
    expect(stateOf(x, 'both')).toBe(state);
  });

  it.each(['5 ± 1', '9.5 ± 1', '10 ± 0', '10.5 ± 1', '12 ± 1', '0 ± 20'])(
    'the size of %s counts, not its sign',
    (x) => {
      expect(stateOf(`-${x}`, 'size')).toBe(stateOf(x, 'size'));
    },
  );

  it('counts the uncertainty of the limit as well', () => {
    expect(stateOf('9.5 ± 0.1', 'above', { most: '10 ± 0' })).toBe('within');
    expect(stateOf('9.5 ± 0.1', 'above', { most: '10 ± 1' })).toBe('too close');
  });

  it('has none where the value has none', () => {
    expect(stateOf('', 'above')).toBe('none');
    expect(stateOf('abc', 'both')).toBe('none');
  });

  it('says beyond as soon as one limit is passed, whatever the others', () => {
    const found = evaluate(gauge, situation(gauge, { x: '20 ± 0', least: '' }, { side: 'both' }));
    expect(found.verdict.checks.map((check) => check.state)).toEqual(['beyond', 'within']);
    expect(found.verdict.state).toBe('beyond');
  });
});

describe('what would settle it', () => {
  const settling = (x: string) => evaluate(gauge, situation(gauge, { x }, { side: 'above' })).verdict.settling;

  it('names the coarsest tool that would do and fits: half-widths tape 1, rule 0.5, caliper 0.03, micrometer 0.004 mm', () => {
    expect(settling('8.9 ± 2')?.tool?.id).toBe('tape');
    expect(settling('9.4 ± 2')?.tool?.id).toBe('rule');
    expect(settling('9.6 ± 2')?.tool?.id).toBe('caliper');
    // A feeler's ± 0.01 would do, but it reads gaps.
    expect(settling('9.98 ± 2')?.tool?.id).toBe('micrometer');
    expect(settling('9.993 ± 2')?.tool?.id).toBe('micrometer');
    expect(settling('10.6 ± 2')?.tool?.id).toBe('rule');
  });

  it('passes over a tool that would do but does not reach: a caliper to 150 mm, a longer one to 300, a micrometer to 25', () => {
    const near = (x: string, most: string) =>
      evaluate(gauge, situation(gauge, { x, most }, { side: 'above' })).verdict.settling?.tool?.id;
    expect(near('148.6 ± 2', '149 ± 0')).toBe('caliper');
    expect(near('151.6 ± 2', '152 ± 0')).toBe('long-caliper');
    expect(near('24.98 ± 2', '25 ± 0')).toBe('micrometer');
    expect(near('25.98 ± 2', '26 ± 0')).toBeUndefined();
  });

  it('names none where none would, and is silent where the verdict stands', () => {
    expect(settling('9.9999 ± 2')).toEqual({ symbol: 'x', share: 1, tool: undefined });
    expect(settling('9.997 ± 2')).toEqual({
      symbol: 'x',
      share: 1,
      tool: undefined,
      half: expect.closeTo(2.8e-6, 7) as number,
    });
    expect(settling('5 ± 2')).toBeUndefined();
    expect(settling('50 ± 2')).toBeUndefined();
  });

  it('names the input that contributes most', () => {
    const found = evaluate(gauge, situation(gauge, { x: '9.5 ± 0.5', most: '10 ± 2' }, { side: 'above' })).verdict
      .settling;
    expect(found?.symbol).toBe('most');
    expect(found?.share).toBeCloseTo(4 / 4.25, 3);
  });
});

/*
 * What the sync of two Z screws must show: lead 8 mm, 20 teeth, 0.75 mm over the screws' own distance:
 * 8/20 = 0.400 mm a tooth, 0.75/0.4 = 1.875 so 2 teeth, 0.75 − 0.8 = −0.05 mm left, 360° × −0.05/8 = −2.25°.
 */
describe('two-z-screws, the numbers it must show', () => {
  const given = { S: '400 ± 0', S_m: '400 ± 0', P_h: '8', z: '20', h_1: '0.2', k_1: '0.25' };
  const run = (dh: string, more: Record<string, string> = {}): Evaluation =>
    evaluate(twoZScrews, situation(twoZScrews, { ...given, dh, ...more }));
  const shown = (found: Evaluation, symbol: string): number => {
    const outcome = found.outcomes[symbol];
    if (!outcome?.ok) throw new Error(`${symbol}: ${JSON.stringify(outcome)}`);
    return fromSi(outcome.value, twoZScrews.formulas.find((f) => f.text.startsWith(`${symbol} =`))!.measure.unit);
  };

  it('0.75 mm: 0.400 mm per tooth, 2 teeth, −0.05 mm, −2.25°, beyond 0.05 mm', () => {
    const found = run('0.75 ± 0.03');
    expect(shown(found, 'h_t')).toBeCloseTo(0.4, 12);
    expect(shown(found, 'n')).toBeCloseTo(1.875, 12);
    expect(shown(found, 'n_w')).toBe(2);
    expect(shown(found, 'r')).toBeCloseTo(-0.05, 12);
    expect(shown(found, 'phi')).toBeCloseTo(-2.25, 10);
    expect(shown(found, 'dh_lim')).toBeCloseTo(0.05, 12);
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction?.sentence).toContain('right side, seen from the front');
    expect(found.instruction?.sentence).toContain('2 teeth');
    expect(found.instruction?.movements).toEqual([
      {
        part: 'right screw',
        direction: 'anticlockwise',
        amount: expect.closeTo((2 * (2 * Math.PI)) / 20, 9) as number,
      },
    ]);
  });

  it('by steel rule (±0.5 mm): still beyond, but 1 to 3 teeth; a caliper on dh settles it', () => {
    const found = run('0.75 ± 0.5');
    expect(found.verdict.state).toBe('beyond');
    expect(found.outcomes.n_w).toMatchObject({
      ok: false,
      failure: { kind: 'undetermined', from: 1, to: 3, symbols: ['dh'] },
    });
    expect(found.verdict.settling).toMatchObject({ symbol: 'dh', share: 1, tool: { id: 'caliper' } });
    expect(found.instruction?.movements).toEqual([]);
    expect(found.instruction?.sentence).toContain('right side, seen from the front');
    expect(found.instruction?.sentence).toContain('cannot be told');
    expect(found.instruction?.sentence).toContain('between 1 and 3');
  });

  it('0.3 mm by rule against 0.05 mm: too close to call', () => {
    const found = run('0.3 ± 0.5');
    expect(found.verdict.state).toBe('too close');
    expect(found.verdict.settling).toMatchObject({ symbol: 'dh', tool: { id: 'caliper' } });
    expect(found.instruction?.movements ?? []).toEqual([]);
  });

  it('a rule named as the tool has the half-width 0.5 mm', () => {
    const typed = situation(twoZScrews, { ...given, dh: '0.75' });
    const entries = { ...typed.entries, dh: { text: '+0.75', unit: 'mm', tool: 'rule' } };
    const { dh, S_m } = evaluate(twoZScrews, {
      ...typed,
      entries: { ...entries, S_m: { text: '400', unit: 'mm', tool: 'rule' } },
    }).inputs;
    expect(S_m).toMatchObject({ half: 0.5e-3 });
    expect(S_m).not.toHaveProperty('shape');
    // The difference of two readings has the doubt of both (JCGM 101, 6.4.5).
    expect(dh).toMatchObject({ half: 1e-3, shape: 'triangular' });
  });

  it('the share of the first input of an open whole number is its own, not the whole', () => {
    const found = run('0.75 ± 0.3', { S: '400 ± 100' });
    expect(found.verdict.settling?.symbol).toBe('dh');
    expect(found.verdict.settling?.share).toBeGreaterThan(0.5);
    expect(found.verdict.settling?.share).toBeLessThan(0.95);
  });
});

describe('two-z-screws mirrors: the reading’s sign says which side, and nothing else', () => {
  const given = { S_m: '400 ± 0', S: '400 ± 0', P_h: '8', z: '20' };
  const flip = { left: 'right', right: 'left' } as const;
  const mirrored = (text: string): string =>
    text.replace(/\b(left|right)\b/g, (side) => flip[side as keyof typeof flip]);

  it('same verdict, same turn by the same amount, on the other screw', () => {
    const readings = fc.integer({ min: 1, max: 4000 }).map((n) => n / 1000);
    const halves = fc.constantFrom('0', '0.004', '0.03', '0.2', '0.5');
    const options = fc.record({ drive: fc.constantFrom('belt', 'motors'), hand: fc.constantFrom('right', 'left') });
    fc.assert(
      fc.property(readings, halves, options, (reading, half, choices) => {
        const run = (dh: number) =>
          evaluate(twoZScrews, situation(twoZScrews, { ...given, dh: `${dh} ± ${half}` }, choices));
        const [up, down] = [run(reading), run(-reading)];
        expect(down.verdict.state).toBe(up.verdict.state);
        expect(down.verdict.settling).toEqual(up.verdict.settling);
        expect(down.instruction?.sentence).toEqual(up.instruction && mirrored(up.instruction.sentence));
        expect(down.instruction?.steps).toEqual(up.instruction?.steps.map(mirrored));
        expect(down.instruction?.movements).toEqual(
          up.instruction?.movements.map((movement) => ({ ...movement, part: mirrored(movement.part) })),
        );
        const [mine, other] = [up.outcomes.phi, down.outcomes.phi];
        expect(mine?.ok).toBe(other?.ok);
        if (mine?.ok && other?.ok) expect(other.value + mine.value).toBeCloseTo(0, 12);
      }),
      { numRuns: times(400, 40) },
    );
  });

  it('at half a tooth as well, where rounding has to choose', () => {
    for (const dh of ['0.2', '0.6', '1', '1.4']) {
      const run = (text: string) =>
        evaluate(twoZScrews, situation(twoZScrews, { ...given, dh: `${text} ± 0` })).instruction;
      expect(run(`-${dh}`)?.movements.map((m) => m.amount)).toEqual(run(dh)?.movements.map((m) => m.amount));
    }
  });

  it('a left-hand screw is turned the other way', () => {
    const turn = (hand: string) =>
      evaluate(twoZScrews, situation(twoZScrews, { ...given, dh: '0.8' }, { hand })).instruction?.movements[0]
        ?.direction;
    expect([turn('right'), turn('left')]).toEqual(['anticlockwise', 'clockwise']);
  });
});

it('judges a share against a limit typed in percent', () => {
  const own = {
    ...NONE,
    sources,
    inputs: { q: { label: 'Share' }, q_lim: { label: 'Most' } },
    results: { y: 'Share again' },
    limits: { y: 'Share' },
    orders: { share: (a: { share: Amount }, p: Print) => ({ glance: p(a.share), sentence: p(a.share) }) },
  };
  const calc = calculator(
    {
      choices: {},
      inputs: {
        q: input(ratio.one, { range: [0, 1] }),
        q_lim: input(ratio.percent, { range: [0, 100], typical: 5 }),
      },
      formulas: [formula('y = q', ratio.percent, byHand)],
      limits: [{ of: 'y', max: 'q_lim', cite: byHand }],
      cautions: [],
      measured: [],
      action: (ask) => telling<typeof own>().tell('share', { share: ask.quantity('y') }),
      examples: [],
    },
    own,
  );
  expect(evaluate(calc, situation(calc, { q: '0.049' })).verdict.state).toBe('within');
  expect(evaluate(calc, situation(calc, { q: '5.1 %' })).verdict.state).toBe('beyond');
  expect(evaluate(calc, situation(calc, { q: '0.049' })).instruction?.sentence).toBe('4.9\u00a0%');
  expect(evaluate(calc, situation(calc, { q: '0.049' })).instruction?.spoken).toBe('four point nine per cent');
});

describe('a calculator that judges for itself', () => {
  const own = calculator(
    {
      choices,
      inputs,
      formulas,
      limits: [],
      cautions: [],
      measured: [],
      examples: [],
      judge: (ask) => {
        const size = ask.number('y');
        return size > 1e-3 ? 'beyond' : ask.verdict === 'none' ? 'too close' : 'within';
      },
      action: (ask) => tell('state', { state: ask.verdict, lacks: ask.lacking('y') }, { measureAgain: true }),
    },
    { ...words, limits: {} },
  );
  const judged = (given: Record<string, string>) => evaluate(own, situation(own, given));

  it('decides in place of the limits, and its action sees what it decided', () => {
    // Without a limit there is no verdict by limits: that is what it is told.
    expect(judged({ x: '0.5' }).verdict.state).toBe('too close');
    expect(judged({ x: '2' }).verdict.state).toBe('beyond');
    expect(judged({ x: '2' }).instruction?.order.args).toEqual({ state: 'beyond', lacks: [] });
  });

  it('gives no verdict while what it asks for is missing, and names what a result waits for', () => {
    expect(judged({}).verdict.state).toBe('none');
    expect(judged({}).instruction?.order.args).toEqual({ state: 'none', lacks: ['x'] });
    expect(judged({}).instruction?.sentence).toBe('none; lacks length');
  });

  it('says itself what would settle it', () => {
    expect(judged({ x: '0.5 ± 0.4' }).verdict.settling).toBeUndefined();
  });
});
