import { linearDensity, length, pressure, ratio, stiffness } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { choice, input } from '../../engine/calculator';

const straightness = cite(
  'An engineering page on screw accuracy (weak source; no standard for trapezoidal screws found, ISO 3408-3 is for ball screws only)',
  '0.010 in per ft rolled or milled, 0.001 in per ft ground; 1 mm per metre also quoted',
);
const handbook = cite('Machinery’s Handbook', 'moduli of elasticity of steels', true);
const yields = cite(
  'Shigley, Mechanical Engineering Design',
  'tables of hot-rolled, cold-drawn and stainless steels',
  true,
);

export const choices = {
  method: choice(
    'How it is measured',
    {
      flat: { label: 'out of the machine, rolled on a flat with feelers' },
      blocks: { label: 'out of the machine, on two V-blocks under a dial indicator' },
      mounted: { label: 'in the machine, dial indicator on the frame' },
    },
    'blocks',
  ),
  touch: choice(
    'Under the middle',
    { gap: { label: 'a feeler leaf goes in' }, none: { label: 'not even the thinnest leaf goes in' } },
    'gap',
    { when: { method: 'flat' } },
  ),
  // The share b left at the nut: first a smooth bow, then one kink in the middle; the half-width spans both.
  ends: choice(
    'Ends of the screw in the machine',
    {
      pinned: { label: 'a bearing at each end, neither holds its direction', set: { b: [1, 0] } },
      mixed: { label: 'one end clamped true, a single bearing at the other', set: { b: [0.4375, 0.1875] } },
      clamped: { label: 'both ends clamped true', set: { b: [0.25, 0.25] } },
      free: { label: 'held by the coupling only, top free', set: { b: [3, 1] } },
    },
    'pinned',
    {
      from: 'z.screw-ends',
      hint: 'Clamped true: a rigid coupling on the motor’s shaft, or a pair of bearings. A flexible coupling counts as a bearing.',
    },
  ),
  material: choice(
    'Material of the screw',
    {
      steel: { label: 'steel', set: { E: [206, 4], R_e: [400, 150] } },
      stainless: { label: 'stainless steel', set: { E: [196, 6], R_e: [400, 200] } },
    },
    'steel',
    { from: 'z.screw-material' },
  ),
  class: choice(
    'How straight it should be',
    {
      rolled: { label: 'rolled or milled: 0.25 mm in 300 mm', set: { s_lim: 0.25, l_r: 300 } },
      ground: { label: 'ground: 0.025 mm in 300 mm', set: { s_lim: 0.025, l_r: 300 } },
      metre: { label: '1 mm in a metre', set: { s_lim: 1, l_r: 1000 } },
      own: { label: 'as the seller states' },
    },
    'rolled',
    { hint: 'No standard was found for trapezoidal screws; the seller’s figure counts.' },
  ),
};

export const inputs = {
  g: input('Largest gap under the middle', length.mm, {
    range: [0, 10],
    tool: 'feeler',
    hint: 'Roll it until the bow stands up: both ends touch, the middle is clear. Take the thickest leaf that slides in. Half a turn on, the middle touches and each end rises by as much.',
    when: { method: 'flat', touch: 'gap' },
  }),
  g_0: input('Thinnest leaf, which does not go in', length.mm, {
    typical: 0.05,
    range: [0.01, 1],
    tool: 'feeler',
    when: { method: 'flat', touch: 'none' },
  }),
  f_w: input('Part of what the flat can hide that is there', ratio.one, {
    seldom: true,
    typical: 0.5,
    spread: 0.5,
    basis: derived('without a gap the bow lies anywhere between nil and all that leaf and weight hide'),
    range: [0, 1],
    when: { method: 'flat', touch: 'none' },
  }),
  TIR: input('Needle swing in one turn (TIR)', length.mm, {
    range: [0, 20],
    tool: 'dial',
    hint: 'Highest less lowest reading, with a flat foot wider than the pitch, on the crests. On V-blocks: midway, screw stopped endways. In the machine: midway, or at the top where the top is free, with the nut run well away.',
    when: { method: ['blocks', 'mounted'] },
  }),
  q: input('Unevenness of the crests in the reading', length.mm, {
    seldom: true,
    typical: 0,
    spread: 0.02,
    basis: commonPractice,
    range: [-1, 1],
    signed: true,
    hint: 'Turn the screw with the needle close beside a support, where a bow hardly shows: enter 0 ± that swing.',
  }),
  TIR_c: input('The coupling’s part in the swing', length.mm, {
    typical: 0,
    spread: 0.04,
    basis: commonPractice,
    range: [-5, 5],
    signed: true,
    hint: 'Just above the coupling read the swing: half of it counts midway, all of it at a free top. Positive when both high points face the same way, negative when opposite, 0 ± it when not looked at.',
    when: { method: 'mounted' },
  }),
  c: input('Distance between the supports', length.mm, {
    typical: 300,
    spread: 1,
    range: [50, 3000],
    tool: 'rule',
    hint: 'On a flat: between the two places where it touches.',
    when: { method: ['flat', 'blocks'] },
  }),
  m_1: input('Mass of the screw per length', linearDensity.g_m, {
    seldom: true,
    typical: 300,
    spread: 30,
    basis: derived('steel of 7850 kg/m³ at a pitch diameter of 7 mm: 302 g/m'),
    range: [10, 20000],
    from: 'z.screw-mass',
    hint: 'Weigh it and divide by its length: on a flat its weight pulls part of the bow down.',
    when: { method: 'flat' },
  }),
  L: input('Screw length', length.mm, {
    typical: 400,
    spread: 1,
    range: [50, 3000],
    tool: 'rule',
    from: 'z.screw-length',
    hint: 'Between the places that hold it in the machine; to the end where the top is free.',
  }),
  d_3: input('Core diameter of the screw', length.mm, {
    typical: 5.5,
    spread: 0.15,
    basis: cite('ISO 2904, trapezoidal threads', 'd₃ = d − P − 2a_c: 8 mm with a pitch of 2 mm', true),
    range: [1, 60],
    tool: 'caliper',
    from: 'z.core-diameter',
    hint: 'At the bottom of the thread.',
  }),
  P_h: input('Screw lead', length.mm, {
    typical: 8,
    range: [0.5, 50],
    from: 'z.lead',
    hint: 'Lead = pitch × starts: travel of the nut in one turn.',
  }),
  E: input('Young’s modulus of the screw', pressure.GPa, {
    seldom: true,
    typical: 206,
    spread: 4,
    basis: handbook,
    range: [1, 400],
  }),
  R_e: input('Yield strength of the screw', pressure.MPa, {
    seldom: true,
    typical: 400,
    spread: 150,
    basis: yields,
    range: [10, 2000],
  }),
  b: input('Share of the bow left at the nut', ratio.one, {
    seldom: true,
    typical: 1,
    basis: derived(
      'beam with a smooth bow, or one kink midway, under these ends: 1; 1/4 or 5/8; 0 or 1/2; 4 or 2 at a free top',
    ),
    range: [0, 5],
    hint: 'Clamped ends straighten part of a bow; a free top swings out further than the middle would.',
  }),
  k_g: input('Sideways stiffness of the guide at the nut', stiffness.N_mm, {
    typical: 100,
    spread: 50,
    basis: commonPractice,
    range: [0.1, 100000],
    from: 'carriage.stiffness',
    hint: 'Pull the carriage sideways at the nut with a luggage scale, dial indicator opposite: force over movement.',
  }),
  l_r: input('Length the straightness is stated for', length.mm, {
    seldom: true,
    typical: 300,
    basis: straightness,
    range: [50, 3000],
  }),
  s_lim: input('Bow allowed in that length', length.mm, { seldom: true, basis: straightness, range: [0.001, 20] }),
  f_max: input('Most that a bow may be of the length for these sums', ratio.percent, {
    seldom: true,
    typical: 1.5,
    basis: derived('flat arc: off by 4 · (s/L)², which is 0.1 % at 1.6 %'),
    range: [0.1, 10],
    hint: 'Such a bow is seen by eye: a reading beyond it is more likely a wrong one.',
  }),
  w: input('Line width', length.mm, { seldom: true, typical: 0.42, range: [0.05, 3], from: 'print.line-width' }),
  k_w: input('Share of the line width allowed as wobble', ratio.one, {
    seldom: true,
    typical: 0.05,
    basis: commonPractice,
    range: [0.001, 1],
  }),
};
