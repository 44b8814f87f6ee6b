import {
  acceleration,
  angle,
  bendingStiffness,
  count,
  humidity,
  length,
  linearDensity,
  mass,
  ratio,
  resistance,
  speed,
  temperature,
  torque,
  voltage,
  volume,
} from '../quantity/kinds';
import type { ChoiceData, InputData, OptionData } from './spec';
import type { Placed } from './words';
import type words from './words/en';

/** The usual bore of a nozzle, mm. */
const BORE = 0.4;

/*
 * Values of a machine that several checks ask for, each defined once: kind, typical value and its spread, in the unit named.
 * The first word names the part they belong to (parts.ts); their labels stand in the words of this room. A value that one
 * check alone asks for stands in that check.
 */
export const places = {
  'bed.width': { measure: length.mm, feature: 'span', typical: 200, spread: 1 },
  'bed.depth': { measure: length.mm, feature: 'span', typical: 200, spread: 1 },
  'print.first-layer': { measure: length.mm, feature: 'set', typical: 0.2 },
  'belt.span': { measure: length.mm, feature: 'span' },
  'belt.second-span': { measure: length.mm, feature: 'span' },
  'belt.width': { measure: length.mm, feature: 'outside', typical: 6 },
  'belt.mass-per-length': { measure: linearDensity.g_m },
  'belt.bending-stiffness': { measure: bendingStiffness.N_mm2 },
  'belt.pitch': { measure: length.mm, feature: 'marked' },
  'belt.tensioner-wrap': { measure: angle.deg, feature: 'angle', typical: 180, spread: 10 },
  'carriage.mass': { measure: mass.kg, feature: 'mass', typical: 0.5, spread: 0.1 },
  'carriage.acceleration': { measure: acceleration.mm_s2, typical: 1000 },
  'belt.length': { measure: length.mm, feature: 'span', typical: 1000, spread: 200 },
  'z.screw-distance': { measure: length.mm, feature: 'span', typical: 400, spread: 1 },
  'z.lead': { measure: length.mm, feature: 'marked', typical: 8 },
  // A motor of its own on each axis: one step angle never serves another.
  'z.step-angle': { measure: angle.deg, feature: 'marked', typical: 1.8 },
  'belt.step-angle': { measure: angle.deg, feature: 'marked', typical: 1.8 },
  'feed.step-angle': { measure: angle.deg, feature: 'marked', typical: 1.8 },
  'room.air-temperature': { measure: temperature.C, feature: 'air' },
  'room.relative-humidity': { measure: humidity.percent, feature: 'humidity' },
  'filament.diameter': { measure: length.mm, feature: 'outside', typical: 1.75, spread: 0.03 },
  'heater.resistance': { measure: resistance.ohm, feature: 'resistance' },
  'heater.voltage': { measure: voltage.V, feature: 'voltage', typical: 24, spread: 0.5 },
  'heater.temperature': { measure: temperature.C, feature: 'set', typical: 215 },
  'z.screw-length': { measure: length.mm, feature: 'span', typical: 400, spread: 1 },
  'z.core-diameter': { measure: length.mm, feature: 'outside', typical: 5.5, spread: 0.15 },
  // A little wider than the bore, so that it is pressed onto the layer below (common practice).
  'print.line-width': {
    measure: length.mm,
    feature: 'set',
    typical: 1.1 * BORE,
    spread: 0.1 * BORE,
    share: { of: 'nozzle.diameter', times: 1.1, within: 0.1 },
  },
  'print.layer': { measure: length.mm, feature: 'set', typical: 0.2 },
  'print.speed': { measure: speed.mm_s, typical: 100, differs: 0.6 },
  'feed.melt-volume': { measure: volume.mm3, typical: 40, spread: 15 },
  'z.belt-pitch': { measure: length.mm, feature: 'marked', typical: 2 },
  'z.pinion-teeth': { measure: count.one, typical: 20 },
  'belt.pulley-teeth': { measure: count.one, typical: 20 },
  'wheel.radius': { measure: length.mm, feature: 'outside', spread: 0.3 },
  'feed.gear-diameter': { measure: length.mm, feature: 'outside', spread: 0.2 },
  'z.gear-ratio': { measure: ratio.one, typical: 1 },
  'belt.gear-ratio': { measure: ratio.one, typical: 1 },
  'z.holding-torque': { measure: torque.N_mm, typical: 400 },
  'z.microsteps': { measure: count.one, typical: 16 },
} as const;

export type SharedPlace = keyof typeof places;

interface Rest<K extends string> extends Omit<InputData<K>, 'measure' | 'from'> {
  /** Without the place's typical value: only a reading fills it. */
  readonly open?: boolean;
}

/** An input that a machine keeps at a shared place: `placed('z.lead', { range: [0.5, 50] })`. */
export function placed<const K extends string = never>(place: SharedPlace, rest: Rest<K>): InputData<K> & Placed {
  const { measure, ...typical } = places[place];
  const { feature }: Pick<InputData, 'measure' | 'feature'> = places[place];
  const { open = false, ...own } = rest;
  const known = open ? {} : typical;
  return { placed: true, measure, ...known, ...(feature ? { feature } : {}), ...own, from: place };
}

/** Choices of a machine that several checks ask for: label and options stand in the words of this room. */
type SharedChoice = keyof typeof words.choices;

/** A choice that a machine keeps at a shared place; what each option brings is the check's own. */
export function placedChoice<const O extends string, const D extends OptionData>(
  place: SharedChoice,
  options: Readonly<Record<O, D>>,
  typical: NoInfer<O>,
  rest: Omit<ChoiceData, 'options' | 'typical' | 'from'> = {},
): ChoiceData<O, D> & Placed {
  return { placed: true, options, typical, ...rest, from: place };
}
