import { spectrumOf } from './spectrum';

/** The stream is looked at with about so many samples a second: partials of a belt up to 1.5 kHz. */
const AIM = 6000;
/** Spectra: samples each, and from one to the next, at that rate: 85 ms and 11 ms. */
const SIZE = 512;
const HOP = 64;
/** The belt's band, Hz. */
const FROM = 45;
const TO = 1500;
/** Spectra kept (2.7 s), those a rise is held against (0.4 s), and those between that may hold its beginning. */
const KEPT = 256;
const CALM = 40;
const LEAST_CALM = 16;
const BETWEEN = 9;
/** A bin counts for what its power has risen beyond so much, nepers: noise does one time in a thousand. */
const OVER = 2;
/** Summed so, a pluck; seen in noise once in hours. */
const EVIDENCE = 11;
/** Spectra to wait for the fullest one after the first that tells. */
const WAIT = 7;
/** Lines by which a beginning is timed, the window they are followed with, s, and how far back it may lie, s. */
const LINES = 10;
const SHORT = 0.02;
const BACK = 0.14;

interface Rise {
  /** Sample at which it began, to about 10 ms. */
  readonly at: number;
  readonly evidence: number;
}

interface RiseWatch {
  /** @returns rises found by the end of this block */
  push(block: Float32Array): readonly Rise[];
  /** The likeliest beginning of a pluck within so many last samples, however weak. */
  likeliest(within: number): Rise | undefined;
}

/** The stream at a lower rate: two one-pole low-passes, then means. What folds back matters little for seeing a rise. */
function createSlower(rate: number, factor: number, take: (sample: number) => void) {
  const blend = 1 - Math.exp((-2 * Math.PI * 1800) / rate);
  let low = 0;
  let lower = 0;
  let sum = 0;
  let count = 0;
  return (block: Float32Array): void => {
    for (const sample of block) {
      low += blend * (sample - low);
      lower += blend * (low - lower);
      sum += lower;
      count += 1;
      if (count === factor) {
        take(sum / factor);
        sum = 0;
        count = 0;
      }
    }
  };
}

/** Bins that have risen, the most first. */
function risen(power: Float64Array, calm: Float64Array): { bin: number; over: number }[] {
  const found: { bin: number; over: number }[] = [];
  power.forEach((now, bin) => {
    const over = Math.log((now + 1e-14) / ((calm[bin] ?? 0) + 1e-14)) - OVER;
    if (over > 0) found.push({ bin, over });
  });
  return found.sort((a, b) => b.over - a.over);
}

/** The last spectra: powers of the band's bins, and what of a spectrum rose over those before it. */
function createHistory(lowest: number, bins: number, step: number) {
  const powers = Array.from({ length: KEPT }, () => new Float64Array(bins));
  let count = 0;
  const at = (frame: number): Float64Array => powers[frame % KEPT] ?? new Float64Array(bins);
  const calmAt = (frame: number): Float64Array | undefined => {
    const to = frame - BETWEEN;
    const from = Math.max(0, count - KEPT + 1, to - CALM);
    if (to - from < LEAST_CALM) return undefined;
    const calm = new Float64Array(bins);
    for (let f = from; f < to; f += 1) {
      const powers = at(f);
      for (let k = 0; k < bins; k += 1) calm[k] = (calm[k] ?? 0) + (powers[k] ?? 0) / (to - from);
    }
    return calm;
  };
  return {
    count: () => count,
    add(samples: Float64Array) {
      const { re, im } = spectrumOf(samples, SIZE, 1);
      const power = at(count);
      for (let k = 0; k < bins; k += 1) power[k] = (re[lowest + k] ?? 0) ** 2 + (im[lowest + k] ?? 0) ** 2;
      count += 1;
    },
    rise(frame: number) {
      const calm = calmAt(frame);
      if (!calm) return { evidence: 0, lines: [] };
      const bins = risen(at(frame), calm);
      return {
        evidence: bins.reduce((sum, { over }) => sum + over, 0),
        lines: bins.slice(0, LINES).map(({ bin }) => ({ hertz: (lowest + bin) * step, calm: calm[bin] ?? 0 })),
      };
    },
  };
}

type Line = ReturnType<ReturnType<typeof createHistory>['rise']>['lines'][number];

/** Power of the lines, each over its calm, in `size` samples up to `to`. */
function powerOfLines(sample: (at: number) => number, rate: number, lines: readonly Line[], to: number, size: number) {
  return lines.reduce((sum, { hertz, calm }) => {
    const w = (2 * Math.PI * hertz) / rate;
    let re = 0;
    let im = 0;
    for (let t = to - size; t < to; t += 1) {
      re += sample(t) * Math.cos(w * t);
      im += sample(t) * Math.sin(w * t);
    }
    return sum + (re * re + im * im) / (calm + 1e-14);
  }, 0);
}

/** Where the lines set in, before `end`: the first place at which they have half of the power they come to. */
function beginning(sample: (at: number) => number, rate: number, lines: readonly Line[], end: number): number {
  const size = Math.round(SHORT * rate);
  const stride = Math.round(0.004 * rate);
  const places: { to: number; power: number }[] = [];
  for (let to = end - Math.round(BACK * rate); to <= end; to += stride) {
    places.push({ to, power: powerOfLines(sample, rate, lines, to, size) });
  }
  const most = Math.max(...places.map(({ power }) => power));
  const first = places.find(({ power }) => power >= most / 2);
  // Half the power is seven tenths of the window; late is better than early.
  return (first?.to ?? end) - Math.round(0.5 * size);
}

/**
 * Watches a stream for tones that set in, by the flux of its spectrum in the belt's band (S. Dixon, Onset detection
 * revisited, DAFx 2006, from memory): bin by bin, so that a pluck is seen under noise, hum and fans far louder than it.
 * Slower than the level, by a tenth of a second.
 */
export function createRiseWatch(rate: number): RiseWatch {
  const factor = Math.max(1, Math.round(rate / AIM));
  const slow = rate / factor;
  const step = slow / SIZE;
  const lowest = Math.ceil(FROM / step);
  const history = createHistory(lowest, Math.floor(Math.min(TO, 0.45 * slow) / step) - lowest, step);
  const window = Float64Array.from({ length: SIZE }, (_, t) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (t + 0.5)) / SIZE));
  const ring = new Float64Array(KEPT * HOP + SIZE);
  let end = 0;
  let best: { frame: number; evidence: number } | undefined;
  let isQuiet = true;
  const found: Rise[] = [];
  const sample = (at: number): number => ring[((at % ring.length) + ring.length) % ring.length] ?? 0;
  const placed = (frame: number): Rise => {
    const { evidence, lines } = history.rise(frame);
    return { at: Math.max(0, beginning(sample, slow, lines, SIZE + frame * HOP)) * factor, evidence };
  };

  const look = (): void => {
    const frame = history.count();
    history.add(window.map((w, t) => w * sample(end - SIZE + t)));
    const { evidence } = history.rise(frame);
    if (evidence < EVIDENCE / 2) isQuiet = true;
    if (evidence > EVIDENCE && isQuiet && evidence > (best?.evidence ?? 0) && frame - (best?.frame ?? frame) < WAIT) {
      best = { frame, evidence };
    } else if (best && (frame - best.frame >= 2 || evidence < EVIDENCE)) {
      found.push(placed(best.frame));
      best = undefined;
      isQuiet = false;
    }
  };
  const push = createSlower(rate, factor, (one) => {
    ring[end % ring.length] = one;
    end += 1;
    if (end >= SIZE && (end - SIZE) % HOP === 0) look();
  });

  return {
    push(block) {
      push(block);
      return found.splice(0);
    },
    likeliest(within) {
      const last = history.count() - 1;
      let top: { frame: number; evidence: number } | undefined;
      for (let frame = Math.max(0, last - Math.floor(within / factor / HOP)); frame <= last; frame += 1) {
        const { evidence } = history.rise(frame);
        if (evidence > 0 && evidence > (top?.evidence ?? 0)) top = { frame, evidence };
      }
      return top && placed(top.frame);
    },
  };
}
