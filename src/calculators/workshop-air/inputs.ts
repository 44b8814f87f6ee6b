import { placed } from '../../engine/shared-places';
import { expansion, humidity, length, pressure, ratio, temperature, temperatureDifference } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { cite, derived, input } from '../../engine/calculator';

const softening = cite('Table of materials in this app', 'softens');
const air = { ask: ['cold', 'box'] };
const cold = { ask: 'cold' };
const box = { ask: 'box' };
const swing = { ask: 'swing' };
const kept = { ask: 'swing', zero: 'kept' };

export const inputs = {
  T: placed('room.air-temperature', {
    range: [-20, 60],
    tool: 'room-thermometer',
    when: air,
  }),
  U: placed('room.relative-humidity', {
    range: [1, 100],
    tool: 'hygrometer',
    when: air,
  }),
  T_s: input(temperature.C, { feature: 'contact', range: [-30, 60], tool: 'thermometer', when: cold }),
  m_d: input(temperatureDifference.K, {
    differs: 0.25,
    feature: 'set',
    seldom: true,
    typical: 2,
    range: [0, 20],
    basis: commonPractice,
    when: cold,
  }),
  T_b: input(temperature.C, {
    feature: 'air',
    typical: 45,
    spread: 2,
    range: [-20, 100],
    tool: 'thermometer',
    when: box,
  }),
  T_g: input(temperature.C, { feature: 'set', range: [30, 250], basis: softening, when: box }),
  m_T: input(temperatureDifference.K, {
    feature: 'set',
    seldom: true,
    typical: 5,
    range: [0, 50],
    basis: commonPractice,
    when: box,
  }),
  U_lim: input(humidity.percent, {
    differs: 0.15,
    feature: 'set',
    typical: 20,
    range: [1, 90],
    basis: commonPractice,
    when: box,
  }),
  p: input(pressure.hPa, {
    seldom: true,
    typical: 1000,
    spread: 40,
    range: [500, 1100],
    from: 'room.air-pressure',
    basis: derived('seaLevel'),
    when: air,
  }),
  T_1: input(temperature.C, { feature: ['air', 'contact'], range: [-20, 80], tool: 'room-thermometer', when: swing }),
  T_2: input(temperature.C, { feature: ['air', 'contact'], range: [-20, 80], tool: 'room-thermometer', when: swing }),
  l_s: input(length.mm, {
    feature: 'span',
    typical: 300,
    spread: 20,
    range: [0, 3000],
    tool: 'tape',
    from: 'z.held-to-nut',
    when: kept,
  }),
  l_f: input(length.mm, {
    feature: 'span',
    typical: 300,
    spread: 20,
    range: [0, 3000],
    tool: 'tape',
    from: 'frame.counted-height',
    when: swing,
  }),
  h_1: placed('print.first-layer', { range: [0.04, 2], when: swing }),
  q_1: input(ratio.percent, {
    differs: 0.2,
    seldom: true,
    typical: 25,
    range: [1, 100],
    basis: commonPractice,
    when: swing,
  }),
  alpha_f: input(expansion.um_mK, {
    seldom: true,
    range: [0, 300],
    from: 'frame.expansion',
    when: swing,
  }),
  alpha_s: input(expansion.um_mK, {
    seldom: true,
    range: [0, 300],
    from: 'z.screw-expansion',
    when: kept,
  }),
  alpha_r: input(expansion.um_mK, {
    seldom: true,
    range: [0, 300],
    from: 'frame.rest-expansion',
    when: swing,
  }),
};
