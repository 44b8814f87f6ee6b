import { telling } from '../../engine/order';
import type { ComparedWay, ComparedWays } from '../../engine/ways';
import { advised, coins, hours, judged, percent, type Ask } from './judging';
import type words from './words/en';
import type { WayId } from './words/en/orders';

const { fact, why, need } = telling<typeof words>();

const NEEDS = {
  resume: ['knifeAndFile', 'caliperOrFeeler', 'jobCutOff'],
  glue: ['fineSaw', 'glue', 'dowels'],
  anew: ['filament'],
} as const satisfies Readonly<Record<WayId, readonly string[]>>;

/** The three ways out, side by side. */
export function compare(ask: Ask): ComparedWays {
  const all = judged(ask);
  const best = advised(all);
  return {
    columns: ['strength', 'hours', 'cost'],
    ways: all.map((one): ComparedWay => {
      return {
        id: one.id,
        standing: one.id === best ? 'advised' : one.standing,
        facts: [
          fact('strength', { percent: percent(one.strength) }),
          fact('hours', { hours: hours(one.time) }),
          fact('cost', coins(one.cost)),
        ],
        why: one.against.map((found) => why('against', found)),
        needs: NEEDS[one.id].map((key) => need(key)),
      };
    }),
  };
}
