import { measured, seen } from './make';

export const meltInspections = [
  seen('look', 'gear-turn', {
    minutes: 4,
    powered: true,
    tells: { 'gear-eccentric': 0.84, 'feeder-loose': 0.4 },
    falsely: 0.08,
  }),
  seen('do', 'filament-caliper', { minutes: 5, tools: ['caliper'], tells: { 'filament-uneven': 0.9 }, falsely: 0.07 }),
  seen('look', 'filament-teeth', {
    minutes: 3,
    tells: {
      'feed-slips': 0.86,
      'nozzle-blocked': 0.4,
      'spool-drags': 0.3,
      'heat-creeps': 0.35,
      'feed-motor-hot': 0.35,
    },
    falsely: 0.1,
  }),
  seen('feel', 'push-through', {
    minutes: 6,
    powered: true,
    tells: { 'nozzle-blocked': 0.87, 'heat-creeps': 0.4, 'tube-gap': 0.25 },
    falsely: 0.09,
  }),
  seen('listen', 'hiss', {
    minutes: 4,
    powered: true,
    tells: { 'filament-damp': 0.84, 'melt-hot': 0.15 },
    falsely: 0.06,
  }),
  measured('moisture', 'filament-moisture', {
    minutes: 3,
    tools: ['room-hygrometer'],
    tells: { 'filament-damp': 0.82 },
    falsely: 0.2,
  }),
  seen('feel', 'spool-pull', { minutes: 1, tells: { 'spool-drags': 0.88 }, falsely: 0.08 }),
  measured('retraction-length', 'retraction', {
    minutes: 4,
    tells: { 'retraction-short': 0.85, 'feeder-loose': 0.3, 'tube-gap': 0.2 },
    falsely: 0.15,
  }),
  seen('do', 'cooler-print', {
    minutes: 15,
    powered: true,
    tells: { 'melt-hot': 0.88, 'filament-damp': 0.2, 'retraction-short': 0.25, 'layers-warm': 0.45, 'print-hit': 0.4 },
    falsely: 0.1,
  }),
  seen('look', 'temperature-card', {
    minutes: 1,
    tells: { 'melt-hot': 0.65, 'layers-warm': 0.25, 'print-hit': 0.25, 'heat-creeps': 0.25 },
    falsely: 0.1,
  }),
  seen('feel', 'tube-tug', { minutes: 1, tells: { 'tube-gap': 0.85 }, falsely: 0.08 }),
  seen('look', 'nozzle-bore', { minutes: 4, tells: { 'nozzle-worn': 0.85, 'nozzle-blocked': 0.2 }, falsely: 0.08 }),
  seen('feel', 'feeder-rock', {
    minutes: 2,
    tells: { 'feeder-loose': 0.87, 'gear-eccentric': 0.3, 'feed-slips': 0.2 },
    falsely: 0.07,
  }),
  seen('look', 'cold-fan', { minutes: 2, powered: true, tells: { 'heat-creeps': 0.78 }, falsely: 0.05 }),
  seen('feel', 'feed-motor', {
    minutes: 2,
    powered: true,
    tells: { 'feed-motor-hot': 0.88, 'heat-creeps': 0.15 },
    falsely: 0.1,
  }),
  measured('fed-length', 'steps-per-length', {
    minutes: 6,
    powered: true,
    tools: ['caliper'],
    tells: { 'over-fed': 0.88, 'feed-slips': 0.5, 'nozzle-blocked': 0.4 },
    falsely: 0.08,
  }),
  seen('do', 'two-at-once', {
    minutes: 30,
    powered: true,
    tells: { 'layers-warm': 0.9, 'part-sways': 0.1 },
    falsely: 0.1,
  }),
  seen('look', 'top-softness', {
    minutes: 1,
    tells: { 'layers-warm': 0.82, 'over-fed': 0.45, 'melt-hot': 0.5 },
    falsely: 0.15,
  }),
  measured('column', 'test-column', { minutes: 3, tells: { 'part-sways': 0.9, 'base-small': 0.6 }, falsely: 0.15 }),
];
