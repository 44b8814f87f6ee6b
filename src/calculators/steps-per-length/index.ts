import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices, fed, onAxis, printed, travelled } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

const COUNT = 'Set against counted from the parts';

export default calculator({
  cautions: [
    'Keep fingers and caliper out of the way while the axis moves: a homing move pinches. Measure only when it stands still.',
    'Filament is fed through a hot end at printing heat: it burns, and what comes out as well. Keep clear of the nozzle.',
    'Switch off and unplug before a pulley, belt or plug is touched. A motor’s plug pulled under power can destroy the driver.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    {
      of: 'c',
      max: 'e_lim',
      symmetric: true,
      label: 'Moved against commanded',
      cite: commonPractice,
      when: travelled,
    },
    { of: 'c', max: 'e_lim', symmetric: true, label: 'Fed against commanded', cite: commonPractice, when: fed },
    {
      of: 'e_d',
      max: 'e_lim',
      symmetric: true,
      label: 'What shrinkage leaves for the drive',
      cite: commonPractice,
      when: printed,
    },
    { of: 'q', max: 'e_lim', symmetric: true, label: COUNT, cite: commonPractice, when: onAxis },
    {
      of: 'q',
      max: 'e_lim',
      symmetric: true,
      label: COUNT,
      cite: commonPractice,
      when: { axis: 'feed', fed: 'parts' },
    },
  ],
  action: instruct,
  proof:
    'Command the longest move the machine has, both ways, and measure it against a rule or a gauge: it must agree within the limit. For the feed, mark and feed again. Then print the same piece once more and compare it with the drawing.',
  beware: [
    'A belt’s pitch does not change with the plastic. If the steps counted from the parts and the drive’s measured travel agree, leave the drive and scale the piece, per plastic.',
    'Steps corrected by a printed piece carry that plastic’s shrinkage into every other one, and into moves that lay nothing down.',
    'A belt under 20 N is longer by about 0.1 % than a slack one (6 mm, rubber with glass cord), and so is its pitch: set the tension before the steps.',
    'Lost motion looks like a wrong scale on a short length and like none on a long one. Go away from the stop twice in the same direction and read at the second.',
    'Holes come out smaller than the formula’s inside size: a round wall is laid on the inner side and cut into short chords. Measure flat walls.',
    'The first layers are squeezed wide and a seam stands proud: measure above the one and beside the other.',
    'Filament: a number found cold, or with the hot end off, leaves out the back pressure; one found at print speed hides slip. Find the steps slowly and hot, then lower what makes it slip: flow too high, nozzle too cold or clogged, the idler too soft or too tight.',
    'Shrinkage is worked out as the plain cooling from the glass transition. Fillers, thick pieces and half-crystalline plastics shrink otherwise: enter theirs.',
  ],
  examples,
});
