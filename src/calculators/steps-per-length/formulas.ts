import { length, perLength, ratio } from '../../quantity/kinds';
import { cite, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';
import { fed, onFeed, printed, travelled } from './choices';

const steppers = cite('IEC 60034-20-1, stepping motors', 'step angle: 360° over steps per turn', true);
const turn = cite('ISO 5296 and ISO 13050, synchronous belt drives', 'one turn moves pitch × teeth', true);
const lead = cite('Machinery’s Handbook', 'power screws: lead, the travel in one turn', true);
const sameSteps = derived(
  'the steps sent stay the same: steps per length × length commanded = new steps × length moved',
);
const line = derived('a straight line through two sizes: measured = drawn × (1 + error) + offset');
const expansion = cite('OpenStax, University Physics volume 2', 'chapter 1, linear expansion', true);

const COUNTED = 'Steps per length, counted from the parts';
const asSet = derived('as set for this axis');
const sides = { ...printed, pair: 'sides' };
const lengths = { ...printed, pair: 'lengths' };

/** Counted, set, measured; what is the drive’s, the line’s and the plastic’s. */
export const formulas = [
  formula('S_0 = S_x', 'Steps per length, set', perLength.per_mm, asSet, { axis: 'x' }),
  formula('S_0 = S_y', 'Steps per length, set', perLength.per_mm, asSet, { axis: 'y' }),
  formula('S_0 = S_z', 'Steps per length, set', perLength.per_mm, asSet, { axis: ['z', 'zb'] }),
  formula('S_0 = S_e', 'Steps per length, set', perLength.per_mm, asSet, onFeed),
  formula('S_c = rev / theta_s * m_b * i_b / (p * z)', COUNTED, perLength.per_mm, turn, { axis: ['x', 'y'] }),
  formula('S_c = rev / theta_s * m_z * i_z / P_h', COUNTED, perLength.per_mm, lead, { axis: 'z' }),
  formula('S_c = rev / theta_s * m_z * i_z / (p_z * z_z)', COUNTED, perLength.per_mm, turn, { axis: 'zb' }),
  formula(
    'S_c = rev / theta_s * m_e * i_e / (pi * d_g)',
    COUNTED,
    perLength.per_mm,
    derived('one turn of the gear feeds its circumference'),
    onFeed,
  ),
  formula('x_m = 1 / S_c', 'Travel of one microstep', length.um, steppers),
  formula('q = S_0 / S_c - 1', 'Set above counted', ratio.percent, derived('ratio less one')),
  formula(
    'l_d = x_2 - x_1 + b',
    'Travel of the drive',
    length.mm,
    derived('difference of two places, and what took up the slack'),
    travelled,
  ),
  formula(
    'l_d = r_1 - r_2',
    'Filament fed',
    length.mm,
    derived('what went in is missing from the mark’s distance'),
    fed,
  ),
  formula('c = l_d / l_c - 1', 'Moved above commanded', ratio.percent, derived('ratio less one'), travelled),
  formula('c = l_d / l_f - 1', 'Fed above commanded', ratio.percent, derived('ratio less one'), fed),
  formula('S_n = S_0 * l_c / l_d', 'Steps per length that the travel asks for', perLength.per_mm, sameSteps, travelled),
  formula('S_n = S_0 * l_f / l_d', 'Steps per length that the filament asks for', perLength.per_mm, sameSteps, fed),
  formula('q_n = S_n / S_c - 1', 'Asked for above counted', ratio.percent, derived('ratio less one'), travelled),
  formula('p_e = p * S_c / S_n', 'Belt pitch that would explain it', length.mm, turn, {
    axis: ['x', 'y'],
    by: 'travel',
  }),
  formula('p_e = p_z * S_c / S_n', 'Belt pitch that would explain it', length.mm, turn, { axis: 'zb', by: 'travel' }),
  formula('P_e = P_h * S_c / S_n', 'Screw lead that would explain it', length.mm, lead, { axis: 'z', by: 'travel' }),
  formula(
    'd_e = d_g * S_c / S_n',
    'Feed gear: diameter where it grips, from the filament',
    length.mm,
    derived('one turn of the gear feeds its circumference'),
    fed,
  ),
  formula(
    's_f = 1 - (r_1 - r_3) / l_d',
    'Slip at print speed',
    ratio.percent,
    derived('share of the slow feed that is missing'),
    fed,
  ),
  formula('c_t = (m_o + m_i) / (D_o + D_i) - 1', 'Error of the piece in proportion', ratio.percent, line, sides),
  formula('o = m_o - D_o * (1 + c_t)', 'Constant part of an outside size', length.mm, line, sides),
  formula('c_t = (m_2 - m_1) / (l_2 - l_1) - 1', 'Error of the piece in proportion', ratio.percent, line, lengths),
  formula('o = m_1 - l_1 * (1 + c_t)', 'Constant part of an outside size', length.mm, line, lengths),
  formula(
    'y = o / 2',
    'A wall stands out by',
    length.mm,
    derived('an outside size has two walls, one at each end'),
    printed,
  ),
  formula('s = alpha * (T_g - T_r)', 'Shrinkage of the plastic', ratio.percent, expansion, {
    ...printed,
    material: ['pla', 'petg', 'abs', 'pc'],
  }),
  formula('s = s_m', 'Shrinkage of the plastic', ratio.percent, derived('as entered'), {
    ...printed,
    material: 'other',
  }),
  formula(
    'e_d = (1 + c_t) / (1 - s) - 1',
    'Left for the drive',
    ratio.percent,
    derived('the piece is what the drive laid down, shrunk'),
    printed,
  ),
  formula('k_s = 1 / (1 + c_t)', 'Scale for pieces of this plastic', ratio.percent, derived('reciprocal'), printed),
] as const;
