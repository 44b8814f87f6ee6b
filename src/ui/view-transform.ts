/** A place on the screen or in a picture: x to the right, y down, in pixels of one or the other. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * How a picture lies on the screen: turned, made larger or smaller, moved. With complex numbers, screen = (re + i im) ·
 * picture + (x + i y): the length of re + i im is screen pixels per picture pixel, its angle the turn, clockwise as seen.
 */
export interface View {
  readonly re: number;
  readonly im: number;
  readonly x: number;
  readonly y: number;
}

/** Screen pixels per picture pixel, least and most. */
export interface Zoom {
  readonly least: number;
  readonly most: number;
}

/** Screen pixels that one picture pixel may be blown up to. */
const MOST_ZOOM = 12;
/** How far beyond a whole view one may zoom out. */
const SPARE = 0.5;

const times = (a: Spot, b: Spot): Spot => ({ x: a.x * b.x - a.y * b.y, y: a.x * b.y + a.y * b.x });
const minus = (a: Spot, b: Spot): Spot => ({ x: a.x - b.x, y: a.y - b.y });
const over = (a: Spot, b: Spot): Spot => {
  const size = b.x * b.x + b.y * b.y;
  return { x: (a.x * b.x + a.y * b.y) / size, y: (a.y * b.x - a.x * b.y) / size };
};

export const middleOf = (a: Spot, b: Spot): Spot => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
export const distance = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Screen pixels per picture pixel. */
export const scaleOf = (view: View): number => Math.hypot(view.re, view.im);

/** How far the picture is turned on the screen: rad, clockwise as seen, −π to π. */
export const turnOf = (view: View): number => Math.atan2(view.im, view.re);

export function toScreen(view: View, spot: Spot): Spot {
  const turned = times({ x: view.re, y: view.im }, spot);
  return { x: turned.x + view.x, y: turned.y + view.y };
}

export function toPicture(view: View, spot: Spot): Spot {
  return over(minus(spot, view), { x: view.re, y: view.im });
}

/** The whole picture, upright, in the middle of the stage. */
export function wholeView(picture: Size, stage: Size): View {
  const scale = Math.min(stage.width / picture.width, stage.height / picture.height);
  return {
    re: scale,
    im: 0,
    x: (stage.width - scale * picture.width) / 2,
    y: (stage.height - scale * picture.height) / 2,
  };
}

export function zoomOf(picture: Size, stage: Size): Zoom {
  const whole = Math.min(stage.width / picture.width, stage.height / picture.height);
  return { least: whole * SPARE, most: Math.max(MOST_ZOOM, whole) };
}

/** The view multiplied by `factor` (a length and a turn), with one spot of the screen held where it is. */
function spun(view: View, at: Spot, factor: Spot): View {
  const m = times(factor, { x: view.re, y: view.im });
  const away = times(factor, minus(view, at));
  return { re: m.x, im: m.y, x: away.x + at.x, y: away.y + at.y };
}

export const panned = (view: View, by: Spot): View => ({ ...view, x: view.x + by.x, y: view.y + by.y });

/** Turned about a spot of the screen by rad, clockwise as seen. */
export const turned = (view: View, at: Spot, angle: number): View =>
  spun(view, at, { x: Math.cos(angle), y: Math.sin(angle) });

/** Zoomed about a spot of the screen, within the limits. */
export function zoomed(view: View, at: Spot, factor: number, zoom: Zoom): View {
  const scale = scaleOf(view);
  const wanted = Math.min(Math.max(scale * factor, zoom.least), zoom.most);
  return spun(view, at, { x: wanted / scale, y: 0 });
}

/** What two fingers do that go from `before` to `after`: the picture sticks to both, save where a limit holds it. */
export function pinched(view: View, before: readonly [Spot, Spot], after: readonly [Spot, Spot], zoom: Zoom): View {
  const from = middleOf(...before);
  const to = middleOf(...after);
  const moved = panned(view, minus(to, from));
  const span = minus(before[1], before[0]);
  const wanted = minus(after[1], after[0]);
  // Two fingers on one spot have no direction.
  if (Math.hypot(span.x, span.y) < 1 || Math.hypot(wanted.x, wanted.y) < 1) return moved;
  const factor = over(wanted, span);
  const size = Math.hypot(factor.x, factor.y);
  return zoomed(spun(moved, to, { x: factor.x / size, y: factor.y / size }), to, size, zoom);
}

/** Moved, if need be, so that the middle of the stage shows some of the picture: it cannot be lost out of sight. */
export function held(view: View, picture: Size, stage: Size): View {
  const middle = { x: stage.width / 2, y: stage.height / 2 };
  const shown = toPicture(view, middle);
  const inside = {
    x: Math.min(Math.max(shown.x, 0), picture.width),
    y: Math.min(Math.max(shown.y, 0), picture.height),
  };
  return panned(view, minus(middle, toScreen(view, inside)));
}
