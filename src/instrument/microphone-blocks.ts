/** What the audio thread, the worker and the page share. No DOM: each bundles its own copy. */

/** The processor's name in the audio thread. */
export const PROCESSOR = 'blocks-to-worker';

/** Samples that go to the worker at once: 43 ms at 48 kHz. */
export const BLOCK = 2048;

/** What is listened for. */
export type Ear = 'plucks' | 'clicks';

/** From the page to the worker, once: what to listen for, where the blocks come from, and how many samples a second there are. */
export interface Opening {
  readonly ear: Ear;
  readonly port: MessagePort;
  readonly rate: number;
}

/** From the page to the worker: a pluck has just sounded. */
export const PLUCKED = 'plucked';

/**
 * Gathers the audio thread's short runs of samples into blocks of one size, none lost, none twice.
 * @param send gets each full block; it may keep it
 */
export function createGatherer(size: number, send: (block: Float32Array) => void): (run: Float32Array) => void {
  let block = new Float32Array(size);
  let filled = 0;
  return (run) => {
    let from = 0;
    while (from < run.length) {
      const count = Math.min(size - filled, run.length - from);
      block.set(run.subarray(from, from + count), filled);
      filled += count;
      from += count;
      if (filled === size) {
        send(block);
        block = new Float32Array(size);
        filled = 0;
      }
    }
  };
}

/** A rate that is off by less is put down to blocks on their way. */
const TOLERANCE = 0.04;
const WINDOW_MS = 5000;
const STRIKES = 3;

/**
 * Holds the stated number of samples a second against the clock: some phones go on at 44.1 kHz and say 48, which would
 * make every note 9 % sharp and every tension 18 % too high.
 * @param rate stated samples per second
 * @returns to be told of each block and the time (ms); true while the rate has been off over three windows of 5 s running
 */
export function createRateCheck(rate: number): (samples: number, now: number) => boolean {
  let start: number | undefined;
  let counted = 0;
  let strikes = 0;
  return (samples, now) => {
    // The first block marks the start: when its samples began is not known.
    if (start === undefined) {
      start = now;
      return false;
    }
    counted += samples;
    const elapsed = now - start;
    if (elapsed >= WINDOW_MS) {
      const off = Math.abs((counted * 1000) / (elapsed * rate) - 1) > TOLERANCE;
      strikes = off ? strikes + 1 : 0;
      start = now;
      counted = 0;
    }
    return strikes >= STRIKES;
  };
}
