import { area, force, length, money, pressure, ratio, stiffness, torque } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { insertHole, insertLength } from '../../reference/inserts';
import { hexNuts } from '../../reference/nuts';
import { iso898 } from '../../reference/property-classes';
import { iso898Area, unifiedArea } from '../../reference/threads';
import { formula, cite, derived } from '../../engine/calculator';
import { INCH, METRIC, PLASTICS } from './choices';

const shearArea = cite('FED-STD-H28/2B (1991) and Machinery’s Handbook, 29th edition (2012)', 'shearAreaThreads', true);
const weaker = derived('weakerHoleScrew');
const share = derived('loadOverProof');
const outward = derived('shearAreaScrews');
const beside = derived('wallLessGrowth');
const tighten = cite(
  'Machinery’s Handbook, 29th edition (2012), and VDI 2230 part 1 (2015)',
  'torqueCoefficientPull',
  true,
);
const sum = derived('moneyPlusTime');

const metric = { size: METRIC };
const inch = { size: INCH };
const plastic = { part: PLASTICS };

export const formulas = [
  formula('A_s = pi / 4 * (d - 0.938194 * P)^2', area.mm2, iso898Area, metric),
  formula('A_s = pi / 4 * (d - 0.9743 * P)^2', area.mm2, unifiedArea, inch),
  formula('F_p = S_p * A_s', force.N, iso898),
  formula('tau_s = q_s * R_m', pressure.MPa, derived('shareTensileStrength')),
  formula('a_i = pi * D_s / P * (P / 2 + (D_s - E_n) / sqrt(3))', length.mm, shearArea),
  formula('a_e = pi * K_n / P * (P / 2 + (E_s - K_n) / sqrt(3))', length.mm, shearArea),
  formula('f = min(tau * a_i, tau_s * a_e)', stiffness.N_mm, weaker),
  formula('F_e = f * L_e', force.N, shearArea),
  formula('s_e = F_e / F_p', ratio.percent, share),
  formula('T_e = K * d * F_p * min(k_t, s_e / k_m)', torque.N_m, tighten),

  formula('s_l = f * (L_e + L_b) / F_p', ratio.percent, share),
  formula('T_l = K * d * F_p * min(k_t, s_l / k_m)', torque.N_m, tighten),
  formula('C_l = c_l + r_h * t_l / (3600 * one_s)', money.one, sum),

  formula('D_i = d + 1.299038 * P', length.mm, insertHole),
  formula('D_m = d + 0.216506 * P', length.mm, insertHole),
  formula('a_w = a_i * (D_s + 1.299038 * P) / D_s', length.mm, outward),
  formula('f_w = min(tau * a_w, tau_s * a_e)', stiffness.N_mm, weaker),
  formula('L_i = k_i * d', length.mm, insertLength),
  formula('s_i = f_w * (L_i - 0.75 * P) / F_p', ratio.percent, insertLength),
  formula('w_i = w - (D_i - d) / 2', length.mm, beside),
  formula('m_i = w_i - k_w * D_i', length.mm, commonPractice),
  formula('x_i = L_h - L_i', length.mm, insertLength, { hole: ['reached', 'shut'] }, 'x_i_depthSpareUnder'),
  formula(
    'x_i = L_h - (L_i + 4 * P)',
    length.mm,
    insertLength,
    {
      hole: 'blind',
    },
    'x_i_blind',
  ),
  formula('T_i = K * d * F_p * min(k_t, s_i / k_m)', torque.N_m, tighten),
  formula('C_i = c_i + r_h * t_i / (3600 * one_s)', money.one, sum),

  formula('a_n = pi * D_sn / P_n * (P_n / 2 + (D_sn - E_nn) / sqrt(3))', length.mm, shearArea),
  formula('b_n = pi * K_nn / P_n * (P_n / 2 + (E_sn - K_nn) / sqrt(3))', length.mm, shearArea),
  formula('f_n = min(tau * a_n, tau_s * b_n)', stiffness.N_mm, weaker),
  formula('s_n = f_n * L_r / F_p', ratio.percent, share),
  formula('S_n = F_p / (pi / 4 * (d_n - 0.938194 * P_n)^2)', pressure.MPa, iso898Area, metric),
  formula('S_n = F_p / (pi / 4 * (d_n - 0.9743 * P_n)^2)', pressure.MPa, unifiedArea, inch),
  formula('w_n = w - (d_n - d) / 2', length.mm, beside),
  formula('m_n = w_n - k_w * d_n', length.mm, commonPractice),
  formula('T_n = K * d_n * F_p * min(k_t, s_n / k_m)', torque.N_m, tighten),
  formula('C_n = c_n + r_h * t_n / (3600 * one_s)', money.one, sum),

  formula('b_w = p_y * pi / 4 * (d_w^2 - D_c^2) / F_p', ratio.percent, derived('yieldStressTimes')),
  formula('s_b = min(1, b_w)', ratio.percent, cite('ISO 898-2:2012', 'nutBoltsClass', true)),
  formula('w_b = w - (D_c - d) / 2', length.mm, beside),
  formula('x_w = w - (d_w - d) / 2', length.mm, beside),
  formula('T_b = K * d * F_p * min(k_t, b_w / k_m)', torque.N_m, tighten),
  formula('C_b = c_b + r_h * t_b / (3600 * one_s)', money.one, sum),

  formula('s_h = q_h * tau * pi * D_h * L_s / F_p', ratio.percent, derived('knurlsShear'), plastic),
  formula('w_h = w - (D_h - d) / 2', length.mm, beside, plastic),
  formula('m_h = w_h - k_w * D_h', length.mm, commonPractice, plastic),
  formula('x_h = L_h - L_s', length.mm, commonPractice, { ...plastic, hole: 'reached' }),
  formula('x_h = L_h - (L_s + 2 * P)', length.mm, commonPractice, { ...plastic, hole: ['shut', 'blind'] }),
  formula('T_h = K * d * F_p * min(k_t, s_h / k_m)', torque.N_m, tighten, plastic),
  formula('C_h = c_h + r_h * t_h / (3600 * one_s)', money.one, sum, plastic),

  formula('h_k = m_w', length.mm, hexNuts, { ...plastic, nut: 'usual' }),
  formula('h_k = m_t', length.mm, hexNuts, { ...plastic, nut: 'thin' }),
  formula('e_k = 2 / sqrt(3) * s_w', length.mm, derived('cornersOfHexagon'), plastic),
  formula('A_k = sqrt(3) / 2 * s_w^2 - pi / 4 * D_c^2', area.mm2, derived('hexagonLessHole'), plastic),
  formula('b_k = p_y * A_k / F_p', ratio.percent, derived('yieldUnderNut'), plastic),
  formula('v_k = tau * 2 * sqrt(3) * s_w * d / F_p', ratio.percent, derived('floorShears'), plastic),
  // A usual nut of the bolt's class bears its proof load; a thin one bears its own.
  formula('s_k = min(1, min(b_k, v_k))', ratio.percent, derived('weakestOfThree'), { ...plastic, nut: 'usual' }),
  formula('s_k = min(p_n / S_p, min(b_k, v_k))', ratio.percent, derived('weakestOfThree'), { ...plastic, nut: 'thin' }),
  formula('w_k = w - (e_k - d) / 2', length.mm, beside, plastic),
  formula('m_k = w_k - k_w * d', length.mm, commonPractice, plastic),
  formula('x_k = L_h - (h_k + d)', length.mm, commonPractice, plastic),
  formula('T_k = K * d * F_p * min(k_t, s_k / k_m)', torque.N_m, tighten, plastic),
  formula('C_k = c_k + r_h * t_k / (3600 * one_s)', money.one, sum, plastic),

  formula('s_r = f * L_r / F_p', ratio.percent, share),
  formula('T_r = K * d * F_p * min(k_t, s_r / k_m)', torque.N_m, tighten),
  formula('C_r = c_r + r_h * t_r / (3600 * one_s)', money.one, sum),
] as const;

export const limits = [{ of: 's_e', min: 's_min', cite: commonPractice }] as const;
