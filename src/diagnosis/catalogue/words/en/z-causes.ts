import type { zCauses as causes } from '../../z-causes';
import type { CausesWords } from '../../wording';

export const zCauses: CausesWords<typeof causes> = {
  'screw-bent': {
    part: 'Z lead screw',
    title: 'The lead screw is bent',
    mend: {
      headline: 'Replace the lead screw',
      steps: [
        'Let the gantry down onto two blocks.',
        'Undo the coupling’s grub screws; turn the screw out of its nut.',
        'Roll the new screw on a flat plate before it goes in; fit it, and let the nut find its own place before tightening.',
      ],
      risk: 'Two Z screws get out of step: set them level again.',
    },
    proof: 'The run-out is within its limit, and a tall test piece shows no ridges at the lead.',
  },
  'screw-forced': {
    part: 'Z screw’s ends',
    title: 'Coupling, nut or top bearing force the screw sideways',
    mend: {
      headline: 'Let the screw hang free of side force',
      steps: [
        'Undo the top bearing, if there is one, and see where the screw wants to be.',
        'Loosen the nut’s screws half a turn, run the gantry to the bottom, tighten them there.',
        'Align the coupling by eye against a rule.',
      ],
      risk: 'A long screw without its top bearing whips at high speed.',
    },
    proof: 'The screw’s top stays still while the gantry travels; a tall test piece is smooth.',
  },
  'layer-off-step': {
    part: 'Settings',
    title: 'The layer height does not fit the screw’s steps',
    mend: {
      headline: 'Choose a layer height of whole motor steps',
      steps: ['Read the heights that fit from the check’s table.', 'Set the nearest one and print again.'],
      risk: 'None worth naming: layers get a little thicker or thinner.',
    },
    proof: 'A test piece at the new height shows no ridges.',
  },
  'screw-dry': {
    part: 'Z lead screw',
    title: 'The lead screw is dry or dirty',
    mend: {
      headline: 'Clean and oil the screw',
      steps: [
        'Run the gantry to the top; wipe the thread from end to end with a lint-free rag.',
        'Run it to the bottom and wipe the rest.',
        'A thin film of light oil or dry lubricant; run up and down twice and wipe off what gathers.',
      ],
      risk: 'Too much oil gathers dust and drips on the bed.',
    },
    proof: 'The gantry travels without a sound that comes and goes; a test piece is even.',
  },
  'sides-unequal': {
    part: 'Z pair',
    title: 'One end of the gantry stands higher',
    mend: {
      headline: 'Turn one screw until both ends stand alike',
      steps: [
        'Measure both ends from the same plane.',
        'Switch off, hold one screw and turn the other by what the check gives.',
        'Measure both ends again.',
      ],
      risk: 'A slipping joining belt or a self-lowering screw undoes it; find why it was lost.',
    },
    proof: 'Both ends measure alike within the check’s limit, also after a night switched off.',
  },
  'screw-runs-back': {
    part: 'Z lead screw',
    title: 'The screw does not hold the gantry with the motors off',
    mend: {
      headline: 'Keep the gantry from sinking when the motors rest',
      steps: [
        'Let the motors stay on while idle, at a lower current if the board can.',
        'Else set the gantry down on a block before switching off.',
        'A screw with fewer starts holds by itself.',
      ],
      risk: 'Motors left on stay warm.',
    },
    replace: {
      headline: 'Fit a screw and nut with one start',
      steps: ['Change screw and nut together.', 'Set the new steps per length.', 'Set both ends level.'],
      risk: 'Z gets slower; the steps per length must be set anew.',
    },
    proof: 'The height over the bed is the same after an hour idle.',
  },
  'coupling-slips': {
    part: 'Coupling',
    title: 'A coupling slips',
    mend: {
      headline: 'Tighten the coupling',
      steps: [
        'Set the gantry on blocks.',
        'Clean shaft, screw and bore of oil.',
        'Tighten both clamps clockwise, seen from the head; the screw’s end must not touch the shaft’s.',
      ],
      risk: 'The gantry can drop when the coupling is loose: blocks first.',
    },
    proof: 'A line across coupling, shaft and screw is still one line after ten full travels.',
  },
  'nut-worn': {
    part: 'Z nut',
    title: 'The Z nut is worn or loose',
    mend: {
      headline: 'Tighten the nut’s screws, else replace the nut',
      steps: [
        'Set the gantry on blocks.',
        'Try the nut’s screws; a loose one is the whole fault.',
        'If the nut has play on the thread, change it.',
      ],
      risk: 'A new brass nut on a worn screw wears fast.',
    },
    proof: 'Lifted by hand, the gantry does not tick.',
  },
  'z-motor-off': {
    part: 'Z motor',
    title: 'A Z motor is not powered',
    mend: {
      headline: 'Put the motor’s plug right',
      steps: [
        'Switch off and unplug.',
        'Unplug the motor at both ends; look for a bent or pushed-back pin.',
        'Plug it in until it latches.',
      ],
      risk: 'Never pull a motor’s plug under power: it can end the driver.',
    },
    proof: 'With the motors held, neither screw can be turned by hand.',
  },
  'thread-stripped': {
    part: 'Thread',
    title: 'The thread in the hole is torn out',
    mend: {
      headline: 'Repair the hole',
      steps: [
        'Let the check lay the ways side by side: insert, next size, through-bolt.',
        'Drill square to the face and clear the chips.',
        'Fit and tighten to the torque it gives.',
      ],
      risk: 'A drill wandering out of the wall spoils the part: eye protection, clamp the work.',
    },
    proof: 'The screw takes its torque and holds it after a day’s running.',
  },
  'screw-short': {
    part: 'Screw',
    title: 'The screw is too short and only grips the first turns',
    mend: {
      headline: 'Fit a longer screw',
      steps: [
        'Measure depth of hole and thickness clamped.',
        'Take one that reaches 1.5 diameters into metal, 2.5 into plastic, and does not touch the ground.',
      ],
      risk: 'One too long jams on the ground and feels tight while it clamps nothing.',
    },
    proof: 'It tightens within a quarter turn of first resistance.',
  },
  'nut-turns': {
    part: 'Nut',
    title: 'The nut behind turns with the screw',
    mend: {
      headline: 'Hold the nut',
      steps: [
        'Get a thin spanner or a pair of pliers on the nut, or pull it into its pocket with a longer screw.',
        'In a worn pocket: a drop of epoxy round the nut, none on the thread.',
      ],
      risk: 'Glue on the thread makes the next time worse.',
    },
    proof: 'The screw tightens and comes out again.',
  },
  'insert-turns': {
    part: 'Insert',
    title: 'The threaded insert turns in the plastic',
    mend: {
      headline: 'Set the insert anew',
      steps: [
        'Pull it out with the screw.',
        'A larger one, or the same with epoxy in a roughened hole; warmed in square to the face.',
        'Let it set before loading.',
      ],
      risk: 'A hot iron burns: let insert and iron cool where nobody reaches.',
    },
    proof: 'The screw takes its torque without the insert moving.',
  },
  'thread-wrong': {
    part: 'Screw',
    title: 'Screw and hole have different threads',
    mend: {
      headline: 'Fit the screw that belongs there',
      steps: [
        'Compare with a thread gauge or a nut that is known.',
        'If the hole is spoilt by now, repair it as a torn one.',
      ],
      risk: 'Forcing it tears what thread is left.',
    },
    proof: 'The screw runs in by hand over its whole length.',
  },
};
