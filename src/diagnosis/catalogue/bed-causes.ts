import { cause, mend, up, way } from './make';

export const bedCauses = [
  cause('bed-tilted', 'Bed', 'The bed is not parallel to the gantry', {
    raisedBy: [up('just-moved', 1.8), up('bed-moved', 2.5), up('crashed', 1.5)],
    mend: mend(
      'Tram the bed with its screws',
      [
        'Take the heights of at least three points with the nozzle cold.',
        'Turn each adjuster by what the check gives, seen from above.',
        'Take the heights again.',
      ],
      {
        minutes: 15,
        works: 0.92,
        risk: 'If the gantry is crooked, a trammed bed follows it and every part leans.',
        calculator: 'bed-tram',
      },
    ),
    proof: 'The points agree within the check’s limit, and the first layer is even.',
  }),
  cause('bed-warped', 'Bed', 'The bed plate is bowed', {
    raisedBy: [up('new-build', 1.3), up('hotter', 1.2)],
    mend: mend(
      'Lay a flat plate on, or shim the low place',
      [
        'Put a rule across, hot as when printing; feel the gap.',
        'A glass or ground plate on top, or foil under the low place.',
        'Tram again.',
      ],
      {
        minutes: 30,
        cost: 15,
        works: 0.88,
        risk: 'Glass breaks and cuts; it warms slower than metal.',
        calculator: 'bed-tram',
      },
    ),
    proof: 'The check’s residue is within its limit, hot.',
  }),
  cause('adjuster-loose', 'Bed', 'A bed adjuster backs off', {
    raisedBy: [up('many-hours', 1.4), up('bed-moved', 1.5), up('just-moved', 1.4)],
    mend: mend(
      'Give the adjuster more spring',
      [
        'Turn all adjusters so that the springs are pressed to about half.',
        'A stiffer spring or a lock nut where one turns by itself.',
        'Tram the bed.',
      ],
      { minutes: 18, cost: 3, works: 0.9, risk: 'The nozzle may now reach the bed: set the Z end stop first.' },
    ),
    proof: 'The heights are the same after a day of printing.',
  }),
  cause('crumb-under-plate', 'Bed', 'Something lies under the bed plate', {
    raisedBy: [up('bed-moved', 2.5, 0.6)],
    mend: mend(
      'Take the plate off and clean both faces',
      ['Let it cool.', 'Wipe plate and support; feel along them with a finger.', 'Lay it on and press the corners.'],
      { minutes: 5, works: 0.95, risk: 'None worth naming, once it is cold.' },
    ),
    proof: 'No corner of the plate ticks when pressed.',
  }),
  cause('bed-greasy', 'Bed', 'The bed’s surface is greasy', {
    raisedBy: [up('bed-touched', 2.2, 0.4)],
    mend: mend(
      'Wash the bed',
      [
        'Let it cool and take it off if it comes off.',
        'Hot water and washing-up liquid, rinse, dry with clean paper.',
        'Do not touch it afterwards.',
      ],
      {
        minutes: 8,
        works: 0.9,
        risk: 'Keep water away from heater and wires: wash only a plate that comes off, else wipe.',
      },
    ),
    proof: 'Water runs off as a film, and a first layer holds.',
  }),
  cause('gap-wide', 'Settings', 'The first layer’s gap is too wide', {
    raisedBy: [up('bed-moved', 2), up('nozzle-changed', 2.5), up('just-moved', 1.4)],
    mend: mend(
      'Set the nozzle closer',
      [
        'Print one layer of a single line.',
        'Lower the nozzle by 0.02 mm at a time until the lines touch and are slightly flattened.',
      ],
      { minutes: 10, works: 0.92, risk: 'Too close scrapes the bed and blocks the nozzle.' },
    ),
    proof: 'A single-layer patch comes off in one piece.',
  }),
  cause('bed-cold', 'Bed', 'The bed’s surface is colder than it should be', {
    raisedBy: [up('cold-room', 2), up('new-filament', 1.3)],
    mend: mend(
      'Let the bed soak, or set it hotter',
      [
        'Wait ten minutes at temperature before printing.',
        'Raise it by 5 °C at a time, measured on the surface.',
        'A cover over the machine keeps the warmth.',
      ],
      {
        minutes: 15,
        works: 0.88,
        risk: 'Hot bed: let it cool before touching. No cover over electronics that need air.',
      },
    ),
    proof: 'The surface reads what the material asks, and the part holds.',
  }),
  cause('draught', 'Room', 'A draught cools the part', {
    raisedBy: [up('open-window', 2.5, 0.4), up('cold-room', 1.3)],
    mend: mend(
      'Keep the draught off',
      [
        'Close window or door, turn the fan away.',
        'Else a screen of cardboard on the windy side, clear of anything hot.',
      ],
      { minutes: 6, works: 0.9, risk: 'Cardboard near a heater burns: a hand’s width clear, and stay by.' },
    ),
    proof: 'A paper strip beside the part hangs still, and the part holds.',
  }),
  cause('base-small', 'Part', 'The part stands on too small a foot', {
    raisedBy: [up('tall-part', 2.5, 0.6)],
    mend: mend(
      'Give the part a wider foot',
      [
        'Add a flat rim one layer thick, some millimetres wide, or ears at the corners.',
        'The check gives the foot that a tall part needs.',
      ],
      { minutes: 6, works: 0.9, risk: 'The rim leaves an edge to trim; mind the blade.', calculator: 'test-column' },
    ),
    proof: 'The part holds to its end with the wider foot.',
  }),
  cause('surface-worn', 'Bed', 'The bed’s surface is worn out', {
    raisedBy: [up('many-hours', 2, 0.6)],
    mend: mend(
      'Use the plate’s other face, else a new surface',
      [
        'Print the part on an unworn spot to be sure.',
        'Turn the plate over, or fit a new surface.',
        'Set the first layer’s gap again.',
      ],
      { minutes: 18, cost: 14, works: 0.93, risk: 'Peeling old adhesive needs warmth and patience; mind the blade.' },
    ),
    replace: way(
      'Fit a new plate',
      ['Take the old one off.', 'Lay the new one on.', 'Set the gap.'],
      12,
      25,
      'Another surface needs another temperature.',
    ),
    proof: 'The part holds on the new surface in the same place.',
  }),
  cause('frame-grows', 'Frame', 'Warmth moves the frame and opens the first layer’s gap', {
    raisedBy: [up('cold-room', 1.8), up('warm-cupboard', 1.4)],
    mend: mend(
      'Set the gap at the temperature it will print at',
      [
        'Let machine and room settle for half an hour.',
        'Let the check say how far the gap moves with the day’s swing.',
        'Set the gap then, or find it anew at each start.',
      ],
      { minutes: 15, works: 0.88, risk: 'A gap set in a cold room scrapes in a warm one.', calculator: 'workshop-air' },
    ),
    proof: 'The first layer is the same in the morning and in the evening.',
  }),
];
