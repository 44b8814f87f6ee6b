import { choice } from '../../engine/calculator';

export const THREE = ['front', 'back', 'three'] as const;
export const FOUR = ['corners', 'four'] as const;
/** Builds in which a spring keeps the bed against each adjuster. */
export const SPRUNG = ['nut', 'screw', 'raises', 'lowers'] as const;

export const choices = {
  // A feeler, the usual tool here, reads gaps: the wider the gap, the lower the bed.
  by: choice(
    {
      gap: {},
      height: {},
    },
    'gap',
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
      fewest: {},
    },
    'fewest',
    { when: { layout: FOUR } },
  ),
  plate: choice(
    {
      aluminium: { set: { E_b: 70, nu_b: 0.3 } },
      glass: { set: { E_b: 70, nu_b: 0.2 } },
      steel: { set: { E_b: 210, nu_b: 0.3 } },
    },
    'aluminium',
    { from: 'bed.plate', when: { layout: FOUR, build: SPRUNG } },
  ),
  judge: choice({ both: {}, tilt: {} }, 'both'),
};
