import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PitchDetector } from 'pitchy';
import { spectrumOf } from '../../src/signal/spectrum';

/** Other methods of naming a note, given the same second of sound: Hz, or NaN for none. */
export type Peer = (samples: Float32Array, rate: number) => number;

const LOW = 20;
const HIGH = 500;
const LENGTH = 16384;
const detector = PitchDetector.forFloat32Array(LENGTH);

/** McLeod & Wyvill's method as pitchy has it, on a third of a second from 50 ms after the onset. */
export const mcleod: Peer = (samples, rate) => {
  const from = Math.round(0.05 * rate);
  return detector.findPitch(samples.slice(from, from + LENGTH), rate)[0];
};

const bells = new Map<number, Float64Array>();
function bellOf(length: number): Float64Array {
  const made =
    bells.get(length) ?? Float64Array.from({ length }, (_, t) => 0.5 - 0.5 * Math.cos((2 * Math.PI * t) / length));
  bells.set(length, made);
  return made;
}

/** Magnitudes of the whole second, Hann window, zero-padded. */
function magnitudes(samples: Float32Array, rate: number) {
  const size = 2 ** Math.ceil(Math.log2(samples.length) + 1);
  const bell = bellOf(samples.length);
  const windowed = new Float64Array(samples.length);
  for (let t = 0; t < samples.length; t += 1) windowed[t] = samples[t]! * bell[t]!;
  const { re, im, step } = spectrumOf(windowed, size, rate);
  const magnitude = new Float64Array(re.length);
  for (let k = 0; k < re.length; k += 1) magnitude[k] = Math.sqrt(re[k]! ** 2 + im[k]! ** 2);
  return { magnitude, step };
}

/** Place of a peak between bins, by a parabola through the logarithms. */
function between(magnitude: Float64Array, k: number): number {
  const [a, b, c] = [k - 1, k, k + 1].map((i) => Math.log((magnitude[i] ?? 0) + 1e-30)) as [number, number, number];
  return k + (0.5 * (a - c)) / (a - 2 * b + c);
}

/** The highest peak of the spectrum within the range, and the best sum over five harmonics: both from one transform. */
export function spectral(samples: Float32Array, rate: number): { peak: number; sum: number } {
  const { magnitude, step } = magnitudes(samples, rate);
  let [top, best, at] = [0, 0, 0];
  for (let k = Math.ceil(LOW / step); k < HIGH / step; k += 1) {
    if (magnitude[k]! > magnitude[top]!) top = k;
    let sum = 0;
    for (let n = 1; n <= 5; n += 1) sum += magnitude[n * k] ?? 0;
    if (sum > best) [best, at] = [sum, k];
  }
  // Refined on the loudest bin about it, where there is one.
  let near = at;
  for (let k = at - 2; k <= at + 2; k += 1) if (magnitude[k]! > magnitude[near]!) near = k;
  return { peak: between(magnitude, top) * step, sum: between(magnitude, near) * step };
}

function wav(samples: Float32Array, rate: number): Buffer {
  const out = Buffer.alloc(44 + 2 * samples.length);
  out.write('RIFF', 0);
  out.writeUInt32LE(36 + 2 * samples.length, 4);
  out.write('WAVEfmt ', 8);
  out.writeUInt32LE(16, 16);
  out.writeUInt16LE(1, 20);
  out.writeUInt16LE(1, 22);
  out.writeUInt32LE(rate, 24);
  out.writeUInt32LE(2 * rate, 28);
  out.writeUInt16LE(2, 32);
  out.writeUInt16LE(16, 34);
  out.write('data', 36);
  out.writeUInt32LE(2 * samples.length, 40);
  samples.forEach((x, i) => out.writeInt16LE(Math.max(-32768, Math.min(32767, Math.round(32768 * x))), 44 + 2 * i));
  return out;
}

/** Debian's aubiopitch (yinfft, 8192 samples a frame), the median over the frames; undefined where it is not installed. */
export function aubio(): Peer | undefined {
  if (spawnSync('aubiopitch', ['-h']).error) return undefined;
  return (samples, rate) => {
    const folder = mkdtempSync(join(tmpdir(), 'trammel-aubio-'));
    const file = join(folder, 'pluck.wav');
    writeFileSync(file, wav(samples, rate));
    const { stdout } = spawnSync('aubiopitch', [
      '-i',
      file,
      '-r',
      String(rate),
      '-p',
      'yinfft',
      '-B',
      '8192',
      '-H',
      '2048',
    ]);
    rmSync(folder, { recursive: true });
    const found = stdout
      .toString()
      .split('\n')
      .map((line) => Number(line.split(/\s+/)[1]))
      .filter((f) => f > 0)
      .sort((a, b) => a - b);
    return found[found.length >> 1] ?? NaN;
  };
}
