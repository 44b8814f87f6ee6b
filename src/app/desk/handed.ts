import type { PhoneInstrument } from '../../engine/calculator';

/** A measurement the phone took, in SI, with the half-width of its 95 % interval. */
export interface Taken {
  readonly value: number;
  readonly halfWidth: number;
}

/** A measurement on its way to a check. */
export interface Handed {
  readonly phone: PhoneInstrument;
  readonly taken: Taken;
}

let waiting: { readonly id: string; readonly handed: Handed } | undefined;

/** Leaves a measurement for the check that is opened next. */
export function handOn(id: string, phone: PhoneInstrument, taken: Taken): void {
  waiting = { id, handed: { phone, taken } };
}

/** The measurement that was left for this check, once; undefined where there is none. */
export function pickUp(id: string): Handed | undefined {
  if (waiting?.id !== id) return undefined;
  const { handed } = waiting;
  waiting = undefined;
  return handed;
}
