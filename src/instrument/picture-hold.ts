import type { GreyPicture } from '../signal/ridge';
import { readHead } from './picture-head';
import type { PictureFault, Progress } from './picture-task';

/** Where a fault stops the opening. */
export class Stopped extends Error {
  constructor(readonly fault: PictureFault) {
    super(fault);
  }
}

export type Tell = (progress: Progress) => void;

/** px: the preview's longer side. */
const PREVIEW_SIDE = 1600;
/** Pixels drawn at a time, 16 MB of colours; small enough for every browser's largest canvas. */
const BAND_PIXELS = 4_000_000;
/** Bytes of a file that its head is looked for in: a camera puts a small picture before it. */
const HEAD_BYTES = 1 << 19;
/** Tried in turn where the device cannot hold the whole picture. */
const REDUCTIONS = [1, 2, 4] as const;
/** Weights of red, green and blue in 256ths (ITU-R BT.709: 0.2126, 0.7152, 0.0722). */
const [RED, GREEN, BLUE] = [54, 183, 19] as const;

/** Lets waiting messages in. */
const breathe = () => new Promise((resolve) => setTimeout(resolve, 0));

function penOf(width: number, height: number): readonly [OffscreenCanvas, OffscreenCanvasRenderingContext2D] {
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d', { willReadFrequently: true, alpha: false });
  if (!pen) throw new Stopped('no-background');
  return [canvas, pen];
}

/** Decoded and turned upright; old browsers know no option for that and do it by themselves. */
async function decodeAt(file: Blob, resizeWidth?: number): Promise<ImageBitmap> {
  const options: ImageBitmapOptions = {
    imageOrientation: 'from-image',
    ...(resizeWidth === undefined ? {} : { resizeWidth, resizeQuality: 'medium' }),
  };
  try {
    return await createImageBitmap(file, options);
  } catch (error) {
    if (error instanceof TypeError) return createImageBitmap(file);
    throw error;
  }
}

/** @throws Stopped */
async function decode(file: Blob): Promise<{ readonly bitmap: ImageBitmap; readonly reduced: number }> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer());
  } catch {
    throw new Stopped('failed');
  }
  const head = readHead(bytes);
  for (const reduced of REDUCTIONS) {
    // Smaller from the start is only possible where the first bytes say how large it is.
    if (reduced > 1 && !head?.size) break;
    try {
      const bitmap = await decodeAt(file, reduced === 1 ? undefined : Math.ceil((head?.size?.width ?? 1) / reduced));
      const side = Math.max(bitmap.width, bitmap.height);
      const full = head?.size ? Math.max(head.size.width, head.size.height) : side;
      return { bitmap, reduced: reduced === 1 ? 1 : full / side };
    } catch {
      // Too large or not to be read: the next size tells.
    }
  }
  if (!head) throw new Stopped('not-a-picture');
  throw new Stopped(head.size && head.size.width * head.size.height > 3 * BAND_PIXELS ? 'too-large' : 'unknown-format');
}

/** Grey values of the whole picture, one byte a pixel, drawn in bands so that its colours are never all there at once. */
async function greyOf(bitmap: ImageBitmap, tell: Tell): Promise<GreyPicture & { readonly reduced: number }> {
  for (const reduced of REDUCTIONS) {
    const width = Math.floor(bitmap.width / reduced);
    const height = Math.floor(bitmap.height / reduced);
    try {
      const luminance = new Uint8Array(width * height);
      const rows = Math.max(1, Math.min(height, Math.floor(BAND_PIXELS / width)));
      const [, pen] = penOf(width, rows);
      for (let top = 0; top < height; top += rows) {
        const now = Math.min(rows, height - top);
        pen.fillStyle = '#fff';
        pen.fillRect(0, 0, width, now);
        pen.drawImage(bitmap, 0, top * reduced, width * reduced, now * reduced, 0, 0, width, now);
        const { data } = pen.getImageData(0, 0, width, now);
        const start = top * width;
        for (let i = 0, at = 0; i < width * now; i += 1, at += 4) {
          luminance[start + i] =
            (RED * (data[at] ?? 0) + GREEN * (data[at + 1] ?? 0) + BLUE * (data[at + 2] ?? 0) + 128) >> 8;
        }
        tell({ part: 'reading', done: 0.5 + (0.5 * (top + now)) / height });
        await breathe();
      }
      return { width, height, luminance, reduced };
    } catch (error) {
      if (error instanceof Stopped) throw error;
    }
  }
  throw new Stopped('too-large');
}

/** @returns the picture in at most 1600 pixels a side, and its pixels per pixel of the whole */
function previewOf(bitmap: ImageBitmap): { readonly preview: ImageBitmap; readonly perPixel: number } {
  const perPixel = Math.min(1, PREVIEW_SIDE / Math.max(bitmap.width, bitmap.height));
  const width = Math.max(1, Math.round(bitmap.width * perPixel));
  const height = Math.max(1, Math.round(bitmap.height * perPixel));
  const [canvas, pen] = penOf(width, height);
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'medium';
  pen.drawImage(bitmap, 0, 0, width, height);
  return { preview: canvas.transferToImageBitmap(), perPixel };
}

/**
 * A picture file decoded upright, its grey values held whole, and a preview for the screen.
 * @throws Stopped with the fault's name
 */
export async function hold(file: Blob, tell: Tell) {
  if (typeof OffscreenCanvas === 'undefined' || typeof createImageBitmap === 'undefined')
    throw new Stopped('no-background');
  tell({ part: 'decoding', done: 0 });
  const { bitmap, reduced } = await decode(file);
  try {
    tell({ part: 'preview', done: 0.4 });
    const { preview, perPixel } = previewOf(bitmap);
    const picture = await greyOf(bitmap, tell);
    return {
      picture,
      opened: {
        width: picture.width,
        height: picture.height,
        reduced: reduced * picture.reduced,
        preview,
        previewScale: perPixel * picture.reduced,
      },
    };
  } finally {
    bitmap.close();
  }
}
