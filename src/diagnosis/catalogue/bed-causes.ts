import { cause, mend, up } from './make';

export const bedCauses = [
  cause('bed-tilted', {
    raisedBy: [up('just-moved', 1.8), up('bed-moved', 2.5), up('crashed', 1.5)],
    mend: mend({ minutes: 15, powered: true, works: 0.92, calculator: 'bed-tram' }),
  }),
  cause('bed-warped', {
    raisedBy: [up('new-build', 1.3), up('hotter', 1.2)],
    mend: mend({ minutes: 30, powered: true, cost: 15, works: 0.88, calculator: 'bed-tram' }),
  }),
  cause('adjuster-loose', {
    raisedBy: [up('many-hours', 1.4), up('bed-moved', 1.5), up('just-moved', 1.4)],
    mend: mend({ minutes: 18, powered: true, cost: 3, works: 0.9 }),
  }),
  cause('crumb-under-plate', {
    raisedBy: [up('bed-moved', 2.5, 0.6)],
    mend: mend({ minutes: 5, powered: false, works: 0.95 }),
  }),
  cause('bed-greasy', {
    raisedBy: [up('bed-touched', 2.2, 0.4)],
    mend: mend({ minutes: 8, powered: false, works: 0.9 }),
  }),
  cause('gap-wide', {
    raisedBy: [up('bed-moved', 2), up('nozzle-changed', 2.5), up('just-moved', 1.4)],
    mend: mend({ minutes: 10, powered: true, works: 0.92 }),
  }),
  cause('bed-cold', {
    raisedBy: [up('cold-room', 2), up('new-filament', 1.3)],
    mend: mend({ minutes: 15, powered: true, works: 0.88 }),
  }),
  cause('draught', {
    raisedBy: [up('open-window', 2.5, 0.4), up('cold-room', 1.3)],
    mend: mend({ minutes: 6, powered: false, works: 0.9 }),
  }),
  cause('base-small', {
    raisedBy: [up('tall-part', 2.5, 0.6)],
    mend: mend({ minutes: 6, powered: false, works: 0.9, calculator: 'test-column' }),
  }),
  cause('surface-worn', {
    raisedBy: [up('many-hours', 2, 0.6)],
    mend: mend({ minutes: 18, powered: true, cost: 14, works: 0.93 }),
    replace: { minutes: 12, cost: 25, powered: true, trialPowered: true },
  }),
  cause('frame-grows', {
    raisedBy: [up('cold-room', 1.8), up('warm-place', 1.4)],
    mend: mend({ minutes: 15, powered: true, works: 0.88, calculator: 'workshop-air' }),
  }),
];
