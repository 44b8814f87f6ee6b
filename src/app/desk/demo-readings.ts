import type { Calculator } from '../../engine/calculator';
import { evaluate, type Situation } from '../../engine/evaluate';
import { demoCheck, demoMachine, demoTakings } from '../../machine/demo';
import type { Reading } from '../../machine/schema';
import { VERSION } from '../../machine/version';
import { readingOf } from './reading-of';

/**
 * The readings of the demo machine, as its check makes them of what was typed; oldest first.
 * @param calculator that of `demoCheck`
 */
export function demoReadings(calculator: Calculator): readonly Reading[] {
  const choices = Object.fromEntries(
    Object.entries(calculator.choices).flatMap(([name, { from }]) => {
      const option = from === undefined ? undefined : demoMachine.choices[from];
      return option === undefined ? [] : [[name, option]];
    }),
  );
  return demoTakings.map(({ entries, ...taking }) => {
    const situation: Situation = { entries, choices, kept: demoMachine.values, mark: 'point' };
    const kept = readingOf(calculator, evaluate(calculator, situation), situation);
    return { v: VERSION, type: 'reading', machine: demoMachine.id, calculator: demoCheck, ...taking, ...kept };
  });
}
