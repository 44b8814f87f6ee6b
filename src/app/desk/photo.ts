import type { Photo } from '../../machine/schema';
import { LIMITS } from '../../machine/limits';
import { isAsDrawnHere } from './jpeg';
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

function fromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  } catch {
    return undefined;
  }
}

/** Its size as it opens here; undefined where it does not. */
async function opened(blob: Blob): Promise<{ readonly width: number; readonly height: number } | undefined> {
  try {
    const image = await createImageBitmap(blob);
    const { width, height } = image;
    image.close();
    return { width, height };
  } catch {
    return undefined;
  }
}

let blank: Promise<Uint8Array> | undefined;

/** The smallest picture that is drawn here: what this browser writes beside a picture stands in it. */
function drawnHere(): Promise<Uint8Array> {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 1;
  // Without a pen the picture would have no colours to describe.
  canvas.getContext('2d')?.fillRect(0, 0, 1, 1);
  blank ??= asJpeg(canvas, QUALITIES[0]).then(async (blob) => new Uint8Array((await blob?.arrayBuffer()) ?? []));
  return blank;
}

/**
 * A picture that came in from a file, as one taken here: drawn anew, but where it holds nothing beside the picture that
 * this browser does not write too, and has the size it says. So what was drawn by the like of it stays as it is, to the byte.
 * @returns the picture, or a sentence why there is none
 */
export async function redrawn({ width, height, jpeg }: Picture): Promise<Picture | string> {
  const bytes = fromBase64(jpeg);
  if (!bytes) return say.photo.notOpened;
  const blob = new Blob([bytes], { type: 'image/jpeg' });
  const size = await opened(blob);
  if (!size) return say.photo.notOpened;
  const asItIs = size.width === width && size.height === height && isAsDrawnHere(bytes, await drawnHere());
  if (asItIs) return { width, height, jpeg };
  return shrinkPhoto(blob);
}

export const photoAddress = (photo: Picture): string => `data:image/jpeg;base64,${photo.jpeg}`;

/** Size of the picture itself, in whole kB. */
export function photoKb(photo: Picture): number {
  const padding = photo.jpeg.endsWith('==') ? 2 : photo.jpeg.endsWith('=') ? 1 : 0;
  return Math.max(1, Math.round(((photo.jpeg.length / 4) * 3 - padding) / 1000));
}
