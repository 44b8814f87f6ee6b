import { telling, type Movement, type Order } from '../../engine/order';
import { settable } from '../../engine/settable';
import type { Ask } from './asking';
import { cutOff, proving } from './proving';
import type words from './words/en';

const { tell, step } = telling<typeof words>();

/** Windows are set in whole seconds. */
const SECOND = 1;
/** Hystereses are set in halves of a kelvin. */
const HALF_KELVIN = 0.5;
/** A hysteresis below this gives alarms of its own: readings of a held block wander by as much (common practice), K. */
const CALM = 2;

/** Window and hysteresis that a watchdog passes with, whatever the doubt. */
interface Setting {
  readonly W: number;
  readonly H: number;
}

/** The largest window that is surely quick enough and surely keeps the block below what the weakest part stands, s. */
function most(ask: Ask): number {
  const falls = ask.known('t_d')?.high ?? ask.number('t_d');
  const late = ask.known('t_p')?.low ?? Infinity;
  return settable(Math.min(ask.number('t_max'), late) - falls - ask.quantity('W').width, SECOND, 'down');
}

/** What surely passes, changing as little as may be; undefined where nothing that can be set does. */
function settingFor(ask: Ask): Setting | undefined {
  const [W, H, largest] = [ask.number('W'), ask.number('H'), most(ask)];
  if (largest < SECOND || ask.number('T_w') >= ask.number('T_p')) return undefined;
  // A healthy block's slowest rise in a second, at the least.
  const rise = (ask.known('dT_W')?.low ?? ask.number('dT_W')) / (W + ask.quantity('W').width);
  const [margin, doubt] = [ask.number('f_H'), ask.quantity('H').width];
  const highest = (seconds: number): number =>
    settable(Math.max((seconds * rise) / margin - doubt, 0), HALF_KELVIN, 'down');
  const least = settable((margin * (H + doubt)) / Math.max(rise, Number.EPSILON), SECOND, 'up');
  if (W <= largest && highest(W) >= Math.min(H, CALM)) return { W, H: Math.min(H, highest(W)) };
  if (least <= largest) return { W: Math.min(Math.max(W, least), largest), H };
  const lower = highest(Math.min(Math.max(W, largest), largest));
  return lower >= HALF_KELVIN ? { W: largest, H: Math.min(H, lower) } : undefined;
}

function movementsTo(ask: Ask, { W, H }: Setting): Movement[] {
  const [window, hysteresis] = [W - ask.number('W'), H - ask.number('H')];
  const moved = (part: string, by: number): Movement[] =>
    by === 0 ? [] : [{ part, direction: by < 0 ? 'lower' : 'raise', amount: Math.abs(by) }];
  return [...moved('window', window), ...moved('hysteresis', hysteresis)];
}

/** What to do about a watchdog that is too slow, or gives false alarms. */
export function watchdog(ask: Ask): Order {
  const acts = { after: ask.quantity('t_x'), at: ask.quantity('T_x') };
  const set = settingFor(ask);
  if (!set) return tell('doNotUse', acts, { steps: [step('colderOrWeaker'), step('failedClosed'), ...cutOff(ask)] });
  const { steps: tests, heats } = proving(ask);
  const fit = ask.choice('cutoff') === 'none' ? cutOff(ask) : [];
  const movements = movementsTo(ask, set);
  const [from, was] = [ask.quantity('W'), ask.quantity('H')];
  const effect = { ...(set.W === from.si ? {} : { W: set.W }), ...(set.H === was.si ? {} : { H: set.H }) };
  const rest = { movements, effect, heats };
  const rise = ask.quantity('dT_W');
  const after = [step('failedClosed'), ...fit, ...tests];
  if (set.W === from.si)
    return tell(
      'lowerHysteresis',
      { to: set.H, rise },
      { ...rest, steps: [step('neverOff'), step('coverIt'), ...after] },
    );
  if (set.H !== was.si)
    return tell(
      'setBoth',
      { ...acts, window: set.W, hysteresis: set.H, rise },
      { ...rest, steps: [step('neverOff'), ...after] },
    );
  if (set.W > from.si)
    return tell(
      'lengthenWindow',
      { from, to: set.W, rise },
      { ...rest, steps: [step('neverOff'), step('staysQuick'), ...after] },
    );
  return tell('shortenWindow', { ...acts, from, to: set.W }, { ...rest, steps: [step('clearsStill'), ...after] });
}

/** Whether it is quick enough is open: what would settle it. */
export function quickEnough(ask: Ask): Order {
  const { steps, heats } = proving(ask);
  const set = settingFor(ask);
  const from = ask.quantity('W');
  const sure = set && set.W < from.si ? [step('orShorten', { from, to: set.W })] : [];
  return tell(
    'quickEnough',
    { after: ask.quantity('t_x'), at: ask.quantity('T_x') },
    { steps: [...sure, step('failedClosed'), ...steps], measureAgain: true, heats },
  );
}
