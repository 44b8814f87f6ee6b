import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';

export default calculator({
  cautions: [
    'Motors off and unplugged before a hand goes to carriage or belt: a homing move pinches.',
    'Support a carriage that runs up and down before its drive is freed or its guide loosened: what hangs by friction drops without warning.',
    'Pull slowly, with the hand clear of where it may jump to when it comes free. Hot end and bed cold.',
  ],
  choices,
  inputs,
  formulas,
  limits,
  action: instruct,
  proof:
    'Motors off: push the carriage with one finger at the drive’s point, at both ends and in the middle of its travel: it must start without a jerk. Then pull with the luggage scale in the guide’s line and at the drive’s point: the second pull may be at most 1/(1 − allowed share) of the first, twice at 50 %.',
  beware: [
    'Whether it binds depends on offset, length and friction alone, not on force or load: a stronger motor only presses harder.',
    'The rule takes the guide to touch at its two ends. A snug, soft or short bush presses over part of its length: count two thirds of it.',
    'Play does not change the rule, but it lets the carriage tilt, and a bush that stands on its edge bites: look for two bright spots crosswise.',
    'Two drives cancel only while they pull alike. Out of step they clamp the guide instead; that part is counted under the tilt forced on it.',
    'Friction from rest is greater than sliding, and grows where a carriage has stood. Near binding the force rises without bound, so small changes decide.',
    'Wheels that turn do not bind by friction; what jams them is a tilt larger than their play, or one that no longer turns.',
    'Offsets count square to the travel, in both planes: look from above and from the side, and enter the worse.',
  ],
  examples,
});
