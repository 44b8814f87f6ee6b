import type { SecondModel, Seen, ToCarry } from '../../engine/second';

/*
 * The span as a chain of small masses on threads, and the belt laid round the tensioned pulley by arcs and tangents. A turn of the
 * tensioner moves that pulley, the path grows, the belt is stretched to it, and the chain is plucked or pressed again. No formula of
 * the check is used.
 */

/** Masses of the chain. */
const LINKS = 60;
/** The tensioned pulley as drawn: radius, and from its middle to where the strands are held, m. */
const PULLEY = { radius: 0.006, reach: 0.25 };
/** As far as a tensioner goes, m; then the belt is clamped anew, so often at most. */
const FARTHEST = 0.02;
const CLAMPINGS = 400;

const size = (seen: Seen | undefined, otherwise = 0): number => (typeof seen === 'number' ? seen : otherwise);

/** The first of the chain's ways to swing at this many radians a second leaves its far end where? Above zero below the first note. */
function farEnd(tension: number, mass: number, length: number, omega: number): number {
  const link = length / LINKS;
  let [y, slope] = [0, 1];
  for (let i = 0; i < LINKS; i += 1) {
    y += slope * link;
    // The thread beyond a mass leaves at another angle: its pull accelerates the mass.
    if (i < LINKS - 1) slope -= (mass * link * omega ** 2 * y) / tension;
  }
  return y;
}

/** Value of x between two ends at which a falling function passes zero, by halving. */
function zero(falling: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (falling(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const noteOf = (tension: number, mass: number, length: number): number =>
  zero((omega) => farEnd(tension, mass, length, omega), 0, (5 * Math.sqrt(tension / mass)) / length) / (2 * Math.PI);

/** Length of belt from one held end round the pulley to the other, the pulley moved outwards by x. */
function path(x: number, wrap: number): number {
  const { radius, reach } = PULLEY;
  const half = wrap / 2;
  const end = {
    x: radius * Math.cos(half) - reach * Math.sin(half),
    y: radius * Math.sin(half) + reach * Math.cos(half),
  };
  const apart = Math.hypot(end.x - x, end.y);
  const touching = Math.atan2(end.y, end.x - x) - Math.acos(radius / apart);
  return 2 * (Math.sqrt(apart ** 2 - radius ** 2) + radius * touching);
}

interface Machine {
  readonly length: number;
  readonly loop: number;
  readonly rate: number;
  readonly wrap: number;
  readonly mass: number;
  /** The way that the middle is pressed in; undefined where it is plucked. */
  readonly pressed: number | undefined;
}

/** What is read at this tension: the note, or the force that holds the middle pressed in: the slope of the stretch's energy. */
function reading({ length, loop, rate, mass, pressed }: Machine, tension: number): number {
  if (pressed === undefined) return noteOf(tension, mass, length);
  const energy = (y: number): number => {
    const stretch = 2 * Math.hypot(length / 2, y) - length;
    return tension * stretch + ((rate / loop) * stretch ** 2) / 2;
  };
  const bit = 1e-4 * pressed;
  return (energy(pressed + bit) - energy(pressed - bit)) / (2 * bit);
}

function machineOf({ given, choices }: ToCarry): Machine {
  const second = choices.which === 'second';
  return {
    length: size(second ? given.L_2 : given.L_1),
    loop: size(second ? given.L_t2 : given.L_t1),
    rate: (size(given.C_0) * size(given.w)) / size(given.w_0),
    wrap: size(given.theta_w, Math.PI),
    mass: 0.01,
    pressed: choices.by === 'press' ? size(given.y) : undefined,
  };
}

/** Where the tensioner's pulley goes for this direction: outwards is +1. */
function outwards(direction: string, adjuster: string | undefined): number {
  if (direction === 'outwards' || direction === 'inwards') return direction === 'outwards' ? 1 : -1;
  if (direction !== 'clockwise' && direction !== 'anticlockwise') throw new Error(`no direction: ${direction}`);
  return direction === adjuster ? 1 : -1;
}

/** Moves the pulley that way until the reading is what the order names; the other way it is never met, and is left after a while. */
function tune(order: ToCarry, way: number, before: number, goal: number): number {
  const machine = machineOf(order);
  const { loop, rate, wrap } = machine;
  let tension = zero((t) => before - reading(machine, t), 1e-6, 1e6);
  const rest = path(0, wrap);
  const stretched = (x: number): number => Math.max(0, tension + (rate * (path(way * x, wrap) - rest)) / loop);
  const after = (x: number): number => (stretched(x) === 0 ? 0 : reading(machine, stretched(x)));
  for (let i = 0; i < CLAMPINGS && way * (goal - after(FARTHEST)) > 0; i += 1) tension = stretched(FARTHEST);
  return after(zero((x) => way * (goal - after(x)), 0, FARTHEST));
}

const model: SecondModel = {
  carry: (order) => {
    const { given, choices, movements, effect } = order;
    const read: Record<string, Seen> = {};
    for (const { part, direction, amount } of movements) {
      if (part === 'acceleration') {
        if (direction !== 'down') throw new Error(`an acceleration does not go ${direction}`);
        read.a = size(given.a) - amount;
        continue;
      }
      const symbol = choices.by === 'note' ? 'f' : 'F';
      const goal = effect[symbol];
      if (typeof goal !== 'number') throw new Error(`no reading to stop at`);
      read[symbol] = tune(order, outwards(direction, choices.adjuster), size(given[symbol]), goal);
    }
    return read;
  },
  contradictions: {
    leastOverMost: { given: { L_1: '300 mm', f: '80 Hz', T_b: '50 N', T_a: '40 N' } },
  },
};
export default model;
