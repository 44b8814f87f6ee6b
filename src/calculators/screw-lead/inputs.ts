import { input } from '../../engine/calculator';
import { placed } from '../../engine/shared-places';
import { count, length, ratio } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';

export const inputs = {
  x: input(length.mm, {
    feature: 'travel',
    // A reading that names no tool is no surer than a caliper's: its digits would be printed as if all were known.
    spread: 0.03,
    range: [0.5, 2000],
    tool: 'caliper',
  }),
  N: input(count.one, {
    typical: 5,
    range: [1, 200],
  }),
  P_h: placed('z.lead', {
    range: [0.5, 50],
  }),
  P: input(length.mm, {
    feature: 'set',
    optional: true,
    seldom: true,
    range: [0.2, 50],
  }),
  n_s: input(count.one, {
    optional: true,
    seldom: true,
    range: [1, 12],
  }),
  k_a: input(ratio.percent, { differs: 0.2, seldom: true, typical: 0.5, range: [0.05, 5], basis: commonPractice }),
};
