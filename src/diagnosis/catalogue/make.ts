import type { Answer, Cause, CauseId, Check, Likelihoods, Mend, Raising, Suspect, Way } from '../types';

/*
 * All shares, times and prices of the catalogue are judgements: common practice, no source. What matters is their order of
 * size; test/bench/diagnosis.mjs shows what is left of the saving when they are wrong.
 */

/** Share of looks that settle nothing, whatever the fault: "cannot tell" moves no belief. */
const CANNOT_TELL = 0.07;

/** Share of verdicts that are too close to call: a little more where the fault is there, so belief moves a little. */
const TOO_CLOSE = { told: 0.1, other: 0.07 } as const;

export const shares = (priors: Readonly<Record<CauseId, number>>): readonly Suspect[] =>
  Object.entries(priors).map(([cause, prior]) => ({ cause, prior }));

export const up = (fact: string, factor: number, otherwise = 1): Raising => ({ fact, factor, otherwise });

export function way(headline: string, steps: readonly string[], minutes: number, cost: number, risk: string): Way {
  return { headline, steps, minutes, cost, risk };
}

export function mend(
  headline: string,
  steps: readonly string[],
  { minutes, cost = 0, works = 0.9, ...rest }: Pick<Mend, 'minutes' | 'risk' | 'calculator'> & Partial<Mend>,
): Mend {
  return { headline, steps, minutes, cost, works, ...rest };
}

export function cause(
  id: string,
  part: string,
  title: string,
  rest: Omit<Cause, 'id' | 'part' | 'title' | 'raisedBy'> & Partial<Pick<Cause, 'raisedBy'>>,
): Cause {
  return { id, part, title, raisedBy: [], ...rest };
}

interface Asked {
  readonly how: readonly string[];
  readonly minutes: number;
  readonly tools?: readonly string[];
  readonly cautions?: readonly string[];
  readonly powered?: boolean;
}

interface Told extends Asked {
  /** By cause, the chance of the telling answer. */
  readonly tells: Readonly<Record<CauseId, number>>;
  /** Chance of the telling answer for every other cause. */
  readonly falsely: number;
}

type Basics = Pick<Check, 'kind' | 'title' | 'how' | 'minutes' | 'tools' | 'cautions' | 'powered'>;

function basics(kind: Check['kind'], title: string, asked: Asked): Basics {
  const { how, minutes, tools = [], cautions = [], powered = false } = asked;
  return { kind, title, how, minutes, tools, cautions, powered };
}

function rows<T>(tells: Readonly<Record<CauseId, T>>, row: (told: T) => Likelihoods): Check['given'] {
  return Object.fromEntries(Object.entries(tells).map(([id, told]) => [id, row(told)]));
}

/** A look, a listen, a feel, a thing to do: yes, no, or cannot tell. */
export function seen(
  kind: Exclude<Check['kind'], 'calculator'>,
  id: string,
  title: string,
  labels: readonly [yes: string, no: string],
  told: Told,
): Check {
  const row = (chance: number): Likelihoods => ({
    yes: (1 - CANNOT_TELL) * chance,
    no: (1 - CANNOT_TELL) * (1 - chance),
    unsure: CANNOT_TELL,
  });
  const answers: readonly Answer[] = [
    { id: 'yes', label: labels[0] },
    { id: 'no', label: labels[1] },
    { id: 'unsure', label: 'Cannot tell' },
  ];
  return { id, ...basics(kind, title, told), answers, given: rows(told.tells, row), otherwise: row(told.falsely) };
}

/** A calculator whose verdict beyond its limit tells. */
export function measured(id: string, calculator: string, title: string, told: Told): Check {
  const row = (chance: number, close: number): Likelihoods => ({
    beyond: (1 - close) * chance,
    within: (1 - close) * (1 - chance),
    close,
  });
  const answers: readonly Answer[] = [
    { id: 'within', label: 'Within its limit', verdict: 'within' },
    { id: 'beyond', label: 'Beyond its limit', verdict: 'beyond' },
    { id: 'close', label: 'Too close to call', verdict: 'too close' },
  ];
  return {
    id,
    calculator,
    ...basics('calculator', title, told),
    answers,
    given: rows(told.tells, (chance) => row(chance, TOO_CLOSE.told)),
    otherwise: row(told.falsely, TOO_CLOSE.other),
  };
}

/** Several answers, each pointing elsewhere. Weights need not add up: they are brought to one. */
export function sorted(
  kind: Check['kind'],
  id: string,
  title: string,
  answers: readonly Answer[],
  told: Asked & { readonly given: Readonly<Record<CauseId, Likelihoods>>; readonly otherwise: Likelihoods },
  calculator?: string,
): Check {
  const whole = (weights: Likelihoods): Likelihoods => {
    const total = Object.values(weights).reduce((sum, weight) => sum + weight, 0);
    return Object.fromEntries(Object.entries(weights).map(([answer, weight]) => [answer, weight / total]));
  };
  const of = calculator === undefined ? {} : { calculator };
  return {
    id,
    ...of,
    ...basics(kind, title, told),
    answers,
    given: rows(told.given, whole),
    otherwise: whole(told.otherwise),
  };
}
