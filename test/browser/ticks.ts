import { wavFile } from './plucks';

/** A recording of a feeder that ticks, made up: for Chromium's fake microphone. */
export interface Ticking {
  /** Seconds from the beginning at which it ticks. */
  readonly at: readonly number[];
  readonly seconds: number;
}

const RATE = 48_000;
/** Resonances of frame and sheet, Hz, each with its decay per second. */
const MODES = [
  [620, 90],
  [1310, 140],
  [2470, 190],
  [4150, 260],
] as const;

/** The recording as a WAV file: blows on damped resonances, 30 dB over a quiet noise. */
export function tickingWav({ at, seconds }: Ticking): Buffer {
  const samples = new Float64Array(seconds * RATE);
  let state = 5;
  for (let i = 0; i < samples.length; i += 1) {
    // Numerical Recipes' quick generator: the same noise at every run.
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    samples[i] = 0.004 * (state / 2 ** 31 - 1);
  }
  for (const from of at) {
    for (let i = 0; i < 0.1 * RATE; i += 1) {
      const t = i / RATE;
      const sound = MODES.reduce((sum, [f, decay]) => sum + Math.exp(-decay * t) * Math.sin(2 * Math.PI * f * t), 0);
      samples[Math.round(from * RATE) + i]! += 0.08 * sound;
    }
  }
  return wavFile(samples);
}
