import { placed } from '../../engine/shared-places';
import { density, length, mass, money, ratio, time } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input, cite } from '../../engine/calculator';
import type { InputData } from '../../engine/spec';
import say from './words/en';

const delay = { by: 'delay' };
const fed = { by: 'fed' };
const none = { band: 'none' };
const some = { band: ['trim', 'left'] };
const left = { band: 'left' };

const minutes = (typical: number): InputData<never> =>
  input(time.min, { seldom: true, decided: true, typical, range: [0, 10000], basis: commonPractice });
const cost = (typical: number): InputData<never> =>
  input(money.one, {
    seldom: true,
    decided: true,
    typical,
    range: [0, 1e6],
    basis: commonPractice,
  });
const share = (rest: Partial<InputData<never>>): InputData<never> =>
  input(ratio.percent, { seldom: true, basis: commonPractice, range: [0, 100], ...rest });

export const inputs = {
  Z_s: input(length.mm, { feature: 'set', range: [0.05, 2000] }),
  H_t: input(length.mm, { feature: 'set', range: [0.1, 2000] }),
  G: input(length.mm, { feature: 'depth', difference: true, range: [0, 1000], tool: 'caliper', when: { by: 'gap' } }),
  t_d: input(time.min, { feature: 'time', range: [0, 10000], when: delay }),
  m_f: input(mass.g, { feature: 'mass', difference: true, range: [0.1, 1e5], tool: 'kitchen-scale', when: fed }),
  m_t: input(mass.g, { feature: 'set', range: [0.1, 1e5], when: fed }),
  k_u: input(ratio.one, {
    seldom: true,
    typical: 1,
    spread: 0.05,
    range: [0.05, 20],
    basis: commonPractice,
    when: fed,
  }),
  b_m: input(length.mm, { feature: 'span', range: [0, 500], tool: 'rule', when: some }),
  w_b: input(length.mm, { feature: 'outside', range: [0, 4], tool: 'caliper', when: left }),
  h: placed('print.layer', { range: [0.01, 2] }),
  h_1: placed('print.first-layer', { range: [0.04, 2] }),
  w: placed('print.line-width', { range: [0.1, 4] }),
  v: placed('print.speed', { range: [1, 1000], basis: commonPractice }),
  t_L: input(time.s, { feature: 'time', range: [1, 20000], tool: 'stopwatch' }),
  q_x: share({ typical: 85, spread: 10, range: [5, 100] }),
  d_f: placed('filament.diameter', {
    seldom: true,
    range: [1, 4],
    tool: 'caliper',
  }),
  rho: input(density.g_cm3, {
    seldom: true,
    range: [0.5, 8],
    basis: cite(say.works.materials, 'density'),
  }),
  V: placed('feed.melt-volume', {
    seldom: true,
    range: [1, 1000],
    basis: commonPractice,
    when: none,
  }),
  q_o: share({ typical: 25, spread: 15, when: none }),
  q_e: share({
    decided: true,
    typical: 10,
    range: [1, 90],
    when: none,
  }),
  b_lim: input(length.mm, {
    seldom: true,
    decided: true,
    typical: 3,
    range: [0, 100],
    basis: commonPractice,
    when: { band: ['none', 'trim'] },
  }),
  k_b: share({
    typical: 75,
    spread: 20,
    when: left,
  }),
  j_c: share({}),
  j_g: share({}),
  s_n: share({ decided: true }),
  p_r: share({ decided: true, typical: 20 }),
  p_g: share({ decided: true, typical: 10 }),
  t_hr: minutes(25),
  t_hg: minutes(40),
  t_hn: minutes(5),
  c_s: cost(20),
  m_s: input(mass.kg, { seldom: true, decided: true, typical: 1, range: [0.05, 50] }),
  c_g: cost(1),
  r_m: cost(0.5),
  r_h: cost(20),
};
