import {
  angle,
  consistency,
  density,
  force,
  length,
  pressure,
  ratio,
  shearRate,
  speed,
  volume,
} from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input } from '../calculator';
import { flowSpread, flowValues, meltModulus, solidValues } from './materials';

const table = { source: 'table' };
const pushed = { source: 'force' };
const tube = { drive: 'tube' };

/** Everything that is asked, from the line printed to the test piece planned. */
export const inputs = {
  x_set: input('Pull-back length now', length.mm, { range: [0, 30], from: 'extruder.pull-back' }),
  d: input('Nozzle bore', length.mm, { typical: 0.4, spread: 0.01, range: [0.1, 2], from: 'nozzle.diameter' }),
  l: input('Length of the land', length.mm, {
    typical: 0.6,
    spread: 0.1,
    range: [0.05, 10],
    basis: commonPractice,
    from: 'nozzle.land',
    hint: 'The straight part of the bore, at the tip.',
  }),
  alpha: input('Half angle of the cone', angle.deg, {
    typical: 30,
    range: [5, 30],
    basis: commonPractice,
    from: 'nozzle.cone-half-angle',
    hint: 'Between axis and wall. The formula holds to about 30°: for a steeper cone enter 30°.',
  }),
  d_0: input('Bore above the cone', length.mm, {
    typical: 2,
    spread: 0.1,
    range: [0.5, 6],
    basis: commonPractice,
    from: 'nozzle.inlet',
  }),
  h: input('Layer height', length.mm, { typical: 0.2, range: [0.02, 2], from: 'print.layer' }),
  w: input('Line width', length.mm, { typical: 0.45, range: [0.1, 4], from: 'print.line-width' }),
  v: input('Print speed', speed.mm_s, { typical: 50, range: [1, 1000], basis: commonPractice, from: 'print.speed' }),
  d_f: input('Filament diameter', length.mm, {
    typical: 1.75,
    spread: 0.03,
    range: [1, 4],
    tool: 'caliper',
    from: 'filament.diameter',
  }),
  K: input('Consistency of the melt', consistency.Pa_sn, {
    range: [10, 200000],
    basis: flowValues,
    hint: 'Shear stress at a shear rate of 1/s. Tables differ widely: see the factor below.',
    when: table,
  }),
  f_K: input('Factor by which that may be off', ratio.one, {
    typical: 3,
    range: [1, 10],
    basis: flowSpread,
    when: table,
  }),
  beta: input('Place in that band: 0 middle, +1 high end, −1 low end', ratio.one, {
    typical: 0,
    spread: 1,
    range: [-1, 1],
    signed: true,
    hint: 'Leave at 0 ± 1. After a test piece, ask for the value here that gives the length you found.',
    when: table,
  }),
  F_m: input('Push force measured at this flow', force.N, {
    spread: 2,
    range: [0.2, 300],
    tool: 'luggage-scale',
    hint: 'Drive open, hot end at heat: press the filament in with a scale or a weight at the feed speed given below.',
    when: pushed,
  }),
  n: input('Flow index of the melt', ratio.one, {
    range: [0.1, 1],
    basis: flowValues,
    hint: 'From 0 to 1; 1 flows like oil.',
  }),
  gamma_min: input('Least shear rate the power law is good for', shearRate.per_s, {
    typical: 10,
    range: [0.1, 1000],
    basis: commonPractice,
  }),
  E: input('Modulus of the filament', pressure.GPa, { range: [0.005, 20], basis: solidValues }),
  B: input('Bulk modulus of the melt', pressure.GPa, { range: [0.1, 10], basis: meltModulus }),
  rho: input('Density of the plastic', density.g_cm3, { range: [0.5, 8], basis: solidValues }),
  L: input('Free length from gear to melt', length.mm, {
    range: [5, 3000],
    tool: 'rule',
    from: 'extruder.free-length',
  }),
  D_t: input('Bore of the tube', length.mm, {
    typical: 2,
    spread: 0.05,
    range: [1, 8],
    from: 'extruder.tube-bore',
    when: tube,
  }),
  Theta: input('All bends of the tube added up', angle.deg, {
    typical: 180,
    spread: 20,
    range: [0, 1080],
    from: 'extruder.tube-bend',
    hint: 'Half a loop is 180°. Bends to either side add.',
    when: tube,
  }),
  V: input('Volume of melt', volume.mm3, {
    typical: 40,
    spread: 15,
    range: [1, 1000],
    basis: commonPractice,
    from: 'extruder.melt-volume',
  }),
  s_b: input('Backlash of the drive', length.mm, {
    typical: 0.1,
    spread: 0.05,
    range: [0, 5],
    basis: commonPractice,
    from: 'extruder.backlash',
    hint: 'How far the filament moves to and fro while the motor holds still.',
  }),
  v_x: input('Pull-back speed', speed.mm_s, {
    typical: 40,
    range: [1, 300],
    basis: commonPractice,
    from: 'extruder.pull-back-speed',
  }),
  v_t: input('Travel speed', speed.mm_s, {
    typical: 150,
    range: [5, 2000],
    basis: commonPractice,
    from: 'print.travel-speed',
  }),
  a_lo: input('Shortfall allowed', length.mm, { range: [0, 10], basis: commonPractice }),
  a_hi: input('Excess allowed', length.mm, {
    range: [0, 10],
    basis: commonPractice,
    hint: 'More than the shortfall: the springiness of the melt wants some and is not in the figure.',
  }),
  x_step: input('Step to change it by', length.mm, { range: [0.01, 5], basis: commonPractice }),
  d_2: input('Bore of the other nozzle', length.mm, { typical: 0.2, range: [0.1, 2] }),
  phi: input('Pressure share at which oozing counts as over', ratio.one, {
    typical: 0.5,
    range: [0.05, 0.95],
    basis: commonPractice,
    hint: 'The flow falls much faster than the pressure: see the share of the flow left then.',
  }),
  g: input('Planned test piece: gap between the blocks', length.mm, {
    typical: 40,
    range: [1, 500],
    basis: commonPractice,
  }),
  b: input('Planned test piece: side of a block', length.mm, {
    typical: 8,
    range: [0.5, 100],
    basis: commonPractice,
  }),
  h_b: input('Planned test piece: height', length.mm, { typical: 10, range: [0.5, 200], basis: commonPractice }),
  d_v: input('Thinnest hair you can see', length.mm, { typical: 0.05, range: [0.005, 1], basis: commonPractice }),
};
