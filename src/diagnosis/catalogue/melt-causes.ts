import { cause, mend, up } from './make';

export const meltCauses = [
  cause('retraction-short', {
    raisedBy: [up('tube-feed', 1.5), up('nozzle-changed', 1.8), up('new-filament', 1.3)],
    mend: mend({ minutes: 15, powered: true, works: 0.88, calculator: 'retraction' }),
  }),
  cause('melt-hot', {
    raisedBy: [up('hotter', 2.5, 0.8), up('new-filament', 1.5), up('hot-end-changed', 1.5)],
    mend: mend({ minutes: 15, powered: true, works: 0.88 }),
  }),
  cause('filament-damp', {
    raisedBy: [up('open-filament', 2.5, 0.5), up('damp-room', 2.5, 0.7), up('stood-long', 2)],
    mend: mend({ minutes: 15, powered: false, cost: 0.5, works: 0.88, calculator: 'filament-moisture' }),
    replace: { minutes: 5, cost: 20, powered: true, trialPowered: true },
  }),
  cause('tube-gap', {
    raisedBy: [up('tube-feed', 2, 0.1), up('hot-end-changed', 2.5), up('nozzle-changed', 1.6)],
    mend: mend({ minutes: 25, powered: true, cost: 2, works: 0.88 }),
  }),
  cause('nozzle-worn', {
    raisedBy: [up('many-hours', 2.5, 0.6), up('nozzle-changed', 0.1)],
    mend: mend({ minutes: 15, powered: true, cost: 4, works: 0.93 }),
  }),
  cause('nozzle-blocked', {
    raisedBy: [up('new-filament', 1.5), up('nozzle-changed', 0.6), up('hotter', 1.4), up('many-hours', 1.3)],
    mend: mend({ minutes: 18, powered: true, works: 0.82 }),
    replace: { minutes: 15, cost: 4, powered: true, trialPowered: true },
  }),
  cause('feed-slips', {
    raisedBy: [up('many-hours', 1.6), up('faster', 1.6), up('new-filament', 1.2)],
    mend: mend({ minutes: 10, powered: true, works: 0.88 }),
    replace: { minutes: 30, cost: 9, powered: false, trialPowered: true },
  }),
  cause('gear-eccentric', {
    raisedBy: [up('new-build', 1.5), up('worked-on', 1.4)],
    mend: mend({ minutes: 25, powered: true, cost: 8, works: 0.85 }),
  }),
  cause('feeder-loose', {
    raisedBy: [up('new-build', 1.6), up('worked-on', 1.5), up('many-hours', 1.4)],
    mend: mend({ minutes: 10, powered: false, works: 0.9 }),
  }),
  cause('filament-uneven', {
    raisedBy: [up('new-filament', 3, 0.6)],
    mend: mend({ minutes: 6, powered: false, cost: 20, works: 0.92 }),
  }),
  cause('spool-drags', {
    raisedBy: [up('new-filament', 1.8), up('just-moved', 1.4)],
    mend: mend({ minutes: 5, powered: false, works: 0.92 }),
  }),
  cause('heat-creeps', {
    raisedBy: [up('warm-place', 2.5), up('hot-end-changed', 1.8), up('hotter', 1.4)],
    mend: mend({ minutes: 18, powered: true, cost: 6, works: 0.85 }),
  }),
  cause('feed-motor-hot', {
    raisedBy: [up('warm-place', 2), up('faster', 1.4), up('many-hours', 1.1)],
    mend: mend({ minutes: 20, powered: true, cost: 2, works: 0.82 }),
  }),
  cause('over-fed', {
    raisedBy: [up('new-filament', 1.4), up('worked-on', 1.4), up('nozzle-changed', 1.4)],
    mend: mend({ minutes: 10, powered: true, works: 0.9, calculator: 'steps-per-length' }),
  }),
  cause('layers-warm', {
    raisedBy: [up('tall-part', 1.8), up('hotter', 1.4), up('faster', 1.6)],
    mend: mend({ minutes: 8, powered: true, works: 0.88 }),
  }),
  cause('part-sways', {
    raisedBy: [up('tall-part', 2.2, 0.4), up('faster', 1.3)],
    mend: mend({ minutes: 15, powered: true, works: 0.88, calculator: 'test-column' }),
  }),
];
