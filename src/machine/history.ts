import { compareStamps, isAhead } from './stamp';
import type { Machine, Reading } from './schema';

/** What readings say when laid side by side, each by its own limits. Pure; values in SI; nothing here knows a calculator. */

/** A best value and its interval of about 95 %. */
export interface Interval {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A limit in force in a reading, with what came of it. */
export type KeptLimit = Reading['limits'][number];
/** A limit without its verdict. */
export type Limited = Pick<KeptLimit, 'of' | 'max' | 'min' | 'symmetric'>;

export type State = Reading['verdict'];

/** What stands at a symbol in a reading, result or entry; undefined where nothing does. */
function intervalAt(reading: Reading, symbol: string): Interval | undefined {
  const result = reading.results[symbol];
  if (result) return result;
  const entry = reading.entries[symbol];
  return entry && { value: entry.value, low: entry.value - entry.half, high: entry.value + entry.half };
}

/** a - b, the errors of the two taken as independent (JCGM 100, 5.1.2), each side of the interval for itself. */
export function minus(a: Interval, b: Interval): Interval {
  const value = a.value - b.value;
  return {
    value,
    low: value - Math.hypot(a.value - a.low, b.high - b.value),
    high: value + Math.hypot(a.high - a.value, b.value - b.low),
  };
}

const negative = (a: Interval): Interval => ({ value: -a.value, low: -a.high, high: -a.low });
const exactly = (a: Interval): Interval => ({ value: a.value, low: a.value, high: a.value });

/** How far an interval lies beyond each side of a limit as it stood in a reading: above zero when beyond. */
function excesses(x: Interval, limit: Limited, max: Interval | undefined, min: Interval | undefined): Interval[] {
  return [
    ...(max ? [minus(x, max)] : []),
    ...(max && limit.symmetric ? [minus(negative(x), max)] : []),
    ...(min ? [minus(min, x)] : []),
  ];
}

/** The sides of a limit in a reading; undefined where one that it names is not there. */
function sidesOf(reading: Reading, limit: Limited) {
  const max = limit.max === undefined ? undefined : intervalAt(reading, limit.max);
  const min = limit.min === undefined ? undefined : intervalAt(reading, limit.min);
  const missing = (limit.max !== undefined && !max) || (limit.min !== undefined && !min);
  return missing ? undefined : { max, min };
}

/** The ends that a limit gives a result, in SI; undefined on a side where it has none. */
export function endsOf(
  reading: Reading,
  limit: Limited,
): { readonly min: number | undefined; readonly max: number | undefined } {
  const sides = sidesOf(reading, limit);
  const max = sides?.max?.value;
  return { max, min: sides?.min?.value ?? (limit.symmetric && max !== undefined ? -max : undefined) };
}

/**
 * One limit in one reading, from the intervals kept (JCGM 106), for a reading that kept no verdict on each limit. Where value
 * and limit share an input this is more careful than the check itself was.
 */
export function stateOf(reading: Reading, limit: Limited): State {
  const x = intervalAt(reading, limit.of);
  const sides = sidesOf(reading, limit);
  if (!x || !sides) return 'none';
  const found = excesses(x, limit, sides.max, sides.min);
  if (found.length === 0) return 'none';
  if (found.some((excess) => excess.low > 0)) return 'beyond';
  return found.every((excess) => excess.high <= 0) ? 'within' : 'too close';
}

/** A point of a trend: a result with the limit then in force. */
export interface Point extends Interval {
  readonly reading: Reading;
  /** Where it is drawn, milliseconds since 1970: its time, or one that it can have had where its own has not come. */
  readonly at: number;
  readonly min: number | undefined;
  readonly max: number | undefined;
  readonly state: State;
}

const WORST: readonly State[] = ['beyond', 'too close', 'none', 'within'];

/** What several limits on one result come to: the worst verdict on any of them. */
const worstState = (states: readonly State[]): State => WORST.find((state) => states.includes(state)) ?? 'none';

/** The ends that several limits leave a result. */
function narrowest(reading: Reading, limits: readonly Limited[]): ReturnType<typeof endsOf> {
  const ends = limits.map((limit) => endsOf(reading, limit));
  const known = (side: 'min' | 'max') => ends.flatMap((one) => one[side] ?? []);
  const [min, max] = [known('min'), known('max')];
  return { min: min.length > 0 ? Math.max(...min) : undefined, max: max.length > 0 ? Math.min(...max) : undefined };
}

/**
 * One result over time, oldest first.
 * @param readings of one check on one machine, newest first
 */
export function trendOf(readings: readonly Reading[], symbol: string, now = new Date()): readonly Point[] {
  let next = now.getTime();
  return readings
    .flatMap((reading): Point[] => {
      if (!isAhead(reading.at, now)) next = Date.parse(reading.at);
      const x = intervalAt(reading, symbol);
      if (!x) return [];
      const limits = reading.limits.filter((one) => one.of === symbol);
      const { value, low, high } = x;
      const state = worstState(limits.map(({ verdict }) => verdict));
      return [{ reading, at: next, value, low, high, ...narrowest(reading, limits), state }];
    })
    .reverse();
}

/** One limit before and after a correction. */
export interface Comparison {
  readonly of: string;
  readonly before: Interval;
  readonly after: Interval;
  /** How much nearer to the limit's good side; below zero: farther away. */
  readonly gain: Interval;
  readonly change: 'better' | 'no change' | 'worse';
  readonly was: State;
  readonly now: State;
}

const worstOf = (found: readonly Interval[]): Interval | undefined =>
  found.reduce<Interval | undefined>((worst, one) => (worst && worst.value >= one.value ? worst : one), undefined);

/** The verdict on a limit in a reading; none where it was not in force there. */
const verdictOn = (limit: Limited, reading: Reading): State =>
  reading.limits.find(({ of, max, min }) => of === limit.of && max === limit.max && min === limit.min)?.verdict ??
  'none';

/**
 * A result before and after, both against the limit as it stands after: a limit that was edited between them is no
 * improvement. "Better" and "worse" only where the change is larger than the uncertainty of the difference; the two
 * readings' errors count as independent, which is careful where they share an input that reads the same both times.
 * Undefined where one of the readings lacks the result or the limit.
 */
export function compare(before: Reading, after: Reading, limit: Limited): Comparison | undefined {
  const [xb, xa] = [intervalAt(before, limit.of), intervalAt(after, limit.of)];
  const sides = sidesOf(after, limit);
  if (!xb || !xa || !sides) return undefined;
  const [max, min] = [sides.max && exactly(sides.max), sides.min && exactly(sides.min)];
  const eb = worstOf(excesses(xb, limit, max, min));
  const ea = worstOf(excesses(xa, limit, max, min));
  if (!eb || !ea) return undefined;
  const gain = minus(eb, ea);
  const change: Comparison['change'] = gain.low > 0 ? 'better' : gain.high < 0 ? 'worse' : 'no change';
  return {
    of: limit.of,
    before: exactCopy(xb),
    after: exactCopy(xa),
    gain,
    change,
    was: verdictOn(limit, before),
    now: verdictOn(limit, after),
  };
}

const exactCopy = ({ value, low, high }: Interval): Interval => ({ value, low, high });

/** Did it work? `settled`: within the limit now, though by no change that the readings can tell. */
export type DidItWork = 'yes' | 'settled' | 'in part' | 'no change' | 'worse' | 'not comparable';

/** The comparisons that a correction is judged by: what was not within its limit, or has left it. */
export function judgedBy(comparisons: readonly Comparison[]): readonly Comparison[] {
  const open = comparisons.filter((one) => one.was !== 'within' || (one.change === 'worse' && one.now !== 'within'));
  return open.length > 0 ? open : comparisons;
}

export function didItWork(comparisons: readonly Comparison[]): DidItWork {
  const judged = judgedBy(comparisons);
  if (judged.length === 0) return 'not comparable';
  if (judged.some((one) => one.change === 'worse' && one.now !== 'within')) return 'worse';
  const better = judged.some((one) => one.change === 'better');
  if (judged.every((one) => one.now === 'within')) return better ? 'yes' : 'settled';
  return better ? 'in part' : 'no change';
}

/** What an order promised of the reading after it, and what that read. */
export interface Promised {
  readonly of: string;
  readonly name: string;
  readonly kind: string;
  readonly unit: string;
  /** With the doubt of both readings. */
  readonly expected: Interval;
  readonly read: Interval;
  readonly held: boolean;
}

/** The reading after an order held to what the order promised: its value lies in the interval, which has the doubt of both readings. */
export function promisedOf(before: Reading, after: Reading): readonly Promised[] {
  return Object.entries(before.order.expects).flatMap(([of, { name, kind, unit, value, low, high }]): Promised[] => {
    const read = intervalAt(after, of);
    if (!read) return [];
    const hair = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
    const held = read.value >= low - hair && read.value <= high + hair;
    return [{ of, name, kind, unit, expected: { value, low, high }, read: exactCopy(read), held }];
  });
}

/** A reading that advised a correction, and the next one of the same check. */
export interface Pair {
  readonly before: Reading;
  /** Undefined while none was taken since. */
  readonly after: Reading | undefined;
}

/** @param readings of one check on one machine, newest first. @returns newest first */
export function pairsOf(readings: readonly Reading[]): readonly Pair[] {
  return readings.flatMap((before, i) => (before.verdict === 'beyond' ? [{ before, after: readings[i - 1] }] : []));
}

/** What a check draws from the machine: symbols of its inputs and options, and where the machine keeps them. */
export interface Uses {
  readonly values: Readonly<Record<string, string>>;
  readonly choices: Readonly<Record<string, string>>;
}

/** Something of the machine that is another now. Numbers in SI; options by id. */
export type Changed =
  | {
      readonly kind: 'value';
      readonly symbol: string;
      readonly was: number;
      readonly now: number;
      readonly unit: string;
    }
  | { readonly kind: 'choice'; readonly name: string; readonly was: string; readonly now: string };

/** Values go through a person's unit and back: the last digits of a double do not count. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/** What a reading rests on that the machine has otherwise since. Options carry no time: any difference counts. */
export function changedSince(reading: Reading, machine: Machine, uses: Uses): readonly Changed[] {
  const values = Object.entries(uses.values).flatMap(([symbol, place]): Changed[] => {
    const [entry, kept] = [reading.entries[symbol], machine.values[place]];
    if (!entry || !kept || compareStamps(kept, reading) <= 0 || same(entry.value, kept.value)) return [];
    return [{ kind: 'value', symbol, was: entry.value, now: kept.value, unit: kept.unit }];
  });
  const choices = Object.entries(uses.choices).flatMap(([name, place]): Changed[] => {
    const [was, now] = [reading.choices[name], machine.choices[place]];
    return was === undefined || now === undefined || was === now ? [] : [{ kind: 'choice', name, was, now }];
  });
  return [...values, ...choices];
}

/** What is otherwise about the machine in two readings: then a change of the result is not the correction's alone. */
export function changedBetween(before: Reading, after: Reading, uses: Uses): readonly Changed[] {
  const values = Object.keys(uses.values).flatMap((symbol): Changed[] => {
    const [was, now] = [before.entries[symbol], after.entries[symbol]];
    if (!was || !now || same(was.value, now.value)) return [];
    return [{ kind: 'value', symbol, was: was.value, now: now.value, unit: now.unit }];
  });
  const choices = Object.keys(after.choices).flatMap((name): Changed[] => {
    const [was, now] = [before.choices[name], after.choices[name]];
    return was === undefined || now === undefined || was === now ? [] : [{ kind: 'choice', name, was, now }];
  });
  return [...values, ...choices];
}

const DAY_MS = 86_400_000;

/** Why a check is due. */
export type Due =
  | { readonly kind: 'changed'; readonly changes: readonly Changed[] }
  | { readonly kind: 'old'; readonly days: number; readonly age: number }
  /** Its last reading is dated after now: how old it is cannot be told. */
  | { readonly kind: 'ahead'; readonly days: number }
  | { readonly kind: 'never'; readonly days: number };

/**
 * Why a check is due on a machine; empty where it is not.
 * @param latest its last reading there, if there is one
 */
export function dueFor(
  calculator: string,
  latest: Reading | undefined,
  machine: Machine,
  uses: Uses,
  now: Date,
): readonly Due[] {
  const days = machine.intervals?.[calculator];
  if (!latest) return days === undefined ? [] : [{ kind: 'never', days }];
  const changes = changedSince(latest, machine, uses);
  const age = Math.floor((now.getTime() - Date.parse(latest.at)) / DAY_MS);
  return [
    ...(changes.length > 0 ? [{ kind: 'changed', changes } as const] : []),
    ...(days !== undefined && isAhead(latest.at, now) ? [{ kind: 'ahead', days } as const] : []),
    ...(days !== undefined && age >= days ? [{ kind: 'old', days, age } as const] : []),
  ];
}
