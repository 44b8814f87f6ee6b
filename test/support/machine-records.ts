import fc from 'fast-check';
import type { Case, Draft, Machine, Photo, Reading, Settings, StoredRecord, Typed } from '../../src/machine/schema';
import { VERSION } from '../../src/machine/version';
import { LIMITS } from '../../src/machine/limits';
import type { Arg } from '../../src/machine/schema-args';

/** Records as the app could write them, for the tests of the door and of the store. */

const letters = (pattern: RegExp) => fc.stringMatching(pattern);
const id = letters(/^[A-Za-z0-9][A-Za-z0-9-]{0,20}$/);
const symbol = letters(/^[A-Za-z][A-Za-z0-9_]{0,8}$/).filter((name) => !(name in Object.prototype));
const place = letters(/^[a-z]{1,8}\.[a-z]{1,8}(-[a-z]{1,6})?$/);
const unit = fc.constantFrom('mm', 'one', 'deg', 'N_mm', '');
const tool = fc.constantFrom('', 'caliper', 'as-marked', 'luggage-scale');
const origin = fc.constantFrom('typical' as const, 'nameplate' as const, 'measured' as const);
const number = fc.double({ noNaN: true, noDefaultInfinity: true });
const half = fc.double({ min: 0, max: 1e6, noNaN: true });
const time = fc
  .date({ min: new Date('2000-01-01'), max: new Date('2100-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());
const text = fc.string({ maxLength: 60 });
const option = letters(/^[a-zA-Z0-9][a-zA-Z0-9.-]{0,10}$/).filter((name) => !(name in Object.prototype));
const map = <T>(key: fc.Arbitrary<string>, value: fc.Arbitrary<T>) =>
  fc.dictionary(key, value, { maxKeys: 6, noNullPrototype: true });
const v = fc.constant(VERSION);
const ordinal = fc.oneof(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: LIMITS.ordinal }));

const KEPT = ['value', 'half', 'unit', 'origin', 'tool', 'at'] as const;

const machine: fc.Arbitrary<Machine> = fc
  .record({
    v,
    type: fc.constant('machine' as const),
    id,
    name: text.filter((name) => name.trim() !== ''),
    note: text,
    demo: fc.boolean(),
    created: time,
    changed: time,
    ordinal,
    values: map(
      place,
      fc.record({ value: number, half, unit, origin, tool, at: time, ordinal }, { requiredKeys: [...KEPT] }),
    ),
    choices: map(place, option),
  })
  .chain((base) =>
    fc
      .option(
        map(
          id.filter((name) => !(name in Object.prototype)),
          fc.integer({ min: 1, max: 3650 }),
        ),
      )
      .map((intervals) => (intervals === null ? base : { ...base, intervals })),
  );

const picture = {
  width: fc.integer({ min: 1, max: 1280 }),
  height: fc.integer({ min: 1, max: 1280 }),
  jpeg: fc.base64String({ minLength: 4, maxLength: 80 }),
};
const photo: fc.Arbitrary<Photo> = fc.record({
  v,
  type: fc.constant('photo' as const),
  machine: id,
  reading: id,
  ...picture,
});

const kind = fc.constantFrom('length', 'count', 'second moment of area', '');
const verdict = fc.constantFrom('within' as const, 'beyond' as const, 'too close' as const, 'none' as const);
const key = fc.oneof(symbol, fc.constant(''));

/** What words may be made from: plain data, a few levels deep, as JSON gives it back. */
const { arg } = fc.letrec<{ arg: Arg }>((tie) => ({
  arg: fc.oneof(
    { maxDepth: 3 },
    text,
    number,
    fc.boolean(),
    fc.array(tie('arg'), { maxLength: 3 }),
    map(symbol, tie('arg')),
  ),
}));
const args = map(symbol, arg);

const limit = fc
  .record({ of: symbol, name: text, symmetric: fc.boolean(), verdict })
  .chain((base) =>
    fc
      .record({ max: symbol, min: symbol }, { requiredKeys: [] })
      .map((ends): Reading['limits'][number] => ({ ...base, ...ends })),
  );

const interval = { name: text, value: number, low: number, high: number, kind, unit };
const upright = <T extends { low: number; high: number }>(r: T): T => ({
  ...r,
  low: Math.min(r.low, r.high),
  high: Math.max(r.low, r.high),
});

const reading: fc.Arbitrary<Reading> = fc.record({
  v,
  type: fc.constant('reading' as const),
  id,
  machine: id,
  calculator: id,
  at: time,
  ordinal,
  entries: map(symbol, fc.record({ name: text, value: number, half, kind, unit, origin, tool })),
  choices: map(symbol, option),
  options: map(symbol, fc.record({ name: text, text })),
  results: map(symbol, fc.record({ ...interval, text }).map(upright)),
  limits: fc.array(limit, { maxLength: 4 }),
  verdict,
  order: fc.record({
    say: key,
    args,
    glance: text,
    sentence: text,
    steps: fc.array(fc.record({ say: key, args, text }), { maxLength: 5 }),
    assumes: fc.array(fc.record({ symbol, amount: args }), { maxLength: 3 }),
    expects: map(symbol, fc.record(interval).map(upright)),
  }),
  note: text,
  whole: fc.boolean(),
});

const entered = { entries: map(symbol, fc.record({ text, unit, tool })), choices: map(symbol, option) };
const draft: fc.Arbitrary<Draft> = fc.record(
  {
    v,
    type: fc.constant('draft' as const),
    machine: fc.option(id),
    calculator: id,
    ...entered,
    before: fc.record(entered),
    kept: fc.option(id),
    changed: time,
    ordinal,
  },
  { requiredKeys: ['v', 'type', 'machine', 'calculator', 'entries', 'choices', 'changed', 'ordinal'] },
);

const typed: fc.Arbitrary<Typed> = fc.record(
  {
    v,
    type: fc.constant('typed' as const),
    machine: fc.option(id),
    case: fc.option(id),
    field: id.filter((name) => !(name in Object.prototype)),
    text,
    other: text,
    picture: fc.record(picture),
    changed: time,
    ordinal,
  },
  { requiredKeys: ['v', 'type', 'machine', 'case', 'field', 'text', 'changed', 'ordinal'] },
);

const ownId = id.filter((name) => !(name in Object.prototype));
const said = { at: time, note: text };
const rests = fc.option(fc.record({ at: time, id }));
const withReading = <T extends object>(base: T, reading: { at: string; id: string } | null) =>
  reading === null ? base : { ...base, reading };

const caseFields = {
  v,
  type: fc.constant('case' as const),
  id,
  machine: id,
  symptom: ownId,
  owner: text,
  complaint: text,
  opened: time,
  changed: time,
  ordinal,
  facts: map(ownId, fc.boolean()),
  log: fc.array(
    fc.oneof(
      fc.record({ kind: fc.constant('made safe' as const), ...said }),
      fc.record({
        kind: fc.constant('not safe' as const),
        why: fc.constantFrom('will do' as const, 'cannot' as const),
        ...said,
      }),
      fc
        .tuple(fc.record({ kind: fc.constant('answer' as const), check: ownId, answer: ownId, ...said }), rests)
        .map(([base, reading]) => withReading(base, reading)),
      fc.record({ kind: fc.constant('skip' as const), check: ownId, ...said }),
      fc.record({
        kind: fc.constant('ruled out' as const),
        cause: ownId,
        sure: fc.constantFrom('certain' as const, 'fairly' as const),
        ...said,
      }),
      fc.record({ kind: fc.constant('mended' as const), cause: ownId, cured: fc.boolean(), ...said }),
      fc.record({
        kind: fc.constant('mended' as const),
        cause: ownId,
        cured: fc.boolean(),
        remedy: fc.constantFrom('mend' as const, 'replace' as const),
        ...said,
      }),
    ),
    { maxLength: 6 },
  ),
  closed: fc.option(
    fc
      .tuple(
        fc.record({
          at: time,
          how: fc.constantFrom('cured' as const, 'replaced' as const, 'handed over' as const, 'given up' as const),
          proof: text,
        }),
        rests,
      )
      .map(([base, reading]) => withReading(base, reading)),
  ),
};
const repairCase: fc.Arbitrary<Case> = fc
  .tuple(fc.record(caseFields), fc.option(ordinal))
  .map(([base, since]) => (since === null ? base : { ...base, since }));

const settings: fc.Arbitrary<Settings> = fc.record({
  v,
  type: fc.constant('settings' as const),
  mark: fc.constantFrom('point' as const, 'comma' as const),
  theme: fc.constantFrom('system' as const, 'light' as const, 'dark' as const, 'contrast' as const),
  lengthUnit: fc.constantFrom('mm' as const, 'in' as const),
  forceUnit: fc.constantFrom('N' as const, 'kgf' as const, 'lbf' as const),
  temperatureUnit: fc.constantFrom('C' as const, 'F' as const),
  machine: fc.option(id),
  seenVersion: fc.constantFrom('', '0.1.0'),
  lastExport: fc.option(time),
  persistAsked: fc.option(time),
});

export const record: fc.Arbitrary<StoredRecord> = fc.oneof(machine, reading, photo, draft, typed, repairCase, settings);
