import { Show } from 'solid-js';
import { Drawing, TurnArrow } from '../../../ui/drawing';
import say from './words/en';

const MIDDLE = 170;

/** The phone on a bar, from above, as seen from the front: the earpiece to the right, then to the left. */
export function LayingDrawing(props: { turned: boolean; again: boolean }) {
  const ear = () => (props.turned ? MIDDLE - 62 : MIDDLE + 62);
  return (
    <Drawing width={340} height={150} label={props.turned ? say.laying.drawingTurned : say.laying.drawing}>
      <rect class="d-ink d-shade" x={20} y={62} width={300} height={26} />
      <rect class="d-ink d-fill" x={MIDDLE - 72} y={41} width={144} height={68} rx={9} />
      <rect class="d-thin" x={MIDDLE - 56} y={46} width={112} height={58} />
      <line class="d-accent" x1={ear()} y1={66} x2={ear()} y2={84} />
      <text class="d-text d-text-accent" x={MIDDLE} y={80} text-anchor="middle">
        {props.turned ? say.laying.earpieceTurned : say.laying.earpiece}
      </text>
      <Show when={props.again}>
        <TurnArrow cx={MIDDLE} cy={75} r={62} from={Math.PI - 0.75} to={0.75} />
        <TurnArrow cx={MIDDLE} cy={75} r={62} from={-0.75} to={-Math.PI + 0.75} />
      </Show>
      <text class="d-text" x={24} y={56}>
        {say.laying.left}
      </text>
      <text class="d-text" x={316} y={56} text-anchor="end">
        {say.laying.right}
      </text>
      <text class="d-text" x={MIDDLE} y={147} text-anchor="middle">
        {say.laying.you}
      </text>
    </Drawing>
  );
}

const HALF = 130;
const MOST_RISE = 34;
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200];

/** The bar from the front, its slope drawn too large by a stated factor. */
export function SlopeDrawing(props: { slope: number; text: string }) {
  const factor = () => {
    const rise = Math.abs(props.slope) * HALF;
    return STEPS.findLast((step) => rise * step <= MOST_RISE) ?? 1;
  };
  const rise = () => props.slope * HALF * factor();
  const high = () => (props.slope > 0 ? MIDDLE + HALF : MIDDLE - HALF);
  return (
    <Drawing width={340} height={130} label={say.result.drawing}>
      <line class="d-ghost" x1={16} y1={62} x2={324} y2={62} />
      <polygon
        class="d-ink d-shade"
        points={`${MIDDLE - HALF},${62 + rise()} ${MIDDLE + HALF},${62 - rise()} ${MIDDLE + HALF},${72 - rise()} ${MIDDLE - HALF},${72 + rise()}`}
      />
      <text class="d-text d-text-accent" x={high()} y={54 - Math.abs(rise())} text-anchor="middle">
        {say.result.high}
      </text>
      <text class="d-text" x={MIDDLE} y={50} text-anchor="middle">
        {props.text}
      </text>
      <text class="d-text" x={MIDDLE} y={126} text-anchor="middle">
        {say.result.times(factor())}
      </text>
    </Drawing>
  );
}
