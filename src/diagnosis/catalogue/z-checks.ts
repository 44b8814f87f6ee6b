import type { Answer, Check } from '../types';
import { measured, seen, sorted } from './make';

const RIDGES: readonly Answer[] = [
  { id: 'screw', label: 'The screw’s lead', verdict: 'within' },
  { id: 'step', label: 'The beat of layer and motor step', verdict: 'within' },
  { id: 'heater', label: 'The heater’s cycle', verdict: 'within' },
  { id: 'gear', label: 'The feeder’s gear', verdict: 'within' },
  { id: 'wheel', label: 'A wheel', verdict: 'within' },
  { id: 'pulley', label: 'A pulley or idler', verdict: 'within' },
  { id: 'several', label: 'Several fit', verdict: 'too close' },
  { id: 'none-fits', label: 'None of the listed parts', verdict: 'beyond' },
];

/** One part fits, or several, or by mischance another or none. */
const ridge = (part: string): Readonly<Record<string, number>> => ({
  ...Object.fromEntries(RIDGES.map(({ id }) => [id, 0.03])),
  several: 0.15,
  'none-fits': 0.08,
  [part]: 0.65,
});

const THREAD: readonly Answer[] = [
  { id: 'torn', label: 'Thread or shavings torn out' },
  { id: 'nut', label: 'A nut behind turns along' },
  { id: 'insert', label: 'A metal insert turns along' },
  { id: 'whole', label: 'The thread looks whole' },
  { id: 'unsure', label: 'Cannot tell' },
];

export const zChecks: readonly Check[] = [
  sorted(
    'calculator',
    'ridge-spacing',
    'Measure the ridges’ spacing',
    RIDGES,
    {
      how: [
        'Measure over ten ridges or more with a caliper, or photograph the wall with a rule beside it.',
        'The check compares it with every turning part of this machine.',
      ],
      minutes: 5,
      tools: ['caliper'],
      given: {
        'screw-bent': ridge('screw'),
        'screw-forced': ridge('screw'),
        'layer-off-step': ridge('step'),
        'loop-untuned': ridge('heater'),
        'gear-eccentric': ridge('gear'),
        'wheel-flat': ridge('wheel'),
        'pulley-eccentric': ridge('pulley'),
      },
      otherwise: { screw: 3, step: 3, heater: 3, gear: 3, wheel: 3, pulley: 3, several: 15, 'none-fits': 60 },
    },
    'ridge-period',
  ),
  seen('look', 'screw-top', 'Watch the screw’s top while Z moves', ['It swings round', 'It stands still'], {
    how: [
      'Free the top bearing if there is one.',
      'Hold a rule’s end close to the screw’s top, move Z through ten turns.',
    ],
    cautions: ['Keep fingers and sleeves off the turning screw.'],
    minutes: 3,
    powered: true,
    tells: { 'screw-bent': 0.85, 'screw-forced': 0.4 },
    falsely: 0.1,
  }),
  measured('screw-run-out', 'lead-screw-straightness', 'Measure the screw’s run-out', {
    how: ['Roll the screw on a flat plate with a feeler gauge, or turn it in place against a dial indicator.'],
    cautions: ['Set the gantry on blocks before the screw comes out.'],
    minutes: 18,
    tools: ['feeler gauge'],
    tells: { 'screw-bent': 0.94 },
    falsely: 0.05,
  }),
  seen('do', 'top-freed', 'Free the screw’s top and watch it go', ['It jumps aside', 'It stays where it was'], {
    how: [
      'Mark where the screw’s top stands.',
      'Undo the top bearing, or loosen the nut’s screws half a turn, and look.',
    ],
    cautions: ['Set the gantry on blocks first.'],
    minutes: 6,
    tells: { 'screw-forced': 0.85, 'screw-bent': 0.3 },
    falsely: 0.08,
  }),
  measured('step-fit', 'screw-step', 'Check the layer height against the screw’s steps', {
    how: ['Enter lead, step angle and layer height.'],
    minutes: 2,
    tells: { 'layer-off-step': 0.95 },
    falsely: 0.15,
  }),
  seen('look', 'screw-wipe', 'Wipe the screw and look at the rag', ['Dry, gritty or dark', 'A clean film of oil'], {
    how: ['Wipe ten turns of the thread with a white rag.', 'Feel the thread for grit.'],
    cautions: ['Switched off.'],
    minutes: 2,
    tells: { 'screw-dry': 0.9, 'nut-worn': 0.35 },
    falsely: 0.15,
  }),
  measured('ends-level', 'dual-z-sync', 'Measure the height of both gantry ends', {
    how: ['Measure from the same plane to both ends of the gantry, or lay the phone on it both ways.'],
    cautions: ['Switched off; steady the gantry.'],
    minutes: 4,
    tools: ['caliper'],
    tells: { 'sides-unequal': 0.93, 'wheels-loose': 0.25, 'coupling-slips': 0.6, 'z-motor-off': 0.75 },
    falsely: 0.07,
  }),
  measured('screw-holds', 'screw-holding', 'Reckon whether the screw holds by itself', {
    how: ['Enter lead, starts, core and the gantry’s weight.'],
    minutes: 3,
    tools: ['caliper'],
    tells: { 'screw-runs-back': 0.95 },
    falsely: 0.12,
  }),
  seen('look', 'coupling-mark', 'Mark the coupling and run Z', ['The marks part', 'They stay in line'], {
    how: [
      'Draw a line across motor shaft, coupling and screw.',
      'Run the whole travel up and down five times, and look.',
    ],
    cautions: ['Keep fingers off the turning screw.'],
    minutes: 4,
    powered: true,
    tells: { 'coupling-slips': 0.88 },
    falsely: 0.04,
  }),
  seen('feel', 'gantry-lift', 'Lift the gantry by hand', ['It ticks up and down', 'It is firm'], {
    how: ['Lift each end a little and let it down.', 'Feel for a tick at the nut.'],
    cautions: ['Switched off.'],
    minutes: 1,
    tells: { 'nut-worn': 0.87, 'wheels-loose': 0.35, 'coupling-slips': 0.25 },
    falsely: 0.1,
  }),
  seen('feel', 'screws-held', 'Try to turn each screw with the motors held', ['One turns freely', 'All hold'], {
    how: ['Switch on and home, so that the motors hold.', 'Try to turn each screw with two fingers.'],
    cautions: ['Fingers on the smooth part only, and let go before anything is commanded.'],
    minutes: 2,
    powered: true,
    tells: { 'z-motor-off': 0.92, 'coupling-slips': 0.6 },
    falsely: 0.04,
  }),
  sorted('look', 'thread-look', 'Take the screw out and look at both threads', THREAD, {
    how: [
      'Look at the screw’s flanks for shavings, and into the hole with a lamp.',
      'Hold what is behind with a finger and turn the screw.',
    ],
    minutes: 3,
    given: {
      'thread-stripped': { torn: 80, nut: 2, insert: 3, whole: 9, unsure: 6 },
      'nut-turns': { torn: 6, nut: 78, insert: 3, whole: 7, unsure: 6 },
      'insert-turns': { torn: 8, nut: 4, insert: 74, whole: 8, unsure: 6 },
      'screw-short': { torn: 16, nut: 2, insert: 2, whole: 74, unsure: 6 },
      'thread-wrong': { torn: 40, nut: 2, insert: 2, whole: 50, unsure: 6 },
    },
    otherwise: { torn: 20, nut: 4, insert: 4, whole: 66, unsure: 6 },
  }),
  seen('do', 'screw-reach', 'Measure how far the screw reaches in', ['Less than its diameter', 'More'], {
    how: ['Measure the screw’s length, less what it clamps.', 'Measure the hole’s depth with the caliper’s tail.'],
    minutes: 3,
    tools: ['caliper'],
    tells: { 'screw-short': 0.93 },
    falsely: 0.08,
  }),
  seen('do', 'thread-gauge', 'Compare screw and hole with a known thread', ['They differ', 'They agree'], {
    how: ['Hold a thread gauge or a known screw against it.', 'Try a known screw in the hole by hand.'],
    minutes: 4,
    tools: ['thread gauge'],
    tells: { 'thread-wrong': 0.92 },
    falsely: 0.05,
  }),
];
