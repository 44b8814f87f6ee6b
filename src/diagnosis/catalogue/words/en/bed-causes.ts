import type { bedCauses as causes } from '../../bed-causes';
import type { CausesWords } from '../../wording';

export const bedCauses: CausesWords<typeof causes> = {
  'bed-tilted': {
    part: 'Bed',
    title: 'The bed is not parallel to the gantry',
    mend: {
      headline: 'Tram the bed with its screws',
      steps: [
        'Bed hot for a quarter of an hour, nozzle wiped and too cool to ooze: take the heights of at least three points.',
        'Turn each adjuster by what the check gives, seen from above.',
        'Take the heights again.',
      ],
      risk: 'Bed and nozzle burn. If the gantry is crooked, a trammed bed follows it and every part leans.',
    },
    proof: 'The points agree within the check’s limit, and the first layer is even.',
  },
  'bed-warped': {
    part: 'Bed',
    title: 'The bed plate is bowed',
    mend: {
      headline: 'Lay a flat plate on, or shim the low place',
      steps: [
        'Put a rule across, hot as when printing and soaked, gloves on; feel the gap.',
        'A glass or ground plate on top, or foil under the low place.',
        'Tram again.',
      ],
      risk: 'The bed burns. Glass breaks and cuts; it warms slower than metal.',
    },
    proof: 'What no screw can fix is within its limit, hot.',
  },
  'adjuster-loose': {
    part: 'Bed',
    title: 'A bed adjuster backs off',
    mend: {
      headline: 'Give the adjuster more spring',
      steps: [
        'Turn all adjusters so that the springs are pressed to about half.',
        'A stiffer spring or a lock nut where one turns by itself.',
        'Tram the bed.',
      ],
      risk: 'The nozzle may now reach the bed: set the Z limit switch first.',
    },
    proof: 'The heights are the same after a day of printing.',
  },
  'crumb-under-plate': {
    part: 'Bed',
    title: 'Something lies under the bed plate',
    mend: {
      headline: 'Take the plate off and clean both faces',
      steps: [
        'Let it cool.',
        'Wipe plate and support; feel along them with a finger.',
        'Lay it on and press the corners.',
      ],
      risk: 'None worth naming, once it is cold.',
    },
    proof: 'No corner of the plate ticks when pressed.',
  },
  'bed-greasy': {
    part: 'Bed',
    title: 'The bed’s surface is greasy',
    mend: {
      headline: 'Wash the bed',
      steps: [
        'Let it cool and take it off if it comes off.',
        'Hot water and washing-up liquid, rinse, dry with clean paper.',
        'Do not touch it afterwards.',
      ],
      risk: 'Keep water away from heater and wires: wash only a plate that comes off, else wipe.',
    },
    proof: 'A first layer holds; on glass or bare metal water runs off as a film too.',
  },
  'gap-wide': {
    part: 'Settings',
    title: 'The first layer’s gap is too wide',
    mend: {
      headline: 'Set the nozzle closer',
      steps: [
        'Print one layer of a single line.',
        'Lower the nozzle by 0.02 mm at a time until the lines touch and are slightly flattened.',
      ],
      risk: 'Too close scrapes the bed and blocks the nozzle.',
    },
    proof: 'A single-layer patch comes off in one piece.',
  },
  'bed-cold': {
    part: 'Bed',
    title: 'The bed’s surface is colder than it should be',
    mend: {
      headline: 'Let the bed soak, or set it hotter',
      steps: [
        'Wait ten minutes at temperature before printing.',
        'Raise it by 5 °C at a time, measured on the surface.',
        'A cover over the machine keeps the warmth.',
      ],
      risk: 'Hot bed: let it cool before touching. No cover over electronics that need air.',
    },
    proof: 'The surface reads what the material asks, and the part holds.',
  },
  draught: {
    part: 'Room',
    title: 'A draught cools the part',
    mend: {
      headline: 'Keep the draught off',
      steps: [
        'Close window or door, turn the fan away.',
        'Else a screen of cardboard on the windy side, clear of anything hot.',
      ],
      risk: 'Cardboard near a heater burns: a hand’s width clear, and stay by.',
    },
    proof: 'A paper strip beside the part hangs still, and the part holds.',
  },
  'base-small': {
    part: 'Part',
    title: 'The part stands on too small a foot',
    mend: {
      headline: 'Give the part a wider foot',
      steps: [
        'Add a flat rim one layer thick, some millimetres wide, or ears at the corners.',
        'The check gives the foot that a tall part needs.',
      ],
      risk: 'The rim leaves an edge to trim; mind the blade.',
    },
    proof: 'The part holds to its end with the wider foot.',
  },
  'surface-worn': {
    part: 'Bed',
    title: 'The bed’s surface is worn out',
    mend: {
      headline: 'Use the plate’s other face, else a new surface',
      steps: [
        'Print the part on an unworn spot to be sure.',
        'Turn the plate over, or fit a new surface.',
        'Set the first layer’s gap again.',
      ],
      risk: 'Peeling old adhesive needs warmth and patience; mind the blade.',
    },
    replace: {
      headline: 'Fit a new plate',
      steps: ['Take the old one off.', 'Lay the new one on.', 'Set the gap.'],
      risk: 'Another surface needs another temperature.',
    },
    proof: 'The part holds on the new surface in the same place.',
  },
  'frame-grows': {
    part: 'Frame',
    title: 'Warmth moves the frame and opens the first layer’s gap',
    mend: {
      headline: 'Set the gap at the temperature it will print at',
      steps: [
        'Let machine and room settle for half an hour.',
        'Let the check say how far the gap moves with the day’s swing.',
        'Set the gap then, or find it anew at each start.',
      ],
      risk: 'A gap set in a cold room scrapes in a warm one.',
    },
    proof: 'The first layer is the same in the morning and in the evening.',
  },
};
