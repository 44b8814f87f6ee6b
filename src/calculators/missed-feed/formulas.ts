import { area, flow, length, mass, money, ratio, speed, time, volume } from '../../quantity/kinds';
import { commonPractice, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const none = { band: 'none' };
const some = { band: ['trim', 'left'] };

const line = derived('a line is as wide and high as set, and as long as the way travelled');
const layers = derived('the first layer, and all others alike on top of it');
const volumes = derived('what goes in comes out');
const ooze = derived(
  'flow in proportion to what is left: it dies away as e^(−t/τ), τ being the volume over the first flow',
);
const clock = derived('layers times the time of one');
const sum = derived('plastic by weight, hours by their price');

export const formulas = [
  formula('Q = w * h * v', 'Flow while it prints', flow.mm3_s, line),
  formula('A_f = pi * d_f ^ 2 / 4', 'Section of the filament', area.mm2, derived('area of a circle')),
  formula('v_f = Q / A_f', 'Speed of the filament', speed.mm_s, volumes),
  formula('V_L = Q * q_x * t_L', 'Plastic in a layer', volume.mm3, volumes),
  formula('l_L = V_L / A_f', 'Filament in a layer', length.mm, volumes),
  formula('m_L = rho * V_L', 'Plastic in a layer, by weight', mass.g, derived('definition of density')),
  formula('n_s = (Z_s - h_1) / h + 1', 'Layer at which it stopped', ratio.one, layers),
  formula('n_t = (H_t - h_1) / h + 1', 'Layers of the whole', ratio.one, layers),
  formula('n_g = n_s - G / h', 'Layers that are sound', ratio.one, layers, { by: 'gap' }),
  formula('n_g = n_s - t_d / t_L', 'Layers that are sound', ratio.one, clock, { by: 'delay' }),
  formula('n_g = n_t * m_f / (m_t * k_u)', 'Layers that are sound', ratio.one, volumes, { by: 'fed' }),
  formula('n_l = n_s - n_g', 'Layers lost', ratio.one, derived('definition')),
  formula('z_l = n_l * h', 'Height lost', length.mm, layers),
  formula('l_l = n_l * l_L', 'Filament that was not fed', length.m, volumes),
  formula('Z_g = Z_s - z_l', 'Height Z of the last sound layer', length.mm, derived('definition')),
  formula('V_o = q_o * V', 'Melt that still ran out', volume.mm3, commonPractice, none),
  formula('tau = V_o / Q', 'Time constant of running dry', time.s, ooze, none),
  formula('t_o = tau * ln(1 / q_e)', 'Time until the lines are as good as missing', time.s, ooze, none),
  formula('z_b = h * t_o / (q_x * t_L)', 'Height of the starved band', length.mm, layers, none),
  formula('z_b = b_m', 'Height of the starved band', length.mm, derived('as measured'), some),
  formula(
    's_b = k_b * w_b / w',
    'Strength left in the band, over a sound layer',
    ratio.percent,
    derived('lines bond over their width'),
    { band: 'left' },
  ),
  formula('s_r = j_c', 'Going on: strength of the seam, over a sound layer', ratio.percent, commonPractice, {
    band: ['none', 'trim'],
  }),
  formula(
    's_r = min(j_c, s_b)',
    'Going on: strength of the seam, over a sound layer',
    ratio.percent,
    derived('the weaker of joint and band'),
    { band: 'left' },
  ),
  formula('s_g = j_g', 'Gluing: strength of the seam, over a sound layer', ratio.percent, commonPractice),
  formula('t_p = n_g * t_L', 'Printing time that is in it', time.h, clock),
  formula('t_r = (n_t - n_g) * t_L', 'Printing time still needed', time.h, clock),
  formula('t_a = n_t * t_L', 'Printing time for a new one', time.h, clock),
  formula('T_r = t_r + t_hr', 'Going on: time in all', time.h, derived('printing and work')),
  formula('T_g = t_r + t_hg', 'Gluing: time in all', time.h, derived('printing and work')),
  formula('T_n = t_a + t_hn', 'A new one: time in all', time.h, derived('printing and work')),
  formula('m_r = m_L * (n_t - n_g)', 'Plastic still needed', mass.g, volumes),
  formula('m_a = m_L * n_t', 'Plastic for a new one', mass.g, volumes),
  formula('C_n = c_s * m_a / m_s + (r_m * t_a + r_h * t_hn) / (3600 * one_s)', 'A new one: cost', money.one, sum),
  formula(
    'C_r = c_s * m_r / m_s + (r_m * t_r + r_h * t_hr) / (3600 * one_s) + p_r * C_n',
    'Going on: cost, with the chance of a new one',
    money.one,
    sum,
  ),
  formula(
    'C_g = c_s * m_r / m_s + (r_m * t_r + r_h * t_hg) / (3600 * one_s) + c_g + p_g * C_n',
    'Gluing: cost, with the chance of a new one',
    money.one,
    sum,
  ),
] as const;
