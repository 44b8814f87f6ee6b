import { createMemo, createSelector, untrack } from 'solid-js';
import { applies, type Calculator } from '../../engine/calculator';
import { mustMeasure } from '../../engine/entry';
import { explain, type Evaluation } from '../../engine/evaluate';
import { createTrailing } from '../../ui/trailing';
import type { OnBench } from './bench';

const MOST_CULPRITS = 3;

/** Which lines the table of inputs has under the options in force, by symbol and by how they are come by. */
function createGroups(on: OnBench) {
  // Options decide which lines there are; readings do not, so the lists stay as they are while someone types.
  const options = () => on.bench.choices();
  const choices = createMemo(() =>
    Object.keys(on.calculator.choices).filter((name) => applies(on.calculator.choices[name]?.when, options())),
  );
  const groups = createMemo(() => {
    const lists = { measured: [] as string[], usual: [] as string[], seldom: [] as string[] };
    for (const [symbol, spec] of Object.entries(on.calculator.inputs)) {
      if (spec.cell || !applies(spec.when, options())) continue;
      if (!spec.optional && mustMeasure(symbol, spec, on.calculator.choices)) lists.measured.push(symbol);
      else lists[spec.seldom ? 'seldom' : 'usual'].push(symbol);
    }
    return lists;
  });
  return { choices, groups };
}

/** A formula that left its domain is told beside the inputs it hangs on, unless that would be half the sheet. */
function domainProblemsIn(calc: Calculator, { outcomes }: Evaluation): Readonly<Record<string, string>> {
  const problems: Record<string, string> = {};
  for (const outcome of Object.values(outcomes)) {
    if (outcome.ok || outcome.failure.kind !== 'domain' || outcome.failure.symbols.length > MOST_CULPRITS) continue;
    for (const symbol of outcome.failure.symbols) problems[symbol] ??= explain(calc, outcome.failure);
  }
  return problems;
}

/**
 * Problems of formulas, by input. Looking for them works out every formula: a new one is told a frame behind the keystroke that
 * made it, one that stands is looked at with the keystroke itself, so that none stands beside an entry that mended it.
 */
function createDomainProblems(on: OnBench) {
  const evaluation = () => on.bench.evaluation();
  const trailing = createTrailing(evaluation, untrack(evaluation));
  const problems = createMemo<Readonly<Record<string, string>>>((before) => {
    const behind = trailing.value();
    return domainProblemsIn(on.calculator, Object.keys(before).length > 0 ? evaluation() : behind);
  }, {});
  return problems;
}

/** The lines of the table of options and inputs: which there are, which stand open, what is wrong with each. */
export function createLines(on: OnBench) {
  const { choices, groups } = createGroups(on);
  const picked = on.bench.line;
  // One line open at a time, at first the first that only a reading can fill.
  const isPicked = createSelector(() => picked() ?? groups().measured[0]);

  const entryProblem = (symbol: string): string | undefined => {
    const state = on.bench.stateOf(symbol);
    return state && !state.ok && !state.blank ? state.reason : undefined;
  };
  const domainProblems = createDomainProblems(on);
  const isAsked = (symbol: string): boolean => on.bench.contradiction()?.of.includes(symbol) === true;
  const isOpen = (symbol: string): boolean => isPicked(symbol) || entryProblem(symbol) !== undefined;
  return {
    choices,
    groups,
    isOpen,
    /** The sentence to show beside a line; undefined where nothing is wrong. */
    problem: (symbol: string): string | undefined => entryProblem(symbol) ?? domainProblems()[symbol],
    /** The line's entry is one of some that cannot all be right. */
    isAsked,
    /** True when the verdict waits for a line that seldom changes, or one was asked for. */
    wanted: (): boolean =>
      groups().seldom.some((symbol) => {
        const state = on.bench.stateOf(symbol);
        const waits = state?.ok === false && on.calculator.inputs[symbol]?.optional !== true;
        return waits || picked() === symbol;
      }),
    toggle: (symbol: string) => on.bench.openLine(isOpen(symbol) ? '' : symbol),
  };
}

export type Lines = ReturnType<typeof createLines>;
