import { cause, mend, up, way } from './make';

export const meltCauses = [
  cause('pull-back-short', 'Settings', 'The strand is pulled back too little', {
    raisedBy: [up('tube-feed', 1.5), up('nozzle-changed', 1.8), up('new-filament', 1.3)],
    mend: mend(
      'Set the pull-back length that the check gives',
      [
        'Enter nozzle, speed and feed path into the check.',
        'Set the length it gives; print its test piece.',
        'Change by its steps until the hairs stop.',
      ],
      {
        minutes: 15,
        works: 0.88,
        risk: 'Too long a pull-back draws melt into the cold side and jams it.',
        calculator: 'retraction',
      },
    ),
    proof: 'The test piece of two blocks has no hairs between.',
  }),
  cause('melt-hot', 'Settings', 'The melt is hotter than it needs to be', {
    raisedBy: [up('hotter', 2.5, 0.8), up('new-filament', 1.5), up('hot-end-changed', 1.5)],
    mend: mend(
      'Print cooler by 5 °C at a time',
      [
        'Lower the temperature by 5 °C and print the piece again.',
        'Stop when layers begin to part by hand; go back by one step.',
      ],
      { minutes: 15, works: 0.88, risk: 'Too cold, layers bond badly and the feeder grinds.' },
    ),
    proof: 'A reprint is clean, and its layers do not part by hand.',
  }),
  cause('filament-damp', 'Filament', 'The filament has taken up water', {
    raisedBy: [up('open-filament', 2.5, 0.5), up('damp-room', 2.5, 0.7), up('stood-long', 2)],
    mend: mend(
      'Dry the spool',
      [
        'Let the check give temperature and hours for this material.',
        'Dry it with the lid ajar; keep it in a closed box with drying agent afterwards.',
      ],
      {
        minutes: 15,
        cost: 0.5,
        works: 0.88,
        risk: 'Too hot, the strand softens and sticks to itself on the spool.',
        calculator: 'filament-moisture',
      },
    ),
    replace: way(
      'Use another spool',
      ['Take an unopened spool.', 'Print the same piece.'],
      5,
      20,
      'A sealed spool can be damp too.',
    ),
    proof: 'The strand leaves the nozzle without a hiss, and the reprint is clean.',
  }),
  cause('tube-gap', 'Tube', 'The tube does not sit tight in the hot end', {
    raisedBy: [up('tube-feed', 2, 0.1), up('hot-end-changed', 2.5), up('nozzle-changed', 1.6)],
    mend: mend(
      'Cut the tube square and seat it',
      [
        'Warm the hot end so that the plastic lets go; pull the tube.',
        'Cut its end square with a blade.',
        'Push it down to the nozzle and lock the fitting.',
      ],
      { minutes: 25, cost: 2, works: 0.88, risk: 'Hot end and blade: gloves, and cut away from the hand.' },
    ),
    proof: 'The tube does not move by a hair when pulled and let go.',
  }),
  cause('nozzle-worn', 'Nozzle', 'The nozzle’s bore is worn wide', {
    raisedBy: [up('many-hours', 2.5, 0.6), up('nozzle-changed', 0.1)],
    mend: mend(
      'Fit a new nozzle',
      [
        'Heat the hot end; hold the block with a spanner.',
        'Turn the nozzle out counter-clockwise, seen from its tip.',
        'Turn the new one in and tighten it hot, gently.',
      ],
      {
        minutes: 15,
        cost: 4,
        works: 0.93,
        risk: 'The nozzle is hot enough to burn; holding only the nozzle can shear the thin tube above the block.',
      },
    ),
    proof: 'One line printed in the air is as wide as the bore’s nominal size.',
  }),
  cause('nozzle-blocked', 'Nozzle', 'The nozzle is partly blocked', {
    raisedBy: [up('new-filament', 1.5), up('nozzle-changed', 0.6), up('hotter', 1.4), up('many-hours', 1.3)],
    mend: mend(
      'Draw the dirt out with half-cooled filament',
      [
        'Heat, push filament through by hand until it flows.',
        'Cool until it is stiff but still lets go, then pull it out in one go.',
        'Repeat until its tip comes out clean.',
      ],
      { minutes: 18, works: 0.82, risk: 'The hot end burns; keep the other hand away from the nozzle.' },
    ),
    replace: way(
      'Fit a new nozzle',
      ['Heat; hold the block with a spanner.', 'Change the nozzle hot.'],
      15,
      4,
      'The hot end burns.',
    ),
    proof: 'Pushed by hand, the strand comes out straight and even.',
  }),
  cause('feed-slips', 'Feeder', 'The feeder slips on the strand', {
    raisedBy: [up('many-hours', 1.6), up('faster', 1.6), up('new-filament', 1.2)],
    mend: mend(
      'Clean the drive gear and set its pressure',
      [
        'Unload the strand; brush the dust out of the gear’s teeth.',
        'Tighten the pressure screw by half a turn, clockwise seen from its head.',
        'Load and feed 100 mm: the teeth’s marks should be even and shallow.',
      ],
      { minutes: 10, works: 0.88, risk: 'Too much pressure flattens soft filament and jams it.' },
    ),
    replace: way(
      'Fit a new drive gear',
      ['Take the feeder’s lid off.', 'Change gear and idler.'],
      30,
      9,
      'Feed per turn changes: set the steps per length anew.',
    ),
    proof: '100 mm commanded are 100 mm fed, at printing speed.',
  }),
  cause('gear-eccentric', 'Feeder', 'The drive gear runs out of true', {
    raisedBy: [up('new-build', 1.5), up('worked-on', 1.4)],
    mend: mend(
      'Seat the drive gear anew, else replace it',
      [
        'Loosen its grub screw; clean shaft and bore.',
        'Push it on square, grub screw on the flat, and tighten.',
        'Mark it and watch a turn; if it still wobbles, change it.',
      ],
      {
        minutes: 25,
        cost: 8,
        works: 0.85,
        risk: 'Feed per turn changes with a new gear: set the steps per length anew.',
      },
    ),
    proof: 'Ridges at the gear’s turn are gone from a reprint.',
  }),
  cause('feeder-loose', 'Feeder', 'The feeder or its gear has play', {
    raisedBy: [up('new-build', 1.6), up('worked-on', 1.5), up('many-hours', 1.4)],
    mend: mend(
      'Tighten the feeder’s gear and mount',
      ['Hold the gear, turn the motor’s shaft: nothing may tick.', 'Tighten grub screw and mounting screws.'],
      { minutes: 10, works: 0.9, risk: 'None worth naming.' },
    ),
    proof: 'The gear does not move against its shaft when rocked.',
  }),
  cause('filament-uneven', 'Filament', 'The strand’s diameter varies', {
    raisedBy: [up('new-filament', 3, 0.6)],
    mend: mend(
      'Print with another spool',
      [
        'Measure the strand every metre for ten metres, both ways.',
        'If it varies by more than 0.05 mm, send the spool back or keep it for rough work.',
      ],
      { minutes: 6, cost: 20, works: 0.92, risk: 'None worth naming.' },
    ),
    proof: 'The same piece from another spool is even.',
  }),
  cause('spool-drags', 'Spool', 'The spool drags or is tangled', {
    raisedBy: [up('new-filament', 1.8), up('just-moved', 1.4)],
    mend: mend(
      'Free the spool',
      [
        'Unwind a few turns by hand and look for a crossed strand.',
        'Set the spool so that it turns at a finger’s touch.',
        'Never let go of the free end.',
      ],
      { minutes: 5, works: 0.92, risk: 'None worth naming.' },
    ),
    proof: 'The strand runs off under its own weight, a whole turn long.',
  }),
  cause('heat-creeps', 'Hot end’s cold side', 'Heat creeps up and softens the strand too early', {
    raisedBy: [up('warm-cupboard', 2.5), up('hot-end-changed', 1.8), up('hotter', 1.4)],
    mend: mend(
      'Cool the hot end’s cold side',
      [
        'Clear hair and dust from its fan; see that it turns whenever the hot end is above 50 °C.',
        'Replace a fan that starts only when pushed.',
        'Open the cupboard.',
      ],
      { minutes: 18, cost: 6, works: 0.85, risk: 'Fan blades and the hot end: work with it cold and unplugged.' },
    ),
    proof: 'An hour’s print with many pull-backs runs through.',
  }),
  cause('feed-motor-hot', 'Feeder motor', 'The feeder’s motor overheats and softens the strand', {
    raisedBy: [up('warm-cupboard', 2), up('faster', 1.4), up('many-hours', 1.1)],
    mend: mend(
      'Lower the motor’s current or give it air',
      [
        'Measure its case after an hour; above about 60 °C is too hot.',
        'Lower its current by a tenth, or fit a heat sink.',
      ],
      { minutes: 20, cost: 2, works: 0.82, risk: 'Too little current and the motor skips.' },
    ),
    proof: 'After an hour the case is below 60 °C and the band does not come.',
  }),
  cause('over-fed', 'Settings', 'More strand is fed than the lines need', {
    raisedBy: [up('new-filament', 1.4), up('worked-on', 1.4), up('nozzle-changed', 1.4)],
    mend: mend(
      'Set the feed by a measured length',
      ['Command 100 mm of feed, measure what went in.', 'Set the steps per length that the check gives.'],
      {
        minutes: 10,
        works: 0.9,
        risk: 'Measured too fast or too cold, slip hides in it.',
        calculator: 'steps-per-length',
      },
    ),
    proof: '100 mm commanded are 100 mm fed, and a top face is flat.',
  }),
  cause('layers-warm', 'Part', 'Small layers do not cool before the next', {
    raisedBy: [up('tall-part', 1.8), up('hotter', 1.4), up('faster', 1.6)],
    mend: mend(
      'Give each layer time',
      [
        'Set a least time per layer of about 10 s.',
        'Print two pieces side by side, or one with a helper tower.',
        'Full part cooling, where the material bears it.',
      ],
      { minutes: 8, works: 0.88, risk: 'A waiting nozzle oozes: let it wait beside the part.' },
    ),
    proof: 'Two pieces printed together are sharp where one alone was not.',
  }),
  cause('part-sways', 'Part', 'The slender part itself sways under the nozzle', {
    raisedBy: [up('tall-part', 2.2, 0.4), up('faster', 1.3)],
    mend: mend(
      'Stiffen the part while it prints',
      [
        'Let the check give the height from which it sways and the base it needs.',
        'Add thin braces to be cut off, or print it lying.',
        'Slow down above that height.',
      ],
      { minutes: 15, works: 0.88, risk: 'Braces leave marks.', calculator: 'test-column' },
    ),
    proof: 'Braced, the same part is straight up to its top.',
  }),
];
