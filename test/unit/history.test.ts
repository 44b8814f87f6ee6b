import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import twoZScrews from '../../src/calculators/two-z-screws/index';
import { demoMachine, demoReadings } from '../support/demo';
import { edited } from '../../src/machine/edit';
import {
  changedBetween,
  changedSince,
  compare,
  didItWork,
  dueFor,
  judgedBy,
  minus,
  pairsOf,
  promisedOf,
  stateOf,
  trendOf,
  type Comparison,
  type KeptLimit,
  type Limited,
  type State,
  type Uses,
} from '../../src/machine/history';
import type { Reading } from '../../src/machine/schema';

const [before, after] = demoReadings as [Reading, Reading];
const newestFirst = [after, before];
const bed = before.limits[0]!;

const upTo: Limited = { of: 'x', max: 'max', symmetric: false };
const size: Limited = { of: 'x', max: 'max', symmetric: true };
const band: Limited = { of: 'x', max: 'max', min: 'min', symmetric: false };

/** A reading with one result `x`, value ± half, against the ends given as entries, held to `limit`. */
function reading(
  x: number,
  half: number,
  ends: { max?: number; min?: number },
  at = before.at,
  limit: Limited = upTo,
): Reading {
  const entry = (value: number) => ({
    ...{ name: '', value, half: 0, kind: 'length', unit: 'mm' },
    ...{ origin: 'typical' as const, tool: '' },
  });
  const held: Reading = {
    ...before,
    at,
    id: `r${at}${x}`,
    entries: Object.fromEntries(Object.entries(ends).map(([name, value]) => [name, entry(value)])),
    results: { x: { name: '', value: x, low: x - half, high: x + half, kind: 'length', unit: 'mm', text: '' } },
  };
  return { ...held, limits: [{ ...limit, name: '', verdict: stateOf(held, limit) }] };
}

const limitOf = (one: Reading): KeptLimit => one.limits[0]!;

describe('a difference', () => {
  // JCGM 100, 5.1.2: variances of independent quantities add; a 3-4-5 triangle by hand.
  it('has the root of the squares as its uncertainty, each side for itself', () => {
    const found = minus({ value: 10, low: 9.7, high: 10.3 }, { value: 4, low: 3.6, high: 4.4 });
    expect(found.value).toBe(6);
    expect(found.low).toBeCloseTo(5.5, 12);
    expect(found.high).toBeCloseTo(6.5, 12);
    const leaning = minus({ value: 1, low: 0.7, high: 1 }, { value: 0, low: 0, high: 0.4 });
    expect(leaning.low).toBeCloseTo(0.5, 12);
    expect(leaning.high).toBe(1);
  });
});

describe('a limit in a kept reading', () => {
  it.each<[State, number, number, Limited, { max?: number; min?: number }]>([
    ['within', 0.5, 0.4, upTo, { max: 1 }],
    ['too close', 0.7, 0.4, upTo, { max: 1 }],
    ['beyond', 1.5, 0.4, upTo, { max: 1 }],
    ['within', -9, 0.4, upTo, { max: 1 }],
    ['beyond', -9, 0.4, size, { max: 1 }],
    ['within', -0.5, 0.4, size, { max: 1 }],
    ['beyond', 0.2, 0.1, band, { max: 1, min: 0.5 }],
    ['within', 0.7, 0.1, band, { max: 1, min: 0.5 }],
    ['too close', 0.55, 0.1, band, { max: 1, min: 0.5 }],
    ['none', 0.5, 0.1, band, { max: 1 }],
    ['within', 1, 0, upTo, { max: 1 }],
  ])('is %s at %d ± %d', (state, x, half, limit, limits) => {
    expect(stateOf(reading(x, half, limits), limit)).toBe(state);
  });

  it('agrees with the verdict the demo readings were kept with', () => {
    for (const kept of demoReadings) expect(stateOf(kept, bed)).toBe(kept.verdict);
  });
});

describe('a trend', () => {
  it('runs from old to new, with the limit in force on both sides and the state of each reading', () => {
    const points = trendOf(newestFirst, 'dh_bed');
    expect(points.map((point) => point.reading.id)).toEqual(['before', 'after']);
    expect(points.map((point) => point.state)).toEqual(['beyond', 'within']);
    for (const { min, max } of points) {
      expect(min).toBeCloseTo(-5e-5, 15);
      expect(max).toBeCloseTo(5e-5, 15);
    }
    expect(points[1]!.at - points[0]!.at).toBe(Date.parse(after.at) - Date.parse(before.at));
    expect(points[0]!.value).toBeCloseTo(4.5e-4, 12);
    expect(points[0]!.low).toBeCloseTo(before.results.dh_bed!.low, 12);
    expect(points[0]!.high).toBeCloseTo(before.results.dh_bed!.high, 12);
  });

  it('takes the verdict kept on the limit, not one made of the intervals', () => {
    // Value and limit shared an input: the check could tell what the intervals alone cannot.
    const kept = reading(0.95, 0.1, { max: 1 });
    expect(stateOf(kept, upTo)).toBe('too close');
    const held: Reading = { ...kept, limits: [{ ...limitOf(kept), verdict: 'within' }] };
    expect(trendOf([held], 'x')[0]!.state).toBe('within');
  });

  it('has no limit for a result without one, and leaves out readings without the result', () => {
    const points = trendOf([after, { ...before, results: {} }], 'n');
    expect(points).toHaveLength(1);
    expect(points[0]).toMatchObject({ min: undefined, max: undefined, state: 'none' });
    expect(points[0]!.value).toBeCloseTo(0.05, 12);
  });
});

describe('before and after', () => {
  it('the demo: 0.450 ± 0.010 mm to 0.012 ± 0.010 mm is better by 0.438 ± 0.014 mm, and it worked', () => {
    const found = compare(before, after, bed)!;
    expect(found).toMatchObject({ change: 'better', was: 'beyond', now: 'within' });
    // By hand: (0.75 − 0.02) · 240/400 = 0.438; a difference by a dial of ± 0.01: 2 · 0.01 · √(2/3) · 240/400 = 0.0098, twice: 0.0139.
    expect(found.gain.value * 1e3).toBeCloseTo(0.438, 9);
    expect(((found.gain.high - found.gain.low) / 2) * 1e3).toBeCloseTo(0.0139, 4);
    expect(didItWork([found])).toBe('yes');
  });

  it.each<[string, Comparison['change'], string, Limited, { max?: number; min?: number }, number, number]>([
    ['smaller by more than both errors', 'better', 'yes', upTo, { max: 1 }, 2, 0.5],
    ['smaller, still beyond', 'better', 'in part', upTo, { max: 1 }, 3, 2],
    ['the same', 'no change', 'no change', upTo, { max: 1 }, 2, 2.05],
    ['more', 'worse', 'worse', upTo, { max: 1 }, 2, 3],
    ['as far out on the other side', 'no change', 'no change', size, { max: 1 }, 2, -2],
    ['over to the other side, less far', 'better', 'in part', size, { max: 1 }, 3, -2],
    ['over to the other side and into the limit', 'better', 'yes', size, { max: 1 }, 3, -0.5],
    ['from above the band to below it, as far', 'no change', 'no change', band, { max: 2, min: 1 }, 3, 0],
    ['from below the band into it', 'better', 'yes', band, { max: 2, min: 1 }, 0, 1.5],
    ['better, and now on the limit', 'better', 'in part', upTo, { max: 1 }, 3, 1.05],
    ['in by a hair', 'no change', 'settled', upTo, { max: 1 }, 1.02, 0.89],
  ])('%s', (_, change, answer, limit, limits, from, to) => {
    const [b, a] = [reading(from, 0.1, limits, before.at, limit), reading(to, 0.1, limits, after.at, limit)];
    const found = compare(b, a, limitOf(a))!;
    expect(found.change).toBe(change);
    expect(didItWork([found])).toBe(answer);
  });

  it('widening the limit is no improvement', () => {
    const widened = reading(2, 0.1, { max: 3 }, after.at);
    const found = compare(reading(2, 0.1, { max: 1 }), widened, limitOf(widened))!;
    expect(found).toMatchObject({ change: 'no change', was: 'beyond', now: 'within' });
    expect(didItWork([found])).toBe('settled');
  });

  it('cannot be told where a result or a limit is missing', () => {
    expect(compare(before, { ...after, results: {} }, bed)).toBeUndefined();
    const unlimited = reading(1, 0, {}, after.at);
    expect(compare(reading(1, 0, { max: 1 }), unlimited, limitOf(unlimited))).toBeUndefined();
    expect(didItWork([])).toBe('not comparable');
  });

  it('counts a limit that was not in force before as open then', () => {
    const now = reading(0.5, 0.1, { max: 1 });
    expect(compare({ ...reading(3, 0.1, { max: 1 }), limits: [] }, now, limitOf(now))).toMatchObject({
      ...{ was: 'none', now: 'within', change: 'better' },
    });
  });

  it('is judged by the limits that were open, and by those that have been left', () => {
    const from = (x: number, to: number) => {
      const now = reading(to, 0.1, { max: 1 });
      return compare(reading(x, 0.1, { max: 1 }), now, limitOf(now))!;
    };
    const [one, untouched, spoilt] = [from(3, 0.5), from(0.2, 0.3), from(0.2, 4)];
    expect(judgedBy([one, untouched])).toEqual([one]);
    expect(didItWork([one, untouched])).toBe('yes');
    expect(didItWork([one, spoilt])).toBe('worse');
  });

  it('mirrors where the readings mirror, and swaps where they are swapped', () => {
    const near = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(near, near, fc.double({ min: 0, max: 2, noNaN: true }), (from, to, half) => {
        const at = (x: number) => reading(x, half, { max: 1 }, before.at, size);
        const moved = (x: number, y: number) => compare(at(x), at(y), limitOf(at(y)))!;
        const [found, mirrored, swapped] = [moved(from, to), moved(-from, -to), moved(to, from)];
        expect(mirrored.gain).toEqual(found.gain);
        expect(mirrored.change).toBe(found.change);
        const opposite = { better: 'worse', worse: 'better', 'no change': 'no change' } as const;
        expect(swapped.change).toBe(opposite[found.change]);
      }),
    );
  });

  it('pairs each reading that advised a correction with the one after it', () => {
    const at = (i: number, verdict: State): Reading => ({ ...before, id: `r${i}`, verdict });
    const readings = [at(4, 'beyond'), at(3, 'within'), at(2, 'beyond'), at(1, 'beyond'), at(0, 'too close')];
    expect(pairsOf(readings).map((pair) => [pair.before.id, pair.after?.id])).toEqual([
      ['r4', undefined],
      ['r2', 'r3'],
      ['r1', 'r2'],
    ]);
  });
});

describe('due', () => {
  const uses: Uses = {
    values: Object.fromEntries(
      Object.entries(twoZScrews.inputs).flatMap(([symbol, spec]) => ('from' in spec ? [[symbol, spec.from]] : [])),
    ),
    choices: { drive: 'z.drive', hand: 'z.hand' },
  };
  const later = (days: number) => new Date(Date.parse(after.at) + days * 86_400_000);
  const lead = demoMachine.values['z.lead']!;
  const withLead = (value: number, at: string, ordinal?: number) =>
    edited(demoMachine, { values: { 'z.lead': { ...lead, value, at } } }, later(1), ordinal);
  const id = 'two-z-screws';

  it('is nothing while nothing has changed and no days are set', () => {
    expect(dueFor(id, after, demoMachine, uses, later(5000))).toEqual([]);
    expect(dueFor(id, undefined, demoMachine, uses, later(5000))).toEqual([]);
  });

  it('is a check whose value was changed after its last reading, not before it and not to the same', () => {
    const changed = { kind: 'value', symbol: 'P_h', was: 8e-3, now: 4e-3, unit: 'mm' };
    expect(dueFor(id, after, withLead(4e-3, later(1).toISOString()), uses, later(2))).toEqual([
      { kind: 'changed', changes: [changed] },
    ]);
    expect(dueFor(id, after, withLead(4e-3, before.at, before.ordinal), uses, later(2))).toEqual([]);
    // What came first is told by the count, whatever the clock said then.
    expect(dueFor(id, after, withLead(4e-3, later(900).toISOString(), before.ordinal), uses, later(2))).toEqual([]);
    expect(dueFor(id, after, withLead(4e-3, before.at), uses, later(2))).toHaveLength(1);
    expect(dueFor(id, after, withLead(8e-3 * (1 + 1e-14), later(1).toISOString()), uses, later(2))).toEqual([]);
  });

  it('is a check with days set whose last reading is dated after now: how old it is cannot be told', () => {
    const machine = edited(demoMachine, { intervals: { [id]: 30 } }, later(0));
    const ahead = { ...after, at: later(3000).toISOString() };
    expect(dueFor(id, ahead, machine, uses, later(2))).toEqual([{ kind: 'ahead', days: 30 }]);
    expect(dueFor(id, ahead, demoMachine, uses, later(2))).toEqual([]);
  });

  it('is a check whose option is another now', () => {
    const machine = edited(demoMachine, { choices: { 'z.drive': 'motors' } }, later(1));
    expect(changedSince(after, machine, uses)).toEqual([{ kind: 'choice', name: 'drive', was: 'belt', now: 'motors' }]);
  });

  it('is a check after the days that the person set, on the day itself, and one never taken', () => {
    const machine = edited(demoMachine, { intervals: { [id]: 30 } }, later(0));
    expect(dueFor(id, after, machine, uses, later(29.99))).toEqual([]);
    expect(dueFor(id, after, machine, uses, later(30))).toEqual([{ kind: 'old', days: 30, age: 30 }]);
    expect(dueFor(id, undefined, machine, uses, later(0))).toEqual([{ kind: 'never', days: 30 }]);
    expect(dueFor('screw-lead', undefined, machine, uses, later(0))).toEqual([]);
  });

  it('names what differs about the machine between two readings', () => {
    expect(changedBetween(before, after, uses)).toEqual([]);
    const other: Reading = {
      ...after,
      choices: { ...after.choices, hand: 'left' },
      entries: { ...after.entries, P_h: { ...after.entries.P_h!, value: 4e-3 } },
    };
    expect(changedBetween(before, other, uses)).toEqual([
      { kind: 'value', symbol: 'P_h', was: 8e-3, now: 4e-3, unit: 'mm' },
      { kind: 'choice', name: 'hand', was: 'right', now: 'left' },
    ]);
  });
});

describe('what an order promised', () => {
  const promise = (low: number, high: number): Reading => {
    const one = reading(3, 0.1, { max: 1 });
    const x = { name: 'Height', value: (low + high) / 2, low, high, kind: 'length', unit: 'mm' };
    return { ...one, order: { ...one.order, expects: { x, gone: x } } };
  };

  it.each([
    [0, true],
    [0.2, true],
    [-0.2, true],
    [0.21, false],
    [-0.21, false],
  ])('a reading of %s after it, expected 0 ± 0.2: held %s', (x, held) => {
    const after = reading(x, 0.1, { max: 1 });
    expect(promisedOf(promise(-0.2, 0.2), after)).toEqual([
      {
        ...{ of: 'x', name: 'Height', kind: 'length', unit: 'mm', held },
        expected: { value: 0, low: -0.2, high: 0.2 },
        read: { value: x, low: x - 0.1, high: x + 0.1 },
      },
    ]);
  });

  it('is nothing where the order promised nothing', () => {
    const one = reading(3, 0.1, { max: 1 });
    expect(promisedOf({ ...one, order: { ...one.order, expects: {} } }, reading(0, 0.1, { max: 1 }))).toEqual([]);
  });
});
