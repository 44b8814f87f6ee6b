import { resultOf } from './column';
import type { Inputs } from './propagate';
import { bracketedRoot, edge, JUMP, refine, ROUNDING, scan, type Off, type Point, type Question } from './solve';
import type { System } from './system';

/** All values of the unknown from `low` to `high` give the target; one value where they are the same. SI. */
export interface Stretch {
  readonly low: number;
  readonly high: number;
}

export type SteppedSolution =
  /** Nearest to the usual value first; `more` where there are others than these. */
  | { readonly ok: true; readonly stretches: readonly Stretch[]; readonly more: boolean }
  | { readonly ok: false; readonly reason: 'no root'; readonly low: number; readonly high: number }
  | { readonly ok: false; readonly reason: 'no result' };

export interface SteppedQuestion extends Question {
  /** The usual value of the unknown: what lies nearest to it comes first. SI. */
  readonly near: number;
  /** Stretches wanted at most. */
  readonly most: number;
  /** The unknown is counted: only whole numbers answer. */
  readonly whole: boolean;
}

/** Whole numbers that the unknown moves on the way to the target: their symbols. */
function steppingOn(system: System, unknown: string, target: string): string[] {
  const found = new Set<string>();
  const visit = (name: string): void => {
    const step = system.steps.find(({ formula }) => formula.symbol === name);
    if (!step || found.has(name)) return;
    found.add(name);
    step.formula.uses.forEach(visit);
  };
  visit(target);
  return system.steps
    .filter(({ formula, rounded, inputs }) => rounded && inputs.has(unknown) && found.has(formula.symbol))
    .map(({ formula }) => formula.symbol);
}

/** True where the target moves in steps as the unknown does, or is a saw that steps leave. */
export const isStepped = (system: System, unknown: string, target: string): boolean =>
  steppingOn(system, unknown, target).length > 0;

/** A place on the unknown's range, and the whole numbers that are in force there. */
interface Place {
  readonly x: number;
  readonly key: string;
}

type KeyAt = (x: number) => Place;

/** More places than this are not looked at: of a comb that grows finer without end, the far teeth are left out. */
const MOST_PLACES = 4000;
const MAX_HALVINGS = 100;
/** Points looked at within one step. */
const WITHIN = 6;

/** Places across the range, so close that between two neighbours the whole numbers change once at most: those near the usual value first. */
function places(at: KeyAt, range: readonly [number, number], near: number): Place[] {
  const found = scan(range).map(at);
  const gaps = found.flatMap((here, i) => {
    const after = found[i + 1];
    return after ? [[here, after] as const] : [];
  });
  gaps.sort(([a], [b]) => Math.abs(b.x - near) - Math.abs(a.x - near));
  for (let gap = gaps.pop(); gap && found.length < MOST_PLACES; gap = gaps.pop()) {
    const [before, after] = gap;
    const middle = (before.x + after.x) / 2;
    if (areNeighbours(before.key, after.key) || middle <= before.x || middle >= after.x) continue;
    const here = at(middle);
    found.push(here);
    gaps.push([before, here], [here, after]);
  }
  return found.sort((a, b) => a.x - b.x);
}

/** True where no whole number differs by more than one. */
function areNeighbours(a: string, b: string): boolean {
  const [one, two] = [a.split(' '), b.split(' ')];
  return one.every((part, i) => part === two[i] || Math.abs(Number(part) - Number(two[i])) <= 1);
}

/** The last place that is as `here`, on the way to another that is not. */
function lastLike(at: KeyAt, here: Place, there: Place): Place {
  let [inside, outside] = [here, there.x];
  for (let i = 0; i < MAX_HALVINGS; i += 1) {
    const middle = at((inside.x + outside) / 2);
    if (middle.x === inside.x || middle.x === outside) break;
    if (middle.key === here.key) inside = middle;
    else outside = middle.x;
  }
  return inside;
}

/** Places between two, where the whole numbers are neither's: rounding forgives a hair, and exactly on a step floor and ceil are both that step. */
function between(at: KeyAt, before: Place, after: Place): readonly [number, number] | undefined {
  let [left, right] = [before, after];
  for (let i = 0; i < MAX_HALVINGS; i += 1) {
    const middle = at((left.x + right.x) / 2);
    if (middle.x <= left.x || middle.x >= right.x) return undefined;
    if (middle.key === left.key) left = middle;
    else if (middle.key === right.key) right = middle;
    else return [lastLike(at, middle, left).x, lastLike(at, middle, right).x];
  }
  return undefined;
}

/** What is asked, with the target's distance from the value wanted and how small it counts as none. */
interface Search {
  readonly at: Off;
  readonly keyAt: KeyAt;
  readonly isMet: (point: Point) => boolean;
}

/** The target met within one step, between two places of it. */
function within({ at, isMet }: Search, low: number, high: number): Stretch[] {
  const x = (i: number): number => (i === WITHIN ? high : low + ((high - low) * i) / WITHIN);
  const points = refine(
    at,
    Array.from({ length: WITHIN + 1 }, (_, i) => at(x(i))),
  );
  if (points.length > 0 && points.every(isMet)) return [{ low, high }];
  const found: Stretch[] = [];
  points.forEach((here, i) => {
    const after = points[i + 1];
    if (isMet(here)) {
      const stretch = { low: here.x, high: here.x };
      const before = points[i - 1];
      if (before && isMet(before)) return;
      const last = points.slice(i).findIndex((one) => !isMet(one));
      const [end, beyond] = [points[last < 0 ? points.length - 1 : i + last - 1], points[i + last]];
      if (!end) return;
      const from = before ? edge(at, here, before, isMet).x : stretch.low;
      found.push({ low: from, high: last > 0 && beyond ? edge(at, end, beyond, isMet).x : end.x });
    } else if (after && !isMet(after) && here.off * after.off < 0) {
      const root = bracketedRoot(at, here, after);
      // A pole changes its sign too.
      const across = Math.abs(after.off - here.off);
      if (isMet(root) || Math.abs(root.off) <= JUMP * across) found.push({ low: root.x, high: root.x });
    }
  });
  return found;
}

/** A part of the range, and what looking into it finds. */
interface Part extends Stretch {
  readonly look: () => Stretch[];
}

/** The runs of places with the same whole numbers, and the changes between them, as parts to look into. */
function partsOf(search: Search, all: readonly Place[]): Part[] {
  const parts: Part[] = [];
  let start = 0;
  all.forEach((here, i) => {
    const after = all[i + 1];
    if (after?.key === here.key) return;
    const [first, previous] = [all[start], all[start - 1]];
    if (!first) return;
    const from = () => (previous ? lastLike(search.keyAt, first, previous).x : first.x);
    const to = () => (after ? lastLike(search.keyAt, here, after).x : here.x);
    if (!here.key.includes('NaN')) {
      parts.push({ low: previous?.x ?? first.x, high: after?.x ?? here.x, look: () => within(search, from(), to()) });
    }
    if (after) {
      const own = (): Stretch[] => {
        const found = between(search.keyAt, here, after);
        return found ? within(search, ...found) : [];
      };
      parts.push({ low: here.x, high: after.x, look: own });
    }
    start = i + 1;
  });
  return parts;
}

/** The middle one by size: a pole somewhere does not make every result look small. */
const middleOf = (sizes: readonly number[]): number =>
  [...sizes].sort((a, b) => a - b)[Math.floor(sizes.length / 2)] ?? 0;

const distance = ({ low, high }: Stretch, near: number): number =>
  near >= low && near <= high ? 0 : Math.min(Math.abs(low - near), Math.abs(high - near));

const nearest = <T extends Stretch>(stretches: readonly T[], near: number): T[] =>
  [...stretches].sort((a, b) => distance(a, near) - distance(b, near));

/** What the parts hold, the nearest looked into first, until no other can hold one of those wanted, nor the next. */
function search(parts: readonly Part[], near: number, most: number): Stretch[] {
  const found: Stretch[] = [];
  for (const part of nearest(parts, near)) {
    const next = nearest(found, near)[most];
    if (next && distance(part, near) > distance(next, near)) break;
    found.push(...part.look());
  }
  return found;
}

/** A counted unknown: every whole number of its range is tried, those side by side become a stretch. */
function wholeNumbers(at: Off, isMet: Search['isMet'], [low, high]: readonly [number, number]): Stretch[] {
  const found: Stretch[] = [];
  for (let x = Math.ceil(low); x <= high && x - low < MOST_PLACES; x += 1) {
    if (!isMet(at(x))) continue;
    const last = found.at(-1);
    if (last?.high === x - 1) found[found.length - 1] = { low: last.low, high: x };
    else found.push({ low: x, high: x });
  }
  return found;
}

/**
 * Asks for one input where the result moves in steps or is a saw that steps leave: all values of it that give the target, as
 * stretches, the nearest to its usual value first. Of a comb of thousands of teeth the far ones may be missed.
 *
 * @param inputs the other inputs; the unknown's own entry is ignored
 */
export function solveStepped(system: System, inputs: Inputs, question: SteppedQuestion): SteppedSolution {
  const { unknown, target, value, range, near, most } = question;
  const values = Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input?.value]));
  const result = resultOf(system, values, unknown, target);
  const at: Off = (x) => ({ x, off: result(x) - value });
  const whole = steppingOn(system, unknown, target).map((symbol) => resultOf(system, values, unknown, symbol));
  const keyAt: KeyAt = (x) => ({ x, key: whole.map((of) => of(x)).join(' ') });
  const all = places(keyAt, range, near);
  const results = all.map(({ x }) => result(x)).filter(Number.isFinite);
  if (results.length === 0) return { ok: false, reason: 'no result' };
  const size = Math.max(Math.abs(value), middleOf(results.map(Math.abs)));
  const isMet = (point: Point): boolean => Math.abs(point.off) <= ROUNDING * size;
  const found = nearest(
    question.whole ? wholeNumbers(at, isMet, range) : search(partsOf({ at, keyAt, isMet }, all), near, most),
    near,
  );
  if (found.length > 0) return { ok: true, stretches: found.slice(0, most), more: found.length > most };
  return { ok: false, reason: 'no root', low: Math.min(...results), high: Math.max(...results) };
}
