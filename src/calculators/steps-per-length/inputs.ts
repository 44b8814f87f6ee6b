import { placed } from '../../engine/shared-places';
import { count, expansion, force, length, perLength, ratio, temperature } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import type { Feature } from '../../reference/features';
import { input, type When, cite, derived } from '../../engine/calculator';
import { fed, onFeed, printed, pulled, travelled } from './choices';

const belt = { axis: ['x', 'y'] };
const z = { axis: ['z', 'zb'] };
const screw = { axis: 'z' };
const pinion = { axis: 'zb' };
const sides = { ...printed, pair: 'sides' };
const lengths = { ...printed, pair: 'lengths' };
const known = { ...printed, material: ['pla', 'petg', 'abs', 'pc'] };

const steps = (from: string, axis: string | readonly string[]) =>
  input(perLength.per_mm, { range: [0.1, 100_000], from, when: { axis } });
type Range = readonly [number, number];
/** What a short and a long size may be, mm. */
const SMALL: Range = [1, 300];
const LARGE: Range = [20, 2000];
const size = (feature: Feature, range: Range, when: When) =>
  input(length.mm, { feature, range, tool: 'caliper', when });
const drawn = (typical: number, range: Range, when: When) => input(length.mm, { typical, decided: true, range, when });

/** What is asked: the number set, the parts of the drive, the travel or the piece, the limit. */
export const inputs = {
  S_x: steps('steps.x', 'x'),
  S_y: steps('steps.y', 'y'),
  S_z: steps('steps.z', ['z', 'zb']),
  S_e: steps('steps.feed', 'feed'),
  l_c: input(length.mm, {
    typical: 100,
    decided: true,
    range: [1, 3000],
    when: travelled,
  }),
  x_1: input(length.mm, {
    feature: 'span',
    typical: 0,
    spread: 0.03,
    range: [0, 3000],
    tool: 'caliper',
    when: travelled,
  }),
  x_2: input(length.mm, {
    feature: 'span',
    range: [0, 3000],
    tool: 'caliper',
    when: travelled,
  }),
  b: input(length.mm, { feature: 'travel', seldom: true, typical: 0, spread: 0.02, range: [0, 5], when: travelled }),
  l_f: input(length.mm, {
    typical: 100,
    decided: true,
    range: [5, 2000],
    when: fed,
  }),
  r_1: input(length.mm, { feature: 'span', typical: 120, spread: 0.5, range: [5, 3000], tool: 'rule', when: fed }),
  r_2: input(length.mm, { feature: 'span', range: [0, 3000], tool: 'rule', when: fed }),
  r_3: input(length.mm, {
    feature: 'span',
    seldom: true,
    optional: true,
    range: [0, 3000],
    tool: 'rule',
    when: fed,
  }),
  N_k: input(ratio.one, { optional: true, range: [0, 10_000], phone: 'clicks', when: fed }),
  D_o: drawn(100, LARGE, sides),
  m_o: size('outside', LARGE, sides),
  D_i: drawn(80, LARGE, sides),
  m_i: size('inside', LARGE, sides),
  l_1: drawn(20, SMALL, lengths),
  m_1: size('outside', SMALL, lengths),
  l_2: drawn(120, LARGE, lengths),
  m_2: size('outside', LARGE, lengths),
  alpha: input(expansion.um_mK, {
    seldom: true,
    range: [1, 300],
    basis: cite('Engineering Plastics Handbook (2006)', 'expansionBelowGlass', true),
    when: known,
  }),
  T_g: input(temperature.C, {
    feature: 'set',
    seldom: true,
    range: [30, 300],
    basis: cite('Engineering Plastics Handbook (2006)', 'glassTransition', true),
    when: known,
  }),
  T_r: input(temperature.C, {
    feature: 'contact',
    seldom: true,
    typical: 22,
    spread: 3,
    range: [-20, 60],
    basis: commonPractice,
    when: known,
  }),
  s_m: input(ratio.percent, {
    range: [0, 10],
    spread: 0.2,
    when: { ...printed, material: 'other' },
  }),
  theta_s: placed('z.step-angle', { range: [0.1, 15], when: z }),
  theta_b: placed('belt.step-angle', { range: [0.1, 15], when: belt }),
  theta_e: placed('feed.step-angle', { range: [0.1, 15], when: onFeed }),
  m_b: input(count.one, {
    typical: 16,
    range: [1, 256],
    basis: commonPractice,
    from: 'belt.microsteps',
    when: belt,
  }),
  m_z: placed('z.microsteps', {
    range: [1, 256],
    basis: commonPractice,
    when: z,
  }),
  m_e: input(count.one, {
    typical: 16,
    range: [1, 256],
    basis: commonPractice,
    from: 'feed.microsteps',
    when: onFeed,
  }),
  p: placed('belt.pitch', {
    typical: 2,
    range: [1, 20],
    when: belt,
  }),
  z: placed('belt.pulley-teeth', {
    range: [8, 200],
    when: belt,
  }),
  P_h: placed('z.lead', {
    range: [0.5, 50],
    when: screw,
  }),
  p_z: placed('z.belt-pitch', { range: [1, 20], when: pinion }),
  z_z: placed('z.pinion-teeth', {
    range: [8, 200],
    when: pinion,
  }),
  d_g: placed('feed.gear-diameter', {
    typical: 11,
    spread: 0.5,
    range: [2, 60],
    basis: commonPractice,
    tool: 'caliper',
    when: onFeed,
  }),
  i_b: placed('belt.gear-ratio', {
    seldom: true,
    range: [0.05, 200],
    when: belt,
  }),
  i_z: placed('z.gear-ratio', {
    seldom: true,
    range: [0.05, 200],
    when: z,
  }),
  i_e: input(ratio.one, {
    typical: 1,
    range: [0.05, 200],
    from: 'feed.gear-ratio',
    when: onFeed,
  }),
  T_a: input(force.N, {
    feature: 'set',
    seldom: true,
    decided: true,
    range: [1, 20000],
    basis: commonPractice,
    when: pulled,
  }),
  C_0: input(force.N, { feature: 'set', seldom: true, range: [100, 1e7], basis: commonPractice, when: pulled }),
  q_p: input(ratio.percent, {
    differs: 0.2,
    seldom: true,
    typical: 0.1,
    range: [0, 5],
    basis: commonPractice,
    when: pulled,
  }),
  q_lim: input(ratio.percent, {
    differs: 0.2,
    seldom: true,
    typical: 0.3,
    range: [0.001, 20],
    basis: commonPractice,
    when: { axis: ['z', 'zb'], by: 'travel' },
  }),
  e_lim: input(ratio.percent, { differs: 0.2, seldom: true, range: [0.001, 20], basis: derived('judgedBeltN') }),
};
