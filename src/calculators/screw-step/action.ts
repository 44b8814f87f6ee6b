import { length, torque } from '../../quantity/kinds';
import type { AskOf } from '../../engine/calculator';
import { telling, type Amount, type Order, type Told } from '../../engine/order';
import type { formulas } from './formulas';
import type { choices, inputs } from './inputs';
import { patternOf, type Pattern } from './model';
import { rounded } from './print';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

const exactly = (si: number): Amount => rounded(si, length.mm);
const about = (si: number): Amount => rounded(si, length.mm, 3);
const aboutTorque = (si: number): Amount => rounded(si, torque.N_mm, 3);

/** How often an odd layer comes and when it all begins again. */
function repeating(pattern: Pattern, h: number): Told {
  const { repeat, period, oddEvery } = pattern;
  if (oddEvery === undefined) return step('noneRounded');
  if (repeat === undefined || period === undefined) return step('noRepeat', { odd: about(oddEvery) });
  const oncePerRepeat = Math.round(oddEvery / h) === repeat;
  const odd = oncePerRepeat ? undefined : about(oddEvery);
  return step('repeats', { layers: repeat, period: about(period), odd });
}

/** What friction makes of a single microstep. */
function microstep(ask: Ask) {
  return {
    swallowed: ask.number('tau_f') > ask.number('tau_inc'),
    friction: ask.quantity('tau_f'),
    lag: aboutTorque(ask.number('tau_inc')),
  };
}

/** Friction at which the smallest reliable move is what is allowed, N·m. */
function mostFriction(ask: Ask): number {
  return ask.number('tau_h') * Math.sin((Math.PI / 2) * Math.min(1, ask.number('e_lim') / ask.number('q')));
}

const freeing = (ask: Ask) => ({ below: aboutTorque(mostFriction(ask)) });

/** What microsteps would leave of the rounding, where they leave little enough; `most` is undefined for none at all. */
function leftByMicrosteps(ask: Ask): { readonly most: Amount | undefined } | undefined {
  const finest = patternOf(ask.number('h'), ask.number('q_m')).largest;
  if (ask.choice('grid') !== 'full' || ask.number('m') <= 1 || finest > ask.number('e_lim')) return undefined;
  return { most: finest === 0 ? undefined : about(finest) };
}

/** No whole step lies near enough to the layer: the drive has to change, not the layer. */
function tooCoarse(ask: Ask, pattern: Pattern): Order {
  const [h, g] = [ask.number('h'), ask.number('g')];
  const left = leftByMicrosteps(ask);
  const finest = 2 * ask.number('k_h') * h;
  const times = Number((Math.ceil((g / finest) * 10) / 10).toFixed(1));
  const below = pattern.below === undefined ? undefined : exactly(pattern.below);
  return tell(
    'tooCoarse',
    { grid: ask.choice('grid') },
    {
      steps: [
        step('nearestSteps', { to: exactly(h), below, above: exactly(pattern.above) }),
        ...(left === undefined ? [] : [step('whereHeld', left)]),
        step('gearDown', { times, to: about(finest) }),
        step('friction', microstep(ask)),
        repeating(pattern, h),
      ],
    },
  );
}

function changeHeight(ask: Ask, pattern: Pattern): Order {
  const h = ask.number('h');
  const grid = ask.choice('grid');
  const { below, above } = pattern;
  const lower = below !== undefined && h - below <= above - h;
  const nearer = lower ? below : above;
  const by = Math.abs(nearer - h);
  // A share met exactly is allowed, whatever a float makes of it.
  if (by > ask.number('k_h') * h * (1 + 1e-9)) return tooCoarse(ask, pattern);
  const other = lower ? above : below;
  const left = leftByMicrosteps(ask);
  return tell(
    'setHeight',
    { to: exactly(nearer), by: exactly(by), lower, grid },
    {
      steps: [
        other === undefined
          ? step('noneBelow', { grid, travel: ask.quantity('g') })
          : step('otherHeight', { to: exactly(other), by: exactly(Math.abs(other - h)), lower: !lower }),
        step('threeQuarters'),
        repeating(pattern, h),
        ...(left === undefined ? [] : [step('leaveIfHeld', { ...left, ...microstep(ask) })]),
      ],
      movements: [{ part: 'layer height', direction: lower ? 'down' : 'up', amount: by }],
    },
  );
}

/** Friction keeps the drive from where it should be. */
function free(ask: Ask): Order {
  const rest = {
    steps: [step('freeing', freeing(ask)), step('ratedCurrent'), step('friction', microstep(ask))],
    movements: [
      {
        part: 'friction of the Z drive',
        direction: 'down',
        amount: Math.max(0, ask.number('tau_f') - mostFriction(ask)),
      },
    ],
  };
  return ask.check('x_f') === 'none' ? tell('freeFirst', {}, rest) : tell('free', { rests: ask.quantity('x_f') }, rest);
}

function leave(ask: Ask): Order {
  const h = ask.number('h');
  const pattern = patternOf(h, ask.number('g'));
  const steps = [step('friction', microstep(ask)), step('ownError', { error: ask.quantity('x_a') })];
  if (pattern.repeat === 1) return tell('leaveWhole', { grid: ask.choice('grid') }, { steps });
  return tell('leaveNearly', { most: ask.quantity('e') }, { steps: [repeating(pattern, h), ...steps] });
}

/** What to do about the layer height and the drive, for every state of the two checks. */
export function instruct(ask: Ask): Order {
  const h = ask.number('h');
  // Asked first, so that a missing value is named whatever the checks say.
  for (const symbol of ['q', 'q_m', 'm', 'tau_h', 'e_lim', 'tau_inc'] as const) ask.number(symbol);
  const rounding = ask.check('s');
  const friction = ask.check('x_f');
  const stuck = friction === 'beyond' || friction === 'none';
  if (rounding === 'beyond') {
    const found = changeHeight(ask, patternOf(h, ask.number('g')));
    return stuck ? { ...found, steps: [...found.steps, step('frictionToo', freeing(ask))] } : found;
  }
  if (stuck) return free(ask);
  if (rounding !== 'within') return tell('enterMarked', {}, { steps: [step('nominal')] });
  if (friction === 'too close') {
    return tell('measureFriction', {}, { steps: [step('cannotTell'), step('freeing', freeing(ask))] });
  }
  return leave(ask);
}
