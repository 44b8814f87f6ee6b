import { telling, type Told } from '../../engine/order';
import type { Ask } from './asked';
import type words from './words/en';
import type { Start, Suspect } from './words/en';

const { step } = telling<typeof words>();

/** Leads that screws are made with, mm; the last five of inch screws. Common practice, no source. */
const LEADS = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 1.27, 2.54, 3.175, 5.08, 6.35];
/** Pitches of toothed belts, mm: metric, and those of inch. */
const PITCHES = [2, 2.032, 2.5, 3, 5, 5.08];
/** A count that agrees to this share may be it, whatever the doubt. */
const NEAR = 0.003;

/** Whether two sizes are alike, to the doubt there is. */
type Near = (a: number, b: number) => boolean;

/** A size to four digits, as parts are named by. */
const toFour = (x: number): number => Number(x.toPrecision(4));

function driver(ask: Ask, perTurn: number, near: Near): Suspect[] {
  const axis = ask.choice('axis');
  const counted = axis === 'feed' ? ask.number('m_e') : ask.number(axis === 'z' || axis === 'zb' ? 'm_z' : 'm_b');
  const fits = [1, 2, 4, 8, 16, 32, 64, 128, 256].find((m) => m !== counted && near(counted / m, perTurn));
  return fits === undefined ? [] : [{ part: 'driver', fits, counted }];
}

function screw(ask: Ask, perTurn: number, near: Near): Suspect[] {
  const lead = ask.number('P_h') * 1e3;
  const fits = LEADS.find((one) => one !== lead && near(one, lead * perTurn));
  return fits === undefined ? [] : [{ part: 'screw', fits: toFour(fits), counted: toFour(lead) }];
}

function pulleyAndBelt(ask: Ask, perTurn: number, near: Near): Suspect[] {
  const [p, z] = ask.choice('axis') === 'zb' ? (['p_z', 'z_z'] as const) : (['p', 'z'] as const);
  const [pitch, teeth] = [ask.number(p) * 1e3, ask.number(z)];
  const found: Suspect[] = [];
  const fits = Math.round(teeth * perTurn);
  if (fits !== teeth && fits >= 8 && near(fits, teeth * perTurn)) found.push({ part: 'pulley', fits, counted: teeth });
  const belt = PITCHES.find((one) => Math.abs(one / pitch - 1) > NEAR && near(one, pitch * perTurn));
  if (belt !== undefined) found.push({ part: 'belt', fits: toFour(belt), counted: toFour(pitch) });
  return found;
}

/**
 * What one wrong part would explain a travel that is `times` what the parts make; none where nothing fits.
 *
 * @param times for a number set, set over counted: a larger number is fewer mm a turn; for a travel, moved over counted
 * @param doubt half-width of it, as a share
 */
export function suspicion(ask: Ask, times: number, doubt: number, start: Start): Told[] {
  const perTurn = start === 'moved' ? times : 1 / times;
  const near: Near = (a, b) => Math.abs(a / b - 1) <= Math.max(doubt, NEAR);
  const axis = ask.choice('axis');
  const found = driver(ask, perTurn, near);
  if (near(perTurn, 2) || near(perTurn, 0.5)) found.push({ part: 'motor', twice: perTurn > 1 });
  if (axis === 'z') found.push(...screw(ask, perTurn, near));
  else if (axis !== 'feed') found.push(...pulleyAndBelt(ask, perTurn, near));
  return found.length === 0 ? [] : [step('suspect', { start, found })];
}
