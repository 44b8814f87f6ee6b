import type { Point, Strip } from '../../../signal/ridge-types';
import { distance, middleOf, scaleOf, toPicture, type Size, type View } from '../../../ui/view-transform';

/** What stands on the picture: the strip across the ridges and the two scale marks, in the picture's pixels. */
export interface Marks {
  readonly strip: Strip;
  readonly scale: readonly [Mark, Mark];
}

interface Mark {
  readonly at: Point;
  /** px: how closely it was set; undefined until it was. */
  readonly pointing: number | undefined;
}

export type HandleId = 'end 1' | 'end 2' | 'width' | 'strip' | 'mark A' | 'mark B';

/** How closely a point can be set on a screen with a handle beside the thumb and the loupe: ± this, screen pixels. */
const POINTING_PX = 1.5;
const LEAST_WIDTH = 8;

/**
 * The half-width of a mark set by hand, in picture pixels: what the hand can do at this zoom, no less than the picture
 * drawn on the screen can show, and never less than a pixel.
 */
export function pointingAt(view: View, previewScale: number): number {
  return Math.max(POINTING_PX / scaleOf(view), 1 / previewScale, 1);
}

const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
const less = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

/** Unit vector along the strip; down the picture where it has no length. */
function along({ from, to }: Strip): Point {
  const length = distance(from, to);
  return length > 0 ? { x: (to.x - from.x) / length, y: (to.y - from.y) / length } : { x: 0, y: 1 };
}

/** The place of the handle for the width: half-way along, on the left as one looks from the first end to the second: to the right of a strip drawn downwards. */
function widthPlace(strip: Strip): Point {
  const { x, y } = along(strip);
  return add(middleOf(strip.from, strip.to), { x: (y * strip.width) / 2, y: (-x * strip.width) / 2 });
}

/** The strip's four corners, in order round it. */
export function cornersOf(strip: Strip): readonly Point[] {
  const { x, y } = along(strip);
  const side = { x: (-y * strip.width) / 2, y: (x * strip.width) / 2 };
  return [add(strip.from, side), add(strip.to, side), less(strip.to, side), less(strip.from, side)];
}

export interface HandlePlace {
  readonly at: Point;
  /** The handle lies on the far side of its point from here. */
  readonly from: Point;
}

export function handlePlace(marks: Marks, id: HandleId): HandlePlace {
  const { strip } = marks;
  const [a, b] = marks.scale;
  const middle = middleOf(strip.from, strip.to);
  if (id === 'end 1') return { at: strip.from, from: strip.to };
  if (id === 'end 2') return { at: strip.to, from: strip.from };
  if (id === 'mark A') return { at: a.at, from: b.at };
  if (id === 'mark B') return { at: b.at, from: a.at };
  const edge = widthPlace(strip);
  if (id === 'width') return { at: edge, from: middle };
  return { at: less(add(middle, middle), edge), from: middle };
}

/** A point kept inside the picture. */
const inside = (point: Point, picture: Size): Point => ({
  x: Math.min(Math.max(point.x, 0), picture.width),
  y: Math.min(Math.max(point.y, 0), picture.height),
});

/** The marks after a handle's point was brought to a place. `pointing` is how closely, in picture pixels. */
export function moveHandle(marks: Marks, id: HandleId, to: Point, picture: Size, pointing: number): Marks {
  const { strip } = marks;
  const [a, b] = marks.scale;
  const point = inside(to, picture);
  if (id === 'end 1') return { ...marks, strip: { ...strip, from: point } };
  if (id === 'end 2') return { ...marks, strip: { ...strip, to: point } };
  if (id === 'mark A') return { ...marks, scale: [{ at: point, pointing }, b] };
  if (id === 'mark B') return { ...marks, scale: [a, { at: point, pointing }] };
  const axis = along(strip);
  const away = less(to, middleOf(strip.from, strip.to));
  if (id === 'width') {
    const half = Math.abs(-axis.y * away.x + axis.x * away.y);
    const most = Math.min(picture.width, picture.height);
    return { ...marks, strip: { ...strip, width: Math.min(Math.max(2 * half, LEAST_WIDTH), most) } };
  }
  const by = less(to, handlePlace(marks, 'strip').at);
  // The whole strip stops where one of its ends would leave the picture.
  const stop = (shift: number, p: number, q: number, most: number) =>
    Math.min(Math.max(shift, -Math.min(p, q)), most - Math.max(p, q));
  const shift = {
    x: stop(by.x, strip.from.x, strip.to.x, picture.width),
    y: stop(by.y, strip.from.y, strip.to.y, picture.height),
  };
  return { ...marks, strip: { ...strip, from: add(strip.from, shift), to: add(strip.to, shift) } };
}

/** The strip down the middle of what is in view, as wide as a fifth of the stage. */
export function stripInView(view: View, stage: Size, picture: Size): Strip {
  const spot = (x: number, y: number) => inside(toPicture(view, { x: stage.width * x, y: stage.height * y }), picture);
  const width = (Math.min(stage.width, stage.height) * 0.2) / scaleOf(view);
  return { from: spot(0.5, 0.2), to: spot(0.5, 0.8), width: Math.max(width, LEAST_WIDTH) };
}

/** Strip and scale marks laid on what is in view; the marks still to be set. */
export function marksInView(view: View, stage: Size, picture: Size): Marks {
  const spot = (x: number, y: number) => inside(toPicture(view, { x: stage.width * x, y: stage.height * y }), picture);
  return {
    strip: stripInView(view, stage, picture),
    scale: [
      { at: spot(0.22, 0.32), pointing: undefined },
      { at: spot(0.22, 0.68), pointing: undefined },
    ],
  };
}
