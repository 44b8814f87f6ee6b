import { placed } from '../../engine/shared-places';
import { angle, count, density, force, length, mass, pressure, ratio, speed, torque } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input, cite, derived } from '../../engine/calculator';
import { PLAIN, STANDARD } from './choices';

const iso = cite('ISO 2904:1977, trapezoidal threads', 'basicProfileCrest', true);
const euler = cite('Roark’s Formulas for Stress and Strain, 7th edition (2002)', 'elasticStabilityBars2', true);
const bearings = derived('rollingBearingsFriction');
const plain = { screw: PLAIN };
const twoMotors = { screws: 'two', drive: 'motors' };

/** What is asked: the load, the screw, the motor, then what bends and whirls it. */
export const inputs = {
  M_z: input(mass.kg, {
    feature: 'mass',
    typical: 2,
    spread: 0.3,
    basis: commonPractice,
    range: [0.05, 200],
    from: 'z.carried-mass',
  }),
  M: placed('carriage.mass', {
    range: [0.01, 100],
    when: twoMotors,
  }),
  x: input(length.mm, { feature: 'span', typical: 150, spread: 5, range: [0, 1000], tool: 'rule', when: twoMotors }),
  S: placed('z.screw-distance', {
    range: [20, 2000],
    tool: 'rule',
    when: twoMotors,
  }),
  n_z: input(count.one, {
    typical: 3,
    range: [3, 8],
    from: 'z.screw-count',
    when: { screws: 'more' },
  }),
  k_u: input(ratio.one, {
    seldom: true,
    typical: 1.3,
    spread: 0.2,
    basis: commonPractice,
    range: [1, 8],
    when: { screws: 'more' },
  }),
  P_h: placed('z.lead', {
    range: [0.5, 50],
  }),
  P: input(length.mm, {
    feature: 'set',
    seldom: true,
    typical: 2,
    range: [0.5, 12],
    basis: iso,
    from: 'z.thread-pitch',
    when: plain,
  }),
  d: input(length.mm, {
    feature: 'outside',
    seldom: true,
    typical: 8,
    spread: 0.13,
    range: [3, 60],
    basis: iso,
    tool: 'caliper',
    from: 'z.thread-diameter',
    when: plain,
  }),
  a_c: input(length.mm, {
    feature: 'set',
    seldom: true,
    typical: 0.25,
    range: [0, 1],
    basis: iso,
    when: { screw: STANDARD },
  }),
  d_k: placed('z.core-diameter', {
    basis: iso,
    range: [1, 60],
    tool: 'caliper',
    when: { screw: ['own', 'ball'] },
  }),
  alpha: input(angle.deg, {
    seldom: true,
    typical: 15,
    range: [0, 45],
    basis: iso,
    decided: true,
    when: plain,
  }),
  mu: input(ratio.one, {
    typical: 0.13,
    spread: 0.04,
    basis: cite('Shigley’s Mechanical Engineering Design, 10th edition (2015)', 'chapterFrictionThreaded', true),
    range: [0.01, 0.6],
    when: plain,
  }),
  eta_b: input(ratio.percent, {
    typical: 90,
    spread: 5,
    basis: commonPractice,
    range: [20, 99],
    when: { screw: 'ball' },
  }),
  T_d: input(torque.N_mm, {
    typical: 15,
    spread: 10,
    basis: commonPractice,
    range: [0, 2000],
    from: 'z.detent-torque',
  }),
  i_g: placed('z.gear-ratio', {
    seldom: true,
    range: [0.05, 200],
  }),
  T_b: input(torque.N_mm, {
    seldom: true,
    typical: 2,
    spread: 2,
    basis: commonPractice,
    range: [0, 500],
    from: 'z.bearing-drag',
  }),
  mu_c: input(ratio.one, {
    seldom: true,
    typical: 0.003,
    spread: 0.002,
    basis: bearings,
    range: [0, 0.5],
  }),
  d_c: input(length.mm, {
    feature: 'set',
    seldom: true,
    typical: 10,
    spread: 2,
    basis: commonPractice,
    range: [0, 80],
    from: 'z.collar-diameter',
  }),
  m_lim: input(ratio.one, { differs: 0.1, typical: 1.5, range: [1, 10], basis: commonPractice }),
  F_x: input(force.N, {
    seldom: true,
    decided: true,
    typical: 100,
    range: [5, 500],
    basis: commonPractice,
  }),
  theta_s: placed('z.step-angle', {
    seldom: true,
    range: [0.1, 15],
  }),
  L: placed('z.screw-length', {
    range: [50, 3000],
    tool: 'rule',
  }),
  tau_h: placed('z.holding-torque', {
    range: [5, 20000],
    basis: commonPractice,
  }),
  k_I: input(ratio.percent, { decided: true, typical: 100, range: [5, 100], basis: commonPractice }),
  m_bl: input(ratio.one, { differs: 0.1, seldom: true, typical: 2, range: [1, 10], basis: commonPractice }),
  v: input(speed.mm_s, {
    typical: 10,
    range: [0.1, 500],
    basis: commonPractice,
    from: 'z.speed',
  }),
  k_n: input(ratio.percent, { differs: 0.05, seldom: true, typical: 80, range: [10, 100], basis: commonPractice }),
  K: input(ratio.one, {
    seldom: true,
    typical: 1,
    range: [0.4, 3],
    basis: euler,
    decided: true,
  }),
  k_1: input(ratio.one, {
    seldom: true,
    typical: 9.8696,
    range: [1, 30],
    basis: cite('Blevins, Formulas for Natural Frequency and Mode Shape (1979)', 'singleSpanBeams2', true),
    decided: true,
  }),
  E: input(pressure.GPa, {
    seldom: true,
    typical: 206,
    spread: 4,
    basis: cite('Machinery’s Handbook, 29th edition (2012)', 'moduliElasticitySteels', true),
    range: [1, 400],
  }),
  R_e: input(pressure.MPa, {
    seldom: true,
    typical: 400,
    spread: 150,
    basis: cite('Shigley’s Mechanical Engineering Design, 10th edition (2015)', 'tablesHotRolled', true),
    range: [10, 2000],
  }),
  rho: input(density.kg_m3, {
    seldom: true,
    typical: 7850,
    spread: 50,
    basis: cite('Machinery’s Handbook, 29th edition (2012)', 'densitySteels', true),
    range: [1000, 20000],
  }),
};
