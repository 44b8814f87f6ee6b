import { choice } from '../../engine/calculator';

export const THREE = ['front', 'back', 'three'] as const;
export const FOUR = ['corners', 'four'] as const;

export const choices = {
  by: choice(
    'The third column holds',
    {
      height: { label: 'heights of the bed: + is higher' },
      gap: { label: 'gaps under the nozzle: thicker is lower' },
    },
    'height',
    {
      hint: 'An indicator carried in place of the nozzle reads heights: plunger pushed in is +. A feeler gauge or paper under the nozzle, which stays at one Z, reads gaps.',
    },
  ),
  layout: choice(
    'Adjusters',
    {
      corners: { label: 'four, at the corners' },
      front: { label: 'three: two in front, one behind' },
      back: { label: 'three: one in front, two behind' },
      three: { label: 'three, places typed in' },
      four: { label: 'four, places typed in' },
    },
    'corners',
    { from: 'bed.adjusters' },
  ),
  build: choice(
    'What is turned',
    {
      nut: { label: 'nut or knob under the carrier; its screw hangs from the bed, spring between' },
      screw: { label: 'screw, from above; thread or held nut in the carrier' },
      rest: { label: 'nut on a standing screw; the bed rests on the nut' },
      z: { label: 'the Z screws themselves; their nuts carry the bed', set: { P_s: 8, phi_h: 2 } },
      raises: { label: 'tried: clockwise, seen from above, raises the bed' },
      lowers: { label: 'tried: clockwise, seen from above, lowers the bed' },
    },
    'nut',
    {
      from: 'bed.adjuster-build',
      hint: 'Not sure? Turn one knob half a turn clockwise, seen from above, look whether the bed rises there, and pick “tried”.',
    },
  ),
  thread: choice(
    'Thread of the adjusters',
    {
      M4: { label: 'M4', set: { P_s: 0.7 } },
      M3: { label: 'M3', set: { P_s: 0.5 } },
      M5: { label: 'M5', set: { P_s: 0.8 } },
    },
    'M4',
    { from: 'bed.adjuster-thread', when: { build: ['nut', 'screw', 'rest', 'raises', 'lowers'] } },
  ),
  hand: choice('Its hand', { right: { label: 'right-hand' }, left: { label: 'left-hand' } }, 'right', {
    from: 'bed.adjuster-hand',
    when: { build: ['nut', 'screw', 'rest', 'z'] },
  }),
  keep_3: choice(
    'Adjuster to leave alone',
    {
      all: { label: 'none: keep the mean height' },
      1: { label: 'the first' },
      2: { label: 'the second' },
      3: { label: 'the third' },
    },
    'all',
    { when: { layout: THREE }, hint: 'The first layer’s height is then set anew only once.' },
  ),
  keep_4: choice(
    'Adjuster to leave alone',
    {
      1: { label: 'the first' },
      2: { label: 'the second' },
      3: { label: 'the third' },
      4: { label: 'the fourth' },
      all: { label: 'none: keep the mean height' },
    },
    '1',
    { when: { layout: FOUR }, hint: 'First front left, second front right, third back right, fourth back left.' },
  ),
  judge: choice(
    'To judge',
    { both: { label: 'tilt, and what no screw can fix' }, tilt: { label: 'tilt alone' } },
    'both',
    { hint: 'Three points always lie in a plane: they can show tilt, never warp.' },
  ),
};
