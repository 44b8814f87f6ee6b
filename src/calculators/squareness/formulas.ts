import { angle, length, ratio, slope } from '../../quantity/kinds';
import { cite, derived, formula } from '../../engine/calculator';
import { AXES } from './inputs';

const cosines = derived('lawCosinesBoth');
const reversal = cite('Evans, Hocken and Estler, CIRP Annals 45 (1996) 617–634', 'selfCalibrationReversal', true);
const rise = derived('riseOverRun');
const diagonals = { way: 'diagonals' } as const;
const square = { way: 'square' } as const;
const turned = { way: 'reversal' } as const;

export const formulas = [
  formula('s = (d_1 ^ 2 - d_2 ^ 2) / (4 * A * B)', ratio.one, cosines, diagonals),
  formula('epsilon = asin(s)', angle.deg, cosines, diagonals),
  formula(
    'd_e = sqrt((d_1 ^ 2 + d_2 ^ 2) / 2) - sqrt(A ^ 2 + B ^ 2)',
    length.mm,
    derived('parallelogramLawD'),
    diagonals,
  ),
  formula('i_m = m / l - i_e', slope.mm_m, rise, square),
  formula('epsilon = atan(i_m)', angle.deg, rise, square),
  formula('m_e = (m_1 + m_2) / 2', length.mm, reversal, turned),
  formula('m_s = (m_1 - m_2) / 2', length.mm, reversal, turned),
  formula('i_q = m_s / l', slope.mm_m, rise, turned),
  formula('epsilon = atan(m_e / l)', angle.deg, rise, turned),
  formula('epsilon = atan(i_p)', angle.deg, rise, { way: 'photo' }),
  formula('e_0 = l_0 * tan(epsilon)', length.mm, rise),
  formula('e_D = D * tan(epsilon)', length.mm, rise, { of: AXES }),
  formula('dy = S_b * tan(epsilon)', length.mm, rise, { of: AXES }),
  formula('dx = L_f * tan(epsilon)', length.mm, rise, { of: 'frame' }),
] as const;
