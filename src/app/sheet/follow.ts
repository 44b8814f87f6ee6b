import { createMemo } from 'solid-js';
import type { Calculator } from '../../engine/calculator';
import type { KeptValue } from '../../engine/entry';
import { evaluate, type Evaluation, type Situation } from '../../engine/evaluate';
import type { DecimalMark } from '../../quantity/parse';
import type { Unit } from '../../quantity/unit';
import type { Reading } from '../../machine/schema';
import type { Entered } from '../../machine/draft';

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

function situationOf(calc: Calculator, around: Surroundings, entered: Entered, isRepeat: boolean): Situation {
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
    kept: isRepeat ? keptButReadings(calc, around.kept()) : around.kept(),
    mark: around.mark(),
    units: around.units(),
  };
}

/** What is entered and what follows from it: the two that belong together. */
export interface Moment {
  readonly evaluation: Evaluation;
  readonly situation: Situation;
}

/** Everything that follows from what is entered. */
export function createFollowing(calc: Calculator, around: Surroundings, entered: Entered, isRepeat: () => boolean) {
  const situation = createMemo(() => situationOf(calc, around, entered, isRepeat()));
  const evaluation = createMemo(() => evaluate(calc, situation()));
  const moment = createMemo((): Moment => ({ evaluation: evaluation(), situation: situation() }));
  return { situation, evaluation, moment };
}
