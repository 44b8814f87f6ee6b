import { power, ratio, resistance, temperature, temperatureDifference, voltage } from '../../quantity/kinds';
import { cite, commonPractice } from '../../reference/citation';
import { input, type InputSpec } from '../../engine/calculator';

const sensor = { what: 'sensor' };
const ohms = { what: 'sensor', by: 'ohms' };
const shown = { what: 'sensor', by: 'shown' };
const beta = { what: 'sensor', law: 'beta' };
const three = { what: 'sensor', law: 'three' };
const heater = { what: 'heater' };

const table = (label: string, range: readonly [number, number], from: string): InputSpec =>
  input(label, resistance.kohm, {
    range,
    decided: true,
    from,
    hint: 'From the maker’s table of this very sensor.',
    when: three,
  });
const line = (label: string, typical: number, range: readonly [number, number]): InputSpec =>
  input(label, temperature.C, { typical, range, decided: true, when: three });

/** What is asked: the reading, the room, what the sensor is said to be; or the heater and its marking. */
export const inputs = {
  R_m: input('Sensor’s resistance, measured', resistance.kohm, {
    range: [1e-4, 2e5],
    tool: 'ohmmeter',
    hint: 'Cold, unplugged, at the sensor’s own connector. Do not touch the pins: fingers conduct. Where the meter shows OL or ∞ type 100000 kΩ.',
    when: ohms,
  }),
  T_r: input('Temperature shown', temperature.C, {
    range: [-100, 700],
    spread: 0.5,
    hint: 'Cold machine, heater off.',
    when: shown,
  }),
  T_a: input('Temperature by the room thermometer', temperature.C, {
    range: [-20, 60],
    tool: 'room-thermometer',
    hint: 'Beside the sensor, both left alone for half an hour; the machine off for three hours, no fan, no sun.',
    when: sensor,
  }),
  R_n: input('Sensor: resistance at 25 °C', resistance.kohm, {
    typical: 100,
    spread: 1,
    range: [1, 500],
    from: 'sensor.resistance',
    basis: commonPractice,
    when: beta,
  }),
  B: input('Sensor: B value', temperatureDifference.K, {
    typical: 3950,
    spread: 40,
    range: [3000, 5000],
    from: 'sensor.beta',
    basis: commonPractice,
    hint: 'As marked. B 25/50 and B 25/85 of the same sensor differ by a per cent.',
    when: beta,
  }),
  T_1: line('Table, first line: temperature', 25, [-40, 60]),
  R_1: table('Table, first line: resistance', [2, 2000], 'sensor.first-resistance'),
  T_2: line('Table, second line: temperature', 100, [70, 150]),
  R_2: table('Table, second line: resistance', [0.1, 100], 'sensor.second-resistance'),
  T_3: line('Table, third line: temperature', 200, [160, 350]),
  R_3: table('Table, third line: resistance', [0.01, 10], 'sensor.third-resistance'),
  T_w: input('Working temperature', temperature.C, {
    typical: 215,
    range: [40, 500],
    from: 'heater.temperature',
    decided: true,
    basis: commonPractice,
    when: sensor,
  }),
  dT_max: input('May differ from the thermometer by', temperatureDifference.K, {
    typical: 4,
    range: [0.5, 20],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: sensor,
  }),
  delta_B: input('B value may be off by', ratio.percent, {
    typical: 1,
    range: [0.1, 10],
    decided: true,
    seldom: true,
    basis: cite('IEC 60539-1', 'usual classes', true),
    when: beta,
  }),
  T_n: input('Reference temperature of the B value', temperature.C, {
    typical: 25,
    range: [0, 50],
    decided: true,
    seldom: true,
    basis: cite('IEC 60539-1', 'rated at 25 °C', true),
    when: beta,
  }),
  R_lo: input('Shorted below', resistance.kohm, {
    typical: 0.5,
    range: [1e-3, 10],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: ohms,
  }),
  R_hi: input('Broken above', resistance.kohm, {
    typical: 3000,
    range: [100, 1e5],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: ohms,
  }),
  T_lo: input('Broken where it shows less than', temperature.C, {
    typical: -10,
    range: [-100, 0],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: shown,
  }),
  T_hi: input('Shorted where it shows more than, cold', temperature.C, {
    typical: 120,
    range: [70, 600],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: shown,
  }),
  R_h: input('Heater’s resistance', resistance.ohm, {
    range: [0.05, 1e6],
    tool: 'ohmmeter',
    from: 'heater.resistance',
    hint: 'Unplugged and cold, at the heater’s own wires, taken off the board; less what the meter shows with its tips together. OL or ∞: type 1000000 Ω.',
    when: heater,
  }),
  V: input('Supply voltage', voltage.V, {
    typical: 24,
    spread: 0.5,
    range: [1, 250],
    tool: 'voltmeter',
    from: 'heater.voltage',
    hint: 'As marked on the supply. Measuring on mains is for qualified people.',
    when: heater,
  }),
  V_r: input('Heater marked: voltage', voltage.V, {
    typical: 24,
    range: [1, 250],
    from: 'heater.rated-voltage',
    decided: true,
    when: heater,
  }),
  P_r: input('Heater marked: power', power.W, {
    typical: 40,
    range: [1, 3000],
    from: 'heater.rated-power',
    decided: true,
    when: heater,
  }),
  k_lo: input('Least power, over the marked', ratio.one, {
    typical: 0.8,
    range: [0.1, 1],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: heater,
  }),
  k_hi: input('Most power, over the marked', ratio.one, {
    typical: 1.25,
    range: [1, 3],
    decided: true,
    seldom: true,
    basis: commonPractice,
    when: heater,
  }),
};
