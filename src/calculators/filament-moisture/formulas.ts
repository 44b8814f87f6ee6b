import { diffusivity, humidity, length, pressure, ratio, temperature, time } from '../../quantity/kinds';
import { magnus, saturated } from '../../reference/air';
import { cite, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const CRANK = 'Crank, The Mathematics of Diffusion (2nd edition)';
const series = cite(CRANK, 'equation 5.23, cylinder with constant surface: Σ 4/α² · e^(−α² x), J₀(α) = 0', true);
const shortTime = cite(CRANK, 'equation 5.25, small times', true);
const arrhenius = cite(CRANK, 'chapter 12, temperature', true);
const larger = derived('both leave positive terms out, so the larger is the nearer: within 0.0001 of the whole series');
const inverse = derived('first two terms of the series solved for x by one step: within 0.02 % up to a share of 30 %');
const sameVapour = derived('heating adds no water: the vapour pressure stays');
const henry = derived('water in proportion to the humidity, a straight sorption line');
const balance = derived('balance of water');

const dry = { ask: 'dry' };
const oven = { ask: ['dry', 'weigh'] };
const store = { ask: 'store' };
const weigh = { ask: 'weigh' };
const RATE = 'Diffusion coefficient at this temperature';
const SCALED = 'Time against the strand’s thickness';

export const formulas = [
  formula('D = D_1 * 10^b * exp(E_a / R_gas * (1 / T_1 - 1 / T_b))', RATE, diffusivity.um2_s, arrhenius, oven),
  formula('D = D_1 * 10^b * exp(E_a / R_gas * (1 / T_1 - 1 / T))', RATE, diffusivity.um2_s, arrhenius, store),
  formula('a = d_f / 2', 'Radius of the strand', length.mm, derived('half the diameter')),

  formula(saturated('e_w', 'T'), 'Vapour pressure of saturated air in the room', pressure.hPa, magnus, oven),
  formula(saturated('e_b', 'T_b'), 'Vapour pressure saturated in the oven', pressure.hPa, magnus, oven),
  formula('U_b = U * e_w / e_b', 'Relative humidity in the oven', humidity.percent, sameVapour, oven),

  formula('x_1 = ln(0.69166 / q) / 5.783186', 'By the first term of the series', ratio.one, series, dry),
  formula(
    'x_q = ln(0.69166 / (q - 0.131271 * exp(-30.471262 * x_1))) / 5.783186',
    'Scaled time needed',
    ratio.one,
    inverse,
    dry,
  ),
  formula('t_q = k_s * x_q * a^2 / D', 'Time needed', time.h, derived('x = D t / a²'), dry),
  formula('u_e = U_b / U_0', 'Share that the oven’s air holds in it', ratio.percent, henry, dry),
  formula('Q = u_e + (1 - u_e) * q', 'Share of its water left in the end', ratio.percent, balance, dry),
  formula('W_e = W_s * U_0 * Q', 'Water left in the end, of the dry mass', ratio.percent, henry, dry),
  formula('T_max = T_g - m_T', 'Hottest it may dry', temperature.C, derived('margin below softening'), dry),

  formula('x = D * t / (k_s * a^2)', SCALED, ratio.one, series, oven),
  formula('x = D * t_o / (k_s * a^2)', SCALED, ratio.one, series, store),
  formula(
    'x_l = min(max(x, 0), 3)',
    'The same, from nothing to where all is done',
    ratio.one,
    derived('the series at 3: a part in fifty million is still to go'),
  ),
  formula(
    'q_l = 0.69166 * exp(-5.783186 * x_l) + 0.131271 * exp(-30.471262 * x_l) + 0.053414 * exp(-74.887007 * x_l) + 0.028769 * exp(-139.040284 * x_l)',
    'Share still to go, long times',
    ratio.percent,
    series,
  ),
  formula('x_s = min(x, 0.7)', 'The same, as far as the short-time form goes', ratio.one, shortTime),
  formula(
    'q_s = 1 - 4 * sqrt(x_s / pi) + x_s + x_s^1.5 / (3 * sqrt(pi))',
    'Share still to go, short times',
    ratio.percent,
    shortTime,
  ),
  formula('q_t = max(q_l, q_s)', 'Share still to go after this time', ratio.percent, larger),

  formula('W_o = W_s * U * (1 - q_t)', 'Water taken up, of the dry mass', ratio.percent, henry, store),

  formula('w_l = (m_1 - m_2) / (m_2 - m_s)', 'Mass lost, of the dried mass', ratio.percent, derived('weighed'), weigh),
  formula('W_x = w_l / (1 - q_t)', 'Water that the oven could take out', ratio.percent, balance, weigh),
  formula('W_2 = W_s * U_b + W_x * q_t', 'Water still in it, of the dry mass', ratio.percent, balance, weigh),
  formula('W_0 = W_2 + w_l', 'Water it had before', ratio.percent, balance, weigh),
];
