import { placed } from '../../engine/shared-places';
import { angle, count, force, length, mass, ratio, speed } from '../../quantity/kinds';
import { TABLE_WIDTH } from '../../reference/belts';
import { commonPractice } from '../../reference/citation';
import { input, derived } from '../../engine/calculator';

const counted = { by: 'count' };
const direct = { by: 'direct' };
const one = { test: 'one' };
const two = { test: 'two' };

/** What is asked: the ripples, the speed, the second print, the drive, what swings, the limits. */
export const inputs = {
  x_N: input(length.mm, { feature: 'span', range: [0.5, 500], tool: 'caliper', when: counted }),
  N: input(count.one, {
    typical: 5,
    decided: true,
    range: [1, 200],
    when: counted,
  }),
  P_w: input(length.mm, { feature: 'span', range: [0.05, 200], spread: 0.1, phone: 'ripples', when: direct }),
  v: placed('print.speed', { open: true, range: [1, 1000] }),
  x_0: input(length.mm, { feature: 'span', typical: 5, spread: 0.5, range: [0, 500], tool: 'rule' }),
  a: placed('carriage.acceleration', {
    range: [0, 1e5],
  }),
  theta_w: input(angle.deg, {
    feature: 'angle',
    seldom: true,
    typical: 0,
    spread: 1,
    range: [0, 80],
    tool: 'protractor',
  }),
  x_N2: input(length.mm, { feature: 'span', range: [0.5, 500], tool: 'caliper', when: { ...counted, ...two } }),
  N_2: input(count.one, {
    typical: 5,
    decided: true,
    range: [1, 200],
    when: { ...counted, ...two },
  }),
  P_w2: input(length.mm, {
    feature: 'span',
    range: [0.05, 200],
    spread: 0.1,
    phone: 'ripples',
    when: { ...direct, ...two },
  }),
  v_2: input(speed.mm_s, {
    range: [1, 1000],
    when: two,
  }),
  n_h: input(ratio.one, {
    optional: true,
    range: [0.2, 100],
    spread: 0.5,
  }),
  v_c: input(speed.mm_s, {
    range: [0, 500],
    from: 'print.corner-speed',
    when: { corner: 'kept' },
  }),
  p: placed('belt.pitch', { typical: 2, range: [1, 20], when: one }),
  z: placed('belt.pulley-teeth', {
    range: [8, 200],
    when: one,
  }),
  theta_s: placed('belt.step-angle', {
    seldom: true,
    range: [0.1, 15],
    when: one,
  }),
  i_b: placed('belt.gear-ratio', {
    seldom: true,
    range: [0.05, 200],
    when: one,
  }),
  M: placed('carriage.mass', { range: [0.01, 100] }),
  L_1: input(length.mm, { feature: 'span', seldom: true, typical: 250, spread: 50, range: [5, 3000], tool: 'tape' }),
  L_t1: placed('belt.length', {
    seldom: true,
    range: [50, 10000],
    tool: 'tape',
  }),
  w: placed('belt.width', { seldom: true, range: [2, 100] }),
  w_0: input(length.mm, {
    feature: 'set',
    seldom: true,
    typical: TABLE_WIDTH,
    range: [1, 200],
    basis: derived('allRowsBrought'),
  }),
  C_0: input(force.N, { feature: 'set', seldom: true, range: [100, 1e7], basis: commonPractice }),
  F: input(force.N, { feature: 'force', seldom: true, optional: true, range: [0.1, 1000], tool: 'luggage-scale' }),
  y_f: input(length.mm, {
    feature: 'travel',
    difference: true,
    seldom: true,
    optional: true,
    range: [0.005, 50],
    tool: 'dial',
  }),
  M_f: input(mass.kg, { feature: 'mass', seldom: true, optional: true, spread: 1, range: [0.1, 500] }),
  x_tol: input(length.mm, {
    feature: 'set',
    seldom: true,
    typical: 0.02,
    // A gloss wall shows half of that, a dull one hides half as much again.
    spread: 0.01,
    range: [0.001, 1],
    basis: commonPractice,
  }),
  g_lim: input(ratio.percent, {
    differs: 0.2,
    seldom: true,
    typical: 5,
    range: [0.5, 50],
    basis: commonPractice,
    when: one,
  }),
  kappa_lim: input(ratio.one, {
    seldom: true,
    typical: 0.5,
    range: [0.1, 0.9],
    basis: derived('midwayBetweenPart'),
    when: two,
  }),
};
