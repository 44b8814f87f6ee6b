import { expansion, humidity, length, pressure, ratio, temperature, temperatureDifference } from '../../quantity/kinds';
import { commonPractice, derived } from '../../reference/citation';
import { input } from '../../engine/calculator';

const air = { ask: ['cold', 'box'] };
const cold = { ask: 'cold' };
const box = { ask: 'box' };
const swing = { ask: 'swing' };
const kept = { ask: 'swing', zero: 'kept' };

export const inputs = {
  T: input('Air temperature in the room', temperature.C, {
    range: [-20, 60],
    tool: 'room-thermometer',
    from: 'room.air-temperature',
    hint: 'Where the hygrometer stands, out of the sun and away from the machine.',
    when: air,
  }),
  U: input('Relative humidity in the room', humidity.percent, {
    range: [1, 100],
    tool: 'hygrometer',
    from: 'room.relative-humidity',
    hint: 'Give the hygrometer half an hour. In a closed jar over a wet heap of kitchen salt a good one reads 75 %.',
    when: air,
  }),
  T_s: input('Surface of the cold thing', temperature.C, {
    range: [-30, 60],
    tool: 'thermometer',
    hint: 'The bed, part, spool or board as it comes in. Not known yet: take the temperature where it stood.',
    when: cold,
  }),
  m_d: input('Wanted above the dew point', temperatureDifference.K, {
    seldom: true,
    typical: 2,
    range: [0, 20],
    basis: commonPractice,
    hint: 'For corners colder than the place measured.',
    when: cold,
  }),
  T_b: input('Temperature in the box', temperature.C, {
    typical: 45,
    spread: 2,
    range: [-20, 100],
    tool: 'thermometer',
    when: box,
  }),
  U_lim: input('Most humidity wanted in the box', humidity.percent, {
    typical: 20,
    range: [1, 90],
    basis: commonPractice,
    when: box,
  }),
  p: input('Air pressure', pressure.hPa, {
    seldom: true,
    typical: 1000,
    spread: 40,
    range: [500, 1100],
    from: 'room.air-pressure',
    basis: derived('sea level to 300 m of height, any weather'),
    hint: 'As it is here, not reduced to sea level: about 12 hPa less for each 100 m of height.',
    when: air,
  }),
  T_1: input('Temperature when Z zero was set', temperature.C, {
    range: [-20, 80],
    tool: 'room-thermometer',
    hint: 'Of the frame, not of the air: the sensor held to an upright. With a switch: when bed and switch were last set to each other.',
    when: swing,
  }),
  T_2: input('Temperature when printing', temperature.C, {
    range: [-20, 80],
    tool: 'room-thermometer',
    hint: 'Same place, same sensor, at the other end of the day or with the machine warmed through.',
    when: swing,
  }),
  l_s: input('Screw, from where it is held to its nut', length.mm, {
    typical: 300,
    spread: 20,
    range: [0, 3000],
    tool: 'tape',
    from: 'z.held-to-nut',
    hint: 'With the nozzle at the bed, as in the first layer.',
    when: kept,
  }),
  l_f: input('Upright that counts', length.mm, {
    typical: 300,
    spread: 20,
    range: [0, 3000],
    tool: 'tape',
    from: 'frame.counted-height',
    hint: 'From the height where the screws are held, or from the switch, to the mount of what does not move in Z: the bed, or the nozzle’s beam.',
    when: swing,
  }),
  h_1: input('First layer', length.mm, { typical: 0.2, range: [0.04, 2], from: 'print.first-layer', when: swing }),
  q_1: input('Allowed share of the first layer', ratio.percent, {
    seldom: true,
    typical: 25,
    range: [1, 100],
    basis: commonPractice,
    when: swing,
  }),
  alpha_f: input('Expansion of the frame', expansion.um_mK, {
    seldom: true,
    range: [0, 300],
    from: 'frame.expansion',
    when: swing,
  }),
  alpha_s: input('Expansion of the screw', expansion.um_mK, {
    seldom: true,
    range: [0, 300],
    from: 'z.screw-expansion',
    when: kept,
  }),
  alpha_r: input('Expansion of the rest', expansion.um_mK, {
    seldom: true,
    range: [0, 300],
    from: 'frame.rest-expansion',
    when: swing,
  }),
};
