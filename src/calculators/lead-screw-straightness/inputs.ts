import { placed, placedChoice } from '../../engine/shared-places';
import { linearDensity, length, pressure, ratio, stiffness } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { choice, input, type When, cite, derived } from '../../engine/calculator';

const handbook = cite('Shigley’s Mechanical Engineering Design, 10th edition (2015)', 'moduliElasticitySteels', true);
const yields = cite('Shigley’s Mechanical Engineering Design, 10th edition (2015)', 'tablesHotRolled', true);

/** Read out of the machine. */
export const apart: When = { method: ['flat', 'blocks'] };
/** Both ends clamped hold a bow straight, so a reading between them does not give it back. */
export const toldMounted: When = { method: 'mounted', ends: ['pinned', 'mixed', 'free'] };

export const choices = {
  method: choice(
    {
      flat: {},
      blocks: {},
      mounted: {},
    },
    'blocks',
  ),
  touch: choice({ gap: {}, none: {} }, 'gap', { when: { method: 'flat' } }),
  // The share b left at the nut: first a smooth bow, then one kink in the middle; the half-width spans both.
  ends: placedChoice(
    'z.screw-ends',
    {
      pinned: { set: { b: [1, 0] } },
      mixed: { set: { b: [0.4375, 0.1875] } },
      clamped: { set: { b: [0.25, 0.25] } },
      free: { set: { b: [3, 1] } },
    },
    'pinned',
  ),
  material: placedChoice(
    'z.screw-material',
    {
      steel: { set: { E: [206, 4], R_e: [400, 150] } },
      stainless: { set: { E: [196, 6], R_e: [400, 200] } },
    },
    'steel',
  ),
  class: choice(
    {
      rolled: { set: { s_lim: 0.25, l_r: 300 } },
      ground: { set: { s_lim: 0.025, l_r: 300 } },
      metre: { set: { s_lim: 1, l_r: 1000 } },
      own: {},
    },
    'rolled',
  ),
};

export const inputs = {
  g: input(length.mm, { feature: 'gap', range: [0, 10], tool: 'feeler', when: { method: 'flat', touch: 'gap' } }),
  g_0: input(length.mm, {
    feature: 'gap',
    typical: 0.05,
    range: [0.01, 1],
    tool: 'feeler',
    when: { method: 'flat', touch: 'none' },
  }),
  f_w: input(ratio.one, {
    seldom: true,
    typical: 0.5,
    spread: 0.5,
    basis: derived('withoutGapBow'),
    range: [0, 1],
    when: { method: 'flat', touch: 'none' },
  }),
  TIR: input(length.mm, {
    feature: 'swing',
    difference: true,
    range: [0, 20],
    tool: 'dial',
    when: { method: ['blocks', 'mounted'] },
  }),
  q: input(length.mm, {
    feature: 'swing',
    seldom: true,
    typical: 0,
    spread: 0.02,
    basis: commonPractice,
    range: [-1, 1],
    signed: 'scale',
  }),
  TIR_c: input(length.mm, {
    feature: 'swing',
    typical: 0,
    spread: 0.04,
    basis: commonPractice,
    range: [-5, 5],
    signed: { plus: 'high-points-alike', minus: 'high-points-opposite' },
    when: { method: 'mounted' },
  }),
  c: input(length.mm, {
    feature: 'span',
    typical: 300,
    spread: 1,
    range: [50, 3000],
    tool: 'rule',
    when: { method: ['flat', 'blocks'] },
  }),
  m_1: input(linearDensity.g_m, {
    seldom: true,
    typical: 300,
    spread: 30,
    basis: derived('steelKgM'),
    range: [10, 20000],
    from: 'z.screw-mass',
    when: { method: 'flat' },
  }),
  L: placed('z.screw-length', {
    range: [50, 3000],
    tool: 'rule',
  }),
  d_3: placed('z.core-diameter', {
    basis: cite('ISO 2904:1977', 'dDP', true),
    range: [1, 60],
    tool: 'caliper',
  }),
  P_h: placed('z.lead', {
    range: [0.5, 50],
  }),
  E: input(pressure.GPa, {
    seldom: true,
    typical: 206,
    spread: 4,
    basis: handbook,
    range: [1, 400],
  }),
  R_e: input(pressure.MPa, {
    seldom: true,
    typical: 400,
    spread: 150,
    basis: yields,
    range: [10, 2000],
  }),
  b: input(ratio.one, {
    seldom: true,
    typical: 1,
    basis: derived('beamSmoothBow'),
    range: [0, 5],
  }),
  k_g: input(stiffness.N_mm, {
    typical: 100,
    spread: 50,
    basis: commonPractice,
    range: [0.1, 100000],
    from: 'carriage.stiffness',
  }),
  j: input(length.mm, {
    feature: 'travel',
    seldom: true,
    typical: 0,
    range: [0, 25],
    tool: 'dial',
    from: 'z.nut-float',
  }),
  l_r: input(length.mm, { feature: 'set', seldom: true, typical: 300, basis: commonPractice, range: [50, 3000] }),
  s_lim: input(length.mm, { differs: 0.2, feature: 'set', seldom: true, basis: commonPractice, range: [0.001, 20] }),
  f_max: input(ratio.percent, {
    seldom: true,
    typical: 1.5,
    basis: derived('flatArcOff'),
    range: [0.1, 10],
  }),
  w: placed('print.line-width', { seldom: true, range: [0.05, 3] }),
  k_w: input(ratio.one, { differs: 0.2, seldom: true, typical: 0.05, basis: commonPractice, range: [0.001, 1] }),
};
