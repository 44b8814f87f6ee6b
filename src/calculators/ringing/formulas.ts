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
import { cite, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const oscillator = cite('Thomson, Theory of Vibration with Applications', 'chapter 2, free vibration', true);
const decrement = cite('Thomson, Theory of Vibration with Applications', 'section 2.6, logarithmic decrement', true);
const shock = cite(
  'Den Hartog, Mechanical Vibrations',
  'response to a suddenly applied force: twice the static one',
  true,
);
const cancel = cite(
  'Singer and Seering, Preshaping Command Inputs to Reduce System Vibration, 1990',
  'a push and its opposite a whole period later leave nothing',
  true,
);
const springRate = cite('Supplier’s engineering table, polyurethane belts', 'spring rate: stiffness = C / length');
const kinematics = derived('uniform acceleration: v² = 2 · a · l');
const ratioOf = derived('one frequency over the other');
const path = derived('the nozzle goes one ripple in one swing');
const angled = derived('projection of the wall on the axis');

const SPACING = 'Spacing of the ripples, as read';
const ALONG = 'Spacing along the wall';
const SECOND = 'Spacing of the second print, as read';
const SECOND_ALONG = 'Spacing along the wall, second print';
const one = { test: 'one' };
const two = { test: 'two' };

/** Spacing, frequency, what it may be, the acceleration that keeps it low. */
export const formulas = [
  formula('P = x_N / N', SPACING, length.mm, derived('length over the number of spaces'), { by: 'count' }),
  formula('P = P_w', SPACING, length.mm, derived('as read'), { by: 'direct' }),
  formula('lambda = P', ALONG, length.mm, derived('as read'), { along: 'wall' }),
  formula('lambda = P / cos(theta_w)', ALONG, length.mm, angled, { along: 'axis' }),
  formula('lambda_a = lambda * cos(theta_w)', 'Spacing along the axis', length.mm, angled),
  formula('f = v / lambda', 'Frequency of the ripples', frequency.Hz, path),
  formula('omega = 2 * pi * f', 'Angular frequency', shearRate.per_s, oscillator),
  formula('l_r = v^2 / (2 * a)', 'Length of the ramp up to this speed', length.mm, kinematics),
  formula('P_2 = x_N2 / N_2', SECOND, length.mm, derived('length over the number of spaces'), {
    by: 'count',
    ...two,
  }),
  formula('P_2 = P_w2', SECOND, length.mm, derived('as read'), { by: 'direct', ...two }),
  formula('lambda_2 = P_2', SECOND_ALONG, length.mm, derived('as read'), { along: 'wall', ...two }),
  formula('lambda_2 = P_2 / cos(theta_w)', SECOND_ALONG, length.mm, angled, { along: 'axis', ...two }),
  formula('f_2 = v_2 / lambda_2', 'Frequency, second print', frequency.Hz, path, two),
  formula(
    'kappa = ln(lambda_2 / lambda) / ln(v_2 / v)',
    'Exponent: 1 swings, 0 is a machine part',
    ratio.one,
    derived('spacing grows as speed to this power: λ = v / f for what swings, constant for a part'),
    two,
  ),
  formula(
    'g_p = abs(ln(lambda_a / p))',
    'Spacing apart from the belt’s teeth',
    ratio.percent,
    derived('logarithm of the ratio'),
    one,
  ),
  formula(
    'x_f = 4 * p * z * theta_s / (rev * i_b)',
    'Travel of four full steps, one turn of the motor’s field',
    length.mm,
    cite('IEC 60034-20-1, stepping motors', 'four full steps make one electrical period', true),
    one,
  ),
  formula(
    'g_s = abs(ln(lambda_a / x_f))',
    'Spacing apart from four full steps',
    ratio.percent,
    derived('logarithm of the ratio'),
    one,
  ),
  formula('a_s = x_tol * omega^2 / 2', 'Acceleration that keeps it low, started at once', acceleration.mm_s2, shock),
  formula(
    'a_q = x_tol * omega^2',
    'Acceleration above which even a gentle start bends it as far',
    acceleration.mm_s2,
    derived('force = mass × acceleration against stiffness × way: way = a / ω²'),
  ),
  formula('X = 2 * a / omega^2', 'Most ripple at the present acceleration', length.mm, shock),
  formula(
    'n_a = v * f / a',
    'Swings while the ramp lasts, from rest',
    ratio.one,
    derived('ramp time v / a times frequency'),
  ),
  formula('a_1 = v * f', 'Acceleration whose ramp lasts one swing', acceleration.mm_s2, cancel),
  formula('k_a = ceil(n_a)', 'Next whole number of swings', count.one, cancel),
  formula('a_k = v * f / k_a', 'Acceleration whose ramp lasts so many', acceleration.mm_s2, cancel),
  formula(
    'v_m = x_tol * omega',
    'Corner speed that alone rings as high',
    speed.mm_s,
    derived('free vibration from a sudden speed: way = speed / ω'),
  ),
  formula(
    'x_c = v_c / omega',
    'Ripple of the corner speed alone',
    length.mm,
    derived('free vibration from a sudden speed: way = speed / ω'),
    { corner: 'kept' },
  ),
  formula('delta = ln(2) / n_h', 'Logarithmic decrement', ratio.one, decrement),
  formula('zeta = delta / sqrt(4 * pi^2 + delta^2)', 'Share of critical damping', ratio.percent, decrement),
  formula('n_10 = ln(10) / delta', 'Ripples until a tenth is left', ratio.one, decrement),
  formula('l_10 = n_10 * lambda', 'Length of wall that they take', length.mm, decrement),
  formula('k_r = M * omega^2', 'Stiffness that the ripples speak for, if this mass swings', stiffness.N_mm, oscillator),
  formula('C = C_0 * w / w_0', 'Spring rate of this belt', force.N, byWidth),
  formula('k_b = C / L_1 + C / (L_t1 - L_1)', 'Stiffness of the belt, both strands', stiffness.N_mm, springRate),
  formula('f_b = sqrt(k_b / M) / (2 * pi)', 'Frequency of the mass on its belt', frequency.Hz, oscillator),
  formula('r_b = f / f_b', 'Ripples against the belt’s frequency', ratio.percent, ratioOf),
  formula('k_f = F / y_f', 'Stiffness of the frame', stiffness.N_mm, derived('force over way')),
  formula('f_f = sqrt(k_f / M_f) / (2 * pi)', 'Frequency of the frame', frequency.Hz, oscillator),
  formula('r_f = f / f_f', 'Ripples against the frame’s frequency', ratio.percent, ratioOf),
  formula('r_k = a / a_s', 'Stiffer, or lighter, by this factor would do as well', ratio.one, oscillator),
] as const;
