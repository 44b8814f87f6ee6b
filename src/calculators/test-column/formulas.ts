import {
  area,
  force,
  frequency,
  length,
  linearDensity,
  mass,
  pressure,
  ratio,
  secondMoment,
  stiffness,
  volume,
} from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { formula, cite, derived } from '../../engine/calculator';

const square = { section: 'square' };
const round = { section: 'round' };
const solid = { core: 'solid' };
const shell = { core: 'shell' };

const WORK_ROARK = 'Roark’s Formulas for Stress and Strain, 7th edition (2002)';
const cantilever = cite(WORK_ROARK, 'tableCaseLeft', true);
const sections = cite(WORK_ROARK, 'tablePropertiesSections', true);
const mode = cite('Blevins, Formulas for Natural Frequency and Mode Shape (1979)', 'tableClampedFree', true);
const bending = cite(WORK_ROARK, 'sectionFlexureStress', true);
const geometry = derived('geometrySection');

export const formulas = [
  formula('b_i = max(b - 2 * t_w, 0 * b)', length.mm, derived('wallThickerHalf'), shell),
  formula('A_g = b ^ 2', area.mm2, geometry, square),
  formula('A_g = pi * b ^ 2 / 4', area.mm2, geometry, round),
  formula('A = A_g', area.mm2, geometry, solid),
  formula('A = A_g * (1 - (b_i / b) ^ 2)', area.mm2, geometry, shell),
  formula('I = b ^ 4 / 12', secondMoment.mm4, sections, { ...square, ...solid }, 'I_secondMomentArea'),
  formula('I = pi * b ^ 4 / 64', secondMoment.mm4, sections, { ...round, ...solid }, 'I_secondMomentArea'),
  formula(
    'I = (b ^ 4 - b_i ^ 4) / 12',
    secondMoment.mm4,
    sections,
    {
      ...square,
      ...shell,
    },
    'I_secondMomentArea2',
  ),
  formula(
    'I = pi * (b ^ 4 - b_i ^ 4) / 64',
    secondMoment.mm4,
    sections,
    {
      ...round,
      ...shell,
    },
    'I_secondMomentArea2',
  ),
  formula('s = L / b', ratio.one, derived('definition')),
  formula('E_c = E * q_E * q_T', pressure.GPa, derived('printWarmthLeave')),
  formula('k = 3 * E_c * I / L ^ 3', stiffness.N_mm, cantilever),
  formula('x = F / k', length.mm, derived('definitionStiffness')),
  formula('x_lim = q_w * w', length.mm, commonPractice),
  formula('mu = rho * A', linearDensity.g_m, derived('densityTimesSection'), solid, 'mu_massPerHeight'),
  formula(
    'mu = rho * (A + q_i * (A_g - A))',
    linearDensity.g_m,
    derived('densityTimesSection'),
    shell,
    'mu_massPerHeight2',
  ),
  formula('f = 3.516 / (2 * pi) * sqrt(E_c * I / mu) / L ^ 2', frequency.Hz, mode),
  formula('r_f = f / f_m', ratio.one, derived('definition')),
  formula('m = mu * L', mass.g, derived('definition')),
  formula('B = b + 2 * q_r * r', length.mm, geometry),
  formula('F_tip = m * g_n * B / (2 * L)', force.mN, derived('momentsAboutEdge')),
  formula('Z = B ^ 3 / 6', volume.mm3, sections, square),
  formula('Z = pi * B ^ 3 / 32', volume.mm3, sections, round),
  formula('sigma = F * L / Z', pressure.MPa, bending),
  formula(
    'sigma_h = q_p * sigma_a',
    pressure.MPa,
    commonPractice,
    {
      bed: ['film', 'glass', 'glue'],
    },
    'sigma_h_pullEdgeStands',
  ),
  formula(
    'sigma_h = 6 * F_t * h_t / b_t ^ 3',
    pressure.MPa,
    bending,
    {
      bed: 'tested',
    },
    'sigma_h_tested',
  ),
  formula('L_x = (3 * E_c * I * x_lim / F) ^ (1 / 3)', length.mm, cantilever),
  formula('L_f = sqrt(3.516 / (2 * pi * r_min * f_m) * sqrt(E_c * I / mu))', length.mm, mode),
  formula('L_h = sigma_h * Z / F', length.mm, bending),
  formula('b_x = b * (x / x_lim) ^ (1 / 4)', length.mm, derived('secondMomentGoes'), solid, 'b_x_widthWhichSways'),
  formula('b_x = b * (x / x_lim) ^ (1 / 3)', length.mm, derived('thinWallsSecond'), shell, 'b_x_widthWhichSways2'),
  formula('B_n = (6 * F * L / sigma_h) ^ (1 / 3)', length.mm, bending, square),
  formula('B_n = (32 * F * L / (pi * sigma_h)) ^ (1 / 3)', length.mm, bending, round),
  formula('r_n = (B_n - b) / (2 * q_r)', length.mm, geometry),
] as const;
