import { measured, seen, sorted } from './make';

const RIDGES = [
  { id: 'screw', verdict: 'within' },
  { id: 'step', verdict: 'within' },
  { id: 'heater', verdict: 'within' },
  { id: 'gear', verdict: 'within' },
  { id: 'wheel', verdict: 'within' },
  { id: 'pulley', verdict: 'within' },
  { id: 'several', verdict: 'too close' },
  { id: 'none-fits', verdict: 'beyond' },
] as const;

/** One part fits, or several, or by mischance another or none. */
const ridge = (part: string): Readonly<Record<string, number>> => ({
  ...Object.fromEntries(RIDGES.map(({ id }) => [id, 0.03])),
  several: 0.15,
  'none-fits': 0.08,
  [part]: 0.65,
});

const THREAD = [{ id: 'torn' }, { id: 'nut' }, { id: 'insert' }, { id: 'whole' }, { id: 'unsure' }] as const;

export const zInspections = [
  sorted(
    'calculator',
    'ridge-spacing',
    RIDGES,
    {
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
  seen('look', 'screw-top', {
    minutes: 3,
    powered: true,
    tells: { 'screw-bent': 0.85, 'screw-forced': 0.4 },
    falsely: 0.1,
  }),
  measured('screw-run-out', 'lead-screw-straightness', {
    minutes: 18,
    tools: ['feeler-gauge'],
    tells: { 'screw-bent': 0.94 },
    falsely: 0.05,
  }),
  seen('do', 'top-freed', { minutes: 6, tells: { 'screw-forced': 0.85, 'screw-bent': 0.3 }, falsely: 0.08 }),
  measured('step-fit', 'screw-step', { minutes: 2, tells: { 'layer-off-step': 0.95 }, falsely: 0.15 }),
  seen('look', 'screw-wipe', { minutes: 2, tells: { 'screw-dry': 0.9, 'nut-worn': 0.35 }, falsely: 0.15 }),
  measured('ends-level', 'two-z-screws', {
    minutes: 4,
    tools: ['caliper'],
    tells: { 'sides-unequal': 0.93, 'wheels-loose': 0.25, 'coupling-slips': 0.6, 'z-motor-off': 0.75 },
    falsely: 0.07,
  }),
  measured('screw-holds', 'screw-holding', {
    minutes: 3,
    tools: ['caliper'],
    tells: { 'screw-runs-back': 0.95 },
    falsely: 0.12,
  }),
  seen('look', 'coupling-mark', { minutes: 4, powered: true, tells: { 'coupling-slips': 0.88 }, falsely: 0.04 }),
  seen('feel', 'gantry-lift', {
    minutes: 1,
    tells: { 'nut-worn': 0.87, 'wheels-loose': 0.35, 'coupling-slips': 0.25 },
    falsely: 0.1,
  }),
  seen('feel', 'screws-held', {
    minutes: 2,
    powered: true,
    tells: { 'z-motor-off': 0.92, 'coupling-slips': 0.6 },
    falsely: 0.04,
  }),
  sorted('look', 'thread-look', THREAD, {
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
  seen('do', 'screw-reach', { minutes: 3, tools: ['caliper'], tells: { 'screw-short': 0.93 }, falsely: 0.08 }),
  seen('do', 'thread-gauge', { minutes: 4, tools: ['thread-gauge'], tells: { 'thread-wrong': 0.92 }, falsely: 0.05 }),
];
