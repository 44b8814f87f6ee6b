import { calculator } from '../../engine/calculator';
import { instruct, judge } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

export default calculator({
  cautions: [
    'The nozzle is hot: hold the leaf with pliers, and let nothing drip on the hand. No fingers between nozzle and part.',
    'Move Z by the smallest steps near the part; a nozzle that meets it breaks it loose, and the drive is stronger than a finger.',
    'Never let Z look for its zero above the part.',
    'Cutting and sanding: the blade away from you, the part clamped, a mask against dust.',
    'Glues and solvents: gloves, goggles, fresh air, no flame, and what the label says. Some stick skin within seconds.',
  ],
  choices,
  inputs,
  formulas,
  limits: [],
  judge,
  action: instruct,
  proof:
    'Before the first new layer, stop the nozzle over the top at the Z given, cold or not oozing: a leaf as thick as the new layer must just drag. Glued: measure the whole; it must be as drawn within the error allowed.',
  beware: [
    'A part measured cold is lower than it was: PLA by about 0.12 mm, ABS by 0.4 mm for each 100 mm of height. That is most of a layer, or two.',
    'It assumes that all layers but the first are alike. Where they change with height, add them up by hand.',
    'Elephant foot: the squeezed-out first layers stand up at the edge and lift a caliper’s jaw. Trim the edge or measure inside it.',
    'Plastic also shrinks as it sets and crystallises, but mostly while layers still follow at the right height; what comes after the stop is not counted.',
    'Off the bed the part cannot go back: no stop finds the place again to a tenth of a line.',
    'A restart that finds its Z zero anew finds it to some 0.02 mm at best, elsewhere if the bed was cold: warm everything first.',
  ],
  examples,
});
