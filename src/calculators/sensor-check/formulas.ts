import { current, expansion, power, ratio, resistance, temperature, temperatureDifference } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula, type LimitSpec } from '../../engine/calculator';

const sensor = { what: 'sensor' };
const ohms = { what: 'sensor', by: 'ohms' };
const shown = { what: 'sensor', by: 'shown' };
const beta = { what: 'sensor', law: 'beta' };
const three = { what: 'sensor', law: 'three' };
const heater = { what: 'heater' };

const iec = cite('IEC 60539-1', 'R = R25 exp(B (1/T − 1/T25))', true);
const steinhart = cite(
  'Steinhart and Hart, Calibration curves for thermistors, Deep-Sea Research 15 (1968)',
  '1/T = a + b ln R + c (ln R)³',
  true,
);
const solved = derived('the equation of Steinhart and Hart at the three lines, eliminated in turn');
const back = derived(
  'Newton’s interpolation of ln R over 1/T through the three lines: within 0.1 K of Steinhart and Hart between them',
);
const ohm = derived('Ohm’s law');

export const formulas = [
  formula('L_1 = ln(R_1 / one_ohm)', 'Logarithm of the first resistance', ratio.one, steinhart, three),
  formula('L_2 = ln(R_2 / one_ohm)', 'Logarithm of the second resistance', ratio.one, steinhart, three),
  formula('L_3 = ln(R_3 / one_ohm)', 'Logarithm of the third resistance', ratio.one, steinhart, three),
  formula('D_2 = (1 / T_2 - 1 / T_1) / (L_2 - L_1)', 'Slope from first to second', expansion.per_K, solved, three),
  formula('D_3 = (1 / T_3 - 1 / T_1) / (L_3 - L_1)', 'Slope from first to third', expansion.per_K, solved, three),
  formula('c_S = (D_3 - D_2) / ((L_3 - L_2) * (L_1 + L_2 + L_3))', 'Third coefficient', expansion.per_K, solved, three),
  formula('b_S = D_2 - c_S * (L_1^2 + L_1 * L_2 + L_2^2)', 'Second coefficient', expansion.per_K, solved, three),
  formula('a_S = 1 / T_1 - L_1 * (b_S + L_1^2 * c_S)', 'First coefficient', expansion.per_K, solved, three),

  formula('y_s = 1 / T_n + ln(R_m / R_n) / B', 'One over the temperature that it means', expansion.per_K, iec, {
    ...ohms,
    law: 'beta',
  }),
  formula(
    'y_s = a_S + ln(R_m / one_ohm) * (b_S + ln(R_m / one_ohm)^2 * c_S)',
    'One over the temperature that it means',
    expansion.per_K,
    steinhart,
    { ...ohms, law: 'three' },
  ),
  formula(
    'T_s = T_a * exp(-ln(y_s * T_a))',
    'Temperature that the resistance means',
    temperature.C,
    derived('one over it; a logarithm, so that a short has no temperature'),
    ohms,
  ),
  formula('T_s = T_r', 'Temperature that it tells', temperature.C, derived('as shown'), shown),
  formula('dT_s = T_s - T_a', 'Sensor less room thermometer', temperatureDifference.K, derived('difference'), sensor),

  formula('R_e = R_n * exp(B * (1 / T_a - 1 / T_n))', 'Resistance due at room temperature', resistance.kohm, iec, beta),
  formula(
    'R_w = R_n * exp(B * (1 / T_w - 1 / T_n))',
    'Resistance due at working temperature',
    resistance.kohm,
    iec,
    beta,
  ),
  formula('E_2 = (L_2 - L_1) / (T_1 / T_2 - 1)', 'Way back: slope from first to second', ratio.one, back, three),
  formula(
    'E_3 = ((L_3 - L_2) / (T_1 / T_3 - T_1 / T_2) - E_2) / (T_1 / T_3 - 1)',
    'Way back: its bend',
    ratio.one,
    back,
    three,
  ),
  formula(
    'R_e = one_ohm * exp(L_1 + (T_1 / T_a - 1) * (E_2 + (T_1 / T_a - T_1 / T_2) * E_3))',
    'Resistance due at room temperature',
    resistance.kohm,
    back,
    three,
  ),
  formula(
    'R_w = one_ohm * exp(L_1 + (T_1 / T_w - 1) * (E_2 + (T_1 / T_w - T_1 / T_2) * E_3))',
    'Resistance due at working temperature',
    resistance.kohm,
    back,
    three,
  ),
  formula(
    'alpha_w = -B / T_w^2',
    'Change of resistance per kelvin, working',
    expansion.per_K,
    cite('IEC 60539-1', 'α = −B/T²', true),
    beta,
  ),
  formula(
    'dT_B = 1 / (1 / T_n + (1 + delta_B) * (1 / T_w - 1 / T_n)) - T_w',
    'Working: reading off by, if B is off',
    temperatureDifference.K,
    iec,
    beta,
  ),
  formula('q = R_m / R_e', 'Resistance measured over that due', ratio.one, derived('one over the other'), {
    ...ohms,
    law: 'beta',
  }),
  formula('q = exp(B * (1 / T_r - 1 / T_a))', 'Resistance seen over that due', ratio.one, iec, {
    ...shown,
    law: 'beta',
  }),
  formula(
    'dT_R = ln(q) / alpha_w',
    'Working: reading off by about, if it is all in the resistance',
    temperatureDifference.K,
    iec,
    beta,
  ),

  formula('P = V^2 / R_h', 'Heater’s power, fully on', power.W, ohm, heater),
  formula('I = V / R_h', 'Current, fully on', current.A, ohm, heater),
  formula('R_x = V_r^2 / P_r', 'Resistance of a heater so marked', resistance.ohm, ohm, heater),
  formula('k_P = P / P_r', 'Power over the marked power', ratio.one, derived('one over the other'), heater),
] as const;

export const limits = [
  {
    of: 'dT_s',
    max: 'dT_max',
    symmetric: true,
    label: 'Sensor against the room thermometer',
    cite: commonPractice,
    when: sensor,
  },
  { of: 'R_m', min: 'R_lo', max: 'R_hi', label: 'Neither shorted nor broken', cite: commonPractice, when: ohms },
  { of: 'T_r', min: 'T_lo', max: 'T_hi', label: 'Neither broken nor shorted', cite: commonPractice, when: shown },
  { of: 'k_P', min: 'k_lo', max: 'k_hi', label: 'Power against the marking', cite: commonPractice, when: heater },
] as const satisfies readonly LimitSpec[];
