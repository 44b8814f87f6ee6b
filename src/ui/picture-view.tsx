import { createEffect, createMemo, createUniqueId, Index, onCleanup, onMount, Show, type JSX } from 'solid-js';
import { handleSpot, HANDLE_RADIUS } from './handle-place';
import { createGestures, type PlacedHandle } from './picture-gestures';
import type { Stage } from './picture-stage';
import { toScreen, type Spot } from './view-transform';

/** A point to drag, in picture pixels; its handle lies beyond it as seen from `from`. */
export interface Handle<Id extends string> {
  readonly id: Id;
  /** One letter or sign, drawn on the handle. */
  readonly sign: string;
  readonly at: Spot;
  readonly from: Spot;
}

const MOST_DENSITY = 2;
const LOUPE = 132;
const LOUPE_ZOOM = 3;

/** A pen on a canvas whose unit is a CSS pixel; the canvas is cleared. */
function penOn(canvas: HTMLCanvasElement, width: number, height: number): CanvasRenderingContext2D | null {
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

/**
 * A picture under the fingers: turned, zoomed and moved with two of them, its points dragged by handles that the thumb
 * does not hide, with a loupe while one is held. The bitmap is drawn by a transform, once a frame at most.
 */
export function PictureView<Id extends string>(props: {
  stage: Stage;
  bitmap: ImageBitmap;
  /** Bitmap pixels per picture pixel. */
  bitmapScale: number;
  handles: readonly Handle<Id>[];
  picked: Id | undefined;
  onPick: (id: Id) => void;
  onHandle: (id: Id, to: Spot) => void;
  /** An arrow key was pressed: so many steps to the right and down. */
  onNudge: (by: Spot) => void;
  label: string;
  /** Drawn over the picture, in screen pixels: the contents of an SVG. */
  children: JSX.Element;
}) {
  const hint = createUniqueId();
  let box: HTMLDivElement | undefined;
  let canvas: HTMLCanvasElement | undefined;
  let loupe: HTMLCanvasElement | undefined;
  let frame = 0;

  const placed = createMemo<readonly (PlacedHandle<Id> & { sign: string })[]>(() => {
    const size = props.stage.size();
    if (!size) return [];
    const view = props.stage.view();
    return props.handles.flatMap(({ id, sign, at, from }) => {
      const point = toScreen(view, at);
      const spot = handleSpot(point, toScreen(view, from), size);
      return spot ? [{ id, sign, point, spot }] : [];
    });
  });

  // The callbacks read the props when they are called.
  /* eslint-disable solid/reactivity */
  const gestures = createGestures<Id>({
    stage: props.stage,
    handles: placed,
    onHandle: (id, to) => props.onHandle(id, to),
    onPick: (id) => props.onPick(id),
    onNudge: (by) => props.onNudge(by),
  });
  /* eslint-enable solid/reactivity */

  /** The handles, the held one under its finger. */
  const shown = () => {
    const grip = gestures.grip();
    return placed().map((handle) => (handle.id === grip?.id ? { ...handle, spot: grip.finger } : handle));
  };
  const heldPoint = () => placed().find((handle) => handle.id === gestures.grip()?.id)?.point;

  const lay = (pen: CanvasRenderingContext2D): void => {
    const { re, im, x, y } = props.stage.view();
    pen.transform(re, im, -im, re, x, y);
    pen.scale(1 / props.bitmapScale, 1 / props.bitmapScale);
    pen.imageSmoothingQuality = 'medium';
    pen.drawImage(props.bitmap, 0, 0);
  };
  const draw = (): void => {
    frame = 0;
    const size = props.stage.size();
    if (!size || !canvas) return;
    const pen = penOn(canvas, size.width, size.height);
    if (pen) lay(pen);
    const point = heldPoint();
    if (!point || !loupe) return;
    const glass = penOn(loupe, LOUPE, LOUPE);
    if (!glass) return;
    glass.translate(LOUPE / 2, LOUPE / 2);
    glass.scale(LOUPE_ZOOM, LOUPE_ZOOM);
    glass.translate(-point.x, -point.y);
    lay(glass);
  };
  createEffect(() => {
    props.stage.view();
    props.stage.size();
    heldPoint();
    if (frame === 0) frame = requestAnimationFrame(draw);
  });
  onMount(() => {
    if (!box) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) props.stage.resize(entry.contentRect);
    });
    observer.observe(box);
    // The page's colours changed: the ground around the picture with them.
    const scheme = matchMedia('(prefers-color-scheme: dark)');
    scheme.addEventListener('change', draw);
    onCleanup(() => {
      observer.disconnect();
      scheme.removeEventListener('change', draw);
    });
  });
  onCleanup(() => cancelAnimationFrame(frame));

  return (
    <>
      <div
        ref={(element) => (box = element)}
        class="picture-stage"
        role="application"
        aria-label={props.label}
        aria-describedby={hint}
        tabindex="0"
        onPointerDown={gestures.down}
        onPointerMove={gestures.move}
        onPointerUp={gestures.up}
        onPointerCancel={gestures.up}
        onWheel={gestures.wheel}
        onKeyDown={gestures.key}
        onContextMenu={(event) => event.preventDefault()}
      >
        <canvas ref={(element) => (canvas = element)} class="picture-canvas" aria-hidden="true" />
        <svg
          class="picture-over"
          aria-hidden="true"
          viewBox={`0 0 ${props.stage.size()?.width ?? 1} ${props.stage.size()?.height ?? 1}`}
        >
          {props.children}
          <Index each={shown()}>
            {(handle) => (
              <g class={handle().id === props.picked ? 'picture-handle picked' : 'picture-handle'}>
                <path
                  class="picture-casing"
                  d={`M${handle().spot.x} ${handle().spot.y} L${handle().point.x} ${handle().point.y}`}
                />
                <path
                  class="picture-line"
                  d={`M${handle().spot.x} ${handle().spot.y} L${handle().point.x} ${handle().point.y}`}
                />
                <circle class="picture-knob" cx={handle().spot.x} cy={handle().spot.y} r={HANDLE_RADIUS} />
                <text class="picture-sign" x={handle().spot.x} y={handle().spot.y + 6} text-anchor="middle">
                  {handle().sign}
                </text>
              </g>
            )}
          </Index>
        </svg>
        <Show when={heldPoint()}>
          {(point) => (
            <div class={point().x > (props.stage.size()?.width ?? 0) / 2 ? 'picture-loupe' : 'picture-loupe right'}>
              <canvas ref={(element) => (loupe = element)} aria-hidden="true" />
              <svg viewBox="-66 -66 132 132" aria-hidden="true">
                <path class="picture-casing" d="M-60 0 H-8 M8 0 H60 M0 -60 V-8 M0 8 V60" />
                <path class="picture-line" d="M-60 0 H-8 M8 0 H60 M0 -60 V-8 M0 8 V60" />
                <circle class="picture-dot" r="1.5" />
              </svg>
            </div>
          )}
        </Show>
      </div>
      <p class="unseen" id={hint}>
        Arrow keys move what is picked below, ten times as far with shift; plus and minus zoom; square brackets turn by
        1°.
      </p>
    </>
  );
}
