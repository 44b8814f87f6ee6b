import { count, force, frequency, length, linearDensity, ratio } from '../../quantity/kinds';
import { byWidth } from '../../reference/belts';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const string = cite('OpenStax, University Physics volume 1', 'chapter 16, waves on a stretched string', true);
const pinnedBeam = cite(
  'Blevins, Formulas for Natural Frequency and Mode Shape (1979)',
  'equation 8.20, beam under tension, pinned ends, as corrected in a published validation case',
);
const clampedString = cite('Morse, Vibration and Sound', 'stiff string with held ends, series to second order', true);
const clampedSolved = derived(
  'the series of a held stiff string, √T₀ = √T · (1 + 2ε + (4 + π²/2) ε²), solved for T (Morse, from memory)',
);
const weighing = derived('mass over length of the piece weighed');
const oneTooth = cite(
  'ISO 5296 and ISO 13050, synchronous belt drives',
  'pitch geometry: one tooth is one pitch',
  true,
);
const entered = derived('as entered');
const alike = derived('of one sort and width');

const same = { belts: 'same' };
const different = { belts: 'different' };
const ideal = { ends: 'string' };
const pinned = { ends: 'pinned' };
const clamped = { ends: 'clamped' };
const stiff = { ends: ['pinned', 'clamped'] };

const MU_1 = 'Mass per metre, first belt';
const MU_2 = 'Mass per metre, second belt';
const T_1 = 'Tension of the first belt';
const T_2 = 'Tension of the second belt';
const B_2 = 'Share of the stiffness, second belt';
const NOTE_1 = 'Note the first belt should have to match the second';
const NOTE_2 = 'Note the second belt should have to match the first';
const LEAST_2 = 'Least tension, second belt';
const MOST_2 = 'Allowable tension, second belt';

/** Two tensions and their difference, the notes that would make them equal, and the offset of the tensioners in teeth. */
export const formulas = [
  formula('mu_1 = m_s / l_s', MU_1, linearDensity.g_m, weighing, { mass: 'weigh' }),
  formula('mu_1 = m_0 * w / w_0', MU_1, linearDensity.g_m, byWidth, { mass: 'table' }),
  formula('mu_1 = mu_a', MU_1, linearDensity.g_m, entered, { mass: 'typed' }),
  formula('mu_2 = mu_1', MU_2, linearDensity.g_m, alike, same),
  formula('mu_2 = m_s2 / l_s2', MU_2, linearDensity.g_m, weighing, { ...different, mass: 'weigh' }),
  formula('mu_2 = m_02 * w_2 / w_0', MU_2, linearDensity.g_m, byWidth, { ...different, mass: 'table' }),
  formula('mu_2 = mu_b', MU_2, linearDensity.g_m, entered, { ...different, mass: 'typed' }),
  formula('T_01 = 4 * mu_1 * L_1^2 * f_1^2', 'First belt, as of a string without stiffness', force.N, string),
  formula('T_02 = 4 * mu_2 * L_2^2 * f_2^2', 'Second belt, as of a string without stiffness', force.N, string),
  formula('B_1 = EI_1 / L_1^2', 'Share of the stiffness, first belt', force.N, pinnedBeam, stiff),
  formula('B_2 = EI_1 / L_2^2', B_2, force.N, pinnedBeam, { ...same, ...stiff }),
  formula('B_2 = EI_2 / L_2^2', B_2, force.N, pinnedBeam, { ...different, ...stiff }),
  formula('beta_1 = sqrt(B_1 / T_01)', 'First belt’s stiffness against its note', ratio.one, clampedString, clamped),
  formula('beta_2 = sqrt(B_2 / T_02)', 'Second belt’s stiffness against its note', ratio.one, clampedString, clamped),
  formula('T_1 = T_01', T_1, force.N, string, ideal),
  formula('T_2 = T_02', T_2, force.N, string, ideal),
  formula('T_1 = T_01 - pi^2 * B_1', T_1, force.N, pinnedBeam, pinned),
  formula('T_2 = T_02 - pi^2 * B_2', T_2, force.N, pinnedBeam, pinned),
  formula(
    'T_1 = T_01 * ((1 - 2 * beta_1 + sqrt((1 - 2 * beta_1)^2 - (16 + 2 * pi^2) * beta_1^2)) / 2)^2',
    T_1,
    force.N,
    clampedSolved,
    clamped,
  ),
  formula(
    'T_2 = T_02 * ((1 - 2 * beta_2 + sqrt((1 - 2 * beta_2)^2 - (16 + 2 * pi^2) * beta_2^2)) / 2)^2',
    T_2,
    force.N,
    clampedSolved,
    clamped,
  ),
  formula('epsilon_1 = sqrt(B_1 / T_1)', 'First belt’s stiffness against its tension', ratio.one, clampedString, stiff),
  formula(
    'epsilon_2 = sqrt(B_2 / T_2)',
    'Second belt’s stiffness against its tension',
    ratio.one,
    clampedString,
    stiff,
  ),
  formula(
    'd_T = 2 * (T_2 - T_1) / (T_1 + T_2)',
    'Second belt tighter than the first by',
    ratio.percent,
    derived('difference over the mean of both'),
  ),
  formula('f_2e = f_1 * L_1 / L_2', NOTE_2, frequency.Hz, string, { ...same, ...ideal }),
  formula('f_2e = f_1 * L_1 / L_2 * sqrt(mu_1 / mu_2)', NOTE_2, frequency.Hz, string, { ...different, ...ideal }),
  formula('f_2e = sqrt((T_1 + pi^2 * B_2) / mu_2) / (2 * L_2)', NOTE_2, frequency.Hz, pinnedBeam, pinned),
  formula(
    'f_2e = sqrt(T_1 / mu_2) / (2 * L_2) * (1 + 2 * sqrt(B_2 / T_1) + (4 + pi^2 / 2) * B_2 / T_1)',
    NOTE_2,
    frequency.Hz,
    clampedString,
    clamped,
  ),
  formula('f_1e = f_2 * L_2 / L_1', NOTE_1, frequency.Hz, string, { ...same, ...ideal }),
  formula('f_1e = f_2 * L_2 / L_1 * sqrt(mu_2 / mu_1)', NOTE_1, frequency.Hz, string, { ...different, ...ideal }),
  formula('f_1e = sqrt((T_2 + pi^2 * B_1) / mu_1) / (2 * L_1)', NOTE_1, frequency.Hz, pinnedBeam, pinned),
  formula(
    'f_1e = sqrt(T_2 / mu_1) / (2 * L_1) * (1 + 2 * sqrt(B_1 / T_2) + (4 + pi^2 / 2) * B_1 / T_2)',
    NOTE_1,
    frequency.Hz,
    clampedString,
    clamped,
  ),
  formula('T_lo1 = T_b * w / w_0', 'Least tension, first belt', force.N, byWidth),
  formula('T_hi1 = T_a * w / w_0', 'Allowable tension, first belt', force.N, byWidth),
  formula('T_lo2 = T_lo1', LEAST_2, force.N, alike, same),
  formula('T_hi2 = T_hi1', MOST_2, force.N, alike, same),
  formula('T_lo2 = T_b2 * w_2 / w_0', LEAST_2, force.N, byWidth, different),
  formula('T_hi2 = T_a2 * w_2 / w_0', MOST_2, force.N, byWidth, different),
  formula(
    'x_1 = p / (2 * sin(theta_w / 2))',
    'Way of a tensioner that takes up one tooth',
    length.mm,
    derived('each of two strands grows by the way times the sine of half the wrap: half a pitch at 180°'),
  ),
  formula('n = (x - x_d) / x_1', 'Teeth by which the second loop is longer, as measured', ratio.one, oneTooth),
  formula(
    'n_w = round(n)',
    'Whole teeth by which the second loop is longer',
    count.one,
    derived('nearest whole number'),
  ),
  formula('r_x = x - x_d - n_w * x_1', 'Offset that whole teeth leave', length.mm, derived('difference')),
  formula('L_min = k_h * h', 'Least span for this check', length.mm, commonPractice),
];
