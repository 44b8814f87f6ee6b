import { evaluate, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

/** An expression with units, worked out by mathjs. */
const by = (expression: string, unit: string) => () => {
  const result = evaluate(expression) as Unit | number;
  return typeof result === 'number' ? result : result.toNumber(unit);
};

const hole = { L_r: '6 mm', L_h: '12 mm', w: '5 mm', L_e: '4 mm', L_b: '3 mm' } as const;
const m3 = { ...hole, tau: '117 MPa', K: '0.2' } as const;
const m6 = { L_r: '10 mm', L_h: '20 mm', w: '8 mm', L_e: '10 mm', K: '0.2', tau: '117 MPa' } as const;
const MATHJS = 'mathjs with units, from the printed shear areas at the limits 6g/6H: ';
/** Shear areas in mm² per mm at the limits 6g/6H, worked once in the project’s reference list; M4 next to M3. */
const I3 = '5.547 mm';
const I4 = '7.769 mm';
/** M3, torque for a pull in newtons: μ 0.12 in thread and head, head of 4.45 mm mean diameter; its K is 0.1773. */
const turnM3 = (pull: string) =>
  by(`${pull} * (0.5 mm / (2 * pi) + 0.577 * 0.12 * 2.675 mm + 0.12 * 4.45 mm / 2)`, 'N m');
const PROOF = '(580 N/mm^2 * 5.031 mm^2)';

const checks: readonly OutsideProof[] = [
  {
    source: 'ISO 898-1, proof load of M3 class 8.8: 2920 N (from memory); stress area 5.031 mm² in a printed chart',
    given: m3,
    expect: { A_s: [5.031, 0.0005], F_p: [2920, 5] },
  },
  {
    source: 'ISO 898-1, M5 class 10.9: 11 800 N (from memory); stress area 14.18 mm² in a printed chart',
    given: m3,
    choices: { size: 'M5', grade: '10.9' },
    expect: { A_s: [14.18, 0.005], F_p: [11800, 50] },
  },
  {
    source: 'VDI 2230: shear strength of class 8.8 is 0.65 × 800 = 520 MPa (from memory)',
    given: m3,
    expect: { tau_s: [520, 1e-6] },
  },
  {
    source:
      'ISO 68-1: the screw’s crest is P/8 and the hole’s P/4 wide, so without tolerance the hole shears over 7/8 of π d and the screw over 3/4 of π D1; likewise the insert’s hole',
    given: { ...m6, D_s: '6 mm', E_n: '5.350481 mm', E_s: '5.350481 mm', K_n: '4.917468 mm' },
    choices: { size: 'M6' },
    expect: {
      a_i: [by('7/8 * pi * 6', ''), 1e-4],
      a_e: [by('3/4 * pi * 4.917468', ''), 1e-4],
      a_w: [by('7/8 * pi * 7.299038', ''), 1e-4],
    },
  },
  {
    source: 'ISO 68-1, the same for the next larger thread, M8 without tolerance: 7/8 π d and 3/4 π D1',
    given: { ...m6, D_sn: '8 mm', E_nn: '7.188101 mm', E_sn: '7.188101 mm', K_nn: '6.646835 mm' },
    choices: { size: 'M6' },
    expect: { a_n: [by('7/8 * pi * 8', ''), 1e-4], b_n: [by('3/4 * pi * 6.646835', ''), 1e-4] },
  },
  {
    source: 'ISO 68-1 and the limits 6g/6H: shear areas of M3 and M4 per mm, printed to four digits',
    given: m3,
    expect: { a_i: [5.547, 0.005], a_e: [3.903, 0.005], a_n: [7.769, 0.005], b_n: [5.473, 0.005] },
  },
  {
    source: `${MATHJS}stripping loads`,
    given: m3,
    expect: {
      f: [by(`117 N/mm^2 * ${I3}`, 'N/mm'), 0.5],
      F_e: [by(`117 N/mm^2 * ${I3} * 4 mm`, 'N'), 2],
      f_n: [by(`117 N/mm^2 * ${I4}`, 'N/mm'), 0.5],
      f_w: [by(`117 N/mm^2 * ${I3} * (2.874 + 0.6495) / 2.874`, 'N/mm'), 0.5],
    },
  },
  {
    source: `${MATHJS}shares of the proof load, in percent`,
    given: m3,
    expect: {
      s_e: [by(`100 * 117 N/mm^2 * ${I3} * 4 mm / ${PROOF}`, ''), 0.1],
      s_l: [by(`100 * 117 N/mm^2 * ${I3} * 7 mm / ${PROOF}`, ''), 0.2],
      s_r: [by(`100 * 117 N/mm^2 * ${I3} * 6 mm / ${PROOF}`, ''), 0.2],
      s_n: [by(`100 * 117 N/mm^2 * ${I4} * 6 mm / ${PROOF}`, ''), 0.2],
      s_i: [by(`100 * 117 N/mm^2 * ${I3} * 3.5235 / 2.874 * 4.125 mm / ${PROOF}`, ''), 0.2],
      S_n: [by(`${PROOF} / (8.78 mm^2)`, 'N/mm^2'), 0.3],
    },
  },
  {
    source:
      'VDI 2230, long form (from memory): 8752 N on M6 with μ 0.12 and a head of 8.3 mm mean diameter, F (P/2π + 0.577 μ d2 + μ D/2); its K is 0.171',
    given: { ...m6, K: '0.1712', L_b: '1 mm' },
    choices: { size: 'M6', part: 'steel' },
    expect: Object.fromEntries(
      ['T_e', 'T_l', 'T_i', 'T_r', 'T_b'].map((symbol) => [
        symbol,
        [by('8752 N * (1 mm / (2 * pi) + 0.577 * 0.12 * 5.350 mm + 0.12 * 8.3 mm / 2)', 'N m'), 0.03],
      ]),
    ),
  },
  {
    source: 'VDI 2230, the same long form on M4 under the pull of 2189 N, μ 0.12, head 5.5 mm; its K is 0.1717',
    given: { ...m3, K: '0.1717' },
    expect: {
      T_n: [by('2188.5 N * (0.7 mm / (2 * pi) + 0.577 * 0.12 * 3.545 mm + 0.12 * 5.5 mm / 2)', 'N m'), 0.005],
    },
  },
  {
    source: 'ASME B18.29.2M, helical coil inserts: M3 tapped hole 3.650 over all, 3.108 least bore (from memory)',
    given: m3,
    expect: {
      D_i: [3.65, 0.001],
      D_m: [3.108, 0.0005],
      w_i: [4.675, 0.001],
      m_i: [by('4.675 - 0.45 * 3.650', ''), 0.001],
    },
  },
  {
    source:
      'ASME B18.29.2M (from memory): the nominal length is the least thickness of a through hole; M6 × 1.5 d is 9 mm long',
    given: { ...m6, L_h: '9 mm' },
    choices: { size: 'M6', hole: 'reached' },
    expect: { L_i: [9, 1e-9], x_i: [0, 1e-9] },
  },
  {
    source:
      'ASME B18.29.2M (from memory): drilling depth with a bottoming tap is length + 2 P chamfer + 1 P clearance + 1 P set-down; M6 × 1.5 d: 13 mm',
    given: { ...m6, L_h: '13 mm' },
    choices: { size: 'M6', hole: 'blind' },
    expect: { x_i: [0, 1e-9] },
  },
  {
    source:
      'ISO 261, ISO 273 and ISO 7089: from M3 to M4 the wall loses 0.5 mm, to a 3.4 mm hole 0.2 mm, to a 7 mm washer 2 mm',
    given: m3,
    expect: { w_n: [4.5, 1e-9], m_n: [2.7, 1e-9], w_b: [4.8, 1e-9], x_w: [3, 1e-9] },
  },
  {
    source:
      'ISO 7089, M3 washer 7 mm over a 3.4 mm hole, ring by mathjs, on a yield stress of 25 MPa; over 100 % the nut’s class decides (ISO 898-2)',
    given: { ...m3, p_y: '25 MPa' },
    expect: {
      b_w: [by(`100 * 25 N/mm^2 * pi * ((3.5 mm)^2 - (1.7 mm)^2) / ${PROOF}`, ''), 0.05],
      s_b: [by(`100 * 25 N/mm^2 * pi * ((3.5 mm)^2 - (1.7 mm)^2) / ${PROOF}`, ''), 0.05],
    },
  },
  {
    source: 'Common reckoning: half an hour at 20 an hour is 10, on top of the money',
    given: {
      ...m3,
      r_h: '20',
      t_l: '30 min',
      t_i: '30 min',
      t_n: '30 min',
      t_b: '30 min',
      t_r: '30 min',
      c_l: '1',
      c_i: '2',
      c_n: '3',
      c_b: '4',
      c_r: '5',
    },
    expect: { C_l: [11, 1e-9], C_i: [12, 1e-9], C_n: [13, 1e-9], C_b: [14, 1e-9], C_r: [15, 1e-9] },
  },
  {
    source:
      'VDI 2230, the long form (from memory) with a soft part: a third of the load that strips 20 MPa over the printed shear areas, or of what the ring of an ISO 7089 washer bears; M3, K 0.1773',
    given: { ...m3, tau: '20 MPa', p_y: '20 MPa', K: '0.1773', k_m: '3' },
    expect: {
      T_e: [turnM3(`20 N/mm^2 * ${I3} * 4 mm / 3`), 1e-4],
      T_l: [turnM3(`20 N/mm^2 * ${I3} * 7 mm / 3`), 1e-4],
      T_r: [turnM3(`20 N/mm^2 * ${I3} * 6 mm / 3`), 1e-4],
      T_i: [turnM3(`20 N/mm^2 * ${I3} * 3.5235 / 2.874 * 4.125 mm / 3`), 1e-4],
      T_b: [turnM3('20 N/mm^2 * pi * ((3.5 mm)^2 - (1.7 mm)^2) / 3'), 1e-4],
    },
  },
  {
    source: 'VDI 2230, the same on M4 in the soft part: head 5.5 mm, K 0.1717',
    given: { ...m3, tau: '20 MPa', K: '0.1717', k_m: '3' },
    expect: {
      T_n: [
        by(`20 N/mm^2 * ${I4} * 6 mm / 3 * (0.7 mm / (2 * pi) + 0.577 * 0.12 * 3.545 mm + 0.12 * 5.5 mm / 2)`, 'N m'),
        2e-4,
      ],
    },
  },
  {
    source:
      'VDI 2230: in a part harder than the screw (600 MPa in shear) the screw’s thread of 520 MPa shears, over the printed shear areas of M3 and M4',
    given: { ...m3, tau: '600 MPa' },
    expect: {
      f: [by('520 N/mm^2 * 3.903 mm', 'N/mm'), 2.6],
      f_w: [by('520 N/mm^2 * 3.903 mm', 'N/mm'), 2.6],
      f_n: [by('520 N/mm^2 * 5.473 mm', 'N/mm'), 2.6],
    },
  },
  {
    source:
      'ISO 898-2 (from memory): on a part that bears more, a nut of the bolt’s class bears its proof load and no more',
    given: { ...m3, p_y: '900 MPa' },
    expect: { s_b: [100, 1e-9] },
  },
  {
    source:
      'ASME B1.1 (from memory): tensile stress area of 1/4-20 UNC 0.0318 in², of the next larger 5/16-18 0.0524 in²; proof load by mathjs',
    given: { ...hole, S_p: '580 MPa' },
    choices: { size: '1/4-20' },
    expect: {
      A_s: [by('0.0318 in^2', 'mm^2'), 0.06],
      F_p: [by('0.0318 in^2 * 580 N/mm^2', 'N'), 40],
      S_n: [by('580 N/mm^2 * 0.0318 / 0.0524', 'N/mm^2'), 1.5],
    },
  },
  {
    source:
      'A cylinder’s wall by mathjs: 5.7 mm of a 4 mm hole in 12.5 MPa, of which knurls hold half; from 3 to 4 mm the wall loses 0.5 mm',
    given: { ...m3, tau: '12.5 MPa', q_h: '0.5', D_h: '4 mm', L_s: '5.7 mm' },
    choices: { part: 'print-abs', hole: 'blind' },
    expect: {
      s_h: [by(`100 * 0.5 * 12.5 N/mm^2 * pi * 4 mm * 5.7 mm / ${PROOF}`, ''), 0.01],
      w_h: [4.5, 1e-9],
      m_h: [4.5 - 0.75 * 4, 1e-9],
      x_h: [12 - 5.7 - 2 * 0.5, 1e-9],
    },
  },
  {
    source: 'The same hole through: its whole thickness holds the insert',
    given: { ...m3, tau: '12.5 MPa', q_h: '0.5', D_h: '4 mm', L_s: '5.7 mm' },
    choices: { part: 'print-abs', hole: 'reached' },
    expect: { x_h: [6.3, 1e-9] },
  },
  {
    source:
      'ISO 4032 (from memory): M3 nut 5.5 mm across flats, 6.01 mm across corners at least, 2.4 mm high; hexagon of six triangles over a 3.4 mm hole, by mathjs',
    given: { ...m3, tau: '30 MPa', p_y: '25 MPa' },
    choices: { part: 'print-abs' },
    expect: {
      h_k: [2.4, 1e-9],
      e_k: [by('5.5 / cos(30 deg)', ''), 1e-6],
      A_k: [by('6 * (5.5 / 2)^2 * tan(30 deg) - pi * 1.7^2', ''), 1e-6],
      b_k: [by(`100 * 25 N/mm^2 * (6 * (5.5 mm / 2)^2 * tan(30 deg) - pi * (1.7 mm)^2) / ${PROOF}`, ''), 0.01],
      v_k: [by(`100 * 30 N/mm^2 * 6 * 5.5 mm * tan(30 deg) * 3 mm / ${PROOF}`, ''), 0.02],
      s_k: [by(`100 * 25 N/mm^2 * (6 * (5.5 mm / 2)^2 * tan(30 deg) - pi * (1.7 mm)^2) / ${PROOF}`, ''), 0.01],
      w_k: [by('5 - (5.5 / cos(30 deg) - 3) / 2', ''), 1e-6],
      m_k: [by('5 - (5.5 / cos(30 deg) - 3) / 2 - 0.75 * 3', ''), 1e-6],
      x_k: [12 - 2.4 - 3, 1e-9],
    },
  },
  {
    source:
      'ISO 4035 and ISO 898-2 (from memory): a thin M3 nut is 1.8 mm high and of class 04, 380 MPa; in a part that bears more it decides',
    given: { ...m3, tau: '600 MPa', p_y: '900 MPa', p_n: '380 MPa' },
    choices: { part: 'pc', nut: 'thin' },
    expect: { h_k: [1.8, 1e-9], s_k: [by('100 * 380 / 580', ''), 1e-6], x_k: [12 - 1.8 - 3, 1e-9] },
  },
  {
    source: 'VDI 2230, the long form (from memory): a third of what insert or nut bears; M3, K 0.1773',
    given: { ...m3, tau: '20 MPa', p_y: '20 MPa', K: '0.1773', k_m: '3', q_h: '0.5', D_h: '4 mm', L_s: '5.7 mm' },
    choices: { part: 'print-abs' },
    expect: {
      T_h: [turnM3('0.5 * 20 N/mm^2 * pi * 4 mm * 5.7 mm / 3'), 1e-4],
      T_k: [turnM3('20 N/mm^2 * (6 * (5.5 mm / 2)^2 * tan(30 deg) - pi * (1.7 mm)^2) / 3'), 1e-4],
    },
  },
  {
    source: 'Common reckoning: half an hour at 20 an hour is 10, on top of the money; insert and nut',
    given: { ...m3, r_h: '20', t_h: '30 min', t_k: '30 min', c_h: '6', c_k: '7' },
    choices: { part: 'print-pla' },
    expect: { C_h: [16, 1e-9], C_k: [17, 1e-9] },
  },
];
export default checks;
