/**
 * The search for the next step, on bare numbers: every inspection and mend is tried in thought, and what would follow is valued
 * by a sequence that could be carried out (the one-step look-ahead of Heckerman, Breese & Rommelse 1995). Looking two steps
 * ahead takes ten times as long and saved nothing that the simulation could show (0.3 of 75 minutes, standard error 2.7).
 *
 * Hypotheses are 0…n−1 for the causes and n for "none of these". Efforts in minutes.
 */
export interface Plan {
  /** By cause: minutes of its mend, and the share of such mends that cure. */
  readonly mends: readonly { readonly effort: number; readonly works: number }[];
  /** P(answer | hypothesis) as rows[answer][hypothesis]. */
  readonly inspections: readonly { readonly effort: number; readonly rows: readonly (readonly number[])[] }[];
  /** Ends the case whatever the fault. */
  readonly handOver: number;
  /** Worked out of `inspections` by `tellsOf`. */
  readonly tells: readonly Tell[];
}

/** An inspection that shows one cause: some of its answers stand for it. */
export interface Tell {
  readonly inspection: number;
  readonly cause: number;
  /** P(one of those answers | hypothesis). */
  readonly seen: readonly number[];
}

/** An answer stands for a cause where its odds against an unlisted fault are at least this. */
const STANDS_FOR = 1.6;

/** For each inspection and each cause that it tells: how often the answers that stand for the cause come, by hypothesis. */
export function tellsOf(inspections: Plan['inspections'], causes: number): Tell[] {
  return inspections.flatMap(({ rows }, inspection) =>
    Array.from({ length: causes }, (_, cause): Tell => {
      const pointing = rows.filter((row) => (row[cause] ?? 0) > STANDS_FOR * (row[causes] ?? 0));
      const seen = Array.from({ length: causes + 1 }, (__, h) => pointing.reduce((sum, row) => sum + (row[h] ?? 0), 0));
      return { inspection, cause, seen };
    }).filter(({ cause, seen }) => (seen[cause] ?? 0) > (seen[causes] ?? 0)),
  );
}

/** What is left: belief over the hypotheses, and bits of the mends and inspections still open. */
export interface Left {
  readonly p: readonly number[];
  readonly mends: number;
  readonly inspections: number;
}

const has = (bits: number, i: number): boolean => (bits & (1 << i)) !== 0;
const without = (bits: number, i: number): number => bits & ~(1 << i);

/** Belief after an answer, and how likely the answer was. */
function answered(p: readonly number[], row: readonly number[]): { chance: number; p: readonly number[] } {
  const joint = p.map((share, i) => share * (row[i] ?? 0));
  const chance = joint.reduce((sum, weight) => sum + weight, 0);
  return { chance, p: chance > 0 ? joint.map((weight) => weight / chance) : p };
}

/** Belief after a mend that did not cure, and how likely that was. */
function uncured(p: readonly number[], cause: number, works: number): { chance: number; p: readonly number[] } {
  return answered(
    p,
    p.map((_, i) => (i === cause ? 1 - works : 1)),
  );
}

interface Try {
  readonly cause: number;
  readonly gain: number;
  readonly effort: number;
}

/** Open mends in the order of chance over effort. */
function bySpeed(plan: Plan, left: Left, untried: readonly number[] = left.p): Try[] {
  return plan.mends
    .map(({ effort, works }, cause) => ({
      cause,
      effort,
      gain: has(left.mends, cause) ? (untried[cause] ?? 0) * works : 0,
    }))
    .filter(({ gain }) => gain > 0)
    .sort((a, b) => b.gain * a.effort - a.gain * b.effort);
}

/**
 * Expected effort without any further inspection: mends in the order of chance over effort, which is the least there is
 * (Kadane & Simon 1977), until handing over is cheaper than the next one.
 */
export function mendsAlone(plan: Plan, left: Left, untried: readonly number[] = left.p): number {
  let spent = 0;
  let open = left.p.reduce((sum, share) => sum + share, 0);
  let least = open * plan.handOver;
  for (const { gain, effort } of bySpeed(plan, left, untried)) {
    spent += effort * open;
    open -= gain;
    least = Math.min(least, spent + open * plan.handOver);
  }
  return least;
}

/** A cause looked at and mended if seen, or mended at once. */
interface Act extends Try {
  readonly tell: Tell | undefined;
}

/**
 * The best way to deal with each cause by itself, chance over effort first. No inspection serves two causes: the second use of an
 * answer is left to the look-ahead.
 */
function actsOf(plan: Plan, left: Left): Act[] {
  const acts: Act[] = bySpeed(plan, left).map((blind) => ({ ...blind, tell: undefined }));
  for (const tell of plan.tells) {
    const mend = plan.mends[tell.cause];
    if (!mend || !has(left.inspections, tell.inspection) || !has(left.mends, tell.cause)) continue;
    const positive = left.p.reduce((sum, share, h) => sum + share * (tell.seen[h] ?? 0), 0);
    const effort = (plan.inspections[tell.inspection]?.effort ?? 0) + positive * mend.effort;
    acts.push({
      cause: tell.cause,
      tell,
      effort,
      gain: (left.p[tell.cause] ?? 0) * (tell.seen[tell.cause] ?? 0) * mend.works,
    });
  }
  acts.sort((a, b) => b.gain * a.effort - a.gain * b.effort);
  let mends = left.mends;
  let inspections = left.inspections;
  return acts.filter(({ cause, tell }) => {
    if (!has(mends, cause) || (tell && !has(inspections, tell.inspection))) return false;
    mends = without(mends, cause);
    if (tell) inspections = without(inspections, tell.inspection);
    return true;
  });
}

/**
 * Expected effort of looking at one cause after the other, each by an inspection of its own, and mending what is seen (the
 * observe-and-repair sequence of Heckerman, Breese & Rommelse 1995); then the rest by mends alone. A plan that could be
 * carried out as it stands, so never below the optimum.
 */
export function oneByOne(plan: Plan, left: Left): number {
  const open = left.p.slice();
  const untried = left.p.slice();
  let best = mendsAlone(plan, left);
  let spent = 0;
  let mends = left.mends;
  for (const { cause, tell } of actsOf(plan, left)) {
    const { effort, works } = plan.mends[cause] ?? { effort: 0, works: 0 };
    const whole = open.reduce((sum, share) => sum + share, 0);
    const seen = tell ? open.reduce((sum, share, h) => sum + share * (tell.seen[h] ?? 0), 0) : whole;
    spent += (tell ? (plan.inspections[tell.inspection]?.effort ?? 0) * whole : 0) + seen * effort;
    const mended = (left.p[cause] ?? 0) * (tell ? (tell.seen[cause] ?? 0) : 1);
    open[cause] = (open[cause] ?? 0) - mended * works;
    untried[cause] = (untried[cause] ?? 0) - mended;
    if (!tell) mends = without(mends, cause);
    best = Math.min(best, spent + mendsAlone(plan, { ...left, p: open, mends }, untried));
  }
  return best;
}

/** Effort that even knowing the fault does not spare: its mend, or handing over. No plan can do with less. */
export function unsparing(plan: Plan, left: Left): number {
  return left.p.reduce((sum, share, i) => {
    const mend = plan.mends[i];
    const mended = mend && has(left.mends, i) ? mend.effort + (1 - mend.works) * plan.handOver : plan.handOver;
    return sum + share * Math.min(mended, plan.handOver);
  }, 0);
}

/** Expected effort with this inspection first, then the best sequence of one cause after the other for each of its answers. */
export function inspectFirst(plan: Plan, left: Left, inspection: number): number {
  const { effort, rows } = plan.inspections[inspection] ?? { effort: 0, rows: [] };
  const inspections = without(left.inspections, inspection);
  let expected = effort;
  for (const row of rows) {
    const { chance, p } = answered(left.p, row);
    if (chance > 0) expected += chance * oneByOne(plan, { ...left, p, inspections });
  }
  return expected;
}

/** Expected effort with this mend first, then the best sequence for the case that it does not cure. */
export function mendFirst(plan: Plan, left: Left, cause: number): number {
  const { effort, works } = plan.mends[cause] ?? { effort: 0, works: 0 };
  const { chance, p } = uncured(left.p, cause, works);
  return effort + (chance > 0 ? chance * oneByOne(plan, { ...left, p, mends: without(left.mends, cause) }) : 0);
}
