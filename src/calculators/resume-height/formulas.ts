import { count, length, ratio } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { formula, cite, derived } from '../../engine/calculator';

const going = { plan: ['nozzle', 'rod'] };
const glue = { plan: 'glue' };
const close = { plan: ['rod', 'glue'], zero: 'close' };
const far = { plan: ['rod', 'glue'], zero: 'far' };
const closeGlue = { plan: 'glue', zero: 'close' };
const farGlue = { plan: 'glue', zero: 'far' };

const layers = derived('firstLayerAll');
const heat = cite('Machinery’s Handbook, 29th edition (2012)', 'expansionLengthTimes', true);
const stack = derived('heightsAddedUp');

export const formulas = [
  formula('Z_c = Z_r - g_f', length.mm, derived('feelerLiesBetween'), { plan: 'nozzle' }),
  formula('Z_c = H + s', length.mm, derived('firstLayerLost'), close),
  formula('Z_c = H - s', length.mm, derived('firstLayerLost'), far),
  formula('c = alpha * (T_p - T_m)', ratio.percent, heat, { heat: 'cold' }),
  formula('c = alpha * dT', ratio.percent, heat, { heat: 'warm', drift: 'cooler' }),
  formula('c = -alpha * dT', ratio.percent, heat, { heat: 'warm', drift: 'warmer' }),
  formula('Z_w = Z_c * (1 + c)', length.mm, heat),
  formula('dZ_w = Z_c * c', length.mm, heat),
  formula('x = (Z_w - h_1) / h + 1', ratio.one, layers, going),
  formula('N = round((Z_w - h_1) / h + 1)', count.one, layers, going),
  formula('N_n = N + 1', count.one, layers, going),
  formula('Z_N = h_1 + (N - 1) * h', length.mm, layers, going),
  formula('Z_n = h_1 + N * h', length.mm, layers, going),
  formula('d = Z_w - Z_N', length.mm, derived('definition'), going),
  formula('h_n = h - d', length.mm, derived('gapBetweenNozzle'), going),
  formula('d_lim = q * h', length.mm, commonPractice, going),
  formula('Z_a = Z_w + h', length.mm, derived('topLayer'), going),
  formula('H_2 = H_t - Z_w + s - g', length.mm, stack, closeGlue),
  formula('H_2 = H_t - Z_w - s - g', length.mm, stack, farGlue),
  formula('Z_k = Z_w + g - s', length.mm, stack, closeGlue),
  formula('Z_k = Z_w + g + s', length.mm, stack, farGlue),
  formula('x_2 = (H_2 - h_1) / h + 1', ratio.one, layers, glue),
] as const;
