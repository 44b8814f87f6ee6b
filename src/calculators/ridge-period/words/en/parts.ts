/** The parts that are compared: in the drawing (at most 20 letters), in a sentence, what to look at first, how the next print proves or clears it, against what it is turned. */
export const parts = {
  lead: {
    short: 'Screw, one turn',
    name: 'one turn of the Z screw',
    look: [
      'Measure the screw with “Lead-screw straightness”.',
      'Look also at its coupling, which must hold it on one axis.',
    ],
    prove:
      'Support the gantry, loosen the coupling of every Z screw, turn each screw half a turn the same way, tighten, print again: the ridges must move by half their spacing.',
    mate: 'its coupling',
  },
  thread: {
    short: 'Screw, one thread',
    name: 'the pitch of the Z screw’s thread',
    look: [
      'Brush the screw’s thread clean and grease it.',
      'Run the nut along it by hand and feel for a tight place in each turn.',
      'A dent that one start alone has shows at the lead instead.',
    ],
    prove: 'Clean and grease the thread and the nut, print again: the ridges must weaken. If not, try another nut.',
    mate: '',
  },
  toothUp: {
    short: 'Z belt, one tooth',
    name: 'one tooth of the Z belt',
    look: [
      'Look whether the belt lies fully in the teeth of the pinion and is not too tight, and whether the pinion has the belt’s own profile.',
    ],
    prove: 'Slacken the belt to three quarters of its tension, print again: the ridges must change in height.',
    mate: '',
  },
  toothAlong: {
    short: 'Belt, one tooth',
    name: 'one tooth of the belt',
    look: [
      'Look whether the belt’s teeth run over a smooth idler, whether the belt is too tight, and whether the pulley has the belt’s own profile.',
    ],
    prove: 'Slacken the belt to three quarters of its tension, print again: the ridges must change in height.',
    mate: '',
  },
  pulleyUp: {
    short: 'Z pinion, one turn',
    name: 'one turn of the Z pinion',
    look: [
      'Turn the drive slowly by hand and watch the pinion’s rim against a fixed point.',
      'It must not wander: a bore that is too wide, pushed aside by the grub screw, makes it do so.',
    ],
    prove:
      'Support the gantry, slacken the belt, turn the pinion half a turn under it, tighten, print again: the ridges must move by half their spacing.',
    mate: 'the belt',
  },
  pulleyAlong: {
    short: 'Pulley, one turn',
    name: 'one turn of the motor pulley',
    look: [
      'Move the carriage slowly by hand and watch the pulley’s rim against a fixed point.',
      'It must not wander: a bore that is too wide, pushed aside by the grub screw, makes it do so.',
    ],
    prove:
      'Slacken the belt, turn the pulley half a turn under it, tighten, print again: the ridges must move by half their spacing.',
    mate: 'the belt',
  },
  motor: {
    short: 'Z motor, one turn',
    name: 'one turn of the Z motor, before its gear',
    look: ['Watch the small wheel on the motor turn against a fixed point: it must not wander.'],
    prove:
      'Support the gantry, turn the motor half a turn against the gear, print again: the ridges must move by half their spacing.',
    mate: 'the gear',
  },
  idlerUp: {
    short: 'Z idler, one turn',
    name: 'one turn of the Z belt’s idler',
    look: ['Turn the idler with a finger: feel for a rough bearing, watch for a wandering rim.'],
    prove:
      'Support the gantry, slacken the belt, turn the idler half a turn under it, tighten, print again: the ridges must move by half their spacing.',
    mate: 'the belt',
  },
  idlerAlong: {
    short: 'Idler, one turn',
    name: 'one turn of an idler',
    look: ['Turn each idler with a finger: feel for a rough bearing, watch for a wandering rim.'],
    prove:
      'Slacken the belt, turn the idler half a turn under it, tighten, print again: the ridges must move by half their spacing.',
    mate: 'the belt',
  },
  odd: {
    short: 'Rounding, odd layer',
    name: 'the odd layer that rounding to full steps makes',
    look: ['Open “Layer height and screw step”: it names the nearest height that is a whole number of steps.'],
    prove: 'Print again at a layer height of whole steps: the ridges must be gone.',
    mate: '',
  },
  wheel: {
    short: 'Guide wheel, one turn',
    name: 'one turn of a guide wheel',
    look: [
      'Look for a flat or a grain pressed into a wheel’s tread.',
      '“Wheel preload” tells whether it is pressed too hard.',
    ],
    prove:
      'Ease one wheel off its rail, turn it half a turn, press it on again, print again: the ridges must move by half their spacing.',
    mate: 'its rail',
  },
  step: {
    short: 'Motor, full step',
    name: 'one full step of the motor',
    look: [
      'Look whether the driver gives the motor its rated current, and whether it is set to smooth the steps.',
      'Motors and drivers run hot: mind them.',
    ],
    prove: 'Print the wall at twice the speed and at half of it: the spacing must stay, only its height change.',
    mate: '',
  },
  cycle: {
    short: 'Motor, four steps',
    name: 'four full steps of the motor, one cycle of its current',
    look: [
      'Look at the motor’s plug and driver: one coil may get more current than the other.',
      'Motors and drivers run hot: mind them.',
      'Never pull a motor’s plug with the power on.',
    ],
    prove:
      'Exchange the drivers of two axes with the power off, print again: the ridges must go along with the driver.',
    mate: '',
  },
  gearUp: {
    short: 'Feed gear, one turn',
    name: 'one turn of the feed gear',
    look: [
      'Brush the feed gear’s teeth clean.',
      'Watch it turn against a fixed point: it must not wander on its shaft.',
    ],
    prove:
      'Print the same wall twice over, side by side, so that a layer takes twice as long: the spacing up the wall must halve.',
    mate: '',
  },
  gearAlong: {
    short: 'Feed gear, one turn',
    name: 'one turn of the feed gear',
    look: [
      'Brush the feed gear’s teeth clean.',
      'Watch it turn against a fixed point: it must not wander on its shaft.',
    ],
    prove: 'Print the wall with a line twice as wide: the spacing must halve.',
    mate: '',
  },
  heatUp: {
    short: 'Heater cycle',
    name: 'the heater’s cycle',
    look: [
      'Watch the temperature over ten layers: it must swing in step with the ridges.',
      'The block is hot: keep hands off.',
    ],
    prove:
      'Print the same wall twice over, side by side, so that a layer takes twice as long: the spacing up the wall must halve.',
    mate: '',
  },
  heatAlong: {
    short: 'Heater cycle',
    name: 'the heater’s cycle',
    look: [
      'Watch the temperature over one long line: it must swing in step with the waves.',
      'The block is hot: keep hands off.',
    ],
    prove: 'Print the wall at half the speed: the spacing must halve.',
    mate: '',
  },
  day: {
    short: 'Day and night',
    name: 'day and night in the room',
    look: ['Note the temperature of the room beside the machine at noon and at midnight.'],
    prove: 'Print again with the room’s temperature held, or the machine under a cover that is made for it.',
    mate: '',
  },
  repeat: {
    short: 'Rounding, repeat',
    name: 'the repeat of the pattern that rounding to full steps makes',
    look: ['Open “Layer height and screw step”: it names the nearest height that is a whole number of steps.'],
    prove: 'Print again at a layer height of whole steps: the ridges must be gone.',
    mate: '',
  },
} as const;
