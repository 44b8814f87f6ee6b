import { telling, type Movement, type Order } from '../../engine/order';
import { settable } from '../../engine/settable';
import type { Ask } from './asking';
import { cutOff, proving } from './proving';
import type words from './words/en';

const { tell, step } = telling<typeof words>();

/** Reaction times are set in whole seconds. */
const SECOND = 1;
/** A lag or a rise is set in halves of a kelvin. */
const HALF_KELVIN = 0.5;
/** A rise below this is no sign of heat: readings of a held block wander by as much (common practice), K. */
const CALM = 2;

/** Reaction time and rise that a guard passes with, whatever the doubt; the lag stays as it is. */
interface Setting {
  readonly time: number;
  readonly rise: number;
}

/** The longest reaction time that is surely quick enough and surely keeps the block below what the weakest part stands, s. */
function most(ask: Ask): number {
  const falls = ask.known('t_d')?.high ?? ask.number('t_d');
  const late = ask.known('t_p')?.low ?? Infinity;
  return settable(Math.min(ask.number('t_max'), late) - falls - ask.quantity('t_g').width, SECOND, 'down');
}

/** What surely passes, changing as little as may be; undefined where nothing that can be set does. */
function settingFor(ask: Ask): Setting | undefined {
  const [time, wanted, largest] = [ask.number('t_g'), ask.number('dT_g'), most(ask)];
  if (largest < SECOND || ask.number('T_w') >= ask.number('T_p')) return undefined;
  // A healthy block's slowest rise in a second, at the least.
  const rise = (ask.known('dT_h')?.low ?? ask.number('dT_h')) / (time + ask.quantity('t_g').width);
  const [margin, doubt] = [ask.number('f_g'), ask.quantity('dT_g').width];
  const highest = (seconds: number): number =>
    settable(Math.max((seconds * rise) / margin - doubt, 0), HALF_KELVIN, 'down');
  const least = settable((margin * (wanted + doubt)) / Math.max(rise, Number.EPSILON), SECOND, 'up');
  if (time <= largest && highest(time) >= Math.min(wanted, CALM))
    return { time, rise: Math.min(wanted, highest(time)) };
  if (least <= largest) return { time: Math.min(Math.max(time, least), largest), rise: wanted };
  const lower = highest(largest);
  return lower >= HALF_KELVIN ? { time: largest, rise: Math.min(wanted, lower) } : undefined;
}

function movementsTo(ask: Ask, { time, rise }: Setting): Movement[] {
  const moved = (part: string, by: number): Movement[] =>
    by === 0 ? [] : [{ part, direction: by < 0 ? 'lower' : 'raise', amount: Math.abs(by) }];
  return [...moved('time', time - ask.number('t_g')), ...moved('rise', rise - ask.number('dT_g'))];
}

/** What to do about a guard that is too slow, or gives false alarms. */
export function guard(ask: Ask): Order {
  const acts = { after: ask.quantity('t_x'), at: ask.quantity('T_x') };
  const set = settingFor(ask);
  if (!set) return tell('doNotUse', acts, { steps: [step('colderOrWeaker'), step('failedClosed'), ...cutOff(ask)] });
  const { steps: tests, heats } = proving(ask);
  const fit = ask.choice('cutoff') === 'none' ? cutOff(ask) : [];
  const movements = movementsTo(ask, set);
  const [from, was] = [ask.quantity('t_g'), ask.quantity('dT_g')];
  const effect = {
    ...(set.time === from.si ? {} : { t_g: set.time }),
    ...(set.rise === was.si ? {} : { dT_g: set.rise }),
  };
  const rest = { movements, effect, heats };
  const rise = ask.quantity('dT_h');
  const after = [step('failedClosed'), ...fit, ...tests];
  if (set.time === from.si)
    return tell('lowerRise', { to: set.rise, rise }, { ...rest, steps: [step('neverOff'), step('coverIt'), ...after] });
  if (set.rise !== was.si)
    return tell(
      'setBoth',
      { ...acts, time: set.time, wanted: set.rise, rise },
      { ...rest, steps: [step('neverOff'), ...after] },
    );
  if (set.time > from.si)
    return tell(
      'lengthenTime',
      { from, to: set.time, rise },
      { ...rest, steps: [step('neverOff'), step('staysQuick'), ...after] },
    );
  return tell('shortenTime', { ...acts, from, to: set.time }, { ...rest, steps: [step('clearsStill'), ...after] });
}

/** Whether it is quick enough is open: what would settle it. */
export function quickEnough(ask: Ask): Order {
  const { steps, heats } = proving(ask);
  const set = settingFor(ask);
  const from = ask.quantity('t_g');
  const sure = set && set.time < from.si ? [step('orShorten', { from, to: set.time })] : [];
  return tell(
    'quickEnough',
    { after: ask.quantity('t_x'), at: ask.quantity('T_x') },
    { steps: [...sure, step('failedClosed'), ...steps], measureAgain: true, heats },
  );
}
