import type { Catalogue, Cause, Inspection, Likelihoods } from '../../src/diagnosis/types';
import { tellsOf, type Left, type Plan } from '../../src/diagnosis/plan';

interface SmallCause {
  readonly prior: number;
  readonly minutes: number;
  readonly works?: number;
  readonly raisedBy?: Cause['raisedBy'];
  readonly danger?: boolean;
  readonly trialPowered?: boolean;
}

type SmallCheck = Pick<Inspection, 'given' | 'otherwise'> & { readonly minutes: number; readonly powered?: boolean };

/** A catalogue of one symptom `s`, for sums that fit on a page. */
export function smallCatalogue(
  causes: Readonly<Record<string, SmallCause>>,
  checks: Readonly<Record<string, SmallCheck>> = {},
  rest: { readonly none?: number; readonly facts?: readonly string[]; readonly hazard?: 'heat' } = {},
): Catalogue {
  const { none = 0, facts = [], hazard } = rest;
  return {
    symptoms: [
      {
        id: 's',
        ...(hazard ? { hazard } : {}),
        causes: Object.entries(causes).map(([cause, { prior }]) => ({ cause, prior })),
        none,
      },
    ],
    causes: Object.entries(causes).map(
      ([id, { minutes, works = 1, raisedBy = [], danger = false, trialPowered = true }]) => ({
        id,
        raisedBy,
        danger,
        mend: { minutes, cost: 0, works, powered: false, trialPowered },
      }),
    ),
    facts: facts.map((id) => ({ id, lasting: false })),
    inspections: Object.entries(checks).map(([id, { minutes, given, otherwise, powered = false }]) => ({
      id,
      kind: 'look',
      minutes,
      tools: [],
      powered,
      answers: Object.keys(otherwise).map((answer) => ({ id: answer })),
      given,
      otherwise,
    })),
  };
}

export const yesNo = (yes: number): Likelihoods => ({ yes, no: 1 - yes });

/** A plan drawn at random, from a generator of numbers in [0, 1): causes, two-answer checks, and all of them left. */
export function randomPlan(random: () => number, causes: number, checks: number): { plan: Plan; left: Left } {
  const weights = Array.from({ length: causes + 1 }, (_, i) => (i === causes ? 0.3 : 1) * (0.1 + random()));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const laid = Array.from({ length: checks }, () => {
    const falsely = 0.02 + 0.2 * random();
    const told = Array.from({ length: causes }, () => (random() < 0.45 ? 0.6 + 0.38 * random() : falsely));
    const yes = [...told, falsely];
    return { effort: 1 + Math.floor(10 * random()), rows: [yes, yes.map((p) => 1 - p)] };
  });
  const mends = Array.from({ length: causes }, () => ({
    effort: 4 + Math.floor(50 * random()),
    works: 0.8 + 0.2 * random(),
  }));
  return {
    plan: { mends, inspections: laid, handOver: 180, tells: tellsOf(laid, causes) },
    left: { p: weights.map((weight) => weight / total), mends: 2 ** causes - 1, inspections: 2 ** checks - 1 },
  };
}

type Move = { readonly kind: 'check' | 'mend'; readonly index: number } | undefined;

/** Every way to go on; undefined is handing over. */
export function movesOf(plan: Plan, left: Left): Move[] {
  const open = (bits: number, n: number): number[] =>
    Array.from({ length: n }, (_, i) => i).filter((i) => bits & (1 << i));
  return [
    undefined,
    ...open(left.inspections, plan.inspections.length).map((index) => ({ kind: 'check', index }) as const),
    ...open(left.mends, plan.mends.length).map((index) => ({ kind: 'mend', index }) as const),
  ];
}

/**
 * Expected effort of a move, what follows valued by `value`. Written apart from src/diagnosis/plan.ts on purpose: joint shares
 * are carried along without dividing, so nothing of its Bayes update is used.
 */
export function effortOfMove(plan: Plan, left: Left, move: Move, value: (left: Left) => number): number {
  const whole = left.p.reduce((sum, share) => sum + share, 0);
  if (!move) return whole * plan.handOver;
  if (move.kind === 'mend') {
    const { effort, works } = plan.mends[move.index]!;
    const p = left.p.map((share, i) => (i === move.index ? share * (1 - works) : share));
    return whole * effort + value({ ...left, p, mends: left.mends ^ (1 << move.index) });
  }
  const { effort, rows } = plan.inspections[move.index]!;
  const checks = left.inspections ^ (1 << move.index);
  const after = rows.map((row) =>
    value({ ...left, p: left.p.map((share, i) => share * row[i]!), inspections: checks }),
  );
  return whole * effort + after.reduce((sum, one) => sum + one, 0);
}

/** Least expected effort there is: dynamic programming over the whole tree of answers and mends. */
export function optimum(plan: Plan, left: Left): number {
  return Math.min(...movesOf(plan, left).map((move) => effortOfMove(plan, left, move, (next) => optimum(plan, next))));
}
