import { expanded } from '../../formula/outcome';
import type { Context, Instruction, Movement, VerdictState } from '../../engine/calculator';
import type { choices } from './choices';
import { adjusterCount, adjusterName, clockText, placeWords, wayOf, type Way } from './turning';

type Turn = 'psi_1' | 'psi_2' | 'psi_3' | 'psi_4';
type Place = 'X_1' | 'Y_1' | 'X_2' | 'Y_2' | 'X_3' | 'Y_3' | 'X_4' | 'Y_4';
type Symbols =
  | Turn
  | Place
  | 't_p'
  | 't_q'
  | 't_x'
  | 't_y'
  | 'dh_m'
  | 'F'
  | 'e_h'
  | 'e_l'
  | 'e_r'
  | 'k_h'
  | 'k_l'
  | 'phi_h'
  | 'W'
  | 'D';
type Ask = Context<Symbols, typeof choices>;

const TURNS: readonly Turn[] = ['psi_1', 'psi_2', 'psi_3', 'psi_4'];
const PLACES: readonly (readonly [Place, Place])[] = [
  ['X_1', 'Y_1'],
  ['X_2', 'Y_2'],
  ['X_3', 'Y_3'],
  ['X_4', 'Y_4'],
];
/** A turn smaller than this, in radians, is none: the adjuster that all are counted from. */
const NONE = 1e-9;

interface Adjuster {
  readonly name: string;
  readonly where: string;
  readonly turn: number;
  readonly way: Way;
  /** "1/4 turn clockwise (94°)". */
  readonly text: string;
  /** Less than a hand sets, or than the readings can tell from nothing. */
  readonly leave: 'still' | 'small' | 'doubt' | undefined;
}

function adjusters(ctx: Ask): Adjuster[] {
  const layout = ctx.choice('layout');
  const named = layout === 'three' || layout === 'four';
  return TURNS.slice(0, adjusterCount(layout)).map((symbol, i) => {
    const turn = ctx.number(symbol);
    const way = wayOf(turn, ctx.choice('build'), ctx.choice('hand'));
    const [x, y] = PLACES[i] ?? ['X_1', 'Y_1'];
    const clock = clockText(turn);
    const degrees = ctx.text(symbol, { magnitude: true });
    const known = ctx.known(symbol);
    const size = Math.abs(turn);
    const leave =
      size < NONE
        ? 'still'
        : size < ctx.number('phi_h')
          ? 'small'
          : known && size <= expanded(known)
            ? 'doubt'
            : undefined;
    return {
      name: adjusterName(layout, i),
      where: named ? `, ${placeWords(ctx.number(x), ctx.number(y), ctx.number('W'), ctx.number('D'))}` : '',
      turn,
      way,
      text: clock === '' ? `${degrees} ${way}` : `${clock} ${way} (${degrees})`,
      leave,
    };
  });
}

const tiltState = (ctx: Ask): VerdictState => {
  const states = [ctx.check('t_p'), ctx.check('t_q')];
  return (['beyond', 'none', 'too close'] as const).find((state) => states.includes(state)) ?? 'within';
};

/** "rises 0.20 mm from left to right, falls 0.08 mm from front to back". */
function leaning(ctx: Ask): string {
  const part = (symbol: 't_x' | 't_y', from: string): string =>
    `${ctx.number(symbol) >= 0 ? 'rises' : 'falls'} ${ctx.text(symbol, { magnitude: true })} ${from}`;
  return `${part('t_x', 'from left to right')}, ${part('t_y', 'from front to back')}`;
}

/** What no screw can fix, as steps. */
function warpSteps(ctx: Ask): string[] {
  const state = ctx.check('F');
  if (!ctx.known('F')) {
    return ctx.choice('judge') === 'tilt'
      ? []
      : ['Three points always lie in a plane: to see warp take a fourth, or pick “tilt alone”.'];
  }
  const where = `point ${ctx.number('k_h')} lies ${ctx.text('e_h', { magnitude: true })} above the plane, point ${ctx.number('k_l')} ${ctx.text('e_l', { magnitude: true })} below it`;
  const what = `${ctx.text('F')} from top to bottom is left that no screw can fix: ${where}.`;
  if (state === 'within') return [what];
  if (state === 'too close') return [`${what} Whether that is too much cannot be told from these readings.`];
  return [
    what,
    'Take off a bed that is clamped or screwed down, look for dirt or plastic beneath, and slacken any adjuster that strains it; measure again.',
    'If it stays: shim the low place from beneath the loose plate, change the plate, or print a thicker first layer.',
  ];
}

function leaveIt(ctx: Ask): Instruction {
  const flat = ctx.check('F');
  if (flat === 'beyond') {
    return {
      headline: `Turn nothing: the tilt is within its limit, but ${ctx.text('F')} of warp is left that no screw can fix.`,
      steps: warpSteps(ctx),
      movements: [],
    };
  }
  if (flat === 'too close') {
    return {
      headline:
        'Leave the adjusters: the tilt is within its limit. Whether the bed is flat enough is too close to call.',
      steps: [...warpSteps(ctx), 'Measure the points again with a finer tool, each twice.'],
      movements: [],
      measureAgain: true,
    };
  }
  return {
    headline: 'Leave it: the bed is level enough.',
    steps: [`As measured, it ${leaning(ctx)}.`, ...warpSteps(ctx), 'Note the reading for this machine.'],
    movements: [],
  };
}

const full = ({ name, where }: Adjuster): string => `${name} adjuster${where}`;

const REASONS = {
  still: 'the others are counted from it',
  small: 'less than a hand can set',
  doubt: 'less than these readings can tell',
} as const;

function turnSteps(all: readonly Adjuster[]): { readonly steps: string[]; readonly moved: Adjuster[] } {
  const bySize = [...all].sort((a, b) => Math.abs(b.turn) - Math.abs(a.turn));
  const moved = bySize.filter(({ leave }) => leave === undefined);
  const steps: string[] = [];
  // With four on one plate three fix the plane; the one that moves least is brought to it.
  const turned = bySize.filter(({ turn }) => Math.abs(turn) >= NONE);
  const last = all.length === 4 && turned.length > 1 ? turned.at(-1) : undefined;
  if (last) {
    steps.push(
      `Three carry a plate, a fourth bends it: the ${full(last)} comes last. Slacken it now if it is tight, counting the turns.`,
    );
  }
  for (const one of moved) {
    if (one !== last)
      steps.push(`The ${full(one)}: ${one.text}, ${one.turn > 0 ? 'raising' : 'lowering'} the bed there.`);
  }
  if (last) {
    const by =
      last.leave === undefined ? `${last.text} from where it stood` : `back to where it stood (${REASONS[last.leave]})`;
    steps.push(`Last the ${full(last)}: ${by}, but stop where it just takes up the load without bending the plate.`);
  }
  for (const one of all) {
    if (one.leave !== undefined && one !== last) steps.push(`Leave the ${full(one)}: ${REASONS[one.leave]}.`);
  }
  return { steps, moved };
}

function beneath(ctx: Ask): string[] {
  return ctx.choice('build') === 'nut'
    ? ['Clockwise is as seen from above, through the bed; looking up from beneath it is the other way round.']
    : [];
}

/** Less than this of the bed's middle, in metres, needs no new first layer. */
const NO_LIFT = 5e-6;

function middle(ctx: Ask): string {
  const lift = ctx.number('dh_m');
  if (Math.abs(lift) < NO_LIFT) return 'The middle of the bed keeps its height; look at the first layer all the same.';
  return `This ${lift > 0 ? 'raises' : 'lowers'} the middle of the bed by ${ctx.text('dh_m', { magnitude: true })}: set the height of the first layer anew before the nozzle comes down.`;
}

function turnThem(ctx: Ask): Instruction {
  const all = adjusters(ctx);
  const { steps, moved } = turnSteps(all);
  const [first] = moved;
  if (!first) {
    return {
      headline: 'The bed leans, but no adjuster by as much as a hand can set: leave it, or use a finer thread.',
      steps: [`As measured, it ${leaning(ctx)}.`, ...steps, ...warpSteps(ctx)],
      movements: [],
    };
  }
  const more = moved.length > 1 ? `; then ${moved.length - 1} more, in the steps` : '';
  const movements: Movement[] = moved.map(({ name, way, turn }) => ({
    part: `${name} adjuster`,
    direction: way,
    amount: Math.abs(turn),
  }));
  return {
    headline: `Turn the ${first.name} adjuster ${first.text}, seen from above${more}.`,
    steps: [
      `The bed ${leaning(ctx)}. Lift the nozzle well clear first.`,
      ...beneath(ctx),
      ...steps,
      middle(ctx),
      'Measure all points again and repeat: two rounds bring it in; if a third is needed, something gives or sticks.',
      ...warpSteps(ctx),
    ],
    movements,
  };
}

/** Which adjuster, which way, how far, in which order; and what is left over. */
export function action(ctx: Ask): Instruction {
  const tilt = tiltState(ctx);
  if (tilt === 'beyond') return turnThem(ctx);
  if (tilt === 'too close') {
    return {
      headline: 'Measure again before turning anything: whether the bed leans too far is too close to call.',
      steps: [
        `As measured, it ${leaning(ctx)}; the doubt of the readings is as large as what matters.`,
        'Take a finer tool, more points, or each point twice.',
        ...warpSteps(ctx),
      ],
      measureAgain: true,
    };
  }
  // Asked for so that the screen says what the plane still waits for.
  ctx.number('t_p');
  return leaveIt(ctx);
}
