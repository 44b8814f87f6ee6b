import { isPlain } from './plain';
import { LIMITS } from './limits';
import * as v from 'valibot';
import type { Args } from './schema-args';
import * as part from './schema-parts';
import { fromVersion3, fromVersion4, fromVersion5, readingFields } from './schema-reading';
import { underNamesOfToday } from './schema-renamed';
import { VERSION } from './version';
import say from './words/en';

/** Read-only to the last part. What words are made from is so already, and has no end that the compiler could walk to. */
type Frozen<T> = Args extends T ? T : T extends object ? { readonly [K in keyof T]: Frozen<T[K]> } : T;

const version = v.literal(VERSION, say.field.unknownVersion);

/** The same shape as in src/engine/entry.ts (a test holds them equal): machine imports no engine. */
const keptValue = part.fields({
  value: part.number,
  half: part.half,
  unit: part.idOrNone,
  origin: part.origin,
  tool: part.idOrNone,
  at: part.time,
  /** Of the change it came with; none where an earlier version kept it. */
  ordinal: v.exactOptional(part.ordinal),
});

const machine = part.fields({
  v: version,
  type: v.literal('machine'),
  id: part.id,
  name: part.name,
  note: part.text(LIMITS.note),
  /** Invented, to look around with. */
  demo: v.boolean(say.field.shouldBeYesOrNo),
  created: part.time,
  changed: part.time,
  /** The most that was given to anything done to this machine. */
  ordinal: part.ordinal,
  values: part.map(part.place, keptValue),
  choices: part.choices(part.place),
  /** Days after which a check is to be taken again, by calculator; none where the person set none. */
  intervals: v.exactOptional(part.map(part.ownId, part.wholeUpTo(LIMITS.days))),
});

const reading = part.fields({ v: version, type: v.literal('reading'), ...readingFields });

const picture = {
  width: part.wholeUpTo(LIMITS.photoSide),
  height: part.wholeUpTo(LIMITS.photoSide),
  /** JPEG in base64. */
  jpeg: part.base64,
};

/** A photo to a reading, apart from it so that lists stay light. */
const photo = part.fields({
  v: version,
  type: v.literal('photo'),
  machine: part.id,
  /** Id of the reading or of the case it belongs to; the photo of a case's proof has `-proof` after it. */
  reading: part.id,
  ...picture,
});

const entered = {
  entries: part.map(
    part.symbol,
    part.fields({ text: part.text(LIMITS.typed), unit: part.idOrNone, tool: part.idOrNone }),
  ),
  choices: part.choices(part.symbol),
};

const draft = part.fields({
  v: version,
  type: v.literal('draft'),
  /** Null while no machine is chosen. */
  machine: v.nullable(part.id),
  calculator: part.id,
  ...entered,
  /** What stood here before a link, an example or a blank sheet took its place: it can be put back. */
  before: v.exactOptional(part.fields(entered)),
  /** The reading that was kept of what stands here; null where something was entered since, none where it was not kept which. */
  kept: v.exactOptional(v.nullable(part.id)),
  changed: part.time,
  /** How often it was written. */
  ordinal: part.ordinal,
});

/** One field of a case's screens while it is being typed, or the picture picked there. */
const typed = part.fields({
  v: version,
  type: v.literal('typed'),
  /** Both null for a case that is not opened yet. */
  machine: v.nullable(part.id),
  case: v.nullable(part.id),
  field: part.ownId,
  text: part.text(LIMITS.note),
  /** What another tab typed there at the same time: neither is lost. */
  other: v.exactOptional(part.text(LIMITS.note)),
  picture: v.exactOptional(part.fields(picture)),
  changed: part.time,
  ordinal: part.ordinal,
});

/** Which reading an entry of a case rests on. */
const readingOf = v.exactOptional(part.fields({ at: part.time, id: part.id }));
const said = { at: part.time, note: part.text(LIMITS.line), ordinal: v.exactOptional(part.ordinal) };

/** The same kinds as in src/diagnosis/types.ts (a test holds them equal), with when and what was said of it. */
const caseEntry = v.variant(
  'kind',
  [
    v.object({ kind: v.literal('made safe'), ...said }),
    v.object({ kind: v.literal('not safe'), why: part.oneOf('will do', 'cannot'), ...said }),
    v.object({ kind: v.literal('answer'), check: part.ownId, answer: part.ownId, reading: readingOf, ...said }),
    v.object({ kind: v.literal('skip'), check: part.ownId, ...said }),
    v.object({ kind: v.literal('ruled out'), cause: part.ownId, sure: part.oneOf('certain', 'fairly'), ...said }),
    v.object({
      kind: v.literal('mended'),
      cause: part.ownId,
      cured: v.boolean(say.field.shouldBeYesOrNo),
      remedy: v.exactOptional(part.oneOf('mend', 'replace')),
      ...said,
    }),
  ],
  say.field.noEntry,
);

/** A complaint on its way to a proven mend. */
const repairCase = part.fields({
  v: version,
  type: v.literal('case'),
  id: part.id,
  machine: part.id,
  symptom: part.ownId,
  /** Who asked, as the person calls them; may be empty. */
  owner: part.text(LIMITS.name),
  /** In the owner's words. */
  complaint: part.text(LIMITS.note),
  opened: part.time,
  changed: part.time,
  /** Of its last change. */
  ordinal: part.ordinal,
  /** Of its opening: readings with more were taken since. None where an earlier version opened it. */
  since: v.exactOptional(part.ordinal),
  facts: part.map(part.ownId, v.boolean(say.field.shouldBeYesOrNo)),
  log: part.listOf(caseEntry, LIMITS.log),
  /** How it ended and what shows it; null while it is open. */
  closed: v.nullable(
    part.fields({
      at: part.time,
      how: part.oneOf('cured', 'replaced', 'handed over', 'given up'),
      proof: part.text(LIMITS.note),
      reading: readingOf,
    }),
  ),
});

const settings = part.fields({
  v: version,
  type: v.literal('settings'),
  mark: part.oneOf('point', 'comma'),
  theme: part.oneOf('system', 'light', 'dark', 'contrast'),
  lengthUnit: part.oneOf('mm', 'in'),
  forceUnit: part.oneOf('N', 'kgf', 'lbf'),
  temperatureUnit: part.oneOf('C', 'F'),
  /** The machine worked on. */
  machine: v.nullable(part.id),
  /** Version of Trammel whose news were shown; empty before the first. */
  seenVersion: part.text(LIMITS.id),
  /** When everything was last saved to a file; null before the first time. */
  lastExport: v.nullable(part.time),
  /** When the browser was asked not to clear what is kept: it is asked once. */
  persistAsked: v.nullable(part.time),
});

export type KeptValue = Frozen<v.InferOutput<typeof keptValue>>;
export type Machine = Frozen<v.InferOutput<typeof machine>>;
export type Reading = Frozen<v.InferOutput<typeof reading>>;
export type Photo = Frozen<v.InferOutput<typeof photo>>;
export type Draft = Frozen<v.InferOutput<typeof draft>>;
export type Typed = Frozen<v.InferOutput<typeof typed>>;
export type Settings = Frozen<v.InferOutput<typeof settings>>;
/** A case of repair. */
export type Case = Frozen<v.InferOutput<typeof repairCase>>;
export type StoredRecord = Machine | Reading | Photo | Draft | Typed | Case | Settings;

/** `newer` sets apart what another Trammel can read from what none can. */
export type Restored =
  | { readonly ok: true; readonly record: StoredRecord }
  | { readonly ok: false; readonly newer: boolean; readonly reason: string };

type Raw = Readonly<Record<string, unknown>>;
/** From version n, the key in the table, to version n + 1. May throw: what it gets has not been checked. */
export type Migration = (record: Raw) => Raw;

/** A case of version 4, whose entries told in words alone how a cause was mended: known where the end of the case says it. */
function caseFromVersion4({ log, closed, ...rest }: Raw): Raw {
  const how = isPlain(closed) ? closed.how : undefined;
  const remedy = { cured: 'mend', replaced: 'replace' }[String(how)];
  if (remedy === undefined || !Array.isArray(log)) return { ...rest, log, closed };
  const entries = log.map((entry: unknown) =>
    isPlain(entry) && entry.kind === 'mended' && entry.cured === true ? { ...entry, remedy } : entry,
  );
  return { ...rest, log: entries, closed };
}

const migrations: Readonly<Record<number, Migration>> = {
  1: (record) => (record.type === 'settings' ? { ...record, lastExport: null, persistAsked: null } : record),
  // Cases came; nothing else changed.
  2: (record) => record,
  3: (record) => (record.type === 'reading' ? fromVersion3(record) : record),
  4: (record) => {
    if (record.type === 'reading') return fromVersion4(record);
    return record.type === 'case' ? caseFromVersion4(record) : record;
  },
  5: (record) => {
    const named = underNamesOfToday(record);
    if (named.type === 'reading') return fromVersion5(named);
    return ['machine', 'case', 'draft'].includes(String(named.type)) ? { ...named, ordinal: 0 } : named;
  },
};

const refused = (reason: string, newer = false): Restored => ({ ok: false, newer, reason });

/**
 * Brings a record of any older version to `newest`, one version at a time, or says why it cannot be.
 * @throws never, even where a migration does
 */
export function migrate(
  record: Raw,
  steps: Readonly<Record<number, Migration>>,
  newest: number,
): { readonly ok: true; readonly record: Raw } | Extract<Restored, { ok: false }> {
  const written = record.v;
  if (typeof written !== 'number' || !Number.isInteger(written) || written < 1) {
    return { ok: false, newer: false, reason: say.record.noVersion };
  }
  if (written > newest) {
    return { ok: false, newer: true, reason: say.record.newer(written, newest) };
  }
  let current = record;
  for (let n = written; n < newest; n += 1) {
    try {
      const step = steps[n];
      if (!step) throw new Error('no step');
      current = { ...step(current), v: n + 1 };
    } catch {
      return { ok: false, newer: false, reason: say.record.notBroughtUp(written) };
    }
  }
  return { ok: true, record: current };
}

function check(record: Raw): v.SafeParseResult<v.GenericSchema<unknown, StoredRecord>> | undefined {
  const options = { abortEarly: true } as const;
  if (record.type === 'machine') return v.safeParse(machine, record, options);
  if (record.type === 'reading') return v.safeParse(reading, record, options);
  if (record.type === 'photo') return v.safeParse(photo, record, options);
  if (record.type === 'case') return v.safeParse(repairCase, record, options);
  if (record.type === 'draft') return v.safeParse(draft, record, options);
  if (record.type === 'typed') return v.safeParse(typed, record, options);
  if (record.type === 'settings') return v.safeParse(settings, record, options);
  return undefined;
}

/** Names come from the record itself: cut where they are absurdly long. */
const shortened = (words: string): string => (words.length > 100 ? `${words.slice(0, 100)}…` : words);

/**
 * The one door for stored or imported data: a record of today's form, checked to the last field, or one sentence why not.
 * A record with one bad field is refused whole, so that the bad field is not lost unseen at the next saving; fields that
 * no record has are left out.
 * @throws never, for anything that JSON or the browser's storage can hold
 */
export function restore(stored: unknown): Restored {
  if (!isPlain(stored)) return refused(say.record.notOurs);
  const current = migrate(stored, migrations, VERSION);
  if (!current.ok) return current;
  const checked = check(current.record);
  if (!checked) return refused(say.record.unknownKind);
  if (checked.success) return { ok: true, record: checked.output };
  const issue = checked.issues[0];
  const where = v.getDotPath(issue);
  const { unreadable, unreadableAt } = say.record;
  return refused(where === null ? unreadable(issue.message) : unreadableAt(shortened(where), issue.message));
}
