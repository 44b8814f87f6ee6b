import { placed } from '../../engine/shared-places';
import { angle, consistency, density, force, length, pressure, ratio, shearRate, speed } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input, derived } from '../../engine/calculator';
import { flowSpread, flowValues, meltModulus, solidValues } from './materials';

const table = { source: 'table' };
const pushed = { source: 'force' };
const tube = { drive: 'tube' };

/** Everything that is asked, from the line printed to the test piece planned. */
export const inputs = {
  x_set: input(length.mm, { range: [0, 30], from: 'extruder.pull-back' }),
  d: input(length.mm, { typical: 0.4, spread: 0.01, range: [0.1, 2], from: 'nozzle.diameter' }),
  l: input(length.mm, {
    seldom: true,
    typical: 0.6,
    spread: 0.1,
    range: [0.05, 10],
    basis: commonPractice,
    from: 'nozzle.land',
  }),
  alpha: input(angle.deg, {
    seldom: true,
    typical: 30,
    range: [5, 30],
    basis: commonPractice,
    from: 'nozzle.cone-half-angle',
  }),
  d_0: input(length.mm, {
    seldom: true,
    typical: 2,
    spread: 0.1,
    range: [0.5, 6],
    basis: commonPractice,
    from: 'nozzle.inlet',
  }),
  f_c: input(ratio.one, {
    seldom: true,
    typical: 1.5,
    spread: 0.5,
    range: [1, 5],
    basis: derived('judgedBetweenNone'),
  }),
  h: placed('print.layer', { range: [0.02, 2] }),
  w: placed('print.line-width', { range: [0.1, 4] }),
  v: placed('print.speed', { range: [1, 1000], basis: commonPractice }),
  d_f: placed('filament.diameter', {
    range: [1, 4],
    tool: 'caliper',
  }),
  K: input(consistency.Pa_sn, {
    seldom: true,
    range: [10, 200000],
    basis: flowValues,
    when: table,
  }),
  f_K: input(ratio.one, {
    seldom: true,
    typical: 3,
    range: [1, 10],
    basis: flowSpread,
    when: table,
  }),
  beta: input(ratio.one, {
    seldom: true,
    typical: 0,
    spread: 1,
    range: [-1, 1],
    signed: true,
    when: table,
  }),
  F_m: input(force.N, {
    spread: 2,
    range: [0.2, 300],
    tool: 'luggage-scale',
    when: pushed,
  }),
  n: input(ratio.one, {
    seldom: true,
    range: [0.1, 0.99],
    basis: flowValues,
  }),
  gamma_min: input(shearRate.per_s, {
    seldom: true,
    typical: 10,
    range: [0.1, 1000],
    basis: commonPractice,
  }),
  E: input(pressure.GPa, { seldom: true, range: [0.005, 20], basis: solidValues }),
  B: input(pressure.GPa, { seldom: true, range: [0.1, 10], basis: meltModulus }),
  rho: input(density.g_cm3, { seldom: true, range: [0.5, 8], basis: solidValues }),
  L: input(length.mm, {
    range: [5, 3000],
    tool: 'rule',
    from: 'extruder.free-length',
  }),
  D_t: input(length.mm, {
    typical: 2,
    spread: 0.05,
    range: [1, 8],
    from: 'extruder.tube-bore',
    when: tube,
  }),
  Theta: input(angle.deg, {
    typical: 180,
    spread: 20,
    range: [0, 1080],
    from: 'extruder.tube-bend',
    when: tube,
  }),
  mu_t: input(ratio.one, {
    seldom: true,
    typical: 0.1,
    spread: 0.05,
    range: [0, 0.4],
    basis: commonPractice,
    when: tube,
  }),
  V: placed('extruder.melt-volume', {
    seldom: true,
    range: [1, 1000],
    basis: commonPractice,
  }),
  s_b: input(length.mm, {
    seldom: true,
    typical: 0.1,
    spread: 0.05,
    range: [0, 5],
    basis: commonPractice,
    from: 'extruder.backlash',
  }),
  v_x: input(speed.mm_s, {
    seldom: true,
    typical: 40,
    range: [1, 300],
    basis: commonPractice,
    from: 'extruder.pull-back-speed',
  }),
  v_t: input(speed.mm_s, {
    typical: 150,
    range: [5, 2000],
    basis: commonPractice,
    from: 'print.travel-speed',
  }),
  a_lo: input(length.mm, { seldom: true, range: [0, 10], basis: commonPractice }),
  a_hi: input(length.mm, {
    seldom: true,
    range: [0, 10],
    basis: commonPractice,
  }),
  x_max: input(length.mm, {
    seldom: true,
    range: [0.1, 30],
    basis: commonPractice,
    from: 'extruder.most-pull-back',
  }),
  F_max: input(force.N, {
    seldom: true,
    typical: 60,
    range: [1, 1000],
    basis: commonPractice,
    from: 'extruder.push',
  }),
  x_step: input(length.mm, { seldom: true, range: [0.01, 5], basis: commonPractice }),
  d_2: input(length.mm, { typical: 0.2, range: [0.1, 2] }),
  phi: input(ratio.one, {
    seldom: true,
    typical: 0.5,
    range: [0.05, 0.95],
    basis: commonPractice,
  }),
  g: input(length.mm, {
    seldom: true,
    typical: 40,
    range: [1, 500],
    basis: commonPractice,
  }),
  b: input(length.mm, {
    seldom: true,
    typical: 8,
    range: [0.5, 100],
    basis: commonPractice,
  }),
  h_b: input(length.mm, {
    seldom: true,
    typical: 10,
    range: [0.5, 200],
    basis: commonPractice,
  }),
  d_v: input(length.mm, {
    seldom: true,
    typical: 0.05,
    range: [0.005, 1],
    basis: commonPractice,
  }),
};
