import type { Citation } from '../reference/citation';

/**
 * Where something in a calculator comes from: a work, and the key of what is said of it (the clause, the remark) in the
 * calculator's words. Without a key the work says it all.
 */
export interface Source<K extends string = string> {
  readonly work?: string;
  readonly key?: K;
  readonly fromMemory?: boolean;
}

/** A source whose remark stands in the calculator's words, or one that comes worded from `reference`. */
export type Cited<K extends string = string> = Source<K> | Citation;

/**
 * A published source. `key` names the clause, page or remark in the calculator's words; `fromMemory` marks one that was not
 * looked up again.
 */
export function cite(work: string): Source<never>;
export function cite<const K extends string>(work: string, key: K, fromMemory?: boolean): Source<K>;
export function cite(work: string, key?: string, fromMemory = false): Source {
  return { work, fromMemory, ...(key === undefined ? {} : { key }) };
}

/** Follows from geometry, statics or a definition: `key` names from what, in the calculator's words. */
export function derived<const K extends string>(key: K): Source<K> {
  return { key };
}

/** A source with its remark put in. */
export function worded(source: Cited, remarks: Readonly<Record<string, string>>): Citation {
  if ('source' in source) return source;
  const remark = source.key === undefined ? undefined : remarks[source.key];
  if (source.work === undefined) return { source: remark ?? '', basis: 'derived' };
  return {
    source: source.work,
    basis: 'published',
    fromMemory: source.fromMemory === true,
    ...(remark === undefined ? {} : { place: remark }),
  };
}
