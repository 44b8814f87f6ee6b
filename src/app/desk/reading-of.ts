import type { Calculator } from '../../engine/calculator';
import { symbolOf, unitOf, type Evaluation, type Situation } from '../../engine/evaluate';
import { nameOf } from '../../engine/name';
import type { Amount, Arg as ToldArg, Args as ToldArgs } from '../../engine/order';
import { predict } from '../../engine/predict';
import type { Reading } from '../../machine/schema';
import type { Arg, Args } from '../../machine/schema-args';
import { printSymbol } from './print-result';

/** What a reading keeps of an evaluation: all but whose it is, and when. */
export type Kept = Omit<Reading, 'v' | 'type' | 'id' | 'machine' | 'calculator' | 'at' | 'ordinal' | 'note'>;

/** As the store and a file hold it alike: what is undefined is left out. */
function plain(arg: ToldArg): Arg | undefined {
  if (Array.isArray(arg)) return arg.map((one: ToldArg) => plain(one)).filter((one) => one !== undefined);
  return typeof arg === 'object' ? plainArgs(arg as ToldArgs) : arg;
}

function plainArgs(args: ToldArgs): Args {
  return Object.fromEntries(
    Object.entries(args).flatMap(([name, arg]) => {
      const kept = plain(arg);
      return kept === undefined ? [] : [[name, kept]];
    }),
  );
}

/** What the readings and the limited results are expected to be once the order is done. */
function expectsOf(calc: Calculator, evaluation: Evaluation, situation: Situation): Kept['order']['expects'] {
  const found = predict(calc, situation, evaluation);
  const inputs = Object.entries(found?.inputs ?? {}).map(
    ([symbol, { value, half }]) => [symbol, { value, low: value - half, high: value + half }] as const,
  );
  return Object.fromEntries(
    [...inputs, ...Object.entries(found?.results ?? {})].flatMap(([symbol, { value, low, high }]) => {
      const unit = unitOf(calc, evaluation, symbol, situation);
      if (!unit) return [];
      const name = nameOf(calc, symbol, evaluation.choices);
      return [[symbol, { name, value, low, high, kind: unit.kind, unit: unit.id }]];
    }),
  );
}

const amountOf = ({ si, width, kind, unit }: Amount): Args => ({ si, width, kind, unit });

function orderOf(calc: Calculator, evaluation: Evaluation, situation: Situation): Kept['order'] {
  const { instruction, cannot } = evaluation;
  const none = { say: '', args: {}, glance: '', sentence: cannot ?? '', steps: [], assumes: [], expects: {} };
  if (!instruction) return none;
  const { order, glance, sentence, steps } = instruction;
  return {
    say: order.say,
    args: plainArgs(order.args),
    glance,
    sentence,
    steps: order.steps.map(({ say, args }, i) => ({ say, args: plainArgs(args), text: steps[i] ?? '' })),
    assumes: (order.assumes ?? []).map(({ symbol, amount }) => ({ symbol, amount: amountOf(amount) })),
    expects: expectsOf(calc, evaluation, situation),
  };
}

function entriesOf(calc: Calculator, { inputs, choices }: Evaluation): Kept['entries'] {
  return Object.fromEntries(
    Object.entries(inputs).flatMap(([symbol, state]) => {
      if (!state.ok) return [];
      const { value, half, unit, origin, tool } = state;
      const name = nameOf(calc, symbol, choices);
      return [[symbol, { name, value, half, kind: unit.kind, unit: unit.id, origin, tool }]];
    }),
  );
}

/** Every result that the sheet showed, the model's first. */
function resultsOf(calc: Calculator, evaluation: Evaluation, situation: Situation): Kept['results'] {
  const symbols = [...Object.keys(calc.model?.outputs ?? {}), ...evaluation.formulas.map(symbolOf)];
  return Object.fromEntries(
    symbols.flatMap((symbol) => {
      const outcome = evaluation.outcomes[symbol];
      const unit = unitOf(calc, evaluation, symbol, situation);
      if (!outcome?.ok || !unit) return [];
      const { value, low, high } = outcome;
      const name = nameOf(calc, symbol, evaluation.choices);
      const text = printSymbol(calc, evaluation, situation, symbol, true) ?? '';
      return [[symbol, { name, value, low, high, kind: unit.kind, unit: unit.id, text }]];
    }),
  );
}

function optionsOf(calc: Calculator, choices: Evaluation['choices']): Kept['options'] {
  return Object.fromEntries(
    Object.entries(choices).map(([choice, option]) => {
      const spec = calc.choices[choice];
      return [choice, { name: spec?.label ?? choice, text: spec?.options[option]?.label ?? option }];
    }),
  );
}

function limitsOf({ verdict }: Evaluation): Kept['limits'] {
  return verdict.checks.map(({ limit: { of, label, max, min, symmetric }, state }) => ({
    of,
    name: label,
    ...(max === undefined ? {} : { max }),
    ...(min === undefined ? {} : { min }),
    symmetric: symmetric === true,
    verdict: state,
  }));
}

/** A reading as it is kept: names, units, limits and words are those of now, under the options in force. */
export function readingOf(calc: Calculator, evaluation: Evaluation, situation: Situation): Kept {
  return {
    entries: entriesOf(calc, evaluation),
    choices: evaluation.choices,
    options: optionsOf(calc, evaluation.choices),
    results: resultsOf(calc, evaluation, situation),
    limits: limitsOf(evaluation),
    verdict: evaluation.verdict.state,
    order: orderOf(calc, evaluation, situation),
    whole: true,
  };
}
