import { PictureError } from '../../../instrument/picture';
import say from './words/en';

/**
 * What went wrong with a picture, as a sentence.
 * @param cancelled said where the person stopped it
 */
export function troubleOf(error: unknown, cancelled: string): string {
  if (error instanceof DOMException && error.name === 'AbortError') return cancelled;
  return say.fault[error instanceof PictureError ? error.fault : 'failed'];
}
