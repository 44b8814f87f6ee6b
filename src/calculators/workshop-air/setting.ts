import { exact, type Amount } from '../../engine/order';
import { firstThat, settable } from '../../engine/settable';
import { temperature } from '../../quantity/kinds';
import type { Ask } from './asking';

/** 0 °C, K. */
const ZERO = 273.15;
/** A thermometer is waited for by whole degrees. */
export const DEGREE = 1;
/** Boxes are set in steps of this, K. */
export const DIAL = 5;

export const ofCelsius = (si: number): Amount => exact(si, temperature.C);

const onScale = (kelvin: number, step: number, to: 'up' | 'down'): number => {
  const celsius = kelvin - ZERO;
  // Away from zero is downwards on a frosty scale.
  const turned = to === 'up' ? 'down' : 'up';
  return settable(celsius, step, celsius < 0 ? turned : to) + ZERO;
};

/** As warm as what is left in the room's air gets, K. */
export const warmest = (ask: Ask): number => onScale(ask.number('T'), DEGREE, 'down');

/** The least that a thermometer on the thing has to show so that it surely stays dry; undefined where the room is not warm enough for it. */
export function dryAt(ask: Ask): number | undefined {
  const [from, to] = [onScale(ask.number('T_o'), DEGREE, 'up'), warmest(ask)];
  if (from > to) return undefined;
  return firstThat((T_s) => ask.after({ T_s }) === 'within', from, to, DEGREE);
}

/** The hottest that a box may be set to, for what lies in it, K; undefined where the room itself is hotter. */
export function hottest(ask: Ask): number | undefined {
  const limit = (ask.known('T_max')?.low ?? ask.number('T_max')) - ask.quantity('T_b').width;
  const most = onScale(limit, DIAL, 'down');
  return most < ask.number('T') ? undefined : most;
}

/** What to set a box to so that its air is dry enough and nothing in it softens, K. */
export function boxAt(ask: Ask): number | undefined {
  const most = hottest(ask);
  if (most === undefined) return undefined;
  const from = Math.max(onScale(ask.number('T_o'), DIAL, 'up'), onScale(ask.number('T'), DIAL, 'up'));
  const passes = (T_b: number): boolean => ask.after({ T_b }) === 'within';
  return from > most ? undefined : firstThat(passes, Math.min(from, most), most, DIAL);
}
