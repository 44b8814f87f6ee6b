import type { meltCauses as causes } from '../../melt-causes';
import type { CausesWords } from '../../wording';
import { CHANGE_NOZZLE, HOT_END_RISK, OPEN_HOT_END } from './hot-end';

/** For mends of what leaves a band of starved layers behind. */
const SEAM =
  'A starved part that carries a person, heat, mains or a raised load is printed anew, never saved with a seam.';

export const meltCauses: CausesWords<typeof causes> = {
  'retraction-short': {
    part: 'Settings',
    title: 'The retraction is too small',
    mend: {
      headline: 'Set the retraction that the check gives',
      steps: [
        'Enter nozzle, speed and feed path into the check.',
        'Set the length it gives; print its test piece.',
        'Change by its steps until the hairs stop.',
      ],
      risk: 'Too much retraction draws melt into the cold side and jams it.',
    },
    proof: 'The comb’s gaps stay clean up to the length that is set.',
  },
  'melt-hot': {
    part: 'Settings',
    title: 'The melt is hotter than it needs to be',
    mend: {
      headline: 'Print cooler by 5 °C at a time',
      steps: [
        'Lower the temperature by 5 °C and print the piece again.',
        'Stop when layers begin to part by hand; go back by one step.',
      ],
      risk: 'Too cold, layers bond badly and the feeder grinds.',
    },
    proof: 'A reprint is clean, and its layers do not part by hand.',
  },
  'filament-damp': {
    part: 'Filament',
    title: 'The filament has taken up water',
    mend: {
      headline: 'Dry the spool',
      steps: [
        'Let the check give temperature and hours for this material.',
        'Dry it with the lid ajar; keep it in a closed box with drying agent afterwards.',
      ],
      risk: 'Too hot, the filament softens and sticks to itself on the spool.',
    },
    replace: {
      headline: 'Use another spool',
      steps: ['Take an unopened spool.', 'Print the same piece.'],
      risk: 'A sealed spool can be damp too.',
    },
    proof: 'The extruded thread leaves the nozzle without a hiss, and the reprint is clean.',
  },
  'tube-gap': {
    part: 'Tube',
    title: 'The tube does not sit tight in the hot end',
    mend: {
      headline: 'Cut the tube square and seat it',
      steps: [
        'Warm the hot end so that the plastic lets go, at most to the tube’s limit; switch off, unplug, pull the tube.',
        'Cut its end square with a blade.',
        'Push it down to the nozzle and lock the fitting.',
      ],
      risk: 'Hot end and blade: gloves, and cut away from the hand.',
    },
    proof: 'The tube does not move by a hair when pulled and let go.',
  },
  'nozzle-worn': {
    part: 'Nozzle',
    title: 'The nozzle’s bore is worn wide',
    mend: {
      headline: 'Fit a new nozzle',
      steps: [...OPEN_HOT_END, ...CHANGE_NOZZLE],
      risk: HOT_END_RISK,
    },
    proof: 'One line printed in the air is as wide as the bore’s nominal size.',
  },
  'nozzle-blocked': {
    part: 'Nozzle',
    title: 'The nozzle is partly blocked',
    mend: {
      headline: 'Draw the dirt out with half-cooled filament',
      steps: [
        'Heat, push filament through by hand until it flows.',
        'Cool until it is stiff but still lets go, then pull it out in one go.',
        'Repeat until its tip comes out clean.',
      ],
      risk: `The hot end burns; keep the other hand away from the nozzle. ${SEAM}`,
    },
    replace: {
      headline: 'Fit a new nozzle',
      steps: [...OPEN_HOT_END, ...CHANGE_NOZZLE],
      risk: HOT_END_RISK,
    },
    proof: 'Pushed by hand, the extruded thread comes out straight and even.',
  },
  'feed-slips': {
    part: 'Feeder',
    title: 'The feeder slips on the filament',
    mend: {
      headline: 'Clean the feed gear and set its pressure',
      steps: [
        'Unload the filament; brush the dust out of the gear’s teeth.',
        'Tighten the pressure screw by half a turn, clockwise seen from its head.',
        'Load and feed 100 mm: the teeth’s marks should be even and shallow.',
      ],
      risk: `Too much pressure flattens soft filament and jams it. ${SEAM}`,
    },
    replace: {
      headline: 'Fit a new feed gear',
      steps: ['Take the feeder’s lid off.', 'Change gear and idler.'],
      risk: 'Feed per turn changes: set the steps per length anew.',
    },
    proof: '100 mm commanded are 100 mm fed, at printing speed.',
  },
  'gear-eccentric': {
    part: 'Feeder',
    title: 'The feed gear runs out of true',
    mend: {
      headline: 'Seat the feed gear anew, else replace it',
      steps: [
        'Loosen its grub screw; clean shaft and bore.',
        'Push it on square, grub screw on the flat, and tighten.',
        'Mark it and watch a turn; if it still wobbles, change it.',
      ],
      risk: 'Feed per turn changes with a new gear: set the steps per length anew.',
    },
    proof: 'Ridges at the gear’s turn are gone from a reprint.',
  },
  'feeder-loose': {
    part: 'Feeder',
    title: 'The feeder or its gear has play',
    mend: {
      headline: 'Tighten the feed gear and the feeder’s mount',
      steps: ['Hold the gear, turn the motor’s shaft: nothing may tick.', 'Tighten grub screw and mounting screws.'],
      risk: 'None worth naming.',
    },
    proof: 'The gear does not move against its shaft when rocked.',
  },
  'filament-uneven': {
    part: 'Filament',
    title: 'The filament’s diameter varies',
    mend: {
      headline: 'Print with another spool',
      steps: [
        'Measure the filament every metre for ten metres, both ways.',
        'If it varies by more than 0.05 mm, send the spool back or keep it for rough work.',
      ],
      risk: 'None worth naming.',
    },
    proof: 'The same piece from another spool is even.',
  },
  'spool-drags': {
    part: 'Spool',
    title: 'The spool drags or is tangled',
    mend: {
      headline: 'Free the spool',
      steps: [
        'Unwind a few turns by hand and look for a crossed turn.',
        'Set the spool so that it turns at a finger’s touch.',
        'Never let go of the free end.',
      ],
      risk: SEAM,
    },
    proof: 'The filament runs off under its own weight, a whole turn long.',
  },
  'heat-creeps': {
    part: 'Hot end’s cold side',
    title: 'Heat creeps up and softens the filament too early',
    mend: {
      headline: 'Cool the hot end’s cold side',
      steps: [
        'Clear hair and dust from its fan; see that it turns whenever the hot end is above 50 °C.',
        'Replace a fan that starts only when pushed.',
        'Open the cover.',
      ],
      risk: `Fan blades and the hot end: work with it cold and unplugged. ${SEAM}`,
    },
    proof: 'An hour’s print with many retractions runs through.',
  },
  'feed-motor-hot': {
    part: 'Feeder motor',
    title: 'The feeder’s motor overheats and softens the filament',
    mend: {
      headline: 'Lower the motor’s current or give it air',
      steps: [
        'Measure its case after an hour; above about 60 °C is too hot.',
        'Lower its current by a tenth, or fit a heat sink.',
      ],
      risk: `Too little current and the motor skips. ${SEAM}`,
    },
    proof: 'After an hour the case is below 60 °C and the band does not come.',
  },
  'over-fed': {
    part: 'Settings',
    title: 'More filament is fed than the lines need',
    mend: {
      headline: 'Set the feed by a measured length',
      steps: ['Command 100 mm of feed, measure what went in.', 'Set the steps per length that the check gives.'],
      risk: 'Measured too fast or too cold, slip hides in it.',
    },
    proof: '100 mm commanded are 100 mm fed, and a top face is flat.',
  },
  'layers-warm': {
    part: 'Part',
    title: 'Small layers do not cool before the next',
    mend: {
      headline: 'Give each layer time',
      steps: [
        'Set a least time per layer of about 10 s.',
        'Print two pieces side by side, or one with a plain column beside it.',
        'Full part cooling, where the material bears it.',
      ],
      risk: 'A waiting nozzle oozes: let it wait beside the part.',
    },
    proof: 'Two pieces printed together are sharp where one alone was not.',
  },
  'part-sways': {
    part: 'Part',
    title: 'The slender part itself sways under the nozzle',
    mend: {
      headline: 'Stiffen the part while it prints',
      steps: [
        'Let the check give the height from which it sways and the base it needs.',
        'Add thin braces to be cut off, or print it lying.',
        'Slow down above that height.',
      ],
      risk: 'Braces leave marks.',
    },
    proof: 'Braced, the same part is straight up to its top.',
  },
};
