import { cite, derived } from '../../engine/calculator';
import type { InputValue } from '../../formula/outcome';
import { count, length, ratio, slope } from '../../quantity/kinds';
import { telling, type Told } from '../../engine/order';
import type { Choices, ModelData, ModelResult } from '../../engine/spec';
import { FOUR } from './choices';
import type { Place } from './lift';
import { fitPlane, heightOn, inOneLine, spreadOf, type Plane, type Point } from './plane';
import { MOST_POINTS } from './points';
import { fitTwist, isSprung, isThin, placesOf, spansOf, type Twist } from './twist';
import type words from './words/en';

const { problem } = telling<typeof words>();

const fit = cite('Golub and Van Loan, Matrix Computations, 4th edition (2013)', 'sectionLeastSquares', true);
const parting = derived('covarianceCoefficientsTaken');
const rest = cite('ISO 230-1:2012', 'clauseDeviationReference', true);
const kept = derived('whichAdjusterStays');
const twisted = derived('twistLeastSquares');
const spanned = derived('spanAdjusters');

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
  F_r: { measure: length.mm, cite: rest },
  tau: { measure: length.mm, cite: twisted },
  v_0: { measure: ratio.one, cite: twisted },
  v_1: { measure: ratio.one, cite: twisted },
  v_2: { measure: ratio.one, cite: twisted },
  v_3: { measure: ratio.one, cite: twisted },
  v_4: { measure: ratio.one, cite: twisted },
  a_x: { measure: length.mm, cite: spanned },
  a_y: { measure: length.mm, cite: spanned },
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

/** The one to leave alone so that the fewest have to be turned, and those the least. */
function fewestTurns(inputs: Inputs, heights: readonly number[]): number {
  const [pitch, least] = [inputs.P_s?.value ?? NaN, inputs.phi_h?.value ?? NaN];
  const slack = (pitch * least) / (4 * Math.PI);
  const cost = (kept: number): readonly [number, number] => {
    const moves = heights.map((one) => Math.abs(one - kept));
    return [moves.filter((one) => one > slack).length, moves.reduce((sum, one) => sum + one, 0)];
  };
  return heights.reduce((best, one, i) => {
    const [[turns, sum], [fewest, smallest]] = [cost(one), cost(heights[best] ?? 0)];
    return turns < fewest || (turns === fewest && sum < smallest - 1e-12) ? i : best;
  }, 0);
}

/** Shares of the adjusters in the height that all are brought to. */
function weights(inputs: Inputs, choices: Choices, heights: readonly number[]): readonly number[] {
  const n = (FOUR as readonly string[]).includes(choices.layout ?? '') ? 4 : 3;
  const chosen = n === 4 ? choices.keep_4 : choices.keep_3;
  const keep = chosen === 'fewest' ? String(fewestTurns(inputs, heights) + 1) : chosen;
  return [1, 2, 3, 4].map((i) => (keep === 'all' ? (i <= n ? 1 / n : 0) : String(i) === keep ? 1 : 0));
}

/** Widest doubt of how far apart two points lie after the fit: which two lie highest and lowest is itself in doubt. */
function widestApart({ leaves, us }: Plane): number {
  const row = (i: number): readonly number[] => leaves[i] ?? [];
  let widest = 0;
  for (let i = 0; i < us.length; i += 1) {
    for (let j = 0; j < i; j += 1) {
      const apart = row(i).map((one, k) => one - (row(j)[k] ?? 0));
      widest = Math.max(widest, spreadOf(apart, us));
    }
  }
  return widest;
}

/** What the plane leaves. Three points leave nothing and show nothing, so there is no value. */
function leftOver(plane: Plane, points: readonly Point[]): Record<string, InputValue> {
  const { residuals, leaves, us } = plane;
  const n = points.length;
  if (n === 3) return {};
  const order = residuals.map((_, i) => i).sort((a, b) => (residuals[b] ?? 0) - (residuals[a] ?? 0));
  const [high = 0, low = 0] = [order[0], order.at(-1)];
  const at = (i: number): number => residuals[i] ?? 0;
  const row = (i: number): readonly number[] => leaves[i] ?? [];
  const square = residuals.reduce((total, one) => total + one * one, 0);
  const e_r = Math.sqrt(square / n);
  const alone = points.map((_, i) => spreadOf(row(i), us));
  // At zero the root has no slope: then no more is known than how far the residuals may lie from it.
  const u_r = square > 1e-20 ? spreadOf(residuals, us) / (n * e_r) : Math.hypot(...alone) / Math.sqrt(n);
  return {
    F: fitted(at(high) - at(low), widestApart(plane)),
    e_h: fitted(at(high), alone[high] ?? 0),
    e_l: fitted(at(low), alone[low] ?? 0),
    e_r: fitted(e_r, u_r),
    k_h: exact(points[high]?.line ?? 0),
    k_l: exact(points[low]?.line ?? 0),
  };
}

/** What four adjusters can set besides the plane, and what then is left; nothing where they set a plane alone. */
function ofTwist(
  points: readonly Point[],
  plane: Plane,
  places: readonly Place[],
  middle: Place,
  twist: Twist | undefined,
) {
  const spans = spansOf(places);
  const share = (place: Place | undefined): InputValue => exact(twist && place ? twist.at(place.x, place.y) : 0);
  const rest = twist?.rest ?? plane.residuals;
  // As many points as the fit has unknowns leave nothing and show nothing.
  const shows = points.length > (twist ? 4 : 3);
  return {
    v_0: share(middle),
    v_1: share(places[0]),
    v_2: share(places[1]),
    v_3: share(places[2]),
    v_4: share(places[3]),
    tau: twist ? fitted(twist.tau, twist.u) : exact(0),
    ...(places.length > 0 ? { a_x: exact(spans.a_x), a_y: exact(spans.a_y) } : {}),
    ...(shows ? { F_r: fitted(Math.max(...rest) - Math.min(...rest), widestApart(plane)) } : {}),
  };
}

/** All as doubtful as the most doubtful: then plane and twist, each fitted by itself, are uncorrelated. */
function alike(points: readonly Point[]): readonly Point[] {
  const most = (of: (point: Point) => number): number => Math.max(...points.map(of));
  const [u, u_x, u_y] = [most((one) => one.u), most((one) => one.u_x), most((one) => one.u_y)];
  return points.map((point) => ({ ...point, u, u_x, u_y }));
}

function compute(inputs: Inputs, choices: Choices): ModelResult {
  const read = pointsOf(inputs, choices);
  if ('problem' in read) return { ok: false, problem: read.problem };
  const refused = refusal(read);
  if (refused) return { ok: false, problem: refused };
  const sprung = isSprung(choices);
  const points = sprung ? alike(read) : read;
  const plane = fitPlane(points);
  const places = placesOf(inputs, choices) ?? [];
  const found = sprung ? fitTwist(points, plane, places) : undefined;
  const twist = found && isThin(inputs, found.tau, places) ? found : undefined;
  const heights = places.map(({ x, y }) => heightOn(plane, x, y) + (twist ? twist.tau * twist.at(x, y) : 0));
  const [w_1 = 0, w_2 = 0, w_3 = 0, w_4 = 0] = weights(inputs, choices, heights);
  const middle = { x: (inputs.W?.value ?? 0) / 2, y: (inputs.D?.value ?? 0) / 2 };
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
      ...ofTwist(points, plane, places, middle, twist),
      w_1: exact(w_1),
      w_2: exact(w_2),
      w_3: exact(w_3),
      w_4: exact(w_4),
    },
  };
}

/** Plane through the points by least squares, the twist that four adjusters set, what is left, and which adjuster the turns are counted from. */
export const model: ModelData<typeof outputs> = { outputs, compute };
