/** Full scale less half a per cent: where converters and their drivers clip. */
const CLIPPED = 0.995;
/** Fewer clipped samples than this are a click. */
const FEW = 3;

/** Place past the last sample that clipped, 0 where nothing did. Clipping also shows below full scale, as a flat top. */
export function clippedUntil(samples: Float32Array): number {
  let loudest = 0;
  for (const x of samples) loudest = Math.max(loudest, Math.abs(x));
  const flat = loudest * 0.9999;
  let count = 0;
  let runs = 0;
  let last = 0;
  let until = 0;
  for (let i = 0; i < samples.length; i += 1) {
    if (Math.abs(samples[i] ?? 0) < flat) continue;
    runs = i - last <= 1 ? runs + 1 : 1;
    last = i;
    // Below full scale only three alike in a row are a flat top: a peak's own samples differ.
    if (loudest >= CLIPPED || runs >= 3) {
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
