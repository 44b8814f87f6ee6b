import { applies, type Calculator } from '../../engine/calculator';
import { pickUp } from '../desk/handed';
import type { Bench } from './bench';

/**
 * Puts a measurement that was left for this check on its bench: into the first line for that instrument that nothing has
 * been entered in, else into the first such line. An option that hides the line is changed.
 */
export function takeHanded(id: string, calculator: Calculator, bench: Bench): void {
  const handed = pickUp(id);
  if (!handed) return;
  const { phone, taken } = handed;
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
