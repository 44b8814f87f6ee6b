/** Trials of the whole ear, sound in and plucks out: cells of physical strings in rooms and behind a phone's processing. */
import { createListener } from '../../src/signal/listener';
import { doubled, inRoom, processed, roomNoise, secondOrder, type Processing } from './phone-sound';
import { random, RATE } from './plucks';
import { STEP_RATE, strike, type Manner, type Struck } from './strings';

export interface EarCell {
  readonly low: number;
  readonly high: number;
  readonly manner: Manner;
  readonly noise: 'white' | 'pink';
  /** The pluck's mean power over its second to that of the broadband noise over 24 kHz; hum and fan come on top. */
  readonly snrDb: number;
  /** Reverberation time, s; 0 for none. */
  readonly room: number;
  readonly processing: Processing;
}

/** Stream: noise, the pluck, noise; where the finger lets go, in seconds. */
const LEAD = 1.6;
const WHOLE = LEAD + 1.45;

export interface Stream {
  readonly samples: Float32Array;
  readonly at: number;
  readonly frequency: number;
}

const struck = new Map<string, Struck>();
/** The strings are the same in every cell of a band and manner: 10 ms to 300 ms each. */
function struckOnce(low: number, high: number, manner: Manner, seed: number): Struck {
  const key = `${low} ${high} ${manner} ${seed}`;
  const made = struck.get(key) ?? strike(low, high, manner, seed);
  struck.set(key, made);
  return made;
}

/** A pluck of this cell as a page is given it. */
export function stream(cell: EarCell, seed: number): Stream {
  const { sound, frequency } = struckOnce(cell.low, cell.high, cell.manner, seed);
  const uniform = random(seed * 8191 + 77);
  const wet = inRoom(sound, STEP_RATE, cell.room, seed);
  const fade = 0.1 * STEP_RATE;
  const ring = doubled(wet.map((x, t) => x * Math.min(1, (wet.length - t) / fade)));
  const heard = secondOrder(ring, 40 + 80 * uniform(), 'high');
  const power = heard.subarray(0, RATE).reduce((sum, x) => sum + x * x, 0) / RATE;
  const noise = roomNoise(cell.noise, Math.round(WHOLE * RATE), 0.5, seed);
  const deviation = Math.sqrt(power * 10 ** (-cell.snrDb / 10));
  const from = Math.round((LEAD + 0.1 * uniform()) * RATE);
  let loudest = 0;
  const mixed = noise.map((x, t) => {
    const y = deviation * x + (heard[t - from] ?? 0);
    loudest = Math.max(loudest, Math.abs(y));
    return y;
  });
  const loudness = 10 ** (-(10 + 20 * uniform()) / 20) / loudest;
  const given = processed(mixed.map((x) => x * loudness), cell.processing, seed);
  return { samples: Float32Array.from(given, (x) => Math.max(-1, Math.min(1, x))), at: from / RATE, frequency };
}

export interface EarTally {
  trials: number;
  heard: number;
  wrong: number;
  refused: number;
  right: number;
  inside: number;
  /** Why those heard gave no note. */
  readonly reasons: Map<string, number>;
  /** Milliseconds of processor for each second of sound. */
  worked: number;
}

/** Beyond this share of the note a name is wrong. */
export const WRONG = 0.03;

/** Runs a cell's streams through the listener; `each` gets every stream, for the peers. */
export function runEar(cell: EarCell, seed: number, trials: number, each?: (made: Stream) => void): EarTally {
  const tally: EarTally = { trials, heard: 0, wrong: 0, refused: 0, right: 0, inside: 0, reasons: new Map(), worked: 0 };
  for (let i = 0; i < trials; i += 1) {
    const made = stream(cell, seed + i);
    const began = process.cpuUsage();
    const listener = createListener(RATE);
    const plucks = listener.push(made.samples).filter((event) => event.kind === 'pluck');
    const { user, system } = process.cpuUsage(began);
    tally.worked += (user + system) / 1000 / WHOLE / trials;
    const ours = plucks.filter(({ at }) => at > made.at - 0.05 && at < made.at + 0.1);
    if (ours.length > 0) tally.heard += 1;
    const notes = plucks.flatMap(({ note }) => (note.status === 'found' ? [note] : []));
    const off = (f: number): number => Math.abs(f / made.frequency - 1);
    const right = notes.find(({ frequency }) => off(frequency) <= WRONG);
    if (notes.some(({ frequency }) => off(frequency) > WRONG)) tally.wrong += 1;
    else if (right) {
      tally.right += 1;
      if (Math.abs(right.frequency - made.frequency) <= right.halfWidth) tally.inside += 1;
    } else if (ours.length > 0) {
      tally.refused += 1;
      const reason = ours[0]?.note.status === 'refused' ? ours[0].note.reason : '';
      tally.reasons.set(reason, (tally.reasons.get(reason) ?? 0) + 1);
    }
    each?.(made);
  }
  return tally;
}

const base: EarCell = { low: 35, high: 180, manner: 'plain', noise: 'pink', snrDb: 20, room: 0, processing: 'none' };

/** Every cell of the bench, none left out. */
export const EAR_CELLS: readonly EarCell[] = [
  ...(['white', 'pink'] as const).flatMap((noise) => [20, 10, 5, 0].map((snrDb) => ({ ...base, noise, snrDb }))),
  ...[0.3, 0.7].flatMap((room) => [20, 10, 5, 0].map((snrDb) => ({ ...base, room, snrDb }))),
  ...(['suppression', 'gain control', 'both', 'companding', 'narrow band', 'low rate', 'clipping'] as const).flatMap(
    (processing) => [20, 10].map((snrDb) => ({ ...base, processing, snrDb })),
  ),
  ...(['suppression', 'gain control', 'low rate'] as const).map((processing) => ({ ...base, processing, room: 0.3 })),
  ...(['nail', 'glide', 'beats'] as const).flatMap((manner) => [20, 10].map((snrDb) => ({ ...base, manner, snrDb }))),
  ...([[20, 35], [180, 500]] as const).flatMap(([low, high]) => [20, 10, 0].map((snrDb) => ({ ...base, low, high, snrDb }))),
];

export const nameOf = (cell: EarCell): string =>
  [
    `${cell.low}–${cell.high} Hz`,
    ...(cell.manner === 'plain' ? [] : [cell.manner]),
    `${cell.noise} ${cell.snrDb} dB`,
    ...(cell.room > 0 ? [`room ${cell.room} s`] : []),
    ...(cell.processing === 'none' ? [] : [cell.processing]),
  ].join(', ');
