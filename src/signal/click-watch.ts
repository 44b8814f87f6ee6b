import { createClickFramer, FRAME, type ClickFrame } from './click-frames';
import { createMeter, type LevelEvent } from './sound-level';

/** Something short and sharp that was heard. */
export interface Click {
  /** Seconds from the start of the stream. */
  readonly at: number;
  /** Peak of its power over the noise, dB. */
  readonly loudness: number;
  /** Hardly over the noise, or with a sound after it that goes on, as a voice or a motor that starts: it may be none. */
  readonly doubt?: 'faint' | 'goes on';
}

export type ClickEvent =
  | LevelEvent
  | { readonly kind: 'click'; readonly click: Click }
  /** So many seconds more were listened to; masked: filled by another sound, in which a click would not be heard. */
  | { readonly kind: 'span'; readonly seconds: number; readonly isMasked: boolean };

export interface ClickListener {
  push(block: Float32Array): readonly ClickEvent[];
}

/** Nearer than this two clicks are one, s: a slip and the bounce after it. */
export const DEAD = 0.022;

const framesOf = (seconds: number): number => Math.round(seconds / FRAME);
/** Evidence from which something was heard, and that of a click beyond doubt. */
const LEAST = 30;
const SURE = 75;
/** It is so many times as loud as what came just before it: from and to so many frames back. */
const RISE = 4;
const JUST = [3, 9] as const;
/** It has fallen to this share of its first frames within the time given, for at least so long; a voice goes on. */
const FALLEN = 0.22;
const FIRST = framesOf(0.006);
const BY = framesOf(0.08);
const QUIET = framesOf(0.01);
/** Nor does a click swell: so loud against its first frames it is not from and to so many seconds after. */
const SWELLS = [0.02, 0.06] as const;
const SWELLED = 0.7;
/** What sounds for longer than this after it belongs to a voice or a motor. */
const AFTER = framesOf(0.2);
const HELD = 0.45;
/** A sound this many times over the noise for so much of such a time hides clicks. */
const LOUD = 6;
const MOSTLY = 0.7;
const STRETCH = framesOf(0.1);
const KEPT = AFTER + framesOf(0.1);

const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / Math.max(1, values.length);

/** The least mean over `width` values in a row. */
function quietest(values: readonly number[], width: number): number {
  let least = Infinity;
  for (let i = 0; i + width <= values.length; i += 1) least = Math.min(least, mean(values.slice(i, i + width)));
  return least;
}

/** What is made of the levels from a beginning on: undefined where it goes on as no click does. */
function judge(levels: readonly number[], evidence: number): Omit<Click, 'at'> | undefined {
  const over = (level: number): number => Math.max(0, level - 1);
  const first = over(mean(levels.slice(0, FIRST)));
  if (over(quietest(levels.slice(FIRST, BY), QUIET)) > FALLEN * first) return undefined;
  if (over(mean(levels.slice(framesOf(SWELLS[0]), framesOf(SWELLS[1])))) > SWELLED * first) return undefined;
  const later = levels.slice(framesOf(0.05), AFTER);
  const goesOn = later.filter((level) => over(level) > FALLEN * first).length > HELD * later.length;
  const loudness = 10 * Math.log10(Math.max(...levels.slice(0, FIRST)));
  if (goesOn) return { loudness, doubt: 'goes on' };
  return evidence < SURE ? { loudness, doubt: 'faint' } : { loudness };
}

/**
 * Listens to a stream for clicks: the ticking of a feeder that slips. A click sets in within a few milliseconds, in every octave
 * from 500 Hz to 8 kHz at once, and is gone after some hundredths of a second; voices, hums and whines are not. Told a fifth of a
 * second after it; two nearer than 22 ms are one. Pure: no clock, no device; time is counted in samples.
 */
export function createClickListener(rate: number): ClickListener {
  const framer = createClickFramer(rate);
  const meter = createMeter(rate);
  const recent: ClickFrame[] = [];
  const waiting: { frame: number; to: number; evidence: number }[] = [];
  let count = 0;
  let last = -Infinity;
  let loud = 0;

  const levelsFrom = (frame: number, to: number): number[] => {
    const first = count - recent.length;
    return recent.slice(Math.max(0, frame - first), Math.max(0, to - first)).map(({ level }) => level);
  };
  const begins = ({ evidence, level }: ClickFrame): boolean => {
    if (evidence < LEAST || count - last < framesOf(DEAD)) return false;
    return level > RISE * mean(levelsFrom(count - JUST[1], count - JUST[0]));
  };
  const take = (frame: ClickFrame, events: ClickEvent[]): void => {
    const told = meter(frame);
    if (told) events.push(told);
    if (begins(frame)) {
      waiting.push({ frame: count, to: frame.to, evidence: frame.evidence });
      last = count;
    }
    recent.push(frame);
    count += 1;
    if (recent.length > KEPT) recent.shift();
    // Its first frame may hold the last moment of a beginning only.
    const newest = waiting.at(-1);
    if (newest && count - newest.frame <= FIRST) newest.evidence = Math.max(newest.evidence, frame.evidence);
    if (frame.level > LOUD) loud += 1;
    if (count % STRETCH === 0) {
      events.push({ kind: 'span', seconds: STRETCH * FRAME, isMasked: loud > MOSTLY * STRETCH });
      loud = 0;
    }
    while (waiting[0] && count - waiting[0].frame >= AFTER) {
      const { frame: from, to, evidence } = waiting.shift() ?? waiting[0];
      const click = judge(levelsFrom(from, from + AFTER), evidence);
      if (click) events.push({ kind: 'click', click: { at: to / rate, ...click } });
    }
  };

  return {
    push(block) {
      const events: ClickEvent[] = [];
      for (const frame of framer(block)) take(frame, events);
      return events;
    },
  };
}
