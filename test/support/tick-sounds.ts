/**
 * Sounds of a feeder that slips, made by other means than they are listened for: each tick a blow of some tenths of a millisecond on
 * a machine of damped resonances, at times of its own, among what else sounds in a workshop.
 */
import { inRoom, secondOrder } from './phone-sound';
import { broadband, gaussian, random, RATE } from './plucks';

export interface TickScene {
  /** Peak of the softest tick over the effective value of all else that sounds, dB: 20 lg of the ratio. */
  readonly peakDb: number;
  readonly noise: 'white' | 'pink';
  /** `even`: a feeder held at one slip after another; `chance`: at random times; `pairs`: twos, 25 to 60 ms apart. */
  readonly times: 'even' | 'chance' | 'pairs' | 'none';
  /** `only speech`: louder, and near. */
  readonly beside: 'nothing' | 'motor' | 'fan' | 'speech' | 'motor and fan' | 'only speech';
  /** Reverberation time, s; 0 for none. */
  readonly room: number;
}

export interface Ticking {
  readonly samples: Float32Array;
  /** When each tick begins, s. */
  readonly at: readonly number[];
}

export const SECONDS = 12;
/** Ticks come from this second on and stop before the end. */
const FIRST = 0.8;
const LAST = SECONDS - 0.5;

type Uniform = () => number;

function timesOf(times: TickScene['times'], uniform: Uniform): number[] {
  if (times === 'none') return [];
  const at: number[] = [];
  const gap = 0.08 * 12 ** uniform();
  let t = FIRST + gap * uniform();
  while (t < LAST) {
    at.push(t);
    if (times === 'pairs') at.push(t + 0.025 + 0.035 * uniform());
    // Two blows nearer than 25 ms are one to this scene: a feeder does not slip so fast.
    const next = times === 'chance' ? -gap * Math.log(1 - uniform()) : gap * (1 + 0.06 * (uniform() - 0.5));
    t += Math.max(times === 'pairs' ? 0.09 : 0.025, next);
  }
  return at;
}

/** What one tick of this machine sounds like: resonances of frame, sheet and gear, hit at once. */
function tickOf(uniform: Uniform): Float64Array {
  const between = (low: number, high: number): number => low + (high - low) * uniform();
  const modes = Array.from({ length: 9 }, () => {
    const hertz = 350 * 22 ** uniform();
    // Higher ones die sooner; quality factors of bolted sheet and plastic.
    return { hertz, decay: (Math.PI * hertz) / between(8, 40) + 40, loud: between(0.15, 1), phase: between(0, 6.28) };
  });
  const blow = between(1e-4, 6e-4);
  return Float64Array.from({ length: Math.round(0.12 * RATE) }, (_, i) => {
    const t = i / RATE;
    const rise = Math.min(1, t / blow);
    return (
      rise *
      modes.reduce(
        (sum, { hertz, decay, loud, phase }) =>
          sum + loud * Math.exp(-decay * t) * Math.sin(2 * Math.PI * hertz * t + phase),
        0,
      )
    );
  });
}

/** A stepper's whine: its step frequency and overtones, wandering a little, on and off as it feeds. */
function motor(out: Float64Array, level: number, uniform: Uniform): void {
  const hertz = 150 * 8 ** uniform();
  const tones = Array.from({ length: 7 }, (_, i) => ({ n: i + 1, loud: uniform() / (i + 1), phase: 6.28 * uniform() }));
  const scale = level / Math.sqrt(tones.reduce((sum, { loud }) => sum + (loud * loud) / 2, 0));
  let turned = 0;
  for (let i = 0; i < out.length; i += 1) {
    const t = i / RATE;
    turned += (hertz * (1 + 0.01 * Math.sin(2 * Math.PI * 0.7 * t))) / RATE;
    const on = Math.min(1, Math.max(0, (t - 0.5) / 0.05));
    for (const { n, loud, phase } of tones) out[i]! += scale * on * loud * Math.sin(2 * Math.PI * n * turned + phase);
  }
}

/** A fan: air in bands and its blades, its strength beating. */
function fan(out: Float64Array, level: number, uniform: Uniform, normal: () => number): void {
  const blades = 80 + 320 * uniform();
  const beat = 0.5 + 4 * uniform();
  let low = 0;
  for (let i = 0; i < out.length; i += 1) {
    const t = i / RATE;
    low += 0.08 * (normal() - low);
    const tone = 0.4 * Math.sin(2 * Math.PI * blades * t) + 0.2 * Math.sin(4 * Math.PI * blades * t);
    out[i]! += level * (4 * low + tone) * (1 + 0.25 * Math.sin(2 * Math.PI * beat * t));
  }
}

/** Syllables: pulses of a voice through three resonances, and hisses: from another corner of the room. */
function speech(out: Float64Array, level: number, uniform: Uniform, normal: () => number): void {
  const between = (low: number, high: number): number => low + (high - low) * uniform();
  const voice = between(90, 220);
  for (let at = 1; at < SECONDS - 1; at += between(0.15, 0.5)) {
    const [from, length] = [Math.round(at * RATE), between(0.08, 0.3)];
    const isHiss = uniform() < 0.25;
    const formants = [between(280, 800), between(900, 2300), between(2300, 3100)];
    const start = voice * between(0.85, 1.2);
    const parts = Array.from({ length: 26 }, (_, i) => i + 1).map((n) => ({
      n,
      loud: formants.reduce((sum, f, j) => sum + 1 / (1 + ((n * start - f) / (60 + 40 * j)) ** 2), 0.03) / n ** 0.5,
    }));
    for (let i = 0; i < length * RATE; i += 1) {
      const t = i / RATE;
      const swell = Math.min(1, t / 0.02, (length - t) / 0.04);
      const sound = isHiss
        ? 0.5 * normal()
        : parts.reduce((sum, { n, loud }) => sum + loud * Math.sin(2 * Math.PI * n * start * (t + 0.1 * t * t)), 0);
      out[from + i]! += level * swell * sound;
    }
  }
}

/** One scene; the same seed gives the same sound. */
export function ticking(scene: TickScene, seed: number): Ticking {
  const uniform = random(seed * 4421 + 13);
  const normal = gaussian(random(seed * 6571 + 31));
  const at = timesOf(scene.times, uniform);
  const tick = tickOf(uniform);
  const dry = new Float64Array(SECONDS * RATE);
  for (const t of at) {
    const from = Math.round(t * RATE);
    const loud = 10 ** ((-3 + 6 * uniform()) / 20);
    for (let i = 0; i < tick.length; i += 1) dry[from + i]! += loud * tick[i]!;
  }
  const heard = secondOrder(inRoom(dry, RATE, scene.room, seed), 60 + 60 * uniform(), 'high');
  // The softest tick has the stated peak.
  const peaks = at.map((t) => {
    const from = Math.round(t * RATE);
    return heard.subarray(from, from + 0.01 * RATE).reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  });
  const peak = Math.min(...peaks);
  const noise = broadband(scene.noise, heard.length, normal);
  const beside = new Float64Array(heard.length);
  if (scene.beside.includes('motor')) motor(beside, 1.5, uniform);
  if (scene.beside.includes('fan')) fan(beside, 1, uniform, normal);
  if (scene.beside === 'speech') speech(beside, 0.6, uniform, normal);
  if (scene.beside === 'only speech') speech(beside, 4, uniform, normal);
  const other = noise.map((x, t) => x + beside[t]!);
  const effective = Math.sqrt(other.reduce((sum, x) => sum + x * x, 0) / other.length);
  const scale = at.length > 0 ? (effective * 10 ** (scene.peakDb / 20)) / peak : 0;
  const mixed = other.map((x, t) => x + scale * heard[t]!);
  const loudest = mixed.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  const gain = 10 ** (-(6 + 18 * uniform()) / 20) / loudest;
  return { samples: Float32Array.from(mixed, (x) => gain * x), at };
}
