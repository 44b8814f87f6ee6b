import {
  humidity,
  humidityRatio,
  length,
  pressure,
  ratio,
  temperature,
  temperatureDifference,
  vapourDensity,
} from '../../quantity/kinds';
import { magnus, saturated } from '../../reference/air';
import { commonPractice } from '../../reference/citation';
import { formula, cite, derived } from '../../engine/calculator';

const ashrae = cite('ASHRAE Handbook, Fundamentals (2017)', 'chapterPsychrometrics', true);
const sameVapour = derived('heatingAddsWater');
const ice = cite('WMO-No. 8, Guide to Instruments (2014)', 'overIce', true);
const inverse = derived('magnussFormulaSolved');
const grows = cite('Machinery’s Handbook, 29th edition (2012)', 'linearExpansionLength', true);
const chain = derived('lengthsHeldEnd');

const air = { ask: ['cold', 'box'] };
const cold = { ask: 'cold' };
const box = { ask: 'box' };
const swing = { ask: 'swing' };
const kept = { ask: 'swing', zero: 'kept' };

export const formulas = [
  formula(saturated('e_w', 'T'), pressure.hPa, magnus, air),
  formula('e = U * e_w', pressure.hPa, derived('definitionRelativeHumidity'), air),
  formula('gamma = ln(e / magnus_e)', ratio.one, inverse, air),
  formula('T_d = zero_C + magnus_T * gamma / (17.62 - gamma)', temperature.C, inverse, air),
  formula('T_i = zero_C + magnus_i * gamma / (22.46 - gamma)', temperature.C, ice, cold),
  formula('T_k = max(T_d, T_i)', temperature.C, derived('frostAboveDew'), cold),
  formula('rho_v = e / (R_v * T)', vapourDensity.g_m3, ashrae, air),
  formula('w = 0.622 * e / (p - e)', humidityRatio.g_kg, ashrae, air),

  formula('dT_d = T_s - T_k', temperatureDifference.K, derived('difference'), cold),
  formula(saturated('e_s', 'T_s'), pressure.hPa, magnus, cold),
  formula('U_s = e / e_s', humidity.percent, sameVapour, cold),
  formula('T_o = T_k + m_d', temperature.C, derived('dewPointMargin'), cold, 'T_o_surface'),

  formula('T_max = T_g - m_T', temperature.C, derived('marginBelowSoftening'), box),
  formula(saturated('e_b', 'T_b'), pressure.hPa, magnus, box),
  formula('U_b = e / e_b', humidity.percent, sameVapour, box),
  formula('gamma_b = ln(e / (U_lim * magnus_e))', ratio.one, inverse, box),
  formula('T_o = zero_C + magnus_T * gamma_b / (17.62 - gamma_b)', temperature.C, inverse, box, 'T_o_box'),

  formula('dT = T_2 - T_1', temperatureDifference.K, derived('difference'), swing),
  formula('dl_s = alpha_s * l_s * dT', length.mm, grows, kept),
  formula('dl_f = alpha_f * l_f * dT', length.mm, grows, swing),
  formula('dl_r = alpha_r * (l_s - l_f) * dT', length.mm, grows, kept),
  formula('dl_r = alpha_r * l_f * dT', length.mm, grows, { ask: 'swing', zero: 'switch' }),
  formula('dg = dl_s - dl_f - dl_r', length.mm, chain, { ...kept, lift: ['nozzle-foot', 'bed-head'] }),
  formula('dg = dl_f + dl_r - dl_s', length.mm, chain, { ...kept, lift: ['nozzle-head', 'bed-foot'] }),
  formula('dg = dl_f - dl_r', length.mm, chain, { ask: 'swing', zero: 'switch' }),
  formula('dg_lim = q_1 * h_1', length.mm, commonPractice, swing),
] as const;
