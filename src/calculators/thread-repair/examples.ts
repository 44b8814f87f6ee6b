import { cite, derived } from '../../reference/citation';

const exact = { tau: '117 MPa ± 0', K: '0.2 ± 0' } as const;
const hole = { L_r: '6 mm ± 0', L_h: '12 mm ± 0', w: '5 mm ± 0' } as const;

export const examples = [
  {
    title: 'M3 of class 8.8 in extrusion, torn out over its whole reach',
    given: { ...exact, ...hole, L_e: '0 mm ± 0' },
    expect: {
      A_s: [5.031, 0.001],
      F_p: [2918, 1],
      F_e: [0, 1e-9],
      D_i: [3.6495, 0.0001],
      L_i: [4.5, 1e-9],
      x_i: [5.5, 1e-9],
      w_i: [4.6752, 0.0001],
      w_n: [4.5, 1e-9],
    },
    verdict: 'beyond',
    source: derived('580 MPa × 5.031 mm²; 3 + 1.299 × 0.5; 1.5 × 3; 12 − 4.5 − 4 × 0.5; 5 − (3.6495 − 3) / 2; 5 − 0.5'),
  },
  {
    title: 'Four of six millimetres of M3 thread left',
    given: { ...exact, ...hole, L_e: '4 mm ± 0' },
    expect: { a_i: [5.547, 0.005], f: [649, 1], F_e: [2596, 4], s_e: [88.97, 0.15], s_r: [133.5, 0.2] },
    verdict: 'beyond',
    source: derived('shear area 5.547 mm² per mm (worked table in references) × 117 MPa × 4 mm, over 2918 N'),
  },
  {
    title: 'Thread of M6 in steel plate, whole: leave it',
    given: { L_r: '8 mm', L_e: '8 mm', L_h: '12 mm', w: '10 mm', K: '0.2 ± 0', tau: '290 MPa ± 0' },
    choices: { size: 'M6', part: 'steel', hole: 'reached' },
    expect: { F_p: [11672, 15], T_e: [10.5, 0.02], b_w: [158.8, 0.2], s_b: [100, 1e-9] },
    verdict: 'within',
    source: cite(
      'ISO 898-1',
      '8.8: 580 MPa × 20.12 mm²; torque 0.2 × 0.75 × 11 672 N × 6 mm; washer 235 MPa × π / 4 × (12² − 6.6²) mm²',
      true,
    ),
  },
  {
    title: 'M3 in a print: the wall decides',
    given: { L_r: '8 mm ± 0', L_e: '0 mm ± 0', L_h: '10 mm ± 0', w: '2 mm ± 0', tau: '16 MPa ± 0' },
    choices: { part: 'print-pla', hole: 'blind', insert: '2d' },
    expect: { w_i: [1.6752, 0.0001], m_i: [-1.0619, 0.0001], w_n: [1.5, 1e-9], m_n: [-1.5, 1e-9] },
    verdict: 'beyond',
    source: derived('2 − 0.3248 = 1.6752; less 0.75 × 3.6495; 2 − 0.5 = 1.5; less 0.75 × 4'),
  },
] as const;
