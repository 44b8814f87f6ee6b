import { describe, expect, it } from 'vitest';
import type { ChoiceSpec, InputSpec } from '../../src/engine/calculator';
import { nudgeStep, readEntry, type Entry, type InputState, type KeptValue } from '../../src/engine/entry';
import { angle, count, force, length, ratio, temperature } from '../../src/quantity/kinds';
import { readFeatures } from '../../src/reference/features';
import { AS_MARKED, halfWidth, reaches, tools, toolsFor } from '../../src/reference/tools';
import { sideOf, signedText, sizeOf } from '../../src/engine/signs';
import say from '../../src/engine/words/en';
import { inputNamed } from '../support/inputs';
import { allKinds } from '../../src/quantity/all-kinds';

const width = inputNamed('Width', length.mm, { typical: 0.4, spread: 0.05, range: [0.1, 2], tool: 'caliper' });
const bare = inputNamed('Gap', length.mm, { range: [-5, 5], signed: 'scale' });
const pull = inputNamed('Pull', force.N, { range: [0, 100] });
const teeth = inputNamed('Teeth', count.one, { typical: 20, range: [8, 200] });

const typed = (text: string, tool = '', unit = 'mm'): Entry => ({ text, tool, unit });

function read(
  spec: InputSpec,
  entry?: Entry,
  kept?: KeptValue,
  choices: Record<string, ChoiceSpec> = {},
  chosen = {},
): InputState {
  return readEntry('x', spec, entry, kept, choices, chosen, 'point');
}

const kept = (value: number, more: Partial<KeptValue> = {}): KeptValue => ({
  value,
  half: 1e-5,
  unit: 'mm',
  origin: 'measured',
  tool: 'caliper',
  at: '2026-01-02T03:04:05Z',
  ...more,
});

describe('which value counts', () => {
  it('takes what is typed before what the machine keeps, and that before the typical value', () => {
    expect(read(width, typed('0.6'), kept(0.5e-3))).toMatchObject({
      ok: true,
      value: 0.6e-3,
      kept: false,
      origin: 'measured',
    });
    expect(read(width, typed(''), kept(0.5e-3))).toMatchObject({
      ok: true,
      value: 0.5e-3,
      kept: true,
      half: 1e-5,
      tool: 'caliper',
    });
    expect(read(width, typed('  '))).toMatchObject({ ok: true, value: 0.4e-3, origin: 'typical', kept: false });
    expect(read(width)).toMatchObject({ ok: true, value: 0.4e-3, origin: 'typical' });
  });

  it('asks for what has none, by its label', () => {
    expect(read(bare)).toEqual({ ok: false, blank: true, reason: 'Enter: Gap.' });
    expect(read(bare, typed(''))).toEqual({ ok: false, blank: true, reason: 'Enter: Gap.' });
  });

  it('does not fall back to the typical value when the typed one is wrong', () => {
    expect(read(width, typed('abc'), kept(0.5e-3))).toMatchObject({ ok: false, blank: false });
    expect(read(width, typed('3'), kept(0.5e-3))).toMatchObject({ ok: false, blank: false });
  });

  it('takes the typical value of the option chosen, with its own half-width or the input’s', () => {
    const material: Record<string, ChoiceSpec> = {
      material: {
        label: 'Material',
        options: { a: { label: 'a', set: { x: 0.7 } }, b: { label: 'b', set: { x: [0.9, 0.01] } }, c: { label: 'c' } },
        typical: 'a',
      },
    };
    const under = (option?: string) =>
      read(width, undefined, undefined, material, option === undefined ? {} : { material: option });
    const half = (state: InputState) => (state.ok ? [state.value * 1e3, state.half * 1e3] : []);
    expect(half(under('a'))).toEqual([0.7, 0.05]);
    expect(half(under('b'))).toEqual([expect.closeTo(0.9, 12), expect.closeTo(0.01, 12)]);
    expect(half(under('c'))).toEqual([0.4, 0.05]);
    expect(half(under())).toEqual([0.7, 0.05]);
  });
});

describe('the range', () => {
  it.each([
    ['0.1', true],
    ['2', true],
    ['2.0001', false],
    ['0.0999', false],
    ['5/64 in', true],
    ['1 in', false],
    ['-0.4', false],
  ])('%s mm in 0.1 to 2 mm', (text, ok) => {
    expect(read(width, typed(text)).ok).toBe(ok);
  });

  it('says the range in the unit typed, and on which side the value lies', () => {
    expect(read(width, typed('1 in'))).toMatchObject({
      ok: false,
      reason: '1\u00a0in is above what this check can use. Accepted: 0.00393701\u00a0in to 0.0787402\u00a0in.',
    });
    expect(read(width, typed('0.05'))).toMatchObject({
      reason: '0.05\u00a0mm is below what this check can use. Accepted: 0.1\u00a0mm to 2\u00a0mm.',
    });
  });

  it('takes the end of a range that rounding has moved: 2.2 mm kept and read back in inches', () => {
    const spec = inputNamed('x', length.mm, { range: [0, 2.2] });
    expect(read(spec, typed('0.0866141732283464567 in')).ok).toBe(true);
  });

  it('compares temperatures on their scale', () => {
    const spec = inputNamed('Bed', temperature.C, { range: [15, 150] });
    expect(read(spec, typed('140 °F', '', 'C'))).toMatchObject({ ok: true });
    expect(read(spec, typed('50 °F', '', 'C'))).toMatchObject({
      ok: false,
      reason: expect.stringContaining('59\u00a0°F to 302\u00a0°F') as string,
    });
  });

  it('refuses a half-width wider than the range, from the field and from the machine', () => {
    expect(read(width, typed('1 ± 1.9'))).toMatchObject({ ok: true });
    expect(read(width, typed('1 ± 1.91'))).toMatchObject({
      ok: false,
      reason: expect.stringContaining('half-width') as string,
    });
    expect(read(width, undefined, kept(1e-3, { half: 1e300 }))).toMatchObject({ ok: false, blank: false });
  });

  it('says that it is the machine’s value that does not fit', () => {
    expect(read(width, undefined, kept(5e-3))).toMatchObject({
      ok: false,
      blank: false,
      reason: expect.stringMatching(/^The machine’s value does not fit: 5\u00a0mm is above/) as string,
    });
  });
});

describe('half-width and origin', () => {
  const half = (spec: InputSpec, entry: Entry): number => {
    const state = read(spec, entry);
    if (!state.ok) throw new Error(state.reason);
    return state.half;
  };

  it('takes ± before the tool, the tool before the usual spread', () => {
    expect(half(width, typed('0.4 ± 0.1', 'rule'))).toBeCloseTo(0.1e-3, 15);
    expect(half(width, typed('0.4 ± 0', 'rule'))).toBe(0);
    expect(half(width, typed('0.4', 'rule'))).toBe(0.5e-3);
    expect(half(width, typed('0.4', 'caliper'))).toBe(0.03e-3);
    expect(half(width, typed('0.4'))).toBeCloseTo(0.05e-3, 15);
    expect(half(bare, typed('0.4'))).toBe(0);
  });

  it('takes a value as marked for exact, and says that it stands on a plate', () => {
    expect(read(width, typed('0.4', AS_MARKED))).toMatchObject({ half: 0, origin: 'nameplate' });
    expect(read(width, typed('0.4 ± 0.1', AS_MARKED))).toMatchObject({
      origin: 'nameplate',
      half: expect.closeTo(1e-4, 12) as number,
    });
  });

  it('takes a count for exact', () => {
    expect(read(teeth, typed('21', '', 'one'))).toMatchObject({ half: 0, origin: 'measured' });
  });

  it('reads the share of a relative tool from the reading', () => {
    expect(half(pull, { text: '40', unit: 'N', tool: 'luggage-scale' })).toBeCloseTo(0.4, 12);
  });

  it('does not believe a tool of another kind, or one that does not exist', () => {
    expect(half(pull, { text: '40', unit: 'N', tool: 'caliper' })).toBe(0);
    expect(half(width, typed('0.4', 'crystal ball'))).toBeCloseTo(0.05e-3, 15);
  });

  it('reads in the unit of the field, and falls back to the input’s where there is none such', () => {
    expect(read(width, typed('1/64', '', 'in'))).toMatchObject({ value: 0.0254 / 64, unit: { id: 'in' } });
    expect(read(width, typed('0.4', '', 'furlong'))).toMatchObject({ value: 0.4e-3, unit: { id: 'mm' } });
    expect(read(width, undefined, kept(0.4e-3, { unit: 'thou' }))).toMatchObject({ unit: { id: 'thou' } });
  });
});

describe('the step of a nudge', () => {
  it('is a division of the tool in hand, or of the usual one', () => {
    expect(nudgeStep(width, 'rule', 1e-3, length.mm.unit)).toBe(0.5e-3);
    expect(nudgeStep(width, '', 1e-3, length.mm.unit)).toBe(0.01e-3);
  });

  it('is one for a count', () => {
    expect(nudgeStep(teeth, '', 20, count.one.unit)).toBe(1);
  });

  it.each([
    [40, 1],
    [99, 1],
    [5, 0.1],
    [-5, 0.1],
    [0.4, 0.01],
  ])('without a tool is one in the second digit of %s', (value, step) => {
    expect(nudgeStep(pull, '', value, force.N.unit)).toBeCloseTo(step, 12);
  });

  it('is above zero at zero, in any unit', () => {
    for (const spec of [
      pull,
      bare,
      inputNamed('Share', ratio.percent, { range: [0, 100] }),
      inputNamed('Turn', angle.deg, { range: [-90, 90] }),
    ]) {
      expect(nudgeStep(spec, '', 0, spec.measure.unit)).toBeGreaterThan(0);
    }
  });
});

describe('the tools', () => {
  const ids = new Set(allKinds.map(({ id }) => id));

  it('have ids of their own, read a kind there is, and stand coarsest first', () => {
    expect(new Set(tools.map((tool) => tool.id)).size).toBe(tools.length);
    for (const tool of tools) {
      expect(ids).toContain(tool.kind);
      expect(halfWidth(tool, 0)).toBeGreaterThan(0);
      expect(tool.features.length).toBeGreaterThan(0);
      expect(tool.division).toBeGreaterThan(0);
      expect(tool.id).not.toBe(AS_MARKED);
    }
    // Of those that read the same feature at the same size.
    for (const kind of ids)
      for (const feature of readFeatures)
        for (const [low, high] of toolsFor(kind, [feature]).map((tool) => tool.reach)) {
          const middle = (low + high) / 2;
          const halves = toolsFor(kind, [feature])
            .filter((tool) => reaches(tool, middle))
            .map((tool) => halfWidth(tool, middle, [feature]));
          expect(halves, `${kind} ${feature}`).toEqual([...halves].sort((a, b) => b - a));
        }
  });

  // Half-widths of the trade, from memory (references.md): rule 0.5 mm, caliper 0.03, dial and feeler 0.01, scale 1 %, protractor 0.5°.
  // A scale of 0.1 N divisions is never better than one; leads of 0.3 ohm and two last figures of 0.1 stand in 3.6 ohm ± 1 %;
  // type K, class 2: 2.5 K, or 0.0075 |t| (IEC 60584-1:2013, table 12), and 1 K for its meter.
  it.each([
    ['rule', 1, 0.5e-3],
    ['caliper', 1, 0.03e-3],
    ['dial', 1e-3, 0.01e-3],
    ['feeler', 1, 0.01e-3],
    ['luggage-scale', 30, 0.3],
    ['luggage-scale', -30, 0.3],
    ['luggage-scale', 0.5, 0.1],
    ['ohmmeter', 3.6, 0.036 + 0.2 + 0.3],
    ['ohmmeter-zeroed', 3.6, 0.036 + 0.2],
    ['ohmmeter', 100e3, 1000 + 200 + 0.3],
    ['voltmeter', 24, 0.24 + 0.2],
    ['thermometer', 273.15 + 215, 3.5],
    ['thermometer', 273.15 + 400, 4],
    ['thermometer', 273.15 + 20, 3.5],
    ['dial', 10e-3, 0.02e-3],
    ['protractor', 1, (0.5 * Math.PI) / 180],
  ])('%s at %s has the half-width %s', (id, reading, half) => {
    expect(
      halfWidth(
        tools.find((tool) => tool.id === id)!,
        reading,
      ),
    ).toBeCloseTo(half, 12);
  });
});

describe('the doubt of a typed value that no tool and no ± gives one', () => {
  const stiff = inputNamed('Stiffness', force.N, { typical: 100, spread: 50, range: [0.1, 1000] });

  it('is the typical one in proportion, so that it never says more than the value itself', () => {
    expect(read(stiff, typed('20', '', 'N'))).toMatchObject({ ok: true, value: 20, half: 10 });
    expect(read(stiff, typed('20 ± 2', '', 'N'))).toMatchObject({ ok: true, value: 20, half: 2 });
  });

  it('stays as it is where the quantity may lie on either side of zero', () => {
    const shift = inputNamed('Shift', length.mm, { typical: 1, spread: 0.2, range: [-5, 5], signed: 'scale' });
    expect(read(shift, typed('0.1'))).toMatchObject({ ok: true, half: 0.2e-3 });
  });
});

describe('an input whose sign is a picture', () => {
  const tilt = inputNamed('Tilt', length.mm, {
    range: [-5, 5],
    signed: { plus: 'right-higher', minus: 'left-higher' },
  });

  it('is not taken before a picture is picked, and says which there are', () => {
    const state = read(tilt, typed('0.3'));
    expect(state).toMatchObject({ ok: false, blank: false });
    expect(!state.ok && state.reason).toContain(say.signs['right-higher']);
    expect(!state.ok && state.reason).toContain(say.signs['left-higher']);
  });

  it.each([
    ['+0.3', 0.3e-3],
    ['-0.3', -0.3e-3],
    ['−0.3', -0.3e-3],
    ['+ 0.3 ± 0.1', 0.3e-3],
    ['0', 0],
    ['0 ± 0.1', 0],
  ])('%s is', (text, value) => {
    expect(read(tilt, typed(text))).toMatchObject({ ok: true, value });
  });

  it.each(['+', '-', ' − '])('%s alone is a picture without a size: nothing entered', (text) => {
    expect(read(tilt, typed(text))).toEqual({ ok: false, blank: true, reason: 'Enter: Tilt.' });
    expect(read(tilt, typed(text), kept(0.2e-3))).toMatchObject({ ok: true, value: 0.2e-3, kept: true });
  });

  it.each([
    ['+0.3', 'plus', '0.3'],
    ['-0.3', 'minus', '0.3'],
    ['−0.3', 'minus', '0.3'],
    ['0.3 +- 0.1', undefined, '0.3 +- 0.1'],
    ['+- 0.1', undefined, '+- 0.1'],
    ['+/- 0.1', undefined, '+/- 0.1'],
    ['-', 'minus', ''],
    ['', undefined, ''],
  ])('%s is the side %s and the size %s', (text, side, size) => {
    expect([sideOf(text), sizeOf(text)]).toEqual([side, size]);
  });

  it('takes a number from elsewhere as it is: no sign is a plus there', () => {
    expect(['0.3', '+0.3', '-0.3', ''].map((text) => signedText(tilt, text))).toEqual(['+0.3', '+0.3', '-0.3', '']);
    expect(signedText(bare, '0.3')).toBe('0.3');
  });
});
