import { commonPractice, derived } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

export default calculator({
  cautions: [
    'Anything that got wet stays unplugged until it is dry inside as well: mains and water kill. In doubt, ask someone qualified.',
    'Heaters and dry boxes: nothing that burns against them, cables out of the heat, never unattended.',
    'Do not shut a room with a fuel-burning heater in it, and keep the air fresh where plastics are melted.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    {
      of: 'dT_d',
      min: 'm_d',
      label: 'Surface above the dew point',
      cite: derived('water settles on what is colder than the dew point; the margin is common practice'),
      when: { ask: 'cold' },
    },
    {
      of: 'U_b',
      max: 'U_lim',
      label: 'Humidity in the box',
      cite: commonPractice,
      when: { ask: 'box' },
    },
    {
      of: 'dg',
      max: 'dg_lim',
      symmetric: true,
      label: 'Change of the first-layer gap',
      cite: commonPractice,
      when: { ask: 'swing' },
    },
  ],
  action: instruct,
  proof:
    'Breathe on a small mirror as cold as the part: if the mist goes within seconds and none comes back, the surface is above the dew point. For the gap: a feeler under the nozzle, cold and warm, shows the change worked out here.',
  beware: [
    'Most hygrometers of the trade are right to 5 %, old ones less; in the box it counts for more than the formula.',
    'Against printed tables Magnus’s formula is 0.3 % low in the middle of its range, 0.2 % high at 60 °C and 2.5 % at 100 °C; that vapour is no ideal gas adds up to 0.5 %. Both are left out, being small against any hygrometer.',
    'Below 0 °C hygrometers refer to water, not ice; so does this.',
    'The swing is taken to be the same in frame, screw and all: in the first hour after switching on it is not, and the gap moves more, or the other way.',
    'Uneven warmth bends a frame; this counts growth in length only. A sheet of glass or a bed held at four corners bows more than it grows.',
    'Printed brackets: expansion differs between grades and directions by a third or more, and damp polyamide swells as well.',
  ],
  examples,
});
