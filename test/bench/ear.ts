// Run by note.mjs: the whole listener on physical strings, sound in and plucks out, beside two other methods in the same run.
import { EAR_CELLS, EarTally, nameOf, stream, wilson } from '../support/ear-trials';
import { mcleod, spectral } from '../support/peers';
import { RATE } from '../support/plucks';
import { clip, CLIPS } from '../support/clips';
import { createListener } from '../../src/signal/listener';
import { estimateNote } from '../../src/signal/note';
import { ticking } from '../support/tick-sounds';
import { TICK_CELLS, ticksName, TickTally } from '../support/tick-trials';
import { against, combinePlucks } from '../../src/signal/pluck-set';

/** None of these seeds was looked at while the listener was made. */
const SEED = 300_000;
const COUNT = Number(process.env.COUNT ?? 400);
/** All of it is done after about so many minutes; the table says how many plucks a cell there were. */
const MINUTES = Number(process.env.MINUTES ?? Infinity);
const TICKINGS = Number(process.env.TICKINGS ?? 8);
const began = performance.now();

const print = (line: string) => process.stdout.write(`${line}\n`);
const percent = (part: number, whole: number): string => `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;

function withInterval(part: number, whole: number): string {
  const [low, high] = wilson(part, whole);
  return `${percent(part, whole)} (${(100 * low).toFixed(1)}–${(100 * high).toFixed(1)})`;
}

const clips = Math.min(CLIPS, Number(process.env.CLIPS ?? CLIPS));
const agreed: string[] = [];
for (let i = 0; i < clips; i += 1) {
  const { kind, samples } = clip(i);
  const heard = createListener(RATE)
    .push(samples)
    .flatMap((event) => (event.kind === 'pluck' ? [event.note] : []));
  const notes = heard.flatMap((note) => (note.status === 'found' ? [note] : []));
  if (combinePlucks(notes, against(heard)).status !== 'too few') agreed.push(kind);
}
export const clipsLine = `${clips} clips without a pluck: ${agreed.length} give a note that two plucks agree on (${withInterval(agreed.length, clips)}).`;
print(`${clipsLine} ${agreed.join(', ')}`);

const ticks = TICK_CELLS.map((scene) => ({ scene, tally: new TickTally() }));
for (let i = 0; i < TICKINGS; i += 1) for (const { scene, tally } of ticks) tally.add(ticking(scene, SEED + i));
/** A line of the table of ticks for each scene. */
export const tickRows = ticks.map(({ scene, tally }) => [
  ticksName(scene),
  String(tally.ticks),
  String(tally.missed),
  String(tally.added),
  `${tally.inside} of ${tally.trials}`,
  (tally.halfWidths / Math.max(1, tally.trials)).toFixed(1),
]);
export const tickings = TICKINGS;
print('Ticks: there, missed, added, counts inside ±, half-width');
for (const row of tickRows) print(row.join(' | '));

const tallies = EAR_CELLS.map((cell) => ({ cell, ours: new EarTally(), period: new EarTally(), sum: new EarTally() }));
/** Milliseconds of the processor for one note, of the plain plucks at 20 dB. */
const worked: number[] = [];
function timeNote(samples: Float32Array, from: number) {
  const before = samples.subarray(from - 0.53 * RATE, from - 0.03 * RATE);
  const { user, system } = process.cpuUsage();
  estimateNote(samples.slice(from, from + RATE), RATE, { before });
  const now = process.cpuUsage();
  worked.push((now.user + now.system - user - system) / 1000);
}
let done = 0;
while (done < COUNT && performance.now() - began < 60_000 * MINUTES) {
  for (const { cell, ours, period, sum } of tallies) {
    const made = stream(cell, SEED + done);
    ours.add(made);
    // The others are told where the pluck begins.
    const from = Math.round(made.at * RATE);
    const second = made.samples.slice(from, from + RATE);
    period.addPeer(mcleod(second, RATE), made.frequency);
    sum.addPeer(spectral(second, RATE).sum, made.frequency);
    if (cell.processing === 'none' && cell.manner === 'plain' && cell.snrDb === 20) timeNote(made.samples, from);
  }
  done += 1;
}

/** A line of the table in DEVELOPERS.md for each cell. */
export const rows = tallies.map(({ cell, ours, period, sum }) => [
  nameOf(cell),
  withInterval(ours.heard, ours.trials),
  withInterval(ours.wrong, ours.trials),
  percent(ours.refused, ours.trials),
  withInterval(ours.inside, ours.right),
  percent(period.wrong, period.trials),
  percent(sum.wrong, sum.trials),
]);
export const count = done;
print(`${done} plucks a cell; heard, wrong, refused, inside; then two published methods' wrong, told the onset`);
for (const row of rows) print(row.join(' | '));
const reasons = new Map<string, number>();
for (const { ours } of tallies) for (const [why, n] of ours.reasons) reasons.set(why, (reasons.get(why) ?? 0) + n);
export const reasonsLine = `Refused because: ${[...reasons].map(([why, n]) => `${why} ${n}`).join(', ')}.`;
print(reasonsLine);

const missed = tallies.flatMap(({ cell, ours }) => {
  const isPlain = cell.processing === 'none' && cell.manner === 'plain' && cell.room === 0;
  const least = isPlain ? ({ 20: 0.95, 10: 0.95, 5: 0.7 }[cell.snrDb] ?? 0) : 0;
  return [
    ...(ours.wrong > 0.01 * ours.trials ? ['wrong'] : []),
    ...(ours.heard < least * ours.trials ? ['heard'] : []),
    ...(ours.inside < 0.9 * ours.right || ours.inside > 0.98 * ours.right ? ['inside'] : []),
  ].map((what) => `${nameOf(cell)}: ${what}`);
});
/** What was wanted and is not so. */
export const notMet = missed.length === 0 ? 'Every goal is met.' : `Not as wanted: ${missed.join('; ')}.`;
print(notMet);
worked.sort((a, b) => a - b);
const at = (share: number): string => (worked[Math.floor(share * worked.length)] ?? NaN).toFixed(1);
export const noteLine = `One note takes ${at(0.5)} ms of the processor, median, and ${at(0.95)} ms in 95 of 100, in the worker; it hears one second.`;
print(noteLine);
