import type { motionInspections as inspections } from '../../motion-inspections';
import type { InspectionsWords } from '../../wording';
import { LIMIT, UNSURE } from './answers';

const STILL = 'Switched off: nothing may start under your fingers.';
const MOVING = 'Fingers, hair and sleeves away from moving belts and screws.';

export const motionInspections: InspectionsWords<typeof inspections> = {
  'rock-carriage': {
    title: 'Rock the carriage',
    how: [
      'Hold the carriage at two ends and rock it gently, each way.',
      'Do the same with each end of the gantry and with the bed.',
    ],
    cautions: [STILL],
    answers: { yes: 'It ticks or tips', no: 'It is firm', unsure: UNSURE },
  },
  'wheel-slip': {
    title: 'Measure the wheels’ preload',
    how: [
      'Push the carriage slowly and hold one wheel back with a finger, then the next.',
      'Pull with the scale until it slips, and enter the force.',
    ],
    cautions: [STILL],
    answers: LIMIT,
  },
  'wheel-face': {
    title: 'Look at the wheels’ running faces',
    how: [
      'Turn each wheel a full turn past a bright lamp.',
      'Roll the carriage slowly and feel for a tick that comes back.',
    ],
    cautions: [STILL],
    answers: { yes: 'A flat or a dent', no: 'Round and even', unsure: UNSURE },
  },
  'pulley-turn': {
    title: 'Watch the Z pulleys turn',
    how: [
      'Hold a rule’s edge close to the belt where it leaves each pulley.',
      'Move Z slowly through three turns and watch the gap.',
    ],
    cautions: [MOVING],
    answers: { yes: 'The belt rises and falls', no: 'It runs true', unsure: UNSURE },
  },
  'belt-note': {
    title: 'Measure the belt’s tension by its note',
    how: [
      'Move the carriage so that the span of belt is as long as it gets.',
      'Pluck it like a string and let the phone listen.',
    ],
    cautions: [STILL],
    answers: LIMIT,
  },
  'belts-compared': {
    title: 'Compare both belts’ notes',
    how: ['Put the carriage in the middle.', 'Pluck the same span of both belts.'],
    cautions: [STILL],
    answers: LIMIT,
  },
  'pulley-hold': {
    title: 'Hold the shaft and turn the pulley',
    how: [
      'Draw a line across pulley and shaft.',
      'Hold the motor’s coupling or shaft, push the belt firmly both ways, and look at the line.',
    ],
    cautions: [STILL],
    answers: { yes: 'It moves on the shaft', no: 'It sits fast', unsure: UNSURE },
  },
  'carriage-push': {
    title: 'Push carriage and bed by hand from end to end',
    how: ['Push slowly with one finger, from stop to stop, both axes.', 'Note where it gets stiff.'],
    cautions: [STILL],
    answers: { yes: 'It sticks somewhere', no: 'It runs evenly', unsure: UNSURE },
  },
  'guide-length': {
    title: 'Work out whether the guide can bind',
    how: ['Measure the guide’s length and how far off the pull is.', 'Pull with a luggage scale to get the friction.'],
    cautions: [STILL],
    answers: LIMIT,
  },
  'cable-corners': {
    title: 'Watch the cable in every corner',
    how: ['Move carriage and bed by hand into all corners, low and high.', 'Look at cable and tube each time.'],
    cautions: [STILL],
    answers: { yes: 'It pulls or hooks', no: 'It stays slack', unsure: UNSURE },
  },
  'scraped-edges': {
    title: 'Look where the shift begins',
    how: [
      'Look at the layer just below the shift, with a lens.',
      'Curled corners with bright scratches were hit by the nozzle.',
    ],
    cautions: [],
    answers: { yes: 'Curled or scraped edges', no: 'Clean edges', unsure: UNSURE },
  },
  'driver-rest': {
    title: 'Let it rest, then print the same again with a fan on the board',
    how: ['Let the machine cool for half an hour.', 'Aim a table fan at the open vents, print the lower part again.'],
    cautions: ['Do not open a case with mains in it.'],
    answers: { yes: 'No shift now', no: 'Shifted again', unsure: UNSURE },
  },
  'board-air': {
    title: 'Feel the air at the electronics’ vents',
    how: ['After half an hour of printing, hold a hand at the vents.', 'Listen for the fan.'],
    cautions: [],
    answers: { yes: 'Hot, or no draught', no: 'A cool draught', unsure: UNSURE },
  },
  'ripple-spacing': {
    title: 'Measure the ripples’ spacing',
    how: ['Measure over as many ripples as can be seen.', 'Enter the speed they were printed at.'],
    cautions: [],
    answers: LIMIT,
  },
  'slower-print': {
    title: 'Print a small piece at half the acceleration',
    how: ['Halve the acceleration, leave all else.', 'Print the piece again.'],
    cautions: [],
    answers: { yes: 'It is gone', no: 'It is still there', unsure: UNSURE },
  },
  'frame-nod': {
    title: 'Push the frame at its top',
    how: ['Push the top corner with two fingers, along and across.', 'Then press down each foot in turn.'],
    cautions: [STILL],
    answers: { yes: 'It nods or rocks', no: 'It is stiff', unsure: UNSURE },
  },
  diagonals: {
    title: 'Measure the diagonals of a printed square',
    how: ['Measure both diagonals and one side of a large printed square.'],
    cautions: [],
    answers: LIMIT,
  },
  'long-move': {
    title: 'Measure a long commanded move',
    how: ['Command a move nearly as long as the axis, from a mark.', 'Measure it, on both axes.'],
    cautions: [MOVING],
    answers: LIMIT,
  },
};
