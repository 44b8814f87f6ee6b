import { exact, type Amount, type Movement } from '../../engine/order';
import { firstThat, settable } from '../../engine/settable';
import { temperature } from '../../quantity/kinds';
import type { Ask } from './asking';

/** 0 °C, K. */
const ZERO = 273.15;
/** Ovens and dryers are set in steps of this, K. */
export const DIAL = 5;
export const HOUR = 3600;
export const DAY = 24 * HOUR;
/** From here on days are easier to grasp than hours, and clocks are set by them. */
export const LONG = 3 * DAY;
/** Nobody dries a spool longer (common practice). */
export const LONGEST = 14 * DAY;
/** The least that such an oven is set to, °C. */
const COOLEST = 20;

export const ofOven = (si: number): Amount => exact(si, temperature.C);

/** The hottest that the dial can be set to and the strand surely stays below where it softens, K; undefined where nothing is. */
export function hottest(ask: Ask): number | undefined {
  const limit = ask.known('T_max')?.low ?? ask.number('T_max');
  const swing = ask.choice('ask') === 'store' ? 0 : ask.quantity('T_b').width;
  const celsius = settable(Math.max(limit - swing - ZERO, 0), DIAL, 'down');
  return celsius < COOLEST ? undefined : celsius + ZERO;
}

const wholeTime = (seconds: number): number => settable(seconds, seconds > LONG ? DAY : HOUR, 'up');

/** What to set: an oven's temperature where it has to change, and a time, with which it surely gets dry. SI. */
export interface Setting {
  readonly T_b?: number;
  readonly t?: number;
}

/** How much faster water moves at another temperature, at the least. */
function sped(ask: Ask, to: number): number {
  const steps = ask.number('E_a') / 8.314;
  const doubt = ask.quantity('E_a').width / 8.314;
  const gain = 1 / ask.number('T_b') - 1 / to;
  return Math.exp(steps * gain - doubt * Math.abs(gain));
}

/**
 * The time that surely suffices at an oven's temperature, by trial of the verdict; the time set where that is enough, undefined where two weeks
 * are not.
 */
function timeAt(ask: Ask, T_b: number | undefined): number | undefined {
  const set = ask.number('t');
  const oven = T_b === undefined ? {} : { T_b };
  const needed = ask.known('t_q')?.high ?? ask.number('t_q');
  const guess = wholeTime(Math.max(T_b === undefined ? needed : needed / sped(ask, T_b), HOUR));
  if (guess <= set && ask.after({ ...oven, t: set }) === 'within') return set;
  const passes = (t: number): boolean => ask.after({ ...oven, t }) === 'within';
  const from = Math.max(guess, wholeTime(set));
  return from > LONGEST ? undefined : firstThat(passes, from, LONGEST, from > LONG ? DAY : HOUR);
}

/** Oven and time with which it surely gets dry: this oven with another time, else the hottest that the strand bears. */
export function settingFor(ask: Ask, from: 'as set' | 'hottest'): Setting | undefined {
  const now = ask.number('t');
  const timed = (t: number): Setting => (t === now ? {} : { t });
  if (from === 'as set') {
    const t = timeAt(ask, undefined);
    if (t !== undefined) return timed(t);
  }
  const T_b = hottest(ask);
  if (T_b === undefined || (from === 'as set' && T_b <= ask.number('T_b'))) return undefined;
  const t = timeAt(ask, T_b);
  return t === undefined ? undefined : { T_b, ...timed(t) };
}

/** What the hand turns for it. */
export function movementsTo(ask: Ask, { T_b, t }: Setting): Movement[] {
  const [oven, time] = [(T_b ?? ask.number('T_b')) - ask.number('T_b'), (t ?? ask.number('t')) - ask.number('t')];
  return [
    ...(oven === 0 ? [] : [{ part: 'oven', direction: oven < 0 ? 'cooler' : 'warmer', amount: Math.abs(oven) }]),
    ...(time === 0 ? [] : [{ part: 'time', direction: 'longer', amount: time }]),
  ];
}
