import type { Meddling, MicrophoneTrouble } from '../../../instrument/microphone-trouble';
import type { NoteRefused } from '../../../signal/note';

/** What is wrong with the microphone and what to do about it, a sentence each. */
export const TROUBLE: Readonly<Record<MicrophoneTrouble, string>> = {
  'not secure':
    'A browser lends its microphone only to pages that come over https: open this page by its https address.',
  'not supported': 'This browser cannot hand the microphone to a page: a newer one can.',
  refused:
    'The microphone was refused: allow it for this page in the browser (the sign beside the address, “Permissions” or “Site settings”) and for the browser in the phone’s own settings, then listen again.',
  none: 'This device has no microphone that the browser can find: plug one in, or use another phone.',
  taken: 'Another app or call has the microphone: end it there, then listen again.',
  ended: 'The microphone was taken away while listening (unplugged, or its permission withdrawn): listen again.',
  muted:
    'The phone has silenced the microphone (a call, or its privacy switch): listening goes on when it gives it back.',
  suspended: 'The phone holds the sound back until it is touched: press “Go on”.',
  failed: 'Listening broke off through a fault of this page or browser: listen again, or reload the page.',
};

/** Where the microphone fails, the sheet does not. */
export const TYPE_INSTEAD = 'A note found by other means can always be typed into the sheet.';

/** Why a pluck gave no note, in a word or two, and what to do about it. */
export const REFUSAL: Readonly<Record<NoteRefused['reason'], { readonly short: string; readonly advice: string }>> = {
  'too quiet': {
    short: 'too quiet',
    advice: 'Too quiet: bring the phone’s microphone nearer to the middle of the span, or pluck harder.',
  },
  'too noisy': {
    short: 'too noisy',
    advice: 'Too noisy to tell: switch off fans and motors, wait for silence, and bring the microphone nearer.',
  },
  'too short': {
    short: 'too short',
    advice: 'It died away too soon: take the finger right off, and let the belt ring out before the next pluck.',
  },
  'out of range': {
    short: 'out of range',
    advice: 'Its note is not one from 20 to 500 Hz: choose a span that is neither slack nor very short.',
  },
  overdriven: {
    short: 'too loud',
    advice: 'Too loud for the microphone: pluck more gently, or hold the phone a little further off.',
  },
};

const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

/** What the phone does to the sound although asked not to; empty where it leaves it alone. */
export function meddlingSentence(meddling: readonly Meddling[]): string {
  if (meddling.length === 0) return '';
  return `This phone keeps its ${list(meddling)} on although asked not to: a quiet belt may be cut short. It does not shift the note; trust plucks that agree.`;
}

export const RATE_OFF =
  'This phone’s sound does not run at the rate it states, so these notes may be wrong by several per cent: close other apps that use sound and reload the page.';

/** Nearer than this to a whole ratio, a note is taken for a partial of the same span. */
const WHOLE = 0.04;
/** A belt plucked harder, or one that crept: nearer than this it may still be the same span. */
const NEAR = 0.03;

/**
 * Why a pluck stands apart from the others, as a sentence's end.
 * @param frequency its note, Hz
 * @param common the note that the others agree on, Hz
 */
export function whyApart(frequency: number, common: number): string {
  const isRatio = (ratio: number): boolean => Math.abs(frequency / common / ratio - 1) < WHOLE;
  if (isRatio(2)) return 'an octave above the others';
  if (isRatio(1 / 2)) return 'an octave below the others';
  if (isRatio(3)) return 'three times the others: an upper partial';
  if (isRatio(1 / 3)) return 'a third of the others';
  const off = frequency / common - 1;
  const percent = Math.abs(off * 100);
  const way = off > 0 ? 'higher' : 'lower';
  if (Math.abs(off) < NEAR) return `${percent.toPrecision(2)} % ${way}: the belt moved, or was plucked otherwise`;
  return `${percent.toFixed(0)} % ${way}: another span`;
}
