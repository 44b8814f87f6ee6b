import { formatValue } from '../../quantity/format';
import { length } from '../../quantity/kinds';
import { insertLengths } from '../../reference/inserts';
import { propertyClasses } from '../../reference/property-classes';
import type { Context } from '../../engine/calculator';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import { judgeWays, type Asked, type Objection, type Span, type WayId } from './model';

type Results = (typeof formulas)[number]['text'] extends infer T
  ? T extends `${infer S} =${string}`
    ? S
    : never
  : never;
export type Symbols = Results | keyof typeof inputs;
export type Ask = Context<Symbols, typeof choices>;

export const NAMES: Readonly<Record<WayId, string>> = {
  longer: 'Longer screw',
  insert: 'Wire thread insert',
  next: 'Next larger screw',
  bolt: 'Bolt and nut',
  replace: 'New part',
};

/** A span of any symbol; ends the action where there is none. */
export const spanIn =
  (ctx: Ask) =>
  (symbol: Asked): Span => {
    const value = ctx.number(symbol);
    return ctx.known(symbol) ?? { value, low: value, high: value };
  };

export const judged = (ctx: Ask) => judgeWays(spanIn(ctx), ctx.choice('hole'));

/** A length that is no size of a tool, to a tenth of a millimetre. */
export const rough = (ctx: Ask, symbol: 'L_r' | 'L_b' | 'L_i'): string =>
  formatValue(Math.round(ctx.number(symbol) * 1e4) / 1e4, 0, length.mm.unit, { mark: ctx.mark });

/** "M4" of the next larger coarse screw. */
export const largerName = (ctx: Ask): string => `M${Number((ctx.number('d_n') * 1e3).toPrecision(6))}`;

/** The weakest usual class whose larger screw bears the load, stainless only in place of stainless; undefined where none. */
export function classFor(ctx: Ask): string | undefined {
  const needed = ctx.number('S_n') / 1e6;
  const stainless = ctx.choice('grade').startsWith('A');
  return propertyClasses.find(({ name, Sp }) => Sp >= needed && (stainless || !name.startsWith('A')))?.name;
}

/** The shortest standard insert that is surely strong enough and fits, as "2 screw diameters (6 mm)"; undefined where none. */
function insertThatDoes(ctx: Ask): string | undefined {
  const strength = spanIn(ctx)('s_i');
  const [d, P, now] = [ctx.number('d'), ctx.number('P'), ctx.number('L_i')];
  const fits = insertLengths.find((k) => {
    const longer = (k * d - 0.75 * P) / (now - 0.75 * P);
    return strength.low * longer >= ctx.number('s_min') && spanIn(ctx)('x_i').high + now - k * d >= 0;
  });
  return fits === undefined ? undefined : `${fits} screw diameters`;
}

const BARS: Readonly<Record<Exclude<Objection['of'], 'strength' | 'wall'>, string>> = {
  'no thread below': 'There is no good thread below the screw’s tip.',
  'too shallow': 'The hole is too shallow for this length and the tap’s lead.',
  'breaks out': 'It would break out of the part.',
  'back not reached': 'The back of the hole cannot be reached.',
  'no room for the washer': 'The washer would hang over the edge.',
};

function objectionText(ctx: Ask, id: WayId, objection: Objection, alone: boolean): string {
  if (objection.of === 'strength') {
    if (id === 'insert' && alone) {
      const other = insertThatDoes(ctx);
      if (other !== undefined) return `Choose ${other}: that length is strong enough.`;
    }
    return objection.surely ? 'Too weak.' : 'Whether it is strong enough is too close to call.';
  }
  if (objection.of === 'wall')
    return objection.surely ? 'The wall gets too thin.' : 'Whether the wall is enough is too close to call.';
  return BARS[objection.of];
}

/** What stands against a way, in sentences; empty where nothing does. */
export function objectionsText(ctx: Ask, id: WayId, objections: readonly Objection[]): string {
  const barred = objections.find((one) => !('surely' in one));
  const said = barred ? [barred] : objections;
  return said.map((one) => objectionText(ctx, id, one, said.length === 1)).join(' ');
}

/** Tools and parts, by size. */
export function needsOf(ctx: Ask, id: WayId): readonly string[] {
  const size = ctx.choice('size');
  const larger = largerName(ctx);
  switch (id) {
    case 'longer':
      return [`screw ${size}, longer by ${rough(ctx, 'L_b')} at most`];
    case 'insert':
      return [
        `drill ${ctx.text('D_d')}`,
        `tap ${size} wire-insert${ctx.choice('hole') === 'blind' ? ', bottoming' : ''}`,
        `insert ${size} × ${ctx.text('L_i')}`,
        'winding tool, tang punch',
      ];
    case 'next':
      return [
        `drill ${ctx.text('D_t')}`,
        `tap ${larger}`,
        `screw ${larger}, class ${classFor(ctx) ?? 'above 12.9'} or better`,
        'drill for its clearance hole',
      ];
    case 'bolt':
      return [`drill ${ctx.text('D_c')}`, `bolt ${size}, class ${ctx.choice('grade')}`, `nut ${size}`, 'two washers'];
    case 'replace':
      return ['the part'];
  }
}
