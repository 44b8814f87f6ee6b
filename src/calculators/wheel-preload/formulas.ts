import { angle, force, length, pressure, ratio, torque } from '../../quantity/kinds';
import { cite, derived, formula } from '../../engine/calculator';

const hertzModulus = cite('Johnson, Contact Mechanics (1985)', 'chapterContactModulus', true);
const hertzLine = cite('Johnson, Contact Mechanics (1985)', 'sectionCLine', true);
const hertzPoint = cite('Johnson, Contact Mechanics (1985)', 'sectionSolidsRevolution', true);
const ellipse = cite(
  'Greenwood, Formulas for Moderately Elliptical Hertzian Contacts, Journal of Tribology 107 (1985)',
  'abstractRadiusAb',
);
const coulomb = derived('coulombsFrictionForce');
const wedge = derived('balanceForcesAcross');
const statics = derived('balanceMomentsAbout');
const bush = derived('eccentricBushHeight');

export const formulas = [
  formula('M_o = M * (g_n * d + a * h)', torque.N_m, statics),
  formula('F_o = M_o / s', force.N, statics),
  formula('F_g = M * g_n * d / (s * n_w)', force.N, statics),
  formula('N_min = k * F_o / n_w + N_0', force.N, derived('momentUsesUp')),
  formula('P = F_slip / mu', force.N, coulomb, { by: ['slip', 'hanging'] }),
  // The V wedges: both flanks together press more than the preload, so the slip force over mu is not yet the preload.
  formula('N = P * sin(beta)', force.N, wedge, { by: 'slip' }),
  formula('N = P * sin(beta) + F_g', force.N, wedge, { by: 'hanging' }),
  formula('u_t = e * (cos(theta_t) - cos(theta_0))', length.mm, bush, { by: 'bush' }),
  formula('N = c_w * u_t', force.N, derived('stiffnessTimesGap'), {
    by: 'bush',
  }),
  formula('N_s = N + F_g', force.N, statics),
  formula('Q = N_s / (2 * sin(beta))', force.N, wedge),
  formula('R_n = r_w / sin(beta)', length.mm, derived('coneMeusniersTheorem')),
  formula('E_s = 1 / ((1 - nu_w^2) / E_w + (1 - nu_r^2) / E_r)', pressure.GPa, hertzModulus),
  formula('b = sqrt(4 * Q * R_n / (pi * l_f * E_s))', length.mm, hertzLine, {
    contact: 'line',
  }),
  formula('p_0 = 2 * Q / (pi * b * l_f)', pressure.MPa, hertzLine, { contact: 'line' }),
  formula('Q_max = pi * R_n * l_f * p_lim^2 / E_s', force.N, hertzLine, {
    contact: 'line',
  }),
  formula('R_e = (2 * R_n^2 * r_e^2 / (R_n + r_e))^(1 / 3)', length.mm, ellipse, {
    contact: 'edge',
  }),
  formula('a_c = (3 * Q * R_e / (4 * E_s))^(1 / 3)', length.mm, hertzPoint, {
    contact: 'edge',
  }),
  formula('p_0 = 3 * Q / (2 * pi * a_c^2)', pressure.MPa, hertzPoint, {
    contact: 'edge',
  }),
  formula('Q_max = pi^3 * R_e^2 * p_lim^3 / (6 * E_s^2)', force.N, hertzPoint, { contact: 'edge' }),
  formula('N_max = 2 * sin(beta) * Q_max - F_g', force.N, wedge),
  formula('N_aim = sqrt(N_min * N_max)', force.N, derived('equalRatioLeast')),
  formula('du = (N_aim - N) / c_w', length.mm, derived('forceOverStiffness')),
  formula('theta_n = acos(cos(theta_0) - du / e)', angle.deg, bush),
  formula('dtheta = theta_n - theta_0', angle.deg, bush),
  formula('x = e * (1 - cos(theta_0))', length.mm, bush),
  formula('u_1 = e * sin(theta_0) * rev / 360', length.um, bush),
  formula('q = sin(theta_0)', ratio.percent, bush),
  formula('u = e * (cos(theta_0) - cos(theta))', length.mm, bush),
  formula('N_1 = N + c_w * u', force.N, derived('stiffnessTimesGap')),
  formula('F_1 = mu * N_1 / sin(beta)', force.N, wedge, { by: ['slip', 'bush'] }),
  formula('F_1 = mu * (N_1 - F_g) / sin(beta)', force.N, wedge, { by: 'hanging' }),
  formula('F_r = c_rr * N', force.N, derived('definitionRollingFriction')),
  formula('y = j * R / s', length.mm, derived('similarTriangles')),
] as const;
