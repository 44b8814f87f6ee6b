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

interface Stream {
  readonly samples: Float32Array;
  readonly at: number;
  readonly frequency: number;
}

interface Rung {
  /** At RATE, as the microphone hears it in its room. */
  readonly sound: Float64Array;
  readonly frequency: number;
}

/** What the cells of one seed share, so that it is made once: strings by band and manner, these in their rooms, noise by kind. */
interface Shared {
  readonly seed: number;
  readonly struck: Map<string, Struck>;
  readonly rung: Map<string, Rung>;
  readonly noise: Map<string, Float64Array>;
}
let shared: Shared | undefined;
function sharedOf(seed: number): Shared {
  if (shared?.seed !== seed) shared = { seed, struck: new Map(), rung: new Map(), noise: new Map() };
  return shared;
}
function once<T>(made: Map<string, T>, key: string, make: () => T): T {
  const one = made.get(key) ?? make();
  made.set(key, one);
  return one;
}

/** A string of this cell in its room. */
function rungIn({ low, high, manner, room }: EarCell, seed: number, corner: number): Rung {
  const { struck, rung } = sharedOf(seed);
  return once(rung, `${low} ${manner} ${room}`, () => {
    const { sound, frequency } = once(struck, `${low} ${manner}`, () => strike(low, high, manner, seed));
    const wet = inRoom(sound, STEP_RATE, room, seed);
    const fade = 0.1 * STEP_RATE;
    const ring = doubled(wet.map((x, t) => x * Math.min(1, (wet.length - t) / fade)));
    return { sound: secondOrder(ring, corner, 'high'), frequency };
  });
}

/** A pluck of this cell as a page is given it. */
export function stream(cell: EarCell, seed: number): Stream {
  const uniform = random(seed * 8191 + 77);
  const { sound: heard, frequency } = rungIn(cell, seed, 40 + 80 * uniform());
  let power = 0;
  for (let t = 0; t < RATE; t += 1) power += heard[t]! ** 2 / RATE;
  const length = Math.round(WHOLE * RATE);
  const noise = once(sharedOf(seed).noise, cell.noise, () => roomNoise(cell.noise, length, 0.5, seed));
  const deviation = Math.sqrt(power * 10 ** (-cell.snrDb / 10));
  const from = Math.round((LEAD + 0.1 * uniform()) * RATE);
  let loudest = 0;
  const mixed = new Float64Array(length);
  for (let t = 0; t < length; t += 1) {
    const y = deviation * noise[t]! + (heard[t - from] ?? 0);
    mixed[t] = y;
    loudest = Math.max(loudest, Math.abs(y));
  }
  const loudness = 10 ** (-(10 + 20 * uniform()) / 20) / loudest;
  for (let t = 0; t < length; t += 1) mixed[t]! *= loudness;
  const given = processed(mixed, cell.processing, seed);
  const samples = new Float32Array(length);
  for (let t = 0; t < length; t += 1) samples[t] = Math.max(-1, Math.min(1, given[t]!));
  return { samples, at: from / RATE, frequency };
}

/** Beyond this share of the note a name is wrong. */
const WRONG = 0.03;

/** What a method made of a cell's plucks. */
export class EarTally {
  trials = 0;
  heard = 0;
  wrong = 0;
  refused = 0;
  right = 0;
  inside = 0;
  /** Why those heard gave no note. */
  readonly reasons = new Map<string, number>();

  /** The whole listener on one stream. */
  add({ samples, at, frequency }: Stream): void {
    const listener = createListener(RATE);
    const plucks = listener.push(samples).filter((event) => event.kind === 'pluck');
    const ours = plucks.filter((pluck) => pluck.at > at - 0.05 && pluck.at < at + 0.1);
    const notes = plucks.flatMap(({ note }) => (note.status === 'found' ? [note] : []));
    const isRight = (note: { frequency: number }): boolean => Math.abs(note.frequency / frequency - 1) <= WRONG;
    const right = notes.find(isRight);
    this.trials += 1;
    if (ours.length > 0) this.heard += 1;
    if (!notes.every(isRight)) this.wrong += 1;
    else if (right) {
      this.right += 1;
      if (Math.abs(right.frequency - frequency) <= right.halfWidth) this.inside += 1;
    } else if (ours.length > 0) {
      this.refused += 1;
      const reason = ours[0]?.note.status === 'refused' ? ours[0].note.reason : '';
      this.reasons.set(reason, (this.reasons.get(reason) ?? 0) + 1);
    }
  }

  /** Another method's name for it; NaN for none. */
  addPeer(found: number, truth: number): void {
    this.trials += 1;
    if (Math.abs(found / truth - 1) <= WRONG) this.right += 1;
    else if (found > 0) this.wrong += 1;
    else this.refused += 1;
  }
}

/** Wilson's 95 % interval of a share (E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209, from memory). */
export function wilson(part: number, whole: number): readonly [number, number] {
  if (whole === 0) return [0, 1];
  const z2 = 1.96 ** 2;
  const p = part / whole;
  const half = Math.sqrt((z2 * (p * (1 - p) + z2 / (4 * whole))) / whole);
  return [(p + z2 / (2 * whole) - half) / (1 + z2 / whole), (p + z2 / (2 * whole) + half) / (1 + z2 / whole)];
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
  ...(
    [
      [20, 35],
      [180, 500],
    ] as const
  ).flatMap(([low, high]) => [20, 10, 0].map((snrDb) => ({ ...base, low, high, snrDb }))),
];

export const nameOf = (cell: EarCell): string =>
  [
    `${cell.low}–${cell.high} Hz`,
    ...(cell.manner === 'plain' ? [] : [cell.manner]),
    `${cell.noise} ${cell.snrDb} dB`,
    ...(cell.room > 0 ? [`room ${cell.room} s`] : []),
    ...(cell.processing === 'none' ? [] : [cell.processing]),
  ].join(', ');
