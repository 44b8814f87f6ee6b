import { placed } from '../../engine/shared-places';
import {
  diffusivity,
  energyPerMole,
  humidity,
  mass,
  ratio,
  temperature,
  temperatureDifference,
  time,
} from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input } from '../../engine/calculator';
import { sources } from './plastics';

const dry = { ask: 'dry' };
const oven = { ask: ['dry', 'weigh'] };
const store = { ask: 'store' };
const weigh = { ask: 'weigh' };
const judged = { ask: ['store', 'weigh'] };

export const inputs = {
  T: placed('room.air-temperature', {
    range: [-20, 60],
    tool: 'room-thermometer',
  }),
  U: placed('room.relative-humidity', {
    range: [1, 100],
    tool: 'hygrometer',
  }),
  t_o: input(time.h, { feature: 'time', range: [0.1, 20000], when: store }),
  T_b: input(temperature.C, {
    feature: 'contact',
    range: [20, 160],
    tool: 'thermometer',
    basis: sources.oven,
    when: oven,
  }),
  t: input(time.h, { feature: 'time', typical: 6, range: [0.1, 2000], basis: commonPractice, when: oven }),
  U_0: input(humidity.percent, {
    feature: 'humidity',
    typical: 50,
    spread: 10,
    range: [1, 100],
    tool: 'hygrometer',
    when: dry,
  }),
  q: input(ratio.percent, {
    typical: 10,
    range: [0.1, 30],
    basis: commonPractice,
    when: dry,
  }),
  u_max: input(ratio.percent, {
    differs: 0.15,
    seldom: true,
    typical: 35,
    range: [1, 100],
    basis: commonPractice,
    when: dry,
  }),
  m_1: input(mass.g, { feature: 'mass', range: [0.5, 20000], tool: 'kitchen-scale', when: weigh }),
  m_2: input(mass.g, { feature: 'mass', range: [0.5, 20000], tool: 'kitchen-scale', when: weigh }),
  m_s: input(mass.g, {
    feature: 'mass',
    typical: 200,
    spread: 50,
    range: [0, 5000],
    tool: 'kitchen-scale',
    basis: commonPractice,
    when: weigh,
  }),
  d_f: placed('filament.diameter', {
    seldom: true,
    range: [1, 4],
    tool: 'caliper',
  }),
  k_s: input(ratio.one, {
    seldom: true,
    range: [1, 20],
    basis: commonPractice,
  }),
  D_1: input(diffusivity.um2_s, {
    seldom: true,
    range: [0.001, 1000],
    basis: sources.diffusion,
  }),
  b: input(ratio.one, {
    seldom: true,
    signed: 'scale',
    typical: 0,
    spread: 0.7,
    range: [-2, 2],
    basis: sources.spread,
  }),
  T_1: input(temperature.C, { feature: 'set', seldom: true, range: [0, 120], basis: sources.diffusion }),
  E_a: input(energyPerMole.kJ_mol, {
    seldom: true,
    range: [5, 120],
    basis: sources.activation,
  }),
  W_s: input(ratio.percent, {
    seldom: true,
    range: [0.01, 20],
    basis: sources.water,
  }),
  W_lim: input(ratio.percent, { differs: 0.2, seldom: true, range: [0.001, 5], basis: sources.allowed, when: judged }),
  T_g: input(temperature.C, { feature: 'set', seldom: true, range: [20, 250], basis: sources.softening }),
  m_T: input(temperatureDifference.K, {
    feature: 'set',
    seldom: true,
    typical: 5,
    range: [0, 50],
    basis: commonPractice,
  }),
};
