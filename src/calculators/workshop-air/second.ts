import type { Movement } from '../../engine/order';
import { numberSeen, type Seen, type SecondModel } from '../../engine/second';

const ZERO = 273.15;

type Given = Readonly<Record<string, Seen>>;

/** Saturation pressure, hPa at °C, by formulas other than the check's: over water, and over ice where it freezes. */
const over = (t: number): number =>
  t < 0
    ? 6.1115 * Math.exp(((23.036 - t / 333.7) * t) / (279.82 + t))
    : 6.116441 * 10 ** ((7.591386 * t) / (t + 240.7263));

/** A part that warms in the room's air, a little each minute, until the thermometer on it shows what was waited for. */
function waited(given: Given, movements: readonly Movement[]): number {
  const [start, air] = [numberSeen(given, 'T_s'), numberSeen(given, 'T')];
  const until = start + movements.reduce((sum, { amount }) => sum + amount, 0);
  let T = start;
  for (let minute = 0; T < until && minute < 1e5; minute += 1) T = Math.min(T + (air - T) / 60 + 1e-4, until, air);
  // Over water by the hygrometer, at the room's temperature; settled over ice or water at the part's.
  const vapour = numberSeen(given, 'U') * 6.116441 * 10 ** ((7.591386 * (air - ZERO)) / (air - ZERO + 240.7263));
  if (over(T - ZERO) < vapour) throw new Error(`water settles on it at ${T} K`);
  return T;
}

const turned = (movements: readonly Movement[], from: number): number =>
  movements.reduce((at, { direction, amount }) => at + (direction === 'cooler' ? -amount : amount), from);

/** Heights of nozzle and bed above the foot, joint by joint, at a temperature above that at which they met. m. */
function gapAt(given: Given, choices: Readonly<Record<string, string>>, warmer: number): number {
  const grown = (symbol: string) => 1 + numberSeen(given, symbol) * warmer;
  const upright = numberSeen(given, 'l_f');
  if (choices.zero === 'switch') return upright * grown('alpha_f') - upright * grown('alpha_r');
  const [screw, held] = [numberSeen(given, 'l_s'), choices.lift?.endsWith('foot') ? 1 : -1];
  const [top, side] = [held * screw * grown('alpha_s'), held * upright * grown('alpha_f')];
  const onScrew = choices.lift?.startsWith('nozzle');
  const [nozzle, bed] = onScrew ? [top, side] : [side, top];
  // What hangs from the one and stands on the other fills the rest, so that they met when zero was set.
  const rest = onScrew ? held * (screw - upright) : held * (upright - screw);
  return nozzle - bed - rest * grown('alpha_r');
}

/** Zero as it stands after it was moved, told by the temperature at which the machine would have it so. */
function zeroed(given: Given, choices: Readonly<Record<string, string>>, movements: readonly Movement[]): number {
  const [was, now] = [numberSeen(given, 'T_1'), numberSeen(given, 'T_2')];
  const gap = gapAt(given, choices, now - was);
  const left = movements.reduce((at, { direction, amount }) => at + (direction === 'nearer' ? -amount : amount), gap);
  return now - (left * (now - was)) / gap;
}

/** The cold part, the box and the frame once more: warmed by the minute, set by a dial, added up joint by joint. */
const second: SecondModel = {
  carry: ({ given, choices, movements }): Readonly<Record<string, number>> => {
    if (choices.ask === 'cold') return { T_s: waited(given, movements) };
    if (choices.ask === 'swing') return { T_1: zeroed(given, choices, movements) };
    const T_b = turned(movements, numberSeen(given, 'T_b'));
    if (T_b > numberSeen(given, 'T_g')) throw new Error(`softened at ${T_b} K`);
    return { T_b };
  },
};
export default second;
