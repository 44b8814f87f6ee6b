import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applies } from '../../src/engine/calculator';
import { effectiveChoices, evaluate, symbolOf } from '../../src/engine/evaluate';
import { systemFor } from '../../src/engine/system';
import calc from '../../src/calculators/screw-step/index';
import { layerErrors, patternOf } from '../../src/calculators/screw-step/model';
import { checkSystem } from '../../src/formula/system';
import { dimensionless } from '../../src/quantity/dimension';
import { fromSi } from '../../src/quantity/unit';
import { times } from '../support/sweep';

type Texts = Readonly<Record<string, string>>;

function work(given: Texts, options: Texts = {}, mark: 'point' | 'comma' = 'point') {
  // What has to be read before there is a verdict.
  const usual = { h: mark === 'comma' ? '0,2 mm' : '0.2 mm', P_h: '8 mm', p: '2 mm', z: '20' };
  const entries = Object.fromEntries(
    Object.entries({ ...usual, ...given }).map(([symbol, text]) => [symbol, { text, unit: '', tool: '' }]),
  );
  // Full steps, the harder case, where nothing else is said.
  const choices = { grid: 'full', ...options };
  return evaluate(calc, { entries, choices, kept: {}, mark });
}

const instructionOf = (given: Texts, choices: Texts = {}) => {
  const found = work(given, choices);
  if (!found.instruction) throw new Error(found.cannot);
  return {
    state: found.verdict.state,
    ...found.instruction,
    said: found.instruction.order.say,
    keys: found.instruction.order.steps.map((step) => step.say),
    all: [found.instruction.sentence, ...found.instruction.steps].join(' '),
  };
};

const microstep = (found: ReturnType<typeof instructionOf>) =>
  found.order.steps.find((step) => step.say === 'friction')?.args;

describe('formulas', () => {
  for (const lift of ['screw', 'belt']) {
    for (const grid of ['full', 'micro']) {
      it(`have the declared dimensions: ${lift}, ${grid}`, () => {
        const choices = effectiveChoices(calc, { lift, grid });
        const used = calc.formulas.filter((f) => applies(f.when, choices));
        checkSystem(systemFor(calc, choices), (symbol) => {
          const measure = used.find((f) => symbolOf(f) === symbol)?.measure ?? calc.inputs[symbol]?.measure;
          // Hidden excesses take the dimension of the limited result.
          if (symbol.startsWith('excess_')) return symbol.startsWith('excess_0') ? dimensionless : [1, 0, 0, 0, 0];
          if (!measure) throw new Error(symbol);
          return measure.kind.dimension;
        });
      });
    }
  }

  it.each(calc.examples.map((example) => [example.title, example] as const))('example: %s', (_, example) => {
    const found = work(example.given as Texts, example.choices);
    for (const [symbol, expected] of Object.entries(example.expect)) {
      const outcome = found.outcomes[symbol];
      const spec = found.formulas.find((f) => symbolOf(f) === symbol);
      if (!outcome?.ok || !spec || !expected) throw new Error(`${symbol} has no result`);
      expect(Math.abs(fromSi(outcome.value, spec.measure.unit) - expected[0])).toBeLessThanOrEqual(expected[1]);
    }
    expect(found.verdict.state).toBe(example.verdict);
  });
});

describe('pattern and formula', () => {
  // The largest thickness error that a whole repeat really shows is the one the formula gives without searching.
  it('agree, for heights and leads as typed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 400 }),
        fc.integer({ min: 50, max: 4000 }),
        fc.constantFrom(0.9, 1.8, 3.6, 7.5),
        fc.constantFrom('full', 'micro'),
        (height, lead, theta_s, grid) => {
          const [h, P_h] = [height / 1000, lead / 100];
          const found = work({ h: `${h} mm`, P_h: `${P_h} mm`, theta_s: `${theta_s} deg`, m: '8' }, { grid });
          const [g, e] = [found.outcomes.g, found.outcomes.e];
          if (!g?.ok || !e?.ok) throw new Error('no result');
          const pattern = patternOf(h / 1000, g.value);
          expect(pattern.largest).toBeCloseTo(e.value, 12);
          if (pattern.repeat === undefined) return;
          const layers = layerErrors(h / 1000, g.value, 2 * pattern.repeat);
          const worst = Math.max(...layers.map((layer) => Math.abs(layer.thickness)));
          expect(worst).toBeCloseTo(e.value, 12);
          expect(Math.max(...layers.map((layer) => Math.abs(layer.height)))).toBeLessThanOrEqual(g.value / 2 + 1e-15);
          // The second repeat is the first again, and no shorter stretch ends on a height that is met exactly.
          layers.slice(0, pattern.repeat).forEach((layer, i) => {
            expect(layers[i + pattern.repeat!]?.thickness).toBeCloseTo(layer.thickness, 15);
            const met = Math.abs(layer.height) < 1e-9 * g.value;
            expect(met).toBe(layer.number === pattern.repeat);
          });
        },
      ),
      { numRuns: times(400, 25) },
    );
  });

  it('25/4: three layers of 0.24 mm and one of 0.28 mm, ridges 1 mm apart', () => {
    const pattern = patternOf(0.25e-3, 0.04e-3);
    expect(pattern.repeat).toBe(4);
    expect(pattern.period).toBeCloseTo(1e-3, 12);
    expect(pattern.oddEvery).toBeCloseTo(1e-3, 12);
    const thick = layerErrors(0.25e-3, 0.04e-3, 8).map((layer) => Math.round(layer.thickness * 1e6));
    // Heights 0.25 0.50 0.75 1.00 mm round to 0.24 0.52 0.76 1.00 mm (6.25 12.5 18.75 25 steps, a half goes up).
    expect(thick).toEqual([-10, 30, -10, -10, -10, 30, -10, -10]);
  });

  it('a height a hair off whole steps has one odd layer now and then, not none', () => {
    const pattern = patternOf(0.2001e-3, 0.04e-3);
    expect(pattern.repeat).toBe(400);
    expect(pattern.largest).toBeCloseTo(0.0399e-3, 12);
  });

  it('says so when nothing repeats within a thousand layers', () => {
    const pattern = patternOf(0.2e-3, 0.04e-3 * Math.SQRT2);
    expect(pattern.repeat).toBeUndefined();
    expect(pattern.period).toBeUndefined();
    expect(pattern.oddEvery).toBeGreaterThan(0);
  });

  it('offers no height of zero', () => {
    expect(patternOf(0.15e-3, 0.2e-3)).toMatchObject({ below: undefined, above: 0.2e-3 });
  });
});

describe('whole steps are not lost to rounding', () => {
  it.each([0.04, 0.08, 0.12, 0.16, 0.2, 0.24, 0.28, 0.32, 0.36, 0.4])('%f mm on 0.04 mm', (h) => {
    const found = work({ h: `${h} mm`, P_h: '8 mm', theta_s: '1.8 deg' });
    const whole = Math.round(h / 0.04);
    expect(found.outcomes.n_f).toMatchObject({ ok: true, value: whole });
    expect(found.outcomes.n_c).toMatchObject({ ok: true, value: whole });
    expect(found.outcomes.e).toMatchObject({ ok: true, value: 0 });
  });

  it('but a step count that the uncertainty leaves open stays open', () => {
    const found = work({ h: '0.2 mm', P_h: '8 mm ± 0.03 mm' });
    expect(found.outcomes.n_f).toMatchObject({ ok: false, failure: { kind: 'undetermined', from: 4, to: 5 } });
    expect(found.instruction?.order.say).toBe('enterMarked');
  });
});

describe('instruction', () => {
  it('takes the usual drive to hold microsteps: 0.25 mm at a lead of 8 mm is left alone', () => {
    const entries = Object.fromEntries(
      Object.entries({ h: '0.25 mm', P_h: '8 mm' }).map(([symbol, text]) => [symbol, { text, unit: '', tool: '' }]),
    );
    const found = evaluate(calc, { entries, choices: {}, kept: {}, mark: 'point' });
    expect(found.choices.grid).toBe('micro');
    expect(found.verdict.state).toBe('within');
    expect(found.instruction!.order).toMatchObject({ say: 'leaveWhole', args: { grid: 'micro' } });
  });

  it('judges nothing before layer and lead were entered', () => {
    expect(evaluate(calc, { entries: {}, choices: {}, kept: {}, mark: 'point' }).verdict.state).toBe('none');
  });

  it('leaves whole steps alone', () => {
    const found = instructionOf({ h: '0.2 mm', P_h: '8 mm' });
    expect(found.state).toBe('within');
    expect(found.order).toMatchObject({ say: 'leaveWhole', args: { grid: 'full' } });
    expect(found.movements).toEqual([]);
  });

  it('sends 0.25 mm down to 0.24 mm and names 0.28 mm, the pattern and the way out by microsteps', () => {
    const found = instructionOf({ h: '0.25 mm', P_h: '8 mm' });
    expect(found.state).toBe('beyond');
    expect(found.all).toContain('Set the layer height to 0.24\u00a0mm, 0.01\u00a0mm lower');
    expect(found.all).toContain('0.28\u00a0mm will do as well: 0.03\u00a0mm higher');
    expect(found.all).toContain('repeats every 4 layers, 1\u00a0mm');
    expect(found.order.steps).toContainEqual(
      expect.objectContaining({ say: 'leaveIfHeld', args: expect.objectContaining({ most: undefined }) as object }),
    );
    expect(found.movements[0]).toMatchObject({ part: 'layer height', direction: 'down' });
    expect(found.movements[0]?.amount).toBeCloseTo(0.01e-3, 12);
  });

  it('mirrors: as far below whole steps as above them, the other way by the same amount', () => {
    const [above, below] = [instructionOf({ h: '0.25 mm' }), instructionOf({ h: '0.23 mm' })];
    expect(above.movements[0]?.direction).toBe('down');
    expect(below.movements[0]?.direction).toBe('up');
    expect(above.movements[0]?.amount).toBeCloseTo(below.movements[0]?.amount ?? NaN, 12);
  });

  it('offers only the height above where there is no whole step below', () => {
    const found = instructionOf({ h: '0.17 mm' }, { lift: 'belt' });
    expect(found.sentence).toContain('0.2\u00a0mm, 0.03\u00a0mm higher');
    expect(found.keys[0]).toBe('noneBelow');
  });

  // By hand: 36 × 3 mm × 1.8°/360° = 0.54 mm; 50 mm × 15°/360° = 2.083 mm; 2 × 25 % of 0.2 mm is 0.1 mm.
  it.each([
    [{ p: '3 mm', z: '36' }, { lift: 'belt' }, '0.54\u00a0mm', '5.4 times'],
    [{ P_h: '50 mm', theta_s: '15 deg' }, {}, '2.08333\u00a0mm', '20.9 times'],
  ])('does not send a layer far off to reach a whole step: %o', (given, choices, whole, ratio) => {
    const found = instructionOf({ h: '0.2 mm', ...given }, choices);
    expect(found.state).toBe('beyond');
    expect(found.order).toMatchObject({ say: 'tooCoarse', args: { grid: 'full' } });
    expect(found.movements).toEqual([]);
    expect(found.all).toContain(`are at ${whole}`);
    expect(found.all).toContain(`Gearing down ${ratio}`);
  });

  it('changes the layer by no more than the share allowed, either way', () => {
    // A step of 0.1 mm: 0.13 mm is 23 % from 0.1 mm, and 0.14 mm is 29 %; 0.16 mm is 25 % from 0.2 mm.
    const at = (h: string, k_h = '25') => instructionOf({ h, P_h: '20 mm', k_h }).movements[0]?.direction;
    expect(at('0.13 mm')).toBe('down');
    expect(at('0.14 mm')).toBeUndefined();
    expect(at('0.14 mm', '29')).toBe('down');
    expect(at('0.16 mm')).toBe('up');
    expect(at('0.17 mm')).toBe('up');
    expect(at('0.17 mm', '17')).toBeUndefined();
  });

  it('asks for more microsteps where it is they that are too coarse', () => {
    const found = instructionOf({ h: '0.14 mm', P_h: '20 mm', m: '1' }, { grid: 'micro' });
    // A full step of 0.1 mm: 0.05 and 0.025 mm are no whole parts of 0.14 mm, and a sixteenth, 6.25 µm, misses it by under 5 %.
    expect(found.order).toMatchObject({ say: 'setMicrosteps', args: { to: 16 }, effect: { m: 16 } });
  });

  it('writes the gear ratio as the person writes decimals', () => {
    const found = work({ h: '0,2', p: '3', z: '36' }, { lift: 'belt' }, 'comma');
    expect(found.instruction?.steps.join(' ')).toContain('Gearing down 5,4 times');
  });

  it('calls a small error small', () => {
    const found = instructionOf({ h: '0.125 mm', P_h: '2 mm', k: '5 %' });
    expect(found.state).toBe('within');
    expect(found.said).toBe('leaveNearly');
    expect(found.sentence).toContain('5\u00a0µm');
  });

  it('frees the drive where friction is too much, and says how little it may be', () => {
    const found = instructionOf({ h: '0.2 mm', tau_h: '400 N·mm', tau_f: '200 N·mm ± 0', k: '5 %' });
    expect(found.state).toBe('beyond');
    expect(found.said).toBe('free');
    expect(microstep(found)).toMatchObject({ swallowed: true });
    // 10 µm of a 40 µm step is a quarter of 90°: 400 N·mm × sin 22.5° = 153.07 N·mm.
    expect(found.all).toContain('below 153\u00a0N·mm');
    // Down to whole N·mm.
    expect(found.movements[0]?.amount).toBeCloseTo(0.2 - 0.153, 9);
  });

  it('frees the drive first where friction beats the motor', () => {
    const found = instructionOf({ tau_h: '100 N·mm', tau_f: '150 N·mm ± 0' });
    expect(found.state).toBe('none');
    expect(found.said).toBe('freeFirst');
  });

  it('wants friction measured better when it is too close to call', () => {
    const found = instructionOf({ h: '0.2 mm', tau_h: '400 N·mm', tau_f: '153 N·mm ± 10 N·mm' });
    expect(found.state).toBe('too close');
    expect(found.said).toBe('measureFriction');
  });

  it('says that microsteps below friction gain nothing', () => {
    expect(microstep(instructionOf({ m: '16', tau_f: '20 N·mm ± 0' }))).toMatchObject({ swallowed: false });
    expect(microstep(instructionOf({ m: '64', tau_f: '20 N·mm ± 0' }))).toMatchObject({ swallowed: true });
  });

  it('writes decimals as the person does', () => {
    expect(work({ h: '0,25' }, {}, 'comma').instruction?.sentence).toContain('0,24\u00a0mm, 0,01\u00a0mm lower');
  });

  it('ends in a sentence for any entries', () => {
    const texts = fc.constantFrom('', '0.1', '0.25', '3', '20', '400', '8 mm', '0.2 ± 0.01', 'x', '-1', '0');
    const symbols = Object.keys(calc.inputs);
    fc.assert(
      fc.property(
        fc.array(texts, { minLength: symbols.length, maxLength: symbols.length }),
        fc.constantFrom('screw', 'belt'),
        fc.constantFrom('full', 'micro'),
        (typed, lift, grid) => {
          const found = work(Object.fromEntries(symbols.map((symbol, i) => [symbol, typed[i] ?? ''])), { lift, grid });
          const words = found.cannot ?? found.instruction?.sentence ?? '';
          expect(words).not.toBe('');
          expect(JSON.stringify(found.instruction ?? '')).not.toMatch(/NaN|undefined|Infinity/);
        },
      ),
      { numRuns: 300 },
    );
  });
});

it('allows twice the lag after a change of direction, in the proof as in the cautionary notes', () => {
  expect(calc.proof).toContain('twice');
});
