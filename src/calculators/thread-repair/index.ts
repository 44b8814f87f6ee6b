import { calculator } from '../calculator';
import { instruct } from './action';
import { choices } from './choices';
import { compare } from './compare';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';

export default calculator({
  cautions: [
    'Switch off, unplug, and let the hot end and the bed go cold before you work near them.',
    'Eye protection on, before the drill and before any air line: chips fly. Brush chips away, never with the hand; keep them out of belts, screws and boards.',
    'Clamp the part, on the bench or in a vice with soft jaws. Never hold it by hand against a drill: it climbs and spins. No gloves, no loose sleeves at a turning drill.',
    'A drill and what it has cut are hot. Let plastics cool between passes, or they melt on to the drill.',
    'Take out boards, cables and bearings first, or cover them; a broken tap is glass-hard and sharp: stop at the first snap.',
    'A screw that holds a gantry, a heater or a mains part is no place for a doubtful thread: replace the part, and leave mains work to qualified people and the local code.',
  ],
  choices,
  inputs,
  formulas,
  limits,
  action: instruct,
  ways: compare,
  proof:
    'Tighten in three steps to the torque given, waiting a minute between: at each the wrench must come up firm, without turning on. Mark screw and part with one pen line; after a day of printing the line must be unbroken and the torque still there.',
  beware: [
    'Charts of drills for wire thread inserts differ by 0.1 mm. The hole before the tap has a window that follows from the profile: d + 0.217 P, and up to 0.1 to 0.2 mm more. The drill given lies inside it; some kits go 0.1 mm smaller and count on the drill cutting wide in aluminium. Follow the kit.',
    'The shear areas are those of the loosest pair of thread that the tolerances allow (6g in 6H), on whole thread. A worn tap, a hole drilled too wide, or the first and last turn bear less.',
    'A thin wall widens under load and lets the flanks slip by: below the wall wanted, the strength shown is too high.',
    'The torque coefficient scatters by a quarter or more between dry and oiled; stainless on stainless seizes: grease it, and reckon with less.',
    'Heads that are low or button-shaped bear less than the class says, and are so marked.',
    'In plastics the load creeps away in days; a thread in a print depends on walls and layers more than on any table. Prefer a bolt with a nut.',
    'A larger screw needs room for its head, and a larger hole in what it clamps.',
  ],
  examples,
});
