/** Full scale less half a per cent: where converters and their drivers clip. */
const CLIPPED = 0.995;
/** Fewer clipped samples than this are a click. */
const FEW = 3;

/** Place past the last sample at full scale, 0 where fewer than a few reached it. A flat top below full scale is not seen. */
export function clippedUntil(samples: Float32Array): number {
  let count = 0;
  let until = 0;
  for (let i = 0; i < samples.length; i += 1) {
    if (Math.abs(samples[i] ?? 0) >= CLIPPED) {
      count += 1;
      until = i + 1;
    }
  }
  return count >= FEW ? until : 0;
}

/** Mean power of samples. */
export function meanPower(samples: Float64Array): number {
  let sum = 0;
  for (const x of samples) sum += x * x;
  return sum / Math.max(1, samples.length);
}
