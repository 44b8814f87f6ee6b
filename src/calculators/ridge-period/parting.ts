import type { Known } from '../../formula/outcome';
import { COVERAGE } from '../../formula/outcome';
import { halfWidth, reaches, toolsFor, type Tool } from '../../reference/tools';
import type { Line } from './model';

/** Inputs that are the reading of the ridges; the others are the machine's. */
const READING: ReadonlySet<string> = new Set(['L', 'x', 'P_w']);
/** Periods nearer than this, as a share, no reading parts. */
const ONE_PERIOD = 1e-6;

/** What would tell two parts apart. */
export type Parting =
  | { readonly kind: 'same'; readonly a: Line; readonly b: Line }
  | {
      readonly kind: 'reading';
      readonly a: Line;
      readonly b: Line;
      /** The reading's doubt has to come down to this share of what it is. */
      readonly share: number;
      /** Half-width that the period may have, as a share of it. */
      readonly half: number;
      /** The coarsest tool that does it over the same length; undefined where none does. */
      readonly tool: Tool | undefined;
    }
  | {
      /** However good the reading: the doubt in this input of the machine is too much. */
      readonly kind: 'machine';
      readonly a: Line;
      readonly b: Line;
      readonly symbol: string;
    };

interface Doubt {
  readonly reading: number;
  readonly machine: number;
  readonly worst: string;
}

/** Standard uncertainty of a mismatch as a share of the period, split into the reading's part and the machine's. */
function doubtIn(mismatch: Known): Doubt {
  const scale = 1 + mismatch.value;
  let [reading, machine] = [0, 0];
  for (const { symbol, u } of mismatch.budget) {
    if (READING.has(symbol)) reading += u ** 2;
    else machine += u ** 2;
  }
  const worst = mismatch.budget.find((part) => !READING.has(part.symbol))?.symbol ?? '';
  return { reading: Math.sqrt(reading) / scale, machine: Math.sqrt(machine) / scale, worst };
}

/** The reading's doubt with another tool on the same length, relative to now. */
function shareWith(tool: Tool, mismatch: Known, length: number | undefined): number {
  const slope = mismatch.gradient.L;
  const { reading } = doubtIn(mismatch);
  if (slope === undefined || length === undefined || reading === 0) return 1;
  const others = mismatch.budget.reduce(
    (sum, part) => (READING.has(part.symbol) && part.symbol !== 'L' ? sum + part.u ** 2 : sum),
    0,
  );
  const own = (Math.abs(slope) * halfWidth(tool, length)) / Math.sqrt(3);
  return Math.sqrt(others + own ** 2) / (reading * (1 + mismatch.value));
}

/**
 * What parts two that fit: whichever of them is the true one, the other must lie outside its interval even when the reading
 * errs by all of its own. So the gap between the periods must be twice the expanded uncertainty, 2 · 2u.
 *
 * @param length the length read, m, where it was read over several
 */
export function partingOf(
  a: Line,
  b: Line,
  mismatchOf: (line: Line) => Known | undefined,
  length: number | undefined,
): Parting | undefined {
  const [of, other] = [mismatchOf(a), mismatchOf(b)];
  if (!of || !other) return undefined;
  const gap = Math.abs(Math.log(a.period / b.period));
  if (gap < ONE_PERIOD) return { kind: 'same', a, b };
  const [first, second] = [doubtIn(of), doubtIn(other)];
  const machine = first.machine > second.machine ? first : second;
  const reading = Math.max(first.reading, second.reading);
  const allowed = (gap / (2 * COVERAGE)) ** 2 - machine.machine ** 2;
  if (allowed <= 0) return { kind: 'machine', a, b, symbol: machine.worst };
  const share = Math.min(1, Math.sqrt(allowed) / reading);
  const tool = toolsFor('length', ['span']).find(
    (one) => reaches(one, length ?? 0) && shareWith(one, of, length) <= share,
  );
  return { kind: 'reading', a, b, share, half: Math.sqrt(3 * allowed), tool };
}
