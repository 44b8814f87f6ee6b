import { angle, force, length, pressure, ratio, secondMoment, speed, torque } from '../../quantity/kinds';
import { defineKind } from '../../quantity/unit';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula, type When } from '../../engine/calculator';
import { PLAIN, STANDARD } from './choices';

/** Turns, not radians, per time. */
const rotation = defineKind('rotational speed', [0, 0, -1, 0, 0], {
  rpm: { label: 'rpm', factor: 1 / 60, also: ['1/min', 'r/min'] },
  per_s: { label: '1/s', factor: 1 },
});

const iso = cite('ISO 2904, trapezoidal threads', 'clause 5, basic dimensions', true);
const shigley = cite('Shigley, Mechanical Engineering Design', 'section 8-2, mechanics of power screws', true);
const mott = cite('Mott, Machine Elements in Mechanical Design', 'chapter 17, torque of Acme screws, example 17-1');
const ball = cite('Suppliers’ engineering tables', 'ball screws: forward and backward efficiency', true);
const euler = cite('Roark’s Formulas for Stress and Strain', 'elastic stability of bars', true);
const columns = cite('Shigley, Mechanical Engineering Design', 'Euler and J. B. Johnson columns', true);
const beam = cite('Blevins, Formulas for Natural Frequency and Mode Shape', 'single-span beams', true);
const weight = derived('weight');
const shared = derived('balance of moments about the other screw');
const same = derived('the locking condition μ > tan λ · cos α with the other torques counted as friction');

const plain: When = { screw: PLAIN };
const balls: When = { screw: 'ball' };
const twoMotors: When = { screws: 'two', drive: 'motors' };
const belt: When = { screws: 'two', drive: 'belt' };
const LOAD = 'Weight on the screw that lets go first';
const IDLE = 'The motor’s idle torque at one screw';

/** The load. */
const load = [
  formula('F = M_z * g_n', LOAD, force.N, weight, { screws: 'one' }),
  formula('F = g_n * (M_z / 2 + M * x / S)', LOAD, force.N, shared, twoMotors),
  formula('F_2 = g_n * (M_z / 2 - M * x / S)', 'Weight on the other screw', force.N, shared, twoMotors),
  // The belt lets neither screw turn alone.
  formula('F = M_z * g_n / 2', LOAD, force.N, derived('a belt makes two screws turn as one'), belt),
  formula('F = k_u * M_z * g_n / n_z', LOAD, force.N, derived('mean share times unevenness'), { screws: 'more' }),
] as const;

/** The thread, raising and lowering. */
const thread = [
  formula('n_s = P_h / P', 'Starts', ratio.one, cite('ISO 2902', 'designation: lead and pitch', true), plain),
  formula('d_2 = d - P / 2', 'Pitch diameter', length.mm, iso, plain),
  formula('d_3 = d - P - 2 * a_c', 'Core diameter', length.mm, iso, { screw: STANDARD }),
  formula('d_3 = d_k', 'Core diameter', length.mm, derived('as measured'), { screw: ['own', 'ball'] }),
  formula('lambda = atan(P_h / (pi * d_2))', 'Lead angle', angle.deg, shigley, plain),
  formula('mu_l = tan(lambda) * cos(alpha)', 'Friction at which the thread just locks', ratio.one, shigley, plain),
  formula('m_t = mu / mu_l', 'Margin of the thread alone', ratio.one, shigley, plain),
  formula('m_t = 1 / eta_b - 1', 'Margin of the ball screw alone', ratio.one, ball, balls),
  formula(
    'T_R = F * d_2 / 2 * (P_h + pi * mu * d_2 / cos(alpha)) / (pi * d_2 - mu * P_h / cos(alpha))',
    'Torque to raise, thread alone',
    torque.N_mm,
    mott,
    plain,
  ),
  formula('T_R = F * P_h / (2 * pi * eta_b)', 'Torque to raise, ball screw alone', torque.N_mm, ball, balls),
  formula(
    'T_L = F * d_2 / 2 * (pi * mu * d_2 / cos(alpha) - P_h) / (pi * d_2 + mu * P_h / cos(alpha))',
    'Torque to lower, thread alone (below zero: it runs down)',
    torque.N_mm,
    shigley,
    plain,
  ),
  formula(
    'T_L = F * P_h / (2 * pi) * (1 / eta_b - 2)',
    'Torque to lower, ball screw alone (below zero: it runs down)',
    torque.N_mm,
    ball,
    balls,
  ),
  formula('T_c = mu_c * F * d_c / 2', 'Torque of the thrust bearing or collar', torque.N_mm, shigley),
  formula('T_u = T_R + T_c + T_b', 'Torque to raise, from rest', torque.N_mm, shigley),
  formula('T_n = T_L + T_c + T_b', 'Torque to lower, motor uncoupled', torque.N_mm, shigley),
  formula('eta = F * P_h / (2 * pi * T_R)', 'Efficiency raising, thread alone', ratio.percent, shigley, plain),
  formula(
    'eta_s = tan(lambda) / tan(lambda + atan(mu))',
    'The same as of a square thread, a cross-check',
    ratio.percent,
    cite('Suppliers’ engineering tables', 'trapezoidal screws: efficiency by lead angle and friction'),
    plain,
  ),
  formula('eta_c = F * P_h / (2 * pi * (T_R + T_c))', 'Efficiency raising, with the collar', ratio.percent, shigley),
] as const;

const raised = derived('load raised in the ratio of the margin');
const TRIAL = 'Pull down for the trial';

/** What holds it when the motors are off. */
const holding = [
  formula('T_m = T_d * i_g', IDLE, torque.N_mm, derived('torque through the gearing'), { screws: ['one', 'more'] }),
  formula('T_m = T_d * i_g', IDLE, torque.N_mm, derived('torque through the gearing'), twoMotors),
  formula('T_m = T_d * i_g / 2', IDLE, torque.N_mm, derived('one motor, two screws'), belt),
  formula(
    'T_1 = F * d_2 / 2 / (1 / tan(lambda) + mu / cos(alpha))',
    'Torque that counts as a margin of one',
    torque.N_mm,
    same,
    plain,
  ),
  formula('T_1 = F * P_h / (2 * pi)', 'Torque that counts as a margin of one', torque.N_mm, same, balls),
  formula('m_p = m_t + T_c / T_1', 'Margin of screw and thrust bearing', ratio.one, same),
  formula('m = m_p + (T_m + T_b) / T_1', 'Margin with everything that holds', ratio.one, same),
  formula('m_2 = m_p + (T_m + T_b) * F / (T_1 * F_2)', 'Margin at the other screw', ratio.one, same, twoMotors),
  formula('T_k = (m_lim - m) * T_1', 'Brake torque wanting at a screw (below zero: to spare)', torque.N_mm, same),
  formula(
    'F_m = (T_m + T_b) * F / (T_1 * (m_lim - m_p))',
    'Weight on a screw with the margin wanted (below zero: any)',
    force.N,
    same,
  ),
  formula(
    'P_n = pi * d_2 * mu / (cos(alpha) * m_lim)',
    'Lead with the margin wanted, thread alone',
    length.mm,
    shigley,
    plain,
  ),
  formula('F_p = (m_lim - 1) * F', TRIAL, force.N, raised, { screws: ['one', 'more'] }),
  formula('F_p = (m_lim - 1) * F', TRIAL, force.N, raised, twoMotors),
  // Midway, since the belt lets neither screw turn alone.
  formula('F_p = (m_lim - 1) * M_z * g_n', TRIAL, force.N, raised, belt),
] as const;

const sync = derived(
  'two-phase motor: four full steps are one electrical turn, so after slipping more than two it comes back a whole one out',
);
const SLIPPED = 'A side that slipped comes back out by this, or a multiple';

/** What bends it, what makes it whirl. */
const slender = [
  formula('h_e = 4 * theta_s * P_h / (rev * i_g)', SLIPPED, length.mm, sync, twoMotors),
  formula('h_e = 4 * theta_s * P_h / (rev * i_g)', SLIPPED, length.mm, sync, {
    screws: 'more',
  }),
  formula(
    'F_s = 2 * pi * tau_h * i_g * eta_c / P_h',
    'Push of the screw when the motor stalls',
    force.N,
    derived('energy of one turn times efficiency'),
  ),
  formula('I = pi * d_3^4 / 64', 'Second moment of area', secondMoment.mm4, euler),
  formula('s = 4 * K * L / d_3', 'Slenderness', ratio.one, columns),
  formula('s_c = sqrt(2 * pi^2 * E / R_e)', 'Slenderness below which Johnson’s parabola holds', ratio.one, columns),
  formula('F_E = pi^2 * E * I / (K * L)^2', 'Buckling load after Euler', force.N, euler),
  // Euler's curve above s_c, the parabola that touches it below: one of the two factors stands still in each.
  formula(
    'sigma = R_e * (1 - min(s, s_c)^2 / (2 * s_c^2)) * (s_c / max(s, s_c))^2',
    'Buckling stress, Euler or Johnson',
    pressure.MPa,
    columns,
  ),
  formula('F_b = sigma * pi * d_3^2 / 4', 'Buckling load', force.N, columns),
  formula('m_b = F_b / F_s', 'Margin against buckling', ratio.one, derived('buckling load over push')),
  formula('n = v / P_h', 'Turning at the fastest move', rotation.rpm, derived('one lead a turn')),
  formula('n_c = k_1 * d_3 / (8 * pi * L^2) * sqrt(E / rho)', 'Critical speed, without a margin', rotation.rpm, beam),
  formula('n_m = k_n * n_c', 'Fastest turning, with the margin', rotation.rpm, commonPractice),
  formula('v_m = n_m * P_h', 'Fastest move, with the margin', speed.mm_s, derived('one lead a turn')),
] as const;

export const formulas = [...load, ...thread, ...holding, ...slender] as const;
