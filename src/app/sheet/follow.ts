import { createMemo } from 'solid-js';
import type { Calculator } from '../../engine/calculator';
import type { InputState, KeptValue } from '../../engine/entry';
import { evaluate, type Evaluation, type Situation } from '../../engine/evaluate';
import type { DecimalMark } from '../../quantity/parse';
import type { Unit } from '../../quantity/unit';
import type { Reading } from '../../machine/schema';
import type { Entered } from '../../machine/draft';
import { createApart } from '../../ui/apart';

/** What a sheet takes from around it. */
export interface Surroundings {
  /** Values the machine keeps, by place. */
  readonly kept: () => Readonly<Record<string, KeptValue | undefined>>;
  /** Options the machine keeps, by place. */
  readonly keptChoices: () => Readonly<Record<string, string>>;
  /** The newest reading of this check on the machine. */
  readonly last: () => Reading | undefined;
  readonly mark: () => DecimalMark;
  /** Units to show, by kind, where they are not the input's own. */
  readonly units: () => Readonly<Record<string, Unit>>;
}

/** What the machine keeps, but for what this check reads: that is to be read anew. */
function keptButReadings(calc: Calculator, kept: Situation['kept']): Situation['kept'] {
  const read = new Set(calc.measured.map((symbol) => calc.inputs[symbol]?.from));
  return Object.fromEntries(Object.entries(kept).filter(([place]) => !read.has(place)));
}

/** Options that the machine keeps, by name. */
function choicesOfMachine(calc: Calculator, places: Readonly<Record<string, string>>): Situation['choices'] {
  return Object.fromEntries(
    Object.entries(calc.choices).flatMap(([name, spec]) => {
      const kept = spec.from === undefined ? undefined : places[spec.from];
      return kept === undefined ? [] : [[name, kept]];
    }),
  );
}

/** What is entered and what follows from it: the two that belong together. */
export interface Moment {
  readonly evaluation: Evaluation;
  readonly situation: Situation;
}

/**
 * Everything that follows from what is entered.
 * @param entered as it stands now; asked for anew with each change
 */
export function createFollowing(
  calc: Calculator,
  around: Surroundings,
  entered: () => Entered,
  isRepeat: () => boolean,
) {
  const kept = createMemo(() => (isRepeat() ? keptButReadings(calc, around.kept()) : around.kept()));
  const fromMachine = createMemo(() => choicesOfMachine(calc, around.keptChoices()));
  const mark = createMemo(() => around.mark());
  const situation = createMemo((): Situation => {
    const { entries, choices } = entered();
    return {
      entries,
      choices: { ...fromMachine(), ...choices },
      kept: kept(),
      mark: mark(),
      units: around.units(),
    };
  });
  const evaluation = createMemo(() => evaluate(calc, situation()));
  const moment = createMemo((): Moment => ({ evaluation: evaluation(), situation: situation() }));
  const states = Object.fromEntries(
    Object.keys(calc.inputs).map((symbol) => [symbol, createApart(() => evaluation().inputs[symbol])]),
  );
  return {
    situation,
    evaluation,
    moment,
    kept,
    mark,
    /** An input that did not change keeps its state, and what hangs on it alone stays as it is. */
    stateOf: (symbol: string): InputState | undefined => states[symbol]?.(),
    choices: createApart(() => evaluation().choices),
    contradiction: createApart(() => evaluation().contradiction),
  };
}
