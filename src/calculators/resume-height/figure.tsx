import { For, Show } from 'solid-js';
import { expanded } from '../../formula/outcome';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 240;
const BED = 200;
const TOP = 40;
const PART = { x: 58, width: 76 };
const LENS = { x: 176, width: 96, top: 46, bottom: 196 };
/** Layers seen under the lens. */
const SEEN = 4.4;

/** The part to scale; under the lens its top against the layers, with the doubt of the reading as a band. */
export default function Figure(props: FigureProps<typeof calc>) {
  const isGlue = () => props.choice.plan === 'glue';
  const top = () => props.value('Z_w') ?? 0.02;
  const whole = () => (isGlue() ? Math.max(props.value('H_t') ?? top() * 1.6, top()) : top() * 1.25);
  const scale = () => (BED - TOP) / Math.max(whole(), 1e-4);
  const y = (z: number) => BED - z * scale();
  const layer = () => props.value('h') ?? 2e-4;
  const first = () => props.value('h_1') ?? 2e-4;
  const count = () => (top() - first()) / layer() + 1;
  const doubt = () => {
    const known = props.known('Z_w');
    return known ? expanded(known) / layer() : 0;
  };
  const unit = (LENS.bottom - LENS.top) / SEEN;
  const middle = (LENS.top + LENS.bottom) / 2;
  /** Place of a number of layers under the lens. */
  const at = (layers: number) => middle - (layers - count()) * unit;
  const inside = (v: number) => Math.min(LENS.bottom, Math.max(LENS.top, v));
  const numbers = () => {
    const exact = count();
    const around = [-2, -1, 0, 1, 2].map((i) => Math.round(exact) + i);
    return around.filter((n) => n >= 0 && Math.abs(n - exact) <= SEEN / 2);
  };
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <rect class="d-ink d-shade" x={28} y={BED} width={128} height={9} />
      <Show when={isGlue()}>
        <rect
          class="d-ghost"
          x={PART.x}
          y={y(whole())}
          width={PART.width}
          height={Math.max(y(top()) - y(whole()), 0)}
        />
        <text class="d-text" x={PART.x + PART.width / 2} y={y((whole() + top()) / 2) + 4} text-anchor="middle">
          {props.text('H_2')}
        </text>
      </Show>
      <rect class="d-ink d-fill" x={PART.x} y={y(top())} width={PART.width} height={BED - y(top())} />
      <DimensionLine
        x1={44}
        y1={BED}
        x2={44}
        y2={y(top())}
        text={props.choice.plan === 'nozzle' ? props.text('Z_c') : props.text('H')}
        dx={26}
        dy={4}
        anchor="start"
      />
      <Show when={props.choice.plan === 'nozzle'}>
        <polygon
          class="d-ink d-shade"
          points={`${PART.x + 14},${y(top()) - 20} ${PART.x + 42},${y(top()) - 20} ${PART.x + 32},${y(top()) - 4} ${PART.x + 24},${y(top()) - 4}`}
        />
        <line class="d-accent" x1={PART.x + 6} y1={y(top()) - 2} x2={PART.x + PART.width + 14} y2={y(top()) - 2} />
      </Show>
      <line class="d-thin" x1={PART.x + PART.width} y1={y(top()) - 3} x2={LENS.x} y2={LENS.top} />
      <line class="d-thin" x1={PART.x + PART.width} y1={y(top()) + 3} x2={LENS.x} y2={LENS.bottom} />
      <rect class="d-ink d-fill" x={LENS.x} y={middle} width={LENS.width} height={Math.max(LENS.bottom - middle, 0)} />
      <rect class="d-thin" x={LENS.x} y={LENS.top} width={LENS.width} height={LENS.bottom - LENS.top} />
      <rect
        class="d-accent d-shade"
        x={LENS.x}
        y={inside(middle - doubt() * unit)}
        width={LENS.width}
        height={Math.max(inside(middle + doubt() * unit) - inside(middle - doubt() * unit), 0)}
      />
      <For each={numbers()}>
        {(n) => (
          <g>
            <line class="d-thin" x1={LENS.x - 6} y1={at(n)} x2={LENS.x + LENS.width + 6} y2={at(n)} />
            <text class="d-text" x={LENS.x + LENS.width + 10} y={at(n) + 4}>
              {n}
            </text>
          </g>
        )}
      </For>
      <line class="d-accent" x1={LENS.x} y1={middle} x2={LENS.x + LENS.width} y2={middle} />
      <text class="d-text d-text-accent" x={LENS.x + LENS.width / 2} y={22} text-anchor="middle">
        {say.figure.top(props.text('Z_w'))}
      </text>
      <text class="d-text" x={LENS.x + LENS.width / 2} y={LENS.bottom + 18} text-anchor="middle">
        {say.figure.layers}
      </text>
      <text class="d-text" x={WIDTH / 2} y={HEIGHT - 6} text-anchor="middle">
        {say.figure.shrunk(props.text('dZ_w'))}
      </text>
    </Drawing>
  );
}
