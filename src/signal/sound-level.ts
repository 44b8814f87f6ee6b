/** How loud a stream is. */
export interface LevelEvent {
  readonly kind: 'level';
  /** Of the last tenth of a second, dB below full scale (a sine of full amplitude is -3). */
  readonly rms: number;
  /** Of the quietest tenth of the last seconds. */
  readonly noise: number;
}

const LEVEL_EVERY = 0.1;
const LEVELS_KEPT = 50;

const decibels = (power: number): number => 10 * Math.log10(power + 1e-12);

/** Takes frame after frame (mean power, samples from the start to past its last); tells the level ten times a second. */
export function createMeter(rate: number) {
  const every = Math.round(LEVEL_EVERY * rate);
  let sums = { whole: 0, frames: 0 };
  let nextLevel = every;
  const levels: number[] = [];
  return (frame: { readonly to: number; readonly whole: number }): LevelEvent | undefined => {
    sums = { whole: sums.whole + frame.whole, frames: sums.frames + 1 };
    if (frame.to < nextLevel) return undefined;
    const power = sums.whole / sums.frames;
    levels.push(power);
    if (levels.length > LEVELS_KEPT) levels.shift();
    sums = { whole: 0, frames: 0 };
    nextLevel += every;
    return { kind: 'level', rms: decibels(power), noise: decibels(Math.min(...levels)) };
  };
}
