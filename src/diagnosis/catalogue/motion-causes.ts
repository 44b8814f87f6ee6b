import { cause, mend, up } from './make';

export const motionCauses = [
  cause('belt-slack', {
    raisedBy: [up('belts-new', 2.5), up('many-hours', 1.5), up('new-build', 1.5)],
    mend: mend({ minutes: 12, powered: false, works: 0.93, calculator: 'belt-tension' }),
    replace: { minutes: 45, cost: 8, powered: false, trialPowered: true },
  }),
  cause('belts-unequal', {
    raisedBy: [up('crossed-belts', 2, 0.02), up('belts-new', 2), up('worked-on', 1.5)],
    mend: mend({ minutes: 20, powered: false, works: 0.9, calculator: 'belt-pair' }),
  }),
  cause('pulley-loose', {
    raisedBy: [up('new-build', 2), up('worked-on', 1.6), up('crashed', 1.5)],
    mend: mend({ minutes: 8, powered: false, cost: 0.5, works: 0.95 }),
  }),
  cause('pulley-eccentric', {
    raisedBy: [up('belt-z', 3, 0.3), up('new-build', 1.3)],
    mend: mend({ minutes: 30, powered: false, cost: 6, works: 0.8 }),
  }),
  cause('wheels-loose', {
    raisedBy: [up('grooved-wheels', 1.6, 0.4), up('many-hours', 1.7), up('just-moved', 1.3), up('crashed', 1.4)],
    mend: mend({ minutes: 10, powered: false, works: 0.92, calculator: 'wheel-preload' }),
    replace: { minutes: 40, cost: 14, powered: false, trialPowered: true },
  }),
  cause('wheel-flat', {
    raisedBy: [up('grooved-wheels', 2, 0.02), up('stood-long', 3), up('many-hours', 1.5)],
    mend: mend({ minutes: 30, powered: false, cost: 5, works: 0.92, calculator: 'wheel-preload' }),
  }),
  cause('carriage-binds', {
    raisedBy: [up('new-build', 1.8), up('worked-on', 1.6), up('stood-long', 1.6), up('crashed', 1.4)],
    mend: mend({ minutes: 25, powered: false, cost: 1, works: 0.82, calculator: 'carriage-binding' }),
  }),
  cause('cable-snags', {
    raisedBy: [up('worked-on', 2), up('just-moved', 1.6), up('tube-feed', 1.3)],
    mend: mend({ minutes: 8, powered: false, works: 0.95 }),
  }),
  cause('accel-high', {
    raisedBy: [up('faster', 3, 0.7)],
    mend: mend({ minutes: 12, powered: true, works: 0.88, calculator: 'ringing' }),
  }),
  cause('driver-hot', {
    raisedBy: [up('warm-place', 3), up('many-hours', 1.2), up('faster', 1.3)],
    mend: mend({ minutes: 20, powered: true, cost: 6, works: 0.85 }),
  }),
  cause('print-hit', {
    raisedBy: [up('cold-room', 1.3), up('hotter', 1.5), up('faster', 1.2)],
    mend: mend({ minutes: 10, powered: true, works: 0.8 }),
  }),
  cause('frame-loose', {
    raisedBy: [up('just-moved', 2), up('new-build', 1.8), up('many-hours', 1.2)],
    mend: mend({ minutes: 20, powered: false, works: 0.9 }),
  }),
  cause('frame-askew', {
    raisedBy: [up('new-build', 2), up('just-moved', 1.6), up('crashed', 1.5), up('worked-on', 1.3)],
    mend: mend({ minutes: 40, powered: false, works: 0.85, calculator: 'squareness' }),
  }),
  cause('stand-uneven', {
    raisedBy: [up('just-moved', 3, 0.6)],
    mend: mend({ minutes: 15, powered: true, works: 0.9 }),
  }),
  cause('steps-wrong', {
    raisedBy: [up('worked-on', 2), up('belts-new', 1.5), up('new-build', 1.5)],
    mend: mend({ minutes: 12, powered: true, works: 0.92, calculator: 'steps-per-length' }),
  }),
];
