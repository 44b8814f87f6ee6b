import { cause, mend, up, way } from './make';

export const motionCauses = [
  cause('belt-slack', 'Belt', 'A belt is too slack', {
    raisedBy: [up('belts-new', 2.5), up('many-hours', 1.5), up('new-build', 1.5)],
    mend: mend(
      'Tighten the belt until its note is right',
      [
        'Measure the note of the belt’s longest free stretch.',
        'Turn the tensioner’s screw clockwise, seen from its head, half a turn at a time, plucking between.',
        'Stop at the note that the check gives; push the carriage along and pluck again.',
      ],
      {
        minutes: 12,
        works: 0.93,
        risk: 'Too tight bends the motor’s shaft and wears its bearing.',
        calculator: 'belt-tension',
      },
    ),
    replace: way(
      'Fit a new belt',
      [
        'Photograph how the old belt runs.',
        'Count its teeth; cut the new one to the same count.',
        'Fit it and tighten it to its note.',
      ],
      45,
      8,
      'A belt one tooth out, or twisted, sets the carriage askew.',
    ),
    proof: 'The note is right at three places of the carriage, and a reprint of the same piece shows it gone.',
  }),
  cause('belts-unequal', 'Belt pair', 'The two belts pull unequally', {
    raisedBy: [up('crossed-belts', 2, 0.02), up('belts-new', 2), up('worked-on', 1.5)],
    mend: mend(
      'Bring both belts to one note',
      [
        'Measure both belts at the same place of the carriage.',
        'Tighten the lower-sounding one a quarter turn, clockwise seen from the screw’s head; measure both again.',
        'Go on until the notes agree within what the check allows.',
      ],
      {
        minutes: 20,
        works: 0.9,
        risk: 'Each belt pulls on the other: chasing one alone ends with both too tight.',
        calculator: 'belt-pair',
      },
    ),
    proof: 'Both notes agree, and the two diagonals of a printed square are equal.',
  }),
  cause('pulley-loose', 'Pulley', 'A pulley slips on its shaft', {
    raisedBy: [up('new-build', 2), up('worked-on', 1.6), up('crashed', 1.5)],
    mend: mend(
      'Tighten the pulley’s grub screw on the flat of the shaft',
      [
        'Turn the pulley until one grub screw faces the flat of the shaft.',
        'Loosen it, take out grease with a rag, add a drop of threadlocker.',
        'Tighten it clockwise, seen from its head, with the short arm of the key; then the other one.',
      ],
      {
        minutes: 8,
        cost: 0.5,
        works: 0.95,
        risk: 'The key can round out the small hexagon; use one that fits without play.',
      },
    ),
    proof: 'A line drawn across pulley and shaft is still one line after a print.',
  }),
  cause('pulley-eccentric', 'Pulley', 'A Z pulley or idler runs out of true', {
    raisedBy: [up('belt-z', 3, 0.3), up('new-build', 1.3)],
    mend: mend(
      'Turn the pulley half round on its shaft, else replace it',
      [
        'Slacken the belt.',
        'Loosen the grub screws, turn the pulley half a turn on the shaft, tighten.',
        'If it still runs out, fit another.',
      ],
      { minutes: 30, cost: 6, works: 0.8, risk: 'The belt must be tightened to its note again afterwards.' },
    ),
    proof: 'Ridges of the pulley’s circumference are gone from a reprint.',
  }),
  cause('wheels-loose', 'Wheels or bearings', 'Carriage or gantry has play', {
    raisedBy: [up('grooved-wheels', 1.6, 0.4), up('many-hours', 1.7), up('just-moved', 1.3), up('crashed', 1.4)],
    mend: mend(
      'Take up the play with the eccentric bushes',
      [
        'Find the wheels that sit on eccentric bushes; they are on one side only.',
        'Turn each bush a little until a finger can only just hold the wheel back while the carriage moves.',
        'Do all of them; rock the carriage: nothing may tick.',
      ],
      { minutes: 10, works: 0.92, risk: 'Too tight presses flat spots into the wheels.', calculator: 'wheel-preload' },
    ),
    replace: way(
      'Fit new wheels',
      ['Take the carriage off.', 'Change all its wheels.', 'Set the bushes.'],
      40,
      14,
      'Belts and wires have to come off and go on again.',
    ),
    proof: 'Rocked by hand, nothing ticks; the slip test of each wheel is within its limits.',
  }),
  cause('wheel-flat', 'Wheels', 'A wheel has a flat spot', {
    raisedBy: [up('grooved-wheels', 2, 0.02), up('stood-long', 3), up('many-hours', 1.5)],
    mend: mend(
      'Replace the wheel with the flat spot',
      [
        'Take the carriage off its rail.',
        'Change the wheel; change its partner too if it looks alike.',
        'Set the eccentric bush.',
      ],
      {
        minutes: 30,
        cost: 5,
        works: 0.92,
        risk: 'A new wheel beside worn ones changes how they share the load.',
        calculator: 'wheel-preload',
      },
    ),
    proof: 'Rolled under a finger along the rail, no wheel ticks.',
  }),
  cause('carriage-binds', 'Guides', 'The carriage binds somewhere on its way', {
    raisedBy: [up('new-build', 1.8), up('worked-on', 1.6), up('stood-long', 1.6), up('crashed', 1.4)],
    mend: mend(
      'Free the guide',
      [
        'Switch off and slide the carriage by hand to find the place.',
        'Clean the rail or rod there; a drop of the oil its maker names.',
        'If it still binds, loosen one guide’s screws, slide to that end, tighten them there.',
      ],
      {
        minutes: 25,
        cost: 1,
        works: 0.82,
        risk: 'Loosening a guide can lose the frame’s squareness.',
        calculator: 'carriage-binding',
      },
    ),
    proof: 'A luggage scale pulls the carriage with the same force all along.',
  }),
  cause('cable-snags', 'Cable or tube', 'A cable or the tube snags', {
    raisedBy: [up('worked-on', 2), up('just-moved', 1.6), up('tube-feed', 1.3)],
    mend: mend(
      'Give the cable a free path',
      ['Move carriage and bed by hand into every corner.', 'Where it pulls or hooks, tie it in a wider loop.'],
      { minutes: 8, works: 0.95, risk: 'A tight tie chafes the wires through; leave it loose enough to slide.' },
    ),
    proof: 'Carriage and bed reach every corner by hand with the cable slack.',
  }),
  cause('accel-high', 'Settings', 'Acceleration is higher than the machine bears', {
    raisedBy: [up('faster', 3, 0.7)],
    mend: mend(
      'Lower the acceleration to what the check gives',
      [
        'Measure the ripples’ spacing on a test piece.',
        'Set the acceleration that the check gives.',
        'Print the piece again.',
      ],
      { minutes: 12, works: 0.88, risk: 'Prints take longer.', calculator: 'ringing' },
    ),
    proof: 'A reprint at the lower acceleration shows none.',
  }),
  cause('driver-hot', 'Motor driver', 'A motor driver overheats and misses steps', {
    raisedBy: [up('warm-cupboard', 3), up('many-hours', 1.2), up('faster', 1.3)],
    mend: mend(
      'Cool the drivers',
      [
        'Switch off and unplug.',
        'Clear dust from the electronics’ fan and vents.',
        'See that the fan turns when the motors do; replace it if not.',
      ],
      { minutes: 20, cost: 6, works: 0.85, risk: 'A screwdriver slipped over a live board ends it: unplug first.' },
    ),
    proof: 'A print of the same length on a warm day shows no shift.',
  }),
  cause('print-hit', 'Part', 'The nozzle hits a curled-up part', {
    raisedBy: [up('cold-room', 1.3), up('hotter', 1.5), up('faster', 1.2)],
    mend: mend(
      'Stop the edges from curling',
      [
        'Cool the layers more, or print 5 °C to 10 °C cooler.',
        'Lift the nozzle on moves across the part.',
        'Slow down over overhangs.',
      ],
      { minutes: 10, works: 0.8, risk: 'More cooling weakens the bond between layers of some materials.' },
    ),
    proof: 'A reprint has no scraped edges and no shift.',
  }),
  cause('frame-loose', 'Frame', 'Frame or stand is loose', {
    raisedBy: [up('just-moved', 2), up('new-build', 1.8), up('many-hours', 1.2)],
    mend: mend(
      'Tighten the frame, bottom to top',
      [
        'Set the frame on a flat, stiff top.',
        'Hold each joint square and tighten its screws clockwise, seen from the head.',
        'Check the square again.',
      ],
      { minutes: 20, works: 0.9, risk: 'Tightening a frame that stands twisted fixes the twist.' },
    ),
    proof: 'Pushed at a top corner, the frame does not nod.',
  }),
  cause('frame-askew', 'Frame', 'The axes are not square', {
    raisedBy: [up('new-build', 2), up('just-moved', 1.6), up('crashed', 1.5), up('worked-on', 1.3)],
    mend: mend(
      'Square the frame by its diagonals',
      [
        'Loosen the corner screws by half a turn.',
        'Push the longer diagonal until both measure alike.',
        'Tighten in turn, measuring between.',
      ],
      { minutes: 40, works: 0.85, risk: 'The bed must be trammed again afterwards.', calculator: 'squareness' },
    ),
    proof: 'Both diagonals of a printed square agree within the check’s limit.',
  }),
  cause('stand-uneven', 'Stand', 'The table lets the frame twist or rock', {
    raisedBy: [up('just-moved', 3, 0.6)],
    mend: mend(
      'Set the machine so that all feet bear',
      ['Push each corner down in turn.', 'Shim the foot that moves, or move to a flatter top.', 'Tram the bed again.'],
      { minutes: 15, works: 0.9, risk: 'None worth naming.' },
    ),
    proof: 'No corner moves when pushed, and the bed’s heights repeat.',
  }),
  cause('steps-wrong', 'Settings', 'One axis moves other than commanded', {
    raisedBy: [up('worked-on', 2), up('belts-new', 1.5), up('new-build', 1.5)],
    mend: mend(
      'Set the steps per length from a long measured move',
      [
        'Command as long a move as the axis has; measure it.',
        'Put both into the check and set the value it gives.',
        'Move back and measure once more.',
      ],
      {
        minutes: 12,
        works: 0.92,
        risk: 'Correcting by a printed part mixes the material’s shrinkage in.',
        calculator: 'steps-per-length',
      },
    ),
    proof: 'A long commanded move is as long as it should be, within the check’s limit.',
  }),
];
