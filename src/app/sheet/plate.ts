import type { Calculator } from '../../engine/calculator';
import { inSentence, nameOf, unitOf } from '../../engine/evaluate';
import { predict } from '../../engine/predict';
import { formatMeasured } from '../../quantity/format';
import { printKnown } from '../desk/print-result';
import type { OnBench } from './bench';
import type { Moment } from './follow';
import { sideWords } from './print';
import say from './words/en';

/** Id of the plate's sentence: it says why a key cannot be used. */
export const PLATE = 'plate-says';

/** More readings than a person looks through: then the results are told. */
const MOST_READINGS = 2;

/** What is to be read once the order is done, as a sentence; undefined where it changes nothing that is read. */
export function expectSentence(calculator: Calculator, { evaluation, situation }: Moment): string | undefined {
  const found = predict(calculator, situation, evaluation);
  if (!found) return undefined;
  const inputs = Object.entries(found.inputs).flatMap(([symbol, { value, half }]) => {
    const [unit, spec] = [unitOf(calculator, evaluation, symbol, situation), calculator.inputs[symbol]];
    if (!unit || !spec) return [];
    const side = sideWords(spec, value);
    const text = formatMeasured(value, half, unit, { mark: situation.mark, magnitude: side !== '' });
    return [expected(calculator, symbol, side === '' ? text : `${text}, ${side}`)];
  });
  const results = Object.entries(found.results).flatMap(([symbol, known]) => {
    const unit = unitOf(calculator, evaluation, symbol, situation);
    return unit && !Object.hasOwn(found.inputs, symbol)
      ? [expected(calculator, symbol, printKnown(known, unit, situation.mark))]
      : [];
  });
  const parts = inputs.length > 0 && inputs.length <= MOST_READINGS ? inputs : results;
  return parts.length > 0 ? say.bar.expect(parts) : undefined;
}

const expected = (calc: Calculator, symbol: string, value: string): string =>
  say.bar.expected(inSentence(nameOf(calc, symbol)), value);

/** Opens the line of an input, or finds its cell, and puts the cursor there. */
export function goTo({ calculator, bench }: OnBench, symbol: string): void {
  const cell = calculator.inputs[symbol]?.cell;
  if (!cell) bench.openLine(symbol);
  const where = cell
    ? `.reading-table [data-line="${cell.line - 1}"] [data-column="${cell.column}"] input`
    : `.field[data-input="${symbol}"] input`;
  const box = document.querySelector<HTMLInputElement>(where);
  box?.scrollIntoView({ block: 'center' });
  box?.focus({ preventScroll: true });
}

/** The input whose box the cursor stands in; undefined where it stands in none. */
export function underHand({ inputs }: Calculator): string | undefined {
  const box = document.activeElement;
  if (!(box instanceof HTMLInputElement)) return undefined;
  const field = box.closest<HTMLElement>('.field[data-input]')?.dataset.input;
  if (field !== undefined) return field;
  const column = box.closest<HTMLElement>('[data-column]')?.dataset.column;
  const line = Number(box.closest<HTMLElement>('[data-line]')?.dataset.line) + 1;
  return Object.keys(inputs).find((symbol) => {
    const cell = inputs[symbol]?.cell;
    return cell?.line === line && cell.column === column;
  });
}
