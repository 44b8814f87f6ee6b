import { angle, count, length, ratio, slope } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { cite, derived, formula } from '../../engine/calculator';

const pitchOfTurn = cite('ISO 5296:2012', 'pitchGeometryTooth', true);
const lead = cite('ISO 5408:2009', 'powerScrewsLead', true);

export const formulas = [
  formula('h_t = P_h / z', length.mm, pitchOfTurn, { drive: 'belt' }, 'h_t_belt'),
  formula('h_t = P_h * theta_s / rev', length.mm, lead, { drive: 'motors' }, 'h_t_motors'),
  formula('dh_s = dh * S / S_m', length.mm, derived('similarTriangles'), {
    by: 'heights',
  }),
  formula('dh_s = (i_g - i_f) * S', length.mm, derived('riseSlopeRun'), { by: 'level' }),
  formula('n = dh_s / h_t', ratio.one, derived('heightOverHeight')),
  formula('n_w = round(n)', count.one, derived('nearestWholeNumber')),
  formula('r = dh_s - n_w * h_t', length.mm, derived('wholeTeethSteps')),
  formula('phi = rev * r / P_h', angle.deg, lead),
  formula('psi = rev * dh_s / P_h', angle.deg, lead),
  formula('i = dh_s / S', slope.mm_m, derived('riseOverRun')),
  formula('alpha = atan(i)', angle.deg, derived('riseOverRun')),
  formula('dh_bed = dh_s * W / S', length.mm, derived('similarTriangles')),
  formula('dh_lim = k_1 * h_1', length.mm, commonPractice),
] as const;
