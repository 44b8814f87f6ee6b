import { angle, force, frequency, length, linearDensity, ratio } from '../../quantity/kinds';
import { byWidth } from '../../reference/belts';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const string = cite('OpenStax, University Physics volume 1', 'chapter 16, waves on a stretched string', true);
const pinnedBeam = cite(
  'Blevins, Formulas for Natural Frequency and Mode Shape (1979)',
  'equation 8.20, beam under tension, pinned ends, as corrected in a published validation case',
);
const clampedString = cite('Morse, Vibration and Sound', 'stiff string with held ends, series to second order', true);
const springRate = cite(
  'Supplier’s engineering table, polyurethane belts',
  'specific spring rate: stiffness = C / length',
);
const pressed = cite(
  'Supplier’s engineering guide, force and deflection',
  '(T + (t/L)·Y)/16 at a deflection of t/64: a stretch term on top of the string’s',
);
const twoStrands = derived('balance of forces on a pulley that the belt wraps half round');

const note = { by: 'note' };
const press = { by: 'press' };
const ideal = { by: 'note', ends: 'string' };
const pinned = { by: 'note', ends: 'pinned' };
const clamped = { by: 'note', ends: 'clamped' };
const stiff = { by: 'note', ends: ['pinned', 'clamped'] };
const screw = { adjuster: ['clockwise', 'anticlockwise'] };

const NOTE_LO = 'Note at the least tension';
const NOTE_HI = 'Note at the most tension';
const TOO_HIGH = 'The string’s formula alone reads too high by';
const NOTE_AIM = 'Note to tune to';

/** The reading, the tension, the range and the notes at its ends, the way of the tensioner. */
export const formulas = [
  formula('L = L_1', 'Free span', length.mm, derived('the first belt’s'), { which: 'first' }),
  formula('L = L_2', 'Free span', length.mm, derived('the second belt’s'), { which: 'second' }),
  formula('L_t = L_t1', 'Length that stretches', length.mm, derived('the first belt’s'), { which: 'first' }),
  formula('L_t = L_t2', 'Length that stretches', length.mm, derived('the second belt’s'), { which: 'second' }),
  formula('C = C_0 * w / w_0', 'Spring rate of this belt', force.N, byWidth),
  formula('mu = m_s / l_s', 'Mass per metre', linearDensity.g_m, derived('mass over length of the piece weighed'), {
    by: 'note',
    mass: 'weigh',
  }),
  formula('mu = m_0 * w / w_0', 'Mass per metre', linearDensity.g_m, byWidth, { by: 'note', mass: 'table' }),
  formula('mu = mu_1', 'Mass per metre', linearDensity.g_m, derived('as entered'), { by: 'note', mass: 'typed' }),
  formula('T_0 = 4 * mu * L^2 * f^2', 'Tension as of a string without stiffness', force.N, string, note),
  formula('B = EI / L^2', 'Share of the stiffness', force.N, pinnedBeam, stiff),
  formula('beta = sqrt(B / T_0)', 'Stiffness against the string’s tension', ratio.one, clampedString, clamped),
  formula('T = T_0', 'Tension', force.N, string, ideal),
  formula('T = T_0 - pi^2 * B', 'Tension', force.N, pinnedBeam, pinned),
  formula(
    'T = T_0 * ((1 - 2 * beta + sqrt((1 - 2 * beta)^2 - (16 + 2 * pi^2) * beta^2)) / 2)^2',
    'Tension',
    force.N,
    derived(
      'the series of a held stiff string, √T₀ = √T · (1 + 2ε + (4 + π²/2) ε²), solved for T (Morse, from memory)',
    ),
    clamped,
  ),
  formula('epsilon = sqrt(B / T)', 'Stiffness against the tension', ratio.one, clampedString, stiff),
  formula(
    'q_T = pi^2 * B / T',
    TOO_HIGH,
    ratio.percent,
    derived('the share of the stiffness over the tension'),
    pinned,
  ),
  formula(
    'q_T = epsilon * (2 + (4 + pi^2 / 2) * epsilon) * (2 + epsilon * (2 + (4 + pi^2 / 2) * epsilon))',
    TOO_HIGH,
    ratio.percent,
    derived('T₀ / T − 1 with the series of a held stiff string (Morse, from memory)'),
    clamped,
  ),
  formula(
    'y_o = mu * g_n * l_o^4 / (8 * EI)',
    'Droop of the overhang',
    length.mm,
    cite('Machinery’s Handbook', 'beam fixed at one end, load spread evenly', true),
    stiff,
  ),
  formula(
    'T_h = T_0 / 4',
    'Tension if the note heard is the octave of the true one',
    force.N,
    derived('half the note is a quarter of the tension'),
    note,
  ),
  formula('T_1 = F * L / (4 * y)', 'Tension by the rule for small deflections', force.N, pressed, press),
  formula(
    'T_y = F * sqrt((L / 2)^2 + y^2) / (2 * y)',
    'Tension while pressed',
    force.N,
    derived('balance of forces at the point pressed'),
    press,
  ),
  formula(
    'dl = 2 * sqrt((L / 2)^2 + y^2) - L',
    'Length added by pressing',
    length.mm,
    derived('Pythagoras: two sides of the triangle less the span'),
    press,
  ),
  formula('dT_y = C * dl / L_t', 'Tension added by pressing', force.N, springRate, press),
  formula('T = T_y - dT_y', 'Tension', force.N, derived('what is left when the finger is taken away'), press),
  formula('s = y / L', 'Deflection as a share of the span', ratio.percent, derived('deflection over span'), press),
  formula(
    'q_y = dT_y / T',
    'Pressing adds, as a share of the tension',
    ratio.percent,
    derived('ratio of the two'),
    press,
  ),
  formula('F_d = M * a', 'Force of accelerating', force.N, derived('Newton’s second law'), { which: 'first' }),
  formula('F_d = M_2 * a', 'Force of accelerating', force.N, derived('Newton’s second law'), { which: 'second' }),
  formula(
    'T_lo = T_b * w / w_0 + F_d',
    'Least tension',
    force.N,
    derived('suppliers’ least tension by width, kept also on the strand that accelerating relieves of all its force'),
  ),
  formula(
    'T_hi = T_a * w / w_0 - F_d',
    'Most tension',
    force.N,
    derived('suppliers’ allowable working tension by width, less the force that accelerating adds to one strand'),
  ),
  formula('T_aim = (T_lo + T_hi) / 2', 'Tension to aim at', force.N, commonPractice),
  formula('f_lo = sqrt(T_lo / mu) / (2 * L)', NOTE_LO, frequency.Hz, string, ideal),
  formula('f_aim = sqrt(T_aim / mu) / (2 * L)', NOTE_AIM, frequency.Hz, string, ideal),
  formula('f_hi = sqrt(T_hi / mu) / (2 * L)', NOTE_HI, frequency.Hz, string, ideal),
  formula('f_lo = sqrt((T_lo + pi^2 * B) / mu) / (2 * L)', NOTE_LO, frequency.Hz, pinnedBeam, pinned),
  formula('f_aim = sqrt((T_aim + pi^2 * B) / mu) / (2 * L)', NOTE_AIM, frequency.Hz, pinnedBeam, pinned),
  formula('f_hi = sqrt((T_hi + pi^2 * B) / mu) / (2 * L)', NOTE_HI, frequency.Hz, pinnedBeam, pinned),
  formula(
    'f_lo = sqrt(T_lo / mu) / (2 * L) * (1 + 2 * sqrt(B / T_lo) + (4 + pi^2 / 2) * B / T_lo)',
    NOTE_LO,
    frequency.Hz,
    clampedString,
    clamped,
  ),
  formula(
    'f_aim = sqrt(T_aim / mu) / (2 * L) * (1 + 2 * sqrt(B / T_aim) + (4 + pi^2 / 2) * B / T_aim)',
    NOTE_AIM,
    frequency.Hz,
    clampedString,
    clamped,
  ),
  formula(
    'f_hi = sqrt(T_hi / mu) / (2 * L) * (1 + 2 * sqrt(B / T_hi) + (4 + pi^2 / 2) * B / T_hi)',
    NOTE_HI,
    frequency.Hz,
    clampedString,
    clamped,
  ),
  formula(
    'F_lo = 2 * y * (T_lo + dT_y) / sqrt((L / 2)^2 + y^2)',
    'Force for this deflection at the least tension',
    force.N,
    pressed,
    press,
  ),
  formula(
    'F_aim = 2 * y * (T_aim + dT_y) / sqrt((L / 2)^2 + y^2)',
    'Force for this deflection to aim at',
    force.N,
    pressed,
    press,
  ),
  formula(
    'F_hi = 2 * y * (T_hi + dT_y) / sqrt((L / 2)^2 + y^2)',
    'Force for this deflection at the most tension',
    force.N,
    pressed,
    press,
  ),
  formula('dT = T_aim - T', 'Tension to add', force.N, derived('difference')),
  formula('dl_t = dT * L_t / C', 'Belt to take up', length.mm, springRate),
  formula(
    'dx = dl_t / (2 * sin(theta_w / 2))',
    'Way of the tensioner, outwards',
    length.mm,
    derived('each of two strands grows by the way times the sine of half the wrap'),
  ),
  formula('psi = rev * dx / P_a', 'Turn of its screw, tightening', angle.turn, derived('one pitch a turn'), screw),
  formula('F_s = 2 * T', 'Pull on the shaft of a pulley wrapped half round', force.N, twoStrands),
  formula('L_min = k_h * h', 'Least span for this check', length.mm, commonPractice),
];
