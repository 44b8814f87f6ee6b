import type { Way, Ways } from '../../engine/ways';
import { advised, coins, hours, judged, percent, type Ask, type WayId } from './judging';

const NAMES: Readonly<Record<WayId, string>> = {
  resume: 'Go on where it stands',
  glue: 'Cut, print the rest, glue',
  anew: 'Print it again',
};

const NEEDS: Readonly<Record<WayId, readonly string[]>> = {
  resume: ['sharp knife and file', 'caliper or feeler leaf', 'the job cut off below the new layer'],
  glue: ['fine saw, sandpaper on a plate', 'glue for this plastic', 'two dowels of filament'],
  anew: ['enough filament'],
};

/** The three ways out, side by side. */
export function compare(ctx: Ask): Ways {
  const all = judged(ctx);
  const best = advised(all);
  return {
    title: 'Ways out, side by side',
    columns: ['Strength', 'Hours', 'Cost'],
    ways: all.map((one): Way => {
      return {
        name: NAMES[one.id],
        standing: one.id === best ? 'advised' : one.standing,
        facts: [percent(one.strength).replace(' ', ''), hours(ctx, one.time), coins(ctx, one.cost)],
        why: one.why,
        needs: NEEDS[one.id],
      };
    }),
    note: 'Strength of the seam over that of a sound layer, typical. Hours: printing and work from now on. Cost: plastic, machine, work, and the chance that it fails and a new one is due, as set among the seldom changed lines. What is already spent counts for none of them.',
  };
}
