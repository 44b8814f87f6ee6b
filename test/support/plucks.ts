/**
 * Made-up plucks of known note in made-up rooms, for tests and the bench. Stiff string: f_n = n f_0 sqrt(1 + B n²) (Morse,
 * Vibration and Sound, 1948, and Fletcher, J. Acoust. Soc. Am. 36 (1964) 203, both from memory); each partial decays on its
 * own, higher ones faster.
 */
export interface Room {
  readonly noise: 'white' | 'pink';
  /** Pluck's mean power over one second to that of the broadband noise over all frequencies; hum and fan come on top. */
  readonly snrDb: number;
  /** none; the whole sound through a second-order 100 Hz high-pass; or the pluck through it and the noise added behind. */
  readonly microphone: 'plain' | 'high-passed' | 'high-passed, noise behind';
  readonly low: number;
  readonly high: number;
}

export interface Pluck {
  readonly samples: Float32Array;
  readonly before: Float32Array;
  readonly rate: number;
  /** First partial, Hz. */
  readonly frequency: number;
  readonly inharmonicity: number;
  /** Cramér-Rao bound of the first partial's standard deviation, Hz. */
  readonly bound: number;
}

export const RATE = 48000;

/** Uniform random numbers from a seed (mulberry32). */
export function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function gaussian(uniform: () => number): () => number {
  let kept: number | undefined;
  return () => {
    if (kept !== undefined) {
      const value = kept;
      kept = undefined;
      return value;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    kept = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

/** Poles and gains of a sum of one-pole filters whose output is pink within 0.1 dB from 10 Hz (P. Kellet, from memory). */
const PINK = [
  [0.99886, 0.0555179],
  [0.99332, 0.0750759],
  [0.969, 0.153852],
  [0.8665, 0.3104856],
  [0.55, 0.5329522],
  [-0.7616, -0.016898],
] as const;
const PINK_DIRECT = 0.5362;
const PINK_DELAYED = 0.115926;

/** Power of the pink filter at an angular frequency per sample. */
function pinkResponse(w: number): number {
  let re = PINK_DIRECT + PINK_DELAYED * Math.cos(w);
  let im = -PINK_DELAYED * Math.sin(w);
  for (const [pole, gain] of PINK) {
    const dre = 1 - pole * Math.cos(w);
    const dim = pole * Math.sin(w);
    const d = dre * dre + dim * dim;
    re += (gain * dre) / d;
    im -= (gain * dim) / d;
  }
  return re * re + im * im;
}

/** Variance of the pink filter's output for unit white input: its mean power over all frequencies. */
const PINK_POWER = (() => {
  let sum = 0;
  const points = 1 << 16;
  for (let k = 0; k < points; k += 1) sum += pinkResponse((Math.PI * (k + 0.5)) / points);
  return sum / points;
})();

/** Broadband noise of unit variance. */
export function broadband(kind: Room['noise'], length: number, normal: () => number): Float64Array {
  const out = new Float64Array(length);
  if (kind === 'white') return out.map(normal);
  const states = PINK.map(() => 0);
  let last = 0;
  // Run in, so that the slowest pole has settled.
  for (let t = -20000; t < length; t += 1) {
    const white = normal();
    let sum = PINK_DIRECT * white + PINK_DELAYED * last;
    PINK.forEach(([pole, gain], i) => {
      states[i] = pole * states[i]! + gain * white;
      sum += states[i];
    });
    last = white;
    if (t >= 0) out[t] = sum / Math.sqrt(PINK_POWER);
  }
  return out;
}

/** Second-order Butterworth high-pass at 100 Hz, in place. */
function highPass(samples: Float64Array): Float64Array {
  const w = (2 * Math.PI * 100) / RATE;
  const alpha = Math.sin(w) / Math.SQRT2;
  const a0 = 1 + alpha;
  const [b0, a1, a2] = [(1 + Math.cos(w)) / 2 / a0, (-2 * Math.cos(w)) / a0, (1 - alpha) / a0];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let t = 0; t < samples.length; t += 1) {
    const x = samples[t]!;
    const y = b0 * (x - 2 * x1 + x2) - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    samples[t] = y;
  }
  return samples;
}

interface Ringing {
  readonly order: number;
  readonly frequency: number;
  readonly amplitude: number;
  /** Amplitude's decay, per second. */
  readonly decay: number;
  readonly phase: number;
}

/** Adds a decaying cosine from sample `from` on; the phasor is turned, not computed anew: exact to 1e-11 over a second. */
function ring(out: Float64Array, from: number, { frequency, amplitude, decay, phase }: Omit<Ringing, 'order'>) {
  const w = (2 * Math.PI * frequency) / RATE;
  const shrink = Math.exp(-decay / RATE);
  const [turnRe, turnIm] = [shrink * Math.cos(w), shrink * Math.sin(w)];
  let re = amplitude * Math.cos(phase);
  let im = amplitude * Math.sin(phase);
  for (let t = from; t < out.length; t += 1) {
    // A pick takes two milliseconds to let go.
    out[t]! += decay > 0 && t - from < 96 ? (re * (t - from)) / 96 : re;
    const next = re * turnRe - im * turnIm;
    im = re * turnIm + im * turnRe;
    re = next;
  }
}

/**
 * Fisher information on one decaying line's angular frequency (rad/s), its amplitude, phase and decay unknown, in white
 * noise of one-sided density S (per Hz) over T seconds: (A²/S) (G2 - G1²/G0), G_m the integral of t^m exp(-2 a t).
 * Undamped: A² T³/(12 S), the bound of Rife & Boorstyn, IEEE Trans. Inf. Theory 20 (1974) 591 (from memory).
 */
export function frequencyInformation(amplitude: number, decay: number, duration: number, density: number): number {
  const b = 2 * decay;
  const end = Math.exp(-b * duration);
  if (b * duration < 1e-3) return (amplitude ** 2 * duration ** 3) / (12 * density);
  const g0 = (1 - end) / b;
  const g1 = (g0 - duration * end) / b;
  const g2 = (2 * g1 - duration ** 2 * end) / b;
  return (amplitude ** 2 / density) * (g2 - (g1 * g1) / g0);
}

/** Cramér-Rao bound of the first partial's standard deviation in Hz, f_0 and B unknown, every partial's decay too. */
function bound(ringing: readonly Ringing[], f0: number, b: number, density: (f: number) => number): number {
  let [hff, hfb, hbb] = [0, 0, 0];
  for (const { order: n, frequency, amplitude, decay } of ringing) {
    const info = (2 * Math.PI) ** 2 * frequencyInformation(amplitude, decay, 1, density(frequency));
    const root = Math.sqrt(1 + b * n * n);
    const [df, db] = [n * root, (f0 * n ** 3) / (2 * root)];
    hff += info * df * df;
    hfb += info * df * db;
    hbb += info * db * db;
  }
  const det = hff * hbb - hfb * hfb;
  const [df, db] = [Math.sqrt(1 + b), f0 / (2 * Math.sqrt(1 + b))];
  return Math.sqrt((df * df * hbb - 2 * df * db * hfb + db * db * hff) / det);
}

/** One made-up pluck in a room; the same seed gives the same samples. */
export function pluck(room: Room, seed: number): Pluck {
  const uniform = random(seed * 7919 + 17);
  const normal = gaussian(random(seed * 104729 + 71));
  const between = (low: number, high: number): number => low + (high - low) * uniform();
  const logBetween = (low: number, high: number): number => low * (high / low) ** uniform();

  const first = logBetween(room.low, room.high);
  const b = logBetween(1e-4, 2e-3);
  const f0 = first / Math.sqrt(1 + b);
  const count = Math.floor(between(5, 13));
  const slope = between(0.5, 3);
  const decay = logBetween(2, 10);
  const faster = between(0.05, 0.3);
  const levels = Array.from({ length: count }, (_, i) => -slope * i - between(0, 15));
  // Every other fundamental is weaker than its second and third.
  if (uniform() < 0.5) levels[0] = Math.min(levels[1]!, levels[2]!) - between(3, 15);
  const ringing: Ringing[] = levels.map((level, i) => {
    const order = i + 1;
    return {
      order,
      frequency: order * f0 * Math.sqrt(1 + b * order * order),
      amplitude: 10 ** (level / 20),
      decay: decay * (1 + faster * i),
      phase: between(0, 2 * Math.PI),
    };
  });

  const half = RATE / 2;
  const length = RATE;
  // The onset is found to within some milliseconds only.
  const late = Math.floor(between(0, 0.005) * RATE);
  const clean = new Float64Array(half + length);
  for (const partial of ringing) ring(clean, half + late, partial);
  if (room.microphone === 'high-passed, noise behind') highPass(clean);
  const power = clean.reduce((sum, x) => sum + x * x, 0) / length;
  const deviation = Math.sqrt(power * 10 ** (-room.snrDb / 10));
  const sound = broadband(room.noise, half + length, normal);

  // Hum and fan: each a quarter to once the broadband noise's power.
  const mains = (uniform() < 0.5 ? 50 : 60) * (1 + between(-1e-3, 1e-3));
  const hum = Array.from({ length: 6 }, () => 10 ** (-between(0, 20) / 20));
  const humScale = Math.sqrt((2 * between(0.25, 1)) / hum.reduce((sum, a) => sum + a * a, 0));
  const fan = logBetween(40, 600);
  const fanScale = Math.sqrt(2 * between(0.25, 1));
  const steady = (frequency: number, amplitude: number) =>
    ring(sound, 0, { frequency, amplitude, decay: 0, phase: between(0, 2 * Math.PI) });
  hum.forEach((a, m) => steady(mains * (m + 1), humScale * a));
  steady(fan, fanScale);
  for (let t = 0; t < sound.length; t += 1) sound[t] = clean[t]! + deviation * sound[t]!;
  if (room.microphone === 'high-passed') highPass(sound);

  const loudest = sound.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  const density = (f: number): number => {
    const shape = room.noise === 'white' ? 1 : pinkResponse((2 * Math.PI * f) / RATE) / PINK_POWER;
    const gain = room.microphone === 'high-passed, noise behind' ? 1 + (100 / f) ** 4 : 1;
    return ((2 * deviation ** 2) / RATE) * shape * gain;
  };
  const scaled = Float32Array.from(sound, (x) => (0.5 * x) / loudest);
  return {
    samples: scaled.slice(half),
    before: scaled.slice(0, half),
    rate: RATE,
    frequency: first,
    inharmonicity: b,
    bound: bound(ringing, f0, b, density),
  };
}
