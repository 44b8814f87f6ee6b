import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { action } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import { model } from './model';
import { cells, tables } from './points';

// A spread alone forgets the names of the cells.
const readings: typeof cells & typeof inputs = { ...cells, ...inputs };

export default calculator({
  cautions: [
    'A warm bed burns; take the readings with a gauge, not a finger, and let nothing loose touch heater or its wires.',
    'Switch the motors off before turning a screw by hand; keep fingers from under the bed, which is sprung or can drop.',
    'Lift the nozzle clear before any adjuster is turned: a bed that rises under it is scored.',
  ],
  choices,
  inputs: readings,
  tables,
  model,
  formulas,
  limits: [
    { of: 't_p', max: 't_lim', symmetric: true, label: 'Tilt, front left to back right', cite: commonPractice },
    { of: 't_q', max: 't_lim', symmetric: true, label: 'Tilt, back left to front right', cite: commonPractice },
    { of: 'F', max: 'F_lim', label: 'What no screw can fix', cite: commonPractice, when: { judge: 'both' } },
  ],
  action,
  proof:
    'Measure the same points again: the tilt along both diagonals should now be within its limit, and what no screw can fix as before. Then print one layer over the whole bed.',
  beware: [
    'The doubt counts what the tool can miss. Readings that do not repeat have more: take one point three times, lifting off in between.',
    'What is left of many points is never nothing, since each reading errs by itself: 25 readings with a feeler of ± 0.01 mm show some 0.02 mm on a bed that is dead flat.',
    'A bed taken cold tells of a cold bed: plates of two metals bow as they warm.',
    'Heights under the nozzle also hold the bend of what carries the nozzle; a straight edge laid on the bed tells which it is.',
  ],
  examples,
});
