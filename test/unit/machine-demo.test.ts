import { describe, expect, expectTypeOf, it } from 'vitest';
import dualZSync from '../../src/calculators/dual-z-sync/index';
import type { Calculator } from '../../src/engine/calculator';
import type { KeptValue as EntryKeptValue } from '../../src/engine/entry';
import { evaluate, symbolOf, unitOf } from '../../src/engine/evaluate';
import { expanded } from '../../src/formula/outcome';
import { demoMachine, demoReadings } from '../../src/machine/demo';
import { defaultSettings, restore, type KeptValue } from '../../src/machine/schema';
import { formatMeasured } from '../../src/quantity/format';
import { force, length, temperature } from '../../src/quantity/kinds';
import { fromSi } from '../../src/quantity/unit';

const calc: Calculator = dualZSync;

describe('the demo machine', () => {
  it.each(demoReadings.map((reading) => [reading.id, reading] as const))(
    'reading "%s" is what the calculator makes of its entries',
    (_, reading) => {
      // Only what was taken that day is typed; the rest comes from the demo machine.
      const typed = (symbol: string) => {
        const { value, unit, tool } = reading.entries[symbol]!;
        return { text: String(Number(fromSi(value, length.mm.unit).toPrecision(12))), unit, tool };
      };
      const found = evaluate(calc, {
        entries: { dh: typed('dh'), S_m: typed('S_m') },
        choices: { drive: demoMachine.choices['z.drive']!, hand: demoMachine.choices['z.hand']! },
        kept: demoMachine.values,
        mark: 'point',
      });
      expect(found.choices).toEqual(reading.choices);
      expect(Object.keys(found.inputs).sort()).toEqual(Object.keys(reading.entries).sort());
      for (const [symbol, state] of Object.entries(found.inputs)) {
        if (!state.ok) throw new Error(`${symbol}: ${state.reason}`);
        const entry = reading.entries[symbol]!;
        expect(entry).toMatchObject({ unit: state.unit.id, origin: state.origin, tool: state.tool });
        expect(Math.abs(entry.value - state.value)).toBeLessThan(1e-12);
        expect(Math.abs(entry.half - state.half)).toBeLessThan(1e-12);
      }
      expect(found.formulas.map(symbolOf).sort()).toEqual(Object.keys(reading.results).sort());
      for (const [symbol, result] of Object.entries(reading.results)) {
        const outcome = found.outcomes[symbol];
        if (!outcome?.ok) throw new Error(symbol);
        const unit = unitOf(calc, found, symbol)!;
        // Ten digits stand in the file.
        for (const end of ['value', 'low', 'high'] as const) {
          expect(Math.abs(result[end] - outcome[end]), `${symbol} ${end}`).toBeLessThanOrEqual(
            1e-9 * Math.abs(outcome[end]),
          );
        }
        expect(result).toMatchObject({ unit: unit.id, text: formatMeasured(outcome.value, expanded(outcome), unit) });
      }
      expect(found.verdict.state).toBe(reading.verdict);
      expect(found.instruction).toMatchObject({ headline: reading.headline, steps: reading.steps });
    },
  );

  it('tells a story: beyond, then within a week later', () => {
    expect(demoReadings.map((reading) => reading.verdict)).toEqual(['beyond', 'within']);
    const [first, second] = demoReadings.map((reading) => Date.parse(reading.at));
    expect((second! - first!) / 86_400_000).toBeCloseTo(7, 0);
  });

  it('is marked as a demo, refers to itself, and passes the door', () => {
    expect(demoMachine.demo).toBe(true);
    for (const record of [demoMachine, ...demoReadings]) expect(restore(record)).toEqual({ ok: true, record });
    expect(demoReadings.every((reading) => reading.machine === demoMachine.id)).toBe(true);
  });
});

describe('copies of facts that another layer owns', () => {
  it('a kept value is what a calculator takes', () => {
    expectTypeOf<KeptValue>().toEqualTypeOf<EntryKeptValue>();
    expectTypeOf(demoMachine.values['z.lead']).toEqualTypeOf<EntryKeptValue | undefined>();
  });

  it('the units of the settings exist', () => {
    const preferred = [
      [length.mm.kind, ['mm', 'in'], 'lengthUnit'],
      [force.N.kind, ['N', 'kgf', 'lbf'], 'forceUnit'],
      [temperature.C.kind, ['C', 'F'], 'temperatureUnit'],
    ] as const;
    for (const [kind, ids, field] of preferred) {
      for (const id of ids) {
        expect(kind.units.map((unit) => unit.id)).toContain(id);
        expect(restore({ ...defaultSettings, [field]: id }).ok).toBe(true);
      }
      expect(restore({ ...defaultSettings, [field]: 'furlong' }).ok).toBe(false);
    }
  });
});
