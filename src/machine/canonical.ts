import { isPlain } from './plain';

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (!isPlain(value)) return value;
  const names = Object.keys(value).sort();
  return Object.fromEntries(names.map((name) => [name, inOrder(value[name])]));
}

/** A value of a record as JSON, names in order of their letters: equal texts mean equal values (0 and -0 too). */
export const canonical = (value: unknown): string => JSON.stringify(inOrder(value));
