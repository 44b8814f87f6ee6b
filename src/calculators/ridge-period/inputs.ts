import { placed, placedChoice } from '../../engine/shared-places';
import { count, length, ratio, time } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { choice, input, derived } from '../../engine/calculator';

const up = { way: 'up' } as const;
const along = { way: 'along' } as const;
const screw = { way: 'up', lift: 'screw' } as const;
const belt = { way: 'up', lift: 'belt' } as const;

export const choices = {
  by: choice({ count: {}, direct: {} }, 'count'),
  way: choice({ up: {}, along: {} }, 'up'),
  lift: placedChoice('z.lift', { screw: {}, belt: {} }, 'screw', {
    when: up,
  }),
};

/** A part that is not known is left out of the comparison: a typical one would be another machine's. */
export const inputs = {
  L: input(length.mm, { feature: 'span', range: [1, 2000], tool: 'caliper', when: { by: 'count' } }),
  N: input(count.one, {
    range: [1, 1000],
    when: { by: 'count' },
  }),
  P_w: input(length.mm, { feature: 'span', range: [0.05, 1000], spread: 0.1, phone: 'ridges', when: { by: 'direct' } }),
  h: placed('print.layer', { open: true, optional: true, range: [0.01, 2] }),
  P_h: placed('z.lead', { open: true, optional: true, range: [0.5, 50], when: screw }),
  n_s: input(count.one, {
    optional: true,
    range: [1, 12],
    from: 'z.starts',
    when: screw,
  }),
  p: placed('z.belt-pitch', { open: true, optional: true, range: [1, 20], when: belt }),
  z: placed('z.pinion-teeth', { open: true, optional: true, range: [8, 200], when: belt }),
  d_z: input(length.mm, {
    feature: 'outside',
    optional: true,
    range: [3, 200],
    tool: 'caliper',
    from: 'z.idler-diameter',
    when: belt,
  }),
  p_b: placed('belt.pitch', { optional: true, range: [1, 20], when: along }),
  z_b: placed('belt.pulley-teeth', { open: true, optional: true, range: [8, 200], when: along }),
  d_i: input(length.mm, {
    feature: 'outside',
    optional: true,
    range: [3, 200],
    tool: 'caliper',
    from: 'belt.idler-diameter',
    when: along,
  }),
  r_w: placed('wheel.radius', {
    optional: true,
    range: [2, 200],
    tool: 'caliper',
  }),
  d_g: placed('feed.gear-diameter', {
    optional: true,
    range: [2, 60],
    tool: 'caliper',
  }),
  w: placed('print.line-width', { open: true, optional: true, range: [0.05, 4] }),
  l_L: input(length.mm, { feature: 'span', optional: true, spread: 2, range: [1, 1e6], tool: 'rule', when: up }),
  t_c: input(time.s, {
    feature: 'time',
    optional: true,
    spread: 0.3,
    range: [0.1, 3600],
    tool: 'stopwatch',
    from: 'heater.cycle-time',
  }),
  t_L: input(time.s, { feature: 'time', optional: true, spread: 0.3, range: [0.5, 1e5], tool: 'stopwatch', when: up }),
  v: placed('print.speed', { open: true, optional: true, range: [1, 1000], when: along }),
  x: input(length.mm, {
    feature: 'set',
    seldom: true,
    signed: { plus: 'jaws-inside-crests', minus: 'jaws-outside-crests' },
    typical: 0,
    spread: 0.2,
    range: [-0.9, 0.9],
    basis: commonPractice,
    when: { by: 'count' },
  }),
  s: input(ratio.percent, {
    seldom: true,
    typical: 0.3,
    spread: 0.3,
    range: [0, 5],
    basis: commonPractice,
  }),
  theta_s: placed('z.step-angle', {
    seldom: true,
    range: [0.1, 15],
    when: up,
  }),
  theta_b: placed('belt.step-angle', {
    seldom: true,
    range: [0.1, 15],
    when: along,
  }),
  i_g: placed('z.gear-ratio', {
    seldom: true,
    range: [0.05, 200],
    when: up,
  }),
  a: input(length.mm, {
    feature: 'set',
    seldom: true,
    typical: 0.4,
    spread: 0.2,
    range: [0, 5],
    basis: commonPractice,
  }),
  d_f: placed('filament.diameter', {
    seldom: true,
    range: [1, 4],
    tool: 'caliper',
  }),
  k_A: input(ratio.one, {
    seldom: true,
    typical: 0.95,
    spread: 0.05,
    range: [0.5, 1.2],
    basis: derived('betweenRectangleRound'),
  }),
};
