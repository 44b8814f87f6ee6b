import { createMemo, Show } from 'solid-js';

const WIDTH = 340;
const HEIGHT = 66;
const LEFT = 14;
const RIGHT = WIDTH - 14;
const AXIS = 36;

export interface GaugeProps {
  label: string;
  value: number;
  low: number;
  high: number;
  /** Limits in the same unit as the value; undefined where there is none on that side. */
  min: number | undefined;
  max: number | undefined;
  minText: string;
  maxText: string;
}

/** A value's interval against its limits, on one line. */
export function Gauge(props: GaugeProps) {
  const marks = () =>
    [props.low, props.high, props.min, props.max].filter((x): x is number => x !== undefined && Number.isFinite(x));
  const span = createMemo(() => {
    const least = Math.min(...marks());
    const most = Math.max(...marks());
    const pad = (most - least || Math.abs(most) || 1) * 0.15;
    return [least - pad, most + pad] as const;
  });
  const at = (x: number) => {
    const [least, most] = span();
    return LEFT + ((x - least) / (most - least)) * (RIGHT - LEFT);
  };
  const allowed = () => {
    const from = props.min === undefined ? LEFT : at(props.min);
    const to = props.max === undefined ? RIGHT : at(props.max);
    return { from, width: Math.max(to - from, 0) };
  };
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={props.label}>
      <rect class="d-shade" x={allowed().from} y={AXIS - 11} width={allowed().width} height={22} />
      <line class="d-thin" x1={LEFT} y1={AXIS} x2={RIGHT} y2={AXIS} />
      <Show when={props.min !== undefined ? { at: props.min } : undefined}>
        {(min) => (
          <g>
            <line class="d-ink" x1={at(min().at)} y1={AXIS - 14} x2={at(min().at)} y2={AXIS + 14} />
            <text class="d-text" x={Math.max(at(min().at) + 4, 70)} y={HEIGHT - 3} text-anchor="end">
              {props.minText}
            </text>
          </g>
        )}
      </Show>
      <Show when={props.max !== undefined ? { at: props.max } : undefined}>
        {(max) => (
          <g>
            <line class="d-ink" x1={at(max().at)} y1={AXIS - 14} x2={at(max().at)} y2={AXIS + 14} />
            <text class="d-text" x={Math.min(at(max().at) - 4, WIDTH - 70)} y={HEIGHT - 3} text-anchor="start">
              {props.maxText}
            </text>
          </g>
        )}
      </Show>
      <path
        class="d-accent"
        d={`M${at(props.low)} ${AXIS} H${at(props.high)} M${at(props.low)} ${AXIS - 6} v12 M${at(props.high)} ${AXIS - 6} v12`}
      />
      <circle class="d-solid" cx={at(props.value)} cy={AXIS} r={5} />
      <text class="d-text d-text-accent" x={at(props.value)} y={14} text-anchor="middle">
        {props.label}
      </text>
    </svg>
  );
}
