import { cause, mend, up, way } from './make';

export const zCauses = [
  cause('screw-bent', 'Z lead screw', 'The lead screw is bent', {
    raisedBy: [up('just-moved', 1.8), up('crashed', 1.5), up('belt-z', 0.02)],
    mend: mend(
      'Replace the lead screw',
      [
        'Let the gantry down onto two blocks.',
        'Undo the coupling’s grub screws; turn the screw out of its nut.',
        'Roll the new screw on a flat plate before it goes in; fit it, and let the nut find its own place before tightening.',
      ],
      {
        minutes: 45,
        cost: 16,
        works: 0.9,
        risk: 'Two Z screws lose their sync: set them level again.',
        calculator: 'lead-screw-straightness',
      },
    ),
    proof: 'The run-out is within its limit, and a tall test piece shows no ridges at the lead.',
  }),
  cause('screw-forced', 'Z screw’s ends', 'Coupling, nut or top bearing force the screw sideways', {
    raisedBy: [up('new-build', 1.8), up('worked-on', 1.8), up('belt-z', 0.02)],
    mend: mend(
      'Let the screw hang free of side force',
      [
        'Undo the top bearing, if there is one, and see where the screw wants to be.',
        'Loosen the nut’s screws half a turn, run the gantry to the bottom, tighten them there.',
        'Align the coupling by eye against a rule.',
      ],
      { minutes: 20, works: 0.88, risk: 'A long screw without its top bearing whips at high speed.' },
    ),
    proof: 'The screw’s top stays still while the gantry travels; a tall test piece is smooth.',
  }),
  cause('layer-off-step', 'Settings', 'The layer height does not fit the screw’s steps', {
    raisedBy: [up('layer-changed', 4, 0.8), up('new-build', 1.2)],
    mend: mend(
      'Choose a layer height of whole motor steps',
      ['Read the heights that fit from the check’s table.', 'Set the nearest one and print again.'],
      {
        minutes: 8,
        works: 0.92,
        risk: 'None worth naming: layers get a little thicker or thinner.',
        calculator: 'screw-step',
      },
    ),
    proof: 'A test piece at the new height shows no ridges.',
  }),
  cause('screw-dry', 'Z lead screw', 'The lead screw is dry or dirty', {
    raisedBy: [up('stood-long', 2.5), up('many-hours', 1.8), up('belt-z', 0.02)],
    mend: mend(
      'Clean and oil the screw',
      [
        'Run the gantry to the top; wipe the thread from end to end with a lint-free rag.',
        'Run it to the bottom and wipe the rest.',
        'A thin film of light oil or dry lubricant; run up and down twice and wipe off what gathers.',
      ],
      { minutes: 12, cost: 1, works: 0.9, risk: 'Too much oil gathers dust and drips on the bed.' },
    ),
    proof: 'The gantry travels without a sound that comes and goes; a test piece is even.',
  }),
  cause('sides-unequal', 'Z pair', 'One end of the gantry stands higher', {
    raisedBy: [up('two-z-screws', 1.6, 0.05), up('just-moved', 2), up('crashed', 1.8), up('stood-long', 1.2)],
    mend: mend(
      'Turn one screw until both ends stand alike',
      [
        'Measure both ends from the same plane.',
        'Switch off, hold one screw and turn the other by what the check gives.',
        'Measure both ends again.',
      ],
      {
        minutes: 12,
        works: 0.93,
        risk: 'A slipping sync belt or a self-lowering screw undoes it; find why it was lost.',
        calculator: 'dual-z-sync',
      },
    ),
    proof: 'Both ends measure alike within the check’s limit, also after a night switched off.',
  }),
  cause('screw-runs-back', 'Z lead screw', 'The screw does not hold the gantry with the motors off', {
    raisedBy: [up('new-build', 1.5), up('worked-on', 1.4), up('belt-z', 0.1)],
    mend: mend(
      'Keep the gantry from sinking when the motors rest',
      [
        'Let the motors stay on while idle, at a lower current if the board can.',
        'Else set the gantry down on a block before switching off.',
        'A screw with fewer starts holds by itself.',
      ],
      { minutes: 15, works: 0.85, risk: 'Motors left on stay warm.', calculator: 'screw-holding' },
    ),
    replace: way(
      'Fit a screw and nut with one start',
      ['Change screw and nut together.', 'Set the new steps per length.', 'Set both ends level.'],
      70,
      28,
      'Z gets slower; the steps per length must be set anew.',
    ),
    proof: 'The height over the bed is the same after an hour idle.',
  }),
  cause('coupling-slips', 'Coupling', 'A coupling slips', {
    raisedBy: [up('new-build', 1.7), up('worked-on', 1.6), up('crashed', 1.6)],
    mend: mend(
      'Tighten the coupling',
      [
        'Set the gantry on blocks.',
        'Clean shaft, screw and bore of oil.',
        'Tighten both clamps clockwise, seen from the head; the screw’s end must not touch the shaft’s.',
      ],
      { minutes: 12, works: 0.93, risk: 'The gantry can drop when the coupling is loose: blocks first.' },
    ),
    proof: 'A line across coupling, shaft and screw is still one line after ten full travels.',
  }),
  cause('nut-worn', 'Z nut', 'The Z nut is worn or loose', {
    raisedBy: [up('many-hours', 2.5, 0.7), up('belt-z', 0.02)],
    mend: mend(
      'Tighten the nut’s screws, else replace the nut',
      [
        'Set the gantry on blocks.',
        'Try the nut’s screws; a loose one is the whole fault.',
        'If the nut has play on the thread, change it.',
      ],
      { minutes: 30, cost: 7, works: 0.9, risk: 'A new brass nut on a worn screw wears fast.' },
    ),
    proof: 'Lifted by hand, the gantry does not tick.',
  }),
  cause('z-motor-off', 'Z motor', 'A Z motor is not powered', {
    raisedBy: [up('worked-on', 2), up('just-moved', 1.8)],
    mend: mend(
      'Put the motor’s plug right',
      [
        'Switch off and unplug.',
        'Unplug the motor at both ends; look for a bent or pushed-back pin.',
        'Plug it in until it latches.',
      ],
      { minutes: 10, works: 0.85, risk: 'Never pull a motor’s plug under power: it can end the driver.' },
    ),
    proof: 'With the motors held, neither screw can be turned by hand.',
  }),
  cause('thread-stripped', 'Thread', 'The thread in the hole is torn out', {
    raisedBy: [up('overtightened', 2, 0.7), up('printed-holes', 1.3)],
    mend: mend(
      'Repair the hole',
      [
        'Let the check lay the ways side by side: insert, next size, through-bolt.',
        'Drill square to the face and clear the chips.',
        'Fit and tighten to the torque it gives.',
      ],
      {
        minutes: 25,
        cost: 6,
        works: 0.93,
        risk: 'A drill wandering out of the wall spoils the part: eye protection, clamp the work.',
        calculator: 'thread-repair',
      },
    ),
    proof: 'The screw takes its torque and holds it after a day’s running.',
  }),
  cause('screw-short', 'Screw', 'The screw is too short and only grips the first turns', {
    raisedBy: [up('worked-on', 2), up('new-build', 1.6)],
    mend: mend(
      'Fit a longer screw',
      [
        'Measure depth of hole and thickness clamped.',
        'Take one that reaches 1.5 diameters into metal, 2.5 into plastic, and does not touch the ground.',
      ],
      {
        minutes: 8,
        cost: 0.5,
        works: 0.92,
        risk: 'One too long jams on the ground and feels tight while it clamps nothing.',
      },
    ),
    proof: 'It tightens within a quarter turn of first resistance.',
  }),
  cause('nut-turns', 'Nut', 'The nut behind turns with the screw', {
    raisedBy: [up('printed-holes', 1.5), up('overtightened', 1.5)],
    mend: mend(
      'Hold the nut',
      [
        'Get a thin spanner or a pair of pliers on the nut, or pull it into its pocket with a longer screw.',
        'In a worn pocket: a drop of epoxy round the nut, none on the thread.',
      ],
      { minutes: 12, cost: 1, works: 0.88, risk: 'Glue on the thread makes the next time worse.' },
    ),
    proof: 'The screw tightens and comes out again.',
  }),
  cause('insert-turns', 'Insert', 'The threaded insert turns in the plastic', {
    raisedBy: [up('printed-holes', 3, 0.05), up('overtightened', 1.6)],
    mend: mend(
      'Set the insert anew',
      [
        'Pull it out with the screw.',
        'A larger one, or the same with epoxy in a roughened hole; warmed in square to the face.',
        'Let it set before loading.',
      ],
      { minutes: 20, cost: 2, works: 0.86, risk: 'A hot iron burns: let insert and iron cool where nobody reaches.' },
    ),
    proof: 'The screw takes its torque without the insert moving.',
  }),
  cause('thread-wrong', 'Screw', 'Screw and hole have different threads', {
    raisedBy: [up('worked-on', 2.5), up('new-build', 1.5)],
    mend: mend(
      'Fit the screw that belongs there',
      ['Compare with a thread gauge or a nut that is known.', 'If the hole is spoilt by now, repair it as a torn one.'],
      {
        minutes: 10,
        cost: 0.5,
        works: 0.8,
        risk: 'Forcing it tears what thread is left.',
        calculator: 'thread-repair',
      },
    ),
    proof: 'The screw runs in by hand over its whole length.',
  }),
];
