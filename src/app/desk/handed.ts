import { applies, type Calculator, type PhoneInstrument } from '../../engine/calculator';
import type { Bench } from '../sheet/bench';

/** A measurement the phone took, in SI, with the half-width of its 95 % interval. */
export interface Taken {
  readonly value: number;
  readonly halfWidth: number;
}

let waiting: { readonly id: string; readonly phone: PhoneInstrument; readonly taken: Taken } | undefined;

/** Leaves a measurement for the check that is opened next. */
export function handOn(id: string, phone: PhoneInstrument, taken: Taken): void {
  waiting = { id, phone, taken };
}

/**
 * Puts a measurement that was left for this check on its bench: into the first line for that instrument that nothing has
 * been entered in, else into the first such line. An option that hides the line is changed.
 */
export function takeHanded(id: string, calculator: Calculator, bench: Bench): void {
  if (waiting?.id !== id) return;
  const { phone, taken } = waiting;
  waiting = undefined;
  const lines = Object.entries(calculator.inputs).filter(([, spec]) => spec.phone === phone);
  const shown = lines.filter(([, spec]) => applies(spec.when, bench.evaluation().choices));
  const pool = shown.length > 0 ? shown : lines;
  const line = pool.find(([symbol]) => (bench.entryOf(symbol).text || '') === '') ?? pool[0];
  if (!line) return;
  const [symbol, spec] = line;
  if (shown.length === 0) {
    for (const [name, wanted] of Object.entries(spec.when ?? {})) {
      const option = typeof wanted === 'string' ? wanted : wanted[0];
      if (option !== undefined) bench.pick(name, option);
    }
  }
  bench.measured(symbol, taken);
}
