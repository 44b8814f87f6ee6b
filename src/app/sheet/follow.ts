import { createMemo } from 'solid-js';
import type { Calculator } from '../../engine/calculator';
import type { KeptValue } from '../../engine/entry';
import { evaluate, type Evaluation, type Situation } from '../../engine/evaluate';
import type { DecimalMark } from '../../quantity/parse';
import type { Unit } from '../../quantity/unit';
import type { Entered } from './entries';

/** What a sheet takes from around it. */
export interface Surroundings {
  /** Values the machine keeps, by place. */
  readonly kept: () => Readonly<Record<string, KeptValue | undefined>>;
  /** Options the machine keeps, by place. */
  readonly keptChoices: () => Readonly<Record<string, string>>;
  readonly mark: () => DecimalMark;
  /** Units to show, by kind, where they are not the input's own. */
  readonly units: () => Readonly<Record<string, Unit>>;
}

/** An evaluation to show, and whether it is the last good one from before the present mistake. */
export interface Shown {
  readonly evaluation: Evaluation;
  readonly stale: boolean;
}

/** True when something entered is refused, or a formula left its domain: a mistake to mend, not a sheet half filled. */
function hasMistake(evaluation: Evaluation): boolean {
  return (
    Object.values(evaluation.inputs).some((state) => !state.ok && !state.blank) ||
    Object.values(evaluation.outcomes).some((outcome) => !outcome.ok && outcome.failure.kind === 'domain')
  );
}

const sameOptions = (a: Evaluation, b: Evaluation): boolean =>
  Object.keys(a.choices).every((name) => a.choices[name] === b.choices[name]);

function situationOf(calc: Calculator, around: Surroundings, entered: Entered): Situation {
  const places = around.keptChoices();
  const fromMachine = Object.fromEntries(
    Object.entries(calc.choices).flatMap(([name, spec]) => {
      const kept = spec.from === undefined ? undefined : places[spec.from];
      return kept === undefined ? [] : [[name, kept]];
    }),
  );
  return {
    entries: Object.fromEntries(Object.entries(entered.entries).map(([symbol, entry]) => [symbol, { ...entry }])),
    choices: { ...fromMachine, ...entered.choices },
    kept: around.kept(),
    mark: around.mark(),
    units: around.units(),
  };
}

/** Everything that follows from what is entered, and what of it is to be shown. */
export function createFollowing(calc: Calculator, around: Surroundings, entered: Entered) {
  const situation = createMemo(() => situationOf(calc, around, entered));
  const evaluation = createMemo(() => evaluate(calc, situation()));
  const shown = createMemo<Shown>((before) => {
    const now = evaluation();
    if (!hasMistake(now)) return { evaluation: now, stale: false };
    // Under other options the old verdict answers another question.
    const had = before && !hasMistake(before.evaluation) && before.evaluation.verdict.state !== 'none';
    const last = had && sameOptions(before.evaluation, now) ? before : undefined;
    return { evaluation: last?.evaluation ?? now, stale: last !== undefined };
  });
  return { situation, evaluation, shown };
}
