import {
  area,
  heatCapacity,
  heatConductance,
  power,
  ratio,
  temperature,
  temperatureDifference,
  time,
} from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { formula, cite, derived } from '../../engine/calculator';
import type { LimitData } from '../../engine/spec';

const WORK_INCROPERA = 'Incropera, Fundamentals of Heat and Mass Transfer, 6th edition (2007)';
const lumped = cite(WORK_INCROPERA, 'lumpedCapacitance', true);
const radiation = cite(WORK_INCROPERA, 'radiation', true);
const balance = derived('heatStoredHeaters');
const quartic = cite('Abramowitz and Stegun, Handbook of Mathematical Functions (1964)', 'quartic', true);
const held = { loss: 'held' };
const cooling = { loss: 'cooling' };
const unmeasured = { loss: ['surface', 'held', 'cooling'] };

export const formulas = [
  formula('P = V^2 / R_h', power.W, derived('ohmsLaw')),
  formula('A = 2 * (a_1 * a_2 + a_1 * a_3 + a_2 * a_3)', area.mm2, derived('sixFaces')),
  formula('g_w = epsilon * sigma_SB * A * (T_w^2 + T_a^2) * (T_w + T_a)', heatConductance.W_K, radiation),
  formula('C = m_b * c_b + m_x * c_x', heatCapacity.J_K, derived('massSpecificHeat'), unmeasured, 'C_mass'),
  formula(
    'g_m = 4 * epsilon * sigma_SB * A * T_m^3',
    heatConductance.W_K,
    radiation,
    { loss: 'heating' },
    'g_m_heating',
  ),
  formula(
    'C = (P + g_m * (T_m - T_a) - epsilon * sigma_SB * A * (T_m^4 - T_a^4)) / (r_m + k * (T_m - T_a))',
    heatCapacity.J_K,
    balance,
    { loss: 'heating' },
    'C_heating',
  ),
  formula('G_c = h_c * A + G_x', heatConductance.W_K, lumped, { loss: 'surface' }),
  formula('G_w = D_h * P / (T_w - T_a)', heatConductance.W_K, balance, held),
  formula('G_c = G_w - g_w', heatConductance.W_K, balance, {
    loss: ['held', 'heating', 'cooling'],
  }),
  formula('G_w = k * C + (g_w - g_m)', heatConductance.W_K, balance, { loss: 'heating' }),
  formula(
    'g_m = epsilon * sigma_SB * A * (T_m^2 + T_a^2) * (T_m + T_a)',
    heatConductance.W_K,
    radiation,
    cooling,
    'g_m_cooling',
  ),
  formula('G_w = C * r_m / (T_a - T_m) + (g_w - g_m)', heatConductance.W_K, balance, cooling),
  formula('G_w = G_c + g_w', heatConductance.W_K, derived('sumLosses'), {
    loss: 'surface',
  }),
  formula('tau = C / G_w', time.s, lumped),
  formula('T_l = T_a + P / G_w', temperature.C, lumped),
  formula('t_w = -tau * ln(1 - (T_w - T_a) / (T_l - T_a))', time.s, lumped),

  formula('t_d = t_s * ln((T_w - T_a) / (T_w - T_a - dT_l))', time.s, lumped),
  formula('t_x = t_d + t_g', time.s, derived('timeRunsThere')),
  formula('T_x = T_l - (T_l - T_w) * exp(-t_x / tau)', temperature.C, lumped),
  formula('dT_h = t_g * (T_l - T_w) / tau', temperatureDifference.K, lumped),
  formula('dT_m = f_g * dT_g', temperatureDifference.K, commonPractice),
  formula('T_c = T_l - (T_l - T_a) * exp(-t_max / tau)', temperature.C, lumped),

  formula('T_r = ((P + G_c * T_a) / (epsilon * sigma_SB * A) + T_a^4)^(1 / 4)', temperature.K, balance),
  formula('beta = G_c / (epsilon * sigma_SB * A * T_r^3)', ratio.one, balance),
  formula('w = (beta^2 / 2 + sqrt(beta^4 / 4 + 64 / 27))^(1 / 3)', ratio.one, quartic),
  formula('u = beta^2 / (w^2 + 16 / (9 * w^2) + 4 / 3)', ratio.one, quartic),
  formula(
    'T_e = T_r * 4 * sqrt(u) / ((beta + u * sqrt(u)) * (sqrt(2 * beta / sqrt(u) - u) + sqrt(u)))',
    temperature.C,
    quartic,
  ),
  formula('T_u = T_e', temperature.C, derived('nothingStops'), {
    cutoff: 'none',
  }),
  formula('T_u = T_f', temperature.C, derived('cutOffOpens'), { cutoff: 'fitted' }),
  formula('T_p = min(T_li, T_se)', temperature.C, derived('lowerOfTwo'), {
    liner: 'ptfe',
  }),
  formula('T_p = min(T_bl, T_se)', temperature.C, derived('lowerOfTwo'), {
    liner: 'none',
  }),
  formula('t_p = tau * ln((T_l - T_w) / (T_l - T_p))', time.s, lumped),
  formula('T_fw = T_w + dT_f', temperature.C, commonPractice, {
    cutoff: 'fitted',
  }),
] as const;

const melting = cite('Table of materials in this app', 'meltingPointSolidus');

export const limits = [
  { of: 't_x', max: 't_max', cite: commonPractice },
  { of: 'T_x', max: 'T_p', cite: commonPractice },
  { of: 'dT_h', min: 'dT_m', cite: commonPractice },
  { of: 'T_u', max: 'T_li', cite: commonPractice, when: { liner: 'ptfe' } },
  { of: 'T_u', max: 'T_se', as: 'T_u_sensor', cite: commonPractice },
  { of: 'T_u', max: 'T_bl', as: 'T_u_block', cite: melting },
  { of: 'T_u', max: 'T_no', as: 'T_u_nozzle', cite: melting },
  { of: 'T_f', min: 'T_fw', cite: commonPractice, when: { cutoff: 'fitted' } },
] as const satisfies readonly LimitData[];
