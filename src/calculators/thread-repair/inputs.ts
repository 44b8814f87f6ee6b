import { length, money, pressure, ratio, time } from '../../quantity/kinds';
import { commonPractice, type Citation } from '../../reference/citation';
import { iso2306, iso273, iso7089 } from '../../reference/drills';
import { insertHole } from '../../reference/inserts';
import { hexNuts, thinNutProof } from '../../reference/nuts';
import { iso898, shearRatio } from '../../reference/property-classes';
import { isoProfile, isoTolerances } from '../../reference/threads';
import { input } from '../../engine/calculator';
import { PLASTICS } from './choices';
import type { InputData } from '../../engine/spec';

/** From a table, by the screw picked; may be written over. */
const table = (basis: Citation): InputData<never> =>
  input(length.mm, { seldom: true, decided: true, range: [0.1, 30], basis });
const minutes = (typical: number): InputData<never> =>
  input(time.min, { seldom: true, decided: true, typical, range: [0, 10000], basis: commonPractice });
const cost = (typical: number): InputData<never> =>
  input(money.one, { seldom: true, decided: true, typical, range: [0, 1e6], basis: commonPractice });

const plastic = { part: PLASTICS };

/** What is asked: the hole, then what tables and habit supply. */
export const inputs = {
  L_r: input(length.mm, { feature: 'depth', difference: true, range: [0.5, 100], tool: 'caliper' }),
  L_e: input(length.mm, { feature: 'depth', difference: true, range: [0, 100], tool: 'caliper' }),
  L_b: input(length.mm, { feature: 'depth', difference: true, typical: 0, range: [0, 100], tool: 'caliper' }),
  L_h: input(length.mm, { feature: 'depth', range: [0.5, 200], tool: 'caliper' }),
  w: input(length.mm, { feature: 'outside', range: [0.1, 200], tool: 'caliper' }),
  tau: input(pressure.MPa, {
    seldom: true,
    range: [1, 1500],
  }),
  p_y: input(pressure.MPa, { seldom: true, range: [1, 2000] }),
  S_p: input(pressure.MPa, {
    seldom: true,
    decided: true,
    range: [50, 1500],
    basis: iso898,
  }),
  R_m: input(pressure.MPa, {
    seldom: true,
    decided: true,
    range: [100, 2000],
    basis: iso898,
  }),
  q_s: input(ratio.one, {
    seldom: true,
    decided: true,
    range: [0.4, 1],
    basis: shearRatio,
  }),
  s_min: input(ratio.percent, {
    seldom: true,
    decided: true,
    range: [1, 300],
    basis: commonPractice,
  }),
  k_w: input(ratio.one, {
    seldom: true,
    decided: true,
    range: [0.05, 5],
    basis: commonPractice,
  }),
  k_t: input(ratio.one, {
    seldom: true,
    decided: true,
    typical: 0.75,
    range: [0.05, 1],
    basis: commonPractice,
  }),
  k_m: input(ratio.one, {
    seldom: true,
    decided: true,
    range: [1, 20],
    basis: commonPractice,
  }),
  K: input(ratio.one, {
    seldom: true,
    typical: 0.2,
    spread: 0.05,
    range: [0.08, 0.5],
    basis: commonPractice,
  }),
  d: table(isoProfile),
  P: table(isoProfile),
  D_s: table(isoTolerances),
  E_s: table(isoTolerances),
  E_n: table(isoTolerances),
  K_n: table(isoTolerances),
  d_n: table(isoProfile),
  P_n: table(isoProfile),
  D_sn: table(isoTolerances),
  E_sn: table(isoTolerances),
  E_nn: table(isoTolerances),
  K_nn: table(isoTolerances),
  D_d: table(insertHole),
  D_t: table(iso2306),
  D_c: table(iso273),
  d_w: table(iso7089),
  k_i: input(ratio.one, { seldom: true, decided: true, range: [1, 3] }),
  D_h: input(length.mm, { seldom: true, decided: true, range: [1, 30], basis: commonPractice, when: plastic }),
  L_s: input(length.mm, { seldom: true, decided: true, range: [1, 50], basis: commonPractice, when: plastic }),
  q_h: input(ratio.one, {
    seldom: true,
    typical: 0.5,
    spread: 0.15,
    range: [0.05, 1],
    basis: commonPractice,
    when: plastic,
  }),
  s_w: input(length.mm, { seldom: true, decided: true, range: [1, 40], basis: hexNuts, when: plastic }),
  m_w: input(length.mm, {
    seldom: true,
    decided: true,
    range: [0.5, 30],
    basis: hexNuts,
    when: { ...plastic, nut: 'usual' },
  }),
  m_t: input(length.mm, {
    seldom: true,
    decided: true,
    range: [0.5, 30],
    basis: hexNuts,
    when: { ...plastic, nut: 'thin' },
  }),
  p_n: input(pressure.MPa, {
    seldom: true,
    decided: true,
    typical: 380,
    range: [50, 1500],
    basis: thinNutProof,
    when: { ...plastic, nut: 'thin' },
  }),
  t_l: minutes(10),
  t_i: minutes(30),
  t_n: minutes(25),
  t_b: minutes(15),
  t_h: { ...minutes(15), when: plastic },
  t_k: { ...minutes(30), when: plastic },
  t_r: minutes(60),
  c_l: cost(0.5),
  c_i: cost(20),
  c_n: cost(8),
  c_b: cost(2),
  c_h: { ...cost(10), when: plastic },
  c_k: { ...cost(1), when: plastic },
  c_r: cost(25),
  r_h: cost(20),
};
