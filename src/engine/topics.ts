import words from './words/en/topics';

export type Topic = keyof typeof words;

/** Headings of the list of checks, in its order. */
export const TOPICS: Readonly<Record<Topic, string>> = words;
