/** Length of a frame, s. */
const FRAME = 0.005;
/** A pluck is this much louder (power) than the loudest 10 ms of the last 0.15 s, which spans three turns of 20 Hz. */
const RISE = 6;
const LOOK_BACK = 30;
/** Corners of the band in which plucks are listened for, Hz: noise that falls with frequency is levelled on the way. */
const FROM = 200;
const TO = 1500;

export interface Frame {
  /** Samples from the start of the sound to the frame's first and past its last. */
  readonly from: number;
  readonly to: number;
  /** Mean power within the band, and of the whole sound. */
  readonly band: number;
  readonly whole: number;
  readonly onset: boolean;
}

/** Cuts a stream into 5 ms frames and marks those in which a pluck begins. Pure but for its own state. */
export function createFramer(rate: number): (block: Float32Array) => readonly Frame[] {
  const length = Math.max(1, Math.round(FRAME * rate));
  const highPass = Math.exp((-2 * Math.PI * FROM) / rate);
  const lowPass = 1 - Math.exp((-2 * Math.PI * TO) / rate);
  let last = 0;
  let high = 0;
  let low = 0;
  let lower = 0;
  let band = 0;
  let whole = 0;
  let filled = 0;
  let position = 0;
  const recent: number[] = [];

  const close = (): Frame => {
    const frame = { from: position - length, to: position, band: band / length, whole: whole / length };
    band = 0;
    whole = 0;
    filled = 0;
    const loudest = Math.max(...recent);
    const onset = recent.length === LOOK_BACK && frame.band > RISE * loudest + 1e-12;
    recent.push(frame.band);
    if (recent.length > LOOK_BACK) recent.shift();
    return { ...frame, onset };
  };

  return (block) => {
    const frames: Frame[] = [];
    for (const sample of block) {
      high = highPass * (high + sample - last);
      last = sample;
      low += lowPass * (high - low);
      lower += lowPass * (low - lower);
      band += lower * lower;
      whole += sample * sample;
      filled += 1;
      position += 1;
      if (filled === length) frames.push(close());
    }
    return frames;
  };
}
