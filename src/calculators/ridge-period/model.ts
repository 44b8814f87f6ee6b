import { asFraction } from '../../formula/fraction';
import type { Known } from '../../formula/outcome';
import { applies, type Choices } from '../../engine/calculator';
import type { Result } from './asked';
import { parts, repeatOfRounding, type Part } from './parts';

/** What the comparison asks for: results by symbol, undefined where there is none, and the options chosen. */
export interface Compared {
  readonly known: (symbol: Result) => Known | undefined;
  readonly choices: Choices;
}

/** Why a part can make no ridges: whole steps a layer round nothing; what comes round within two layers is no ridge. */
type Why = 'wholeSteps' | 'withinTwoLayers';

/** One part compared with the ridges. */
export interface Line {
  readonly part: Part;
  /** 1: its own period. A half or two: the same part by a less likely way. */
  readonly multiple: number;
  /** Period it would print, m. */
  readonly period: number;
  /** Mismatch, ridge period over the part's period less one: value and interval of about 95 %. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Size of the mismatch in standard uncertainties. */
  readonly score: number;
  /** Zero mismatch lies in the interval (JCGM 106: not told apart by this reading). */
  readonly fits: boolean;
}

export interface Ranking {
  /** Parts at their own period, those that fit first, then by score. */
  readonly lines: readonly Line[];
  /** Halves and doubles that fit. */
  readonly multiples: readonly Line[];
  /** Parts that cannot make ridges of any spacing here, and why. */
  readonly ruledOut: readonly { readonly part: Part; readonly why: Why }[];
  /** Parts whose period is not known. */
  readonly unknown: readonly Part[];
}

/** Periods nearer than this, as a share, are one period. */
const SAME = 1e-9;
/** A rounding pattern with more layers than this before it repeats is no pattern to an eye. */
const LONGEST_REPEAT = 1000;
const MULTIPLES = [0.5, 2];

const same = (a: number, b: number): boolean => Math.abs(a / b - 1) <= SAME;

/**
 * A part at `factor` times its period, from the mismatch e = P/p − 1 at its own: e' = (1 + e)/factor − 1, interval and all.
 *
 * @param period the part's own period, m
 */
export function lineOf(part: Part, mismatch: Known, period: number, factor: number, multiple = factor): Line {
  const at = (e: number): number => (1 + e) / factor - 1;
  const [value, low, high] = [at(mismatch.value), at(mismatch.low), at(mismatch.high)];
  const u = mismatch.u / factor;
  const score = u > 0 ? Math.abs(value) / u : value === 0 ? 0 : Infinity;
  return { part, multiple, period: period * factor, value, low, high, score, fits: low <= 0 && high >= 0 };
}

const apart = (line: Line): number => Math.abs(Math.log(1 + line.value));

/** Those that fit first, the nearest in uncertainties first, of equals the sharper; then the others by how far they are off. */
const byAgreement = (a: Line, b: Line): number =>
  Number(b.fits) - Number(a.fits) ||
  (a.fits ? a.score - b.score || a.high - a.low - (b.high - b.low) : apart(a) - apart(b));

/** Within a factor of two a mismatch is told in percent. */
export const isNear = (line: Line): boolean => line.value > -0.5 && line.value < 1;

/** The parts that are there under these options. */
const partsUnder = (choices: Choices): readonly Part[] => parts.filter((part) => applies(part.when, choices));

/** Odd layers until the rounding pattern of `n` steps a layer begins again: the fraction's distance to a whole number. */
function oddLayersInRepeat(n: number): number | undefined {
  const fraction = asFraction(n, LONGEST_REPEAT);
  if (!fraction) return undefined;
  const over = fraction.numerator % fraction.denominator;
  return Math.min(over, fraction.denominator - over);
}

type Found = { readonly line: Line } | { readonly why: Why } | 'twin' | undefined;

/** The part that another one is, where nothing lies between: one start, no gear. */
const TWINS: Readonly<Record<string, readonly Result[]>> = { thread: ['p_lead'], motor: ['p_lead', 'p_pulley'] };

function ownLine(part: Part, { known }: Compared): Found {
  const mismatch = known(part.mismatch);
  const found = known(part.period);
  if (!mismatch || !found) return undefined;
  if (part.id === 'odd') {
    const n = known('n');
    // Dust of rounding is a whole number of steps.
    if (n && asFraction(n.value, 1)) {
      return n.u === 0 ? { why: 'wholeSteps' } : undefined;
    }
    return { line: lineOf(part, mismatch, 1 / found.value, 1) };
  }
  const twins = (TWINS[part.id] ?? []).flatMap((symbol) => known(symbol)?.value ?? []);
  if (twins.some((period) => same(period, found.value))) return 'twin';
  const least = known('p_min');
  if (least && found.value < least.value * (1 - SAME)) return { why: 'withinTwoLayers' };
  return { line: lineOf(part, mismatch, found.value, 1) };
}

function repeatLine({ known }: Compared, odd: Line | undefined): Line | undefined {
  const [n, mismatch] = [known('n'), known(repeatOfRounding.mismatch)];
  // Where the height or the drive has a doubt, no fraction is the true one.
  const count = odd && n?.u === 0 ? oddLayersInRepeat(n.value) : undefined;
  if (!odd || !mismatch || count === undefined || count <= 1) return undefined;
  return lineOf(repeatOfRounding, mismatch, odd.period, count, 1);
}

/** Compares the ridges with every part under these options. */
export function rank(compared: Compared): Ranking {
  const lines: Line[] = [];
  const ruledOut: { part: Part; why: Why }[] = [];
  const unknown: Part[] = [];
  for (const part of partsUnder(compared.choices)) {
    const found = ownLine(part, compared);
    if (found === 'twin') continue;
    if (!found) unknown.push(part);
    else if ('why' in found) ruledOut.push({ part, why: found.why });
    else lines.push(found.line);
  }
  const repeat = repeatLine(
    compared,
    lines.find((line) => line.part.id === 'odd'),
  );
  if (repeat) lines.push(repeat);
  const multiples = lines.flatMap((line) => {
    const mismatch = compared.known(line.part.mismatch);
    if (!mismatch || !line.part.turns) return [];
    return MULTIPLES.map((factor) => lineOf(line.part, mismatch, line.period, factor)).filter(
      (one) => one.fits && !lines.some((other) => same(other.period, one.period)),
    );
  });
  return { lines: lines.sort(byAgreement), multiples: multiples.sort(byAgreement), ruledOut, unknown };
}

/** One part fits, several do, or none: what three verdicts say of a comparison. */
export function stateOf({ lines }: Ranking): 'within' | 'too close' | 'beyond' | 'none' {
  if (lines.length === 0) return 'none';
  const fitting = lines.filter((line) => line.fits).length;
  return fitting === 0 ? 'beyond' : fitting === 1 ? 'within' : 'too close';
}
