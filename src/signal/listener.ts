import { estimateNote, type NoteFound, type NoteOptions, type NoteRefused } from './note';
import { createFramer, type Frame } from './pluck-onset';
import { createRiseWatch } from './pluck-rise';
import { createMeter, type LevelEvent } from './sound-level';

export type ListenerEvent =
  | LevelEvent
  | {
      readonly kind: 'pluck';
      readonly note: NoteFound | NoteRefused;
      /** Onset, seconds from the start of the stream. */
      readonly at: number;
    };

export interface Listener {
  push(block: Float32Array): readonly ListenerEvent[];
  /** A person says that a pluck has just sounded: the likeliest beginning of the last moments is taken for one. */
  plucked(): void;
}

/** Seconds of a pluck that are analysed, at most and (where another pluck follows) at least. */
const WHOLE = 1;
const LEAST = 0.3;
/** Seconds of noise kept from before a pluck, and how long before the onset they end. */
const CALM = 0.5;
const GUARD = 0.03;
/** Fewest seconds of noise that are of use. */
const LEAST_CALM = 0.12;
/** How far back a pluck may lie of which a person tells, s. */
const TOLD = 1.6;
/** The slower watch sees a beginning so much to and fro, s: nearer to one that is known it is the same. */
const SAME = 0.2;
/** While one pluck rings a tone that sets in must tell so much more to be another: beats and a phone's gates rise too. */
const STRONGER = 60;
/** What is up to so much louder (power) than the noise kept is taken for noise; so is all this long after a pluck, s. */
const STILL_CALM = 2;
const RUNG_OUT = 5;

/** The last seconds of a stream, by sample number from its start. */
function createMemory(length: number) {
  const ring = new Float32Array(length);
  let end = 0;
  return {
    push(block: Float32Array) {
      for (const sample of block) {
        ring[end % length] = sample;
        end += 1;
      }
    },
    slice(from: number, to: number): Float32Array {
      const first = Math.max(0, from, end - length);
      const out = new Float32Array(Math.max(0, to - first));
      const start = first % length;
      out.set(ring.subarray(start, start + out.length));
      if (start + out.length > length) out.set(ring.subarray(0, start + out.length - length), length - start);
      return out;
    },
  };
}

const secondsAt =
  (rate: number) =>
  (s: number): number =>
    Math.round(s * rate);

/** Keeps the noise from before the first of several plucks: the ringing of one must not count as noise to the next. */
function createCalm(rate: number, memory: ReturnType<typeof createMemory>) {
  const seconds = secondsAt(rate);
  const bands: { to: number; band: number }[] = [];
  let calm: { samples: Float32Array; power: number; until: number } | undefined;
  return {
    hear(frame: Frame) {
      bands.push({ to: frame.to, band: frame.band });
      if (bands.length * (frame.to - frame.from) > seconds(TOLD + CALM + 2 * GUARD)) bands.shift();
    },
    /** A pluck begins at this sample. */
    pluckedAt(at: number) {
      const to = at - seconds(GUARD);
      const from = to - seconds(CALM);
      const frames = bands.filter((frame) => frame.to > from && frame.to <= to);
      const power = frames.reduce((sum, frame) => sum + frame.band, 0) / Math.max(1, frames.length);
      const samples = memory.slice(from, to);
      if (samples.length < seconds(LEAST_CALM)) return;
      if (!calm || power <= STILL_CALM * calm.power || at - calm.until > seconds(RUNG_OUT)) {
        calm = { samples, power, until: at };
      }
      calm.until = at;
    },
    samples: (): Float32Array | undefined => calm?.samples,
  };
}

/**
 * Listens to a stream for plucks: tells the level ten times a second and, one second after each onset, the note or why there
 * is none. A second pluck within that second cuts the first short. Onsets are found by the level, at once, and by tones that
 * set in, a tenth of a second later, where hum, fans or noise hide the level. Pure: no clock, no device; time is counted in
 * samples.
 */
export function createListener(rate: number, options: Omit<NoteOptions, 'before'> = {}): Listener {
  const memory = createMemory(Math.round((Math.max(WHOLE, TOLD) + CALM + 0.5) * rate));
  const framer = createFramer(rate);
  const watch = createRiseWatch(rate);
  const seconds = secondsAt(rate);
  const calm = createCalm(rate, memory);
  const meter = createMeter(rate);
  let onset: number | undefined;
  let lastOnset = -Infinity;
  let end = 0;

  const judge = (from: number, to: number): ListenerEvent => {
    const samples = calm.samples();
    const before = samples ? { before: samples } : {};
    const note = estimateNote(memory.slice(from, to), rate, { ...options, ...before });
    return { kind: 'pluck', note, at: from / rate };
  };
  /** Ends the pluck that rings. One cut short is told and gives no note, or not told where it was the touch before a pluck. */
  const finish = (to: number, events: ListenerEvent[]) => {
    if (onset === undefined) return;
    const length = to - onset;
    const cut: ListenerEvent = { kind: 'pluck', note: { status: 'refused', reason: 'too short' }, at: onset / rate };
    if (length >= seconds(SAME)) events.push(length < seconds(LEAST) ? cut : judge(onset, to));
    onset = undefined;
  };
  const begin = (at: number) => {
    calm.pluckedAt(at);
    onset = at;
    lastOnset = at;
  };

  const take = (frame: Frame, events: ListenerEvent[]) => {
    calm.hear(frame);
    const told = meter(frame);
    if (told) events.push(told);
    if (onset !== undefined && frame.to - onset >= seconds(WHOLE)) finish(frame.to, events);
    if (!frame.onset) return;
    finish(frame.from, events);
    begin(frame.from);
  };
  const rise = (at: number, evidence: number, events: ListenerEvent[]) => {
    if (at - lastOnset < seconds(SAME) || (onset !== undefined && evidence < STRONGER)) return;
    finish(at, events);
    begin(at);
  };

  return {
    push(block) {
      const events: ListenerEvent[] = [];
      // In pieces no longer than a frame, so that the memory still holds what a frame's judgement needs.
      for (let from = 0; from < block.length; from += seconds(0.1)) {
        const piece = block.subarray(from, from + seconds(0.1));
        memory.push(piece);
        end += piece.length;
        for (const frame of framer(piece)) take(frame, events);
        for (const { at, evidence } of watch.push(piece)) rise(at, evidence, events);
      }
      return events;
    },
    plucked() {
      if (end - lastOnset < seconds(TOLD)) return;
      const { at } = watch.likeliest(seconds(TOLD)) ?? { at: end - seconds(TOLD / 2) };
      begin(Math.max(at, lastOnset + seconds(WHOLE)));
    },
  };
}
