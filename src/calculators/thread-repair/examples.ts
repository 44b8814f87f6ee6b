import { cite, derived } from '../../engine/calculator';

const exact = { tau: '117 MPa ± 0', K: '0.2 ± 0' } as const;
const hole = { L_r: '6 mm ± 0', L_h: '12 mm ± 0', w: '5 mm ± 0' } as const;

export const examples = [
  {
    key: 'mClassExtrusion',
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
    source: derived('mClassExtrusion'),
  },
  {
    key: 'fourSixMillimetres',
    given: { ...exact, ...hole, L_e: '4 mm ± 0' },
    expect: { a_i: [5.547, 0.005], f: [649, 1], F_e: [2596, 4], s_e: [88.97, 0.15], s_r: [133.5, 0.2] },
    verdict: 'beyond',
    source: derived('fourSixMillimetres'),
  },
  {
    key: 'threadMSteel',
    given: { L_r: '8 mm', L_e: '8 mm', L_h: '12 mm', w: '10 mm', K: '0.2 ± 0', tau: '290 MPa ± 0' },
    choices: { size: 'M6', part: 'steel', hole: 'reached' },
    expect: { F_p: [11672, 15], T_e: [10.5, 0.02], b_w: [158.8, 0.2], s_b: [100, 1e-9] },
    verdict: 'within',
    source: cite('ISO 898-1:2013', 'mpaMmTorque', true),
  },
  {
    key: 'mPrintWall',
    given: { L_r: '8 mm ± 0', L_e: '0 mm ± 0', L_h: '10 mm ± 0', w: '2 mm ± 0', tau: '16 MPa ± 0' },
    choices: { part: 'print-pla', hole: 'blind', insert: '2d' },
    expect: { w_i: [1.6752, 0.0001], m_i: [-1.0619, 0.0001], w_n: [1.5, 1e-9], m_n: [-1.5, 1e-9] },
    verdict: 'beyond',
    source: derived('mPrintWall'),
  },
] as const;
