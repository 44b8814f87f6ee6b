import { placed } from '../../engine/shared-places';
import { bendingStiffness, force, frequency, length, linearDensity, mass, ratio } from '../../quantity/kinds';
import { TABLE_WIDTH } from '../../reference/belts';
import { commonPractice } from '../../reference/citation';
import { input, derived } from '../../engine/calculator';

const first = { which: 'first' };
const second = { which: 'second' };
const note = { by: 'note' };
const press = { by: 'press' };
/** Bending stiffness as measured; else from the table. */
const measured = { ends: ['between', 'pinned', 'clamped'] };

/** What is asked: the reading, the belt, what it moves, the tensioner, the limits. */
export const inputs = {
  L_1: placed('belt.span', {
    range: [20, 3000],
    tool: 'tape',
    when: first,
  }),
  L_2: placed('belt.second-span', {
    range: [20, 3000],
    tool: 'tape',
    when: second,
  }),
  f: input(frequency.Hz, {
    range: [5, 1000],
    spread: 0.5,
    phone: 'note',
    when: note,
  }),
  F: input(force.N, { feature: 'force', range: [0.05, 200], tool: 'luggage-scale', when: press }),
  y: input(length.mm, { feature: 'travel', range: [0.2, 300], tool: 'rule', when: press }),
  w: placed('belt.width', { range: [2, 100] }),
  m_s: input(mass.g, {
    feature: 'mass',
    range: [0.1, 10000],
    tool: 'kitchen-scale',
    when: { by: 'note', mass: 'weigh' },
  }),
  l_s: input(length.mm, {
    feature: 'span',
    typical: 1000,
    spread: 1,
    range: [50, 100000],
    tool: 'tape',
    when: { by: 'note', mass: 'weigh' },
  }),
  mu_1: placed('belt.mass-per-length', {
    range: [0.5, 2000],
    when: { by: 'note', mass: 'typed' },
  }),
  EI: placed('belt.bending-stiffness', {
    range: [0.1, 2000],
    when: measured,
  }),
  l_o: input(length.mm, {
    feature: 'span',
    seldom: true,
    typical: 40,
    range: [5, 300],
    tool: 'rule',
    basis: commonPractice,
    when: { by: 'note', ...measured },
  }),
  M: placed('carriage.mass', {
    range: [0.01, 100],
    when: first,
  }),
  M_2: input(mass.kg, {
    feature: 'mass',
    typical: 1,
    spread: 0.3,
    range: [0.01, 100],
    from: 'belt.second-mass',
    when: second,
  }),
  a: placed('carriage.acceleration', { range: [0, 1e5] }),
  L_t1: placed('belt.length', {
    range: [50, 10000],
    tool: 'tape',
    when: first,
  }),
  L_t2: input(length.mm, {
    feature: 'span',
    typical: 1000,
    spread: 200,
    range: [50, 10000],
    tool: 'tape',
    from: 'belt.second-length',
    when: second,
  }),
  P_a: input(length.mm, {
    feature: 'set',
    seldom: true,
    optional: true,
    range: [0.1, 5],
    from: 'belt.adjuster-pitch',
    when: { adjuster: ['clockwise', 'anticlockwise'] },
  }),
  theta_w: placed('belt.tensioner-wrap', {
    seldom: true,
    range: [20, 180],
    tool: 'protractor',
  }),
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
    when: { by: 'note', mass: 'table' },
  }),
  T_b: input(force.N, { feature: 'set', seldom: true, decided: true, range: [0, 2000], basis: commonPractice }),
  T_a: input(force.N, { feature: 'set', seldom: true, decided: true, range: [1, 20000], basis: commonPractice }),
  C_0: input(force.N, { feature: 'set', seldom: true, range: [100, 1e7], basis: commonPractice }),
  EI_0: input(bendingStiffness.N_mm2, {
    seldom: true,
    range: [0.1, 2000],
    basis: commonPractice,
    when: { ends: 'string' },
  }),
  chi: input(ratio.one, {
    seldom: true,
    decided: true,
    range: [0, 1],
    basis: derived('betweenFreeHeld'),
  }),
  epsilon_max: input(ratio.one, {
    seldom: true,
    typical: 0.05,
    range: [0.001, 0.2],
    basis: derived('exactFrequencyHeld'),
  }),
  s_max: input(ratio.percent, {
    differs: 0.2,
    seldom: true,
    typical: 5,
    range: [0.1, 25],
    basis: commonPractice,
    when: press,
  }),
};
