import { canonical } from './canonical';
import type { Draft } from './schema';

/** What is entered for a check: kept as a draft, so plain data. */
export type Entered = Pick<Draft, 'entries' | 'choices'>;

/** What of a sheet is kept as its draft. */
export interface Sheet extends Entered {
  /** What stood there before a link, an example or a blank sheet took its place. */
  readonly before?: Entered | undefined;
}

type Fields<T> = Readonly<Record<string, T>>;

const same = (a: unknown, b: unknown): boolean => canonical(a) === canonical(b);

/** Each field by itself: the one whose value is another than at `base` counts; where both are, mine. */
function fieldsOf<T>(base: Fields<T>, mine: Fields<T>, theirs: Fields<T>): Record<string, T> {
  const names = new Set([...Object.keys(theirs), ...Object.keys(mine)]);
  return Object.fromEntries(
    [...names].flatMap((name): [string, T][] => {
      const value = same(base[name], mine[name]) ? theirs[name] : mine[name];
      return value === undefined ? [] : [[name, value]];
    }),
  );
}

/**
 * A sheet on which two tabs worked, field by field: what was changed here since `base` stays as it is here, all else is as it
 * is there.
 * @param base what both began with, as this tab last knew it
 */
export function mergeSheets(base: Sheet, mine: Sheet, theirs: Sheet): Sheet {
  const before = same(base.before, mine.before) ? theirs.before : mine.before;
  return {
    entries: fieldsOf(base.entries, mine.entries, theirs.entries),
    choices: fieldsOf(base.choices, mine.choices, theirs.choices),
    ...(before === undefined ? {} : { before }),
  };
}

/** Whether two sheets say the same. */
export const sameSheet = (a: Sheet, b: Sheet): boolean =>
  same(a.entries, b.entries) && same(a.choices, b.choices) && same(a.before, b.before);
