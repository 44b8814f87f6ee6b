import { measured, seen, sorted } from './make';

const TRAM = [
  { id: 'within', verdict: 'within' },
  { id: 'tilt', verdict: 'beyond' },
  { id: 'bowed', verdict: 'beyond' },
  { id: 'close', verdict: 'too close' },
] as const;

export const bedInspections = [
  sorted(
    'calculator',
    'bed-heights',
    TRAM,
    {
      minutes: 8,
      powered: true,
      tools: ['feeler-gauge'],
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
  seen('feel', 'adjusters', { minutes: 1, tells: { 'adjuster-loose': 0.87, 'bed-tilted': 0.12 }, falsely: 0.06 }),
  seen('look', 'under-plate', { minutes: 2, tells: { 'crumb-under-plate': 0.92 }, falsely: 0.06 }),
  seen('do', 'bed-rule', {
    minutes: 3,
    tools: ['steel-rule'],
    tells: { 'bed-warped': 0.87, 'crumb-under-plate': 0.5 },
    falsely: 0.08,
  }),
  seen('look', 'extruded-shape', {
    minutes: 1,
    tells: { 'gap-wide': 0.88, 'bed-tilted': 0.5, 'frame-grows': 0.6 },
    falsely: 0.12,
  }),
  seen('do', 'water-film', { minutes: 2, tells: { 'bed-greasy': 0.85, 'surface-worn': 0.3 }, falsely: 0.12 }),
  seen('do', 'bed-surface-temperature', {
    minutes: 10,
    powered: true,
    tools: ['probe-thermometer'],
    tells: { 'bed-cold': 0.9, draught: 0.2, 'supply-weak': 0.3 },
    falsely: 0.06,
  }),
  seen('look', 'paper-strip', { minutes: 2, tells: { draught: 0.85, 'bed-cold': 0.2 }, falsely: 0.08 }),
  seen('look', 'foot-size', { minutes: 1, tells: { 'base-small': 0.9, 'part-sways': 0.6 }, falsely: 0.2 }),
  seen('look', 'surface-look', { minutes: 1, tells: { 'surface-worn': 0.87, 'bed-greasy': 0.25 }, falsely: 0.1 }),
  measured('room-air', 'workshop-air', {
    minutes: 5,
    tools: ['room-hygrometer'],
    tells: { 'frame-grows': 0.82, 'filament-damp': 0.3, 'bed-cold': 0.35 },
    falsely: 0.12,
  }),
];
