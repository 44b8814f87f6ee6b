import type { InputValue } from '../../formula/outcome';
import type { Choices } from '../../engine/spec';
import { FOUR, SPRUNG } from './choices';
import { liftThrough, type Place } from './lift';
import { fitPlane, heightOn, spreadOf, type Plane, type Point } from './plane';

type Inputs = Readonly<Record<string, InputValue | undefined>>;

/** What four adjusters may add to the plane: a height that grows along x times along y, up at two opposite ones and down at the others. */
export interface Twist {
  /** Height of it at the first adjuster, above the plane; with its standard uncertainty. SI. */
  readonly tau: number;
  readonly u: number;
  /** Its height anywhere as a share of `tau`, the plane of the readings taken out. */
  readonly at: (x: number, y: number) => number;
  /** What plane and twist leave of each point. */
  readonly rest: readonly number[];
}

/** The twist that the points show tells nothing of one where they lie so that a plane follows them as well. */
const TELLING = 1e-3;
/** Share of a spring's force that the plate may take or add: the rest holds the corner down. */
const HALF = 0.5;

const isOneOf = (all: readonly string[], one: string | undefined): boolean => one !== undefined && all.includes(one);

/** Where the adjusters are, by the layout; undefined where a place is lacking. */
export function placesOf(inputs: Inputs, choices: Choices): readonly Place[] | undefined {
  const value = (symbol: string): number => inputs[symbol]?.value ?? NaN;
  const [W, D, b] = [value('W'), value('D'), value('b_a')];
  const [left, right, front, back, middle] = [b, W - b, b, D - b, W / 2];
  const at = (x: number, y: number): Place => ({ x, y });
  const typed = ['a', 'b', 'c', 'd'].map((one) => at(value(`X_${one}`), value(`Y_${one}`)));
  const layouts: Readonly<Record<string, readonly Place[]>> = {
    corners: [at(left, front), at(right, front), at(right, back), at(left, back)],
    front: [at(left, front), at(right, front), at(middle, back)],
    back: [at(left, back), at(right, back), at(middle, front)],
    three: typed.slice(0, 3),
    four: typed,
  };
  const places = layouts[choices.layout ?? ''] ?? [];
  return places.length > 0 && places.every(({ x, y }) => Number.isFinite(x + y)) ? places : undefined;
}

/** Sides of the rectangle that the adjusters span. */
export function spansOf(places: readonly Place[]): { readonly a_x: number; readonly a_y: number } {
  const span = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  return { a_x: span(places.map(({ x }) => x)), a_y: span(places.map(({ y }) => y)) };
}

/** Whether the bed is on four adjusters with springs, so that its twist is asked for. */
export const isSprung = (choices: Choices): boolean => isOneOf(FOUR, choices.layout) && isOneOf(SPRUNG, choices.build);

/** Fits the twist to what the plane leaves; undefined where the points, or the adjusters, tell none. */
export function fitTwist(points: readonly Point[], plane: Plane, places: readonly Place[]): Twist | undefined {
  const first = places[0];
  if (points.length < 4 || !first || !liftThrough(places, [1, 0, 0, 0])) return undefined;
  const n = places.length;
  const [x_c, y_c] = [places.reduce((sum, { x }) => sum + x, 0) / n, places.reduce((sum, { y }) => sum + y, 0) / n];
  const product = (x: number, y: number): number => (x - x_c) * (y - y_c);
  const size = product(first.x, first.y);
  if (size === 0) return undefined;
  const raw = points.map(({ x, y }) => product(x, y) / size);
  const flat = fitPlane(points.map((point, i) => ({ ...point, z: raw[i] ?? 0, u: 0, u_x: 0, u_y: 0 })));
  const square = flat.residuals.reduce((sum, one) => sum + one * one, 0);
  const mean = (of: (point: Point) => number): number => points.reduce((sum, one) => sum + of(one), 0) / points.length;
  const [x_m, y_m] = [mean(({ x }) => x), mean(({ y }) => y)];
  const own = points.reduce((sum, { x, y }) => sum + (((x - x_m) * (y - y_m)) / size) ** 2, 0);
  if (!(square > TELLING * own)) return undefined;
  const ofTau = flat.residuals.map((one) => one / square);
  const tau = ofTau.reduce((sum, one, i) => sum + one * (plane.residuals[i] ?? 0), 0);
  return {
    tau,
    u: spreadOf(ofTau, plane.us),
    at: (x, y) => product(x, y) / size - heightOn(flat, x, y),
    rest: plane.residuals.map((one, i) => one - tau * (flat.residuals[i] ?? 0)),
  };
}

/** Force at each of four corners that twists a plate by so much there. */
export function twistStiffness(E: number, nu: number, thickness: number, a_x: number, a_y: number): number {
  const D = (E * thickness ** 3) / (12 * (1 - nu ** 2));
  return (8 * D * (1 - nu)) / (a_x * a_y);
}

/** Whether the springs twist the plate so far, and by what a hand's setting may be off, and keep half of their force. */
export function isThin(inputs: Inputs, tau: number, places: readonly Place[]): boolean {
  const value = (symbol: string): number => inputs[symbol]?.value ?? NaN;
  const { a_x, a_y } = spansOf(places);
  const off = (value('P_s') * value('phi_h')) / (4 * Math.PI);
  const needed = twistStiffness(value('E_b'), value('nu_b'), value('d_b'), a_x, a_y) * (Math.abs(tau) + off);
  return needed <= HALF * value('k_s') * value('y_s');
}
