import { createUniqueId, Show, type JSX } from 'solid-js';

/**
 * A drawing in the manner of an engineer's notebook: ink lines, thin dimension lines, one accent.
 * Inside, use the classes d-ink, d-thin, d-accent, d-ghost (dashed), d-fill, d-shade and d-text; one unit of the view box is
 * one CSS pixel on a 360-pixel phone, so text below 11 units cannot be read.
 */
export function Drawing(props: { width: number; height: number; label: string; children: JSX.Element }) {
  const title = createUniqueId();
  return (
    <svg class="drawing" viewBox={`0 0 ${props.width} ${props.height}`} role="img" aria-labelledby={title}>
      <title id={title}>{props.label}</title>
      {props.children}
    </svg>
  );
}

interface Span {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
}

const ARROW = 6;

/** A line between two points with arrow heads at both ends (or only at the second) and a text at its middle. */
export function DimensionLine(
  props: Span & {
    text: string;
    single?: boolean;
    accent?: boolean;
    dx?: number;
    dy?: number;
    anchor?: 'start' | 'middle' | 'end';
  },
) {
  const angle = () => Math.atan2(props.y2 - props.y1, props.x2 - props.x1);
  const head = (x: number, y: number, turned: number) => {
    const point = (offset: number) =>
      `${x - ARROW * Math.cos(turned + offset)},${y - ARROW * Math.sin(turned + offset)}`;
    return `${point(0.35)} ${x},${y} ${point(-0.35)}`;
  };
  const tone = () => (props.accent ? 'd-accent' : 'd-thin');
  return (
    <g>
      <line class={tone()} x1={props.x1} y1={props.y1} x2={props.x2} y2={props.y2} />
      <polyline class={tone()} points={head(props.x2, props.y2, angle())} />
      <Show when={!props.single}>
        <polyline class={tone()} points={head(props.x1, props.y1, angle() + Math.PI)} />
      </Show>
      <text
        class={props.accent ? 'd-text d-text-accent' : 'd-text'}
        x={(props.x1 + props.x2) / 2 + (props.dx ?? 0)}
        y={(props.y1 + props.y2) / 2 + (props.dy ?? -4)}
        text-anchor={props.anchor ?? 'middle'}
      >
        {props.text}
      </text>
    </g>
  );
}

/** A curved arrow about a centre: which way something turns. Angles in radians, anticlockwise positive, 0 to the right. */
export function TurnArrow(props: { cx: number; cy: number; r: number; from: number; to: number }) {
  const at = (angle: number) => ({ x: props.cx + props.r * Math.cos(angle), y: props.cy - props.r * Math.sin(angle) });
  const path = () => {
    const start = at(props.from);
    const end = at(props.to);
    const large = Math.abs(props.to - props.from) > Math.PI ? 1 : 0;
    const sweep = props.to > props.from ? 0 : 1;
    return `M${start.x} ${start.y} A${props.r} ${props.r} 0 ${large} ${sweep} ${end.x} ${end.y}`;
  };
  const head = () => {
    const end = at(props.to);
    const turned = props.to > props.from ? -props.to - Math.PI / 2 : -props.to + Math.PI / 2;
    const point = (offset: number) =>
      `${end.x - ARROW * Math.cos(turned + offset)},${end.y - ARROW * Math.sin(turned + offset)}`;
    return `${point(0.4)} ${end.x},${end.y} ${point(-0.4)}`;
  };
  return (
    <g>
      <path class="d-accent" d={path()} />
      <polyline class="d-accent" points={head()} />
    </g>
  );
}
