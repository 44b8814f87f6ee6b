import { commonPractice, derived } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { compare } from './compare';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

const stuck = { stands: 'stuck' };
const off = { stands: 'off' };
const cheaper = derived('saving it must not cost more than a new one, the chance of failing counted');

export default calculator({
  cautions: [
    'A jam is cleared hot, at 200 °C and more: goggles, heat-proof gloves, sleeves down. Melt under pressure spits.',
    'No wire, drill or needle up into a hot nozzle with bare hands, and no steel near the heater’s leads: a short can leave it on.',
    'Heater off and machine unplugged before the hot end is taken apart; it stays hot for a quarter of an hour.',
    'Plastic baked in a blocked nozzle fumes: air the room, and never heat it above its own range.',
    'Knife and saw away from the hand, part clamped; mask against dust, gloves and fresh air for glue.',
    'A part that holds a person, heat, mains or a raised load is never saved with a seam.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    { of: 's_r', min: 's_n', label: 'Strength of the seam', cite: commonPractice, when: stuck },
    {
      of: 'z_b',
      max: 'b_lim',
      label: 'Height of the starved band',
      cite: commonPractice,
      when: { ...stuck, band: ['none', 'trim'] },
    },
    { of: 'C_r', max: 'C_n', label: 'Cost of going on', cite: cheaper, when: stuck },
    { of: 's_g', min: 's_n', label: 'Strength of the glued seam', cite: commonPractice, when: off },
    { of: 'C_g', max: 'C_n', label: 'Cost of gluing', cite: cheaper, when: off },
  ],
  action: instruct,
  ways: compare,
  proof:
    'Before the restart: 100 mm fed hot come out as 100 mm, round and steady. After it: press the seam with a thumb on both sides; it must not give, creak or whiten. Where it has to carry, load a test bar with the same joint first.',
  beware: [
    'Time and weight tell the layer to a few, no more. They say whether it is worth it; the caliper says where to go on.',
    'Layers that differ in area take different times and plastic: the figures are for the average one. Give layer time and evenness their ±.',
    'Strengths are typical and wide: they hang on heat, dust and skill. They are for a pull across the layers, the way a print is weakest.',
    'A starved layer looks closed from outside when only the infill has run dry: cut into a corner.',
    'A strand that has run out stops at once, but the last of it may already have been ground thin: look at the end.',
    'A sensor for the strand that stops the machine costs less than most of these repairs.',
  ],
  examples,
});
