import FFT from 'fft.js';

/** A one-sided spectrum: bin k stands at `k * step`, k = 0 … length - 1; re and im as the transform gives them. */
export interface Spectrum {
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** Distance of two bins, in the reciprocal of the samples' spacing (Hz for samples in seconds). */
  readonly step: number;
}

const transforms = new Map<number, FFT>();

function transformOf(size: number): FFT {
  const made = transforms.get(size) ?? new FFT(size);
  transforms.set(size, made);
  return made;
}

/**
 * Discrete Fourier transform of real samples, filled up with zeros to `size`, without scaling.
 * @param size a power of two, at least 2 and at least `samples.length`
 * @param rate samples per second (or per millimetre)
 * @throws RangeError where size does not fit
 */
export function spectrumOf(samples: ArrayLike<number>, size: number, rate: number): Spectrum {
  if (size < Math.max(2, samples.length) || (size & (size - 1)) !== 0) {
    throw new RangeError(`A transform of ${size} does not hold ${samples.length} samples.`);
  }
  const transform = transformOf(size);
  const input = new Float64Array(size);
  input.set(samples);
  const out = transform.createComplexArray() as number[];
  transform.realTransform(out, input);
  const half = size / 2 + 1;
  const re = new Float64Array(half);
  const im = new Float64Array(half);
  for (let k = 0; k < half; k += 1) {
    re[k] = out[2 * k] ?? 0;
    im[k] = out[2 * k + 1] ?? 0;
  }
  return { re, im, step: rate / size };
}
