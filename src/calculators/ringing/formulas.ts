import {
  acceleration,
  count,
  force,
  frequency,
  length,
  ratio,
  shearRate,
  speed,
  stiffness,
} from '../../quantity/kinds';
import { byWidth } from '../../reference/belts';
import { formula, cite, derived } from '../../engine/calculator';

const oscillator = cite(
  'Thomson, Theory of Vibration with Applications, 5th edition (1998)',
  'chapterFreeVibration',
  true,
);
const decrement = cite(
  'Thomson, Theory of Vibration with Applications, 5th edition (1998)',
  'sectionLogarithmicDecrement',
  true,
);
const shock = cite('Den Hartog, Mechanical Vibrations, 4th edition (1956)', 'responseSuddenlyApplied', true);
const cancel = cite(
  'Singer and Seering, Preshaping Command Inputs to Reduce System Vibration, 1990',
  'pushOppositeWhole',
  true,
);
const springRate = derived('springRateStiffness');
const kinematics = derived('uniformAccelerationV');
const ratioOf = derived('frequencyOverOther');
const path = derived('nozzleGoesRipple');
const angled = derived('projectionWallAxis');

const one = { test: 'one' };
const two = { test: 'two' };

/** Spacing, frequency, what it may be, the acceleration that keeps it low. */
export const formulas = [
  formula('P = x_N / N', length.mm, derived('lengthOverNumber'), { by: 'count' }),
  formula('P = P_w', length.mm, derived('read'), { by: 'direct' }),
  formula('lambda = P', length.mm, derived('read'), { along: 'wall' }),
  formula('lambda = P / cos(theta_w)', length.mm, angled, { along: 'axis' }),
  formula('lambda_a = lambda * cos(theta_w)', length.mm, angled),
  formula('f = v / lambda', frequency.Hz, path),
  formula('omega = 2 * pi * f', shearRate.per_s, oscillator),
  formula('l_r = v^2 / (2 * a)', length.mm, kinematics),
  formula('P_2 = x_N2 / N_2', length.mm, derived('lengthOverNumber'), {
    by: 'count',
    ...two,
  }),
  formula('P_2 = P_w2', length.mm, derived('read'), { by: 'direct', ...two }),
  formula('lambda_2 = P_2', length.mm, derived('read'), { along: 'wall', ...two }),
  formula('lambda_2 = P_2 / cos(theta_w)', length.mm, angled, { along: 'axis', ...two }),
  formula('f_2 = v_2 / lambda_2', frequency.Hz, path, two),
  formula('kappa = ln(lambda_2 / lambda) / ln(v_2 / v)', ratio.one, derived('spacingGrowsSpeed'), two),
  formula('g_p = abs(ln(lambda_a / p))', ratio.percent, derived('logarithmRatio'), one),
  formula(
    'x_f = 4 * p * z * theta_s / (rev * i_b)',
    length.mm,
    cite('IEC 60034-20-1:2002, stepping motors', 'fourFullSteps', true),
    one,
  ),
  formula('g_s = abs(ln(lambda_a / x_f))', ratio.percent, derived('logarithmRatio'), one),
  formula('a_s = x_tol * omega^2 / 2', acceleration.mm_s2, shock),
  formula('a_q = x_tol * omega^2', acceleration.mm_s2, derived('forceMassAcceleration')),
  formula('X = 2 * a / omega^2', length.mm, shock),
  formula('n_a = v * f / a', ratio.one, derived('rampTimeV')),
  formula('a_1 = v * f', acceleration.mm_s2, cancel),
  formula('k_a = ceil(n_a)', count.one, cancel),
  formula('a_k = v * f / k_a', acceleration.mm_s2, cancel),
  formula('v_m = x_tol * omega', speed.mm_s, derived('freeVibrationSudden')),
  formula('x_c = v_c / omega', length.mm, derived('freeVibrationSudden'), { corner: 'kept' }),
  formula('delta = ln(2) / n_h', ratio.one, decrement),
  formula('zeta = delta / sqrt(4 * pi^2 + delta^2)', ratio.percent, decrement),
  formula('n_10 = ln(10) / delta', ratio.one, decrement),
  formula('l_10 = n_10 * lambda', length.mm, decrement),
  formula('k_r = M * omega^2', stiffness.N_mm, oscillator),
  formula('C = C_0 * w / w_0', force.N, byWidth),
  formula('k_b = C / L_1 + C / (L_t1 - L_1)', stiffness.N_mm, springRate),
  formula('f_b = sqrt(k_b / M) / (2 * pi)', frequency.Hz, oscillator),
  formula('r_b = f / f_b', ratio.percent, ratioOf),
  formula('k_f = F / y_f', stiffness.N_mm, derived('forceOverDeflection')),
  formula('f_f = sqrt(k_f / M_f) / (2 * pi)', frequency.Hz, oscillator),
  formula('r_f = f / f_f', ratio.percent, ratioOf),
  formula('r_k = a / a_s', ratio.one, oscillator),
] as const;
