import { angle, length } from '../../quantity/kinds';
import type { AskOf, VerdictState } from '../../engine/calculator';
import {
  exact,
  telling,
  type Amount,
  type Contradiction,
  type Effect,
  type Movement,
  type Order,
  type Told,
} from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import { liftThrough, type Place } from './lift';
import type { outputs } from './model';
import { MOST_POINTS, type cells } from './points';
import { adjustersOf, setTurn, spotOf, turnFor, wholeTurns, type AdjusterName, type Spot, type Turn } from './turning';
import type words from './words/en';

export type Ask = AskOf<{
  inputs: typeof inputs & typeof cells;
  choices: typeof choices;
  formulas: typeof formulas;
  outputs: typeof outputs;
}>;
const { tell, step, contradict } = telling<typeof words>();

const PLACES = [
  { turn: 'psi_1', x: 'X_1', y: 'Y_1' },
  { turn: 'psi_2', x: 'X_2', y: 'Y_2' },
  { turn: 'psi_3', x: 'X_3', y: 'Y_3' },
  { turn: 'psi_4', x: 'X_4', y: 'Y_4' },
] as const;
/** A turn smaller than this, in radians, is none: the adjuster that all are counted from. */
const NONE = 1e-9;
/** Steps of a first layer's height, and the highest: three quarters of a bore of 0.4 mm. Common practice, no source. */
export const LAYER = { step: 5e-5, most: 3e-4 } as const;

interface Adjuster {
  /** Its name and number, and where it sits where the name does not say it. */
  readonly at: { readonly name: AdjusterName; readonly spot: Spot | undefined; readonly n: number };
  readonly place: Place;
  /** Radians that would bring it there, raising is +. */
  readonly wanted: number;
  /** The same as a hand sets it; undefined where that is nothing. */
  readonly set: number | undefined;
  readonly way: Turn;
}

function adjusters(ask: Ask): Adjuster[] {
  const layout = ask.choice('layout');
  const typed = layout === 'three' || layout === 'four';
  const names = adjustersOf(layout);
  return PLACES.slice(0, names.length).map(({ turn, x, y }, i) => {
    const wanted = ask.number(turn);
    const place = { x: ask.number(x), y: ask.number(y) };
    return {
      at: {
        name: names[i] ?? 'first',
        spot: typed ? spotOf(place.x, place.y, ask.number('W'), ask.number('D')) : undefined,
        n: i + 1,
      },
      place,
      wanted,
      set: setTurn(wanted, ask.number('phi_h')),
      way: turnFor(wanted, ask.choice('build'), ask.choice('hand')),
    };
  });
}

const still = ({ wanted }: Adjuster): boolean => Math.abs(wanted) < NONE;

/** Whether each of four adjusters sets its own corner, the plate twisting along. */
const twists = (ask: Ask): boolean => ask.has('v_1') && ask.number('v_1') !== 0;

/** With four on a stiff plate three fix the plane; the one that moves least is brought to it. */
function lastOf(ask: Ask, all: readonly Adjuster[]): Adjuster | undefined {
  if (all.length < 4 || twists(ask)) return undefined;
  const turned = all.filter((one) => !still(one)).sort((a, b) => Math.abs(b.wanted) - Math.abs(a.wanted));
  return turned.length > 1 ? turned.at(-1) : undefined;
}

const tiltState = (ask: Ask): VerdictState => {
  const states = [ask.check('t_p'), ask.check('t_q')];
  return (['beyond', 'none', 'too close'] satisfies VerdictState[]).find((state) => states.includes(state)) ?? 'within';
};

/** How it leans, from left to right and from front to back. */
const leaning = (ask: Ask) => ({
  right: { rises: ask.number('t_x') >= 0, by: ask.quantity('t_x') },
  back: { rises: ask.number('t_y') >= 0, by: ask.quantity('t_y') },
});

/** What of the four's twist, and how stiff the plate is against the springs. */
function twistSteps(ask: Ask): Told[] {
  if (!ask.has('K_b') || !ask.has('tau')) return [];
  const how = { plate: ask.quantity('K_b'), spring: ask.quantity('k_s'), load: ask.quantity('F_k') };
  return [twists(ask) ? step('thinPlate', { ...how, force: ask.quantity('F_b') }) : step('stiffPlate', how)];
}

/** What no screw can fix, as steps. */
function warpSteps(ask: Ask): Told[] {
  if (twists(ask)) {
    if (!ask.has('F_r')) return [step('fifthPoint')];
    const isMuch = ask.number('F_r') > ask.number('F_lim');
    const left = step('leftOfTwist', { by: ask.quantity('F_r') });
    return isMuch ? [left, step('freeBed'), step('shimLowPlace')] : [left];
  }
  if (!ask.known('F')) return ask.choice('judge') === 'tilt' ? [] : [step('threePoints')];
  const left = {
    by: ask.quantity('F'),
    high: { point: ask.number('k_h'), by: ask.quantity('e_h') },
    low: { point: ask.number('k_l'), by: ask.quantity('e_l') },
  };
  const state = ask.check('F');
  if (state === 'within') return [step('leftOver', left)];
  if (state === 'too close') return [step('leftOverUnsure', left)];
  return [step('leftOver', left), step('freeBed'), step('shimLowPlace')];
}

/** A first layer that takes up what is left, once all else is done; undefined where none does, or none is needed. */
function thickerLayer(ask: Ask, done: Effect): Amount | undefined {
  const changes = Object.fromEntries(Object.entries(done).filter(([, value]) => typeof value === 'number')) as Record<
    'h_1',
    number
  >;
  if (ask.after(changes) === 'within') return undefined;
  const now = ask.number('h_1');
  const first = Math.floor(now / LAYER.step + 1e-6) + 1;
  for (let n = first; n * LAYER.step <= LAYER.most + 1e-9; n += 1) {
    const h_1 = Number((n * LAYER.step).toPrecision(6));
    if (ask.after({ ...changes, h_1 }) === 'within') {
      return exact(h_1, length.mm);
    }
  }
  return undefined;
}

function leaveIt(ask: Ask): Order {
  const flat = ask.check('F');
  if (flat === 'beyond') {
    const to = thickerLayer(ask, {});
    const steps = [...warpSteps(ask), ...(to ? [step('elseThicker', { to })] : [])];
    if (!to) return tell('turnNothing', { left: ask.quantity('F') }, { steps });
    return tell('thickerLayer', { left: ask.quantity('F'), to }, { steps, effect: { h_1: to.si } });
  }
  if (flat === 'too close') {
    return tell('flatUnsure', {}, { steps: [...warpSteps(ask), step('pointsFinerTool')], measureAgain: true });
  }
  return tell('leave', {}, { steps: [step('leans', { lean: leaning(ask) }), ...warpSteps(ask), step('note')] });
}

const turnOf = ({ way }: Adjuster, set: number) => {
  const { turns, rest } = wholeTurns(set);
  return { way, turns, rest: exact(rest, angle.deg) };
};

function turnSteps(ask: Ask, all: readonly Adjuster[]): readonly Told[] {
  const last = lastOf(ask, all);
  const bySize = [...all].sort((a, b) => Math.abs(b.wanted) - Math.abs(a.wanted));
  const steps: Told[] = last ? [step('fourthLast', { at: last.at })] : [];
  for (const one of bySize) {
    if (one === last || one.set === undefined) continue;
    steps.push(step('turnBy', { at: one.at, turn: turnOf(one, one.set), raises: one.wanted > 0 }));
  }
  if (last) {
    steps.push(
      last.set === undefined
        ? step('returnLast', { at: last.at, why: 'small' })
        : step('turnLastBy', { at: last.at, turn: turnOf(last, last.set) }),
    );
  }
  for (const one of all) {
    if (one === last || one.set !== undefined) continue;
    steps.push(step('leaveOne', { at: one.at, why: still(one) ? 'still' : 'small' }));
  }
  return steps;
}

/** What every point reads once the adjusters are turned: the plate follows three of them, or all four where it twists. */
function readAfter(ask: Ask, all: readonly Adjuster[]): Effect {
  const last = lastOf(ask, all);
  const carry = all.filter((one) => one !== last).slice(0, twists(ask) ? 4 : 3);
  const perRadian = ask.number('P_s') / (2 * Math.PI);
  const lifts = carry.map(({ wanted, set = 0 }) => Math.sign(wanted) * set * perRadian);
  const lift = liftThrough(
    carry.map(({ place }) => place),
    lifts,
  );
  const up = ask.choice('by') === 'gap' ? -1 : 1;
  const after: Record<string, number> = {};
  for (let n = 1; lift && n <= MOST_POINTS; n += 1) {
    if (!ask.has(`z_${n}`) || !ask.has(`x_${n}`) || !ask.has(`y_${n}`)) continue;
    after[`z_${n}`] = ask.number(`z_${n}`) + up * lift(ask.number(`x_${n}`), ask.number(`y_${n}`));
  }
  return after;
}

/** Less than this of the bed's middle, in metres, needs no new first layer. */
const NO_LIFT = 5e-6;

function middle(ask: Ask): Told {
  const lift = ask.number('dh_m');
  if (Math.abs(lift) < NO_LIFT) return step('middleKeeps');
  return step('middleMoves', { raises: lift > 0, by: ask.quantity('dh_m') });
}

const nothingToTurn = (ask: Ask, all: readonly Adjuster[]): Order => {
  const to = thickerLayer(ask, {});
  const steps = [step('leans', { lean: leaning(ask) }), ...turnSteps(ask, all), ...warpSteps(ask)];
  if (!to) return tell('finerThread', {}, { steps });
  return tell('coarseThread', { to }, { steps, effect: { h_1: to.si } });
};

function turnThem(ask: Ask, all: readonly Adjuster[]): Order {
  const moved = [...all].filter(({ set }) => set !== undefined).sort((a, b) => Math.abs(b.wanted) - Math.abs(a.wanted));
  const [first] = moved;
  if (first?.set === undefined) return nothingToTurn(ask, all);
  const last = lastOf(ask, all);
  // In the order of the steps: the fourth of a stiff plate comes last, to touch, even where it goes back to where it stood.
  const inOrder = [...moved.filter((one) => one !== last), ...(last ? [last] : [])];
  const movements = inOrder.map((one): Movement => ({
    part: `${one.at.name} adjuster`,
    direction: one.way,
    amount: one.set ?? 0,
  }));
  const effect = readAfter(ask, all);
  const to = thickerLayer(ask, effect);
  return tell(
    'turnSet',
    { at: first.at, turn: turnOf(first, first.set), more: moved.length - 1, thicker: to },
    {
      steps: [
        step('liftNozzle', { lean: leaning(ask) }),
        ...twistSteps(ask),
        ...(ask.choice('build') === 'nut' ? [step('fromAbove')] : []),
        ...turnSteps(ask, all),
        middle(ask),
        ...(to ? [step('thickerToo', { to })] : []),
        step('measureAll'),
        ...warpSteps(ask),
      ],
      movements,
      effect: to ? { ...effect, h_1: to.si } : effect,
    },
  );
}

/** Adjusters that would stand past the middle of the bed, each on the side of the other; or two at one place. */
export function contradiction(ask: Ask): Contradiction | undefined {
  const layout = ask.choice('layout');
  if (layout === 'three' || layout === 'four') return undefined;
  const [inset, least] = [ask.number('b_a'), Math.min(ask.number('W'), ask.number('D'))];
  if (2 * inset < least) return undefined;
  return contradict('pastMiddle', { inset: ask.quantity('b_a') }, [
    'b_a',
    ask.number('W') <= ask.number('D') ? 'W' : 'D',
  ]);
}

/** Which adjuster, which way, how far, in which order; and what is left over. */
export function action(ask: Ask): Order {
  const tilt = tiltState(ask);
  if (tilt === 'beyond') return turnThem(ask, adjusters(ask));
  if (tilt === 'too close') {
    return tell(
      'again',
      {},
      {
        steps: [step('leansInDoubt', { lean: leaning(ask) }), step('finerTool'), ...warpSteps(ask)],
        measureAgain: true,
      },
    );
  }
  // Asked for so that the screen says what the plane still waits for.
  ask.number('t_p');
  if (ask.check('F') === 'beyond' && twists(ask)) {
    const all = adjusters(ask);
    if (all.some(({ set }) => set !== undefined)) return turnThem(ask, all);
  }
  return leaveIt(ask);
}
