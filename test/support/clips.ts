/** Sounds of a workshop in which no belt is plucked: an ear that listens for belts must not agree on a note in them. */
import { inRoom, secondOrder } from './phone-sound';
import { gaussian, random, RATE } from './plucks';

const SECONDS = 6;

interface Dice {
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly between: (low: number, high: number) => number;
  readonly logBetween: (low: number, high: number) => number;
}

/** Adds `sound(seconds since, samples since)` from `at` on, for `length` seconds. */
function add(out: Float64Array, at: number, length: number, sound: (t: number) => number): void {
  const from = Math.round(at * RATE);
  const to = Math.min(out.length, from + Math.round(length * RATE));
  for (let i = from; i < to; i += 1) out[i]! += sound((i - from) / RATE);
}

/** Times a few tenths of a second to over a second apart. */
function beats({ between }: Dice, least: number, most: number): number[] {
  const at: number[] = [];
  for (let t = 0.8; t < SECONDS - 0.5; t += between(least, most)) at.push(t);
  return at;
}

/** Vowels: pulses of a voice whose pitch moves, through three resonances; and hisses between them. */
function speech(out: Float64Array, dice: Dice): void {
  const { between, uniform, normal } = dice;
  const voice = between(85, 240);
  for (const at of beats(dice, 0.18, 0.6)) {
    const length = between(0.08, 0.35);
    const loud = between(0.2, 1);
    if (uniform() < 0.3) {
      add(out, at, length / 2, (t) => 0.1 * loud * normal() * Math.sin((2 * Math.PI * t) / length));
      continue;
    }
    const formants = [between(280, 800), between(900, 2300), between(2300, 3100)];
    const slide = between(-0.25, 0.25);
    const start = voice * between(0.85, 1.2);
    const parts = Array.from({ length: 24 }, (_, i) => i + 1).map((n) => {
      const level =
        formants.reduce((sum, f, j) => sum + 1 / (1 + ((n * start - f) / (60 + 40 * j)) ** 2), 0.03) / n ** 0.5;
      return { n, level, phase: between(0, 6.28) };
    });
    add(out, at, length, (t) => {
      const phase = 2 * Math.PI * start * (t + (slide * t * t) / (2 * length));
      const swell = Math.min(1, t / 0.02, (length - t) / 0.04);
      return (
        loud * swell * parts.reduce((sum, { n, level, phase: p }) => sum + level * Math.sin(n * phase + p), 0) * 0.3
      );
    });
  }
}

/** Blows on wood and metal: modes at no whole ratios. */
function knocks(out: Float64Array, dice: Dice): void {
  const { between, logBetween, normal } = dice;
  const modes = Array.from(
    { length: 12 },
    () => [logBetween(80, 4000), between(15, 90), between(0.1, 1), between(0, 6.28)] as const,
  );
  for (const at of beats(dice, 0.3, 1.6)) {
    const loud = between(0.3, 1);
    add(
      out,
      at,
      0.5,
      (t) =>
        loud *
        modes.reduce(
          (sum, [f, d, a, p]) => sum + a * Math.exp(-d * t) * Math.sin(2 * Math.PI * f * t + p),
          Math.exp(-400 * t) * normal(),
        ),
    );
  }
}

/** A motor that moves and stops: a whine with harmonics, its speed ramped. */
function motor(out: Float64Array, dice: Dice): void {
  const { between, logBetween, uniform } = dice;
  const speeds = [logBetween(60, 600), logBetween(60, 600)];
  for (const at of beats(dice, 0.6, 1.4)) {
    const speed = speeds[uniform() < 0.5 ? 0 : 1]!;
    const length = between(0.2, 1);
    const ramp = between(0.02, 0.15);
    const stop = length - ramp;
    add(out, at, length, (t) => {
      const turned =
        t < ramp
          ? (t * t) / (2 * ramp)
          : t < stop
            ? t - ramp / 2
            : stop - ramp / 2 + (t - stop) - (t - stop) ** 2 / (2 * ramp);
      return (
        [1, 0.6, 0.4, 0.3, 0.1].reduce(
          (sum, a, i) => sum + 0.2 * a * Math.sin(2 * Math.PI * speed * (i + 1) * turned),
          0,
        ) * Math.min(1, t / 0.005, (length - t) / 0.005)
      );
    });
  }
}

/** A fan that starts, runs and stops: noise in bands, and its blades. */
function fan(out: Float64Array, dice: Dice): void {
  const { between, normal } = dice;
  const blades = between(60, 450);
  const [start, stop] = [between(0.5, 2), between(3, 5.5)];
  let low = 0;
  add(out, start, stop - start, (t) => {
    const run = Math.min(1, t / 0.6, (stop - start - t) / 0.8);
    low += 0.06 * (normal() - low);
    return (
      run *
      (low + 0.1 * Math.sin(2 * Math.PI * blades * t) + 0.05 * Math.sin(4 * Math.PI * blades * t)) *
      (1 + 0.3 * Math.sin(12 * t))
    );
  });
}

/** A tune: held tones of a wind or an organ, each another than the one before. */
function tune(out: Float64Array, dice: Dice): void {
  const { between, uniform } = dice;
  const root = between(80, 300);
  let last = -1;
  for (const at of beats(dice, 0.3, 0.7)) {
    let step = last;
    while (step === last) step = Math.floor(uniform() * 10);
    last = step;
    const f = root * 2 ** (([0, 2, 4, 5, 7, 9, 11, 12, 14, 16][step] ?? 0) / 12);
    const length = between(0.25, 0.7);
    const bright = between(0.3, 0.8);
    add(out, at, length, (t) => {
      const swell = Math.min(1, t / 0.03, (length - t) / 0.06);
      const wobble = 0.004 * Math.sin(2 * Math.PI * 5.5 * t);
      return (
        Array.from(
          { length: 8 },
          (_, i) => 0.2 * bright ** i * Math.sin(2 * Math.PI * f * (i + 1) * (t + wobble / 10)),
        ).reduce((a, b) => a + b, 0) * swell
      );
    });
  }
}

/** Hands clapped: noise that is over in some milliseconds. */
function claps(out: Float64Array, dice: Dice): void {
  const { between, normal } = dice;
  for (const at of beats(dice, 0.25, 1.5)) {
    const [fall, tone] = [between(60, 250), between(700, 2500)];
    add(out, at, 0.2, (t) => Math.exp(-fall * t) * normal() * (1 + Math.sin(2 * Math.PI * tone * t)));
  }
}

/** A door: a creak of pulses whose rate wanders, then a thud. */
function door(out: Float64Array, dice: Dice): void {
  const { between, normal } = dice;
  const ring = between(400, 1500);
  for (let t = 1, rate = between(20, 120); t < 4; t += 1 / rate) {
    rate = Math.max(12, rate * (1 + 0.08 * normal()));
    add(out, t, 0.02, (s) => 0.5 * Math.exp(-250 * s) * Math.sin(2 * Math.PI * ring * s));
  }
  const thud = between(45, 90);
  add(
    out,
    4.3,
    0.6,
    (t) => 2 * Math.exp(-18 * t) * Math.sin(2 * Math.PI * thud * t * (1 - 0.2 * t)) + Math.exp(-60 * t) * normal(),
  );
}

/** Mains hum that is switched on and off. */
function hum(out: Float64Array, dice: Dice): void {
  const { between, uniform } = dice;
  const mains = uniform() < 0.5 ? 50 : 60;
  const levels = Array.from({ length: 10 }, (_, i) => between(0, 1) / (i + 1));
  for (const at of beats(dice, 1.2, 2.5)) {
    add(out, at, between(0.6, 1.1), (t) =>
      levels.reduce((sum, a, i) => sum + 0.3 * a * Math.sin(2 * Math.PI * mains * (i + 1) * t), 0),
    );
  }
}

/** Keys and tools that clink: short tones far above a belt's. */
function clinks(out: Float64Array, dice: Dice): void {
  const { between, logBetween } = dice;
  for (const at of beats(dice, 0.1, 0.8)) {
    const tones = Array.from({ length: 5 }, () => [logBetween(1500, 9000), between(8, 60), between(0.1, 1)] as const);
    add(out, at, 0.5, (t) =>
      tones.reduce((sum, [f, d, a]) => sum + 0.3 * a * Math.exp(-d * t) * Math.sin(2 * Math.PI * f * t), 0),
    );
  }
}

/** A phone that is handled: bumps and rubbing, low and short. */
function handling(out: Float64Array, dice: Dice): void {
  const { between, normal } = dice;
  for (const at of beats(dice, 0.15, 1)) {
    const [f, fall, length] = [between(25, 110), between(20, 70), between(0.05, 0.3)];
    let low = 0;
    add(out, at, length, (t) => {
      low += 0.02 * (normal() - low);
      return (Math.exp(-fall * t) * Math.sin(2 * Math.PI * f * t) + 3 * low) * Math.min(1, (length - t) / 0.02);
    });
  }
}

const KINDS = { speech, knocks, motor, fan, tune, claps, door, hum, clinks, handling } as const;

interface Clip {
  readonly kind: string;
  readonly samples: Float32Array;
}

/** How many clips there are: 34 of each of ten kinds. */
export const CLIPS = 34 * Object.keys(KINDS).length;

/** One of them: its kind by its number, in a room of its own over noise of its own. */
export function clip(number: number): Clip {
  const names = Object.keys(KINDS) as (keyof typeof KINDS)[];
  const kind = names[number % names.length]!;
  const uniform = random(number * 911 + 5);
  const between = (low: number, high: number): number => low + (high - low) * uniform();
  const normal = gaussian(random(number * 613 + 7));
  const out = new Float64Array(SECONDS * RATE);
  KINDS[kind](out, { uniform, normal, between, logBetween: (low, high) => low * (high / low) ** uniform() });
  const wet = secondOrder(
    uniform() < 0.5 ? inRoom(out, RATE, between(0.2, 0.7), number) : out,
    between(40, 120),
    'high',
  );
  const loudest = wet.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-9);
  const [loud, noise] = [10 ** (-between(3, 30) / 20), 10 ** (-between(45, 70) / 20)];
  return { kind, samples: Float32Array.from(wet, (x) => (loud * x) / loudest + noise * normal()) };
}
