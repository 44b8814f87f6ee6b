import type { SecondModel, Seen, ToCarry } from '../../engine/second';

/*
 * A mass on a spring behind the drive, followed in small steps of time. What it does at the corner is printed along the wall by a nozzle
 * that goes on at its speed, and the crests are looked for on that wall, beyond the ramp. No formula of the check is used.
 */

/** Steps of time for one swing. */
const FINE = 400;
const SWINGS = 9;

const size = (seen: Seen | undefined): number => (typeof seen === 'number' ? seen : 0);

interface Printed {
  /** Pushes that the mass feels: the drive's acceleration, and the speed that it loses at the corner at once. */
  readonly acceleration: number;
  readonly corner: number;
  readonly speed: number;
  /** Spring over mass, 1/s². */
  readonly pull: number;
}

/** Places of the crests along the wall once the ramp is over, m from the corner. */
function crests({ acceleration, corner, speed, pull }: Printed): number[] {
  const ramp = speed / acceleration;
  const dt = (2 * Math.PI) / Math.sqrt(pull) / FINE;
  let [way, drift, place, went, time] = [0, corner, 0, 0, 0];
  const found: number[] = [];
  const end = ramp + SWINGS * FINE * dt;
  while (time < end) {
    const driven = time < ramp ? acceleration : 0;
    const before = drift;
    // Half a push, a whole step, half a push: what swings keeps its time and height so.
    drift += ((-pull * way - driven) * dt) / 2;
    way += drift * dt;
    drift += ((-pull * way - driven) * dt) / 2;
    went = Math.min(speed, went + driven * dt);
    place += went * dt;
    time += dt;
    // The end of the ramp itself is no crest.
    if (time > ramp + 2 * dt && before > 0 && drift <= 0) found.push(place - (went * dt * drift) / (drift - before));
  }
  return found;
}

/** Mean spacing of the crests beyond the ramp. */
function spacing(printed: Printed): number {
  const all = crests(printed);
  return ((all.at(-1) ?? NaN) - (all[0] ?? NaN)) / (all.length - 1);
}

/** The spring that prints crests so far apart, found by trying. */
function springFor(apart: number, speed: number): number {
  let pull = (2 * Math.PI * (speed / apart)) ** 2;
  for (let i = 0; i < 8; i += 1) pull *= (spacing({ acceleration: 1e9, corner: 1, speed, pull }) / apart) ** 2;
  return pull;
}

function carry({ given, choices, movements, effect }: ToCarry): Record<string, Seen> {
  let [acceleration, corner] = [size(given.a), size(given.v_c)];
  const read: Record<string, Seen> = {};
  for (const { part, direction, amount } of movements) {
    if (direction !== 'down') throw new Error(`${part} does not go ${direction}`);
    if (part === 'acceleration') read.a = acceleration -= amount;
    else if (part === 'corner speed') read.v_c = corner -= amount;
    else throw new Error(`no such part: ${part}`);
  }
  const speed = size(given.v);
  // Read as before: over several crests or as a spacing, along the wall or along the axis.
  const slant = choices.along === 'axis' ? Math.cos(size(given.theta_w)) : 1;
  const [symbol, spaces] = choices.by === 'count' ? (['x_N', size(given.N)] as const) : (['P_w', 1] as const);
  const pull = springFor(size(given[symbol]) / spaces / slant, speed);
  read[symbol] =
    spacing({ acceleration: Math.max(acceleration, 1e-3), corner: corner + 1e-6, speed, pull }) * spaces * slant;
  // The person begins to count where the order says; the ramp that is printed must end before.
  const told = effect.x_0;
  const from = typeof told === 'number' ? told : size(given.x_0);
  const rampEnds = speed ** 2 / (2 * acceleration);
  read.x_0 = from > rampEnds ? from : 0;
  return read;
}

const model: SecondModel = {
  carry,
  contradictions: {
    oneSpeed: {
      given: { x_N: '8 mm', v: '80', x_0: '30 mm', a: '900', x_N2: '8 mm', v_2: '80' },
      choices: { test: 'two' },
    },
    runOverBelt: { given: { x_N: '8 mm', v: '80', x_0: '30 mm', a: '900', L_1: '1200 mm', L_t1: '1000 mm' } },
  },
};
export default model;
