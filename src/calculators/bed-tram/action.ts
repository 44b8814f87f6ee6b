import { expanded } from '../../formula/outcome';
import type { AskOf, VerdictState } from '../../engine/calculator';
import { telling, type Amount, type Movement, type Order, type Told } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type { outputs } from './model';
import { adjustersOf, clockOf, spotOf, turnFor, type AdjusterName, type Clock, type Spot, type Turn } from './turning';
import type words from './words/en';

type Ask = AskOf<{
  inputs: typeof inputs;
  choices: typeof choices;
  formulas: typeof formulas;
  outputs: typeof outputs;
}>;
const { tell, step } = telling<typeof words>();

const PLACES = [
  { turn: 'psi_1', x: 'X_1', y: 'Y_1' },
  { turn: 'psi_2', x: 'X_2', y: 'Y_2' },
  { turn: 'psi_3', x: 'X_3', y: 'Y_3' },
  { turn: 'psi_4', x: 'X_4', y: 'Y_4' },
] as const;
/** A turn smaller than this, in radians, is none: the adjuster that all are counted from. */
const NONE = 1e-9;

interface Adjuster {
  /** Its name, and where it sits where the name does not say it. */
  readonly at: { readonly name: AdjusterName; readonly spot: Spot | undefined };
  /** Radians, raising is +. */
  readonly raise: number;
  readonly turn: { readonly way: Turn; readonly by: Amount; readonly clock: Clock | undefined };
  /** Less than a hand sets, or than the readings can tell from nothing. */
  readonly leave: 'still' | 'small' | 'doubt' | undefined;
}

function adjusters(ask: Ask): Adjuster[] {
  const layout = ask.choice('layout');
  const typed = layout === 'three' || layout === 'four';
  const names = adjustersOf(layout);
  return PLACES.slice(0, names.length).map(({ turn: symbol, x, y }, i) => {
    const raise = ask.number(symbol);
    const known = ask.known(symbol);
    const size = Math.abs(raise);
    const leave =
      size < NONE
        ? 'still'
        : size < ask.number('phi_h')
          ? 'small'
          : known && size <= expanded(known)
            ? 'doubt'
            : undefined;
    return {
      at: {
        name: names[i] ?? 'first',
        spot: typed ? spotOf(ask.number(x), ask.number(y), ask.number('W'), ask.number('D')) : undefined,
      },
      raise,
      turn: {
        way: turnFor(raise, ask.choice('build'), ask.choice('hand')),
        by: ask.quantity(symbol),
        clock: clockOf(raise),
      },
      leave,
    };
  });
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

/** What no screw can fix, as steps. */
function warpSteps(ask: Ask): Told[] {
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

function leaveIt(ask: Ask): Order {
  const flat = ask.check('F');
  if (flat === 'beyond') return tell('turnNothing', { left: ask.quantity('F') }, { steps: warpSteps(ask) });
  if (flat === 'too close') {
    return tell('flatUnsure', {}, { steps: [...warpSteps(ask), step('pointsFinerTool')], measureAgain: true });
  }
  return tell('leave', {}, { steps: [step('leans', { lean: leaning(ask) }), ...warpSteps(ask), step('note')] });
}

function turnSteps(all: readonly Adjuster[]): { readonly steps: Told[]; readonly moved: Adjuster[] } {
  const bySize = [...all].sort((a, b) => Math.abs(b.raise) - Math.abs(a.raise));
  const moved = bySize.filter(({ leave }) => leave === undefined);
  // With four on one plate three fix the plane; the one that moves least is brought to it.
  const turned = bySize.filter(({ raise }) => Math.abs(raise) >= NONE);
  const last = all.length === 4 && turned.length > 1 ? turned.at(-1) : undefined;
  const steps: Told[] = last ? [step('fourthLast', { at: last.at })] : [];
  for (const one of moved) {
    if (one !== last) steps.push(step('turnOne', { at: one.at, turn: one.turn, raises: one.raise > 0 }));
  }
  if (last) {
    steps.push(
      last.leave === undefined
        ? step('turnLast', { at: last.at, turn: last.turn })
        : step('returnLast', { at: last.at, why: last.leave }),
    );
  }
  for (const one of all) {
    if (one.leave !== undefined && one !== last) steps.push(step('leaveOne', { at: one.at, why: one.leave }));
  }
  return { steps, moved };
}

/** Less than this of the bed's middle, in metres, needs no new first layer. */
const NO_LIFT = 5e-6;

function middle(ask: Ask): Told {
  const lift = ask.number('dh_m');
  if (Math.abs(lift) < NO_LIFT) return step('middleKeeps');
  return step('middleMoves', { raises: lift > 0, by: ask.quantity('dh_m') });
}

function turnThem(ask: Ask): Order {
  const all = adjusters(ask);
  const { steps, moved } = turnSteps(all);
  const [first] = moved;
  if (!first) {
    return tell('finerThread', {}, { steps: [step('leans', { lean: leaning(ask) }), ...steps, ...warpSteps(ask)] });
  }
  const movements = moved.map(({ at, turn, raise }): Movement => ({
    part: `${at.name} adjuster`,
    direction: turn.way,
    amount: Math.abs(raise),
  }));
  return tell(
    'turn',
    { name: first.at.name, turn: first.turn, more: moved.length - 1 },
    {
      steps: [
        step('liftNozzle', { lean: leaning(ask) }),
        ...(ask.choice('build') === 'nut' ? [step('fromAbove')] : []),
        ...steps,
        middle(ask),
        step('measureAll'),
        ...warpSteps(ask),
      ],
      movements,
    },
  );
}

/** Which adjuster, which way, how far, in which order; and what is left over. */
export function action(ask: Ask): Order {
  const tilt = tiltState(ask);
  if (tilt === 'beyond') return turnThem(ask);
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
  return leaveIt(ask);
}
