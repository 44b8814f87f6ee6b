import { current, expansion, power, ratio, resistance, temperature, temperatureDifference } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { formula, cite, derived } from '../../engine/calculator';
import type { LimitData } from '../../engine/spec';

const sensor = { what: 'sensor' };
const ohms = { what: 'sensor', by: 'ohms' };
const shown = { what: 'sensor', by: 'shown' };
const beta = { what: 'sensor', law: 'beta' };
const three = { what: 'sensor', law: 'three' };
const platinum = { what: 'sensor', law: ['pt100', 'pt1000'] };
const heater = { what: 'heater' };

const iec = cite('IEC 60539-1:2016', 'lawOfB', true);
const steinhart = cite(
  'Steinhart and Hart, Calibration curves for thermistors, Deep-Sea Research 15 (1968) 497',
  'steinhartHart',
  true,
);
const solved = derived('eliminated');
const back = derived('newton');
const ohm = derived('ohmsLaw');
const iec751 = cite('IEC 60751:2022', 'callendar', true);
const moved = derived('boundsMove');
const carried = derived('ratioCarried');

export const formulas = [
  formula('L_1 = ln(R_1 / one_ohm)', ratio.one, steinhart, three),
  formula('L_2 = ln(R_2 / one_ohm)', ratio.one, steinhart, three),
  formula('L_3 = ln(R_3 / one_ohm)', ratio.one, steinhart, three),
  formula('D_2 = (1 / T_2 - 1 / T_1) / (L_2 - L_1)', expansion.per_K, solved, three),
  formula('D_3 = (1 / T_3 - 1 / T_1) / (L_3 - L_1)', expansion.per_K, solved, three),
  formula('c_S = (D_3 - D_2) / ((L_3 - L_2) * (L_1 + L_2 + L_3))', expansion.per_K, solved, three),
  formula('b_S = D_2 - c_S * (L_1^2 + L_1 * L_2 + L_2^2)', expansion.per_K, solved, three),
  formula('a_S = 1 / T_1 - L_1 * (b_S + L_1^2 * c_S)', expansion.per_K, solved, three),

  formula('y_s = 1 / T_n + ln(R_m / R_n) / B', expansion.per_K, iec, {
    ...ohms,
    law: 'beta',
  }),
  formula('y_s = a_S + ln(R_m / one_ohm) * (b_S + ln(R_m / one_ohm)^2 * c_S)', expansion.per_K, steinhart, {
    ...ohms,
    law: 'three',
  }),
  formula(
    'T_s = T_a * exp(-ln(y_s * T_a))',
    temperature.C,
    derived('oneOver'),
    { ...ohms, law: ['beta', 'three'] },
    'T_s_ohms',
  ),
  formula(
    'T_s = zero_C + (sqrt(pt_A^2 - 4 * pt_B * (1 - R_m / R_0)) - pt_A) / (2 * pt_B)',
    temperature.C,
    iec751,
    { ...ohms, law: ['pt100', 'pt1000'] },
    'T_s_ohms',
  ),
  formula('T_s = T_r', temperature.C, derived('shown'), shown, 'T_s_shown'),
  formula('dT_s = T_s - T_a', temperatureDifference.K, derived('difference'), sensor),
  formula('dT_h = T_h - T_r', temperatureDifference.K, derived('difference'), shown),

  formula('R_e = R_n * exp(B * (1 / T_a - 1 / T_n))', resistance.kohm, iec, beta),
  formula('R_w = R_n * exp(B * (1 / T_w - 1 / T_n))', resistance.kohm, iec, beta),
  formula('E_2 = (L_2 - L_1) / (T_1 / T_2 - 1)', ratio.one, back, three),
  formula('E_3 = ((L_3 - L_2) / (T_1 / T_3 - T_1 / T_2) - E_2) / (T_1 / T_3 - 1)', ratio.one, back, three),
  formula(
    'R_e = one_ohm * exp(L_1 + (T_1 / T_a - 1) * (E_2 + (T_1 / T_a - T_1 / T_2) * E_3))',
    resistance.kohm,
    back,
    three,
  ),
  formula(
    'R_w = one_ohm * exp(L_1 + (T_1 / T_w - 1) * (E_2 + (T_1 / T_w - T_1 / T_2) * E_3))',
    resistance.kohm,
    back,
    three,
  ),
  formula(
    'R_e = R_0 * (1 + pt_A * (T_a - zero_C) + pt_B * (T_a - zero_C)^2 + pt_C * (T_a - zero_C - pt_T) * min(T_a - zero_C, 0 * T_a)^3)',
    resistance.kohm,
    iec751,
    platinum,
  ),
  formula('R_w = R_0 * (1 + pt_A * (T_w - zero_C) + pt_B * (T_w - zero_C)^2)', resistance.kohm, iec751, platinum),
  formula('R_top = max(R_hi, 3 * R_e)', resistance.kohm, moved, ohms),
  formula('R_low = min(R_lo, R_e / 3)', resistance.kohm, moved, ohms),
  formula('T_top = max(T_hi, T_a + 2 * dT_max)', temperature.C, moved, shown),
  formula('T_low = min(T_lo, T_a - 2 * dT_max)', temperature.C, moved, shown),
  formula('alpha_w = -B / T_w^2', expansion.per_K, cite('IEC 60539-1:2016', 'slopeOfB', true), beta),
  formula('dT_B = 1 / (1 / T_n + (1 + delta_B) * (1 / T_w - 1 / T_n)) - T_w', temperatureDifference.K, iec, beta),
  formula('q = R_m / R_e', ratio.one, derived('oneOverOther'), ohms, 'q_ohms'),
  formula(
    'q = exp(B * (1 / T_r - 1 / T_a))',
    ratio.one,
    iec,
    {
      ...shown,
      law: 'beta',
    },
    'q_shown',
  ),
  formula(
    'R_s = one_ohm * exp(L_1 + (T_1 / T_r - 1) * (E_2 + (T_1 / T_r - T_1 / T_2) * E_3))',
    resistance.kohm,
    back,
    { ...shown, law: 'three' },
    'R_s_shown',
  ),
  formula(
    'R_s = R_0 * (1 + pt_A * (T_r - zero_C) + pt_B * (T_r - zero_C)^2 + pt_C * (T_r - zero_C - pt_T) * min(T_r - zero_C, 0 * T_r)^3)',
    resistance.kohm,
    iec751,
    { ...shown, law: ['pt100', 'pt1000'] },
    'R_s_shown',
  ),
  formula(
    'q = R_s / R_e',
    ratio.one,
    derived('oneOverOther'),
    { ...shown, law: ['three', 'pt100', 'pt1000'] },
    'q_shown',
  ),
  formula('dT_R = T_w - 1 / (1 / T_w - ln(q) / B)', temperatureDifference.K, carried, beta),
  formula(
    'dT_R = T_w - 1 / (a_S + ln(R_w / (q * one_ohm)) * (b_S + ln(R_w / (q * one_ohm))^2 * c_S))',
    temperatureDifference.K,
    carried,
    three,
  ),
  formula(
    'dT_R = T_w - zero_C - (sqrt(pt_A^2 - 4 * pt_B * (1 - R_w / (q * R_0))) - pt_A) / (2 * pt_B)',
    temperatureDifference.K,
    carried,
    platinum,
  ),

  formula('P = V^2 / R_h', power.W, ohm, heater),
  formula('I = V / R_h', current.A, ohm, heater),
  formula('R_x = V_r^2 / P_r', resistance.ohm, ohm, heater),
  formula('k_P = P / P_r', ratio.one, derived('oneOverOther'), heater),
] as const;

export const limits = [
  {
    of: 'dT_s',
    max: 'dT_max',
    symmetric: true,
    cite: commonPractice,
    when: sensor,
  },
  // Where what is read agrees with the room, the bounds stand aside: a large sensor in a cold garage is no broken wire.
  { of: 'R_m', min: 'R_low', max: 'R_top', cite: commonPractice, when: ohms },
  { of: 'T_r', min: 'T_low', max: 'T_top', cite: commonPractice, when: shown },
  // A screen clears nothing unless it was seen to follow.
  { of: 'dT_h', min: 'dT_f', cite: commonPractice, when: shown },
  { of: 'k_P', min: 'k_lo', max: 'k_hi', cite: commonPractice, when: heater },
] as const satisfies readonly LimitData[];
