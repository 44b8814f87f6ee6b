import { commonPractice, derived } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

export default calculator({
  cautions: [
    'Keep hands out of the machine while it moves, and off nozzle and bed while they are hot.',
    'A tall piece that lets go is dragged about and can block an axis: stay near, with a hand on the switch.',
    'Pushing a test block off: eye protection on, switched off, bed cold or as hot as gloves allow. It lets go with a snap.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    { of: 'x', max: 'x_lim', label: 'Sway at the top', cite: commonPractice },
    {
      of: 'r_f',
      min: 'r_min',
      label: 'Own frequency above the machine’s',
      cite: derived('well above its excitation a beam follows as if loaded slowly; the margin is common practice'),
    },
    { of: 'sigma', max: 'sigma_h', label: 'Pull at the edge of the foot', cite: commonPractice },
  ],
  action: instruct,
  proof:
    'Print the piece beside one of half the height, or with the foot or bridge added. If roughness goes, it was the piece that swayed. If it stays at the same height above the bed, look at the machine instead.',
  beware: [
    'The drag of the nozzle is known to a factor of several; it counts in full. A verdict too close to call is the rule, not the exception, until it is measured.',
    'Infill is left out of the stiffness: it is far softer sideways than walls. Layers that hold badly to each other are softer still.',
    'Stiffness falls long before a plastic goes soft. A warm column is softer than the table, and most of all near its top.',
    'The pull is shared out evenly over the foot; in truth an edge peels first. A measured test block has that in it, if it is of about the same size.',
    'Bending only. Shear adds 3 % at five widths of height and 20 % at two: a stumpy piece sways a little more than shown, and hardly at all.',
    'A bed that moves shakes the column by its own mass as well: 200 mm of solid 10 mm square at 3 m/s² is as if 0.03 N more pulled at the top, twice that at the start of a move. Weight hardly counts.',
    'The bed, its sheet and the machine give too. This is the piece’s own share.',
  ],
  examples,
});
