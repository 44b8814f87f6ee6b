import type { Calculator } from '../../engine/calculator';
import { symbolOf } from '../../engine/evaluate';
import { loadCalculator } from '../../engine/list';
import type { Changed, Due, Uses } from '../../machine/history';
import type { Reading } from '../../machine/schema';
import { formatValue } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { fetchPart } from './parts/fetch-part';
import { nameIn, shownIn } from './reading-print';
import say from './words/en';

/** What a check draws from the machine, and how its sheet is ordered; the calculator is undefined where it is no longer there. */
export interface CheckFacts {
  readonly calculator: Calculator | undefined;
  readonly uses: Uses;
}

export async function loadFacts(id: string): Promise<CheckFacts> {
  const calculator = (await fetchPart(() => loadCalculator(id)))?.calculator;
  const places = (specs: Readonly<Record<string, { readonly from?: string }>>) =>
    Object.fromEntries(Object.entries(specs).flatMap(([name, { from }]) => (from === undefined ? [] : [[name, from]])));
  return {
    calculator,
    uses: { values: places(calculator?.inputs ?? {}), choices: places(calculator?.choices ?? {}) },
  };
}

/** Symbols in the order of the check's sheet, since a file keeps them in that of their letters; others after them. */
export function inSheetOrder(calculator: Calculator | undefined, symbols: readonly string[]): readonly string[] {
  const order = [
    ...Object.keys(calculator?.inputs ?? {}),
    ...Object.keys(calculator?.model?.outputs ?? {}),
    ...(calculator?.formulas ?? []).map(symbolOf),
  ];
  const known = order.filter((symbol) => symbols.includes(symbol));
  return [...new Set([...known, ...symbols])];
}

/**
 * "Screw lead: 8 mm then, 4 mm now".
 * @param then the reading before the change
 * @param optionNow an option that stands now, in words
 */
export function printChanged(
  changed: Changed,
  then: Reading,
  optionNow: (choice: string, option: string) => string | undefined,
  mark: DecimalMark,
): string {
  if (changed.kind === 'choice') {
    const { name, was, now } = changed;
    const kept = then.options[name];
    return say.changed.option(kept?.name ?? name, kept?.text ?? was, optionNow(name, now) ?? now);
  }
  const kind = then.entries[changed.symbol]?.kind ?? '';
  const unit = shownIn({ kind, unit: changed.unit });
  const print = (si: number) => formatValue(si, 0, unit, { mark });
  return say.changed.value(nameIn(then, changed.symbol), print(changed.was), print(changed.now));
}

/**
 * Why a check is due, as a sentence.
 * @param latest its last reading, where there is one
 */
export function printDue(
  due: Due,
  latest: Reading | undefined,
  calculator: Calculator | undefined,
  mark: DecimalMark,
): string {
  if (due.kind === 'never') return say.due.never(due.days);
  if (due.kind === 'ahead') return say.due.ahead(due.days);
  if (due.kind === 'old') return say.due.old(due.age, due.days);
  // What stands on the machine now is no reading's: the check of today names it.
  const optionNow = (choice: string, option: string) => calculator?.choices[choice]?.options[option]?.label;
  return say.due.changed(latest ? due.changes.map((one) => printChanged(one, latest, optionNow, mark)) : []);
}
