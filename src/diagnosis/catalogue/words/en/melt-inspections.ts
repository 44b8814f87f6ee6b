import type { meltInspections as inspections } from '../../melt-inspections';
import type { InspectionsWords } from '../../wording';
import { LIMIT, UNSURE } from './answers';

const HOT = 'The hot end burns: gloves, and nothing loose near it.';

export const meltInspections: InspectionsWords<typeof inspections> = {
  'gear-turn': {
    title: 'Mark the feed gear and watch it turn',
    how: [
      'Put a dot on the gear’s face.',
      'Feed 50 mm slowly and watch gear and idler arm for one turn after another.',
    ],
    cautions: [HOT],
    answers: { yes: 'It wobbles, or feeds in surges', no: 'It runs true', unsure: UNSURE },
  },
  'filament-caliper': {
    title: 'Measure the filament’s diameter along ten metres',
    how: ['Measure every metre, both ways across.', 'Take the greatest less the smallest.'],
    cautions: [],
    answers: { yes: 'It varies by more than 0.05 mm', no: 'It is even', unsure: UNSURE },
  },
  'filament-teeth': {
    title: 'Look at the filament where the gear gripped it',
    how: ['Unload the filament and look at the last hand’s width.', 'Look into the gear’s teeth with a lamp.'],
    cautions: [],
    answers: { yes: 'Ground away, or dust in the teeth', no: 'Even, shallow marks', unsure: UNSURE },
  },
  'push-through': {
    title: 'Push filament through by hand',
    how: [
      'Heat to printing temperature, open the feeder.',
      'Push by hand and watch the extruded thread leave the nozzle.',
    ],
    cautions: [HOT],
    answers: { yes: 'Hard, or it comes out askew', no: 'Easy and straight', unsure: UNSURE },
  },
  hiss: {
    title: 'Listen to the extruded thread leaving the nozzle',
    how: ['Heat to printing temperature and feed 50 mm into the air.', 'Listen close by; look for bubbles and steam.'],
    cautions: [HOT],
    answers: { yes: 'It hisses or pops', no: 'It is silent', unsure: UNSURE },
  },
  moisture: {
    title: 'Work out what the open spool has taken up',
    how: ['Enter the material, the room’s air and how long the spool lay open.'],
    cautions: [],
    answers: LIMIT,
  },
  'spool-pull': {
    title: 'Pull the filament off the spool by hand',
    how: ['Pull two turns off, slowly, where the feeder would pull.', 'Look for a turn crossed under another.'],
    cautions: [],
    answers: { yes: 'It drags or catches', no: 'It runs freely', unsure: UNSURE },
  },
  'retraction-length': {
    title: 'Check the retraction',
    how: ['Enter nozzle, speed, material and feed path.', 'Compare the length it gives with the one set.'],
    cautions: [],
    answers: LIMIT,
  },
  'cooler-print': {
    title: 'Print the same piece ten degrees cooler',
    how: [
      'Lower the temperature by 10 °C, leave all else.',
      'Print the piece again, or the comb that “Retraction and nozzle” offers.',
    ],
    cautions: [],
    answers: { yes: 'Clearly better', no: 'Much the same', unsure: UNSURE },
  },
  'temperature-card': {
    title: 'Compare the set temperature with the spool’s label',
    how: ['Read the range on the spool.', 'Compare with what is set, for the first layer and the rest.'],
    cautions: [],
    answers: { yes: 'Above its range', no: 'Within', unsure: UNSURE },
  },
  'tube-tug': {
    title: 'Tug at the tube where it enters the hot end',
    how: ['Pull the tube gently, then push it; watch the fitting.'],
    cautions: ['Hot end cold.'],
    answers: { yes: 'It moves', no: 'It sits fast', unsure: UNSURE },
  },
  'nozzle-bore': {
    title: 'Look at the nozzle’s bore with a lens',
    how: ['Wipe the tip clean, cold.', 'Compare the bore with a drill’s shank or a new nozzle.'],
    cautions: ['Hot end cold.'],
    answers: { yes: 'Wide, oval or flattened', no: 'Round and sharp', unsure: UNSURE },
  },
  'feeder-rock': {
    title: 'Rock the feed gear',
    how: ['Hold the motor, rock the gear to and fro.', 'Rock the feeder on its mount.'],
    cautions: ['Switched off.'],
    answers: { yes: 'It has play', no: 'It is firm', unsure: UNSURE },
  },
  'cold-fan': {
    title: 'Look whether the cold side’s fan turns',
    how: [
      'Heat the hot end to printing temperature.',
      'Look at the fan on its cold side; hold a paper strip in its air.',
    ],
    cautions: [HOT],
    answers: { yes: 'It stands, or limps', no: 'It turns fast', unsure: UNSURE },
  },
  'feed-motor': {
    title: 'Feel the feeder’s motor after an hour',
    how: ['Touch its case briefly with a knuckle after an hour of printing.'],
    cautions: ['It may be hot enough to hurt: a brief touch.'],
    answers: { yes: 'Too hot to hold', no: 'Warm', unsure: UNSURE },
  },
  'fed-length': {
    title: 'Measure the length that is fed',
    how: ['Mark the filament 120 mm above the feeder.', 'Feed 100 mm slowly, hot; measure what is left.'],
    cautions: [HOT],
    answers: LIMIT,
  },
  'two-at-once': {
    title: 'Print two of them at once',
    how: ['Print two pieces a hand’s width apart, so that each layer waits for the other.'],
    cautions: [],
    answers: { yes: 'Both come out well', no: 'Still wavy', unsure: UNSURE },
  },
  'top-softness': {
    title: 'Look at the upper layers',
    how: ['Compare the slender part’s upper layers with a thick part’s, under a lamp.'],
    cautions: [],
    answers: { yes: 'Rounded, shiny or sagging', no: 'Sharp but out of place', unsure: UNSURE },
  },
  column: {
    title: 'Work out from which height the part sways',
    how: ['Enter the part’s width, height and foot, material and speed.'],
    cautions: [],
    answers: LIMIT,
  },
};
