import { applies, type Calculator, type When } from '../../engine/calculator';
import { effectiveChoices, symbolOf } from '../../engine/evaluate';
import { loadCalculator } from '../../engine/list';
import type { Changed, Due, Uses } from '../../machine/history';
import type { Reading } from '../../machine/schema';
import { formatMeasured, formatValue } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { unitById, type Measure, type Unit } from '../../quantity/unit';
import say from './words/en';

/** What a kept reading needs of its calculator to be read again; without one, as little as the reading itself says. */
export interface CheckFacts {
  readonly calculator: Calculator | undefined;
  readonly uses: Uses;
}

export async function loadFacts(id: string): Promise<CheckFacts> {
  const calculator = (await loadCalculator(id))?.calculator;
  const places = (specs: Readonly<Record<string, { readonly from?: string }>>) =>
    Object.fromEntries(Object.entries(specs).flatMap(([name, { from }]) => (from === undefined ? [] : [[name, from]])));
  return {
    calculator,
    uses: { values: places(calculator?.inputs ?? {}), choices: places(calculator?.choices ?? {}) },
  };
}

/** True where something marked `when` applied in a reading; a choice that came later stood at its typical option. */
const applied = (calculator: Calculator, reading: Reading, when: When | undefined): boolean =>
  applies(when, effectiveChoices(calculator, reading.choices));

/** The limits in force in a reading. */
export function limitsIn(calculator: Calculator | undefined, reading: Reading): Calculator['limits'] {
  return calculator?.limits.filter((limit) => applied(calculator, reading, limit.when)) ?? [];
}

function specOf(calculator: Calculator | undefined, reading: Reading, symbol: string) {
  const formula = calculator?.formulas.find((f) => symbolOf(f) === symbol && applied(calculator, reading, f.when));
  const input = calculator?.inputs[symbol];
  return formula
    ? { name: formula.meaning, measure: formula.measure }
    : input && { name: input.label, measure: input.measure };
}

/** A person's name for a symbol of a reading. */
export const nameIn = (calculator: Calculator | undefined, reading: Reading, symbol: string): string =>
  specOf(calculator, reading, symbol)?.name ?? symbol;

/** A unit for numbers of a check that is no longer there: SI, unnamed. */
const PLAIN: Unit = { id: '', kind: '', label: '', factor: 1, offset: 0, spellings: [] };

const unitFor = (measure: Measure | undefined, id: string): Unit =>
  measure ? (unitById(measure.kind, id) ?? measure.unit) : PLAIN;

/** The unit a symbol of a reading was shown in. */
export function unitIn(calculator: Calculator | undefined, reading: Reading, symbol: string): Unit {
  const id = reading.results[symbol]?.unit ?? reading.entries[symbol]?.unit ?? '';
  return unitFor(specOf(calculator, reading, symbol)?.measure, id);
}

/** A value that no line may break. */
export const whole = (text: string): string => text.replaceAll(' ', '\u00a0');

/** A difference of two values: 10 °C apart is no temperature. */
export const printGap = (si: number, half: number, unit: Unit, mark: DecimalMark): string =>
  formatMeasured(si, half, { ...unit, offset: 0 }, { mark, magnitude: true });

/** "Screw lead: 8 mm then, 4 mm now". */
export function printChanged(changed: Changed, calculator: Calculator | undefined, mark: DecimalMark): string {
  if (changed.kind === 'choice') {
    const spec = calculator?.choices[changed.name];
    const word = (option: string) => spec?.options[option]?.label ?? option;
    return say.changed.option(spec?.label ?? changed.name, word(changed.was), word(changed.now));
  }
  const input = calculator?.inputs[changed.symbol];
  const unit = unitFor(input?.measure, changed.unit);
  const print = (si: number) => formatValue(si, 0, unit, { mark });
  return say.changed.value(input?.label ?? changed.symbol, print(changed.was), print(changed.now));
}

/** Why a check is due, as a sentence. */
export function printDue(due: Due, calculator: Calculator | undefined, mark: DecimalMark): string {
  if (due.kind === 'never') return say.due.never(due.days);
  if (due.kind === 'old') return say.due.old(due.age, due.days);
  return say.due.changed(due.changes.map((one) => printChanged(one, calculator, mark)));
}
