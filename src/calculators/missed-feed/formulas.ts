import { area, count, flow, length, mass, money, ratio, speed, time, volume } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { formula, derived } from '../../engine/calculator';

const none = { band: 'none' };
const some = { band: ['trim', 'left'] };

const safety = { duty: 'safety' };

const line = derived('lineWideHigh');
const layers = derived('firstLayerAll');
const volumes = derived('goesComesOut');
const ooze = derived('flowProportionLeft');
const clock = derived('layersTimesTime');
const sum = derived('plasticWeightHours');

export const formulas = [
  formula('Q = w * h * v', flow.mm3_s, line),
  formula('A_f = pi * d_f ^ 2 / 4', area.mm2, derived('areaCircle')),
  formula('v_f = Q / A_f', speed.mm_s, volumes),
  formula('V_L = Q * q_x * t_L', volume.mm3, volumes),
  formula('l_L = V_L / A_f', length.mm, volumes),
  formula('m_L = rho * V_L', mass.g, derived('definitionDensity')),
  formula('n_s = (Z_s - h_1) / h + 1', ratio.one, layers),
  formula('n_t = (H_t - h_1) / h + 1', ratio.one, layers),
  formula('n_g = n_s - G / h', ratio.one, layers, { by: 'gap' }),
  formula('n_g = n_s - t_d / t_L', ratio.one, clock, { by: 'delay' }),
  formula('n_g = n_t * m_f / (m_t * k_u)', ratio.one, volumes, { by: 'fed' }),
  formula('n_l = n_s - n_g', ratio.one, derived('definition')),
  formula('z_l = n_l * h', length.mm, layers),
  formula('l_l = n_l * l_L', length.m, volumes),
  formula('Z_g = Z_s - z_l', length.mm, derived('definition')),
  formula('V_o = q_o * V', volume.mm3, commonPractice, none),
  formula('tau = V_o / Q', time.s, ooze, none),
  formula('t_o = tau * ln(1 / q_e)', time.s, ooze, none),
  formula('z_b = h * t_o / (q_x * t_L)', length.mm, layers, none),
  formula('z_b = b_m', length.mm, derived('measured'), some),
  formula('s_b = k_b * w_b / w', ratio.percent, derived('linesBondOver'), { band: 'left' }),
  formula('s_r = j_c', ratio.percent, commonPractice, {
    band: ['none', 'trim'],
  }),
  formula('s_r = min(j_c, s_b)', ratio.percent, derived('weakerJointBand'), { band: 'left' }),
  formula('s_g = j_g', ratio.percent, commonPractice),
  // Of what holds a person, heat, mains or a raised load. Nothing that is typed changes it; but before a height is read there is no verdict.
  formula('n_j = 1 + 0 * n_s', count.one, derived('oneSeam'), safety),
  formula('n_0 = 0', count.one, commonPractice, safety),
  formula('t_p = n_g * t_L', time.h, clock),
  formula('t_r = (n_t - n_g) * t_L', time.h, clock),
  formula('t_a = n_t * t_L', time.h, clock),
  formula('T_r = t_r + t_hr', time.h, derived('printingWork')),
  formula('T_g = t_r + t_hg', time.h, derived('printingWork')),
  formula('T_n = t_a + t_hn', time.h, derived('printingWork')),
  formula('m_r = m_L * (n_t - n_g)', mass.g, volumes),
  formula('m_a = m_L * n_t', mass.g, volumes),
  formula('C_n = c_s * m_a / m_s + (r_m * t_a + r_h * t_hn) / (3600 * one_s)', money.one, sum),
  formula('C_r = c_s * m_r / m_s + (r_m * t_r + r_h * t_hr) / (3600 * one_s) + p_r * C_n', money.one, sum),
  formula('C_g = c_s * m_r / m_s + (r_m * t_r + r_h * t_hg) / (3600 * one_s) + c_g + p_g * C_n', money.one, sum),
] as const;
