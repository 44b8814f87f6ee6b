/** Marks of a scale: round numbers, and dates that a calendar knows. */

/** Round numbers (1, 2, 5 times a power of ten) from `low` to `high`, about `count` of them. */
export function numberTicks(low: number, high: number, count: number): readonly number[] {
  const raw = (high - low) / count;
  if (!(raw > 0) || !Number.isFinite(raw)) return [low];
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5].find((factor) => factor * power >= raw * 0.999) ?? 10) * power;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, i) => (first + i) * step);
}

/** Decimal places that tell ticks apart. */
export function placesOf(ticks: readonly number[]): number {
  const [a = 0, b = a + 1] = ticks;
  return Math.min(Math.max(-Math.floor(Math.log10(Math.abs(b - a)) + 1e-9), 0), 12);
}

type Step = readonly [unit: 'hour' | 'day' | 'month' | 'year', size: number];
const STEPS: readonly (readonly [Step, ms: number])[] = (
  [
    ['hour', 1],
    ['hour', 6],
    ['day', 1],
    ['day', 2],
    ['day', 7],
    ['day', 14],
    ['month', 1],
    ['month', 3],
    ['month', 6],
    ['year', 1],
    ['year', 2],
    ['year', 5],
    ['year', 10],
  ] as const
).map((step) => [step, step[1] * { hour: 3.6e6, day: 8.64e7, month: 2.63e9, year: 3.156e10 }[step[0]]]);

export interface TimeTick {
  readonly at: number;
  readonly text: string;
}

/** The start of the step at or after a time, on this device's clock. */
function aligned(at: Date, [unit, size]: Step): Date {
  const start = new Date(at);
  if (unit === 'hour') start.setHours(Math.ceil(at.getHours() / size) * size, 0, 0, 0);
  else start.setHours(0, 0, 0, 0);
  if (unit === 'month') start.setMonth(Math.floor(start.getMonth() / size) * size, 1);
  if (unit === 'year') start.setFullYear(Math.floor(start.getFullYear() / size) * size, 0, 1);
  return start;
}

function next(at: Date, [unit, size]: Step): Date {
  const then = new Date(at);
  if (unit === 'hour') then.setHours(then.getHours() + size);
  if (unit === 'day') then.setDate(then.getDate() + size);
  if (unit === 'month') then.setMonth(then.getMonth() + size);
  if (unit === 'year') then.setFullYear(then.getFullYear() + size);
  return then;
}

function printTick(at: Date, unit: Step[0], locale: string | undefined): string {
  if (unit === 'hour') return at.toLocaleTimeString(locale, { hour: '2-digit', minute: '2-digit' });
  if (unit === 'day') return at.toLocaleDateString(locale, { day: 'numeric', month: 'short' });
  if (unit === 'month') return at.toLocaleDateString(locale, { month: 'short', year: '2-digit' });
  return String(at.getFullYear());
}

/** Whole hours, days, months or years between two times (ms), no more than `most` of them. */
export function timeTicks(from: number, to: number, most: number, locale?: string): readonly TimeTick[] {
  const found = STEPS.find(([, ms]) => (to - from) / ms <= most) ?? STEPS.at(-1);
  if (!found || !(to > from)) return [];
  const [step] = found;
  const ticks: TimeTick[] = [];
  for (let at = aligned(new Date(from), step); at.getTime() <= to; at = next(at, step)) {
    if (at.getTime() >= from) ticks.push({ at: at.getTime(), text: printTick(at, step[0], locale) });
  }
  // A step longer than ten years, or a calendar that brings one more: thinned out.
  const every = Math.ceil(ticks.length / (most + 1));
  return ticks.filter((_, i) => i % every === 0);
}
