import { angle, count, length, ratio, torque } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { cite, derived, formula } from '../../engine/calculator';

const lead = cite('ISO 5408:2009', 'powerScrewsLead', true);
const pitchOfTurn = cite('ISO 5296:2012', 'pitchGeometryTurn', true);
const steppers = cite('IEC 60034-20-1:2002', 'stepAngleSubdivision', true);
const sineTorque = derived('torqueHoldingTorque');
const wholeSteps = derived('layerEitherWhole');

/** Steps of the drive, what rounding to them leaves of a layer, and what friction does to single microsteps. */
export const formulas = [
  formula('q = P_h * theta_s / rev / i_g', length.mm, lead, { lift: 'screw' }),
  formula('q = p * z * theta_s / rev / i_g', length.mm, pitchOfTurn, { lift: 'belt' }),
  formula('q_m = q / m', length.mm, steppers),
  formula('g = q', length.mm, derived('positionHeldFull'), {
    grid: 'full',
  }),
  formula('g = q_m', length.mm, derived('positionHeldMicrosteps'), {
    grid: 'micro',
  }),
  formula('n = h / g', ratio.one, derived('heightOverHeight')),
  formula('n_f = floor(n)', count.one, wholeSteps),
  formula('n_c = ceil(n)', count.one, wholeSteps),
  formula('h_f = n_f * g', length.mm, wholeSteps),
  formula('h_c = n_c * g', length.mm, wholeSteps),
  formula('e = max(h - h_f, h_c - h)', length.um, derived('betweenWholeSteps')),
  formula('s = e / h', ratio.percent, derived('errorOverLayer')),
  formula('r = g / 2', length.um, derived('roundingNearestStep')),
  formula('tau_inc = tau_h * sin(right_angle / m)', torque.N_mm, sineTorque),
  formula('delta = asin(tau_f / tau_h)', angle.deg, sineTorque),
  formula('m_f = m * delta / right_angle', ratio.one, sineTorque),
  formula('x_f = q * delta / right_angle', length.um, sineTorque),
  formula('x_a = a * q', length.um, derived('shareFullStep')),
  formula('e_lim = k * h', length.um, commonPractice),
] as const;
