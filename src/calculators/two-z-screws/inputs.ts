import { placed, placedChoice } from '../../engine/shared-places';
import { count, length, ratio, slope } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { choice, input } from '../../engine/calculator';

export const choices = {
  by: choice({ heights: {}, level: {} }, 'heights'),
  drive: placedChoice('z.drive', { belt: {}, motors: {} }, 'belt'),
  hand: choice({ right: {}, left: {} }, 'right', {
    from: 'z.hand',
  }),
};

/** Seen from the front. */
const sides = { plus: 'right-higher', minus: 'left-higher' } as const;

export const inputs = {
  dh: input(length.mm, {
    feature: 'height',
    range: [-50, 50],
    tool: 'caliper',
    signed: sides,
    difference: true,
    when: { by: 'heights' },
  }),
  S_m: input(length.mm, {
    feature: 'span',
    typical: 400,
    spread: 1,
    range: [20, 2000],
    tool: 'rule',
    when: { by: 'heights' },
  }),
  i_g: input(slope.mm_m, {
    feature: 'slope',
    range: [-150, 150],
    signed: sides,
    phone: 'slope',
    when: { by: 'level' },
  }),
  i_f: input(slope.mm_m, {
    feature: 'slope',
    range: [-150, 150],
    signed: sides,
    phone: 'slope',
    when: { by: 'level' },
  }),
  S: placed('z.screw-distance', {
    range: [20, 2000],
    tool: 'rule',
  }),
  W: placed('bed.width', { range: [20, 2000], tool: 'rule' }),
  P_h: placed('z.lead', {
    range: [0.5, 50],
  }),
  z: input(count.one, {
    typical: 20,
    range: [8, 200],
    from: 'z.pulley-teeth',
    when: { drive: 'belt' },
  }),
  theta_s: placed('z.step-angle', {
    range: [0.1, 15],
    when: { drive: 'motors' },
  }),
  h_1: placed('print.first-layer', { range: [0.04, 2] }),
  k_1: input(ratio.one, { differs: 0.2, typical: 0.25, range: [0.01, 1], basis: commonPractice, seldom: true }),
};
