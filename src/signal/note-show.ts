import type { Stretch } from './note-extract';

/** For showing: bin k stands at `k * step` Hz, 0 to about 2 kHz. */
export interface ShownSpectrum {
  readonly step: number;
  /** Of full scale; faded out over the second, so that the belt stands before what hums on. */
  readonly decibels: Float32Array;
}

export function shownSpectrum({ damped, used, size, rate, share }: Stretch): ShownSpectrum {
  const whole = Math.sqrt(share) * size;
  const decibels = new Float32Array(used).map((_, k) => {
    const amplitude = (2 * Math.hypot(damped.re[k] ?? 0, damped.im[k] ?? 0)) / whole;
    return 20 * Math.log10(amplitude + 1e-9);
  });
  return { step: rate / size, decibels };
}
