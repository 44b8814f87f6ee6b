import type { Answer, Cause, CauseId, Inspection, Likelihoods, Mend, Raising, Suspect, Remedy } from '../types';

/*
 * All shares, times and prices of the catalogue are judgements: common practice, no source. What matters is their order of
 * size; test/bench/diagnosis.mjs shows what is left of the saving when they are wrong.
 *
 * The ids come out as literal types, so that wording.ts can ask for words to each of them.
 */

/** Share of looks that settle nothing, whatever the fault: "cannot tell" moves no belief. */
const CANNOT_TELL = 0.07;

/** Share of verdicts that are too close to call: a little more where the fault is there, so belief moves a little. */
const TOO_CLOSE = { told: 0.1, other: 0.07 } as const;

export type Tool =
  | 'caliper'
  | 'feeler-gauge'
  | 'luggage-scale'
  | 'multimeter'
  | 'probe-thermometer'
  | 'room-hygrometer'
  | 'room-thermometer'
  | 'rule'
  | 'steel-rule'
  | 'stopwatch'
  | 'thread-gauge';

export const shares = (priors: Readonly<Record<CauseId, number>>): readonly Suspect[] =>
  Object.entries(priors).map(([cause, prior]) => ({ cause, prior }));

export const up = (fact: string, factor: number, otherwise = 1): Raising => ({ fact, factor, otherwise });

/** Whether its steps need power is said of each; its trial does unless it is said not to: a trial print heats and moves. */
export function mend({
  cost = 0,
  works = 0.9,
  trialPowered = true,
  ...rest
}: Pick<Mend, 'minutes' | 'powered'> & Partial<Mend>): Mend {
  return { cost, works, trialPowered, ...rest };
}

interface Faulty<Replace extends Remedy | undefined> extends Partial<Pick<Cause, 'danger' | 'qualified' | 'raisedBy'>> {
  readonly mend: Mend;
  readonly replace?: Replace;
}

type Named<Id extends string, Replace extends Remedy | undefined> = Cause & {
  readonly id: Id;
} & (Replace extends Remedy ? { readonly replace: Replace } : unknown);

export function cause<const Id extends string, Replace extends Remedy | undefined = undefined>(
  id: Id,
  rest: Faulty<Replace>,
): Named<Id, Replace>;
export function cause(id: string, rest: Faulty<Remedy>): Cause {
  return { id, raisedBy: [], ...rest };
}

/** An inspection with literal ids of its own and of its answers. */
interface Asking<Id extends string, A extends string> extends Omit<Inspection, 'id' | 'answers' | 'tools'> {
  readonly id: Id;
  readonly answers: readonly (Answer & { readonly id: A })[];
  readonly tools: readonly Tool[];
}

interface Asked {
  readonly minutes: number;
  readonly tools?: readonly Tool[];
  readonly powered?: boolean;
  readonly qualified?: boolean;
}

interface Told extends Asked {
  /** By cause, the chance of the telling answer. */
  readonly tells: Readonly<Record<CauseId, number>>;
  /** Chance of the telling answer for every other cause. */
  readonly falsely: number;
}

const basics = ({ minutes, tools = [], powered = false, qualified = false }: Asked): Required<Asked> => ({
  minutes,
  tools,
  powered,
  qualified,
});

function rows<T>(tells: Readonly<Record<CauseId, T>>, row: (told: T) => Likelihoods): Inspection['given'] {
  return Object.fromEntries(Object.entries(tells).map(([id, told]) => [id, row(told)]));
}

/** A look, a listen, a feel, a thing to do: yes, no, or cannot tell. */
export function seen<const Id extends string>(
  kind: Exclude<Inspection['kind'], 'calculator'>,
  id: Id,
  told: Told,
): Asking<Id, 'yes' | 'no' | 'unsure'> {
  const row = (chance: number): Likelihoods => ({
    yes: (1 - CANNOT_TELL) * chance,
    no: (1 - CANNOT_TELL) * (1 - chance),
    unsure: CANNOT_TELL,
  });
  return {
    id,
    kind,
    ...basics(told),
    answers: [{ id: 'yes' }, { id: 'no' }, { id: 'unsure' }],
    given: rows(told.tells, row),
    otherwise: row(told.falsely),
  };
}

/** A calculator whose verdict beyond its limit tells. */
export function measured<const Id extends string>(
  id: Id,
  calculator: string,
  told: Told,
): Asking<Id, 'within' | 'beyond' | 'close'> {
  const row = (chance: number, close: number): Likelihoods => ({
    beyond: (1 - close) * chance,
    within: (1 - close) * (1 - chance),
    close,
  });
  return {
    id,
    kind: 'calculator',
    calculator,
    ...basics(told),
    answers: [
      { id: 'within', verdict: 'within' },
      { id: 'beyond', verdict: 'beyond' },
      { id: 'close', verdict: 'too close' },
    ],
    given: rows(told.tells, (chance) => row(chance, TOO_CLOSE.told)),
    otherwise: row(told.falsely, TOO_CLOSE.other),
  };
}

/** Several answers, each pointing elsewhere. Weights need not add up: they are brought to one. */
export function sorted<const Id extends string, A extends string>(
  kind: Inspection['kind'],
  id: Id,
  answers: readonly (Answer & { readonly id: A })[],
  told: Asked & { readonly given: Readonly<Record<CauseId, Likelihoods>>; readonly otherwise: Likelihoods },
  calculator?: string,
): Asking<Id, A> {
  const whole = (weights: Likelihoods): Likelihoods => {
    const total = Object.values(weights).reduce((sum, weight) => sum + weight, 0);
    return Object.fromEntries(Object.entries(weights).map(([answer, weight]) => [answer, weight / total]));
  };
  const of = calculator === undefined ? {} : { calculator };
  return {
    id,
    kind,
    ...of,
    ...basics(told),
    answers,
    given: rows(told.given, whole),
    otherwise: whole(told.otherwise),
  };
}
