import { DEAD, type Click } from './click-watch';

/** So many clicks, each with the half-width of its 95 % interval. */
export interface ClickCount {
  readonly count: number;
  readonly halfWidth: number;
  /** Clicks a second, over the time listened. */
  readonly rate: number;
  readonly rateHalfWidth: number;
}

/** Clicks of one feeder are about as loud as each other: what is farther from their median is in doubt, dB. */
const APART = 16;
/** Fewer missed than this are none. */
const FEW = 0.05;

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

/** How unevenly the clicks follow each other: standard deviation of the gaps over their mean, 0 for a clock, 1 for pure chance. */
function unevenness(clicks: readonly Click[]): number {
  const gaps = clicks.slice(1).map(({ at }, i) => at - (clicks[i]?.at ?? at));
  if (gaps.length < 3) return 1;
  const mean = gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
  return Math.sqrt(gaps.reduce((sum, gap) => sum + (gap - mean) ** 2, 0) / (gaps.length - 1)) / mean;
}

/** Which of the clicks may be none. */
export function doubtfulOf(clicks: readonly Click[]): readonly boolean[] {
  const usual = median(clicks.map(({ loudness }) => loudness));
  return clicks.map(({ doubt, loudness }) => doubt !== undefined || Math.abs(loudness - usual) > APART);
}

/** Whether so many of the clicks are hardly over the noise that others are likely to be missed. */
export function isFaint(clicks: readonly Click[]): boolean {
  const faint = clicks.filter(({ doubt }) => doubt === 'faint').length;
  return faint > 2 && faint > clicks.length / 5;
}

/**
 * How many clicks there were, and how surely: from those beyond doubt to those with all the doubtful, as many again as are hardly
 * over the noise (as many lie below it), those that another sound may have hidden and those that may have fallen into one another.
 * @param seconds listened in all
 * @param masked of these, filled by other sounds
 */
export function countClicks(clicks: readonly Click[], seconds: number, masked: number): ClickCount {
  const sure = clicks.length - doubtfulOf(clicks).filter(Boolean).length;
  const faint = isFaint(clicks) ? clicks.filter(({ doubt }) => doubt === 'faint').length : 0;
  const open = Math.max(seconds - masked, seconds / 10, 1e-9);
  const together = sure * Math.min(1, (sure * DEAD) / open) * Math.min(1, unevenness(clicks) ** 2);
  const missed = (sure * masked) / open + together;
  // What chance makes of so few goes to both sides of what is expected.
  const most = clicks.length + faint + (missed < FEW ? 0 : Math.ceil(missed + 2 * Math.sqrt(missed)));
  const count = Math.round((sure + most) / 2);
  const halfWidth = Math.max(most - count, count - sure);
  const over = Math.max(seconds, 1e-9);
  return { count, halfWidth, rate: count / over, rateHalfWidth: halfWidth / over };
}
