import { cite } from './citation';
import say from './words/en';

const { places: place } = say;

/** Magnus’s formula over water. Against the full equations it is within 0.31 % between 0 and 60 °C. */
export const magnus = cite('WMO-No. 8, Guide to Instruments (2014)', place.magnus);

/**
 * Saturation vapour pressure over water at the temperature `at`, as a formula's text.
 *
 * @param symbol the pressure's symbol
 * @param at the temperature's symbol; kelvin
 */
export function saturated<S extends string, T extends string>(
  symbol: S,
  at: T,
): `${S} = magnus_e * exp(17.62 * (${T} - zero_C) / (magnus_T + ${T} - zero_C))` {
  return `${symbol} = magnus_e * exp(17.62 * (${at} - zero_C) / (magnus_T + ${at} - zero_C))`;
}
