import { length, perLength, ratio } from '../../quantity/kinds';
import { formula, cite, derived } from '../../engine/calculator';
import { fed, onFeed, printed, pulled, travelled } from './choices';

const steppers = cite('IEC 60034-20-1:2002, stepping motors', 'stepAngleOver', true);
const fallsBack = cite('Acarnley, Stepping Motors, 4th edition (2002)', 'fallsFourSteps', true);
const turn = cite('ISO 5296:2012, synchronous belt drives', 'turnMovesPitch', true);
const lead = cite('Machinery’s Handbook, 29th edition (2012)', 'powerScrewsLead', true);
const sameSteps = derived('stepsSentStay');
const line = derived('straightLineThrough');
const expansion = cite('OpenStax, University Physics volume 2 (2016)', 'chapterLinearExpansion', true);

const asSet = derived('setAxis');
const sides = { ...printed, pair: 'sides' };
const lengths = { ...printed, pair: 'lengths' };

/** Counted, set, measured; what is the drive’s, the line’s and the plastic’s. */
export const formulas = [
  formula('S_0 = S_x', perLength.per_mm, asSet, { axis: 'x' }),
  formula('S_0 = S_y', perLength.per_mm, asSet, { axis: 'y' }),
  formula('S_0 = S_z', perLength.per_mm, asSet, { axis: ['z', 'zb'] }),
  formula('S_0 = S_e', perLength.per_mm, asSet, onFeed),
  formula('S_c = rev / theta_b * m_b * i_b / (p * z)', perLength.per_mm, turn, { axis: ['x', 'y'] }),
  formula('S_c = rev / theta_s * m_z * i_z / P_h', perLength.per_mm, lead, { axis: 'z' }),
  formula('S_c = rev / theta_s * m_z * i_z / (p_z * z_z)', perLength.per_mm, turn, { axis: 'zb' }),
  formula('S_c = rev / theta_e * m_e * i_e / (pi * d_g)', perLength.per_mm, derived('turnGearFeeds'), onFeed),
  formula('x_m = 1 / S_c', length.um, steppers),
  formula('q = S_0 / S_c - 1', ratio.percent, derived('ratioLess')),
  formula('l_d = x_2 - x_1 + b', length.mm, derived('differencePlacesTook'), travelled, 'l_d_travel'),
  formula('l_d = r_1 - r_2', length.mm, derived('wentMissingMarks'), fed, 'l_d_feed'),
  formula('c = l_d / l_c - 1', ratio.percent, derived('ratioLess'), travelled, 'c_travel'),
  formula('c = l_d / l_f - 1', ratio.percent, derived('ratioLess'), fed, 'c_feed'),
  formula('S_n = S_0 * l_c / l_d', perLength.per_mm, sameSteps, travelled, 'S_n_travel'),
  formula('S_n = S_0 * l_f / l_d', perLength.per_mm, sameSteps, fed, 'S_n_feed'),
  formula('q_n = S_n / S_c - 1', ratio.percent, derived('ratioLess'), travelled),
  formula('q_m = T_a / C_0 + q_p', ratio.percent, derived('stretchAndPitch'), pulled),
  formula('q_m = q_lim', ratio.percent, derived('entered'), { axis: ['z', 'zb'], by: 'travel' }),
  formula('p_e = p * S_c / S_n', length.mm, turn, {
    axis: ['x', 'y'],
    by: 'travel',
  }),
  formula('p_e = p_z * S_c / S_n', length.mm, turn, { axis: 'zb', by: 'travel' }),
  formula('P_e = P_h * S_c / S_n', length.mm, lead, { axis: 'z', by: 'travel' }),
  formula('d_e = d_g * S_c / S_n', length.mm, derived('turnGearFeeds'), fed),
  formula('s_f = 1 - (r_1 - r_3) / l_d', ratio.percent, derived('shareSlowFeed'), fed),
  formula('l_k = 4 * N_k * theta_e / rev * pi * d_g / i_e', length.mm, fallsBack, fed),
  formula('c_t = (m_o + m_i) / (D_o + D_i) - 1', ratio.percent, line, sides),
  formula('o = m_o - D_o * (1 + c_t)', length.mm, line, sides),
  formula('c_t = (m_2 - m_1) / (l_2 - l_1) - 1', ratio.percent, line, lengths),
  formula('o = m_1 - l_1 * (1 + c_t)', length.mm, line, lengths),
  formula('y = o / 2', length.mm, derived('outsideSizeHas'), printed),
  formula('s = alpha * (T_g - T_r)', ratio.percent, expansion, {
    ...printed,
    material: ['pla', 'petg', 'abs', 'pc'],
  }),
  formula('s = s_m', ratio.percent, derived('entered'), {
    ...printed,
    material: 'other',
  }),
  formula('e_d = (1 + c_t) / (1 - s) - 1', ratio.percent, derived('pieceDriveLaid'), printed),
  formula('k_s = 1 / (1 + c_t)', ratio.percent, derived('reciprocal'), printed),
] as const;
