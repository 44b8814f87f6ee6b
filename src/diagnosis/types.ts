/*
 * From a symptom to a proven mend. Everything here is plain data and plain functions: no Solid, no DOM.
 *
 *   catalogue/index.ts  catalogue: WordedCatalogue                  all it knows, with words; its numbers are common practice
 *   belief.ts   believe(catalogue, course): Belief                  what is suspected after all that is in the course
 *   order.ts    propose(catalogue, course, { worth }?): Proposal    the next step, why, and all others with their expected effort
 *   dangers.ts  dangersOf(catalogue, course), mayTake(...)          what may burn or shock and was not cleared; what it holds back
 *   danger.ts   dangerIn(text)                                      words of danger in what an owner writes, and what to do first
 *   worth.ts    weigh(cause, worth)                                 repair and replacement side by side at an hourly worth
 *   pick.ts     inspectionsFor, factsFor(catalogue, symptom)        what a case of this symptom can ask
 *
 * A case is its course: symptom, facts, and the list of what was done, in order. Nothing else is kept, so that going back
 * is taking an entry out or changing it, and asking again. All four functions throw RangeError for an id that the catalogue
 * does not have; `unreadable(catalogue, course)` in pick.ts says beforehand why a stored course cannot be read.
 */

type SymptomId = string;
export type CauseId = string;
export type FactId = string;
export type InspectionId = string;
export type AnswerId = string;

/** What stands for a fault that the catalogue does not list. */
export const NONE = 'none';

/** A fire or a shock may come of it: the case starts with switching off and unplugging. */
export type Hazard = 'heat' | 'shock';

/**
 * What is done first where words tell of a danger: `fire` get out, `held` do not touch whom the current holds, `breaker` never at the
 * plug, `unplug` all else.
 */
export type FirstAct = 'fire' | 'held' | 'breaker' | 'unplug';

/** One cause of a symptom and its share among all cases of it, before anything is known (common practice). */
export interface Suspect {
  readonly cause: CauseId;
  readonly prior: number;
}

export interface Symptom {
  readonly id: SymptomId;
  readonly hazard?: Hazard;
  /** With a hazard, what is done first where the words of the complaint ask for nothing else; unplugging where it is left out. */
  readonly first?: FirstAct;
  /** Shares; together with `none` they make one. */
  readonly causes: readonly Suspect[];
  /** Share of faults that are not listed. */
  readonly none: number;
}

/** What a fact does to the odds of a cause: multiplied by `factor` where it holds, by `otherwise` (1) where it does not. */
export interface Raising {
  readonly fact: FactId;
  readonly factor: number;
  readonly otherwise?: number;
}

/** What rids the machine of a cause. */
export interface Remedy {
  readonly minutes: number;
  /** Price of parts and material, in whatever money the person reckons in; a rough typical, to be edited. */
  readonly cost: number;
  /** A step of it heats, powers or moves the machine. */
  readonly powered: boolean;
  /** Trying whether it cured heats, powers or moves the machine: a trial print does. */
  readonly trialPowered: boolean;
}

export interface Mend extends Remedy {
  /** Share of mends that cure, where this is the cause. */
  readonly works: number;
  /** Calculator that gives the amounts; its id is its folder's name. */
  readonly calculator?: string;
}

export interface Cause {
  readonly id: CauseId;
  readonly raisedBy: readonly Raising[];
  /** May start a fire or give a shock: nothing that heats, powers or moves before it was looked at unplugged, or replaced. */
  readonly danger?: boolean;
  /** On the mains side: only a qualified person clears or mends it. */
  readonly qualified?: boolean;
  readonly mend: Mend;
  /** A new part in place of the mend. */
  readonly replace?: Remedy;
}

/** Something about the machine or its history that the person answers with yes, no or not at all. */
export interface Fact {
  readonly id: FactId;
  /** About the machine as built, rather than about what happened lately. */
  readonly lasting: boolean;
}

export interface Answer {
  readonly id: AnswerId;
  /**
   * The calculator's verdict that gives this answer. Where one verdict has several answers (which part fits), the person
   * picks among those.
   */
  readonly verdict?: 'within' | 'beyond' | 'too close';
}

/** P(answer) for each answer of an inspection: sums to one. */
export type Likelihoods = Readonly<Record<AnswerId, number>>;

/** Something to look at, listen to, feel, try or measure. Entries and steps name it as their `check`, as stored cases do. */
export interface Inspection {
  readonly id: InspectionId;
  readonly kind: 'calculator' | 'look' | 'listen' | 'feel' | 'do';
  /** Only with kind `calculator`; its id is its folder's name. */
  readonly calculator?: string;
  readonly minutes: number;
  /** By their ids. */
  readonly tools: readonly string[];
  /** Heats, powers or moves the machine. */
  readonly powered: boolean;
  /** Done by a qualified person. */
  readonly qualified?: boolean;
  readonly answers: readonly Answer[];
  /** How the answers fall where this is the cause. */
  readonly given: Readonly<Record<CauseId, Likelihoods>>;
  /** How they fall for every other cause. */
  readonly otherwise: Likelihoods;
}

export interface Catalogue {
  readonly symptoms: readonly Symptom[];
  readonly causes: readonly Cause[];
  readonly facts: readonly Fact[];
  readonly inspections: readonly Inspection[];
}

export type Entry =
  /** Switched off and unplugged: first in a hazard's case, and nothing else is proposed before it. */
  | { readonly kind: 'made safe' }
  /** It is not safe: someone will see to it, or it cannot be done. The last word on it counts. */
  | { readonly kind: 'not safe'; readonly why: 'will do' | 'cannot' }
  | { readonly kind: 'answer'; readonly check: InspectionId; readonly answer: AnswerId }
  /** Not to be proposed; says nothing about the fault. Taking the entry out brings it back. */
  | { readonly kind: 'skip'; readonly check: InspectionId }
  /** By the person's own knowledge: `certain` to zero, `fairly` to a tenth. */
  | { readonly kind: 'ruled out'; readonly cause: CauseId; readonly sure: 'certain' | 'fairly' }
  /** `remedy` says by which of its ways; not there where an earlier version kept it, which told it in the note alone. */
  | {
      readonly kind: 'mended';
      readonly cause: CauseId;
      readonly cured: boolean;
      readonly remedy?: 'mend' | 'replace';
    };

/** A case as far as it has come. */
export interface Course {
  readonly symptom: SymptomId;
  /** Facts answered; those left open are not in it. */
  readonly facts: Readonly<Record<FactId, boolean>>;
  readonly log: readonly Entry[];
  /** In the owner's words: words of danger in it make a hazard of any symptom. */
  readonly complaint?: string;
}

export interface Belief {
  /** Share of every cause of the symptom that may still be at work; with `none` they make one. */
  readonly causes: Readonly<Record<CauseId, number>>;
  readonly none: number;
  /** Causes with the most believed first, without `none`. */
  readonly ranked: readonly CauseId[];
}

export type Step =
  | { readonly kind: 'make safe'; readonly hazard: Hazard; readonly first: FirstAct }
  | { readonly kind: 'check'; readonly check: InspectionId }
  | { readonly kind: 'mend'; readonly cause: CauseId }
  /**
   * Nothing listed is worth trying: ask someone, with what was found so far. `unplugged` where a danger is not cleared: it stays
   * unplugged, and the someone is a qualified person.
   */
  | { readonly kind: 'hand over'; readonly unplugged?: true }
  /** A mend has cured: the proof is what is left. */
  | { readonly kind: 'closed'; readonly cause: CauseId };

/** One thing that can be done next, and what is to be expected of it. */
export interface Prospect {
  readonly step: Step;
  /** Minutes of this step alone, money counted in. */
  readonly effort: number;
  /** Minutes to the end of the case that are to be expected with this step first. */
  readonly expected: number;
}

/** What an answer would do. */
export interface Outlook {
  readonly answer: AnswerId;
  /** How likely this answer is now. */
  readonly chance: number;
  readonly belief: Belief;
}

export interface Proposal extends Prospect {
  /** Every other step, least expected effort first; all of them are open to the person. */
  readonly others: readonly Prospect[];
  /** Runner-up whose search is less than 20 % dearer: the order of the two is a matter of taste. */
  readonly close: Prospect | undefined;
  /** For an inspection, what each of its answers would do; empty for other steps. */
  readonly outlooks: readonly Outlook[];
  /** Causes that the step tells from the rest: those whose share some answer moves most, the most moved first. */
  readonly parts: readonly CauseId[];
  readonly belief: Belief;
  /** Inspections that heat, power or move, and wait until every danger was looked at unplugged, or replaced. */
  readonly withheld: readonly InspectionId[];
  /** Mends that wait for the same, since they or their trial need power. */
  readonly withheldMends: readonly CauseId[];
  /** The dangers that they wait for. */
  readonly dangers: Dangers;
}

/** Causes marked dangerous that nothing has cleared. */
export interface Dangers {
  /** Believed above one in a hundred, and neither looked at unplugged with an answer that says something, nor replaced. */
  readonly unseen: readonly CauseId[];
  /** Looked at, and seen: to be mended before anything else heats, powers or moves. */
  readonly found: readonly CauseId[];
  /** The complaint tells of a danger that the symptom has no cause for. */
  readonly unlisted: boolean;
}
