import { measured, seen } from './make';

export const motionInspections = [
  seen('feel', 'rock-carriage', { minutes: 1, tells: { 'wheels-loose': 0.88, 'frame-loose': 0.2 }, falsely: 0.08 }),
  measured('wheel-slip', 'wheel-preload', {
    minutes: 8,
    tools: ['luggage-scale'],
    tells: { 'wheels-loose': 0.93, 'wheel-flat': 0.3, 'carriage-binds': 0.3 },
    falsely: 0.06,
  }),
  seen('look', 'wheel-face', { minutes: 3, tells: { 'wheel-flat': 0.87 }, falsely: 0.08 }),
  seen('look', 'pulley-turn', { minutes: 4, powered: true, tells: { 'pulley-eccentric': 0.82 }, falsely: 0.08 }),
  measured('belt-note', 'belt-tension', {
    minutes: 4,
    tells: { 'belt-slack': 0.92, 'belts-unequal': 0.45 },
    falsely: 0.07,
  }),
  measured('belts-compared', 'belt-pair', {
    minutes: 6,
    tells: { 'belts-unequal': 0.92, 'belt-slack': 0.4 },
    falsely: 0.07,
  }),
  seen('feel', 'pulley-hold', { minutes: 3, tells: { 'pulley-loose': 0.88 }, falsely: 0.05 }),
  seen('feel', 'carriage-push', {
    minutes: 1,
    tells: { 'carriage-binds': 0.85, 'cable-snags': 0.5, 'wheel-flat': 0.35 },
    falsely: 0.09,
  }),
  measured('guide-length', 'carriage-binding', {
    minutes: 7,
    tools: ['rule', 'luggage-scale'],
    tells: { 'carriage-binds': 0.8 },
    falsely: 0.1,
  }),
  seen('look', 'cable-corners', { minutes: 2, tells: { 'cable-snags': 0.88, 'cable-broken': 0.25 }, falsely: 0.06 }),
  seen('look', 'scraped-edges', { minutes: 1, tells: { 'print-hit': 0.8 }, falsely: 0.12 }),
  seen('do', 'driver-rest', {
    minutes: 25,
    powered: true,
    tells: { 'driver-hot': 0.82, 'accel-high': 0.15 },
    falsely: 0.2,
  }),
  seen('feel', 'board-air', {
    minutes: 2,
    powered: true,
    tells: { 'driver-hot': 0.75, 'board-hot': 0.82, 'feed-motor-hot': 0.2 },
    falsely: 0.12,
  }),
  measured('ripple-spacing', 'ringing', {
    minutes: 4,
    tools: ['caliper'],
    tells: { 'accel-high': 0.85, 'belt-slack': 0.35, 'frame-loose': 0.3 },
    falsely: 0.2,
  }),
  seen('do', 'slower-print', {
    minutes: 20,
    powered: true,
    tells: { 'accel-high': 0.88, 'print-hit': 0.25, 'belt-slack': 0.25, 'frame-loose': 0.3, 'cable-snags': 0.1 },
    falsely: 0.12,
  }),
  seen('feel', 'frame-nod', {
    minutes: 1,
    tells: { 'frame-loose': 0.88, 'stand-uneven': 0.85, 'frame-askew': 0.2 },
    falsely: 0.1,
  }),
  measured('diagonals', 'squareness', {
    minutes: 4,
    tools: ['caliper'],
    tells: { 'frame-askew': 0.92, 'belts-unequal': 0.5, 'stand-uneven': 0.4 },
    falsely: 0.07,
  }),
  measured('long-move', 'steps-per-length', {
    minutes: 6,
    powered: true,
    tools: ['rule'],
    tells: { 'steps-wrong': 0.92 },
    falsely: 0.06,
  }),
];
