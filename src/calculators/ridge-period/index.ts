import { calculator } from '../../engine/calculator';
import { action, judge } from './action';
import { examples } from './examples';
import { formulas } from './formulas';
import { choices, inputs } from './inputs';

export default calculator({
  cautions: [
    'Switch off and unplug before a hand goes near a belt, a screw or a gear; a homing move pinches.',
    'Support the gantry or bed before a screw’s coupling or its belt is freed: it can drop.',
    'The hot end stays hot for long: let it cool before a hand goes near the feed gear below it.',
  ],
  choices,
  inputs,
  formulas,
  limits: [],
  judge,
  action,
  proof:
    'Turn the part half a turn against its mate and print the same wall again: the ridges must move by half their spacing, with the part. What cannot be turned is proved by changing what its period hangs on: the ridges must change their spacing with it. After the repair print the wall a third time: the ridges are gone.',
  beware: [
    'A period that agrees is a suspicion, not a proof: parts are many and periods common. The half turn proves it.',
    'Only the parts listed are compared. Bearings, balls of a guide, gears inside a feed drive and the room’s heating are not.',
    'Waves after a corner that die away are ringing: their spacing goes with the speed, that of a part does not.',
    'On a wall that does not run along X or Y a part’s waves are farther apart; on a slanted wall rings are too. Take an upright wall along an axis.',
    'Where two motors move one axis together (a crossed belt), a wall at 45° shows one motor alone and gives another spacing.',
    'A cycle of the heater that is shorter than two layers shows up the wall at a spacing of its own, as the two beat; it is not compared.',
    'Layer height, screw and motor count as set, without a doubt: with one, whether a layer is a whole number of steps cannot be told.',
  ],
  examples,
});
