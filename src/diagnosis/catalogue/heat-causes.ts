import { cause, mend, up } from './make';

export const heatCauses = [
  cause('sensor-fallen', {
    danger: true,
    raisedBy: [up('crashed', 2), up('hot-end-changed', 2), up('nozzle-changed', 1.8)],
    mend: mend({ minutes: 15, powered: true, cost: 1, works: 0.93, calculator: 'heater-check' }),
  }),
  cause('sensor-loose', {
    danger: true,
    raisedBy: [up('hot-end-changed', 2), up('nozzle-changed', 1.8), up('many-hours', 1.3)],
    mend: mend({ minutes: 12, powered: true, cost: 1, works: 0.92, calculator: 'heater-check' }),
  }),
  cause('sensor-contact', {
    danger: true,
    raisedBy: [up('many-hours', 1.7), up('worked-on', 1.7), up('just-moved', 1.4)],
    mend: mend({ minutes: 25, powered: false, cost: 5, works: 0.92, calculator: 'sensor-check' }),
  }),
  cause('sensor-type', {
    raisedBy: [up('hot-end-changed', 4, 0.4), up('new-build', 2)],
    mend: mend({ minutes: 12, powered: true, works: 0.92, calculator: 'sensor-check' }),
  }),
  cause('switch-shorted', {
    danger: true,
    raisedBy: [up('many-hours', 1.5), up('warm-place', 1.6), up('worked-on', 1.4)],
    mend: mend({ minutes: 60, powered: false, cost: 35, works: 0.95 }),
  }),
  cause('heater-strong', {
    danger: true,
    raisedBy: [up('hot-end-changed', 3, 0.4), up('new-build', 1.8)],
    mend: mend({ minutes: 25, powered: false, cost: 7, works: 0.95, calculator: 'heater-check' }),
  }),
  cause('heater-contact', {
    danger: true,
    raisedBy: [up('many-hours', 1.8), up('worked-on', 1.8), up('hot-end-changed', 1.6)],
    mend: mend({ minutes: 25, powered: true, cost: 4, works: 0.93 }),
  }),
  cause('supply-terminal', {
    danger: true,
    raisedBy: [up('new-build', 1.8), up('many-hours', 1.5), up('just-moved', 1.4)],
    mend: mend({ minutes: 30, powered: false, cost: 3, works: 0.94 }),
  }),
  cause('loop-untuned', {
    raisedBy: [up('hot-end-changed', 2), up('hotter', 1.5), up('new-build', 1.4)],
    mend: mend({ minutes: 15, powered: true, works: 0.9 }),
  }),
  cause('block-blown', {
    raisedBy: [up('hot-end-changed', 2), up('nozzle-changed', 1.6), up('crashed', 1.4)],
    mend: mend({ minutes: 10, powered: false, cost: 2, works: 0.92 }),
  }),
  cause('supply-weak', {
    raisedBy: [up('many-hours', 1.5), up('warm-place', 1.5)],
    mend: mend({ minutes: 35, powered: true, cost: 30, works: 0.92 }),
  }),
  cause('plastic-on-block', {
    raisedBy: [up('nozzle-changed', 2), up('hot-end-changed', 1.8), up('hotter', 1.6)],
    mend: mend({ minutes: 25, powered: true, works: 0.9 }),
  }),
  cause('board-hot', {
    raisedBy: [up('warm-place', 3), up('many-hours', 1.4), up('stood-long', 1.2)],
    mend: mend({ minutes: 18, powered: false, cost: 6, works: 0.88 }),
  }),
  cause('plug-loose', {
    raisedBy: [up('just-moved', 2), up('worked-on', 1.8), up('new-build', 1.4)],
    mend: mend({ minutes: 10, powered: false, works: 0.88 }),
  }),
  cause('cable-broken', {
    raisedBy: [up('many-hours', 2, 0.7), up('crashed', 1.2)],
    mend: mend({ minutes: 35, powered: false, cost: 6, works: 0.92 }),
  }),
  cause('limit-switch-worn', {
    raisedBy: [up('many-hours', 1.6), up('crashed', 1.8)],
    mend: mend({ minutes: 15, powered: true, cost: 3, works: 0.92 }),
  }),
  cause('wires-disturb', {
    raisedBy: [up('worked-on', 2), up('hot-end-changed', 1.5), up('new-build', 1.5)],
    mend: mend({ minutes: 20, powered: false, cost: 1, works: 0.85 }),
  }),
  // The mains side: nobody but a qualified person clears or mends it.
  cause('earth-missing', {
    danger: true,
    qualified: true,
    raisedBy: [up('shock-felt', 25, 0.3), up('mains-inside', 1.5, 0.02), up('worked-on', 1.5), up('new-build', 1.4)],
    mend: mend({ minutes: 90, powered: false, cost: 40, works: 0.95 }),
  }),
  cause('insulation-damaged', {
    danger: true,
    qualified: true,
    raisedBy: [up('shock-felt', 25, 0.3), up('mains-inside', 1.5, 0.02), up('crashed', 1.4), up('just-moved', 1.3)],
    mend: mend({ minutes: 90, powered: false, cost: 40, works: 0.93 }),
  }),
  cause('relay-closed', {
    danger: true,
    qualified: true,
    raisedBy: [up('mains-inside', 1.5, 0.02), up('many-hours', 1.5), up('worked-on', 1.3)],
    mend: mend({ minutes: 60, powered: false, cost: 40, works: 0.95 }),
  }),
];
