import type { FirstAct } from './types';
import say from './words/en';

/** What is to be done first, in words: a title and its acts in order. */
export const firstActs = (first: FirstAct): { readonly title: string; readonly acts: readonly string[] } =>
  say.stop[first];
