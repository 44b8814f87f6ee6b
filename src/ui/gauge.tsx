import { createMemo, Show } from 'solid-js';
import { point, span as readingLine } from './verdict-mark';

const WIDTH = 340;
const HEIGHT = 84;
const LEFT = 14;
const RIGHT = WIDTH - 14;
const BEAM = 22;
const TIP = 44;
const AXIS = 52;

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
  const isBeyond = () => props.low > (props.max ?? Infinity) || props.high < (props.min ?? -Infinity);
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={props.label}>
      <line class="d-ink" x1={LEFT - 10} y1={BEAM} x2={RIGHT + 10} y2={BEAM} />
      <line class="d-thin" x1={LEFT} y1={AXIS} x2={RIGHT} y2={AXIS} />
      <Show when={props.min !== undefined ? { at: props.min } : undefined}>
        {(min) => (
          <g>
            <path class="d-solid-ink" d={point(at(min().at), BEAM, TIP)} />
            <text class="d-text" x={Math.max(at(min().at) + 4, 70)} y={HEIGHT - 8} text-anchor="end">
              {props.minText}
            </text>
          </g>
        )}
      </Show>
      <Show when={props.max !== undefined ? { at: props.max } : undefined}>
        {(max) => (
          <g>
            <path class="d-solid-ink" d={point(at(max().at), BEAM, TIP)} />
            <text class="d-text" x={Math.min(at(max().at) - 4, WIDTH - 70)} y={HEIGHT - 8} text-anchor="start">
              {props.maxText}
            </text>
          </g>
        )}
      </Show>
      <path class={isBeyond() ? 'd-red' : 'd-ink'} d={readingLine(at(props.low), at(props.high), AXIS)} />
      <circle class={isBeyond() ? 'd-solid-red' : 'd-solid-ink'} cx={at(props.value)} cy={AXIS} r={5} />
      <text class={isBeyond() ? 'd-text d-text-red' : 'd-text'} x={at(props.value)} y={14} text-anchor="middle">
        {props.label}
      </text>
    </svg>
  );
}
