import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { compare } from './compare';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';

export default calculator({
  cautions: [
    'Switch off, unplug, and let the hot end and the bed go cold.',
    'Eye protection on: chips fly. Brush them away, never with the hand, and keep them out of belts, screws and boards.',
    'Clamp the part. Never hold it by hand against a drill: it climbs and spins. No gloves, no loose sleeves.',
    'Drill and chips are hot. Let plastics cool between passes.',
    'Take out boards, cables and bearings, or cover them. A tap is glass-hard: stop when it binds, and beware of splinters if it snaps.',
    'Where a screw holds up a gantry or a heater, replace the part rather than trust a doubtful thread; leave mains parts to qualified people and the local code.',
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
