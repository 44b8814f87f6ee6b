import type { ChoiceSpec, InputSpec } from './calculator';
import { listed, loadCalculator } from './list';

/** Something a machine keeps: a value with its input, or an option with its choice. */
export type Place =
  { readonly place: string; readonly input: InputSpec } | { readonly place: string; readonly choice: ChoiceSpec };

/** Every place that any calculator draws from, once each, in alphabetical order. Loads all calculators. */
export async function machinePlaces(): Promise<readonly Place[]> {
  const places = new Map<string, Place>();
  for (const loaded of await Promise.all(listed.map((entry) => loadCalculator(entry.id)))) {
    for (const input of Object.values(loaded?.calculator.inputs ?? {})) {
      if (input.from !== undefined) places.set(input.from, { place: input.from, input });
    }
    for (const choice of Object.values(loaded?.calculator.choices ?? {})) {
      if (choice.from !== undefined) places.set(choice.from, { place: choice.from, choice });
    }
  }
  return [...places.values()].sort((a, b) => a.place.localeCompare(b.place));
}
