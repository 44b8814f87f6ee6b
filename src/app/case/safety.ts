import say from './words/en';
import type { NewEntry } from './edit';

/** What can be said of making a machine safe. */
export type Safety = 'done' | 'will do' | 'cannot';

export const SAFETIES: readonly Safety[] = ['done', 'will do', 'cannot'];

/** What was ticked, from an address; undefined for anything else. */
export const safetyOf = (raw: string | null): Safety | undefined => SAFETIES.find((one) => one === raw);

export const entryOf = (safety: Safety): NewEntry =>
  safety === 'done' ? { kind: 'made safe' } : { kind: 'not safe', why: safety };

/** The acts as lines, with boxes to tick on paper or in a message. */
export const tickLines = (acts: { readonly title: string; readonly acts: readonly string[] }): readonly string[] => [
  acts.title,
  ...acts.acts.map((act, i) => `${i + 1}. ${act}`),
  ...SAFETIES.map((safety) => say.safe.box(say.safe.ticks[safety])),
];
