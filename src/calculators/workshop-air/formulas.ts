import {
  humidity,
  length,
  pressure,
  ratio,
  temperature,
  temperatureDifference,
  vapourDensity,
} from '../../quantity/kinds';
import { defineKind } from '../../quantity/unit';
import { magnus, saturated } from '../../reference/air';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

/** Water for each mass of dry air. */
const humidityRatio = defineKind('humidity ratio', [0, 0, 0, 0, 0], { g_kg: { label: 'g/kg', factor: 1e-3 } });

const ashrae = cite('ASHRAE Handbook, Fundamentals', 'chapter 1, psychrometrics', true);
const sameVapour = derived('heating adds no water: the vapour pressure stays');
const inverse = derived('Magnus’s formula solved for the temperature');
const grows = cite('Machinery’s Handbook', 'linear expansion: length × coefficient × change of temperature', true);
const chain = derived(
  'lengths from the held end up to the nozzle less those up to the bed; both ways are equally long',
);

const air = { ask: ['cold', 'box'] };
const cold = { ask: 'cold' };
const box = { ask: 'box' };
const swing = { ask: 'swing' };
const kept = { ask: 'swing', zero: 'kept' };
const GAP = 'Growth of the gap under the nozzle';
const REST = 'Growth of the rest';

export const formulas = [
  formula(saturated('e_w', 'T'), 'Vapour pressure of saturated air', pressure.hPa, magnus, air),
  formula('e = U * e_w', 'Vapour pressure', pressure.hPa, derived('definition of relative humidity'), air),
  formula('gamma = ln(e / magnus_e)', 'Logarithm of the vapour pressure', ratio.one, inverse, air),
  formula('T_d = zero_C + magnus_T * gamma / (17.62 - gamma)', 'Dew point', temperature.C, inverse, air),
  formula('rho_v = e / (R_v * T)', 'Absolute humidity', vapourDensity.g_m3, ashrae, air),
  formula('w = 0.622 * e / (p - e)', 'Water to dry air', humidityRatio.g_kg, ashrae, air),

  formula('dT_d = T_s - T_d', 'Surface above the dew point', temperatureDifference.K, derived('difference'), cold),
  formula(saturated('e_s', 'T_s'), 'Vapour pressure saturated at the surface', pressure.hPa, magnus, cold),
  formula('U_s = e / e_s', 'Relative humidity at the surface', humidity.percent, sameVapour, cold),
  formula('T_o = T_d + m_d', 'Surface temperature to wait for', temperature.C, derived('dew point and margin'), cold),

  formula(saturated('e_b', 'T_b'), 'Vapour pressure saturated in the box', pressure.hPa, magnus, box),
  formula('U_b = e / e_b', 'Relative humidity in the box', humidity.percent, sameVapour, box),
  formula(
    'gamma_b = ln(e / (U_lim * magnus_e))',
    'Logarithm of the saturation pressure needed',
    ratio.one,
    inverse,
    box,
  ),
  formula(
    'T_o = zero_C + magnus_T * gamma_b / (17.62 - gamma_b)',
    'Box temperature that is enough',
    temperature.C,
    inverse,
    box,
  ),

  formula('dT = T_2 - T_1', 'Swing', temperatureDifference.K, derived('difference'), swing),
  formula('dl_s = alpha_s * l_s * dT', 'Growth of the screw', length.mm, grows, kept),
  formula('dl_f = alpha_f * l_f * dT', 'Growth of the frame', length.mm, grows, swing),
  formula('dl_r = alpha_r * (l_s - l_f) * dT', REST, length.mm, grows, kept),
  formula('dl_r = alpha_r * l_f * dT', REST, length.mm, grows, { ask: 'swing', zero: 'switch' }),
  formula('dg = dl_s - dl_f - dl_r', GAP, length.mm, chain, { ...kept, lift: ['nozzle-foot', 'bed-head'] }),
  formula('dg = dl_f + dl_r - dl_s', GAP, length.mm, chain, { ...kept, lift: ['nozzle-head', 'bed-foot'] }),
  formula('dg = dl_f - dl_r', GAP, length.mm, chain, { ask: 'swing', zero: 'switch' }),
  formula('dg_lim = q_1 * h_1', 'Allowed change of the gap', length.mm, commonPractice, swing),
];
