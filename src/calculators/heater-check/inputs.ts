import {
  heatConductance,
  heatTransfer,
  length,
  mass,
  ratio,
  resistance,
  specificHeat,
  temperature,
  temperatureDifference,
  time,
  voltage,
} from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { materials } from '../../reference/materials';
import { input, type InputSpec } from '../../engine/calculator';
import { cells } from './cells';

const emissivity = cite('Incropera, Fundamentals of Heat and Mass Transfer', 'tables of emissivity', true);
const plates = cite(
  'Incropera, Fundamentals of Heat and Mass Transfer',
  'eq. 9.27 (Churchill and Chu): 13 W/(m²·K) for 20 mm at 210 °C',
  true,
);
const unmeasured = ['surface', 'held', 'cooling'];
const surface = { loss: 'surface' };
const fitted = { cutoff: 'fitted' };

const edge = (label: string, typical: number, from: string): InputSpec =>
  input(label, length.mm, { typical, spread: 0.5, range: [3, 60], tool: 'caliper', from });

/** What is asked: heater, block, how it loses heat, watchdog, what the parts stand. */
export const inputs = {
  R_h: input('Heater’s resistance', resistance.ohm, {
    range: [0.5, 3000],
    tool: 'ohmmeter',
    from: 'heater.resistance',
    hint: 'Unplugged and cold, at the heater’s own wires, taken off the board. 24 V 40 W has 14.4 Ω, 12 V 40 W has 3.6 Ω.',
  }),
  V: input('Supply voltage', voltage.V, {
    typical: 24,
    spread: 0.5,
    range: [5, 250],
    tool: 'voltmeter',
    from: 'heater.voltage',
    hint: 'As marked on the supply. Measuring on mains is for qualified people.',
  }),
  D_h: input('Share of full power that holds it', ratio.percent, {
    range: [0.5, 100],
    spread: 2,
    hint: 'Held at its working temperature for five minutes: the power the screen shows in per cent, or the time the heater’s lamp is on over the time of a whole cycle.',
    when: { loss: 'held' },
  }),
  T_w: input('Working temperature', temperature.C, {
    typical: 215,
    range: [40, 500],
    from: 'heater.temperature',
    decided: true,
    basis: commonPractice,
    hint: 'PLA is printed near 215 °C.',
  }),
  T_a: input('Room temperature', temperature.C, {
    typical: 22,
    spread: 3,
    range: [-20, 80],
    tool: 'room-thermometer',
    hint: 'In the chamber, if there is one.',
  }),
  m_b: input('Mass of the block', mass.g, {
    typical: 10.4,
    spread: 1.5,
    range: [0.5, 1000],
    tool: 'kitchen-scale',
    from: 'heater.block-mass',
    hint: 'Or length × width × height in cm × 2.7 g for aluminium, 8.9 for copper, 8.5 for brass, less the holes.',
    when: { loss: unmeasured },
  }),
  m_x: input('Mass of heater, nozzle and screws', mass.g, {
    typical: 6,
    spread: 2,
    range: [0, 200],
    tool: 'kitchen-scale',
    hint: 'All that gets hot with the block.',
    basis: commonPractice,
    when: { loss: unmeasured },
  }),
  a_1: edge('Block: length', 20, 'heater.block-length'),
  a_2: edge('Block: width', 16, 'heater.block-width'),
  a_3: edge('Block: height', 12, 'heater.block-height'),
  W: input('Watchdog: window', time.s, {
    typical: 20,
    range: [1, 600],
    from: 'heater.watchdog-window',
    decided: true,
    basis: commonPractice,
    hint: 'As set: how long the reading may lag before the watchdog acts.',
  }),
  H: input('Watchdog: hysteresis', temperatureDifference.K, {
    typical: 4,
    range: [0.5, 30],
    from: 'heater.watchdog-hysteresis',
    decided: true,
    basis: commonPractice,
    hint: 'As set: how far the reading may stay below its set point, and how much it must rise in one window.',
  }),
  T_li: input('Liner stands', temperature.C, {
    typical: 260,
    range: [50, 400],
    decided: true,
    basis: cite('Supplier’s engineering table of polytetrafluoroethylene', 'continuous limit', true),
    hint: 'Its upper end is soft long before: work below 240 °C. It gels at 327 °C and gives off harmful gas from about 400 °C.',
    when: { liner: 'ptfe' },
  }),
  T_se: input('Sensor stands', temperature.C, {
    typical: 300,
    range: [50, 1000],
    from: 'sensor.rating',
    decided: true,
    basis: commonPractice,
    hint: 'As rated: glass bead about 300 °C, platinum 400 to 600 °C.',
  }),
  T_f: input('Cut-off opens at', temperature.C, {
    range: [50, 600],
    from: 'heater.cutoff-temperature',
    spread: 10,
    hint: 'As rated, and where it sits: not where the block is hottest.',
    when: fitted,
  }),
  T_bl: input('Block melts at', temperature.C, { seldom: true, range: [100, 2000], decided: true }),
  T_no: input('Nozzle melts at', temperature.C, { seldom: true, range: [100, 2000], decided: true }),
  dT_f: input('Cut-off above the working temperature', temperatureDifference.K, {
    seldom: true,
    typical: 20,
    range: [0, 200],
    decided: true,
    basis: commonPractice,
    when: fitted,
  }),
  c_b: input('Specific heat of the block', specificHeat.J_kgK, {
    seldom: true,
    range: [100, 2000],
    when: { loss: unmeasured },
  }),
  c_x: input('Specific heat of the rest', specificHeat.J_kgK, {
    seldom: true,
    typical: 430,
    spread: 50,
    range: [100, 2000],
    basis: derived(`between brass, ${materials.brass.heat.value}, and steel, ${materials.steel.heat.value} J/(kg·K)`),
    when: { loss: unmeasured },
  }),
  epsilon: input('Emissivity of its surface', ratio.one, {
    seldom: true,
    typical: 0.3,
    spread: 0.1,
    range: [0.02, 1],
    basis: emissivity,
    hint: 'Bright metal 0.1, burnt on 0.3, a cover of rubber or cloth 0.9.',
  }),
  h_c: input('Loss to the air per area', heatTransfer.W_m2K, {
    seldom: true,
    typical: 13,
    spread: 3,
    range: [1, 200],
    basis: plates,
    hint: 'In still air. Under a fan 30 to 60; under a cover 5 to 8.',
    when: surface,
  }),
  G_x: input('Loss along the heat break and into the strand', heatConductance.W_K, {
    seldom: true,
    typical: 0.04,
    spread: 0.015,
    range: [0, 2],
    basis: derived('stainless steel tube, 15 W/(m·K), 6 mm outside, 4.2 mm inside, 5 mm long: 0.043 W/K'),
    when: surface,
  }),
  t_s: input('Time constant of the loose sensor in air', time.s, {
    seldom: true,
    typical: 8,
    spread: 4,
    range: [0.1, 300],
    basis: commonPractice,
  }),
  t_max: input('The watchdog acts within', time.s, {
    seldom: true,
    typical: 30,
    range: [1, 600],
    decided: true,
    basis: commonPractice,
  }),
  f_H: input('Margin of a healthy rise over the hysteresis', ratio.one, {
    seldom: true,
    typical: 1.5,
    range: [1, 10],
    decided: true,
    basis: commonPractice,
  }),
  ...cells,
};
