/** What lies between a belt and a listener: the room, its noise, and what a phone does to sound before a page is given it. */
import FFT from 'fft.js';
import { broadband, gaussian, random, RATE } from './plucks';

export type Processing =
  'none' | 'suppression' | 'gain control' | 'both' | 'companding' | 'narrow band' | 'low rate' | 'clipping';

const transforms = new Map<number, FFT>();
const transform = (size: number): FFT => {
  const made = transforms.get(size) ?? new FFT(size);
  transforms.set(size, made);
  return made;
};

/** Two real sounds folded into each other, as long as the first. */
function folded(sound: Float64Array, answer: Float64Array): Float64Array {
  const size = 2 ** Math.ceil(Math.log2(sound.length + answer.length));
  const fft = transform(size);
  const spectrum = (x: Float64Array): number[] => {
    const padded = new Float64Array(size);
    padded.set(x);
    const out = fft.createComplexArray() as number[];
    fft.realTransform(out, padded);
    fft.completeSpectrum(out);
    return out;
  };
  const [a, b] = [spectrum(sound), spectrum(answer)];
  for (let k = 0; k < 2 * size; k += 2) {
    const re = a[k]! * b[k]! - a[k + 1]! * b[k + 1]!;
    a[k + 1] = a[k]! * b[k + 1]! + a[k + 1]! * b[k]!;
    a[k] = re;
  }
  const back = fft.createComplexArray() as number[];
  fft.inverseTransform(back, a);
  return sound.map((_, t) => back[2 * t]!);
}

/**
 * A room: the sound itself, then a tail of noise that falls by 60 dB in `seconds`, its treble sooner (diffuse field: Polack's
 * model, from memory). The phone is near: the sound itself has 0 to 10 dB more than the tail.
 */
export function inRoom(sound: Float64Array, rate: number, seconds: number, seed: number): Float64Array {
  if (seconds === 0) return sound;
  const uniform = random(seed * 31 + 5);
  const normal = gaussian(random(seed * 37 + 11));
  const length = Math.round(seconds * rate);
  const tail = new Float64Array(length);
  const gap = Math.round((0.002 + 0.008 * uniform()) * rate);
  let low = 0;
  const blend = 1 - Math.exp((-2 * Math.PI * 1000) / rate);
  let power = 0;
  for (let t = gap; t < length; t += 1) {
    const x = normal();
    low += blend * (x - low);
    const bass = Math.exp((-6.91 * t) / length);
    const treble = Math.exp((-6.91 * t) / (0.6 * length));
    tail[t] = low * bass + (x - low) * 0.5 * treble;
    power += tail[t]! ** 2;
  }
  // The tail's power as the belt's own sound meets it, not as white noise would.
  const wet = folded(sound, tail);
  const energy = (x: Float64Array) => x.reduce((sum, one) => sum + one * one, 0);
  const scale = power > 0 ? Math.sqrt(energy(sound) / energy(wet)) * 10 ** (-(10 * uniform()) / 20) : 0;
  return sound.map((x, t) => x + scale * wet[t]!);
}

/** Twice the rate, by a windowed sinc. */
export function doubled(sound: Float64Array): Float64Array {
  const half = 12;
  const taps = Array.from({ length: half }, (_, i) => {
    const x = i + 0.5;
    return (Math.sin(Math.PI * x) / (Math.PI * x)) * Math.cos((Math.PI * x) / (2 * half)) ** 2;
  });
  const out = new Float64Array(2 * sound.length);
  for (let t = 0; t < sound.length; t += 1) {
    out[2 * t] = sound[t]!;
    let sum = 0;
    for (let i = 0; i < half; i += 1) sum += taps[i]! * ((sound[t - i] ?? 0) + (sound[t + 1 + i] ?? 0));
    out[2 * t + 1] = sum;
  }
  return out;
}

/** Broadband noise of unit power with mains hum and a fan's line behind it, each `most` of its power at most. */
export function roomNoise(kind: 'white' | 'pink', length: number, most: number, seed: number): Float64Array {
  const uniform = random(seed * 7907 + 3);
  const sound = broadband(kind, length, gaussian(random(seed * 104717 + 9)));
  const steady = (frequency: number, amplitude: number, start: number) => {
    const w = (2 * Math.PI * frequency) / RATE;
    for (let t = 0; t < length; t += 1) sound[t]! += amplitude * Math.cos(w * t + start);
  };
  const mains = (uniform() < 0.5 ? 50 : 60) * (1 + 2e-3 * (uniform() - 0.5));
  const hum = Array.from({ length: 5 }, () => 10 ** -uniform());
  const scale = Math.sqrt((2 * most * uniform()) / hum.reduce((sum, a) => sum + a * a, 0));
  if (most > 0) hum.forEach((a, m) => steady(mains * (m + 1), scale * a, 6.28 * uniform()));
  if (most > 0) steady(40 * 15 ** uniform(), Math.sqrt(2 * most * uniform()), 6.28 * uniform());
  return sound;
}

/** A low-pass or high-pass of second order (Butterworth, bilinear). */
export function secondOrder(sound: Float64Array, hertz: number, kind: 'low' | 'high', rate = RATE): Float64Array {
  const w = (2 * Math.PI * hertz) / rate;
  const [cos, alpha] = [Math.cos(w), Math.sin(w) / Math.SQRT2];
  const side = kind === 'low' ? 1 - cos : 1 + cos;
  const a0 = 1 + alpha;
  const [b0, b1] = [side / 2 / a0, (kind === 'low' ? side : -side) / a0];
  const [a1, a2] = [(-2 * cos) / a0, (1 - alpha) / a0];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  return sound.map((x) => {
    const y = b0 * (x + x2) + b1 * x1 - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  });
}

/**
 * Noise suppression in overlapping windows of 21 ms: Wiener gains against a noise that follows the least power of the last
 * second, floored, each by itself and smoothed little: musical noise and all (Boll 1979, Ephraim & Malah 1984, from memory).
 */
function suppressed(sound: Float64Array, seed: number): Float64Array {
  const uniform = random(seed * 41 + 1);
  const size = 1024;
  const hop = size / 2;
  const over = 1 + 2 * uniform();
  const floor = 10 ** (-(10 + 15 * uniform()) / 20);
  const smooth = 0.5 + 0.48 * uniform();
  const window = Float64Array.from({ length: size }, (_, t) => Math.sin((Math.PI * (t + 0.5)) / size));
  const fft = transform(size);
  const noise = new Float64Array(size / 2 + 1);
  const prior = new Float64Array(size / 2 + 1);
  const out = new Float64Array(sound.length);
  const spectrum = fft.createComplexArray() as number[];
  const back = fft.createComplexArray() as number[];
  for (let from = 0; from + size <= sound.length; from += hop) {
    fft.realTransform(
      spectrum,
      window.map((w, t) => w * sound[from + t]!),
    );
    for (let k = 0; k <= size / 2; k += 1) {
      const power = spectrum[2 * k]! ** 2 + spectrum[2 * k + 1]! ** 2;
      // Falls to a lower power at once, creeps up by 3 dB a second.
      noise[k] = from === 0 ? power : Math.min(noise[k]! * 1.0075, 0.8 * noise[k]! + 0.2 * power);
      const post = power / (over * 2 * noise[k]! + 1e-20);
      prior[k] = smooth * prior[k]! + (1 - smooth) * Math.max(0, post - 1);
      const gain = Math.max(floor, prior[k]! / (1 + prior[k]!));
      prior[k] = smooth * gain * gain * post + (1 - smooth) * prior[k]!;
      spectrum[2 * k]! *= gain;
      spectrum[2 * k + 1]! *= gain;
    }
    fft.completeSpectrum(spectrum);
    fft.inverseTransform(back, spectrum);
    for (let t = 0; t < size; t += 1) out[from + t]! += window[t]! * back[2 * t]!;
  }
  return out;
}

/** Gain control: a level follower that brings what is loud down at once and what is quiet up over a second or less. */
function levelled(sound: Float64Array, seed: number): Float64Array {
  const uniform = random(seed * 43 + 7);
  const attack = 1 - Math.exp(-1 / ((0.001 + 0.02 * uniform()) * RATE));
  const release = 1 - Math.exp(-1 / ((0.05 + 0.6 * uniform()) * RATE));
  const ratio = 0.4 + 0.5 * uniform();
  let level = 0.003;
  return sound.map((x) => {
    const loud = Math.abs(x);
    level += (loud > level ? attack : release) * (loud - level);
    return x * Math.min(30, (0.1 / (level + 1e-4)) ** ratio);
  });
}

/** ITU-T G.711's µ-law (continuous form, from memory): 8 bits a sample. */
const companded = (x: number): number => {
  const loud = Math.log1p(255 * Math.min(1, Math.abs(x))) / Math.log(256);
  const coarse = Math.round(loud * 127) / 127;
  return Math.sign(x) * (256 ** coarse - 1) * (1 / 255);
};

/** Every sixth sample, coded by `code`, back at the full rate; what a telephone keeps is 300 to 3400 Hz. */
function telephone(sound: Float64Array, lowest: number, code: (slow: Float64Array) => Float64Array): Float64Array {
  const narrow = secondOrder(secondOrder(secondOrder(sound, lowest, 'high'), 3200, 'low'), 3200, 'low');
  const slow = code(Float64Array.from({ length: Math.ceil(sound.length / 6) }, (_, t) => narrow[6 * t]!));
  const held = sound.map((_, t) => {
    const at = Math.floor(t / 6);
    const part = (t % 6) / 6;
    return slow[at]! * (1 - part) + (slow[at + 1] ?? 0) * part;
  });
  return secondOrder(held, 3400, 'low');
}

/** Adaptive differential coding at 2 bits a sample: what speech at a low rate is left with, its noise follows the sound. */
function differential(slow: Float64Array): Float64Array {
  let [guess, last, step] = [0, 0, 0.001];
  return slow.map((x) => {
    const predicted = guess + 0.5 * (guess - last);
    const wanted = (x - predicted) / step;
    const code = Math.abs(wanted) > 1 ? 1.5 : 0.5;
    last = guess;
    guess = Math.max(-1, Math.min(1, predicted + Math.sign(wanted) * code * step));
    step = Math.min(0.3, Math.max(2e-4, step * (code > 1 ? 1.5 : 0.85)));
    return guess;
  });
}

/**
 * A transform coder at a low rate: in windows of 43 ms each of some bands keeps its few loudest bins, three bits each, and the
 * rest is silence: what a speech or music coder of some 16 kbit/s does to a tone.
 */
function coded(sound: Float64Array, seed: number): Float64Array {
  const uniform = random(seed * 47 + 13);
  const size = 2048;
  const hop = size / 2;
  const kept = 2 + Math.floor(3 * uniform());
  const window = Float64Array.from({ length: size }, (_, t) => Math.sin((Math.PI * (t + 0.5)) / size));
  const fft = transform(size);
  const out = new Float64Array(sound.length);
  const spectrum = fft.createComplexArray() as number[];
  const back = fft.createComplexArray() as number[];
  for (let from = 0; from + size <= sound.length; from += hop) {
    fft.realTransform(
      spectrum,
      window.map((w, t) => w * sound[from + t]!),
    );
    for (let band = 0; band < size / 2; band += 8) {
      const bins = Array.from({ length: 8 }, (_, i) => band + i);
      const loud = (k: number) => Math.hypot(spectrum[2 * k]!, spectrum[2 * k + 1]!);
      const strongest = new Set([...bins].sort((a, b) => loud(b) - loud(a)).slice(0, kept));
      const step = Math.max(...bins.map(loud)) / 4 + 1e-12;
      for (const k of bins) {
        const keep = strongest.has(k) && band < size / 6;
        spectrum[2 * k] = keep ? step * Math.round(spectrum[2 * k]! / step) : 0;
        spectrum[2 * k + 1] = keep ? step * Math.round(spectrum[2 * k + 1]! / step) : 0;
      }
    }
    fft.completeSpectrum(spectrum);
    fft.inverseTransform(back, spectrum);
    for (let t = 0; t < size; t += 1) out[from + t]! += window[t]! * back[2 * t]!;
  }
  return out;
}

/** What a page is given of a sound under this processing; full scale is 1. */
export function processed(sound: Float64Array, how: Processing, seed: number): Float64Array {
  switch (how) {
    case 'none':
      return sound;
    case 'suppression':
      return suppressed(sound, seed);
    case 'gain control':
      return levelled(sound, seed);
    case 'both':
      return levelled(suppressed(sound, seed), seed);
    case 'companding':
      return telephone(sound, 100, (slow) => slow.map(companded));
    case 'narrow band':
      return telephone(sound, 300, differential);
    case 'low rate':
      return coded(sound, seed);
    case 'clipping': {
      const gain = 4 + 16 * random(seed * 53 + 17)();
      return sound.map((x) => Math.max(-1, Math.min(1, gain * x)));
    }
  }
}
