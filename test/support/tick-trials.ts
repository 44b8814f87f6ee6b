/** Trials of the ear that counts a feeder's ticks: cells, and what it made of them. */
import { countClicks } from '../../src/signal/click-count';
import { createClickListener, type Click } from '../../src/signal/click-watch';
import { RATE } from './plucks';
import { SECONDS, type Ticking, type TickScene } from './tick-sounds';

const base: TickScene = { peakDb: 20, noise: 'pink', times: 'even', beside: 'nothing', room: 0 };

/** Every cell of the bench, none left out. */
export const TICK_CELLS: readonly TickScene[] = [
  ...[30, 20, 15, 10].flatMap((peakDb) => (['white', 'pink'] as const).map((noise) => ({ ...base, peakDb, noise }))),
  { ...base, times: 'chance' },
  { ...base, times: 'pairs' },
  ...[0.3, 0.7].map((room) => ({ ...base, room })),
  ...(['motor', 'fan', 'motor and fan', 'speech'] as const).map((beside) => ({ ...base, beside })),
  { ...base, times: 'none', beside: 'only speech' },
];

export const ticksName = ({ peakDb, noise, times, beside, room }: TickScene): string =>
  [
    ...(times === 'none' ? [] : [`ticks ${peakDb} dB`, times]),
    noise,
    ...(beside === 'nothing' ? [] : [beside]),
    ...(room > 0 ? [`room ${room} s`] : []),
  ].join(', ');

/** What the ear hears of a scene. */
export function hear({ samples }: Ticking) {
  const clicks: Click[] = [];
  let [seconds, masked] = [0, 0];
  for (const event of createClickListener(RATE).push(samples)) {
    if (event.kind === 'click') clicks.push(event.click);
    if (event.kind === 'span') seconds += event.seconds;
    if (event.kind === 'span' && event.isMasked) masked += event.seconds;
  }
  return { clicks, seconds, masked };
}

/** So near in time, s, a click is a tick's. */
const NEAR = 0.012;

export class TickTally {
  trials = 0;
  ticks = 0;
  missed = 0;
  added = 0;
  /** Counts whose stated interval holds the true one, and the sum of its half-widths. */
  inside = 0;
  halfWidths = 0;
  seconds = 0;

  add(made: Ticking): void {
    const { clicks, seconds, masked } = hear(made);
    const left = new Set(clicks);
    for (const at of made.at) {
      const own = [...left].find((click) => Math.abs(click.at - at) < NEAR);
      if (own) left.delete(own);
      else this.missed += 1;
    }
    const { count, halfWidth } = countClicks(clicks, seconds, masked);
    this.trials += 1;
    this.ticks += made.at.length;
    this.added += left.size;
    this.halfWidths += halfWidth;
    this.seconds += SECONDS;
    if (Math.abs(count - made.at.length) <= halfWidth) this.inside += 1;
  }
}
