import { choice } from '../../engine/calculator';

export const THREE = ['front', 'back', 'three'] as const;
export const FOUR = ['corners', 'four'] as const;

export const choices = {
  by: choice(
    {
      height: {},
      gap: {},
    },
    'height',
  ),
  layout: choice(
    {
      corners: {},
      front: {},
      back: {},
      three: {},
      four: {},
    },
    'corners',
    { from: 'bed.adjusters' },
  ),
  build: choice(
    {
      nut: {},
      screw: {},
      rest: {},
      z: { set: { P_s: 8, phi_h: 2 } },
      raises: {},
      lowers: {},
    },
    'nut',
    {
      from: 'bed.adjuster-build',
    },
  ),
  thread: choice(
    {
      M4: { label: 'M4', set: { P_s: 0.7 } },
      M3: { label: 'M3', set: { P_s: 0.5 } },
      M5: { label: 'M5', set: { P_s: 0.8 } },
    },
    'M4',
    { from: 'bed.adjuster-thread', when: { build: ['nut', 'screw', 'rest', 'raises', 'lowers'] } },
  ),
  hand: choice({ right: {}, left: {} }, 'right', {
    from: 'bed.adjuster-hand',
    when: { build: ['nut', 'screw', 'rest', 'z'] },
  }),
  keep_3: choice(
    {
      all: {},
      1: {},
      2: {},
      3: {},
    },
    'all',
    { when: { layout: THREE } },
  ),
  keep_4: choice(
    {
      1: {},
      2: {},
      3: {},
      4: {},
      all: {},
    },
    '1',
    { when: { layout: FOUR } },
  ),
  judge: choice({ both: {}, tilt: {} }, 'both'),
};
