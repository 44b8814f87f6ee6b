import say from './words/en';

/** Where a formula, a limit or a typical value comes from. */
export interface Citation {
  /** The work: standard, book, paper; or what it was derived from. */
  readonly source: string;
  /** Clause, equation, chapter or page. */
  readonly place?: string;
  readonly basis: 'published' | 'derived' | 'common practice';
  /** True when quoted from memory of the named work, not re-read. */
  readonly fromMemory?: boolean;
}

/** A published source. `fromMemory` marks a clause or page that was not looked up again. */
export function cite(source: string, place?: string, fromMemory = false): Citation {
  return { source, basis: 'published', fromMemory, ...(place === undefined ? {} : { place }) };
}

/** Follows from geometry, statics or a definition; says from what. */
export function derived(from: string): Citation {
  return { source: from, basis: 'derived' };
}

/** A fact of the trade without a published source. */
export const commonPractice: Citation = { source: say.citation.commonPractice, basis: 'common practice' };

/** A citation as one line of text. */
export function printCitation(c: Citation): string {
  if (c.basis === 'common practice') return c.source;
  if (c.basis === 'derived') return say.citation.derived(c.source);
  const work = c.place === undefined ? c.source : `${c.source}, ${c.place}`;
  return c.fromMemory ? say.citation.fromMemory(work) : work;
}
