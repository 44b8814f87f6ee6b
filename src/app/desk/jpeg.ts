/** Segments that make up the picture itself (ITU-T T.81, table B.1): tables, frame, scans, restarts. */
const PICTURE: ReadonlySet<number> = new Set([0xc0, 0xc1, 0xc2, 0xc4, 0xda, 0xdb, 0xdd]);
const START = 0xd8;
const END = 0xd9;
const SCAN = 0xda;

const isRestart = (marker: number | undefined): boolean => marker !== undefined && marker >= 0xd0 && marker <= 0xd7;

/** Where the coded picture after a scan's head ends: at the next marker that is no restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at + 1 < bytes.length && (bytes[at] !== 0xff || bytes[at + 1] === 0 || isRestart(bytes[at + 1]))) at += 1;
  return at;
}

/**
 * All that a JPEG holds beside its picture, segment by segment: head, profile of its colours, camera, place, comments.
 * @returns undefined where it is no JPEG, is cut short, or something follows its end
 */
function besidePicture(bytes: Uint8Array): readonly string[] | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== START) return undefined;
  const found: string[] = [];
  let at = 2;
  while (at + 1 < bytes.length) {
    const marker = bytes[at + 1];
    if (bytes[at] !== 0xff || marker === undefined) return undefined;
    if (marker === END) return at + 2 === bytes.length ? found : undefined;
    const end = at + 2 + (((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0));
    if (end < at + 4) return undefined;
    if (!PICTURE.has(marker)) found.push(String.fromCharCode(...bytes.subarray(at, end)));
    at = marker === SCAN ? endOfScan(bytes, end) : end;
  }
  return undefined;
}

/** True for a JPEG that holds nothing beside its picture but what `own`, a picture drawn here, holds as well. */
export function isAsDrawnHere(bytes: Uint8Array, own: Uint8Array): boolean {
  const [found, usual] = [besidePicture(bytes), besidePicture(own)];
  return found !== undefined && usual !== undefined && found.every((segment) => usual.includes(segment));
}
