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
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula, type LimitSpec } from '../../engine/calculator';

const INCROPERA = 'Incropera, Fundamentals of Heat and Mass Transfer';
const lumped = cite(INCROPERA, 'ch. 5, lumped capacitance', true);
const radiation = cite(INCROPERA, 'ch. 1: q = ε σ A (T⁴ − T_a⁴)', true);
const balance = derived('heat stored = heater’s power less losses');
const quartic = cite('Abramowitz and Stegun, Handbook of Mathematical Functions', '3.8.3, x⁴ + βx = 1', true);
const held = { loss: 'held' };
const cooling = { loss: 'cooling' };
const unmeasured = { loss: ['surface', 'held', 'cooling'] };

export const formulas = [
  formula('P = V^2 / R_h', 'Heater’s power, fully on', power.W, derived('Ohm’s law')),
  formula('A = 2 * (a_1 * a_2 + a_1 * a_3 + a_2 * a_3)', 'Surface of the block', area.mm2, derived('six faces')),
  formula(
    'g_w = epsilon * sigma_SB * A * (T_w^2 + T_a^2) * (T_w + T_a)',
    'Radiation per kelvin, working',
    heatConductance.W_K,
    radiation,
  ),
  formula('C = m_b * c_b + m_x * c_x', 'Heat capacity', heatCapacity.J_K, derived('mass × specific heat'), unmeasured),
  formula(
    'g_m = 4 * epsilon * sigma_SB * A * T_m^3',
    'Radiation: slope in the middle of the curve',
    heatConductance.W_K,
    radiation,
    { loss: 'heating' },
  ),
  formula(
    'C = (P + g_m * (T_m - T_a) - epsilon * sigma_SB * A * (T_m^4 - T_a^4)) / (r_m + k * (T_m - T_a))',
    'Heat capacity, from the heating curve',
    heatCapacity.J_K,
    balance,
    { loss: 'heating' },
  ),
  formula('G_c = h_c * A + G_x', 'Loss per kelvin without radiation', heatConductance.W_K, lumped, { loss: 'surface' }),
  formula('G_w = D_h * P / (T_w - T_a)', 'Loss per kelvin, working', heatConductance.W_K, balance, held),
  formula('G_c = G_w - g_w', 'Loss per kelvin without radiation', heatConductance.W_K, balance, {
    loss: ['held', 'heating', 'cooling'],
  }),
  formula('G_w = k * C + (g_w - g_m)', 'Loss per kelvin, working', heatConductance.W_K, balance, { loss: 'heating' }),
  formula(
    'g_m = epsilon * sigma_SB * A * (T_m^2 + T_a^2) * (T_m + T_a)',
    'Radiation per kelvin in the middle of the curve',
    heatConductance.W_K,
    radiation,
    cooling,
  ),
  formula(
    'G_w = C * r_m / (T_a - T_m) + (g_w - g_m)',
    'Loss per kelvin, working',
    heatConductance.W_K,
    balance,
    cooling,
  ),
  formula('G_w = G_c + g_w', 'Loss per kelvin, working', heatConductance.W_K, derived('sum of the losses'), {
    loss: 'surface',
  }),
  formula('tau = C / G_w', 'Time constant', time.s, lumped),
  formula('T_l = T_a + P / G_w', 'Where the working curve heads for', temperature.C, lumped),
  formula(
    't_w = -tau * ln(1 - (T_w - T_a) / (T_l - T_a))',
    'From cold to the working temperature, fully on',
    time.s,
    lumped,
  ),

  formula('t_d = t_s * ln((T_w - T_a) / (T_w - T_a - H))', 'Sensor fallen out: until it reads too low', time.s, lumped),
  formula('t_x = t_d + W', 'Sensor fallen out: until the watchdog acts', time.s, derived('its window runs from there')),
  formula(
    'T_x = T_l - (T_l - T_w) * exp(-t_x / tau)',
    'Sensor fallen out: block when the watchdog acts',
    temperature.C,
    lumped,
  ),
  formula(
    'dT_W = W * (T_l - T_w) / tau',
    'Healthy: rise in one window, at its slowest',
    temperatureDifference.K,
    lumped,
  ),
  formula('H_m = f_H * H', 'Rise wanted in one window', temperatureDifference.K, commonPractice),
  formula(
    'T_c = T_l - (T_l - T_a) * exp(-t_max / tau)',
    'Cold test, sensor out: block at the pass mark',
    temperature.C,
    lumped,
  ),

  formula(
    'T_r = ((P + G_c * T_a) / (epsilon * sigma_SB * A) + T_a^4)^(1 / 4)',
    'Stuck on: scale of the balance',
    temperature.K,
    balance,
  ),
  formula('beta = G_c / (epsilon * sigma_SB * A * T_r^3)', 'Stuck on: other losses over radiation', ratio.one, balance),
  formula(
    'w = (beta^2 / 2 + sqrt(beta^4 / 4 + 64 / 27))^(1 / 3)',
    'Stuck on: helper of the root of x⁴ + βx = 1',
    ratio.one,
    quartic,
  ),
  formula('u = beta^2 / (w^2 + 16 / (9 * w^2) + 4 / 3)', 'Stuck on: its second helper', ratio.one, quartic),
  formula(
    'T_e = T_r * 4 * sqrt(u) / ((beta + u * sqrt(u)) * (sqrt(2 * beta / sqrt(u) - u) + sqrt(u)))',
    'Heater stuck on: temperature in the end',
    temperature.C,
    quartic,
  ),
  formula('T_u = T_e', 'Hottest that a stuck heater gets', temperature.C, derived('nothing stops it'), {
    cutoff: 'none',
  }),
  formula(
    'T_u = T_f',
    'Hottest that a stuck heater gets',
    temperature.C,
    derived('the cut-off opens then, if the heater gets there at all'),
    { cutoff: 'fitted' },
  ),
  formula('T_p = min(T_li, T_se)', 'What the weakest part stands', temperature.C, derived('the lower of the two'), {
    liner: 'ptfe',
  }),
  formula('T_p = min(T_bl, T_se)', 'What the weakest part stands', temperature.C, derived('the lower of the two'), {
    liner: 'none',
  }),
  formula(
    't_p = tau * ln((T_l - T_w) / (T_l - T_p))',
    'Stuck on: from working to what the weakest part stands',
    time.s,
    lumped,
  ),
  formula('T_fw = T_w + dT_f', 'Least opening temperature of the cut-off', temperature.C, commonPractice, {
    cutoff: 'fitted',
  }),
] as const;

const melting = cite('Tables of materials', 'melting point, solidus of an alloy; src/reference/materials.ts', true);

export const limits = [
  { of: 't_x', max: 't_max', label: 'Fallen sensor: the watchdog is quick enough', cite: commonPractice },
  { of: 'T_x', max: 'T_p', label: 'Fallen sensor: block when the watchdog acts', cite: commonPractice },
  { of: 'dT_W', min: 'H_m', label: 'Healthy heater: no false alarm', cite: commonPractice },
  { of: 'T_u', max: 'T_li', label: 'Stuck on: the liner', cite: commonPractice, when: { liner: 'ptfe' } },
  { of: 'T_u', max: 'T_se', label: 'Stuck on: the sensor', cite: commonPractice },
  { of: 'T_u', max: 'T_bl', label: 'Stuck on: the block', cite: melting },
  { of: 'T_u', max: 'T_no', label: 'Stuck on: the nozzle', cite: melting },
  { of: 'T_f', min: 'T_fw', label: 'Cut-off above the working heat', cite: commonPractice, when: { cutoff: 'fitted' } },
] as const satisfies readonly LimitSpec[];
