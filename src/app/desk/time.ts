import { isAhead } from '../../machine/stamp';
import say from './words/en';

/** What was kept cannot be dated after now: the clock was wrong then, or is now. */
const marked = (iso: string, words: string): string => (isAhead(iso, new Date()) ? say.ahead(words) : words);

/** A time at which something was kept, as the person's device writes it; marked where it has not come. */
export function printTime(iso: string): string {
  return marked(iso, new Date(iso).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' }));
}

/** A day on which something was kept, as the person's device writes it; marked where it has not come. */
export function printDay(iso: string): string {
  return marked(iso, new Date(iso).toLocaleDateString(undefined, { dateStyle: 'medium' }));
}
