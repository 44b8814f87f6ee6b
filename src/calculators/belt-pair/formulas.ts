import { bendingStiffness, count, force, frequency, length, linearDensity, ratio } from '../../quantity/kinds';
import { byWidth } from '../../reference/belts';
import { commonPractice } from '../../reference/citation';
import { formula, cite, derived } from '../../engine/calculator';

const string = cite('OpenStax, University Physics volume 1 (2016)', 'chapterWavesStretched', true);
const pinnedBeam = cite('Blevins, Formulas for Natural Frequency and Mode Shape (1979)', 'equationBeamUnder');
const clampedString = cite('Morse, Vibration and Sound, 2nd edition (1948)', 'stiffStringHeld', true);
const clampedSolved = derived('seriesHeldStiff');
const weighing = derived('massOverLength');
const oneTooth = derived('toothIsPitch');
const entered = derived('entered');
const alike = derived('sortWidth');

const same = { belts: 'same' };
const different = { belts: 'different' };
const table = { ends: 'string' };
const measured = { ends: ['between', 'pinned', 'clamped'] };
const between = derived('betweenFreeHeld');

/** Two tensions and their difference, the notes that would make them equal, and the offset of the tensioners in teeth. */
export const formulas = [
  formula('mu_1 = m_s / l_s', linearDensity.g_m, weighing, { mass: 'weigh' }),
  formula('mu_1 = m_0 * w / w_0', linearDensity.g_m, byWidth, { mass: 'table' }),
  formula('mu_1 = mu_a', linearDensity.g_m, entered, { mass: 'typed' }),
  formula('mu_2 = mu_1', linearDensity.g_m, alike, same),
  formula('mu_2 = m_s2 / l_s2', linearDensity.g_m, weighing, { ...different, mass: 'weigh' }),
  formula('mu_2 = m_02 * w_2 / w_0', linearDensity.g_m, byWidth, { ...different, mass: 'table' }),
  formula('mu_2 = mu_b', linearDensity.g_m, entered, { ...different, mass: 'typed' }),
  formula('T_01 = 4 * mu_1 * L_1^2 * f_1^2', force.N, string),
  formula('T_02 = 4 * mu_2 * L_2^2 * f_2^2', force.N, string),
  formula('EI_a = EI_01 * w / w_0', bendingStiffness.N_mm2, byWidth, table),
  formula('EI_a = EI_1', bendingStiffness.N_mm2, entered, measured),
  formula('EI_b = EI_a', bendingStiffness.N_mm2, alike, same),
  formula('EI_b = EI_02 * w_2 / w_0', bendingStiffness.N_mm2, byWidth, { ...different, ...table }),
  formula('EI_b = EI_2', bendingStiffness.N_mm2, entered, { ...different, ...measured }),
  formula('B_1 = EI_a / L_1^2', force.N, pinnedBeam),
  formula('B_2 = EI_b / L_2^2', force.N, pinnedBeam),
  formula('beta_1 = sqrt(B_1 / T_01)', ratio.one, clampedString),
  formula('beta_2 = sqrt(B_2 / T_02)', ratio.one, clampedString),
  formula('T_p1 = T_01 - pi^2 * B_1', force.N, pinnedBeam),
  formula('T_p2 = T_02 - pi^2 * B_2', force.N, pinnedBeam),
  // The series has no root where the span is a stiff beam: far beyond the limit of epsilon.
  formula(
    'T_c1 = T_01 * ((1 - 2 * beta_1 + sqrt(max((1 - 2 * beta_1)^2 - (16 + 2 * pi^2) * beta_1^2, 0))) / 2)^2',
    force.N,
    clampedSolved,
  ),
  formula(
    'T_c2 = T_02 * ((1 - 2 * beta_2 + sqrt(max((1 - 2 * beta_2)^2 - (16 + 2 * pi^2) * beta_2^2, 0))) / 2)^2',
    force.N,
    clampedSolved,
  ),
  formula('T_1 = (1 - chi_1) * T_p1 + chi_1 * T_c1', force.N, between),
  formula('T_2 = (1 - chi_2) * T_p2 + chi_2 * T_c2', force.N, between),
  formula('epsilon_1 = sqrt(B_1 / T_1)', ratio.one, clampedString),
  formula('epsilon_2 = sqrt(B_2 / T_2)', ratio.one, clampedString),
  formula('d_T = 2 * (T_2 - T_1) / (T_1 + T_2)', ratio.percent, derived('differenceOverMean')),
  formula(
    'f_2e = sqrt(((1 - chi_2) * (T_1 + pi^2 * B_2) + chi_2 * T_1 * (1 + 2 * sqrt(B_2 / T_1) + (4 + pi^2 / 2) * B_2 / T_1)^2) / mu_2) / (2 * L_2)',
    frequency.Hz,
    between,
  ),
  formula(
    'f_1e = sqrt(((1 - chi_1) * (T_2 + pi^2 * B_1) + chi_1 * T_2 * (1 + 2 * sqrt(B_1 / T_2) + (4 + pi^2 / 2) * B_1 / T_2)^2) / mu_1) / (2 * L_1)',
    frequency.Hz,
    between,
  ),
  formula('T_lo1 = T_b * w / w_0', force.N, byWidth),
  formula('T_hi1 = T_a * w / w_0', force.N, byWidth),
  formula('T_lo2 = T_lo1', force.N, alike, same),
  formula('T_hi2 = T_hi1', force.N, alike, same),
  formula('T_lo2 = T_b2 * w_2 / w_0', force.N, byWidth, different),
  formula('T_hi2 = T_a2 * w_2 / w_0', force.N, byWidth, different),
  formula('T_aim = (T_lo1 + T_hi1) / 2', force.N, commonPractice, same),
  formula('T_aim = (max(T_lo1, T_lo2) + min(T_hi1, T_hi2)) / 2', force.N, commonPractice, different),
  formula(
    'f_1a = sqrt(((1 - chi_1) * (T_aim + pi^2 * B_1) + chi_1 * T_aim * (1 + 2 * sqrt(B_1 / T_aim) + (4 + pi^2 / 2) * B_1 / T_aim)^2) / mu_1) / (2 * L_1)',
    frequency.Hz,
    between,
  ),
  formula(
    'f_2a = sqrt(((1 - chi_2) * (T_aim + pi^2 * B_2) + chi_2 * T_aim * (1 + 2 * sqrt(B_2 / T_aim) + (4 + pi^2 / 2) * B_2 / T_aim)^2) / mu_2) / (2 * L_2)',
    frequency.Hz,
    between,
  ),
  formula('x_1 = p / (2 * sin(theta_w / 2))', length.mm, derived('eachRunGrows')),
  formula('n = (x - x_d) / x_1', ratio.one, oneTooth),
  formula('n_w = round(n)', count.one, derived('nearestWholeNumber')),
  formula('r_x = x - x_d - n_w * x_1', length.mm, derived('difference')),
];
