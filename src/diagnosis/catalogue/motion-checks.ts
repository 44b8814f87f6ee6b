import type { Check } from '../types';
import { measured, seen } from './make';

const STILL = 'Switched off: nothing may start under your fingers.';
const MOVING = 'Fingers, hair and sleeves away from moving belts and screws.';

export const motionChecks: readonly Check[] = [
  seen('feel', 'rock-carriage', 'Rock the carriage', ['It ticks or tips', 'It is firm'], {
    how: [
      'Hold the carriage at two ends and rock it gently, each way.',
      'Do the same with each end of the gantry and with the bed.',
    ],
    cautions: [STILL],
    minutes: 1,
    tells: { 'wheels-loose': 0.88, 'frame-loose': 0.2 },
    falsely: 0.08,
  }),
  measured('wheel-slip', 'wheel-preload', 'Measure the wheels’ preload', {
    how: [
      'Push the carriage slowly and hold one wheel back with a finger, then the next.',
      'Pull with the scale until it slips, and enter the force.',
    ],
    cautions: [STILL],
    minutes: 8,
    tools: ['luggage scale'],
    tells: { 'wheels-loose': 0.93, 'wheel-flat': 0.3, 'carriage-binds': 0.3 },
    falsely: 0.06,
  }),
  seen('look', 'wheel-face', 'Look at the wheels’ running faces', ['A flat or a dent', 'Round and even'], {
    how: [
      'Turn each wheel a full turn past a bright lamp.',
      'Roll the carriage slowly and feel for a tick that comes back.',
    ],
    cautions: [STILL],
    minutes: 3,
    tells: { 'wheel-flat': 0.87 },
    falsely: 0.08,
  }),
  seen('look', 'pulley-turn', 'Watch the Z pulleys turn', ['The belt rises and falls', 'It runs true'], {
    how: [
      'Hold a rule’s edge close to the belt where it leaves each pulley.',
      'Move Z slowly through three turns and watch the gap.',
    ],
    cautions: [MOVING],
    minutes: 4,
    powered: true,
    tells: { 'pulley-eccentric': 0.82 },
    falsely: 0.08,
  }),
  measured('belt-note', 'belt-tension', 'Measure the belt’s tension by its note', {
    how: [
      'Move the carriage so that the stretch of belt is as long as it gets.',
      'Pluck it like a string and let the phone listen.',
    ],
    cautions: [STILL],
    minutes: 4,
    tells: { 'belt-slack': 0.92, 'belts-unequal': 0.45 },
    falsely: 0.07,
  }),
  measured('belts-compared', 'belt-pair', 'Compare both belts’ notes', {
    how: ['Put the carriage in the middle.', 'Pluck the same stretch of both belts.'],
    cautions: [STILL],
    minutes: 6,
    tells: { 'belts-unequal': 0.92, 'belt-slack': 0.4 },
    falsely: 0.07,
  }),
  seen('feel', 'pulley-hold', 'Hold the shaft and turn the pulley', ['It moves on the shaft', 'It sits fast'], {
    how: [
      'Draw a line across pulley and shaft.',
      'Hold the motor’s coupling or shaft, push the belt firmly both ways, and look at the line.',
    ],
    cautions: [STILL],
    minutes: 3,
    tells: { 'pulley-loose': 0.88 },
    falsely: 0.05,
  }),
  seen(
    'feel',
    'carriage-push',
    'Push carriage and bed by hand from end to end',
    ['It sticks somewhere', 'It runs evenly'],
    {
      how: ['Push slowly with one finger, the whole way, both axes.', 'Note where it gets stiff.'],
      cautions: [STILL],
      minutes: 1,
      tells: { 'carriage-binds': 0.85, 'cable-snags': 0.5, 'wheel-flat': 0.35 },
      falsely: 0.09,
    },
  ),
  measured('guide-length', 'carriage-binding', 'Reckon whether the guide can bind', {
    how: ['Measure the guide’s length and how far off the pull is.', 'Pull with a luggage scale to get the friction.'],
    cautions: [STILL],
    minutes: 7,
    tools: ['rule', 'luggage scale'],
    tells: { 'carriage-binds': 0.8 },
    falsely: 0.1,
  }),
  seen('look', 'cable-corners', 'Watch the cable in every corner', ['It pulls or hooks', 'It stays slack'], {
    how: ['Move carriage and bed by hand into all corners, low and high.', 'Look at cable and tube each time.'],
    cautions: [STILL],
    minutes: 2,
    tells: { 'cable-snags': 0.88, 'cable-broken': 0.25 },
    falsely: 0.06,
  }),
  seen('look', 'scraped-edges', 'Look where the shift begins', ['Curled or scraped edges', 'Clean edges'], {
    how: [
      'Look at the layer just below the shift, with a lens.',
      'Curled corners with bright scratches were hit by the nozzle.',
    ],
    minutes: 1,
    tells: { 'print-hit': 0.8 },
    falsely: 0.12,
  }),
  seen(
    'do',
    'driver-rest',
    'Let it rest, then print the same again with a fan on the board',
    ['No shift now', 'Shifted again'],
    {
      how: ['Let the machine cool for half an hour.', 'Aim a table fan at the open vents, print the lower part again.'],
      cautions: ['Do not open a case with mains in it.'],
      minutes: 25,
      powered: true,
      tells: { 'driver-hot': 0.82, 'accel-high': 0.15 },
      falsely: 0.2,
    },
  ),
  seen('feel', 'board-air', 'Feel the air at the electronics’ vents', ['Hot, or no draught', 'A cool draught'], {
    how: ['After half an hour of printing, hold a hand at the vents.', 'Listen for the fan.'],
    minutes: 2,
    powered: true,
    tells: { 'driver-hot': 0.75, 'board-hot': 0.82, 'feed-motor-hot': 0.2 },
    falsely: 0.12,
  }),
  measured('ripple-spacing', 'ringing', 'Measure the ripples’ spacing', {
    how: ['Measure over as many ripples as can be seen.', 'Enter the speed they were printed at.'],
    minutes: 4,
    tools: ['caliper'],
    tells: { 'accel-high': 0.85, 'belt-slack': 0.35, 'frame-loose': 0.3 },
    falsely: 0.2,
  }),
  seen('do', 'slower-print', 'Print a small piece at half the acceleration', ['It is gone', 'It is still there'], {
    how: ['Halve the acceleration, leave all else.', 'Print a cube with sharp corners.'],
    minutes: 20,
    powered: true,
    tells: { 'accel-high': 0.88, 'print-hit': 0.25, 'belt-slack': 0.25, 'frame-loose': 0.3, 'cable-snags': 0.1 },
    falsely: 0.12,
  }),
  seen('feel', 'frame-nod', 'Push the frame at its top', ['It nods or rocks', 'It is stiff'], {
    how: ['Push the top corner with two fingers, along and across.', 'Then press down each foot in turn.'],
    cautions: [STILL],
    minutes: 1,
    tells: { 'frame-loose': 0.88, 'stand-uneven': 0.85, 'frame-askew': 0.2 },
    falsely: 0.1,
  }),
  measured('diagonals', 'squareness', 'Measure the diagonals of a printed square', {
    how: ['Measure both diagonals and one side of a large printed square.'],
    minutes: 4,
    tools: ['caliper'],
    tells: { 'frame-askew': 0.92, 'belts-unequal': 0.5, 'stand-uneven': 0.4 },
    falsely: 0.07,
  }),
  measured('long-move', 'steps-per-length', 'Measure a long commanded move', {
    how: ['Command a move nearly as long as the axis, from a mark.', 'Measure it, on both axes.'],
    cautions: [MOVING],
    minutes: 6,
    powered: true,
    tools: ['rule'],
    tells: { 'steps-wrong': 0.92 },
    falsely: 0.06,
  }),
];
