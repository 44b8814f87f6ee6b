import type { Entry } from './types';

/** An entry of a case with when it was made and what was said of it. */
export type Logged = Entry & { readonly at: string; readonly note: string };

/** How another's log of the same case stands to ours. */
export type Standing = 'same' | 'theirs goes on' | 'ours goes on' | 'apart';

type Remedy = Extract<Entry, { kind: 'mended' }>['remedy'];

/** An earlier version did not keep which it was: then nothing speaks against it. */
const sameRemedy = (a: Remedy, b: Remedy): boolean => a === undefined || b === undefined || a === b;

/** Whether two entries say the same thing at the same time; words to them may differ. */
export function sameEntry(a: Logged, b: Logged): boolean {
  if (a.at !== b.at) return false;
  if (a.kind === 'made safe') return b.kind === 'made safe';
  if (a.kind === 'not safe') return b.kind === 'not safe' && a.why === b.why;
  if (a.kind === 'answer') return b.kind === 'answer' && a.check === b.check && a.answer === b.answer;
  if (a.kind === 'skip') return b.kind === 'skip' && a.check === b.check;
  if (a.kind === 'ruled out') return b.kind === 'ruled out' && a.cause === b.cause && a.sure === b.sure;
  return b.kind === 'mended' && a.cause === b.cause && a.cured === b.cured && sameRemedy(a.remedy, b.remedy);
}

/** The longer of two logs goes on from the other where it begins with it; otherwise they have come apart. */
export function standing(ours: readonly Logged[], theirs: readonly Logged[]): Standing {
  const shared = Math.min(ours.length, theirs.length);
  for (let i = 0; i < shared; i += 1) {
    const [a, b] = [ours[i], theirs[i]];
    if (!a || !b || !sameEntry(a, b)) return 'apart';
  }
  if (ours.length === theirs.length) return 'same';
  return theirs.length > ours.length ? 'theirs goes on' : 'ours goes on';
}
