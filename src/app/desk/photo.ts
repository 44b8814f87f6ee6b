import type { Photo } from '../../machine/schema';
import { LIMITS } from '../../machine/schema-parts';
import say from './words/en';

export type Picture = Pick<Photo, 'width' | 'height' | 'jpeg'>;

/** Tried in turn until the picture is small enough. */
const QUALITIES = [0.8, 0.6, 0.4] as const;
/** Beyond this a lower quality is tried: on a bench photo it costs nothing that the eye sees. */
const AIM_BYTES = 300_000;
const PIECE = 0x8000;

async function inBase64(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += PIECE) pieces.push(String.fromCharCode(...bytes.subarray(at, at + PIECE)));
  return btoa(pieces.join(''));
}

const asJpeg = (canvas: HTMLCanvasElement, quality: number) =>
  new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));

/**
 * A picture drawn anew on this device, 1280 pixels at most along its longer side: the place and the camera written into
 * the file stay behind.
 * @returns the picture, or a sentence why there is none
 */
export async function shrinkPhoto(file: Blob): Promise<Picture | string> {
  let image: ImageBitmap;
  try {
    image = await createImageBitmap(file);
  } catch {
    return say.photo.noPicture;
  }
  try {
    const scale = Math.min(1, LIMITS.photoSide / Math.max(image.width, image.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(image.width * scale));
    canvas.height = Math.max(1, Math.round(image.height * scale));
    const pen = canvas.getContext('2d');
    if (!pen) return say.photo.noShrinking;
    // JPEG knows no glass: what is transparent becomes white, not black.
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    for (const quality of QUALITIES) {
      const blob = await asJpeg(canvas, quality);
      if (blob?.type !== 'image/jpeg') return say.photo.noShrinking;
      if (blob.size > AIM_BYTES && quality !== QUALITIES.at(-1)) continue;
      const jpeg = await inBase64(blob);
      if (jpeg.length <= LIMITS.photo) return { width: canvas.width, height: canvas.height, jpeg };
    }
    return say.photo.tooLarge;
  } finally {
    image.close();
  }
}

export const photoAddress = (photo: Picture): string => `data:image/jpeg;base64,${photo.jpeg}`;

/** Size of the picture itself, in whole kB. */
export function photoKb(photo: Picture): number {
  const padding = photo.jpeg.endsWith('==') ? 2 : photo.jpeg.endsWith('=') ? 1 : 0;
  return Math.max(1, Math.round(((photo.jpeg.length / 4) * 3 - padding) / 1000));
}
