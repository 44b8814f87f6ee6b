import { formatValue } from '../../quantity/format';
import { ratio } from '../../quantity/kinds';
import type { Way, Ways } from '../../engine/ways';
import { advisedWay, SYMBOLS } from './model';
import { judged, NAMES, needsOf, objectionsText, spanIn, type Ask } from './judging';

const PERCENT = ratio.percent.unit;

/** Strength in whole percent, so that a column stays narrow. */
const percent = (share: number, ctx: Ask): string =>
  formatValue(Math.round(share * 100) / 100, 0, PERCENT, { mark: ctx.mark }).replace('\u00a0', '');

/** Money as it is counted: whole from ten on, else hundredths. */
const coins = (cost: number, ctx: Ask): string => {
  const text = cost >= 10 ? cost.toFixed(0) : cost.toFixed(2);
  return ctx.mark === 'comma' ? text.replace('.', ',') : text;
};

const tenths = (mm: number, ctx: Ask): string => {
  const text = mm.toFixed(1).replace('-', '−');
  return ctx.mark === 'comma' ? text.replace('.', ',') : text;
};

/** The ways to mend, side by side. None is advised where what is left will do. */
export function compare(ctx: Ask): Ways {
  const all = judged(ctx);
  const best = ctx.verdict === 'within' ? undefined : advisedWay(all, spanIn(ctx));
  return {
    title: 'Ways to mend it, side by side',
    columns: ['Strength', 'Wall mm', 'Min', 'Cost'],
    ways: all.map(({ id, standing, objections }): Way => {
      const symbols = SYMBOLS[id];
      return {
        name: NAMES[id],
        standing: id === best ? 'advised' : standing,
        facts: [
          percent(ctx.number(symbols.share), ctx),
          tenths(ctx.number(symbols.wall) * 1e3, ctx),
          String(Math.round(ctx.number(symbols.minutes) / 60)),
          coins(ctx.number(symbols.cost), ctx),
        ],
        why: objectionsText(ctx, id, objections),
        needs: needsOf(ctx, id),
      };
    }),
    note: 'Strength: the load that strips the thread (bolt: that crushes the part) over the proof load of the present screw. Cost: money and the time it takes, as set among the seldom changed lines.',
  };
}
