import { length, slope } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { choice, input } from '../../engine/calculator';

export const AXES = ['beam', 'bed'] as const;

export const choices = {
  way: choice(
    'Measured with',
    {
      diagonals: { label: 'two diagonals and two sides' },
      square: { label: 'a try square and a feeler' },
      reversal: { label: 'a square, both ways round' },
    },
    'diagonals',
    {
      hint: 'Diagonals of a large flat print need only a caliper. A square shows its own error with the machine’s; turned over, the two part.',
    },
  ),
  of: choice(
    'What it tells of',
    {
      beam: { label: 'a print or the movement; the beam runs front to back' },
      bed: { label: 'a print or the movement; the bed runs front to back' },
      frame: { label: 'the frame itself' },
    },
    'beam',
    { from: 'frame.movement' },
  ),
};

const diagonals = { way: 'diagonals' } as const;
const axes = { of: AXES } as const;
const side = { range: [10, 3000], tool: 'caliper', when: diagonals } as const;
const RIGHT =
  'How much farther right of the blade the side lies at the back than at the front: blade on its left, the gap open at the back is +; blade on its right, the gap open at the front is +. Or by an indicator carried along the blade.';

export const inputs = {
  d_1: input('Diagonal, front left to back right', length.mm, {
    ...side,
    hint: 'As it lay or stands, seen from above, front towards you: mark the front left corner of a print before taking it off.',
  }),
  d_2: input('Diagonal, back left to front right', length.mm, side),
  A: input('Side along X, left to right', length.mm, side),
  B: input('Side along Y, front to back', length.mm, side),
  m: input('Side runs to the right of the blade', length.mm, {
    range: [-20, 20],
    tool: 'feeler',
    signed: true,
    hint: `Stock of the square along X. ${RIGHT}`,
    when: { way: 'square' },
  }),
  m_1: input('Blade on the left: side runs to its right', length.mm, {
    range: [-20, 20],
    tool: 'feeler',
    signed: true,
    hint: `Stock along X. ${RIGHT}`,
    when: { way: 'reversal' },
  }),
  m_2: input('Turned over, blade on the right: side runs to its right', length.mm, {
    range: [-20, 20],
    tool: 'feeler',
    signed: true,
    hint: 'The same face of the stock along X, the square flipped left for right; the same sign as before: to the right, going back, is +.',
    when: { way: 'reversal' },
  }),
  l: input('Length of blade between the two places', length.mm, {
    typical: 100,
    spread: 1,
    range: [20, 1000],
    tool: 'rule',
    when: { way: ['square', 'reversal'] },
  }),
  i_e: input('Error of the square, wider than 90° is +', slope.mm_m, {
    typical: 0,
    spread: 0.5,
    range: [-20, 20],
    signed: true,
    basis: commonPractice,
    hint: 'Blade on the left; with the blade on the right enter it with the other sign. A workshop square is good to some 0.05 mm per 100 mm; taken both ways round it shows its error itself.',
    when: { way: 'square' },
  }),
  D: input('Bed depth', length.mm, {
    typical: 220,
    spread: 1,
    range: [20, 2000],
    tool: 'rule',
    from: 'bed.depth',
    when: axes,
  }),
  S_b: input('Beam between its guides', length.mm, {
    typical: 350,
    spread: 2,
    range: [50, 3000],
    tool: 'rule',
    from: 'frame.beam',
    when: axes,
  }),
  L_f: input('Depth of the frame', length.mm, {
    typical: 400,
    spread: 2,
    range: [50, 3000],
    tool: 'rule',
    from: 'frame.depth',
    when: { of: 'frame' },
  }),
  e_lim: input('Skew allowed', length.mm, {
    typical: 0.1,
    range: [0.005, 5],
    basis: commonPractice,
    seldom: true,
    hint: 'Over the length below. A tenth of a millimetre in 100 is about what an eye sees at a corner.',
  }),
  l_0: input('Skew stated over', length.mm, { typical: 100, range: [10, 1000], decided: true, seldom: true }),
};
