import { angle, force, length, perLength, ratio, torque } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { formula, derived } from '../../engine/calculator';

const statics = derived('balanceForcesMoments');
const twoPulls = derived('fSameBoth');
const pullsAndWeight = derived('fLessPressing');
const halves = derived('halfAtEachEnd');
const triangles = derived('similarTriangles');
const newton = derived('newtonsSecondLaw');
const play = derived('guideLengthL');

const pair = { by: 'pair' };
const scale = { by: 'scale' };
export const formulas = [
  formula('d = d_0', length.mm, derived('measured'), { drive: 'one' }, 'd_one'),
  formula(
    'd = s * d_1 - (1 - s) * d_2',
    length.mm,
    statics,
    {
      drive: 'both',
    },
    'd_both',
  ),
  formula('s_0 = d_2 / (d_1 + d_2)', ratio.percent, statics, { drive: 'both' }),
  formula('e_w = e', length.mm, derived('measured'), { drive: 'one' }),
  formula('e_w = e_l', length.mm, derived('measured'), { drive: 'both' }),
  formula('kappa = (F_b - F_a) / (F_b * a_2 - F_a * a_1)', perLength.per_mm, twoPulls, { by: 'scale', way: 'level' }),
  // Upright the weight turns the carriage about the guide as well, with its own sign: the pull may have to overcome it.
  formula(
    'kappa = (F_b - F_a) / (abs(F_b * a_2 - M * g_n * e_w) - abs(F_a * a_1 - M * g_n * e_w))',
    perLength.per_mm,
    pullsAndWeight,
    { by: 'scale', way: 'upright' },
  ),
  formula('mu = mu_p', ratio.one, derived('pair'), pair, 'mu_friction'),
  formula('mu = kappa * L / 2', ratio.one, twoPulls, scale, 'mu_frictionMeasured'),
  formula('q = 2 * mu * d / L', ratio.percent, statics),
  formula('d_b = L / (2 * mu)', length.mm, statics),
  formula('d_m = q_lim * L / (2 * mu)', length.mm, statics),
  formula('L_m = 2 * mu * d / q_lim', length.mm, statics, { drive: 'one' }),
  formula('x_d = d - d_m', length.mm, derived('difference'), { drive: 'one' }),
  formula('x_L = L_m - L', length.mm, derived('difference'), { drive: 'one' }),
  formula('q_e = 2 * mu * e_w / L', ratio.percent, statics, {
    way: 'upright',
  }),
  formula('psi_0 = j / L', angle.deg, play),
  formula('dx_0 = psi_0 * W_g', length.mm, triangles),
  formula('psi = dx / W_g', angle.deg, triangles),
  formula('N_c = c_g * (max(psi * L, j) - j) / 2', force.N, halves),
  formula('F_c = 2 * mu * N_c', force.N, statics),
  formula('W = M * a', force.N, newton, { way: 'level' }, 'W_level'),
  formula('W = M * (g_n + a)', force.N, newton, { way: 'upright' }, 'W_upright'),
  formula('F_d = F_0', force.N, derived('measured'), pair),
  formula('F_d = F_a * (1 - kappa * a_1)', force.N, twoPulls, { by: 'scale', way: 'level' }),
  formula('F_d = F_a - M * g_n - kappa * abs(F_a * a_1 - M * g_n * e_w)', force.N, pullsAndWeight, {
    by: 'scale',
    way: 'upright',
  }),
  formula('R = F_d + F_c + W', force.N, derived('sumThree')),
  formula('A = R * d - W * e_w', torque.N_mm, statics),
  // A/(1 − q) one way round, −A/(1 + q) the other. The root has no value where the guide binds: nor has the force.
  formula('N = (abs(A) + q * A) / (L * sqrt(1 - q^2)^2)', force.N, statics),
  // Has a value also where the guide binds, so that there is a verdict.
  formula('F_t = F_m - 2 * mu * abs(F_m * d - W * e_w) / L', force.N, statics),
  formula('F = R + 2 * mu * N', force.N, statics),
  formula('k_F = F / R', ratio.one, derived('ratio')),
] as const;

export const limits = [
  { of: 'q', max: 'q_lim', symmetric: true, cite: commonPractice },
  {
    of: 'q_e',
    max: 'q_lim',
    symmetric: true,
    cite: commonPractice,
    when: { way: 'upright' },
  },
  { of: 'F_t', min: 'R', cite: statics },
] as const;
