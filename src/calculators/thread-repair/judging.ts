import { length } from '../../quantity/kinds';
import { insertLengths } from '../../reference/inserts';
import { propertyClasses } from '../../reference/property-classes';
import type { AskOf } from '../../engine/calculator';
import type { Amount } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import { judgeWays, SYMBOLS, type Asked, type Bar, type Objection, type Span, type WayId } from './model';

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

export const judged = (ask: Ask) => judgeWays(spanIn(ask), ask.choice('hole'));

/** A way's strength over the screw's proof load, in whole percent. */
export const percentOf = (ask: Ask, id: WayId): number => Math.round(ask.number(SYMBOLS[id].share) * 100);

/** A length that is no size of a tool, to a tenth of a millimetre. */
export const rough = (ask: Ask, symbol: 'L_r' | 'L_b'): Amount => ({
  si: Math.round(ask.number(symbol) * 1e4) / 1e4,
  width: 0,
  kind: length.mm.kind.id,
  unit: length.mm.unit.id,
});

/** "M4" of the next larger coarse screw. */
export const largerName = (ask: Ask): string => `M${Number((ask.number('d_n') * 1e3).toPrecision(6))}`;

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
