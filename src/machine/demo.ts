import { VERSION, type KeptValue, type Machine, type Reading } from './schema';
import say from './words/en';

/*
 * The repair workshop of a small town, invented: nobody's machine, nobody's readings. The readings are what Dual-Z sync
 * makes of these entries; test/unit/machine-demo.test.ts works them again.
 */

const NOTED = '2026-03-02T16:20:00.000Z';
const BEFORE = '2026-03-05T17:40:00.000Z';
const AFTER = '2026-03-12T17:15:00.000Z';

const MACHINE = 'demo-window-side';
const MM = 1e-3;
const DEG = Math.PI / 180;

type Taken = readonly [tool: string, half: number];
const RULE: Taken = ['rule', 0.5 * MM];
const CALIPER: Taken = ['caliper', 0.03 * MM];
const COUNTED: Taken = ['', 0];

const measured = (value: number, unit: string, [tool, half]: Taken): KeptValue => ({
  value,
  half,
  unit,
  origin: 'measured',
  tool,
  at: NOTED,
});

const marked = (value: number, unit: string): KeptValue => ({
  value,
  half: 0,
  unit,
  origin: 'nameplate',
  tool: 'as-marked',
  at: NOTED,
});

const values = {
  'z.lead': marked(8 * MM, 'mm'),
  'z.pulley-teeth': measured(20, 'one', COUNTED),
  'z.step-angle': marked(1.8 * DEG, 'deg'),
  'z.screw-distance': measured(400 * MM, 'mm', RULE),
  'bed.width': measured(220 * MM, 'mm', RULE),
  'print.first-layer': marked(0.2 * MM, 'mm'),
  'print.layer': marked(0.2 * MM, 'mm'),
  'nozzle.diameter': marked(0.4 * MM, 'mm'),
  'filament.diameter': measured(1.75 * MM, 'mm', CALIPER),
};

export const demoMachine: Machine = {
  v: VERSION,
  type: 'machine',
  id: MACHINE,
  name: say.demo.name,
  note: say.demo.note,
  demo: true,
  created: NOTED,
  changed: AFTER,
  values,
  choices: { 'z.drive': 'belt', 'z.hand': 'right' },
};

type Result = Reading['results'][string];

const result = (value: number, low: number, high: number, unit: string, text: string): Result => ({
  value,
  low,
  high,
  unit,
  text,
});

const exact = (value: number, unit: string, text: string): Result => result(value, value, value, unit, text);

function entry({ value, half, unit, origin, tool }: KeptValue): Reading['entries'][string] {
  return { value, half, unit, origin, tool };
}

/** A reading of the difference `dh` (m) at the two screws, with the machine's values as they stand. */
function sync(
  dh: number,
  rest: Pick<Reading, 'id' | 'at' | 'results' | 'verdict' | 'headline' | 'steps' | 'note'>,
): Reading {
  return {
    v: VERSION,
    type: 'reading',
    machine: MACHINE,
    calculator: 'dual-z-sync',
    entries: {
      dh: entry(measured(dh, 'mm', CALIPER)),
      S_m: entry(measured(400 * MM, 'mm', RULE)),
      S: entry(values['z.screw-distance']),
      W: entry(values['bed.width']),
      P_h: entry(values['z.lead']),
      z: entry(values['z.pulley-teeth']),
      h_1: entry(values['print.first-layer']),
      k_1: { value: 0.25, half: 0, unit: 'one', origin: 'typical', tool: '' },
    },
    choices: { by: 'heights', drive: 'belt', hand: 'right' },
    ...rest,
  };
}

const before = sync(0.75 * MM, {
  id: 'before',
  at: BEFORE,
  results: {
    h_t: exact(4e-4, 'mm', '0.4\u00a0mm'),
    dh_s: result(7.5e-4, 7.153251712e-4, 7.846748288e-4, 'mm', '0.750 ± 0.035\u00a0mm'),
    n: result(1.875, 1.788312928, 1.961687072, 'one', '1.875 ± 0.087'),
    n_w: exact(2, 'one', '2'),
    r: result(-5e-5, -8.467482877e-5, -1.532517123e-5, 'mm', '−0.050 ± 0.035\u00a0mm'),
    phi: result(-0.03926990817, -0.066503455, -0.01203636134, 'deg', '(−2.3 ± 1.6)°'),
    psi: result(0.5890486225, 0.5618150757, 0.6162821694, 'deg', '(33.8 ± 1.6)°'),
    i: result(1.875e-3, 1.788355184e-3, 1.961644816e-3, 'mm_m', '1.875 ± 0.087\u00a0mm/m'),
    alpha: result(1.874997803e-3, 1.788353291e-3, 1.961642315e-3, 'deg', '(0.1074 ± 0.0050)°'),
    dh_bed: result(4.125e-4, 3.934074264e-4, 4.315925736e-4, 'mm', '0.412 ± 0.019\u00a0mm'),
    dh_lim: exact(5e-5, 'mm', '0.05\u00a0mm'),
  },
  verdict: 'beyond',
  ...say.demo.before,
});

const after = sync(0.02 * MM, {
  id: 'after',
  at: AFTER,
  results: {
    h_t: exact(4e-4, 'mm', '0.4\u00a0mm'),
    dh_s: result(2e-5, -1.464104021e-5, 5.464104021e-5, 'mm', '0.020 ± 0.035\u00a0mm'),
    n: result(0.05, -0.03660260052, 0.1366026005, 'one', '0.050 ± 0.087'),
    n_w: exact(0, 'one', '0'),
    r: result(2e-5, -1.464104021e-5, 5.464104021e-5, 'mm', '0.020 ± 0.035\u00a0mm'),
    phi: result(0.01570796327, -0.01149904609, 0.04291497263, 'deg', '(0.9 ± 1.6)°'),
    psi: result(0.01570796327, -0.01149904609, 0.04291497263, 'deg', '(0.9 ± 1.6)°'),
    i: result(5e-5, -3.660257045e-5, 1.36602570449e-4, 'mm_m', '0.050 ± 0.087\u00a0mm/m'),
    alpha: result(4.999999996e-5, -3.660257027e-5, 1.366025702e-4, 'deg', '(0.0029 ± 0.0050)°'),
    dh_bed: result(1.1e-5, -8.052587368e-6, 3.005258737e-5, 'mm', '0.011 ± 0.019\u00a0mm'),
    dh_lim: exact(5e-5, 'mm', '0.05\u00a0mm'),
  },
  verdict: 'within',
  ...say.demo.after,
});

/** Oldest first. */
export const demoReadings: readonly Reading[] = [before, after];
