// Run by note.mjs: the note of made-up plucks, ours beside other methods in one run. TRIALS=n for another number a cell.
import { cpus } from 'node:os';
import { aubio, mcleod, spectral } from '../support/peers';
import { LIMITS, median, runCell, Tally, type Cell } from '../support/note-trials';
import type { Room } from '../support/plucks';

const TRIALS = Number(process.env.TRIALS ?? 300);
/** Another program for each pluck: fewer of them. */
const AUBIO_TRIALS = Math.min(TRIALS, 60);
const SEED = 100_000;
/** The stated limits are for 35 to 180 Hz, the cells that come first; beyond, one more refusal in a hundred is let pass. */
const MAIN_CELLS = 18;
const OUTER_REFUSED = 0.01;
const print = (line: string) => process.stdout.write(`${line}\n`);
const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`;

const debian = aubio();
if (!debian) print('SKIPPED: aubiopitch is not installed (apt-get install aubio-tools); that peer is left out.');

let cells = 0;
let inside = 0;
let found = 0;
const failures: string[] = [];
const times: number[] = [];
const worked: number[] = [];

const name = (room: Room): string => `${room.low}-${room.high} Hz, ${room.noise}, ${room.microphone}, ${room.snrDb} dB`;

function report(room: Room, cell: Cell) {
  const { tally, bounds } = cell;
  const { half, double, third, other } = tally.wrong;
  const stated = LIMITS[room.snrDb]!;
  const limit = cells < MAIN_CELLS ? stated : { ...stated, refused: stated.refused + OUTER_REFUSED };
  const error = median(tally.cents.map(Math.abs));
  const wrong = tally.wrongs / tally.trials;
  const refused = tally.refused / tally.trials;
  if (limit.wrong === 0 ? wrong > 0 : wrong >= limit.wrong) failures.push(`${name(room)}: ${tally.wrongs} wrong`);
  if (refused > limit.refused) failures.push(`${name(room)}: ${tally.refused} refused`);
  if (room.snrDb === 20 && error >= 0.5) failures.push(`${name(room)}: ${error} cent`);
  inside += cell.inside;
  found += tally.cents.length;
  times.push(...cell.times);
  worked.push(...cell.worked);
  print(
    `${name(room)}: wrong ${percent(tally.wrongs, tally.trials)} (half ${half}, double ${double}, third ${third}, other ${other}), ` +
      `refused ${percent(tally.refused, tally.trials)}, median error ${error.toFixed(3)} cent ` +
      `(bound ${(0.6745 * median(bounds)).toFixed(3)}), inside ${percent(cell.inside, tally.cents.length)}`,
  );
}

function peersIn(room: Room) {
  const peers = { McLeod: new Tally(), 'plain peak': new Tally(), 'five harmonics': new Tally(), aubio: new Tally() };
  const cell = runCell(room, SEED + 1000 * cells, TRIALS, ({ samples, rate, frequency }, i) => {
    const { peak, sum } = spectral(samples, rate);
    peers.McLeod.add(mcleod(samples, rate), frequency);
    peers['plain peak'].add(peak, frequency);
    peers['five harmonics'].add(sum, frequency);
    if (debian && i < AUBIO_TRIALS) peers.aubio.add(debian(samples, rate), frequency);
  });
  report(room, cell);
  const ours = { wrong: cell.tally.wrongs / TRIALS, error: median(cell.tally.cents.map(Math.abs)) };
  for (const [peer, tally] of Object.entries(peers)) {
    if (tally.trials === 0) continue;
    const error = median(tally.cents.map(Math.abs));
    print(`    ${peer}: wrong ${percent(tally.wrongs, tally.trials)}, median error ${error.toFixed(2)} cent`);
    const share = tally.wrongs / tally.trials;
    const ahead = ours.wrong <= share && (Number.isNaN(error) || ours.error < error);
    if (!ahead) failures.push(`${name(room)}: ${peer} is not behind`);
  }
}

const noises = ['white', 'pink'] as const;
const levels = [20, 10, 0];
for (const noise of noises) {
  for (const microphone of ['plain', 'high-passed', 'high-passed, noise behind'] as const) {
    for (const snrDb of levels) {
      peersIn({ noise, microphone, snrDb, low: 35, high: 180 });
      cells += 1;
    }
  }
}
print(`35-180 Hz, all: inside the 95 % interval ${percent(inside, found)} of ${found}`);
const [mainInside, mainFound] = [inside, found];
for (const [low, high] of [
  [20, 35],
  [180, 500],
] as const) {
  for (const noise of noises) {
    for (const microphone of ['plain', 'high-passed'] as const) {
      for (const snrDb of levels) {
        const room = { noise, microphone, snrDb, low, high };
        report(room, runCell(room, SEED + 1000 * cells, TRIALS));
        cells += 1;
      }
    }
  }
}
print(`20-35 and 180-500 Hz: inside ${percent(inside - mainInside, found - mainFound)} of ${found - mainFound}`);
print(
  `One estimate, median: ${median(times).toFixed(1)} ms by the clock (${cpus().length} cores, with whatever else runs on ` +
    `them), ${median(worked).toFixed(1)} ms of the processor`,
);
const share = mainInside / mainFound;
if (share < 0.93 || share > 0.98) failures.push(`inside the interval: ${share}`);
print(failures.length === 0 ? 'Note: every limit held.' : `Note: NOT HELD\n  ${failures.join('\n  ')}`);
process.exitCode = failures.length === 0 ? 0 : 1;
