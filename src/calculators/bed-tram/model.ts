import { cite, derived } from '../../engine/calculator';
import type { InputValue } from '../../formula/outcome';
import { count, length, ratio, slope } from '../../quantity/kinds';
import { telling, type Told } from '../../engine/order';
import type { Choices, ModelData, ModelResult } from '../../engine/spec';
import { FOUR } from './choices';
import { fitPlane, inOneLine, spreadOf, type Plane, type Point } from './plane';
import { MOST_POINTS } from './points';
import type words from './words/en';

const { problem } = telling<typeof words>();

const fit = cite('Golub and Van Loan, Matrix Computations', 'sectionLeastSquares', true);
const parting = derived('covarianceCoefficientsTaken');
const rest = cite('ISO 230-1:2012', 'clauseDeviationReference', true);
const kept = derived('whichAdjusterStays');

export const outputs = {
  h_m: { measure: length.mm, cite: fit },
  i_p: { measure: slope.mm_m, cite: fit },
  i_y: { measure: slope.mm_m, cite: fit },
  kappa: { measure: ratio.one, cite: parting },
  x_m: { measure: length.mm, cite: parting },
  y_m: { measure: length.mm, cite: parting },
  F: { measure: length.mm, cite: rest },
  e_h: { measure: length.mm, cite: rest },
  e_l: { measure: length.mm, cite: rest },
  e_r: { measure: length.mm, cite: rest },
  k_h: { measure: count.one, cite: rest },
  k_l: { measure: count.one, cite: rest },
  w_1: { measure: ratio.one, cite: kept },
  w_2: { measure: ratio.one, cite: kept },
  w_3: { measure: ratio.one, cite: kept },
  w_4: { measure: ratio.one, cite: kept },
};

const exact = (value: number): InputValue => ({ value, u: 0, shape: 'normal' });
const fitted = (value: number, u: number): InputValue => ({ value, u, shape: 'normal' });

type Inputs = Readonly<Record<string, InputValue | undefined>>;

/** The lines that are whole, with heights upwards; or which line has a reading and no place. */
function pointsOf(inputs: Inputs, choices: Choices): readonly Point[] | { readonly problem: Told } {
  const up = choices.by === 'gap' ? -1 : 1;
  const points: Point[] = [];
  for (let line = 1; line <= MOST_POINTS; line += 1) {
    const [x, y, z] = [inputs[`x_${line}`], inputs[`y_${line}`], inputs[`z_${line}`]];
    if (!z) continue;
    if (!x || !y) return { problem: problem('noPlace', { line }) };
    points.push({ line, x: x.value, y: y.value, z: up * z.value, u: z.u, u_x: x.u, u_y: y.u });
  }
  return points;
}

function refusal(points: readonly Point[]): Told | undefined {
  const n = points.length;
  if (n === 0 || n === 1 || n === 2) return problem('tooFew', { points: n });
  return inOneLine(points) ? problem('inOneLine') : undefined;
}

/** Shares of the adjusters in the height that all are brought to. */
function weights(choices: Choices): readonly number[] {
  const n = (FOUR as readonly string[]).includes(choices.layout ?? '') ? 4 : 3;
  const keep = n === 4 ? choices.keep_4 : choices.keep_3;
  return [1, 2, 3, 4].map((i) => (keep === 'all' ? (i <= n ? 1 / n : 0) : String(i) === keep ? 1 : 0));
}

/** What the plane leaves. Three points leave nothing and show nothing, so there is no value. */
function leftOver({ residuals, leaves, us }: Plane, points: readonly Point[]): Record<string, InputValue> {
  const n = points.length;
  if (n === 3) return {};
  const order = residuals.map((_, i) => i).sort((a, b) => (residuals[b] ?? 0) - (residuals[a] ?? 0));
  const [high = 0, low = 0] = [order[0], order.at(-1)];
  const at = (i: number): number => residuals[i] ?? 0;
  const row = (i: number): readonly number[] => leaves[i] ?? [];
  // Which two lie highest and lowest is itself in doubt: the pair with the widest doubt stands for it.
  let u_F = 0;
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < i; j += 1) {
      u_F = Math.max(
        u_F,
        spreadOf(
          row(i).map((one, k) => one - (row(j)[k] ?? 0)),
          us,
        ),
      );
    }
  }
  const square = residuals.reduce((total, one) => total + one * one, 0);
  const e_r = Math.sqrt(square / n);
  const alone = points.map((_, i) => spreadOf(row(i), us));
  // At zero the root has no slope: then no more is known than how far the residuals may lie from it.
  const u_r = square > 1e-20 ? spreadOf(residuals, us) / (n * e_r) : Math.hypot(...alone) / Math.sqrt(n);
  return {
    F: fitted(at(high) - at(low), u_F),
    e_h: fitted(at(high), alone[high] ?? 0),
    e_l: fitted(at(low), alone[low] ?? 0),
    e_r: fitted(e_r, u_r),
    k_h: exact(points[high]?.line ?? 0),
    k_l: exact(points[low]?.line ?? 0),
  };
}

function compute(inputs: Inputs, choices: Choices): ModelResult {
  const points = pointsOf(inputs, choices);
  if ('problem' in points) return { ok: false, problem: points.problem };
  const refused = refusal(points);
  if (refused) return { ok: false, problem: refused };
  const plane = fitPlane(points);
  const [w_1 = 0, w_2 = 0, w_3 = 0, w_4 = 0] = weights(choices);
  return {
    ok: true,
    values: {
      h_m: fitted(plane.h, plane.u_h),
      i_p: fitted(plane.p, plane.u_p),
      i_y: fitted(plane.i_y, plane.u_y),
      kappa: exact(plane.kappa),
      x_m: exact(plane.x_m),
      y_m: exact(plane.y_m),
      ...leftOver(plane, points),
      w_1: exact(w_1),
      w_2: exact(w_2),
      w_3: exact(w_3),
      w_4: exact(w_4),
    },
  };
}

/** Plane through the points by least squares, what it leaves, and which adjuster the turns are counted from. */
export const model: ModelData<typeof outputs> = { outputs, compute };
