import { Index } from 'solid-js';
import { HANDLE_RADIUS } from './handle-place';
import type { PlacedHandle } from './picture-gestures';
import { LOUPE } from './picture-paint';

/** The handles over a picture, each tied to its point by a line: the contents of an SVG. */
export function PictureHandles<Id extends string>(props: {
  handles: readonly (PlacedHandle<Id> & { readonly sign: string })[];
  picked: Id | undefined;
}) {
  return (
    <Index each={props.handles}>
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
  );
}

/** A loupe with cross hairs; `right` where the finger leaves the left half of the stage. */
export function PictureLoupe(props: { right: boolean; canvas: (element: HTMLCanvasElement) => void }) {
  const half = LOUPE / 2;
  return (
    <div class={props.right ? 'picture-loupe right' : 'picture-loupe'}>
      <canvas ref={(element) => props.canvas(element)} aria-hidden="true" />
      <svg viewBox={`${-half} ${-half} ${LOUPE} ${LOUPE}`} aria-hidden="true">
        <path class="picture-casing" d="M-60 0 H-8 M8 0 H60 M0 -60 V-8 M0 8 V60" />
        <path class="picture-line" d="M-60 0 H-8 M8 0 H60 M0 -60 V-8 M0 8 V60" />
        <circle class="picture-dot" r="1.5" />
      </svg>
    </div>
  );
}
