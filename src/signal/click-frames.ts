/** Length of a frame, s. */
export const FRAME = 0.002;
/** Middles of the octaves in which clicks are listened for, Hz: fans, hum and the motor's own note lie below most of them. */
const MIDDLES = [700, 1400, 2800, 5600];
/** How fast an octave's floor follows what is louder and what is quieter, s, and how much louder at once it takes for noise. */
const RISES = 0.4;
const FALLS = 0.12;
const MOST = 3;
/** Before this much was heard nothing is known of the noise, s. */
const SETTLED = 0.3;

export interface ClickFrame {
  /** Samples from the start of the sound to past the frame's last. */
  readonly to: number;
  /** Mean power of the whole sound. */
  readonly whole: number;
  /** How surely this is more than noise, nepers of likelihood: 0 until the noise is known. */
  readonly evidence: number;
  /** Mean over the octaves of power over the noise's: 1 in noise. */
  readonly level: number;
}

/** An octave about `middle`: a second-order band-pass (bilinear), and its power against its own floor. */
function createOctave(middle: number, rate: number) {
  const w = (2 * Math.PI * middle) / rate;
  const alpha = Math.sin(w) / (2 * Math.SQRT2);
  const [b, a1, a2] = [alpha / (1 + alpha), (-2 * Math.cos(w)) / (1 + alpha), (1 - alpha) / (1 + alpha)];
  // Twice the band's width times the frame: how many numbers its power is the mean of.
  const freedom = Math.SQRT2 * middle * FRAME;
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  let sum = 0;
  let floor = 0;
  return {
    freedom,
    take(x: number) {
      const y = b * (x - x2) - a1 * y1 - a2 * y2;
      [x2, x1, y2, y1] = [x1, x, y1, y];
      sum += y * y;
    },
    /** Ends a frame of so many samples. @returns its power over the noise's */
    close(length: number, isSettled: boolean, settling: number): number {
      const power = sum / length + 1e-14;
      sum = 0;
      if (!isSettled) floor += (power - floor) * settling;
      const ratio = power / floor;
      const pace = FRAME / (power > floor ? RISES : FALLS);
      if (isSettled) floor += (Math.min(power, MOST * floor) - floor) * pace;
      return ratio;
    },
  };
}

/**
 * Cuts a stream into frames of 2 ms and holds each against the noise, octave by octave: what noise of an unknown, larger power
 * would be likelier to give by (a likelihood ratio; S. M. Kay, Fundamentals of Statistical Signal Processing 2, from memory).
 */
export function createClickFramer(rate: number): (block: Float32Array) => readonly ClickFrame[] {
  const length = Math.max(1, Math.round(FRAME * rate));
  const octaves = MIDDLES.filter((middle) => middle < 0.35 * rate).map((middle) => createOctave(middle, rate));
  let whole = 0;
  let filled = 0;
  let position = 0;
  let frames = 0;

  const close = (): ClickFrame => {
    frames += 1;
    const isSettled = frames * FRAME > SETTLED;
    let evidence = 0;
    let level = 0;
    for (const octave of octaves) {
      const ratio = octave.close(length, isSettled, 1 / frames);
      level += ratio / octaves.length;
      if (isSettled && ratio > 1) evidence += (octave.freedom / 2) * (ratio - 1 - Math.log(ratio));
    }
    const frame = { to: position, whole: whole / length, evidence, level };
    whole = 0;
    filled = 0;
    return frame;
  };

  return (block) => {
    const done: ClickFrame[] = [];
    for (const sample of block) {
      for (const octave of octaves) octave.take(sample);
      whole += sample * sample;
      filled += 1;
      position += 1;
      if (filled === length) done.push(close());
    }
    return done;
  };
}
