import { placed } from '../../engine/shared-places';
import { density, force, frequency, length, pressure, ratio } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input, cite } from '../../engine/calculator';

const shell = { core: 'shell' };
const typicalHold = { bed: ['film', 'glass', 'glue'] };
const tested = { bed: 'tested' };

export const inputs = {
  b: input(length.mm, { feature: 'outside', range: [0.5, 500], tool: 'caliper' }),
  L: input(length.mm, { feature: 'outside', range: [1, 2000], tool: 'rule' }),
  t_w: input(length.mm, {
    feature: 'outside',
    typical: 0.9,
    spread: 0.05,
    range: [0.1, 100],
    tool: 'caliper',
    when: shell,
  }),
  q_i: input(ratio.percent, {
    typical: 15,
    spread: 3,
    range: [0, 100],
    when: shell,
  }),
  w: placed('print.line-width', { range: [0.1, 4] }),
  F: input(force.N, {
    feature: 'force',
    typical: 0.5,
    spread: 0.4,
    range: [0.01, 50],
    tool: 'spring-balance',
    basis: commonPractice,
  }),
  E: input(pressure.GPa, {
    seldom: true,
    range: [0.005, 20],
    basis: cite('Table of materials in this app', 'modulusRoomTemperature'),
  }),
  q_E: input(ratio.one, {
    seldom: true,
    typical: 0.8,
    spread: 0.15,
    range: [0.05, 1.2],
    basis: commonPractice,
  }),
  q_T: input(ratio.one, {
    seldom: true,
    range: [0.02, 1],
    basis: commonPractice,
  }),
  rho: input(density.g_cm3, {
    seldom: true,
    range: [0.5, 8],
    basis: cite('Table of materials in this app', 'density'),
  }),
  q_w: input(ratio.percent, {
    differs: 0.2,
    seldom: true,
    decided: true,
    typical: 25,
    range: [1, 200],
    basis: commonPractice,
  }),
  f_m: input(frequency.Hz, {
    typical: 40,
    spread: 15,
    range: [1, 1000],
    basis: commonPractice,
  }),
  r_min: input(ratio.one, {
    seldom: true,
    decided: true,
    typical: 2,
    range: [1.1, 20],
    basis: commonPractice,
  }),
  sigma_a: input(pressure.MPa, {
    seldom: true,
    range: [0.001, 30],
    basis: commonPractice,
    when: typicalHold,
  }),
  q_p: input(ratio.percent, {
    seldom: true,
    typical: 40,
    spread: 20,
    range: [2, 100],
    basis: commonPractice,
    when: typicalHold,
  }),
  b_t: input(length.mm, { feature: 'outside', typical: 10, range: [2, 100], tool: 'caliper', when: tested }),
  h_t: input(length.mm, { feature: 'span', typical: 18, spread: 0.5, range: [1, 200], tool: 'rule', when: tested }),
  F_t: input(force.N, { feature: 'force', range: [0.05, 500], tool: 'luggage-scale', when: tested }),
  r: input(length.mm, { feature: 'span', range: [0, 200], tool: 'rule' }),
  q_r: input(ratio.percent, {
    seldom: true,
    range: [5, 100],
    basis: commonPractice,
  }),
};
