import type { Draft, KeptValue, Machine, Reading } from './schema';
import { VERSION } from './version';
import say from './words/en';

/*
 * The repair workshop of a small town, invented: nobody's machine, nobody's readings. Its readings are
 * made of these entries when it is put on the bench.
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
  'bed.width': measured(240 * MM, 'mm', RULE),
  'bed.depth': measured(180 * MM, 'mm', RULE),
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
  ordinal: 2,
  values,
  choices: { 'z.drive': 'belt', 'z.hand': 'right' },
};

/** What was typed for a reading of the demo machine, and what was noted; the rest its check makes of it. */
export interface DemoTaking extends Pick<Reading, 'id' | 'at' | 'ordinal' | 'note'> {
  readonly entries: Draft['entries'];
}

/** The check that the demo readings are of. */
export const demoCheck = 'two-z-screws';

/** The difference read at the two screws by an indicator, as text in mm: its sign is a picture, picked. */
const taking = (dh: string): DemoTaking['entries'] => ({
  dh: { text: dh, unit: 'mm', tool: 'dial' },
  S_m: { text: '400', unit: 'mm', tool: 'rule' },
});

/** Oldest first; numbers with a decimal point. */
export const demoTakings: readonly DemoTaking[] = [
  { id: 'before', at: BEFORE, ordinal: 1, note: say.demo.notes.before, entries: taking('+0.75') },
  { id: 'after', at: AFTER, ordinal: 2, note: say.demo.notes.after, entries: taking('+0.02') },
];
