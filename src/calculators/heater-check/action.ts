import { formatNumber } from '../../quantity/format';
import type { Context, Instruction } from '../../engine/calculator';
import type { choices } from './choices';

type Symbols =
  | 'V' | 'W' | 'H' | 'T_w' | 'T_f' | 'T_fw' | 'T_li' | 'T_se' | 'T_bl' | 'T_no' | 't_w' | 't_x' | 't_d' | 't_p' | 'T_x'
  | 'T_c' | 'T_e' | 'T_u' | 'T_p' | 't_max' | 'dT_W' | 'H_m' | 'R_h' | 'P' | 'T_a' | 'f_H'; // prettier-ignore
export type Ask = Context<Symbols, typeof choices>;

const CLOSED =
  'No watchdog cuts a switch that has failed closed: it can only tell the switch to open. A separate thermal cut-off in the heater’s own supply does, or your hand at the supply’s switch.';
const ALONE =
  'Until then do not leave it alone while it is plugged in; smoke alarm above it, nothing that burns beside it.';
const QUALIFIED = 'On mains voltage have the cut-off fitted by a qualified person, to the local code.';

/** The largest window that is quick enough and keeps the block below what the weakest part stands; whole seconds. */
function window(ctx: Ask): number | undefined {
  const late = ctx.known('t_p')?.value;
  const most = Math.min(ctx.number('t_max'), late ?? Infinity) - ctx.number('t_d');
  return most >= 1 ? Math.floor(most) : undefined;
}

/** The two real tests with their pass marks. */
function tests(ctx: Ask): string[] {
  return [
    `Test 1, healthy: cold, someone at the switch, heat to ${ctx.text('T_w')} with the stopwatch on. Pass mark: there after ${ctx.text('t_w')}, give or take a quarter. Much slower: loose heater or sensor, weak supply, wrong heater. Much faster: a heater of too much power.`,
    `Test 2, sensor out: cold again and unplugged, take the sensor out of the block and let it hang free. Hand at the supply’s switch, plug in, set ${ctx.text('T_w')}, start the stopwatch. Pass mark: the watchdog cuts the heater within ${ctx.text('t_max')}; the block is then at about ${ctx.text('T_c')}. Not cut by then: switch off by hand, and do not use it. Cold and unplugged, put the sensor back, fixed by its screw.`,
  ];
}

const list = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;

/** What the stuck heater does to the parts, the sure before the possible: `would ruin the liner, and perhaps the block`. */
function harm(ctx: Ask): string {
  const parts = [
    ...(ctx.choice('liner') === 'ptfe' ? ([['the liner', 'T_li']] as const) : []),
    ['the sensor', 'T_se'] as const,
    ['the block', 'T_bl'] as const,
    ['the nozzle', 'T_no'] as const,
  ];
  const { low, high } = ctx.known('T_u') ?? { low: ctx.number('T_u'), high: ctx.number('T_u') };
  const sure = parts.filter(([, limit]) => low > ctx.number(limit)).map(([name]) => name);
  const perhaps = parts
    .filter(([, limit]) => low <= ctx.number(limit) && high > ctx.number(limit))
    .map(([name]) => name);
  if (sure.length === 0) return `may ruin ${list(perhaps)}`;
  return `would ruin ${list(sure)}${perhaps.length > 0 ? `, perhaps ${list(perhaps)} too` : ''}`;
}

function cutOff(ctx: Ask): string[] {
  const [low, high] = [ctx.number('T_w') + 20, ctx.number('T_p')];
  const fits =
    high > low
      ? `One that opens between ${formatNumber(low - 273.15, 3, ctx.mark)} and ${formatNumber(high - 273.15, 3, ctx.mark)} °C, clamped to the block, in series with the heater.`
      : 'No cut-off fits between the working temperature and what the weakest part stands: change that part, or work colder.';
  return [fits, `${QUALIFIED} ${ALONE}`];
}

function stuck(ctx: Ask): Instruction {
  const fitted = ctx.choice('cutoff') === 'fitted';
  if (fitted && ctx.number('T_f') <= ctx.number('T_e')) {
    return {
      headline: `Change the cut-off for one that opens lower: at ${ctx.text('T_f')} a stuck heater ${harm(ctx)} first.`,
      steps: [...cutOff(ctx), CLOSED, ...tests(ctx)],
    };
  }
  return {
    headline: `Fit a separate thermal cut-off: a heater stuck on would reach ${ctx.text('T_e')} and ${harm(ctx)}.`,
    steps: [
      CLOSED,
      ...cutOff(ctx),
      'Or fit a heater of higher resistance: ask below, the other way round, which one ends low enough.',
      ...tests(ctx),
    ],
  };
}

function slowDog(ctx: Ask): Instruction {
  const most = window(ctx);
  const facts = `it acts ${ctx.text('t_x')} after the sensor falls out, with the block at ${ctx.text('T_x')}`;
  const now = ctx.number('W');
  if (most === undefined || ctx.number('T_w') >= ctx.number('T_p')) {
    return {
      headline: `Do not use it as it is: no window is short enough (${facts}).`,
      steps: ['Work colder, fit a weaker heater, or replace the part that stands least.', CLOSED, ...cutOff(ctx)],
    };
  }
  if (most >= now) {
    return {
      headline: `Whether the watchdog is quick enough is too close to call: ${facts}.`,
      steps: [`Shorten its window from ${ctx.text('W')} where the healthy rise allows it.`, CLOSED, ...tests(ctx)],
      measureAgain: true,
    };
  }
  return {
    headline: `Shorten the watchdog’s window from ${ctx.text('W')} to ${most} s or less: ${facts}.`,
    steps: [
      'Then look again whether the healthy rise still clears the hysteresis; if not, lower the hysteresis in step.',
      CLOSED,
      ...(ctx.choice('cutoff') === 'none' ? cutOff(ctx) : []),
      ...tests(ctx),
    ],
    movements: [{ part: 'watchdog’s window', direction: 'shorten', amount: now - most }],
  };
}

function falseAlarm(ctx: Ask): Instruction {
  const most = ctx.number('dT_W') / ctx.number('f_H');
  const change = Math.max(ctx.number('H') - most, 0);
  return {
    headline: `Lower the watchdog’s hysteresis to ${formatNumber(most, 2, ctx.mark)} K: a healthy heater rises only ${ctx.text('dT_W')} in one window, near its working temperature.`,
    steps: [
      'A false alarm tempts people to switch the watchdog off: never do that.',
      'Or lengthen the window, if it stays quick enough; or cover the block against the fan.',
      CLOSED,
      ...tests(ctx),
    ],
    movements: [{ part: 'watchdog’s hysteresis', direction: 'lower', amount: change }],
  };
}

const open = (state: string): boolean => state === 'beyond' || state === 'too close';

/** What the hand does, for every state of the checks: the watchdog first, since it is set in a minute. */
export function instruct(ctx: Ask): Instruction {
  // Asked first, so that a missing value is named.
  ctx.number('t_x');
  const [quick, hot, rise, worst] = [ctx.check('t_x'), ctx.check('T_x'), ctx.check('dT_W'), ctx.number('T_u')];
  if (quick === 'beyond' || hot === 'beyond') return slowDog(ctx);
  if (rise === 'beyond') return falseAlarm(ctx);
  if (ctx.choice('cutoff') === 'fitted' && ctx.check('T_f') === 'beyond') {
    return {
      headline: `Change the cut-off for one that opens at ${ctx.text('T_fw')} or above: this one opens in normal use.`,
      steps: [...cutOff(ctx), CLOSED],
    };
  }
  const parts = ['T_li', 'T_se', 'T_bl', 'T_no'] as const;
  const limits = parts
    .filter((part) => part !== 'T_li' || ctx.choice('liner') === 'ptfe')
    .map((part) => ctx.number(part));
  const known = ctx.known('T_u');
  const least = Math.min(...limits);
  if ((known?.low ?? worst) > least) return stuck(ctx);
  if (open(quick) || open(hot)) return slowDog(ctx);
  if (open(rise)) {
    return {
      headline: `Leave the watchdog: whether it gives false alarms is too close to call (${ctx.text('dT_W')} in one window).`,
      steps: ['Time the real rise with the stopwatch, and take the loss from that curve.', CLOSED, ...tests(ctx)],
      measureAgain: true,
    };
  }
  if ((known?.high ?? worst) > least) return stuck(ctx);
  if (ctx.verdict !== 'within') {
    return {
      headline: `Leave it and look up the cut-off’s rating: whether ${ctx.text('T_f')} clears the working heat is too close to call.`,
      steps: [CLOSED, ...tests(ctx)],
      measureAgain: true,
    };
  }
  return {
    headline: `Leave it as it is and prove it: the watchdog acts after ${ctx.text('t_x')}, and a heater stuck on ends at ${ctx.text('T_u')}.`,
    steps: [...tests(ctx), CLOSED],
  };
}
