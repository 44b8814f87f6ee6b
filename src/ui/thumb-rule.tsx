import { createSignal } from 'solid-js';

const SPACING = 14;
const HEIGHT = 52;
/** Ticks to either side of the middle: enough for a bench screen. */
const REACH = 60;
/** One path: a hundred lines of their own would be laid out anew with every change of the field. */
const TICKS = Array.from({ length: 2 * REACH + 1 }, (_, i) => i - REACH)
  .map((tick) => `M${tick * SPACING} 0v${tick % 10 === 0 ? 26 : tick % 5 === 0 ? 20 : 13}`)
  .join('');

/**
 * A rule to drag with a thumb: each tick passed changes the value by one division. A second way beside the keys and the
 * number itself, which serve the keyboard and the screen reader, so it is hidden from both.
 */
export function ThumbRule(props: { onSlide: (divisions: number) => void }) {
  const [shift, setShift] = createSignal(0);
  let last: number | undefined;
  let carried = 0;

  const begin = (event: PointerEvent & { currentTarget: SVGSVGElement }) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    last = event.clientX;
    carried = 0;
  };
  const move = (event: PointerEvent) => {
    if (last === undefined) return;
    const moved = event.clientX - last;
    last = event.clientX;
    setShift((before) => (before + moved) % (SPACING * 10));
    carried += moved;
    const divisions = Math.trunc(carried / SPACING);
    if (divisions === 0) return;
    carried -= divisions * SPACING;
    props.onSlide(divisions);
  };
  const end = () => {
    last = undefined;
  };

  return (
    <svg
      class="thumb-rule"
      aria-hidden="true"
      onPointerDown={begin}
      onPointerMove={move}
      onPointerUp={end}
      onPointerCancel={end}
    >
      <svg x="50%" overflow="visible">
        <path class="d-thin" d={TICKS} transform={`translate(${shift()} 0)`} />
        <path
          class="d-accent"
          d={`M0 ${HEIGHT} v-16 M-22 ${HEIGHT - 8} h-24 m7 -6 l-7 6 l7 6 M22 ${HEIGHT - 8} h24 m-7 -6 l7 6 l-7 6`}
        />
      </svg>
    </svg>
  );
}
