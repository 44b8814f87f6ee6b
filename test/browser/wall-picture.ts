import type { Page } from '@playwright/test';

/** A wall to photograph, all lengths in picture pixels. */
export interface WallPicture {
  readonly width: number;
  readonly height: number;
  /** From ridge to ridge, down the picture; 0 for a wall without ridges. */
  readonly period: number;
  /** Layers' own period; 0 for none. */
  readonly layer: number;
  /** Where the two marks of the rule stand, down the picture, at a fifth of its width. */
  readonly marks: readonly [number, number];
}

/**
 * A JPEG of a printed wall, made in a page of its own: ridges with a second harmonic, layer lines, slow shading across and
 * down, grain; a light rule at the left with two black marks.
 */
export async function wallJpeg(page: Page, wall: WallPicture): Promise<Buffer> {
  const text = await page.evaluate(async ({ width, height, period, layer, marks }) => {
    const canvas = new OffscreenCanvas(width, height);
    const pen = canvas.getContext('2d')!;
    let seed = 7;
    const grain = () => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return seed / 2 ** 32 - 0.5;
    };
    const band = 100;
    for (let top = 0; top < height; top += band) {
      const rows = Math.min(band, height - top);
      const image = pen.createImageData(width, rows);
      for (let row = 0; row < rows; row += 1) {
        // A pixel's middle.
        const y = top + row + 0.5;
        const turn = period > 0 ? (2 * Math.PI * y) / period : 0;
        const ridges = period > 0 ? 26 * Math.cos(turn) + 8 * Math.cos(2 * turn + 1) : 0;
        const layers = layer > 0 ? 9 * Math.cos((2 * Math.PI * y) / layer) : 0;
        const level = 118 + ridges + layers + 24 * (y / height - 0.5);
        for (let x = 0; x < width; x += 1) {
          const grey = level + 20 * (x / width) + 24 * grain();
          const at = 4 * (row * width + x);
          image.data[at] = grey + 8;
          image.data[at + 1] = grey;
          image.data[at + 2] = grey - 10;
          image.data[at + 3] = 255;
        }
      }
      pen.putImageData(image, 0, top);
    }
    pen.fillStyle = '#ddd8cc';
    pen.fillRect(width * 0.14, 0, width * 0.12, height);
    pen.fillStyle = '#111';
    const thick = Math.max(2, Math.round(height / 600));
    for (const y of marks) pen.fillRect(width * 0.16, y - thick / 2, width * 0.08, thick);
    const bytes = new Uint8Array(
      await (await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.92 })).arrayBuffer(),
    );
    let binary = '';
    for (let i = 0; i < bytes.length; i += 0x8000) binary += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
    return btoa(binary);
  }, wall);
  return Buffer.from(text, 'base64');
}

/**
 * The JPEG with an Exif segment (CIPA DC-008) that says how it is to be turned: 6 is a quarter turn clockwise.
 */
export function withOrientation(jpeg: Buffer, orientation: number): Buffer {
  const tiff = Buffer.alloc(26);
  tiff.write('II', 0, 'latin1');
  tiff.writeUInt16LE(42, 2);
  tiff.writeUInt32LE(8, 4);
  tiff.writeUInt16LE(1, 8);
  // Tag 0x0112, type SHORT, one value.
  tiff.writeUInt16LE(0x0112, 10);
  tiff.writeUInt16LE(3, 12);
  tiff.writeUInt32LE(1, 14);
  tiff.writeUInt16LE(orientation, 18);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}
