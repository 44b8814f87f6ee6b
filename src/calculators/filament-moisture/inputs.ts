import {
  diffusivity,
  humidity,
  length,
  mass,
  ratio,
  temperature,
  temperatureDifference,
  time,
} from '../../quantity/kinds';
import { defineKind } from '../../quantity/unit';
import { commonPractice } from '../../reference/citation';
import { input } from '../../engine/calculator';
import { sources } from './plastics';

/** A mole counts as a number. */
const energyPerMole = defineKind('energy per mole', [2, 1, -2, 0, 0], { kJ_mol: { label: 'kJ/mol', factor: 1e3 } });

const dry = { ask: 'dry' };
const oven = { ask: ['dry', 'weigh'] };
const store = { ask: 'store' };
const weigh = { ask: 'weigh' };
const judged = { ask: ['store', 'weigh'] };

export const inputs = {
  T: input('Air temperature in the room', temperature.C, {
    range: [-20, 60],
    tool: 'room-thermometer',
    from: 'room.air-temperature',
  }),
  U: input('Relative humidity in the room', humidity.percent, {
    range: [1, 100],
    tool: 'hygrometer',
    from: 'room.relative-humidity',
    hint: 'Lying open: the mean over that time.',
  }),
  t_o: input('Time it lay open', time.h, {
    range: [0.1, 20000],
    hint: 'A day is 24 h, a week 168 h. It is taken to have been dry at first.',
    when: store,
  }),
  T_b: input('Temperature at the filament in the oven', temperature.C, {
    range: [20, 160],
    tool: 'thermometer',
    basis: sources.oven,
    hint: 'Measured beside the spool, not read off the dial: small ovens swing by 10 K and more. Type the swing after ±.',
    when: oven,
  }),
  t: input('Drying time', time.h, {
    typical: 6,
    range: [0.1, 2000],
    basis: commonPractice,
    hint: 'From when the spool is warm through: add an hour or two for that.',
    when: oven,
  }),
  U_0: input('Humidity it lay in before', humidity.percent, {
    typical: 50,
    spread: 10,
    range: [1, 100],
    tool: 'hygrometer',
    when: dry,
  }),
  q: input('Share to leave, of the water the oven can take out', ratio.percent, {
    typical: 10,
    range: [0.1, 30],
    basis: commonPractice,
    when: dry,
  }),
  u_max: input('Most that the oven’s air may hold in it', ratio.percent, {
    seldom: true,
    typical: 35,
    range: [1, 100],
    basis: commonPractice,
    hint: 'As a share of the water it has: where drying ends, however long.',
    when: dry,
  }),
  m_1: input('Mass before drying', mass.g, { range: [0.5, 20000], tool: 'kitchen-scale', when: weigh }),
  m_2: input('Mass after drying', mass.g, {
    range: [0.5, 20000],
    tool: 'kitchen-scale',
    hint: 'Same scale, at once: within minutes of leaving the oven.',
    when: weigh,
  }),
  m_s: input('Of that, empty spool', mass.g, {
    typical: 200,
    spread: 50,
    range: [0, 5000],
    tool: 'kitchen-scale',
    basis: commonPractice,
    hint: 'A loose strand has none: 0. A spool of card gives off water of its own; weigh a strand instead.',
    when: weigh,
  }),
  d_f: input('Filament diameter', length.mm, {
    seldom: true,
    typical: 1.75,
    spread: 0.03,
    range: [1, 4],
    tool: 'caliper',
    from: 'filament.diameter',
  }),
  k_s: input('Times slower than a strand with air all round', ratio.one, {
    seldom: true,
    range: [1, 20],
    basis: commonPractice,
  }),
  D_1: input('Diffusion coefficient of water', diffusivity.um2_s, {
    seldom: true,
    range: [0.001, 1000],
    basis: sources.diffusion,
  }),
  b: input('Doubt of the diffusion coefficient, in powers of ten', ratio.one, {
    seldom: true,
    signed: true,
    typical: 0,
    spread: 0.7,
    range: [-2, 2],
    basis: sources.spread,
    hint: '0 ± 0.7 is five times either way. Where you know this filament by weighing, enter 0 ± 0.1.',
  }),
  T_1: input('It was measured at', temperature.C, { seldom: true, range: [0, 120], basis: sources.diffusion }),
  E_a: input('Activation energy of diffusion', energyPerMole.kJ_mol, {
    seldom: true,
    range: [5, 120],
    basis: sources.activation,
  }),
  W_s: input('Water it takes up in saturated air, of its dry mass', ratio.percent, {
    seldom: true,
    range: [0.01, 20],
    basis: sources.water,
  }),
  W_lim: input('Water allowed for printing, of its dry mass', ratio.percent, {
    seldom: true,
    range: [0.001, 5],
    basis: sources.allowed,
    when: judged,
  }),
  T_g: input('Goes soft at', temperature.C, { seldom: true, range: [20, 250], basis: sources.softening, when: dry }),
  m_T: input('Stay below that by', temperatureDifference.K, {
    seldom: true,
    typical: 5,
    range: [0, 50],
    basis: commonPractice,
    when: dry,
  }),
};
