import { telling, type Heats, type Told } from '../../engine/order';
import { settable } from '../../engine/settable';
import type { Ask } from './asking';
import type words from './words/en';

const { step } = telling<typeof words>();

/** 0 °C, K. */
const ZERO = 273.15;
/** How far above the working temperature a cut-off has to hold: a loop overshoots (common practice), K. */
const CLEARANCE = 10;
/** Cut-offs are made and chosen in steps of this, K. */
const GRADE = 5;

/** The least that the weakest part surely stands, K. */
const bears = (ask: Ask): number => ask.known('T_p')?.low ?? ask.number('T_p');

interface Proving {
  readonly steps: readonly Told[];
  readonly heats: readonly Heats[];
}

/** The two real tests with their pass marks; a test that would itself do the damage it looks for is withheld, and said so. */
export function proving(ask: Ask): Proving {
  const [to, least] = [ask.quantity('T_w'), bears(ask)];
  if (to.si > least) return { steps: [step('testsWithheld', { to, bears: ask.quantity('T_p') })], heats: [] };
  const healthy = step('testHealthy', { to, after: ask.quantity('t_w') });
  const block = ask.quantity('T_c');
  const hottest = ask.known('T_c')?.high ?? block.si;
  const within = ask.quantity('t_max');
  if (hottest > least) {
    const withheld = step('sensorOutWithheld', { within, block, bears: ask.quantity('T_p') });
    return { steps: [healthy, withheld], heats: [{ to: to.si, bears: least }] };
  }
  return {
    steps: [healthy, step('testSensorOut', { to, within, block })],
    heats: [to.si, hottest].map((hot) => ({ to: hot, bears: least })),
  };
}

/** Holds at least so hot, °C: what a cut-off has to stand in normal use without opening. */
const holdsAt = (ask: Ask): number => settable(ask.number('T_w') + CLEARANCE - ZERO, GRADE, 'up');

/** Which cut-off to fit: by where it surely opens, and by where it surely holds. */
export function cutOff(ask: Ask): Told[] {
  const [from, to] = [holdsAt(ask), settable(bears(ask) - ZERO, GRADE, 'down')];
  const fits = to > from ? step('cutOffHolds', { holds: from, opens: to }) : step('noCutOffFits');
  return [fits, step('qualified')];
}

/** One that is fitted has to hold in normal use as well. */
export const holdsToo = (ask: Ask): Told[] =>
  ask.choice('cutoff') === 'fitted' ? [step('holdsToo', { holds: holdsAt(ask) })] : [];
