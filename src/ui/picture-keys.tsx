import { For } from 'solid-js';
import type { Stage } from './picture-stage';
import { NudgeKey } from './quantity-field';
import { turned, zoomed, type Spot } from './view-transform';

const DEGREE = Math.PI / 180;
const ZOOM = 1.15;

const ARROWS: readonly { readonly sign: string; readonly label: string; readonly by: Spot }[] = [
  { sign: '←', label: 'To the left', by: { x: -1, y: 0 } },
  { sign: '↑', label: 'Up', by: { x: 0, y: -1 } },
  { sign: '↓', label: 'Down', by: { x: 0, y: 1 } },
  { sign: '→', label: 'To the right', by: { x: 1, y: 0 } },
];

/** Every motion of the picture and of what is picked, as keys for one thumb or a keyboard; held, they go on. */
export function PictureKeys(props: { stage: Stage; onNudge: (by: Spot) => void }) {
  const turn = (angle: number) => props.stage.change((view, _, middle) => turned(view, middle, angle * DEGREE));
  const zoom = (factor: number) => props.stage.change((view, limits, middle) => zoomed(view, middle, factor, limits));
  return (
    <div class="picture-keys" role="group" aria-label="Move, turn and zoom">
      <For each={ARROWS}>
        {(arrow) => <NudgeKey label={arrow.label} sign={arrow.sign} onNudge={() => props.onNudge(arrow.by)} />}
      </For>
      <button type="button" onClick={() => props.stage.whole()}>
        Whole
      </button>
      <NudgeKey label="Zoom out" sign="−" onNudge={() => zoom(1 / ZOOM)} />
      <NudgeKey label="Zoom in" sign="+" onNudge={() => zoom(ZOOM)} />
      <NudgeKey label="Turn the picture 1° anticlockwise" sign="↺ 1°" onNudge={() => turn(-1)} />
      <NudgeKey label="Turn the picture 1° clockwise" sign="↻ 1°" onNudge={() => turn(1)} />
      <NudgeKey label="Turn the picture 90° clockwise" sign="↻ 90°" onNudge={() => turn(90)} />
    </div>
  );
}
