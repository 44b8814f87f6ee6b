import { diffusivity, humidity, length, pressure, ratio, temperature, time } from '../../quantity/kinds';
import { magnus, saturated } from '../../reference/air';
import { formula, cite, derived } from '../../engine/calculator';

const WORK_CRANK = 'Crank, The Mathematics of Diffusion, 2nd edition (1975)';
const series = cite(WORK_CRANK, 'equationCylinderConstant', true);
const shortTime = cite(WORK_CRANK, 'equationSmallTimes', true);
const arrhenius = derived('arrhenius');
const larger = derived('bothLeavePositive');
const inverse = derived('firstTermsSeries');
const sameVapour = derived('heatingAddsWater');
const henry = derived('waterProportionHumidity');
const balance = derived('balanceWater');

const dry = { ask: 'dry' };
const oven = { ask: ['dry', 'weigh'] };
const store = { ask: 'store' };
const weigh = { ask: 'weigh' };

export const formulas = [
  formula('D = D_1 * 10^b * exp(E_a / R_gas * (1 / T_1 - 1 / T_b))', diffusivity.um2_s, arrhenius, oven),
  formula('D = D_1 * 10^b * exp(E_a / R_gas * (1 / T_1 - 1 / T))', diffusivity.um2_s, arrhenius, store),
  formula('a = d_f / 2', length.mm, derived('halfDiameter')),

  formula(saturated('e_w', 'T'), pressure.hPa, magnus, oven),
  formula(saturated('e_b', 'T_b'), pressure.hPa, magnus, oven),
  formula('U_b = U * e_w / e_b', humidity.percent, sameVapour, oven),

  formula('x_1 = ln(0.69166 / q) / 5.783186', ratio.one, series, dry),
  formula('x_q = ln(0.69166 / (q - 0.131271 * exp(-30.471262 * x_1))) / 5.783186', ratio.one, inverse, dry),
  formula('t_q = k_s * x_q * a^2 / D', time.h, derived('xDT'), dry),
  formula('u_e = U_b / U_0', ratio.percent, henry, dry),
  formula('Q = u_e + (1 - u_e) * q', ratio.percent, balance, dry),
  formula('W_e = W_s * U_0 * Q', ratio.percent, henry, dry),
  formula('T_max = T_g - m_T', temperature.C, derived('marginBelowSoftening')),

  formula('x = D * t / (k_s * a^2)', ratio.one, series, oven),
  formula('x = D * t_o / (k_s * a^2)', ratio.one, series, store),
  formula('x_l = min(max(x, 0), 3)', ratio.one, derived('seriesPartFifty')),
  formula(
    'q_l = 0.69166 * exp(-5.783186 * x_l) + 0.131271 * exp(-30.471262 * x_l) + 0.053414 * exp(-74.887007 * x_l) + 0.028769 * exp(-139.040284 * x_l)',
    ratio.percent,
    series,
  ),
  formula('x_s = min(x, 0.7)', ratio.one, shortTime),
  formula('q_s = 1 - 4 * sqrt(x_s / pi) + x_s + x_s^1.5 / (3 * sqrt(pi))', ratio.percent, shortTime),
  formula('q_t = max(q_l, q_s)', ratio.percent, larger),

  formula('W_o = W_s * U * (1 - q_t)', ratio.percent, henry, store),

  formula('w_l = (m_1 - m_2) / (m_2 - m_s)', ratio.percent, derived('weighed'), weigh),
  formula('W_x = w_l / (1 - q_t)', ratio.percent, balance, weigh),
  formula('W_2 = W_s * U_b + W_x * q_t', ratio.percent, balance, weigh),
  formula('W_0 = W_2 + w_l', ratio.percent, balance, weigh),
] as const;
