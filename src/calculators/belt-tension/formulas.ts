import { angle, bendingStiffness, force, frequency, length, linearDensity, ratio } from '../../quantity/kinds';
import { byWidth } from '../../reference/belts';
import { commonPractice } from '../../reference/citation';
import { formula, cite, derived } from '../../engine/calculator';

const string = cite('OpenStax, University Physics volume 1 (2016)', 'chapterWavesStretched', true);
const pinnedBeam = cite('Blevins, Formulas for Natural Frequency and Mode Shape (1979)', 'equationBeamUnder');
const clampedString = cite('Morse, Vibration and Sound, 2nd edition (1948)', 'stiffStringHeld', true);
const springRate = derived('stiffnessOverLength');
const stiffPressed = derived('beamPressedMiddle');
const between = derived('betweenFreeHeld');
const twoStrands = derived('balanceForcesPulley');

const note = { by: 'note' };
const press = { by: 'press' };
const measured = { ends: ['between', 'pinned', 'clamped'] };
const screw = { adjuster: ['clockwise', 'anticlockwise'] };

/** The reading, the tension, the range and the notes at its ends, the way of the tensioner. */
export const formulas = [
  formula('L = L_1', length.mm, derived('firstBelts'), { which: 'first' }),
  formula('L = L_2', length.mm, derived('secondBelts'), { which: 'second' }),
  formula('L_t = L_t1', length.mm, derived('firstBelts'), { which: 'first' }),
  formula('L_t = L_t2', length.mm, derived('secondBelts'), { which: 'second' }),
  formula('C = C_0 * w / w_0', force.N, byWidth),
  formula('mu = m_s / l_s', linearDensity.g_m, derived('massOverLength'), {
    by: 'note',
    mass: 'weigh',
  }),
  formula('mu = m_0 * w / w_0', linearDensity.g_m, byWidth, { by: 'note', mass: 'table' }),
  formula('mu = mu_1', linearDensity.g_m, derived('entered'), { by: 'note', mass: 'typed' }),
  formula('T_0 = 4 * mu * L^2 * f^2', force.N, string, note),
  formula('EI_b = EI_0 * w / w_0', bendingStiffness.N_mm2, byWidth, { ends: 'string' }),
  formula('EI_b = EI', bendingStiffness.N_mm2, derived('entered'), measured),
  formula('B = EI_b / L^2', force.N, pinnedBeam),
  formula('beta = sqrt(B / T_0)', ratio.one, clampedString, note),
  formula('T_p = T_0 - pi^2 * B', force.N, pinnedBeam, note),
  // The series has no root where the span is a stiff beam: far beyond the limit of epsilon.
  formula(
    'T_c = T_0 * ((1 - 2 * beta + sqrt(max((1 - 2 * beta)^2 - (16 + 2 * pi^2) * beta^2, 0))) / 2)^2',
    force.N,
    derived('seriesHeldStiff'),
    note,
  ),
  formula('T = (1 - chi) * T_p + chi * T_c', force.N, between, note),
  formula('epsilon = sqrt(B / T)', ratio.one, clampedString, note),
  formula('q_T = T_0 / T - 1', ratio.percent, derived('ratioLessOne'), note),
  formula(
    'y_o = mu * g_n * l_o^4 / (8 * EI)',
    length.mm,
    cite('Machinery’s Handbook, 29th edition (2012)', 'beamFixedEnd', true),
    {
      by: 'note',
      ...measured,
    },
  ),
  formula('T_h = T_0 / 4', force.N, derived('halfNoteQuarter'), note),
  formula('T_1 = F * L / (4 * y)', force.N, derived('balanceSmallDeflection'), press),
  formula('T_y = F * sqrt((L / 2)^2 + y^2) / (2 * y)', force.N, derived('balanceForcesPoint'), press),
  formula('dl = 2 * sqrt((L / 2)^2 + y^2) - L', length.mm, derived('pythagorasSidesTriangle'), press),
  formula('dT_y = C * dl / L_t', force.N, springRate, press),
  formula('beta = sqrt(B / T_y)', ratio.one, stiffPressed, press),
  formula('T_s = T_y * (1 - 2 * (1 + chi) * beta - 2 * (1 + chi)^2 * beta^2)', force.N, stiffPressed, press),
  formula('epsilon = sqrt(B / T_s)', ratio.one, stiffPressed, press),
  formula('T = T_s - dT_y', force.N, derived('leftWhenFinger'), press),
  formula('s = y / L', ratio.percent, derived('deflectionOverSpan'), press),
  formula('q_y = dT_y / T', ratio.percent, derived('ratio'), press),
  formula('F_d = M * a', force.N, derived('newtonsSecondLaw'), { which: 'first' }),
  formula('F_d = M_2 * a', force.N, derived('newtonsSecondLaw'), { which: 'second' }),
  formula('T_lo = T_b * w / w_0 + F_d', force.N, derived('leastKeptAccelerating')),
  formula('T_hi = T_a * w / w_0 - F_d', force.N, derived('mostLessAccelerating')),
  formula('T_aim = (T_lo + T_hi) / 2', force.N, commonPractice),
  formula(
    'f_lo = sqrt(((1 - chi) * (T_lo + pi^2 * B) + chi * T_lo * (1 + 2 * sqrt(B / T_lo) + (4 + pi^2 / 2) * B / T_lo)^2) / mu) / (2 * L)',
    frequency.Hz,
    between,
    note,
  ),
  formula(
    'f_aim = sqrt(((1 - chi) * (T_aim + pi^2 * B) + chi * T_aim * (1 + 2 * sqrt(B / T_aim) + (4 + pi^2 / 2) * B / T_aim)^2) / mu) / (2 * L)',
    frequency.Hz,
    between,
    note,
  ),
  formula(
    'f_hi = sqrt(((1 - chi) * (T_hi + pi^2 * B) + chi * T_hi * (1 + 2 * sqrt(B / T_hi) + (4 + pi^2 / 2) * B / T_hi)^2) / mu) / (2 * L)',
    frequency.Hz,
    between,
    note,
  ),
  formula(
    'F_lo = 2 * y * (T_lo + dT_y) / (sqrt((L / 2)^2 + y^2) * (1 - 2 * (1 + chi) * sqrt(B / (T_lo + dT_y))))',
    force.N,
    stiffPressed,
    press,
  ),
  formula(
    'F_aim = 2 * y * (T_aim + dT_y) / (sqrt((L / 2)^2 + y^2) * (1 - 2 * (1 + chi) * sqrt(B / (T_aim + dT_y))))',
    force.N,
    stiffPressed,
    press,
  ),
  formula(
    'F_hi = 2 * y * (T_hi + dT_y) / (sqrt((L / 2)^2 + y^2) * (1 - 2 * (1 + chi) * sqrt(B / (T_hi + dT_y))))',
    force.N,
    stiffPressed,
    press,
  ),
  formula('dT = T_aim - T', force.N, derived('difference')),
  formula('dl_t = dT * L_t / C', length.mm, springRate),
  formula('dx = dl_t / (2 * sin(theta_w / 2))', length.mm, derived('eachRunGrows')),
  formula('psi = rev * dx / P_a', angle.turn, derived('pitchTurn'), screw),
  formula('F_s = 2 * T', force.N, twoStrands),
] as const;
