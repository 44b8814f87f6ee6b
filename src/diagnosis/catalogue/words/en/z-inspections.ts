import type { zInspections as inspections } from '../../z-inspections';
import type { InspectionsWords } from '../../wording';
import { LIMIT, UNSURE } from './answers';

export const zInspections: InspectionsWords<typeof inspections> = {
  'ridge-spacing': {
    title: 'Measure the ridges’ spacing',
    how: [
      'Measure over ten ridges or more with a caliper, or photograph the wall with a rule beside it.',
      'The check compares it with every turning part of this machine.',
    ],
    cautions: [],
    answers: {
      screw: 'The screw’s lead',
      step: 'The beat of layer and motor step',
      heater: 'The heater’s cycle',
      gear: 'The feed gear',
      wheel: 'A wheel',
      pulley: 'A pulley or idler',
      several: 'Several fit',
      'none-fits': 'None of the listed parts',
    },
  },
  'screw-top': {
    title: 'Watch the screw’s top while Z moves',
    how: [
      'Free the top bearing if there is one.',
      'Hold a rule’s end close to the screw’s top, move Z through ten turns.',
    ],
    cautions: ['Keep fingers and sleeves off the turning screw.'],
    answers: { yes: 'It swings round', no: 'It stands still', unsure: UNSURE },
  },
  'screw-run-out': {
    title: 'Measure the screw’s run-out',
    how: ['Roll the screw on a flat plate with a feeler, or turn it in place against a dial indicator.'],
    cautions: ['Set the gantry on blocks before the screw comes out.'],
    answers: LIMIT,
  },
  'top-freed': {
    title: 'Free the screw’s top and watch it go',
    how: [
      'Mark where the screw’s top stands.',
      'Undo the top bearing, or loosen the nut’s screws half a turn, and look.',
    ],
    cautions: ['Set the gantry on blocks first.'],
    answers: { yes: 'It jumps aside', no: 'It stays where it was', unsure: UNSURE },
  },
  'step-fit': {
    title: 'Check the layer height against the screw’s steps',
    how: ['Enter lead, step angle and layer height.'],
    cautions: [],
    answers: LIMIT,
  },
  'screw-wipe': {
    title: 'Wipe the screw and look at the rag',
    how: ['Wipe ten turns of the thread with a white rag.', 'Feel the thread for grit.'],
    cautions: ['Switched off.'],
    answers: { yes: 'Dry, gritty or dark', no: 'A clean film of oil', unsure: UNSURE },
  },
  'ends-level': {
    title: 'Measure the height of both gantry ends',
    how: ['Measure from the same plane to both ends of the gantry, or lay the phone on it both ways.'],
    cautions: ['Switched off; steady the gantry.'],
    answers: LIMIT,
  },
  'screw-holds': {
    title: 'Work out whether the screw holds by itself',
    how: ['Enter lead, starts, core and the gantry’s weight.'],
    cautions: [],
    answers: LIMIT,
  },
  'coupling-mark': {
    title: 'Mark the coupling and run Z',
    how: [
      'Draw a line across motor shaft, coupling and screw.',
      'Run the whole travel up and down five times, and look.',
    ],
    cautions: ['Keep fingers off the turning screw.'],
    answers: { yes: 'The marks part', no: 'They stay in line', unsure: UNSURE },
  },
  'gantry-lift': {
    title: 'Lift the gantry by hand',
    how: ['Lift each end a little and let it down.', 'Feel for a tick at the nut.'],
    cautions: ['Switched off.'],
    answers: { yes: 'It ticks up and down', no: 'It is firm', unsure: UNSURE },
  },
  'screws-held': {
    title: 'Try to turn each screw with the motors held',
    how: ['Switch on and home, so that the motors hold.', 'Try to turn each screw with two fingers.'],
    cautions: ['Fingers on the smooth part only, and let go before anything is commanded.'],
    answers: { yes: 'One turns freely', no: 'All hold', unsure: UNSURE },
  },
  'thread-look': {
    title: 'Take the screw out and look at both threads',
    how: [
      'Look at the screw’s flanks for shavings, and into the hole with a lamp.',
      'Hold what is behind with a finger and turn the screw.',
    ],
    cautions: [],
    answers: {
      torn: 'Thread or shavings torn out',
      nut: 'A nut behind turns along',
      insert: 'A metal insert turns along',
      whole: 'The thread looks whole',
      unsure: 'Cannot tell',
    },
  },
  'screw-reach': {
    title: 'Measure how far the screw reaches in',
    how: ['Measure the screw’s length, less what it clamps.', 'Measure the hole’s depth with the caliper’s tail.'],
    cautions: [],
    answers: { yes: 'Less than its diameter', no: 'More', unsure: UNSURE },
  },
  'thread-gauge': {
    title: 'Compare screw and hole with a known thread',
    how: ['Hold a thread gauge or a known screw against it.', 'Try a known screw in the hole by hand.'],
    cautions: [],
    answers: { yes: 'They differ', no: 'They agree', unsure: UNSURE },
  },
};
