// Run by note.mjs: the whole listener on physical strings, sound in and plucks out, beside two other methods in the same run.
import { EAR_CELLS, EarTally, nameOf, stream, wilson } from '../support/ear-trials';
import { mcleod, spectral } from '../support/peers';
import { RATE } from '../support/plucks';
import { clip, CLIPS } from '../support/clips';
import { createListener } from '../../src/signal/listener';
import { combinePlucks } from '../../src/signal/pluck-set';

/** None of these seeds was looked at while the listener was made. */
const SEED = 300_000;
const COUNT = Number(process.env.COUNT ?? 400);
/** No further seed is begun after so many minutes; the table says how many there were. */
const MINUTES = Number(process.env.MINUTES ?? Infinity);

const print = (line: string) => process.stdout.write(`${line}\n`);
const percent = (part: number, whole: number): string => `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;

function withInterval(part: number, whole: number): string {
  const [low, high] = wilson(part, whole);
  return `${percent(part, whole)} (${(100 * low).toFixed(1)}–${(100 * high).toFixed(1)})`;
}

const tallies = EAR_CELLS.map((cell) => ({ cell, ours: new EarTally(), period: new EarTally(), sum: new EarTally() }));
const began = performance.now();
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
print(`Refused because: ${[...reasons].map(([why, n]) => `${why} ${n}`).join(', ')}`);

const missed = tallies.flatMap(({ cell, ours }) => {
  const isPlain = cell.processing === 'none' && cell.manner === 'plain' && cell.room === 0;
  const least = isPlain ? ({ 20: 0.95, 10: 0.95, 5: 0.7 }[cell.snrDb] ?? 0) : 0;
  return [
    ...(ours.wrong > 0.01 * ours.trials ? ['wrong'] : []),
    ...(ours.heard < least * ours.trials ? ['heard'] : []),
    ...(ours.inside < 0.9 * ours.right || ours.inside > 0.98 * ours.right ? ['inside'] : []),
  ].map((what) => `${nameOf(cell)}: ${what}`);
});
print(missed.length === 0 ? 'Every goal is met.' : `Goals not met:\n  ${missed.join('\n  ')}`);

const clips = Math.min(CLIPS, Number(process.env.CLIPS ?? CLIPS));
const agreed: string[] = [];
for (let i = 0; i < clips; i += 1) {
  const { kind, samples } = clip(i);
  const notes = createListener(RATE)
    .push(samples)
    .flatMap((event) => (event.kind === 'pluck' && event.note.status === 'found' ? [event.note] : []));
  if (combinePlucks(notes).status !== 'too few') agreed.push(kind);
}
export const clipsLine = `${clips} clips without a pluck: ${agreed.length} give a note that two plucks agree on (${withInterval(agreed.length, clips)}).`;
print(`${clipsLine} ${agreed.join(', ')}`);
