import { isPlain } from './plain';
import { LIMITS } from './limits';
import * as v from 'valibot';
import { args } from './schema-args';
import * as part from './schema-parts';
import say from './words/en';

/** What a symbol or a limit was called; empty where that was not kept. */
const name = part.text(LIMITS.line);
const line = part.text(LIMITS.line);
const told = part.text(LIMITS.told);
const verdict = part.oneOf('within', 'beyond', 'too close', 'none');

const entry = part.fields({
  name,
  value: part.number,
  half: part.half,
  kind: part.kindOrNone,
  unit: part.idOrNone,
  origin: part.origin,
  tool: part.idOrNone,
});

const interval = {
  name,
  value: part.number,
  low: part.number,
  high: part.number,
  kind: part.kindOrNone,
  unit: part.idOrNone,
};

const result = v.pipe(
  part.fields({
    ...interval,
    /** As it was printed, with unit. */
    text: part.text(LIMITS.typed),
  }),
  v.check(({ low, high }) => low <= high, say.field.upsideDown),
);

const expected = v.pipe(
  part.fields(interval),
  v.check(({ low, high }) => low <= high, say.field.upsideDown),
);

/** A limit that was in force: `of`, `max` and `min` are symbols of results or entries. */
const limit = part.fields({
  of: part.symbol,
  name,
  max: v.exactOptional(part.symbol),
  min: v.exactOptional(part.symbol),
  /** The size counts, not the sign. */
  symmetric: v.boolean(say.field.shouldBeYesOrNo),
  verdict,
});

/** What was to be done: the keys of its words and what they were made from, and the words as they were. */
const order = part.fields({
  say: part.keyOrNone,
  args,
  glance: line,
  /** Where nothing was to be done: why. */
  sentence: told,
  steps: v.pipe(
    v.array(part.fields({ say: part.keyOrNone, args, text: told }), say.field.shouldBeList),
    v.maxLength(LIMITS.steps, say.field.tooManySteps(LIMITS.steps)),
  ),
  /** Typical values that it rested on. */
  assumes: part.listOf(part.fields({ symbol: part.symbol, amount: args }), LIMITS.limits),
  /** What inputs and results were to be once it was done: the reading after it is held to this. */
  expects: part.map(part.symbol, expected),
});

/** A reading of a check, with all that it needs to be read again: names, units and limits as they were under its options. */
export const readingFields = {
  id: part.id,
  machine: part.id,
  calculator: part.id,
  at: part.time,
  /** Readings of a machine stand in this order, those of one ordinal (taken on two devices) in order of time. */
  ordinal: part.ordinal,
  entries: part.map(part.symbol, entry),
  /** Options by their ids. */
  choices: part.choices(part.symbol),
  /** The same in words. */
  options: part.map(part.symbol, part.fields({ name, text: line })),
  results: part.map(part.symbol, result),
  limits: part.listOf(limit, LIMITS.limits),
  verdict,
  order,
  note: part.text(LIMITS.note),
  /** False where an earlier version kept it: without names, kinds, limits and results of the model. */
  whole: v.boolean(say.field.shouldBeYesOrNo),
};

type Raw = Readonly<Record<string, unknown>>;

const unnamed = (map: unknown): unknown =>
  isPlain(map)
    ? Object.fromEntries(
        Object.entries(map).map(([symbol, one]) => [symbol, isPlain(one) ? { ...one, name: '', kind: '' } : one]),
      )
    : map;

/** A reading of version 3, which kept neither names nor limits nor what the model made. */
export function fromVersion3({ headline, steps, entries, results, ...rest }: Raw): Raw {
  const worded = Array.isArray(steps) ? steps.map((text: unknown) => ({ say: '', args: {}, text })) : steps;
  return {
    ...rest,
    entries: unnamed(entries),
    options: {},
    results: unnamed(results),
    limits: [],
    order: { say: '', args: {}, glance: '', sentence: headline, steps: worded },
    whole: false,
  };
}

/** A reading of version 5, which had its time alone: it stands before all that are counted. */
export const fromVersion5 = (reading: Raw): Raw => ({ ...reading, ordinal: 0 });

/** A reading of version 4, which kept neither what its order assumed nor what was to be expected of it. */
export function fromVersion4({ order, ...rest }: Raw): Raw {
  return { ...rest, order: isPlain(order) ? { ...order, assumes: [], expects: {} } : order };
}
