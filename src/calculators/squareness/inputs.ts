import { placed } from '../../engine/shared-places';
import { length, slope } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { choice, input } from '../../engine/calculator';

export const AXES = ['beam', 'bed'] as const;

export const choices = {
  way: choice(
    {
      diagonals: {},
      square: {},
      reversal: {},
      photo: {},
    },
    'diagonals',
  ),
  of: choice(
    {
      beam: {},
      bed: {},
      frame: {},
    },
    'beam',
    { from: 'frame.movement' },
  ),
};

const diagonals = { way: 'diagonals' } as const;
const axes = { of: AXES } as const;
const side = { feature: 'outside', range: [10, 3000], tool: 'caliper', when: diagonals } as const;
/** Blade on the left of the side, seen from above. */
const bladeLeft = { plus: 'gap-at-back', minus: 'gap-at-front' } as const;
/** Blade on its right. */
const bladeRight = { plus: 'gap-at-front', minus: 'gap-at-back' } as const;

export const inputs = {
  d_1: input(length.mm, side),
  d_2: input(length.mm, side),
  A: input(length.mm, side),
  B: input(length.mm, side),
  m: input(length.mm, {
    feature: ['gap', 'travel'],
    range: [-20, 20],
    tool: 'feeler',
    signed: bladeLeft,
    when: { way: 'square' },
  }),
  m_1: input(length.mm, {
    feature: ['gap', 'travel'],
    range: [-20, 20],
    tool: 'feeler',
    signed: bladeLeft,
    when: { way: 'reversal' },
  }),
  m_2: input(length.mm, {
    feature: ['gap', 'travel'],
    range: [-20, 20],
    tool: 'feeler',
    signed: bladeRight,
    when: { way: 'reversal' },
  }),
  l: input(length.mm, {
    feature: 'span',
    typical: 100,
    spread: 1,
    range: [20, 1000],
    tool: 'rule',
    when: { way: ['square', 'reversal'] },
  }),
  i_e: input(slope.mm_m, {
    feature: 'set',
    typical: 0,
    spread: 0.5,
    range: [-20, 20],
    signed: { plus: 'wider-than-square', minus: 'sharper-than-square' },
    basis: commonPractice,
    when: { way: 'square' },
  }),
  i_p: input(slope.mm_m, {
    feature: 'slope',
    range: [-100, 100],
    spread: 2,
    signed: { plus: 'sharper-than-square', minus: 'wider-than-square' },
    phone: 'skew',
    when: { way: 'photo' },
  }),
  D: placed('bed.depth', {
    range: [20, 2000],
    tool: 'rule',
    when: axes,
  }),
  S_b: input(length.mm, {
    feature: 'span',
    typical: 350,
    spread: 2,
    range: [50, 3000],
    tool: 'rule',
    from: 'frame.beam',
    when: axes,
  }),
  L_f: input(length.mm, {
    feature: 'span',
    typical: 400,
    spread: 2,
    range: [50, 3000],
    tool: 'rule',
    from: 'frame.depth',
    when: { of: 'frame' },
  }),
  e_lim: input(length.mm, {
    differs: 0.2,
    feature: 'set',
    typical: 0.1,
    range: [0.005, 5],
    basis: commonPractice,
    seldom: true,
  }),
  l_0: input(length.mm, { typical: 100, range: [10, 1000], decided: true, seldom: true }),
};
