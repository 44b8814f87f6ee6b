import { angle, force, length, pressure, ratio, rotation, secondMoment, speed, torque } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { formula, type When, cite, derived } from '../../engine/calculator';
import { PLAIN, STANDARD } from './choices';

const iso = cite('ISO 2904:1977, trapezoidal threads', 'clauseBasicDimensions', true);
const shigley = cite('Shigley’s Mechanical Engineering Design, 10th edition (2015)', 'sectionMechanicsPower', true);
const mott = cite('Mott, Machine Elements in Mechanical Design, 4th edition (2004)', 'chapterTorqueAcme');
const ball = derived('ballScrewsForward');
const euler = cite('Roark’s Formulas for Stress and Strain, 7th edition (2002)', 'elasticStabilityBars', true);
const columns = cite('Shigley’s Mechanical Engineering Design, 10th edition (2015)', 'eulerJB', true);
const beam = cite('Blevins, Formulas for Natural Frequency and Mode Shape (1979)', 'singleSpanBeams', true);
const weight = derived('weight');
const shared = derived('balanceMomentsAbout');
const same = derived('lockingConditionTan');

const plain: When = { screw: PLAIN };
const balls: When = { screw: 'ball' };
const twoMotors: When = { screws: 'two', drive: 'motors' };
const belt: When = { screws: 'two', drive: 'belt' };
/** The load. */
const load = [
  formula('F = M_z * g_n', force.N, weight, { screws: 'one' }),
  formula('F = g_n * (M_z / 2 + M * x / S)', force.N, shared, twoMotors),
  formula('F_2 = g_n * (M_z / 2 - M * x / S)', force.N, shared, twoMotors),
  // The belt lets neither screw turn alone.
  formula('F = M_z * g_n / 2', force.N, derived('beltMakesScrews'), belt),
  formula('F = k_u * M_z * g_n / n_z', force.N, derived('meanShareTimes'), { screws: 'more' }),
] as const;

/** The thread, raising and lowering. */
const thread = [
  formula('n_s = P_h / P', ratio.one, cite('ISO 2902:1977', 'designationLeadPitch', true), plain),
  formula('d_2 = d - P / 2', length.mm, iso, plain),
  formula('d_3 = d - P - 2 * a_c', length.mm, iso, { screw: STANDARD }),
  formula('d_3 = d_k', length.mm, derived('measured'), { screw: ['own', 'ball'] }),
  formula('lambda = atan(P_h / (pi * d_2))', angle.deg, shigley, plain),
  formula('mu_l = tan(lambda) * cos(alpha)', ratio.one, shigley, plain),
  formula('m_t = mu / mu_l', ratio.one, shigley, plain, 'm_t_marginThreadAlone'),
  formula('m_t = 1 / eta_b - 1', ratio.one, ball, balls, 'm_t_marginBallScrew'),
  formula(
    'T_R = F * d_2 / 2 * (P_h + pi * mu * d_2 / cos(alpha)) / (pi * d_2 - mu * P_h / cos(alpha))',
    torque.N_mm,
    mott,
    plain,
    'T_R_torqueRaiseThread',
  ),
  formula('T_R = F * P_h / (2 * pi * eta_b)', torque.N_mm, ball, balls, 'T_R_torqueRaiseBall'),
  formula(
    'T_L = F * d_2 / 2 * (pi * mu * d_2 / cos(alpha) - P_h) / (pi * d_2 + mu * P_h / cos(alpha))',
    torque.N_mm,
    shigley,
    plain,
    'T_L_torqueLowerThread',
  ),
  formula('T_L = F * P_h / (2 * pi) * (1 / eta_b - 2)', torque.N_mm, ball, balls, 'T_L_torqueLowerBall'),
  formula('T_c = mu_c * F * d_c / 2', torque.N_mm, shigley),
  formula('T_u = T_R + T_c + T_b', torque.N_mm, shigley),
  formula('T_n = T_L + T_c + T_b', torque.N_mm, shigley),
  formula('eta = F * P_h / (2 * pi * T_R)', ratio.percent, shigley, plain),
  formula('eta_s = tan(lambda) / tan(lambda + atan(mu))', ratio.percent, derived('blockOnSlope'), plain),
  formula('eta_c = F * P_h / (2 * pi * (T_R + T_c))', ratio.percent, shigley),
] as const;

const raised = derived('pullGrowsFriction');
const turned = derived('torqueOverDrive');
/** What holds it when the motors are off. */
const holding = [
  formula('T_m = T_d * i_g', torque.N_mm, derived('torqueThroughGearing'), { screws: ['one', 'more'] }),
  formula('T_m = T_d * i_g', torque.N_mm, derived('torqueThroughGearing'), twoMotors),
  formula('T_m = T_d * i_g / 2', torque.N_mm, derived('motorScrews'), belt),
  formula('T_1 = F * d_2 / 2 / (1 / tan(lambda) + mu / cos(alpha))', torque.N_mm, same, plain),
  formula('T_1 = F * P_h / (2 * pi)', torque.N_mm, same, balls),
  formula('m_p = m_t + T_c / T_1', ratio.one, same),
  formula('m = m_p + (T_m + T_b) / T_1', ratio.one, same),
  formula('m_2 = m_p + (T_m + T_b) * F / (T_1 * F_2)', ratio.one, same, twoMotors),
  formula('T_k = (m_lim - m) * T_1', torque.N_mm, same),
  formula('F_m = (T_m + T_b) * F / (T_1 * (m_lim - m_p))', force.N, same),
  formula('P_n = pi * d_2 * mu / (cos(alpha) * m_lim)', length.mm, shigley, plain),
  // What grows with the load holds the pull as well: only the rest of the margin is tried.
  formula('F_p = (m_lim - 1) * F / (1 - m_p)', force.N, raised, { screws: ['one', 'more'] }),
  formula('F_p = (m_lim - 1) * F / (1 - m_p)', force.N, raised, twoMotors),
  // Midway, since the belt lets neither screw turn alone.
  formula('F_p = (m_lim - 1) * M_z * g_n / (1 - m_p)', force.N, raised, belt),
  formula('T_t = (m_lim - 1) * T_1', torque.N_mm, turned, { screws: ['one', 'more'] }),
  formula('T_t = (m_lim - 1) * T_1', torque.N_mm, turned, twoMotors),
  formula('T_t = 2 * (m_lim - 1) * T_1', torque.N_mm, turned, belt),
] as const;

const sync = derived('phaseMotorFour');
/** What bends it, what makes it whirl. */
const slender = [
  formula('h_e = 4 * theta_s * P_h / (rev * i_g)', length.mm, sync, twoMotors),
  formula('h_e = 4 * theta_s * P_h / (rev * i_g)', length.mm, sync, {
    screws: 'more',
  }),
  formula('F_s = 2 * pi * tau_h * k_I * i_g * eta_c / P_h', force.N, derived('energyTurnTimes')),
  formula('I = pi * d_3^4 / 64', secondMoment.mm4, euler),
  formula('s = 4 * K * L / d_3', ratio.one, columns),
  formula('r_s = s * sqrt(R_e / (2 * pi^2 * E))', ratio.one, columns),
  formula('F_E = pi^2 * E * I / (K * L)^2', force.N, euler),
  // Euler's curve above one, the parabola that touches it below: one of the two factors stands still in each.
  formula('sigma = R_e * (1 - min(r_s, 1)^2 / 2) / max(r_s, 1)^2', pressure.MPa, columns),
  formula('F_b = sigma * pi * d_3^2 / 4', force.N, columns),
  formula('m_b = F_b / F_s', ratio.one, derived('bucklingLoadOver')),
  formula('n = v / P_h', rotation.rpm, derived('leadTurn')),
  formula('n_c = k_1 * d_3 / (8 * pi * L^2) * sqrt(E / rho)', rotation.rpm, beam),
  formula('n_m = k_n * n_c', rotation.rpm, commonPractice),
  formula('v_m = n_m * P_h', speed.mm_s, derived('leadTurn')),
] as const;

export const formulas = [...load, ...thread, ...holding, ...slender] as const;
