import { For } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 150;
const LEFT = 24;
const LONGEST = 270;
const AXIS = 62;

/** The screw with the nut before and after, travel and marked travel to the same scale. */
export default function Figure(props: FigureProps<typeof calc>) {
  const travel = () => props.value('x') ?? 0;
  const marked = () => (props.value('P_h') ?? 0) * (props.value('N') ?? 0);
  const scale = () => LONGEST / Math.max(travel(), marked(), 1e-6);
  const at = (distance: number) => LEFT + distance * scale();
  const threads = () => {
    const turns = Math.min(Math.max(props.value('N') ?? 1, 1), 40);
    return Array.from({ length: turns }, (_, i) => LEFT + ((i + 0.5) * LONGEST) / turns);
  };
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <rect class="d-fill" x={LEFT - 10} y={AXIS - 7} width={LONGEST + 40} height={14} />
      <For each={threads()}>{(x) => <line class="d-thin" x1={x - 2} y1={AXIS + 7} x2={x + 2} y2={AXIS - 7} />}</For>
      <rect class="d-ghost" x={LEFT - 7} y={AXIS - 18} width={14} height={36} />
      <rect class="d-ink d-shade" x={at(travel()) - 7} y={AXIS - 18} width={14} height={36} />
      <DimensionLine accent x1={LEFT} y1={30} x2={at(travel())} y2={30} text={`x = ${props.text('x')}`} />
      <DimensionLine
        x1={LEFT}
        y1={106}
        x2={at(marked())}
        y2={106}
        text={say.figure.turns(props.text('N'), props.text('P_h'))}
        dy={16}
      />
      <text class="d-text" x={WIDTH / 2} y={HEIGHT - 4} text-anchor="middle">
        {say.figure.toScale}
      </text>
    </Drawing>
  );
}
