import { angle, force, length, pressure, ratio, torque } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator, formula } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { inputs } from './inputs';

const hertzModulus = cite('Johnson, Contact Mechanics', 'chapter 4, contact modulus', true);
const hertzLine = cite('Johnson, Contact Mechanics', 'section 4.2(c), line contact of cylinders', true);
const hertzPoint = cite('Johnson, Contact Mechanics', 'section 4.2(a), solids of revolution', true);
const ellipse = cite(
  'Greenwood, Formulas for Moderately Elliptical Hertzian Contacts, Journal of Tribology 107 (1985)',
  'abstract: radius (AB(A + B)/2)^(−1/3), A = 1/R_n, B = 1/r_e; pressure 2.3 % low at a ratio of 30',
);
const coulomb = derived('Coulomb’s friction: force over friction coefficient');
const wedge = derived('balance of forces across the V: two flanks at the half angle');
const statics = derived('balance of moments about one pair of wheels');
const bush = derived('eccentric bush: height of a point at radius e on a turned circle');

export default calculator({
  cautions: [
    'Motors off and unplugged: a homing move takes a finger in between wheel and rail.',
    'Push the carriage by hand, slowly, with the finger on the side the wheel leaves the rail, never where it runs on.',
    'Block a carriage on an upright rail before easing a bolt: it can drop. Let a hot nozzle and bed cool first.',
  ],
  choices,
  inputs,
  formulas: [
    formula('M_o = M * (g_n * d + a * h)', 'Moment to hold', torque.N_m, statics),
    formula('F_o = M_o / s', 'Force on a wheel pair', force.N, statics),
    formula('F_g = M * g_n * d / (s * n_w)', 'Weight’s share on one wheel', force.N, statics),
    formula(
      'N_min = k * F_o / n_w + N_0',
      'Least preload of a wheel',
      force.N,
      derived('the moment uses up preload, and a wheel that still turns with the carriage has some left'),
    ),
    formula('P = F_slip / mu', 'Force through the tread, both flanks', force.N, coulomb, { by: ['slip', 'hanging'] }),
    // The V wedges: both flanks together press more than the preload, so the slip force over mu is not yet the preload.
    formula('N = P * sin(beta)', 'Preload carried', force.N, wedge, { by: 'slip' }),
    formula('N = P * sin(beta) + F_g', 'Preload carried', force.N, wedge, { by: 'hanging' }),
    formula('u_t = e * (cos(theta_t) - cos(theta_0))', 'Gap closed since first touch', length.mm, bush, { by: 'bush' }),
    formula('N = c_w * u_t', 'Preload carried', force.N, derived('stiffness times gap closed, an estimate'), {
      by: 'bush',
    }),
    formula('N_s = N + F_g', 'Standing load of the fullest wheel', force.N, statics),
    formula('Q = N_s / (2 * sin(beta))', 'Load of one flank', force.N, wedge),
    formula('R_n = r_w / sin(beta)', 'Radius of the flank as it rolls', length.mm, derived('cone: Meusnier’s theorem')),
    formula('E_s = 1 / ((1 - nu_w^2) / E_w + (1 - nu_r^2) / E_r)', 'Contact modulus', pressure.GPa, hertzModulus),
    formula('b = sqrt(4 * Q * R_n / (pi * l_f * E_s))', 'Half width of the contact', length.mm, hertzLine, {
      contact: 'line',
    }),
    formula('p_0 = 2 * Q / (pi * b * l_f)', 'Contact pressure, greatest', pressure.MPa, hertzLine, { contact: 'line' }),
    formula('Q_max = pi * R_n * l_f * p_lim^2 / E_s', 'Flank load at the allowable pressure', force.N, hertzLine, {
      contact: 'line',
    }),
    formula('R_e = (2 * R_n^2 * r_e^2 / (R_n + r_e))^(1 / 3)', 'Equivalent radius', length.mm, ellipse, {
      contact: 'edge',
    }),
    formula('a_c = (3 * Q * R_e / (4 * E_s))^(1 / 3)', 'Mean radius of the contact', length.mm, hertzPoint, {
      contact: 'edge',
    }),
    formula('p_0 = 3 * Q / (2 * pi * a_c^2)', 'Contact pressure, greatest', pressure.MPa, hertzPoint, {
      contact: 'edge',
    }),
    formula(
      'Q_max = pi^3 * R_e^2 * p_lim^3 / (6 * E_s^2)',
      'Flank load at the allowable pressure',
      force.N,
      hertzPoint,
      { contact: 'edge' },
    ),
    formula('N_max = 2 * sin(beta) * Q_max - F_g', 'Most preload', force.N, wedge),
    formula(
      'N_aim = sqrt(N_min * N_max)',
      'Preload to aim at',
      force.N,
      derived('equal ratio to the least and to the most'),
    ),
    formula('du = (N_aim - N) / c_w', 'Gap still to close', length.mm, derived('force over stiffness, an estimate')),
    formula('theta_n = acos(cos(theta_0) - du / e)', 'Bush angle for it', angle.deg, bush),
    formula('dtheta = theta_n - theta_0', 'Turn of the bush, estimate', angle.deg, bush),
    formula('x = e * (1 - cos(theta_0))', 'Gap closed from fully retracted', length.mm, bush),
    formula('u_1 = e * sin(theta_0) * rev / 360', 'Gap closed by one degree here', length.um, bush),
    formula('q = sin(theta_0)', 'Share of the best gain, which is at 90°', ratio.percent, bush),
    formula('u = e * (cos(theta_0) - cos(theta))', 'Gap closed at the angle to try', length.mm, bush),
    formula(
      'N_1 = N + c_w * u',
      'Preload to expect there',
      force.N,
      derived('stiffness times gap closed, an estimate'),
    ),
    formula('F_1 = mu * N_1 / sin(beta)', 'Slip force to expect there', force.N, wedge, { by: ['slip', 'bush'] }),
    formula('F_1 = mu * (N_1 - F_g) / sin(beta)', 'Slip force to expect there', force.N, wedge, { by: 'hanging' }),
    formula(
      'F_r = c_rr * N',
      'Rolling drag of a wheel',
      force.N,
      derived('definition of the rolling friction coefficient'),
    ),
    formula('y = j * R / s', 'Sag at the reach', length.mm, derived('similar triangles')),
  ],
  limits: [
    // N ≤ N_max is p_0 ≤ p_lim solved for the preload; in this form a wheel that spins freely still has a verdict.
    { of: 'N', min: 'N_min', max: 'N_max', label: 'Preload between lifting off and flat spots', cite: commonPractice },
    { of: 'N_min', max: 'N_max', label: 'Room between holding and marking', cite: commonPractice },
  ],
  action: instruct,
  proof:
    'Slip test again at five places along the rail, both ends and the middle: every wheel must just slip under the finger and none spin freely. Rock the carriage at the end of its reach: no click, no play. Leave it standing overnight, then roll it by hand: a bump once per turn of a wheel is a flat spot, so take preload off.',
  beware: [
    'The moment is held over the spacing along the rail, so it must lie in the plane of the wheels, as that of an arm on an upright rail does. A mass in front of a level rail turns about the rail itself, which is held across the rail: that is not in the sum.',
    'Plastics creep: the preload falls and the flats grow in the first days. Test again after a night and after a week.',
    'A new wheel on a sharp rail edge is marked by almost any load; the mark widens until the flank lies along it. Then take the width of the band and reckon with a line.',
    'The friction coefficient is the weakest number here: grease or dust on the rail spoils the slip test. Wipe rail and wheels first.',
    'Where the wheels face each other two against one, the single wheel carries twice what each of the two carries: test all, judge lifting by the loosest and pressure by the tightest.',
    'A bush near 0° or 180° hardly moves the wheel, and small angle errors then count by their square.',
  ],
  examples,
});
