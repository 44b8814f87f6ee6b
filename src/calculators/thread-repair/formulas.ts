import { area, force, length, money, pressure, ratio, stiffness, torque } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { insertHole, insertLength } from '../../reference/inserts';
import { iso898 } from '../../reference/property-classes';
import { iso898Area } from '../../reference/threads';
import { formula } from '../../engine/calculator';

const shearArea = cite('FED-STD-H28/2B and Machinery’s Handbook', 'shear area of threads at the loosest fit', true);
const weaker = derived('the weaker of hole and screw thread gives first');
const share = derived('load over proof load');
const outward = derived(
  'the shear area of the screw’s thread, carried out to the larger hole: pitch and flanks are the same, the circumference is not',
);
const beside = derived('the wall less the growth of the hole on one side');
const tighten = cite('Machinery’s Handbook and VDI 2230', 'torque = coefficient × pull × diameter', true);
const sum = derived('money plus what the time is worth');

export const formulas = [
  formula('A_s = pi / 4 * (d - 0.938194 * P)^2', 'Stress area of the screw', area.mm2, iso898Area),
  formula('F_p = S_p * A_s', 'Proof load of the screw', force.N, iso898),
  formula('tau_s = q_s * R_m', 'Shear strength of the screw', pressure.MPa, derived('share of its tensile strength')),
  formula(
    'a_i = pi * D_s / P * (P / 2 + (D_s - E_n) / sqrt(3))',
    'Hole’s thread: shear area per length',
    length.mm,
    shearArea,
  ),
  formula(
    'a_e = pi * K_n / P * (P / 2 + (E_s - K_n) / sqrt(3))',
    'Screw’s thread: shear area per length',
    length.mm,
    shearArea,
  ),
  formula('f = min(tau * a_i, tau_s * a_e)', 'Load that strips one length of thread', stiffness.N_mm, weaker),
  formula('F_e = f * L_e', 'Load that strips what is left', force.N, shearArea),
  formula('s_e = F_e / F_p', 'What is left, over the proof load', ratio.percent, share),
  formula('T_e = K * d * F_p * min(k_t, s_e / k_m)', 'Torque for what is left', torque.N_m, tighten),

  formula('s_l = f * (L_e + L_b) / F_p', 'Longer screw, over the proof load', ratio.percent, share),
  formula('T_l = K * d * F_p * min(k_t, s_l / k_m)', 'Torque for the longer screw', torque.N_m, tighten),
  formula('C_l = c_l + r_h * t_l / (3600 * one_s)', 'Longer screw: cost in all', money.one, sum),

  formula('D_i = d + 1.299038 * P', 'Outside diameter of the insert’s thread', length.mm, insertHole),
  formula('D_m = d + 0.216506 * P', 'Least bore before the insert’s tap', length.mm, insertHole),
  formula('a_w = a_i * (D_s + 1.299038 * P) / D_s', 'Insert’s hole: shear area per length', length.mm, outward),
  formula('f_w = min(tau * a_w, tau_s * a_e)', 'Load that strips one length of insert', stiffness.N_mm, weaker),
  formula('L_i = k_i * d', 'Length of the insert', length.mm, insertLength),
  formula('s_i = f_w * (L_i - 0.75 * P) / F_p', 'Insert, over the proof load', ratio.percent, insertLength),
  formula('w_i = w - (D_i - d) / 2', 'Wall beside the insert', length.mm, beside),
  formula('m_i = w_i - k_w * D_i', 'Wall to spare beside the insert', length.mm, commonPractice),
  formula('x_i = L_h - L_i', 'Depth to spare under the insert', length.mm, insertLength, { hole: ['reached', 'shut'] }),
  formula('x_i = L_h - (L_i + 4 * P)', 'Depth to spare under the insert and its tap', length.mm, insertLength, {
    hole: 'blind',
  }),
  formula('T_i = K * d * F_p * min(k_t, s_i / k_m)', 'Torque for the insert', torque.N_m, tighten),
  formula('C_i = c_i + r_h * t_i / (3600 * one_s)', 'Insert: cost in all', money.one, sum),

  formula(
    'a_n = pi * D_sn / P_n * (P_n / 2 + (D_sn - E_nn) / sqrt(3))',
    'Larger hole: shear area per length',
    length.mm,
    shearArea,
  ),
  formula(
    'b_n = pi * K_nn / P_n * (P_n / 2 + (E_sn - K_nn) / sqrt(3))',
    'Larger screw: shear area per length',
    length.mm,
    shearArea,
  ),
  formula('f_n = min(tau * a_n, tau_s * b_n)', 'Load that strips one length of the larger', stiffness.N_mm, weaker),
  formula('s_n = f_n * L_r / F_p', 'Next larger screw, over the present one’s proof load', ratio.percent, share),
  formula(
    'S_n = F_p / (pi / 4 * (d_n - 0.938194 * P_n)^2)',
    'Proof stress it needs for the same load',
    pressure.MPa,
    iso898Area,
  ),
  formula('w_n = w - (d_n - d) / 2', 'Wall beside the larger thread', length.mm, beside),
  formula('m_n = w_n - k_w * d_n', 'Wall to spare beside the larger thread', length.mm, commonPractice),
  formula('T_n = K * d_n * F_p * min(k_t, s_n / k_m)', 'Torque for the larger screw', torque.N_m, tighten),
  formula('C_n = c_n + r_h * t_n / (3600 * one_s)', 'Next larger screw: cost in all', money.one, sum),

  formula(
    'b_w = p_y * pi / 4 * (d_w^2 - D_c^2) / F_p',
    'Washer’s bearing on the part, over the proof load',
    ratio.percent,
    derived('yield stress times the ring under the washer'),
  ),
  formula(
    's_b = min(1, b_w)',
    'Bolt and nut, over the proof load',
    ratio.percent,
    cite('ISO 898-2', 'a nut of the bolt’s class bears its proof load', true),
  ),
  formula('w_b = w - (D_c - d) / 2', 'Wall beside the clearance hole', length.mm, beside),
  formula('x_w = w - (d_w - d) / 2', 'Room beside the washer', length.mm, beside),
  formula('T_b = K * d * F_p * min(k_t, b_w / k_m)', 'Torque for bolt and nut', torque.N_m, tighten),
  formula('C_b = c_b + r_h * t_b / (3600 * one_s)', 'Bolt and nut: cost in all', money.one, sum),

  formula('s_r = f * L_r / F_p', 'New part, over the proof load', ratio.percent, share),
  formula('T_r = K * d * F_p * min(k_t, s_r / k_m)', 'Torque for the new part', torque.N_m, tighten),
  formula('C_r = c_r + r_h * t_r / (3600 * one_s)', 'New part: cost in all', money.one, sum),
] as const;

export const limits = [
  { of: 's_e', min: 's_min', label: 'Thread left, against the strength wanted', cite: commonPractice },
] as const;
