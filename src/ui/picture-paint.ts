import type { Size, Spot, View } from './view-transform';

/** Width and height of the loupe, screen pixels. */
export const LOUPE = 132;
const LOUPE_ZOOM = 3;
const MOST_DENSITY = 2;

/** A picture as it lies on the screen; `scale` is bitmap pixels per picture pixel. */
export interface Laid {
  readonly bitmap: ImageBitmap;
  readonly scale: number;
  readonly view: View;
}

/** A pen on a canvas whose unit is a CSS pixel; the canvas is cleared. */
function penOn(canvas: HTMLCanvasElement, { width, height }: Size): CanvasRenderingContext2D | null {
  const density = Math.min(window.devicePixelRatio || 1, MOST_DENSITY);
  const [w, h] = [Math.round(width * density), Math.round(height * density)];
  if (canvas.width !== w || canvas.height !== h) [canvas.width, canvas.height] = [w, h];
  const pen = canvas.getContext('2d', { alpha: false });
  if (!pen) return null;
  pen.setTransform(1, 0, 0, 1, 0, 0);
  pen.fillStyle = getComputedStyle(canvas).backgroundColor;
  pen.fillRect(0, 0, w, h);
  pen.scale(density, density);
  return pen;
}

function lay(pen: CanvasRenderingContext2D, { bitmap, scale, view }: Laid): void {
  const { re, im, x, y } = view;
  pen.transform(re, im, -im, re, x, y);
  pen.scale(1 / scale, 1 / scale);
  pen.imageSmoothingQuality = 'medium';
  pen.drawImage(bitmap, 0, 0);
}

/** Draws the picture on a canvas of the stage's size. */
export function paintStage(canvas: HTMLCanvasElement, size: Size, picture: Laid): void {
  const pen = penOn(canvas, size);
  if (pen) lay(pen, picture);
}

/** Draws the surroundings of a spot of the screen, enlarged, on the loupe's canvas. */
export function paintLoupe(canvas: HTMLCanvasElement, spot: Spot, picture: Laid): void {
  const pen = penOn(canvas, { width: LOUPE, height: LOUPE });
  if (!pen) return;
  pen.translate(LOUPE / 2, LOUPE / 2);
  pen.scale(LOUPE_ZOOM, LOUPE_ZOOM);
  pen.translate(-spot.x, -spot.y);
  lay(pen, picture);
}
