import { readFileSync } from 'node:fs';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type { KeptValue as EntryKeptValue } from '../../src/engine/entry';
import type { Args as ToldArgs } from '../../src/engine/order';
import { restore, type KeptValue, type Reading } from '../../src/machine/schema';
import { defaultSettings } from '../../src/machine/version';
import type { Args } from '../../src/machine/schema-args';
import { force, length, temperature } from '../../src/quantity/kinds';
import { demoMachine, demoReadings } from '../support/demo';

/** The demo readings as the released version had them written down, ten digits each; its bed was 220 mm wide, today’s is 240. */
const WIDER = 240 / 220;
const goesByWidth = new Set(['W', 'dh_bed']);
const today = (symbol: string, value: number): number => (goesByWidth.has(symbol) ? WIDER * value : value);

const { readings: released } = JSON.parse(readFileSync('test/cases/version-3.txt', 'utf8')) as {
  readings: (Pick<Reading, 'id' | 'at' | 'note' | 'entries' | 'choices' | 'results' | 'verdict'> & {
    headline: string;
    steps: string[];
  })[];
};

describe('the demo machine', () => {
  it.each(demoReadings.map((reading) => [reading.id, reading] as const))(
    'reading "%s" is made with the numbers that it was released with: its doubt and its words are those of today',
    (id, reading) => {
      const old = released.find((one) => one.id === id)!;
      const { at, note, choices, verdict } = old;
      expect(reading).toMatchObject({ at, note, choices, verdict, whole: true });
      expect(Object.keys(reading.entries).sort()).toEqual(Object.keys(old.entries).sort());
      for (const [symbol, { value: was, unit }] of Object.entries(old.entries)) {
        const value = today(symbol, was);
        const entry = reading.entries[symbol]!;
        expect(entry).toMatchObject({ unit });
        expect(Math.abs(entry.value - value)).toBeLessThan(1e-12);
      }
      expect(Object.keys(reading.results).sort()).toEqual(Object.keys(old.results).sort());
      for (const [symbol, { unit, value: was }] of Object.entries(old.results)) {
        const value = today(symbol, was);
        const result = reading.results[symbol]!;
        expect(result).toMatchObject({ unit });
        expect(Math.abs(result.value - value), symbol).toBeLessThanOrEqual(1e-9 * Math.abs(value));
        expect(result.low <= value && value <= result.high, symbol).toBe(true);
      }
    },
  );

  it('tells a story: beyond, then within a week later', () => {
    expect(demoReadings.map((reading) => reading.verdict)).toEqual(['beyond', 'within']);
    expect(demoReadings[0]?.order).toMatchObject({ say: 'turnTeeth', args: { high: 'right', teeth: 2 } });
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

  it('what words are made from is kept as they take it', () => {
    expectTypeOf<Args>().toExtend<ToldArgs>();
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
