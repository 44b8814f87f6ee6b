import { placed } from '../../engine/shared-places';
import { bendingStiffness, force, frequency, length, linearDensity, mass, ratio } from '../../quantity/kinds';
import { pitchSource, TABLE_WIDTH } from '../../reference/belts';
import { commonPractice } from '../../reference/citation';
import { input, derived } from '../../engine/calculator';

const different = { belts: 'different' };
/** Bending stiffness as measured; else from the table. */
const measured = { ends: ['between', 'pinned', 'clamped'] };
const table = { ends: 'string' };
const weighed = { mass: 'weigh' };

/** What is asked: two spans and their notes, the belts, the offset of their tensioners, the limits. */
export const inputs = {
  L_1: placed('belt.span', {
    range: [20, 3000],
    tool: 'tape',
  }),
  f_1: input(frequency.Hz, { range: [5, 1000], spread: 0.5, phone: 'note' }),
  L_2: placed('belt.second-span', {
    range: [20, 3000],
    tool: 'tape',
  }),
  f_2: input(frequency.Hz, { range: [5, 1000], spread: 0.5, phone: 'note' }),
  w: placed('belt.width', { range: [2, 100] }),
  w_2: input(length.mm, {
    feature: 'outside',
    typical: 6,
    range: [2, 100],
    from: 'belt.second-width',
    when: different,
  }),
  m_s: input(mass.g, { feature: 'mass', range: [0.1, 10000], tool: 'kitchen-scale', when: weighed }),
  l_s: input(length.mm, {
    feature: 'span',
    typical: 1000,
    spread: 1,
    range: [50, 100000],
    tool: 'tape',
    when: weighed,
  }),
  m_s2: input(mass.g, {
    feature: 'mass',
    range: [0.1, 10000],
    tool: 'kitchen-scale',
    when: { ...different, ...weighed },
  }),
  l_s2: input(length.mm, {
    feature: 'span',
    typical: 1000,
    spread: 1,
    range: [50, 100000],
    tool: 'tape',
    when: { ...different, ...weighed },
  }),
  mu_a: placed('belt.mass-per-length', {
    range: [0.5, 2000],
    when: { mass: 'typed' },
  }),
  mu_b: input(linearDensity.g_m, {
    range: [0.5, 2000],
    from: 'belt.second-mass-per-length',
    when: { ...different, mass: 'typed' },
  }),
  EI_1: placed('belt.bending-stiffness', {
    range: [0.1, 2000],
    when: measured,
  }),
  EI_2: input(bendingStiffness.N_mm2, {
    range: [0.1, 2000],
    from: 'belt.second-bending-stiffness',
    when: { ...different, ...measured },
  }),
  x: input(length.mm, {
    feature: 'span',
    difference: true,
    optional: true,
    signed: { plus: 'second-further-out', minus: 'first-further-out' },
    range: [-200, 200],
    tool: 'caliper',
  }),
  x_d: input(length.mm, {
    feature: 'set',
    seldom: true,
    signed: { plus: 'second-further-out', minus: 'first-further-out' },
    typical: 0,
    range: [-200, 200],
    basis: derived('loopsEqualLength'),
    from: 'belt.tensioner-offset',
  }),
  p: placed('belt.pitch', {
    seldom: true,
    range: [1, 20],
    basis: pitchSource,
  }),
  theta_w: placed('belt.tensioner-wrap', {
    seldom: true,
    range: [20, 180],
    tool: 'protractor',
  }),
  d_lim: input(ratio.percent, { differs: 0.2, seldom: true, typical: 5, range: [0.1, 100], basis: commonPractice }),
  w_0: input(length.mm, {
    feature: 'set',
    seldom: true,
    decided: true,
    typical: TABLE_WIDTH,
    range: [1, 200],
    basis: derived('allRowsBrought'),
  }),
  m_0: input(linearDensity.g_m, {
    seldom: true,
    range: [0.5, 2000],
    basis: commonPractice,
    when: { mass: 'table' },
  }),
  m_02: input(linearDensity.g_m, {
    seldom: true,
    range: [0.5, 2000],
    basis: commonPractice,
    when: { ...different, mass: 'table' },
  }),
  T_b: input(force.N, { feature: 'set', seldom: true, decided: true, range: [0, 2000], basis: commonPractice }),
  T_a: input(force.N, { feature: 'set', seldom: true, decided: true, range: [1, 20000], basis: commonPractice }),
  T_b2: input(force.N, {
    feature: 'set',
    seldom: true,
    decided: true,
    range: [0, 2000],
    basis: commonPractice,
    when: different,
  }),
  T_a2: input(force.N, {
    feature: 'set',
    seldom: true,
    decided: true,
    range: [1, 20000],
    basis: commonPractice,
    when: different,
  }),
  EI_01: input(bendingStiffness.N_mm2, { seldom: true, range: [0.1, 2000], basis: commonPractice, when: table }),
  EI_02: input(bendingStiffness.N_mm2, {
    seldom: true,
    range: [0.1, 2000],
    basis: commonPractice,
    when: { ...different, ...table },
  }),
  chi_1: input(ratio.one, { seldom: true, decided: true, range: [0, 1], basis: derived('betweenFreeHeld') }),
  chi_2: input(ratio.one, { seldom: true, decided: true, range: [0, 1], basis: derived('betweenFreeHeld') }),
  epsilon_max: input(ratio.one, {
    seldom: true,
    typical: 0.05,
    range: [0.001, 0.2],
    basis: derived('exactFrequencyHeld'),
  }),
};
