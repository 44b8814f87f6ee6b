import { curvature, force, length, ratio, secondMoment, stiffness } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { cite, derived, formula } from '../../engine/calculator';
import { apart, toldMounted } from './inputs';

const circle = derived('circleThroughThree');
export const flatArc = derived('flatArcS');
const roark = cite('Roark’s Formulas for Stress and Strain, 7th edition (2002)', 'straightBeamsConcentrated', true);
const springs = derived('springsSideSide');

/** The bow from each way of reading it, what it does to the carriage, and what freeing or straightening would do. */
export const formulas = [
  formula(
    'I = pi * d_3^4 / 64',
    secondMoment.mm4,
    cite('Roark’s Formulas for Stress and Strain, 7th edition (2002)', 'propertiesRoundSections', true),
  ),
  formula(
    'y_g = 5 * m_1 * g_n * c^4 / (384 * E * I)',
    length.mm,
    cite('Roark’s Formulas for Stress and Strain, 7th edition (2002)', 'straightBeamsUniform', true),
    { method: 'flat' },
  ),
  formula('s = g + y_g - q', length.mm, derived('weightClosesPart'), { method: 'flat', touch: 'gap' }),
  formula('s = f_w * (g_0 + y_g)', length.mm, derived('withoutGapMost'), { method: 'flat', touch: 'none' }),
  formula('s = (TIR - q) / 2', length.mm, derived('pointEOff'), { method: 'blocks' }),
  formula('kappa = 8 * s / (c^2 + 4 * s^2)', curvature.mm_m2, circle, apart),
  formula('s_L = kappa * L^2 / 8', length.mm, flatArc, apart),
  formula('y_0 = b * s_L', length.mm, derived('shareBowEnds'), apart),
  formula('y_0 = (TIR - q - TIR_c) / 2', length.mm, derived('tirELess'), { method: 'mounted' }),
  formula('s_L = y_0 / b', length.mm, derived('shareBowEnds'), toldMounted),
  formula('kappa = 8 * s_L / (L^2 + 4 * s_L^2)', curvature.mm_m2, circle, toldMounted),
  formula('s_r = kappa * l_r^2 / 8', length.mm, flatArc, apart),
  formula('s_r = kappa * l_r^2 / 8', length.mm, flatArc, toldMounted),
  formula('f_L = s_L / L', ratio.percent, derived('bowOverLength'), apart),
  formula('f_L = s_L / L', ratio.percent, derived('bowOverLength'), toldMounted),
  formula('k_s = 48 * E * I / L^3', stiffness.N_mm, roark, { ends: 'pinned' }, 'k_s_pinned'),
  formula('k_s = 768 / 7 * E * I / L^3', stiffness.N_mm, roark, { ends: 'mixed' }, 'k_s_pinned'),
  formula('k_s = 192 * E * I / L^3', stiffness.N_mm, roark, { ends: 'clamped' }, 'k_s_pinned'),
  formula('k_s = 3 * E * I / L^3', stiffness.N_mm, roark, { ends: 'free' }, 'k_s_free'),
  formula('F = k_s * y_0', force.N, derived('stiffnessOffset')),
  formula('r_k = k_s / (k_s + k_g)', ratio.percent, springs),
  formula('x = max(abs(y_0) - j, 0 * j) * r_k', length.mm, springs),
  formula('w_x = 2 * x', length.mm, derived('eachWayBoth')),
  formula('w_lim = k_w * w', length.mm, commonPractice),
  formula('p_r = P_h', length.mm, derived('swingEachTurn')),
  formula('w_n = 2 * b * s_lim * (L / l_r)^2 * r_k', length.mm, derived('sameCurvatureFlat')),
  formula('k_t = 24 * E * I / L^3', stiffness.N_mm, derived('cantileverHalfLength'), {
    ends: ['pinned', 'mixed', 'clamped'],
  }),
  formula('w_t = 2 * s_L * k_t / (k_t + k_g)', length.mm, derived('smoothBowLower'), {
    ends: ['pinned', 'mixed', 'clamped'],
    ...apart,
  }),
  formula('w_t = 2 * s_L * k_t / (k_t + k_g)', length.mm, derived('smoothBowLower'), {
    ends: ['pinned', 'mixed'],
    method: 'mounted',
  }),
  formula('y_y = R_e * L^2 / (6 * E * d_3)', length.mm, derived('fLR')),
] as const;
