import { angle, force, length, perLength, ratio, torque } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const rule = cite(
  'Plain-bearing supplier’s design page and Machine Design magazine',
  'the 2:1 rule: offset over length at most 2, for a friction of 0.25',
);
const statics = derived('balance of forces and of moments, contacts at the two ends of the guide, Coulomb’s friction');
const twoPulls = derived('F · (1 − κ · a) is the same for both pulls, κ = 2 μ / L');
const triangles = derived('similar triangles');
const newton = derived('Newton’s second law');
const play = derived('a guide of length L with play j can turn by j / L');

const pair = { by: 'pair' };
const scale = { by: 'scale' };
const DRAG = 'Drag in the guide’s line';

export const formulas = [
  formula('d = d_0', 'Offset of the drive', length.mm, derived('as measured'), { drive: 'one' }),
  formula('d = s * d_1 - (1 - s) * d_2', 'Offset of both drives together (left positive)', length.mm, statics, {
    drive: 'both',
  }),
  formula('s_0 = d_2 / (d_1 + d_2)', 'Left share at which both cancel', ratio.percent, statics, { drive: 'both' }),
  formula(
    'kappa = (F_b - F_a) / (F_b * a_2 - F_a * a_1)',
    'Growth of the pull with offset',
    perLength.per_mm,
    twoPulls,
    scale,
  ),
  formula('mu = mu_p', 'Friction', ratio.one, derived('of the pair'), pair),
  formula('mu = kappa * L / 2', 'Friction, measured', ratio.one, twoPulls, scale),
  formula('q = 2 * mu * d / L', 'Share of the push that friction eats (binds at 100 %)', ratio.percent, rule),
  formula('d_b = L / (2 * mu)', 'Offset at which it binds', length.mm, rule),
  formula('d_m = q_lim * L / (2 * mu)', 'Most offset with the margin', length.mm, rule),
  formula('L_m = 2 * mu * d / q_lim', 'Least guide length with the margin', length.mm, rule, { drive: 'one' }),
  formula('x_d = d - d_m', 'Offset to take off', length.mm, derived('difference'), { drive: 'one' }),
  formula('x_L = L_m - L', 'Length to add', length.mm, derived('difference'), { drive: 'one' }),
  formula('q_e = 2 * mu * e / L', 'Share of the weight that friction eats, sinking', ratio.percent, rule, {
    way: 'upright',
  }),
  formula('psi_0 = j / L', 'Tilt that the play allows', angle.deg, play),
  formula('dx_0 = psi_0 * W_g', 'One end ahead until the play is used up', length.mm, triangles),
  formula('psi = dx / W_g', 'Tilt forced on it', angle.deg, triangles),
  formula('N_c = c_g * (max(psi * L, j) - j)', 'Clamping force at each end of the guide', force.N, play),
  formula('F_c = 2 * mu * N_c', 'Drag of the clamping', force.N, statics),
  formula('W = M * a', 'Force of the mass', force.N, newton, { way: 'level' }),
  formula('W = M * (g_n + a)', 'Force of the mass, rising', force.N, newton, { way: 'upright' }),
  formula('F_d = F_0', DRAG, force.N, derived('as measured'), pair),
  formula('F_d = F_a * (1 - kappa * a_1)', DRAG, force.N, twoPulls, { by: 'scale', way: 'level' }),
  formula('F_d = F_a * (1 - kappa * a_1) - M * g_n * (1 - kappa * e)', DRAG, force.N, twoPulls, {
    by: 'scale',
    way: 'upright',
  }),
  formula('R = F_d + F_c + W', 'Force without the offset', force.N, derived('sum of the three')),
  formula('A = R * d - W * e', 'Moment on the guide, before friction adds to it', torque.N_mm, statics),
  // A/(1 − q) one way round, −A/(1 + q) the other. The root has no value where the guide binds: nor has the force.
  formula('N = (abs(A) + q * A) / (L * sqrt(1 - q^2)^2)', 'Sideways force at each end of the guide', force.N, statics),
  // Has a value also where the guide binds, so that there is a verdict.
  formula(
    'F_t = F_m - 2 * mu * abs(F_m * d - W * e) / L',
    'Force that gets through when the drive pulls its most',
    force.N,
    statics,
  ),
  formula('F = R + 2 * mu * N', 'Force that the drive needs', force.N, statics),
  formula('k_F = F / R', 'The same as a multiple of that without offset', ratio.one, derived('ratio of the two')),
] as const;

export const limits = [
  { of: 'q', max: 'q_lim', symmetric: true, label: 'Push that friction eats, against binding', cite: commonPractice },
  {
    of: 'q_e',
    max: 'q_lim',
    symmetric: true,
    label: 'The same for its own weight, sinking',
    cite: commonPractice,
    when: { way: 'upright' },
  },
  { of: 'F_t', min: 'R', label: 'Force that gets through, against what the carriage needs', cite: statics },
] as const;
