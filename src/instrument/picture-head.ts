/** What a file's first bytes say. */
export interface PictureHead {
  /** px; before turning it upright, so only their product and the longer one mean anything. */
  readonly size?: { readonly width: number; readonly height: number };
}

const ascii = (bytes: Uint8Array, from: number, to: number) => String.fromCharCode(...bytes.subarray(from, to));
const two = (bytes: Uint8Array, at: number) => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);

/** Size in a JPEG's frame header (ITU-T T.81, B.2.2): segments are skipped by their length up to it. */
function jpegSize(bytes: Uint8Array): PictureHead['size'] {
  let at = 2;
  while (at + 9 < bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return { height: two(bytes, at + 5), width: two(bytes, at + 7) };
    at += 2 + two(bytes, at + 2);
  }
  return undefined;
}

/**
 * Whether a file begins as pictures do (JPEG, PNG, WebP, GIF, BMP, TIFF, HEIF and AVIF), and its size where the first
 * bytes have it (JPEG, PNG).
 */
export function readHead(bytes: Uint8Array): PictureHead | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xd8) {
    const size = jpegSize(bytes);
    return size ? { size } : {};
  }
  if (ascii(bytes, 1, 4) === 'PNG') {
    return {
      size: { width: two(bytes, 16) * 65_536 + two(bytes, 18), height: two(bytes, 20) * 65_536 + two(bytes, 22) },
    };
  }
  const first = ascii(bytes, 0, 4);
  const known =
    (first === 'RIFF' && ascii(bytes, 8, 12) === 'WEBP') ||
    ['GIF8', 'II*\0', 'MM\0*'].includes(first) ||
    first.startsWith('BM') ||
    (ascii(bytes, 4, 8) === 'ftyp' && /^(hei|hev|mif1|msf1|avi)/.test(ascii(bytes, 8, 12)));
  return known ? {} : undefined;
}
