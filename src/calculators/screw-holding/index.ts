import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

export default calculator({
  cautions: [
    'The gantry or bed may fall the moment the current goes: put blocks under it first, whatever the numbers say.',
    'Keep hands, and the other hand, out from under it, and away from nuts and screws: a falling gantry turns them.',
    'For the trial let it have a finger’s breadth to fall, onto blocks, never onto a hand. Hot end and bed cold.',
    'A falling load makes a generator of the motor: unplug the motors only with the power off, and never let the gantry run down freely on a connected board.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    { of: 'm', min: 'm_lim', label: 'Margin against running down, motors off', cite: commonPractice },
    { of: 'm_b', min: 'm_bl', label: 'Margin against buckling when a motor stalls', cite: commonPractice },
    { of: 'n', max: 'n_m', label: 'Turning below the critical speed', cite: commonPractice },
  ],
  action: instruct,
  proof:
    'Gantry a finger’s breadth above blocks, a pen line on each coupling and its mount. Motors off for an hour, a fan or a door slammed now and then; then the trial again, with the pull given. The pen lines must still meet. Repeat after every cleaning, greasing or new nut.',
  beware: [
    'A margin is no promise. Friction of threads scatters by a third and more, falls with grease and wear, and vibration can let go of a thread that stands still by the numbers.',
    'The friction is that from rest. Once it moves, friction is less: what has begun to run runs on.',
    'A motor’s idle torque is felt as steps; it holds only up to its peak, and pulling the load from one step to the next costs up to half a step of height each time.',
    'Without current a motor goes to its nearest full step: even a gantry that holds can move by up to half a step, two motors not alike.',
    'Factors of critical speed in suppliers’ tables often hold the 80 % already (3.4, 9.7, 15.1, 21.9), others do not (the inch form with 4.76 million). Here the margin is taken once, and shown.',
    'Buckling counts only a screw that is pushed. One that hangs from a bearing at the top is pulled by the load, and pushed when the gantry is driven down onto something.',
    'Pitches of 2 mm on 8 mm are not in the list of ISO 2902; their limits are those of neighbours, and makers differ. The core decides about buckling: measure it.',
    'Efficiency with and without collar differ, and tables by the square thread’s formula read a few percent high.',
  ],
  examples,
});
