import { lusolve, multiply, transpose } from 'mathjs';
import { sizeSeen, type SecondModel, type Seen, type ToCarry } from '../../engine/second';

interface Place {
  readonly x: number;
  readonly y: number;
}
const num = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;

/** Best (or only) coefficients of the columns, by the normal equations. */
function fitted(columns: readonly (readonly number[])[], values: readonly number[]): number[] {
  const A = transpose(columns.map((one) => [...one]));
  const solved = lusolve(multiply(transpose(A), A), multiply(transpose(A), [...values])) as number[][];
  return solved.map((row) => row[0] ?? NaN);
}

/** Adjusters by what the person picked, looking down on the bed with its front towards them: x to the right, y away. */
function adjusters({ given, choices }: ToCarry): Readonly<Record<string, Place>> {
  const [W, D, b] = [num(given.W), num(given.D), num(given.b_a)];
  const corner = (right: boolean, back: boolean): Place => ({ x: right ? W - b : b, y: back ? D - b : b });
  const typed = (name: string): Place => ({ x: num(given[`X_${name}`]), y: num(given[`Y_${name}`]) });
  switch (choices.layout) {
    case 'front':
      return {
        'front left': corner(false, false),
        'front right': corner(true, false),
        'back middle': { x: W / 2, y: D - b },
      };
    case 'back':
      return { 'back left': corner(false, true), 'back right': corner(true, true), 'front middle': { x: W / 2, y: b } };
    case 'three':
      return { first: typed('a'), second: typed('b'), third: typed('c') };
    case 'four':
      return { first: typed('a'), second: typed('b'), third: typed('c'), fourth: typed('d') };
    default:
      return {
        'front left': corner(false, false),
        'front right': corner(true, false),
        'back right': corner(true, true),
        'back left': corner(false, true),
      };
  }
}

/**
 * How far a turn seen from above lifts the bed. A right-hand thread that is turned clockwise by an eye runs away from that eye,
 * against its nut; a left-hand one comes towards it.
 */
function lifted(build: string | undefined, hand: string | undefined, direction: string, travel: number): number {
  const clockwise = direction === 'clockwise';
  if (build === 'raises') return clockwise ? travel : -travel;
  if (build === 'lowers') return clockwise ? -travel : travel;
  // Down, seen from above, goes what is turned: away from the eye.
  const turnedGoesDown = clockwise === (hand !== 'left');
  const down = turnedGoesDown ? travel : -travel;
  // The nut below the carrier goes down its hanging screw: the bed is let up by as much. A screw from above, and a nut that the bed
  // rests on, take the bed along. A Z screw cannot go down: the nut that carries the bed goes up.
  return build === 'screw' || build === 'rest' ? -down : down;
}

/** Saint-Venant: a strip of breadth b and thickness t, twisted end against end, has the torsion constant b t³ / 3. */
function cornerForce(E: number, nu: number, t: number, long: number, broad: number, corner: number): number {
  const G = E / (2 * (1 + nu));
  const torque = (G * ((broad * t ** 3) / 3) * (4 * corner)) / broad / long;
  return torque / broad;
}

/** Whether the plate's twist is taken out by four adjusters with springs. */
function followsFour(order: ToCarry, points: readonly (Place & { z: number })[]): boolean {
  const { given, choices } = order;
  const sprung = ['nut', 'screw', 'raises', 'lowers'].includes(choices.build ?? '');
  const places = Object.values(adjusters(order));
  if (places.length < 4 || !sprung || points.length < 4) return false;
  const mid = (of: (place: Place) => number): number => places.reduce((sum, one) => sum + of(one), 0) / places.length;
  const [x_c, y_c] = [mid(({ x }) => x), mid(({ y }) => y)];
  const product = ({ x, y }: Place): number => (x - x_c) * (y - y_c);
  const columns = [points.map(() => 1), points.map(({ x }) => x), points.map(({ y }) => y), points.map(product)];
  const twist =
    fitted(
      columns,
      points.map(({ z }) => z),
    )[3] ?? NaN;
  const span = (of: (place: Place) => number): number => Math.max(...places.map(of)) - Math.min(...places.map(of));
  const first = places[0] ?? { x: 0, y: 0 };
  const force = cornerForce(
    num(given.E_b),
    num(given.nu_b),
    num(given.d_b),
    span(({ x }) => x),
    span(({ y }) => y),
    // A hand sets each corner to within half of its least turn.
    Math.abs(twist * product(first)) + (num(given.P_s) * num(given.phi_h)) / (2 * Math.PI) / 2,
  );
  return force <= (num(given.k_s) * num(given.y_s)) / 2;
}

/**
 * The bed as a plate on its adjusters, each of which sets the height of its place: a plane through three, or a twisted plane through four
 * where the springs twist it. A gap under the nozzle closes as the bed rises there.
 */
const second: SecondModel = {
  carry: (order) => {
    const { given, choices, movements, effect } = order;
    const gaps = choices.by === 'gap';
    const lines = Object.keys(given).flatMap((name) => (/^z_\d+$/u.test(name) ? [name.slice(2)] : []));
    const points = lines.flatMap((line) => {
      if (given[`x_${line}`] === undefined || given[`y_${line}`] === undefined) return [];
      const z = num(given[`z_${line}`]);
      return [{ line, x: num(given[`x_${line}`]), y: num(given[`y_${line}`]), z: gaps ? -z : z }];
    });
    const places = adjusters(order);
    // The last of four, brought to touch, bears no part in where a stiff plate lies.
    const touching = movements.at(-1)?.part.replace(' adjuster', '');
    const lifts: Record<string, number> = Object.fromEntries(Object.keys(places).map((name) => [name, 0]));
    for (const { part, direction, amount } of movements) {
      const name = part.replace(' adjuster', '');
      lifts[name] = lifted(choices.build, choices.hand, direction, (num(given.P_s) * amount) / (2 * Math.PI));
    }
    const all = followsFour(order, points);
    const held = Object.entries(places).filter(([name]) => all || Object.keys(places).length < 4 || name !== touching);
    const holds = all ? held : held.slice(0, 3);
    const columns = (of: readonly Place[]): number[][] => [
      of.map(() => 1),
      of.map(({ x }) => x),
      of.map(({ y }) => y),
      ...(all ? [of.map(({ x, y }) => x * y)] : []),
    ];
    const plate = fitted(
      columns(holds.map(([, place]) => place)),
      holds.map(([name]) => lifts[name] ?? 0),
    );
    const after = points.map((point) => {
      const rise = columns([point]).reduce((sum, column, i) => sum + (column[0] ?? 0) * (plate[i] ?? 0), 0);
      return [`z_${point.line}`, gaps ? -(point.z + rise) : point.z + rise] as const;
    });
    const layer = effect.h_1;
    return {
      ...(movements.length > 0 ? Object.fromEntries(after) : {}),
      ...(typeof layer === 'number' ? { h_1: layer } : {}),
    };
  },
  contradictions: {
    pastMiddle: {
      given: {
        b_a: '130 mm',
        W: '240 mm',
        D: '180 mm',
        x_1: '30',
        y_1: '30',
        z_1: '0',
        x_2: '190',
        y_2: '30',
        z_2: '0',
        x_3: '30',
        y_3: '190',
        z_3: '0.2',
      },
    },
  },
};
export default second;
