/** A recording of a plucked belt, made up: for Chromium's fake microphone. */
export interface Recording {
  /** First partial of each pluck, Hz, in turn. */
  readonly notes: readonly number[];
  /** Amplitude of the white noise; full scale is 1. */
  readonly noise: number;
  /** Amplitude of the plucks' strongest partial. */
  readonly loudness: number;
}

const RATE = 48_000;
const LEAD_S = 2;
const EVERY_S = 2.2;
const STIFFNESS = 4e-4;
/** A second and third partial louder than the first, as a short span has them. */
const STRENGTHS = [0.6, 1, 0.8, 0.5, 0.4, 0.25, 0.2, 0.1];
const HUM_HZ = [50, 100, 150];

/** Numerical Recipes' quick generator: the same noise at every run. */
function createNoise(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** Samples at 48 kHz: stiff-string plucks (f_n = n f_0 √(1 + B n²)) that die away, over noise and mains hum. */
function samplesOf({ notes, noise, loudness }: Recording): Float64Array {
  const samples = new Float64Array(Math.round((LEAD_S + notes.length * EVERY_S) * RATE));
  const white = createNoise(7);
  for (let i = 0; i < samples.length; i += 1) {
    const hum = HUM_HZ.reduce((sum, hz, k) => sum + (noise / (k + 1)) * Math.sin((2 * Math.PI * hz * i) / RATE + k), 0);
    samples[i] = noise * white() + hum;
  }
  notes.forEach((note, pluck) => {
    const start = Math.round((LEAD_S + pluck * EVERY_S) * RATE);
    STRENGTHS.forEach((strength, k) => {
      const n = k + 1;
      const f = n * note * Math.sqrt((1 + STIFFNESS * n * n) / (1 + STIFFNESS));
      const rate = 2.5 + 0.6 * n;
      for (let i = 0; i < 2 * RATE && start + i < samples.length; i += 1) {
        const t = i / RATE;
        const rise = Math.min(1, t / 0.002);
        samples[start + i]! += loudness * strength * rise * Math.exp(-rate * t) * Math.sin(2 * Math.PI * f * t + n);
      }
    });
  });
  return samples;
}

/** The recording as a WAV file. */
export const wavOf = (recording: Recording): Buffer => wavFile(samplesOf(recording));

/** Samples at 48 kHz as a WAV file, 16 bit, one channel. */
export function wavFile(samples: Float64Array): Buffer {
  const file = Buffer.alloc(44 + 2 * samples.length);
  file.write('RIFF', 0);
  file.writeUInt32LE(36 + 2 * samples.length, 4);
  file.write('WAVEfmt ', 8);
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20);
  file.writeUInt16LE(1, 22);
  file.writeUInt32LE(RATE, 24);
  file.writeUInt32LE(2 * RATE, 28);
  file.writeUInt16LE(2, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36);
  file.writeUInt32LE(2 * samples.length, 40);
  samples.forEach((x, i) => file.writeInt16LE(Math.round(Math.max(-1, Math.min(1, x)) * 32767), 44 + 2 * i));
  return file;
}
