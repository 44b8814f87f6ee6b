import './picture.css';
import { createEffect, createMemo, createUniqueId, onCleanup, onMount, Show, type JSX } from 'solid-js';
import { handleSpot } from './handle-place';
import { createGestures, type PlacedHandle } from './picture-gestures';
import { PictureHandles, PictureLoupe } from './picture-over';
import { paintLoupe, paintStage } from './picture-paint';
import type { Stage } from './picture-stage';
import { toScreen, type Spot } from './view-transform';
import say from './words/en';

/** A point to drag, in picture pixels; its handle lies beyond it as seen from `from`. */
export interface Handle<Id extends string> {
  readonly id: Id;
  /** One letter or sign, drawn on the handle. */
  readonly sign: string;
  readonly at: Spot;
  readonly from: Spot;
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
  const gestures = createGestures<Id>(props, () => placed());

  /** The handles, the held one under its finger. */
  const shown = () => {
    const grip = gestures.grip();
    return placed().map((handle) => (handle.id === grip?.id ? { ...handle, spot: grip.finger } : handle));
  };
  const heldPoint = () => placed().find((handle) => handle.id === gestures.grip()?.id)?.point;

  const draw = (): void => {
    frame = 0;
    const size = props.stage.size();
    if (!size || !canvas) return;
    const picture = { bitmap: props.bitmap, scale: props.bitmapScale, view: props.stage.view() };
    paintStage(canvas, size, picture);
    const point = heldPoint();
    if (point && loupe) paintLoupe(loupe, point, picture);
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
          <PictureHandles handles={shown()} picked={props.picked} />
        </svg>
        <Show when={heldPoint()}>
          {(point) => (
            <PictureLoupe
              right={point().x <= (props.stage.size()?.width ?? 0) / 2}
              canvas={(element) => (loupe = element)}
            />
          )}
        </Show>
      </div>
      <p class="unseen" id={hint}>
        {say.picture.hint}
      </p>
    </>
  );
}
