import { length, torque } from '../../quantity/kinds';
import { settable } from '../../engine/settable';
import { drillName } from '../../reference/drills';
import { insertLengths } from '../../reference/inserts';
import { propertyClasses } from '../../reference/property-classes';
import type { AskOf } from '../../engine/calculator';
import { exact, type Amount } from '../../engine/order';
import { nextOf, PLASTICS, type choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import { judgeWays, SYMBOLS, type Asked, type Bar, type Objection, type Part, type Span, type WayId } from './model';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;

/** What is said against a way. */
export type Against =
  | { readonly why: Bar | 'tooWeak' | 'strengthInDoubt' | 'wallThin' | 'wallInDoubt' }
  | { readonly why: 'otherInsert'; readonly diameters: number };

/** A span of any symbol; ends the action where there is none. */
export const spanIn =
  (ask: Ask) =>
  (symbol: Asked): Span => {
    const value = ask.number(symbol);
    return ask.known(symbol) ?? { value, low: value, high: value };
  };

/** Polyoxymethylene gives off formaldehyde where an iron overheats it. */
export const partOf = (hole: Part['hole'], part: string): Part => ({
  hole,
  plastic: (PLASTICS as readonly string[]).includes(part),
  noIron: part === 'pom',
});

export const judged = (ask: Ask) => judgeWays(spanIn(ask), partOf(ask.choice('hole'), ask.choice('part')));

/** A way's strength over the screw's proof load, in whole percent. */
export const percentOf = (ask: Ask, id: WayId): number => Math.round(ask.number(SYMBOLS[id].share) * 100);

/** Steps of screws' lengths as they are stocked or can be packed with washers, m. */
const LENGTH_STEP = 0.5e-3;
/** Least step where half a millimetre is more than there is. */
const FINE_LENGTH_STEP = 0.1e-3;
/** Drills are made in steps of this, or have a name. */
const DRILL_STEP = 0.05e-3;

/** A length that a screw has to reach, to half a millimetre, never less. */
export const reachOf = (ask: Ask): Amount => exact(settable(ask.number('L_r'), LENGTH_STEP, 'up'), length.mm);

/** How much longer a screw may be, from the sure end of the thread below its tip, m. */
export function longerBy(ask: Ask): number {
  const least = ask.number('L_b') - ask.quantity('L_b').width;
  const step = least >= LENGTH_STEP ? LENGTH_STEP : FINE_LENGTH_STEP;
  return settable(Math.max(least, 0), step, 'down');
}
export const longerAmount = (ask: Ask): Amount => exact(longerBy(ask), length.mm);

/** An insert's length as it is marked, to a hundredth. */
export const markedLength = (ask: Ask): Amount => exact(settable(ask.number('L_i'), 1e-5, 'nearest'), length.mm);

/** A drill as it can be had: of the metric series, or by its name in the inch one. */
export function drillFor({ si }: Amount) {
  const named = drillName(si * 1e3);
  return { drill: exact(named === undefined ? settable(si, DRILL_STEP, 'nearest') : si, length.mm), named };
}

/** A torque that is surely not too much, to the two digits that a wrench is set to. */
export function torqueFor(ask: Ask, symbol: Torque): Amount {
  const least = Math.max(ask.known(symbol)?.low ?? ask.number(symbol), 0);
  const step = least > 0 ? 10 ** (Math.floor(Math.log10(least)) - 1) : 0.01;
  return exact(settable(least, step, 'down'), torque.N_m);
}
export type Torque = 'T_e' | (typeof SYMBOLS)[WayId]['torque'];

/** "M4" of the next larger coarse screw, or "6-32". */
export function largerName(ask: Ask): string {
  const next = nextOf(ask.choice('size'));
  const [diameter, typed] = [next?.d ?? 0, ask.number('d_n') * 1e3];
  return next && Math.abs(diameter - typed) < 0.01 ? next.name : `M${Number(typed.toPrecision(6))}`;
}

/** The weakest usual class whose larger screw bears the load, stainless only in place of stainless; undefined where none. */
export function classFor(ask: Ask): string | undefined {
  const needed = ask.number('S_n') / 1e6;
  const stainless = ask.choice('grade').startsWith('A');
  return propertyClasses.find(({ name, Sp }) => Sp >= needed && (stainless || !name.startsWith('A')))?.name;
}

/** The shortest standard insert that is surely strong enough and fits, in screw diameters; undefined where none. */
function insertThatDoes(ask: Ask): number | undefined {
  const strength = spanIn(ask)('s_i');
  const [d, P, now] = [ask.number('d'), ask.number('P'), ask.number('L_i')];
  return insertLengths.find((k) => {
    const longer = (k * d - 0.75 * P) / (now - 0.75 * P);
    return strength.low * longer >= ask.number('s_min') && spanIn(ask)('x_i').high + now - k * d >= 0;
  });
}

function againstOne(ask: Ask, id: WayId, objection: Objection, alone: boolean): Against {
  if (objection.of === 'wall') return { why: objection.surely ? 'wallThin' : 'wallInDoubt' };
  if (objection.of !== 'strength') return { why: objection.of };
  const diameters = id === 'insert' && alone ? insertThatDoes(ask) : undefined;
  if (diameters !== undefined) return { why: 'otherInsert', diameters };
  return { why: objection.surely ? 'tooWeak' : 'strengthInDoubt' };
}

/** What stands against a way, what bars it before all else; empty where nothing does. */
export function against(ask: Ask, id: WayId, objections: readonly Objection[]): readonly Against[] {
  const barred = objections.find((one) => !('surely' in one));
  const all = barred ? [barred] : objections;
  return all.map((one) => againstOne(ask, id, one, all.length === 1));
}
