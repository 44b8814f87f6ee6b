import type { motionCauses as causes } from '../../motion-causes';
import type { CausesWords } from '../../wording';

export const motionCauses: CausesWords<typeof causes> = {
  'belt-slack': {
    part: 'Belt',
    title: 'A belt is too slack',
    mend: {
      headline: 'Tighten the belt until its note is right',
      steps: [
        'Measure the note of the belt’s longest free span.',
        'Turn the tensioner’s screw clockwise, seen from its head, half a turn at a time, plucking between.',
        'Stop at the note that the check gives; push the carriage along and pluck again.',
      ],
      risk: 'Too tight bends the motor’s shaft and wears its bearing.',
    },
    replace: {
      headline: 'Fit a new belt',
      steps: [
        'Photograph how the old belt runs.',
        'Count its teeth; cut the new one to the same count.',
        'Fit it and tighten it to its note.',
      ],
      risk: 'A belt one tooth out, or twisted, sets the carriage askew.',
    },
    proof: 'The note is right at three places of the carriage, and a reprint of the same piece shows it gone.',
  },
  'belts-unequal': {
    part: 'Belt pair',
    title: 'The two belts pull unequally',
    mend: {
      headline: 'Bring both belts to one note',
      steps: [
        'Measure both belts at the same place of the carriage.',
        'Tighten the lower-sounding one a quarter turn, clockwise seen from the screw’s head; measure both again.',
        'Go on until the notes agree within what the check allows.',
      ],
      risk: 'Each belt pulls on the other: chasing one alone ends with both too tight.',
    },
    proof: 'Both notes agree, and the two diagonals of a printed square are equal.',
  },
  'pulley-loose': {
    part: 'Pulley',
    title: 'A pulley slips on its shaft',
    mend: {
      headline: 'Tighten the pulley’s grub screw on the flat of the shaft',
      steps: [
        'Turn the pulley until one grub screw faces the flat of the shaft.',
        'Loosen it, take out grease with a rag, add a drop of threadlocker.',
        'Tighten it clockwise, seen from its head, with the short arm of the key; then the other one.',
      ],
      risk: 'The key can round out the small hexagon; use one that fits without play.',
    },
    proof: 'A line drawn across pulley and shaft is still one line after a print.',
  },
  'pulley-eccentric': {
    part: 'Pulley',
    title: 'A Z pulley or idler runs out of true',
    mend: {
      headline: 'Turn the pulley half round on its shaft, else replace it',
      steps: [
        'Slacken the belt.',
        'Loosen the grub screws, turn the pulley half a turn on the shaft, tighten.',
        'If it still runs out, fit another.',
      ],
      risk: 'The belt must be tightened to its note again afterwards.',
    },
    proof: 'Ridges of the pulley’s circumference are gone from a reprint.',
  },
  'wheels-loose': {
    part: 'Wheels or bearings',
    title: 'Carriage or gantry has play',
    mend: {
      headline: 'Take up the play with the eccentric bushes',
      steps: [
        'Find the wheels that sit on eccentric bushes; they are on one side only.',
        'Turn each bush a little until a finger can only just hold the wheel back while the carriage moves.',
        'Do all of them; rock the carriage: nothing may tick.',
      ],
      risk: 'Too tight presses flat spots into the wheels.',
    },
    replace: {
      headline: 'Fit new wheels',
      steps: ['Take the carriage off.', 'Change all its wheels.', 'Set the bushes.'],
      risk: 'Belts and wires have to come off and go on again.',
    },
    proof: 'Rocked by hand, nothing ticks; the slip test of each wheel is within its limits.',
  },
  'wheel-flat': {
    part: 'Wheels',
    title: 'A wheel has a flat spot',
    mend: {
      headline: 'Replace the wheel with the flat spot',
      steps: [
        'Take the carriage off its rail.',
        'Change the wheel; change its partner too if it looks alike.',
        'Set the eccentric bush.',
      ],
      risk: 'A new wheel beside worn ones changes how they share the load.',
    },
    proof: 'Rolled under a finger along the rail, no wheel ticks.',
  },
  'carriage-binds': {
    part: 'Guides',
    title: 'The carriage binds somewhere along its travel',
    mend: {
      headline: 'Free the guide',
      steps: [
        'Switch off and slide the carriage by hand to find the place.',
        'Clean the rail or rod there; a drop of the oil its maker names.',
        'If it still binds, loosen one guide’s screws, slide to that end, tighten them there.',
      ],
      risk: 'Loosening a guide can lose the frame’s squareness.',
    },
    proof: 'A luggage scale pulls the carriage with the same force all along.',
  },
  'cable-snags': {
    part: 'Cable or tube',
    title: 'A cable or the tube snags',
    mend: {
      headline: 'Give the cable a free path',
      steps: ['Move carriage and bed by hand into every corner.', 'Where it pulls or hooks, tie it in a wider loop.'],
      risk: 'A tight tie chafes the wires through; leave it loose enough to slide.',
    },
    proof: 'Carriage and bed reach every corner by hand with the cable slack.',
  },
  'accel-high': {
    part: 'Settings',
    title: 'Acceleration is higher than the machine bears',
    mend: {
      headline: 'Lower the acceleration to what the check gives',
      steps: [
        'Measure the ripples’ spacing on a test piece.',
        'Set the acceleration that the check gives.',
        'Print the piece again.',
      ],
      risk: 'Prints take longer.',
    },
    proof: 'A reprint at the lower acceleration shows none.',
  },
  'driver-hot': {
    part: 'Motor driver',
    title: 'A motor driver overheats and misses steps',
    mend: {
      headline: 'Cool the drivers',
      steps: [
        'Switch off and unplug.',
        'Clear dust from the electronics’ fan and vents.',
        'See that the fan turns when the motors do; replace it if not.',
      ],
      risk: 'A screwdriver slipped over a live board ends it: unplug first.',
    },
    proof: 'A print of the same length on a warm day shows no shift.',
  },
  'print-hit': {
    part: 'Part',
    title: 'The nozzle hits a curled-up part',
    mend: {
      headline: 'Stop the edges from curling',
      steps: [
        'Cool the layers more, or print 5 °C to 10 °C cooler.',
        'Lift the nozzle on moves across the part.',
        'Slow down over overhangs.',
      ],
      risk: 'More cooling weakens the bond between layers of some materials.',
    },
    proof: 'A reprint has no scraped edges and no shift.',
  },
  'frame-loose': {
    part: 'Frame',
    title: 'Frame or stand is loose',
    mend: {
      headline: 'Tighten the frame, bottom to top',
      steps: [
        'Set the frame on a flat, stiff top.',
        'Hold each joint square and tighten its screws clockwise, seen from the head.',
        'Check the square again.',
      ],
      risk: 'Tightening a frame that stands twisted fixes the twist.',
    },
    proof: 'Pushed at a top corner, the frame does not nod.',
  },
  'frame-askew': {
    part: 'Frame',
    title: 'The axes are not square',
    mend: {
      headline: 'Square the frame by its diagonals',
      steps: [
        'Loosen the corner screws by half a turn.',
        'Push the longer diagonal until both measure alike.',
        'Tighten in turn, measuring between.',
      ],
      risk: 'The bed must be trammed again afterwards.',
    },
    proof: 'Both diagonals of a printed square agree within the check’s limit.',
  },
  'stand-uneven': {
    part: 'Stand',
    title: 'The table lets the frame twist or rock',
    mend: {
      headline: 'Set the machine so that all feet bear',
      steps: [
        'Push each corner down in turn.',
        'Shim the foot that moves, or move to a flatter top.',
        'Tram the bed again.',
      ],
      risk: 'None worth naming.',
    },
    proof: 'No corner moves when pushed, and the bed’s heights repeat.',
  },
  'steps-wrong': {
    part: 'Settings',
    title: 'One axis moves other than commanded',
    mend: {
      headline: 'Set the steps per length from a long measured move',
      steps: [
        'Command as long a move as the axis has; measure it.',
        'Put both into the check and set the value it gives.',
        'Move back and measure once more.',
      ],
      risk: 'Correcting by a printed part mixes the material’s shrinkage in.',
    },
    proof: 'A long commanded move is as long as it should be, within the check’s limit.',
  },
};
