import { placed } from '../../engine/shared-places';
import { force, length, ratio, stiffness } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input, cite } from '../../engine/calculator';

const pulls = { by: 'scale' };
const both = { drive: 'both' };

/** What is asked: the guide, the drive, the friction or two pulls for it, the load, the skew. */
export const inputs = {
  L: input(length.mm, {
    typical: 40,
    spread: 1,
    range: [2, 3000],
    tool: 'rule',
    from: 'guide.length',
  }),
  d_0: input(length.mm, {
    typical: 30,
    spread: 1,
    range: [0, 3000],
    tool: 'rule',
    from: 'carriage.drive-offset',
    when: { drive: 'one' },
  }),
  d_1: input(length.mm, {
    typical: 150,
    spread: 1,
    range: [0, 3000],
    tool: 'rule',
    from: 'carriage.left-drive-offset',
    when: both,
  }),
  d_2: input(length.mm, {
    typical: 150,
    spread: 1,
    range: [0, 3000],
    tool: 'rule',
    from: 'carriage.right-drive-offset',
    when: both,
  }),
  s: input(ratio.percent, {
    typical: 50,
    spread: 10,
    basis: commonPractice,
    range: [0, 100],
    when: both,
  }),
  mu_p: input(ratio.one, {
    typical: 0.15,
    spread: 0.07,
    basis: cite('Suppliers’ engineering tables of plain and rolling bearings', 'frictionPair', true),
    range: [0.001, 1.5],
    when: { by: 'pair' },
  }),
  F_a: input(force.N, {
    range: [0.05, 500],
    tool: 'luggage-scale',
    when: pulls,
  }),
  a_1: input(length.mm, {
    typical: 0,
    spread: 1,
    range: [0, 3000],
    tool: 'rule',
    when: pulls,
  }),
  F_b: input(force.N, {
    range: [0.05, 2000],
    tool: 'luggage-scale',
    when: pulls,
  }),
  a_2: input(length.mm, {
    typical: 60,
    spread: 1,
    range: [1, 3000],
    tool: 'rule',
    when: pulls,
  }),
  F_0: input(force.N, {
    typical: 2,
    spread: 1,
    basis: commonPractice,
    range: [0, 500],
    from: 'guide.drag',
    when: { by: 'pair' },
  }),
  M: placed('carriage.mass', { range: [0.01, 100] }),
  a: placed('carriage.acceleration', { range: [0, 1e5] }),
  e: input(length.mm, {
    typical: 0,
    spread: 10,
    range: [-2000, 2000],
    signed: true,
    tool: 'rule',
    from: 'carriage.load-offset',
  }),
  F_m: input(force.N, {
    typical: 40,
    basis: commonPractice,
    range: [0.5, 5000],
    from: 'carriage.drive-force',
  }),
  q_lim: input(ratio.percent, {
    typical: 50,
    range: [5, 100],
    basis: commonPractice,
  }),
  dx: input(length.mm, {
    seldom: true,
    typical: 0,
    spread: 0.1,
    basis: commonPractice,
    range: [0, 50],
    tool: 'caliper',
  }),
  W_g: input(length.mm, {
    seldom: true,
    typical: 300,
    spread: 1,
    range: [10, 3000],
    tool: 'rule',
    from: 'guide.span',
  }),
  j: input(length.mm, {
    seldom: true,
    typical: 0.1,
    spread: 0.05,
    basis: commonPractice,
    range: [0, 5],
    tool: 'feeler',
    from: 'guide.play',
  }),
  c_g: input(stiffness.N_mm, {
    seldom: true,
    typical: 100,
    spread: 50,
    basis: commonPractice,
    range: [1, 50000],
    from: 'guide.stiffness',
  }),
};
