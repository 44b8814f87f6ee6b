import type { Match, Peak } from './note-comb';
import type { Stretch } from './note-extract';
import type { Line } from './note-lines';

const hertz = (w: number, rate: number): number => (w * rate) / (2 * Math.PI);

const power = (line: Line): number => line.re * line.re + line.im * line.im;

export const peakOf = (line: Line, rate: number): Peak => ({
  frequency: hertz(line.w, rate),
  spread: hertz(Math.sqrt(line.variance), rate),
  gain: line.gain,
  line,
});

/** A line of the noise before, as it stands during the pluck: its frequency held within three standard deviations. */
export function stands(line: Line): Line {
  const within = 3 * Math.sqrt(line.variance) + 1e-5;
  return { ...line, prior: power(line), lowest: line.w - within, highest: line.w + within };
}

/** Whether a line is hum: undamped on a harmonic of the mains (held to 0.2 %), or what a standing line left beside it. */
export function isHum(line: Line, lines: readonly Line[], rate: number): boolean {
  const frequency = hertz(line.w, rate);
  const off = [50, 60].map((mains) => Math.abs(frequency - mains * Math.round(frequency / mains)));
  if (line.a * rate < 1 && frequency > 40 && Math.min(...off) < Math.max(0.3, 0.002 * frequency)) return true;
  return lines.some((other) => {
    const near = other.standing && Math.abs(hertz(other.w, rate) - frequency) < 2;
    return near && power(line) <= other.prior;
  });
}

/** How far a standing line within 3 Hz may pull a partial, Hz: their amplitudes' ratio times the partial's own width. */
export function shadow(peak: Peak, lines: readonly Line[], rate: number): number {
  const pulls = lines.map((line) => {
    const near = line.standing && Math.abs(hertz(line.w, rate) - peak.frequency) < 3;
    return near ? 0.3 * Math.sqrt(line.prior / power(peak.line)) * (hertz(peak.line.a, rate) + 0.3) : 0;
  });
  return Math.max(0, ...pulls);
}

/** Mean decay of a comb's partials, per second, weighted by their evidence. */
export function decay(matches: readonly Match[], rate: number): number {
  const gains = matches.reduce((sum, { peak }) => sum + peak.gain, 0);
  return matches.reduce((sum, { peak }) => sum + peak.gain * peak.line.a * rate, 0) / gains;
}

/** Power of the partials over that of the noise, dB, both over the stretch and the bins used. */
export function signalToNoise(matches: readonly Match[], noise: Float64Array, { size }: Stretch): number {
  const signal = matches.reduce((sum, { peak: { line } }) => {
    const lasting = (1 - Math.exp(-2 * line.a * size)) / (2 * line.a * size);
    return sum + 2 * power(line) * lasting;
  }, 0);
  const behind = noise.reduce((sum, x) => sum + x, 0) * (2 / size ** 2);
  return 10 * Math.log10(signal / behind);
}
