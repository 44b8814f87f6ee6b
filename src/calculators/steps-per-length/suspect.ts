import { formatNumber } from '../../quantity/format';
import type { Ask } from './asked';

/** Leads that screws are made with, mm; the last five of inch screws. Common practice, no source. */
const LEADS = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 1.27, 2.54, 3.175, 5.08, 6.35];
/** Pitches of toothed belts, mm: metric, and those of inch. */
const PITCHES = [2, 2.032, 2.5, 3, 5, 5.08];
/** A count that agrees to this share may be it, whatever the doubt. */
const NEAR = 0.003;

type Kind = 'set' | 'entered' | 'moved';

const START: Readonly<Record<Kind, string>> = {
  set: 'The number set would suit',
  entered: 'The number set, which moves right, suits',
  moved: 'It moves like',
};

/**
 * What one wrong part would explain a travel that is `times` what the parts make: as sentences, none where nothing fits.
 *
 * @param times for a number set, set over counted: a larger number is fewer mm a turn; for a travel, moved over counted
 * @param doubt half-width of it, as a share
 */
export function suspicion(ctx: Ask, times: number, doubt: number, kind: Kind): string[] {
  const perTurn = kind === 'moved' ? times : 1 / times;
  const near = (a: number, b: number): boolean => Math.abs(a / b - 1) <= Math.max(doubt, NEAR);
  const axis = ctx.choice('axis');
  const micro = axis === 'feed' ? ctx.number('m_e') : ctx.number(axis === 'z' || axis === 'zb' ? 'm_z' : 'm_b');
  const found: string[] = [];
  const other = [1, 2, 4, 8, 16, 32, 64, 128, 256].find((m) => m !== micro && near(micro / m, perTurn));
  if (other !== undefined) found.push(`a driver at ${other} microsteps in place of ${micro}`);
  if (near(perTurn, 2) || near(perTurn, 0.5)) {
    found.push(`a motor with full steps ${perTurn > 1 ? 'twice' : 'half'} as large (1.8° and 0.9°)`);
  }
  const say = (x: number): string => formatNumber(x, 4, ctx.mark);
  if (axis === 'z') {
    const lead = ctx.number('P_h') * 1e3;
    const one = LEADS.find((l) => l !== lead && near(l, lead * perTurn));
    if (one !== undefined) found.push(`a screw of ${say(one)} mm lead in place of ${say(lead)} mm`);
  } else if (axis !== 'feed') {
    const [p, z] = axis === 'zb' ? (['p_z', 'z_z'] as const) : (['p', 'z'] as const);
    const [pitch, teeth] = [ctx.number(p) * 1e3, ctx.number(z)];
    const count = Math.round(teeth * perTurn);
    if (count !== teeth && count >= 8 && near(count, teeth * perTurn)) {
      found.push(`a pulley of ${count} teeth in place of ${teeth}`);
    }
    const one = PITCHES.find((x) => Math.abs(x / pitch - 1) > NEAR && near(x, pitch * perTurn));
    if (one !== undefined) found.push(`a belt of ${say(one)} mm pitch in place of ${say(pitch)} mm`);
  }
  return found.length === 0 ? [] : [`${START[kind]} ${found.join(', or ')}: look there first.`];
}
