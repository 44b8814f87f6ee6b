import { count, length, ratio } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const going = { plan: ['nozzle', 'rod'] };
const glue = { plan: 'glue' };

const layers = derived('the first layer, and all others alike on top of it');
const heat = cite('Machinery’s Handbook', 'expansion: length times coefficient times change of temperature', true);
const stack = derived('heights added up, both pieces shrinking alike');

export const formulas = [
  formula(
    'Z_c = Z_r - g_f',
    'Top of the part now, as the machine counts',
    length.mm,
    derived('the leaf lies between nozzle and part'),
    { plan: 'nozzle' },
  ),
  formula(
    'Z_c = H + s',
    'Top of the part now, as the machine counts',
    length.mm,
    derived('what the first layer lost is missing from the measured height'),
    { plan: ['rod', 'glue'] },
  ),
  formula('c = alpha * (T_p - T_m)', 'Shrunk since it printed, as a share', ratio.percent, heat, { heat: 'cold' }),
  formula('c = alpha * dT', 'Shrunk since it printed, as a share', ratio.percent, heat, { heat: 'warm' }),
  formula('Z_w = Z_c * (1 + c)', 'Top as it stood while printing', length.mm, heat),
  formula('dZ_w = Z_c * c', 'Shrunk since it printed', length.mm, heat),
  formula('x = (Z_w - h_1) / h + 1', 'Layers that this is, not rounded', ratio.one, layers, going),
  formula('N = round((Z_w - h_1) / h + 1)', 'Last layer that is there', count.one, layers, going),
  formula('N_n = N + 1', 'Layer to go on with', count.one, layers, going),
  formula('Z_N = h_1 + (N - 1) * h', 'Height Z of the last layer that is there', length.mm, layers, going),
  formula('Z_n = h_1 + N * h', 'Height Z to go on with', length.mm, layers, going),
  formula('d = Z_w - Z_N', 'Top stands above its layer’s Z by', length.mm, derived('definition'), going),
  formula(
    'h_n = h - d',
    'Thickness that the first new layer gets',
    length.mm,
    derived('the gap between nozzle and top'),
    going,
  ),
  formula('d_lim = q * h', 'Misfit allowed', length.mm, commonPractice, going),
  formula(
    'Z_a = Z_w + h',
    'Height Z that would leave a whole layer above the top',
    length.mm,
    derived('top and one layer'),
    going,
  ),
  formula('H_2 = H_t - Z_w + s - g', 'Height to draw the second part with', length.mm, stack, glue),
  formula('Z_k = Z_w + g - s', 'Height at which to cut the drawing', length.mm, stack, glue),
  formula('x_2 = (H_2 - h_1) / h + 1', 'Layers of the second part, not rounded', ratio.one, layers, glue),
] as const;
