import { placed } from '../../engine/shared-places';
import { power, ratio, resistance, temperature, temperatureDifference, voltage } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input, cite } from '../../engine/calculator';

const sensor = { what: 'sensor' };
const ohms = { what: 'sensor', by: 'ohms' };
const shown = { what: 'sensor', by: 'shown' };
const beta = { what: 'sensor', law: 'beta' };
const three = { what: 'sensor', law: 'three' };
const platinum = { what: 'sensor', law: ['pt100', 'pt1000'] };
const heater = { what: 'heater' };

const table = (range: readonly [number, number], from: string) =>
  input(resistance.kohm, {
    range,
    decided: true,
    from,
    when: three,
  });
const line = (typical: number, range: readonly [number, number]) =>
  input(temperature.C, { typical, range, decided: true, when: three });

/** What is asked: the reading, the room, what the sensor is said to be; or the heater and its marking. */
export const inputs = {
  R_m: input(resistance.kohm, { feature: 'resistance', range: [0, 2e5], tool: 'ohmmeter', when: ohms }),
  T_r: input(temperature.C, { feature: 'shown', range: [-100, 700], spread: 0.5, when: shown }),
  T_h: input(temperature.C, { feature: 'shown', range: [-100, 700], spread: 0.5, when: shown }),
  T_a: input(temperature.C, { feature: 'air', range: [-20, 60], tool: 'room-thermometer', when: sensor }),
  R_n: input(resistance.kohm, {
    feature: 'set',
    typical: 100,
    spread: 1,
    range: [1, 500],
    from: 'sensor.resistance',
    basis: commonPractice,
    when: beta,
  }),
  B: input(temperatureDifference.K, {
    feature: 'set',
    typical: 3950,
    spread: 40,
    range: [3000, 5000],
    from: 'sensor.beta',
    basis: commonPractice,
    when: beta,
  }),
  R_0: input(resistance.ohm, {
    feature: 'marked',
    seldom: true,
    range: [10, 10000],
    basis: cite('IEC 60751:2022', 'classB', true),
    when: platinum,
  }),
  T_1: line(25, [-40, 60]),
  R_1: table([2, 2000], 'sensor.first-resistance'),
  T_2: line(100, [70, 150]),
  R_2: table([0.1, 100], 'sensor.second-resistance'),
  T_3: line(200, [160, 350]),
  R_3: table([0.01, 10], 'sensor.third-resistance'),
  T_w: placed('heater.temperature', {
    range: [40, 500],
    decided: true,
    basis: commonPractice,
    when: sensor,
  }),
  dT_max: input(temperatureDifference.K, {
    typical: 4,
    range: [0.5, 20],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: sensor,
  }),
  delta_B: input(ratio.percent, {
    typical: 1,
    range: [0.1, 10],
    decided: true,
    seldom: true,
    basis: cite('IEC 60539-1:2016', 'usualClasses', true),
    when: beta,
  }),
  T_n: input(temperature.C, {
    typical: 25,
    range: [0, 50],
    decided: true,
    seldom: true,
    basis: cite('IEC 60539-1:2016', 'ratedAt25', true),
    when: beta,
  }),
  R_lo: input(resistance.kohm, {
    typical: 0.5,
    range: [1e-3, 10],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: ohms,
  }),
  R_hi: input(resistance.kohm, {
    typical: 3000,
    range: [0.1, 1e5],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: ohms,
  }),
  T_lo: input(temperature.C, {
    typical: -10,
    range: [-100, 0],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: shown,
  }),
  T_hi: input(temperature.C, {
    typical: 120,
    range: [70, 600],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: shown,
  }),
  dT_f: input(temperatureDifference.K, {
    typical: 2,
    range: [0.5, 20],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: shown,
  }),
  R_h: placed('heater.resistance', {
    range: [0.05, 1e6],
    tool: 'ohmmeter',
    when: heater,
  }),
  V: placed('heater.voltage', {
    range: [1, 250],
    tool: 'voltmeter',
    when: heater,
  }),
  V_r: input(voltage.V, {
    typical: 24,
    range: [1, 250],
    from: 'heater.rated-voltage',
    decided: true,
    when: heater,
  }),
  P_r: input(power.W, {
    typical: 40,
    range: [1, 3000],
    from: 'heater.rated-power',
    decided: true,
    when: heater,
  }),
  k_lo: input(ratio.one, {
    typical: 0.8,
    range: [0.1, 1],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: heater,
  }),
  k_hi: input(ratio.one, {
    typical: 1.25,
    range: [1, 3],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: heater,
  }),
};
