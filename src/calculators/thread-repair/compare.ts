import { telling, type Amount, type Told } from '../../engine/order';
import type { ComparedWay, ComparedWays } from '../../engine/ways';
import {
  against,
  classFor,
  drillFor,
  judged,
  largerName,
  longerAmount,
  percentOf,
  spanIn,
  type Ask,
  markedLength,
} from './judging';
import { advisedWay, SYMBOLS, type WayId } from './model';
import type words from './words/en';

const { fact, why, need } = telling<typeof words>();

const drillNeed = (wanted: Amount) => {
  const { drill, named } = drillFor(wanted);
  return { size: drill, named };
};

/** Tools and parts, by size. */
function needsOf(ask: Ask, id: WayId): readonly Told[] {
  const size = ask.choice('size');
  const larger = largerName(ask);
  switch (id) {
    case 'longer':
      return [need('longerScrew', { size, by: longerAmount(ask) })];
    case 'insert':
      return [
        need('drill', drillNeed(ask.quantity('D_d'))),
        need('insertTap', { size, bottoming: ask.choice('hole') === 'blind' }),
        need('insert', { size, length: markedLength(ask) }),
        need('insertTools'),
      ];
    case 'next':
      return [
        need('drill', drillNeed(ask.quantity('D_t'))),
        need('tap', { size: larger }),
        need('largerScrew', { size: larger, grade: classFor(ask) }),
        need('clearanceDrill'),
      ];
    case 'bolt':
      return [
        need('drill', drillNeed(ask.quantity('D_c'))),
        need('bolt', { size, grade: ask.choice('grade') }),
        need('nut', { size }),
        need('washers'),
      ];
    case 'heatset':
      return [
        need('drill', drillNeed(ask.quantity('D_h'))),
        need('heatInsert', { size, length: ask.quantity('L_s') }),
        need('iron'),
      ];
    case 'nut':
      return [need('drill', drillNeed(ask.quantity('D_c'))), need('nut', { size }), need('pocketTools')];
    case 'replace':
      return [need('part')];
  }
}

/** The ways to mend, side by side. None is advised where what is left will do. */
export function compare(ask: Ask): ComparedWays {
  const all = judged(ask);
  const best = ask.verdict === 'within' ? undefined : advisedWay(all, spanIn(ask));
  return {
    columns: ['strength', 'wall', 'minutes', 'cost'],
    ways: all.map(({ id, standing, objections }): ComparedWay => {
      const symbols = SYMBOLS[id];
      const cost = ask.number(symbols.cost);
      return {
        id,
        standing: id === best ? 'advised' : standing,
        facts: [
          // Six digits are more than a column needs.
          fact('strength', { percent: Number(percentOf(ask, id).toPrecision(6)) }),
          fact('wall', { mm: ask.number(symbols.wall) * 1e3 }),
          fact('minutes', { minutes: Math.round(ask.number(symbols.minutes) / 60) }),
          // Money as it is counted: whole from ten on, else hundredths.
          fact('cost', { cost, decimals: cost >= 10 ? 0 : 2 }),
        ],
        why: against(ask, id, objections).map((one) => why('against', one)),
        needs: needsOf(ask, id),
      };
    }),
  };
}
