import * as v from 'valibot';
import { isPlain } from './plain';
import { LIMITS } from './limits';
import say from './words/en';

/** What words are made from, as it is kept: what JSON holds, without null. */
export type Arg = string | number | boolean | readonly Arg[] | Args;
export interface Args {
  readonly [name: string]: Arg;
}

const NOTHING = Symbol('nothing');

/** What every object inherits (`toString`) would be found in any table it is looked up in. */
const isName = (name: string): boolean => name.length <= LIMITS.id && !(name in Object.prototype);

/** A copy of what may be kept, else `NOTHING`. Counts down what is left of the values that there may be. */
function copied(value: unknown, depth: number, left: { values: number }): Arg | typeof NOTHING {
  left.values -= 1;
  if (left.values < 0 || depth > LIMITS.argDepth) return NOTHING;
  if (typeof value === 'string') return value.length <= LIMITS.line ? value : NOTHING;
  if (typeof value === 'number') return Number.isFinite(value) ? value : NOTHING;
  if (typeof value === 'boolean') return value;
  if (Array.isArray(value)) {
    if (value.length > LIMITS.args) return NOTHING;
    const items = Array.from(value, (item) => copied(item, depth + 1, left));
    return items.includes(NOTHING) ? NOTHING : (items as Arg[]);
  }
  return isPlain(value) ? copiedMap(value, depth, left) : NOTHING;
}

function copiedMap(
  value: Readonly<Record<string, unknown>>,
  depth: number,
  left: { values: number },
): Args | typeof NOTHING {
  const names = Object.keys(value);
  if (names.length > LIMITS.args) return NOTHING;
  const copy: Record<string, Arg> = {};
  for (const name of names) {
    const item = isName(name) ? copied(value[name], depth + 1, left) : NOTHING;
    if (item === NOTHING) return NOTHING;
    copy[name] = item;
  }
  return copy;
}

/** Plain data of bounded depth and size; a copy, so that nothing else comes along. */
export const args: v.GenericSchema<unknown, Args> = v.pipe(
  v.unknown(),
  v.rawTransform<unknown, Args>(({ dataset, addIssue, NEVER }) => {
    const copy = isPlain(dataset.value) ? copiedMap(dataset.value, 0, { values: LIMITS.args }) : NOTHING;
    if (copy !== NOTHING) return copy;
    addIssue({ message: say.field.notArgs });
    return NEVER;
  }),
);
