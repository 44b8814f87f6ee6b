import { length, torque } from '../../quantity/kinds';
import type { AskOf } from '../../engine/calculator';
import { telling, type Amount, type Effect, type Movement, type Order, type Told } from '../../engine/order';
import { firstThat, settable } from '../../engine/settable';
import type { formulas } from './formulas';
import type { choices, inputs } from './inputs';
import { moreMicrosteps, patternOf, type Pattern } from './model';
import { rounded } from './print';
import type words from './words/en';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
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

/** Least change of friction worth naming: a gram on a pulley. Common practice, no source. */
export const LEAST_FRICTION = 1e-3;

/** Friction at which the smallest reliable move is what is allowed, N·m, for a layer of this height. */
function mostFriction(ask: Ask, h: number): number {
  return ask.number('tau_h') * Math.sin((Math.PI / 2) * Math.min(1, (ask.number('k') * h) / ask.number('q')));
}

/** Friction, as whole N·mm, that is surely low enough once all else is done; undefined where not even none is. */
function lowFriction(ask: Ask, done: { readonly h?: number }): number | undefined {
  const most = settable(
    Math.min(mostFriction(ask, done.h ?? ask.number('h')), ask.number('tau_f')),
    LEAST_FRICTION,
    'down',
  );
  return firstThat((tau_f) => ask.after({ ...done, tau_f }) === 'within', most, 0, LEAST_FRICTION);
}

/** What the drive's friction is to be brought to, where it is too much: for the words, and as what then is read. */
function freed(ask: Ask, done: { readonly h?: number }) {
  const to = lowFriction(ask, done);
  const below = aboutTorque(to ?? settable(mostFriction(ask, done.h ?? ask.number('h')), LEAST_FRICTION, 'down'));
  const movement: Movement = {
    part: 'friction of the Z drive',
    direction: 'down',
    amount: Math.max(0, ask.number('tau_f') - (to ?? 0)),
  };
  return {
    words: { below },
    effect: to === undefined ? {} : { tau_f: to },
    movements: to === undefined ? [] : [movement],
  };
}

const freeing = (ask: Ask) => freed(ask, {}).words;

/** What microsteps would leave of the rounding, where they leave little enough; `most` is undefined for none at all. */
function leftByMicrosteps(ask: Ask): { readonly most: Amount | undefined } | undefined {
  const finest = patternOf(ask.number('h'), ask.number('q_m')).largest;
  if (ask.choice('grid') !== 'full' || ask.number('m') <= 1 || finest > ask.number('e_lim')) return undefined;
  return { most: finest === 0 ? undefined : about(finest) };
}

/** No whole step lies near enough to the layer: the drive has to change, not the layer. */
function tooCoarse(ask: Ask, pattern: Pattern): Order {
  const [h, g] = [ask.number('h'), ask.number('g')];
  const finer = ask.choice('grid') === 'micro' ? finerSetting(ask) : undefined;
  const left = leftByMicrosteps(ask);
  const finest = 2 * ask.number('k_h') * h;
  const times = Number((Math.ceil((g / finest) * 10) / 10).toFixed(1));
  const below = pattern.below === undefined ? undefined : exactly(pattern.below);
  const nearest = step('nearestSteps', { to: exactly(h), below, above: exactly(pattern.above) });
  if (finer !== undefined) {
    return tell(
      'setMicrosteps',
      { to: finer },
      {
        steps: [nearest, step('friction', microstep(ask)), repeating(pattern, h)],
        movements: [{ part: 'microsteps', direction: 'up', amount: finer - ask.number('m') }],
        effect: { m: finer },
      },
    );
  }
  return tell(
    'tooCoarse',
    { grid: ask.choice('grid') },
    {
      steps: [
        nearest,
        ...(left === undefined ? [] : [step('whereHeld', left)]),
        step('gearDown', { times, to: about(finest) }),
        step('friction', microstep(ask)),
        repeating(pattern, h),
      ],
    },
  );
}

/** The least doubling of the microsteps after which all is within; undefined where none is. */
export function finerSetting(ask: Ask): number | undefined {
  return moreMicrosteps(ask.number('m')).find((m) => ask.after({ m }) === 'within');
}

/** The nearest height of whole steps, and by how much it is off. */
export function nearestHeight(ask: Ask): { readonly to: number; readonly by: number } {
  const h = ask.number('h');
  const { below, above } = patternOf(h, ask.number('g'));
  const to = below !== undefined && h - below <= above - h ? below : above;
  return { to, by: Math.abs(to - h) };
}

function changeHeight(ask: Ask, pattern: Pattern, stuck: boolean): Order {
  const h = ask.number('h');
  const grid = ask.choice('grid');
  const { below, above } = pattern;
  const { to, by } = nearestHeight(ask);
  const lower = to < h;
  // A share met exactly is allowed, whatever a float makes of it.
  if (by > ask.number('k_h') * h * (1 + 1e-9)) return tooCoarse(ask, pattern);
  const other = lower ? above : below;
  const left = leftByMicrosteps(ask);
  const free = stuck || ask.after({ h: to }) !== 'within' ? freed(ask, { h: to }) : undefined;
  const effect: Effect = { h: to, ...free?.effect };
  return tell(
    'setHeight',
    { to: exactly(to), by: exactly(by), lower, grid },
    {
      steps: [
        other === undefined
          ? step('noneBelow', { grid, travel: ask.quantity('g') })
          : step('otherHeight', { to: exactly(other), by: exactly(Math.abs(other - h)), lower: !lower }),
        step('threeQuarters'),
        repeating(pattern, h),
        ...(left === undefined ? [] : [step('leaveIfHeld', { ...left, ...microstep(ask) })]),
        ...(free ? [step('frictionToo', free.words)] : []),
      ],
      movements: [{ part: 'layer height', direction: lower ? 'down' : 'up', amount: by }, ...(free?.movements ?? [])],
      effect,
    },
  );
}

/** Friction keeps the drive from where it should be. */
function free(ask: Ask): Order {
  const { words: below, effect, movements } = freed(ask, {});
  const steps = [step('freeing', below), step('ratedCurrent'), step('friction', microstep(ask))];
  const rest = movements.length > 0 ? { steps, movements, effect } : { steps };
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
  for (const symbol of ['q', 'q_m', 'm', 'tau_h', 'e_lim', 'tau_inc'] as const) ask.need(symbol);
  const rounding = ask.check('s');
  const friction = ask.check('x_f');
  const stuck = friction === 'beyond' || friction === 'none';
  if (rounding === 'beyond') return changeHeight(ask, patternOf(h, ask.number('g')), stuck);
  if (stuck) return free(ask);
  if (rounding !== 'within') return tell('enterMarked', {}, { steps: [step('nominal')], measureAgain: true });
  if (friction === 'too close') {
    return tell(
      'measureFriction',
      {},
      { steps: [step('cannotTell'), step('freeing', freeing(ask))], measureAgain: true },
    );
  }
  return leave(ask);
}
