import { cite, derived } from '../../engine/calculator';

const spans = { L_1: '300 mm ± 0', L_2: '240 mm ± 0' } as const;
/** So limp and so free at its ends that its stiffness counts for nothing. */
const limp = { EI_1: '0.1 N·mm² ± 0' } as const;
const free = { ends: 'pinned' } as const;
const mass = { w: '6 mm ± 0', m_0: '13 g/m ± 0' } as const;

export const examples = [
  {
    key: 'equalTensionUnlike',
    given: { ...spans, ...mass, ...limp, f_1: '80 Hz ± 0', f_2: '100 Hz ± 0' },
    choices: free,
    expect: { f_2e: [100, 1e-3], f_1e: [80, 1e-3], T_1: [17.9712, 1e-4], T_2: [17.9712, 1e-4] },
    verdict: 'within',
    source: derived('equalTensionUnlike'),
  },
  {
    key: 'sameNoteBoth',
    given: { ...spans, ...mass, ...limp, f_1: '90 Hz ± 0', f_2: '90 Hz ± 0' },
    choices: free,
    expect: { d_T: [-43.902439, 1e-3], f_2e: [112.5, 1e-3] },
    verdict: 'beyond',
    source: derived('sameNoteBoth'),
  },
  {
    key: 'teethShowMm',
    given: {
      ...spans,
      ...mass,
      f_1: '80 Hz ± 0',
      f_2: '100 Hz ± 0',
      x: '2.1 mm ± 0.05 mm',
      p: '2 mm',
      theta_w: '180 deg ± 0',
    },
    expect: { x_1: [1, 1e-9], n: [2.1, 1e-9], n_w: [2, 0], r_x: [0.1, 1e-9] },
    verdict: 'within',
    source: derived('teethShowMm'),
  },
  {
    key: 'quarterWrapTooth',
    given: { ...spans, f_1: '80 Hz', f_2: '100 Hz', x: '-2 mm ± 0.1 mm', p: '3 mm', theta_w: '90 deg ± 0' },
    expect: { x_1: [2.12132, 1e-5], n: [-0.942809, 1e-6], n_w: [-1, 0] },
    source: derived('quarterWrapTooth'),
  },
  {
    key: 'beltsDifferNine',
    given: {
      L_1: '200 mm ± 0',
      L_2: '200 mm ± 0',
      f_1: '120 Hz ± 0',
      f_2: '40 Hz ± 0',
      mu_a: '8 g/m ± 0',
      mu_b: '72 g/m ± 0',
      ...limp,
      EI_2: '0.1 N·mm² ± 0',
    },
    choices: { belts: 'different', mass: 'typed', ends: 'pinned' },
    expect: { f_2e: [40, 1e-3], T_1: [18.432, 1e-4], T_2: [18.432, 1e-4] },
    source: cite('OpenStax, University Physics volume 1 (2016)', 'chapterNoteGoes', true),
  },
  {
    key: 'shortSpansEnds',
    given: {
      L_1: '300 mm ± 0',
      L_2: '100 mm ± 0',
      f_1: '84.232684 Hz ± 0',
      f_2: '258.484782 Hz ± 0',
      mu_a: '8 g/m ± 0',
      EI_1: '50 N·mm² ± 0',
    },
    choices: { mass: 'typed', ends: 'clamped' },
    expect: { T_1: [20, 0.01], T_2: [20, 0.01] },
    verdict: 'within',
    source: derived('shortSpansEnds'),
  },
  {
    key: 'sameEndsFree',
    given: {
      L_1: '300 mm ± 0',
      L_2: '100 mm ± 0',
      f_1: '83.344756 Hz ± 0',
      f_2: '250.308235 Hz ± 0',
      mu_a: '8 g/m ± 0',
      EI_1: '50 N·mm² ± 0',
    },
    choices: { mass: 'typed', ends: 'pinned' },
    expect: { B_2: [0.005, 1e-9], T_1: [20, 0.001], T_2: [20, 0.001] },
    source: derived('sameEndsFree'),
  },
] as const;
