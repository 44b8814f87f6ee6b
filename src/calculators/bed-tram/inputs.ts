import { placed } from '../../engine/shared-places';
import { angle, length, pressure, ratio, stiffness } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { cite, input } from '../../engine/calculator';
import { FOUR, SPRUNG } from './choices';

const typed = { layout: ['three', 'four'] } as const;
const fourth = { layout: 'four' } as const;
const sprung = { layout: FOUR, build: SPRUNG } as const;
const plates = cite('EN 1999-1-1:2007, EN 1993-1-1:2005, EN 572-1:2012', 'elasticConstants', true);
const place = { feature: 'span', range: [-500, 2000], tool: 'rule', signed: 'scale' } as const;

export const inputs = {
  W: placed('bed.width', { range: [20, 2000], tool: 'rule' }),
  D: placed('bed.depth', { range: [20, 2000], tool: 'rule' }),
  b_a: input(length.mm, {
    feature: 'span',
    typical: 30,
    spread: 5,
    range: [-300, 900],
    tool: 'rule',
    signed: 'scale',
    from: 'bed.adjuster-inset',
    when: { layout: ['corners', 'front', 'back'] },
  }),
  X_a: input(length.mm, {
    ...place,
    from: 'bed.adjuster-first-left',
    when: typed,
  }),
  Y_a: input(length.mm, {
    ...place,
    from: 'bed.adjuster-first-front',
    when: typed,
  }),
  X_b: input(length.mm, {
    ...place,
    from: 'bed.adjuster-second-left',
    when: typed,
  }),
  Y_b: input(length.mm, {
    ...place,
    from: 'bed.adjuster-second-front',
    when: typed,
  }),
  X_c: input(length.mm, {
    ...place,
    from: 'bed.adjuster-third-left',
    when: typed,
  }),
  Y_c: input(length.mm, {
    ...place,
    from: 'bed.adjuster-third-front',
    when: typed,
  }),
  X_d: input(length.mm, {
    ...place,
    from: 'bed.adjuster-fourth-left',
    when: fourth,
  }),
  Y_d: input(length.mm, {
    ...place,
    from: 'bed.adjuster-fourth-front',
    when: fourth,
  }),
  P_s: input(length.mm, { feature: 'set', typical: 0.7, range: [0.2, 50], from: 'bed.adjuster-pitch' }),
  d_b: input(length.mm, {
    feature: 'outside',
    typical: 3,
    spread: 0.5,
    range: [0.2, 50],
    tool: 'caliper',
    from: 'bed.plate-thickness',
    basis: commonPractice,
    when: sprung,
  }),
  k_s: input(stiffness.N_mm, {
    typical: 5,
    spread: 2.5,
    range: [0.1, 500],
    from: 'bed.spring-stiffness',
    basis: commonPractice,
    seldom: true,
    when: sprung,
  }),
  y_s: input(length.mm, {
    feature: 'depth',
    typical: 5,
    spread: 2,
    range: [0.1, 60],
    tool: 'caliper',
    basis: commonPractice,
    seldom: true,
    when: sprung,
  }),
  E_b: input(pressure.GPa, {
    typical: 70,
    range: [0.1, 400],
    basis: plates,
    decided: true,
    seldom: true,
    when: sprung,
  }),
  nu_b: input(ratio.one, { typical: 0.3, range: [0, 0.49], basis: plates, decided: true, seldom: true, when: sprung }),
  h_1: placed('print.first-layer', { range: [0.04, 2] }),
  c_m: input(length.mm, {
    typical: 30,
    range: [0, 900],
    decided: true,
    seldom: true,
  }),
  k_t: input(ratio.one, { differs: 0.2, typical: 0.25, range: [0.01, 1], basis: commonPractice, seldom: true }),
  k_F: input(ratio.one, { differs: 0.2, typical: 0.5, range: [0.01, 2], basis: commonPractice, seldom: true }),
  phi_h: input(angle.deg, {
    typical: 10,
    range: [0.5, 90],
    decided: true,
    basis: commonPractice,
    seldom: true,
  }),
};
