import type { Answer, Check } from '../types';
import { measured, seen, sorted } from './make';

const TRAM: readonly Answer[] = [
  { id: 'within', label: 'Flat and parallel', verdict: 'within' },
  { id: 'tilt', label: 'Tilted: the screws can put it right', verdict: 'beyond' },
  { id: 'bowed', label: 'What no screw can fix is beyond the limit', verdict: 'beyond' },
  { id: 'close', label: 'Too close to call', verdict: 'too close' },
];

export const bedChecks: readonly Check[] = [
  sorted(
    'calculator',
    'bed-heights',
    'Measure the bed’s heights',
    TRAM,
    {
      how: [
        'Take the height at five points or more with the nozzle cold.',
        'The check splits it into tilt and what no screw can fix.',
      ],
      cautions: ['Nozzle and bed cold; keep your fingers out from under the nozzle while it moves.'],
      minutes: 8,
      powered: true,
      tools: ['feeler gauge'],
      given: {
        'bed-tilted': { within: 5, tilt: 80, bowed: 6, close: 9 },
        'adjuster-loose': { within: 10, tilt: 70, bowed: 11, close: 9 },
        'sides-unequal': { within: 12, tilt: 70, bowed: 8, close: 10 },
        'bed-warped': { within: 6, tilt: 10, bowed: 74, close: 10 },
        'crumb-under-plate': { within: 12, tilt: 18, bowed: 60, close: 10 },
        'gap-wide': { within: 80, tilt: 7, bowed: 5, close: 8 },
      },
      otherwise: { within: 78, tilt: 8, bowed: 6, close: 8 },
    },
    'bed-tram',
  ),
  seen(
    'feel',
    'adjusters',
    'Turn each bed adjuster a little and back',
    ['One turns with no resistance', 'All are stiff'],
    {
      how: ['Turn each by an eighth and back to its mark.', 'Press the bed’s corners: none may wobble.'],
      cautions: ['Bed cold.'],
      minutes: 1,
      tells: { 'adjuster-loose': 0.87, 'bed-tilted': 0.12 },
      falsely: 0.06,
    },
  ),
  seen('look', 'under-plate', 'Lift the plate and look beneath', ['Something lies there', 'Clean'], {
    how: ['Take the plate off and feel along both faces with a finger.'],
    cautions: ['Bed cold.'],
    minutes: 2,
    tells: { 'crumb-under-plate': 0.92 },
    falsely: 0.06,
  }),
  seen('do', 'bed-rule', 'Lay a rule across the bed', ['Light shows under it', 'It lies close'], {
    how: ['Lay a steel rule on edge across, along and on both diagonals, a lamp behind it.'],
    cautions: ['Bed cold, or gloves.'],
    minutes: 3,
    tools: ['steel rule'],
    tells: { 'bed-warped': 0.87, 'crumb-under-plate': 0.5 },
    falsely: 0.08,
  }),
  seen('look', 'strand-shape', 'Look at the first layer’s lines', ['Round, with gaps between', 'Flat and touching'], {
    how: ['Look at the underside of the part with a lens.', 'Scratch it: lines that part are too far from the bed.'],
    minutes: 1,
    tells: { 'gap-wide': 0.88, 'bed-tilted': 0.5, 'frame-grows': 0.6 },
    falsely: 0.12,
  }),
  seen('do', 'water-film', 'Put water on the bed', ['It draws into beads', 'It spreads as a film'], {
    how: ['A few drops on the cold plate where the part stood.', 'Tilt it and watch.'],
    cautions: ['Plate off the machine, or a drop only: water and heaters do not mix.'],
    minutes: 2,
    tells: { 'bed-greasy': 0.85, 'surface-worn': 0.3 },
    falsely: 0.12,
  }),
  seen(
    'do',
    'bed-surface-temperature',
    'Measure the bed’s surface temperature',
    ['More than 5 °C too cold', 'As set'],
    {
      how: ['Tape the probe to the plate where the part stands.', 'Wait ten minutes at the set temperature.'],
      cautions: ['The bed burns.'],
      minutes: 10,
      powered: true,
      tools: ['probe thermometer'],
      tells: { 'bed-cold': 0.9, draught: 0.2, 'supply-weak': 0.3 },
      falsely: 0.06,
    },
  ),
  seen('look', 'paper-strip', 'Hang a paper strip by the bed', ['It stirs', 'It hangs still'], {
    how: ['Hang a strip of tissue from the gantry, fans off, for two minutes.'],
    cautions: ['Clear of anything hot.'],
    minutes: 2,
    tells: { draught: 0.85, 'bed-cold': 0.2 },
    falsely: 0.08,
  }),
  seen('look', 'foot-size', 'Look at what came loose', ['Tall on a small foot', 'Broad and low'], {
    how: ['Compare the foot’s width with the part’s height.', 'A foot narrower than a fifth of the height is small.'],
    minutes: 1,
    tells: { 'base-small': 0.9, 'part-sways': 0.6 },
    falsely: 0.2,
  }),
  seen('look', 'surface-look', 'Look at the bed’s surface against the light', ['Bare, scratched or glazed', 'Even'], {
    how: ['Tilt the plate under a lamp.', 'Compare where parts stand with an unused corner.'],
    minutes: 1,
    tells: { 'surface-worn': 0.87, 'bed-greasy': 0.25 },
    falsely: 0.1,
  }),
  measured('room-air', 'workshop-air', 'Measure the room’s air and the day’s swing', {
    how: [
      'Read temperature and humidity in the morning and in the evening.',
      'The check gives the gap the swing opens.',
    ],
    minutes: 5,
    tools: ['room hygrometer'],
    tells: { 'frame-grows': 0.82, 'filament-damp': 0.3, 'bed-cold': 0.35 },
    falsely: 0.12,
  }),
];
