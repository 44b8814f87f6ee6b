import { placed } from '../../engine/shared-places';
import {
  heatConductance,
  heatTransfer,
  length,
  mass,
  ratio,
  specificHeat,
  temperature,
  temperatureDifference,
  time,
} from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input, cite, derived } from '../../engine/calculator';
import { cells } from './cells';

const emissivity = cite(
  'Incropera, Fundamentals of Heat and Mass Transfer, 6th edition (2007)',
  'tablesEmissivity',
  true,
);
const plates = cite('Incropera, Fundamentals of Heat and Mass Transfer, 6th edition (2007)', 'churchillChu', true);
const unmeasured = ['surface', 'held', 'cooling'];
const surface = { loss: 'surface' };
const fitted = { cutoff: 'fitted' };

const edge = (from: string) => input(length.mm, { feature: 'outside', range: [3, 60], tool: 'caliper', from });

/** What is asked: heater, block, how it loses heat, guard, what the parts stand. */
export const inputs = {
  R_h: placed('heater.resistance', {
    range: [0.5, 3000],
    tool: 'ohmmeter',
  }),
  V: placed('heater.voltage', {
    range: [5, 250],
    tool: 'voltmeter',
  }),
  D_h: input(ratio.percent, {
    range: [0.5, 100],
    spread: 2,
    when: { loss: 'held' },
  }),
  T_w: placed('heater.temperature', {
    range: [40, 500],
    decided: true,
    basis: commonPractice,
  }),
  T_a: input(temperature.C, { feature: 'air', typical: 22, spread: 3, range: [-20, 80], tool: 'room-thermometer' }),
  m_b: input(mass.g, {
    feature: 'mass',
    range: [0.5, 1000],
    tool: 'kitchen-scale',
    from: 'heater.block-mass',
    when: { loss: unmeasured },
  }),
  m_x: input(mass.g, {
    feature: 'mass',
    typical: 6,
    spread: 2,
    range: [0, 200],
    tool: 'kitchen-scale',
    basis: commonPractice,
    when: { loss: unmeasured },
  }),
  a_1: edge('heater.block-length'),
  a_2: edge('heater.block-width'),
  a_3: edge('heater.block-height'),
  t_g: input(time.s, { feature: 'set', range: [1, 600], from: 'heater.guard-time' }),
  dT_l: input(temperatureDifference.K, { feature: 'set', range: [0.5, 30], from: 'heater.guard-lag' }),
  dT_g: input(temperatureDifference.K, { decided: true, feature: 'set', range: [0.5, 30], from: 'heater.guard-rise' }),
  T_li: input(temperature.C, {
    typical: 260,
    range: [50, 400],
    decided: true,
    basis: commonPractice,
    when: { liner: 'ptfe' },
  }),
  T_se: input(temperature.C, {
    typical: 300,
    range: [50, 1000],
    from: 'sensor.rating',
    decided: true,
    basis: commonPractice,
  }),
  T_f: input(temperature.C, {
    feature: 'set',
    range: [50, 600],
    from: 'heater.cutoff-temperature',
    spread: 10,
    when: fitted,
  }),
  T_bl: input(temperature.C, { seldom: true, range: [100, 2000], decided: true }),
  T_no: input(temperature.C, { seldom: true, range: [100, 2000], decided: true }),
  dT_f: input(temperatureDifference.K, {
    seldom: true,
    typical: 20,
    range: [0, 200],
    decided: true,
    basis: commonPractice,
    when: fitted,
  }),
  c_b: input(specificHeat.J_kgK, {
    seldom: true,
    range: [100, 2000],
    when: { loss: unmeasured },
  }),
  c_x: input(specificHeat.J_kgK, {
    seldom: true,
    typical: 430,
    spread: 50,
    range: [100, 2000],
    basis: derived('brassToSteel'),
    when: { loss: unmeasured },
  }),
  epsilon: input(ratio.one, {
    seldom: true,
    typical: 0.3,
    spread: 0.1,
    range: [0.02, 1],
    basis: emissivity,
  }),
  h_c: input(heatTransfer.W_m2K, {
    seldom: true,
    typical: 13,
    spread: 3,
    range: [1, 200],
    basis: plates,
    when: surface,
  }),
  G_x: input(heatConductance.W_K, {
    seldom: true,
    typical: 0.04,
    spread: 0.015,
    range: [0, 2],
    basis: derived('stainlessSteelTube'),
    when: surface,
  }),
  t_s: input(time.s, {
    feature: 'time',
    seldom: true,
    typical: 8,
    spread: 4,
    range: [0.1, 300],
    basis: commonPractice,
  }),
  t_max: input(time.s, {
    seldom: true,
    typical: 30,
    range: [1, 600],
    decided: true,
    basis: commonPractice,
  }),
  f_g: input(ratio.one, {
    seldom: true,
    typical: 1.5,
    range: [1, 10],
    decided: true,
    basis: commonPractice,
  }),
  ...cells,
};
