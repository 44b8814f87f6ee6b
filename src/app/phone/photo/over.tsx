import { Index, Show } from 'solid-js';
import type { Point } from '../../../signal/ridge-types';
import { toScreen, type Spot, type View } from '../../../ui/view-transform';
import { cornersOf, type Marks } from './marks';

const join = (spots: readonly Spot[]): string =>
  `M${spots.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join(' L')}`;
const CROSS = 9;

const cross = ({ x, y }: Spot): string =>
  `M${x - CROSS} ${y} H${x - 2} M${x + 2} ${y} H${x + CROSS} M${x} ${y - CROSS} V${y - 2} M${x} ${y + 2} V${y + CROSS}`;

/** The strip, the scale marks and the lines found, over the picture: in screen pixels. */
export function StripOver(props: {
  marks: Marks;
  view: View;
  named: boolean;
  lines: readonly (readonly [Point, Point])[];
}) {
  const place = (spot: Spot) => toScreen(props.view, spot);
  const strip = () => `${join(cornersOf(props.marks.strip).map(place))} z`;
  const axis = () => join([props.marks.strip.from, props.marks.strip.to].map(place));
  const scale = () => {
    const [a, b] = props.marks.scale.map((mark) => place(mark.at));
    return a && b ? `${cross(a)} ${cross(b)} M${a.x} ${a.y} L${b.x} ${b.y}` : '';
  };
  const labels = () => {
    const [a, b] = props.marks.scale.map((mark) => place(mark.at));
    return props.named && a && b
      ? [
          { ...a, text: 'A' },
          { ...b, text: 'B' },
        ]
      : [];
  };
  const lines = () => props.lines.map(([from, to]) => join([place(from), place(to)])).join('');
  return (
    <>
      <path class="picture-casing" d={strip()} />
      <path class="picture-line" d={strip()} />
      <path class="picture-line faint-line" d={axis()} />
      <Show when={lines()}>{(path) => <path class="picture-line" d={path()} />}</Show>
      <path class="picture-casing" d={scale()} />
      <path class="picture-line ink" d={scale()} />
      <Index each={labels()}>
        {(label) => (
          <text class="picture-label" x={label().x + 8} y={label().y - 8}>
            {label().text}
          </text>
        )}
      </Index>
    </>
  );
}
