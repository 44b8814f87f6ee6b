import type { InputValue, Outcome } from '../formula/outcome';
import { propagate, type Outcomes } from '../formula/propagate';
import type { System } from '../formula/system';
import { reaches, type Tool } from '../reference/tools';
import type { Calculator, LimitSpec } from './calculator';
import { applies, type Choices, type VerdictState } from './spec';
import { excessNames } from './system';
import { doubtWith, standard, toolsOf } from './tooled';

/** One limit, looked at. */
export interface Check {
  readonly limit: LimitSpec;
  readonly state: VerdictState;
}

/** What would settle a verdict that is too close to call, or a whole number that is not determined. */
export interface Settling {
  /** The input that contributes most, and its share of the variance. */
  readonly symbol: string;
  readonly share: number;
  /** The coarsest tool that reads it, reaches it and would settle it; undefined when none of the listed ones would alone. */
  readonly tool: Tool | undefined;
  /** Half-width that would settle it where no tool does, SI; undefined where none that can be had would. */
  readonly half?: number;
}

export interface Verdict {
  readonly state: VerdictState;
  readonly checks: readonly Check[];
  /** Worked out when first asked for; undefined where nothing is open. */
  readonly settling: Settling | undefined;
}

type Inputs = Readonly<Record<string, InputValue | undefined>>;

/** Interval of an excess against zero: the limit inside the expanded uncertainty is too close to call (JCGM 106). */
function sideOfLimit(excess: Outcome | undefined): VerdictState {
  if (!excess?.ok) return 'none';
  // At zero uncertainty a value exactly on the limit is within it.
  if (excess.high <= 0) return 'within';
  return excess.low > 0 ? 'beyond' : 'too close';
}

/** Beyond on one side is beyond; otherwise the least settled side decides. */
function worst(states: readonly VerdictState[]): VerdictState {
  if (states.length === 0) return 'none';
  for (const state of ['beyond', 'none', 'too close'] satisfies VerdictState[])
    if (states.includes(state)) return state;
  return 'within';
}

function excessesOf(index: number, outcomes: Outcomes): Outcome[] {
  const names = excessNames(index);
  return [names.above, names.below, names.under].flatMap((name) => outcomes[name] ?? []);
}

function checksOf(calc: Calculator, choices: Choices, outcomes: Outcomes, of: string | undefined): Check[] {
  return calc.limits.flatMap((limit, i) =>
    applies(limit.when, choices) && (of === undefined || of === limit.of)
      ? [{ limit, state: worst(excessesOf(i, outcomes).map(sideOfLimit)) }]
      : [],
  );
}

interface Question {
  /** The result in question. */
  readonly name: string;
  /** Inputs behind it, the one that adds most first. */
  readonly lead: readonly string[];
  readonly settled: (outcomes: Outcomes) => boolean;
}

/** The open question: a limit on either side of which the result may lie, or a whole number between two. */
function openQuestion(calc: Calculator, choices: Choices, outcomes: Outcomes): Question | undefined {
  for (const [i, limit] of calc.limits.entries()) {
    if (!applies(limit.when, choices)) continue;
    const stateIn = (found: Outcomes): VerdictState => worst(excessesOf(i, found).map(sideOfLimit));
    if (stateIn(outcomes) !== 'too close') continue;
    const names = excessNames(i);
    for (const name of [names.above, names.below, names.under]) {
      const outcome = outcomes[name];
      if (!outcome?.ok || sideOfLimit(outcome) !== 'too close') continue;
      const lead = outcome.budget.map((part) => part.symbol);
      const settled: Question['settled'] = (found) => ['within', 'beyond'].includes(stateIn(found));
      return { name, lead, settled };
    }
  }
  for (const [name, outcome] of Object.entries(outcomes)) {
    if (!outcome.ok && outcome.failure.kind === 'undetermined' && outcome.failure.symbol === name) {
      return { name, lead: outcome.failure.symbols, settled: (found) => found[name]?.ok === true };
    }
  }
  return undefined;
}

function shareOf(outcome: Outcome | undefined, symbol: string): number {
  const open = outcome?.ok === false && outcome.failure.kind === 'undetermined' ? outcome.failure : undefined;
  const budget = outcome?.ok ? outcome.budget : open?.budget;
  return budget?.find((part) => part.symbol === symbol)?.share ?? 1;
}

/** The input that keeps a question open, and the coarsest tool that would close it; undefined where nothing is open. */
export function settle(
  calc: Calculator,
  system: System,
  inputs: Inputs,
  choices: Choices,
  outcomes: Outcomes,
): Settling | undefined {
  const open = openQuestion(calc, choices, outcomes);
  const symbol = open?.lead[0];
  const input = symbol === undefined ? undefined : inputs[symbol];
  const spec = symbol === undefined ? undefined : calc.inputs[symbol];
  if (!open || symbol === undefined || !input || !spec) return undefined;
  const share = shareOf(outcomes[open.name], symbol);
  const settles = (u: number, shape: InputValue['shape']): boolean =>
    open.settled(propagate(system, { ...inputs, [symbol]: { ...input, u, shape } }, { remember: false }));
  for (const tool of toolsOf(spec, choices)) {
    if (!reaches(tool, input.value)) continue;
    const { half, shape } = doubtWith(tool, spec, input.value, choices);
    const u = standard(half, shape);
    if (u < input.u && settles(u, shape)) return { symbol, share, tool };
  }
  const half = halfThatSettles(input, (width) => settles(standard(width), 'rectangular'));
  return { symbol, share, tool: undefined, ...(half === undefined ? {} : { half }) };
}

/** Room for two printed digits, which may be up to a twentieth more. */
const ROOM = 0.95;
/** A half-width so much finer than now is none that a bench gets. */
const FINEST = 1000;
/** Steps to the half-width that settles: to three per cent of it. */
const HALVINGS = 8;

/** The widest half-width that settles, SI, never too wide; undefined where none that can be had does. */
function halfThatSettles(input: InputValue, settles: (half: number) => boolean): number | undefined {
  let tooWide = Math.sqrt(3) * input.u;
  let enough = tooWide / FINEST;
  if (!settles(enough)) return undefined;
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = Math.sqrt(enough * tooWide);
    if (settles(middle)) enough = middle;
    else tooWide = middle;
  }
  return ROOM * enough;
}

/**
 * The verdict on all limits in force, or on those of one result. What would settle an open one is asked apart: it works the
 * system out anew per tool.
 */
export function judge(calc: Calculator, choices: Choices, outcomes: Outcomes, of?: string): Omit<Verdict, 'settling'> {
  const checks = checksOf(calc, choices, outcomes, of);
  return { state: worst(checks.map((check) => check.state)), checks };
}
