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
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const square = { section: 'square' };
const round = { section: 'round' };
const solid = { core: 'solid' };
const shell = { core: 'shell' };

const ROARK = 'Roark’s Formulas for Stress and Strain';
const cantilever = cite(ROARK, 'table 8.1, case 1a, left end free, right end fixed', true);
const sections = cite(ROARK, 'table A.1, properties of sections', true);
const mode = cite('Blevins, Formulas for Natural Frequency and Mode Shape', 'table 8-1, clamped–free beam', true);
const bending = cite(ROARK, 'section 8.1, flexure: stress is moment over section modulus', true);
const geometry = derived('geometry of the section');

export const formulas = [
  formula(
    'b_i = max(b - 2 * t_w, 0 * b)',
    'Width of the hollow',
    length.mm,
    derived('a wall thicker than half the width leaves no hollow'),
    shell,
  ),
  formula('A_g = b ^ 2', 'Section within the outline', area.mm2, geometry, square),
  formula('A_g = pi * b ^ 2 / 4', 'Section within the outline', area.mm2, geometry, round),
  formula('A = A_g', 'Section that carries', area.mm2, geometry, solid),
  formula('A = A_g * (1 - (b_i / b) ^ 2)', 'Section that carries', area.mm2, geometry, shell),
  formula('I = b ^ 4 / 12', 'Second moment of area', secondMoment.mm4, sections, { ...square, ...solid }),
  formula('I = pi * b ^ 4 / 64', 'Second moment of area', secondMoment.mm4, sections, { ...round, ...solid }),
  formula('I = (b ^ 4 - b_i ^ 4) / 12', 'Second moment of area, walls only', secondMoment.mm4, sections, {
    ...square,
    ...shell,
  }),
  formula('I = pi * (b ^ 4 - b_i ^ 4) / 64', 'Second moment of area, walls only', secondMoment.mm4, sections, {
    ...round,
    ...shell,
  }),
  formula('s = L / b', 'Height over width', ratio.one, derived('definition')),
  formula(
    'E_c = E * q_E * q_T',
    'Modulus of the column as it prints',
    pressure.GPa,
    derived('what print and warmth leave of the modulus'),
  ),
  formula('k = 3 * E_c * I / L ^ 3', 'Stiffness at the top', stiffness.N_mm, cantilever),
  formula('x = F / k', 'Sway at the top', length.mm, derived('definition of stiffness')),
  formula('x_lim = q_w * w', 'Sway allowed', length.mm, commonPractice),
  formula('mu = rho * A', 'Mass per height', linearDensity.g_m, derived('density times section'), solid),
  formula(
    'mu = rho * (A + q_i * (A_g - A))',
    'Mass per height, infill counted',
    linearDensity.g_m,
    derived('density times section'),
    shell,
  ),
  formula('f = 3.516 / (2 * pi) * sqrt(E_c * I / mu) / L ^ 2', 'Own frequency of the column', frequency.Hz, mode),
  formula('r_f = f / f_m', 'Own frequency over that of the machine', ratio.one, derived('definition')),
  formula('m = mu * L', 'Mass of the column', mass.g, derived('definition')),
  formula('B = b + 2 * q_r * r', 'Width of the foot that holds', length.mm, geometry),
  formula(
    'F_tip = m * g_n * B / (2 * L)',
    'Push that would topple it if nothing stuck',
    force.mN,
    derived('moments about the edge of the foot: push times height is weight times half the foot'),
  ),
  formula('Z = B ^ 3 / 6', 'Section modulus of the foot', volume.mm3, sections, square),
  formula('Z = pi * B ^ 3 / 32', 'Section modulus of the foot', volume.mm3, sections, round),
  formula('sigma = F * L / Z', 'Pull at the edge of the foot', pressure.MPa, bending),
  formula('sigma_h = q_p * sigma_a', 'Pull that the edge stands', pressure.MPa, commonPractice, {
    bed: ['film', 'glass', 'glue'],
  }),
  formula('sigma_h = 6 * F_t * h_t / b_t ^ 3', 'Pull at which the test block’s edge let go', pressure.MPa, bending, {
    bed: 'tested',
  }),
  formula(
    'L_x = (3 * E_c * I * x_lim / F) ^ (1 / 3)',
    'Height up to which it sways no more than allowed',
    length.mm,
    cantilever,
  ),
  formula(
    'L_f = sqrt(3.516 / (2 * pi * r_min * f_m) * sqrt(E_c * I / mu))',
    'Height up to which it is not shaken up',
    length.mm,
    mode,
  ),
  formula('L_h = sigma_h * Z / F', 'Height up to which the foot holds', length.mm, bending),
  formula(
    'b_x = b * (x / x_lim) ^ (1 / 4)',
    'Width at which it sways no more than allowed',
    length.mm,
    derived('second moment goes with the fourth power of the width'),
    solid,
  ),
  formula(
    'b_x = b * (x / x_lim) ^ (1 / 3)',
    'Width at which it sways no more than allowed, about',
    length.mm,
    derived('thin walls: second moment goes with the third power of the width'),
    shell,
  ),
  formula('B_n = (6 * F * L / sigma_h) ^ (1 / 3)', 'Width of foot needed', length.mm, bending, square),
  formula('B_n = (32 * F * L / (pi * sigma_h)) ^ (1 / 3)', 'Width of foot needed', length.mm, bending, round),
  formula('r_n = (B_n - b) / (2 * q_r)', 'Rim needed all round; below zero: none', length.mm, geometry),
] as const;
