import { cause, mend, up } from './make';

export const zCauses = [
  cause('screw-bent', {
    raisedBy: [up('just-moved', 1.8), up('crashed', 1.5), up('belt-z', 0.02)],
    mend: mend({ minutes: 45, powered: false, cost: 16, works: 0.9, calculator: 'lead-screw-straightness' }),
  }),
  cause('screw-forced', {
    raisedBy: [up('new-build', 1.8), up('worked-on', 1.8), up('belt-z', 0.02)],
    mend: mend({ minutes: 20, powered: true, works: 0.88 }),
  }),
  cause('layer-off-step', {
    raisedBy: [up('layer-changed', 4, 0.8), up('new-build', 1.2)],
    mend: mend({ minutes: 8, powered: true, works: 0.92, calculator: 'screw-step' }),
  }),
  cause('screw-dry', {
    raisedBy: [up('stood-long', 2.5), up('many-hours', 1.8), up('belt-z', 0.02)],
    mend: mend({ minutes: 12, powered: true, cost: 1, works: 0.9 }),
  }),
  cause('sides-unequal', {
    raisedBy: [up('two-z-screws', 1.6, 0.05), up('just-moved', 2), up('crashed', 1.8), up('stood-long', 1.2)],
    mend: mend({ minutes: 12, powered: false, works: 0.93, calculator: 'two-z-screws' }),
  }),
  cause('screw-runs-back', {
    raisedBy: [up('new-build', 1.5), up('worked-on', 1.4), up('belt-z', 0.1)],
    mend: mend({ minutes: 15, powered: false, works: 0.85, calculator: 'screw-holding' }),
    replace: { minutes: 70, cost: 28, powered: true, trialPowered: true },
  }),
  cause('coupling-slips', {
    raisedBy: [up('new-build', 1.7), up('worked-on', 1.6), up('crashed', 1.6)],
    mend: mend({ minutes: 12, powered: false, works: 0.93 }),
  }),
  cause('nut-worn', {
    raisedBy: [up('many-hours', 2.5, 0.7), up('belt-z', 0.02)],
    mend: mend({ minutes: 30, powered: false, cost: 7, works: 0.9 }),
  }),
  cause('z-motor-off', {
    raisedBy: [up('worked-on', 2), up('just-moved', 1.8)],
    mend: mend({ minutes: 10, powered: false, works: 0.85 }),
  }),
  cause('thread-stripped', {
    raisedBy: [up('overtightened', 2, 0.7), up('printed-holes', 1.3)],
    mend: mend({ minutes: 25, powered: false, trialPowered: false, cost: 6, works: 0.93, calculator: 'thread-repair' }),
  }),
  cause('screw-short', {
    raisedBy: [up('worked-on', 2), up('new-build', 1.6)],
    mend: mend({ minutes: 8, powered: false, trialPowered: false, cost: 0.5, works: 0.92 }),
  }),
  cause('nut-turns', {
    raisedBy: [up('printed-holes', 1.5), up('overtightened', 1.5)],
    mend: mend({ minutes: 12, powered: false, trialPowered: false, cost: 1, works: 0.88 }),
  }),
  cause('insert-turns', {
    raisedBy: [up('printed-holes', 3, 0.05), up('overtightened', 1.6)],
    mend: mend({ minutes: 20, powered: false, trialPowered: false, cost: 2, works: 0.86 }),
  }),
  cause('thread-wrong', {
    raisedBy: [up('worked-on', 2.5), up('new-build', 1.5)],
    mend: mend({
      minutes: 10,
      powered: false,
      trialPowered: false,
      cost: 0.5,
      works: 0.8,
      calculator: 'thread-repair',
    }),
  }),
];
