import { For } from 'solid-js';
import { NudgeKey } from './nudge-key';
import type { Stage } from './picture-stage';

import { turned, zoomed, type Spot } from './view-transform';
import say from './words/en';

const DEGREE = Math.PI / 180;
const ZOOM = 1.15;

const ARROWS: readonly { readonly sign: string; readonly label: string; readonly by: Spot }[] = [
  { sign: '←', label: say.picture.left, by: { x: -1, y: 0 } },
  { sign: '↑', label: say.picture.up, by: { x: 0, y: -1 } },
  { sign: '↓', label: say.picture.down, by: { x: 0, y: 1 } },
  { sign: '→', label: say.picture.right, by: { x: 1, y: 0 } },
];

/** Every motion of the picture and of what is picked, as keys for one thumb or a keyboard; held, they go on. */
export function PictureKeys(props: { stage: Stage; onNudge: (by: Spot) => void }) {
  const turn = (angle: number) => props.stage.change((view, _, middle) => turned(view, middle, angle * DEGREE));
  const zoom = (factor: number) => props.stage.change((view, limits, middle) => zoomed(view, middle, factor, limits));
  return (
    <div class="picture-keys" role="group" aria-label={say.picture.keys}>
      <For each={ARROWS}>
        {(arrow) => <NudgeKey label={arrow.label} sign={arrow.sign} onNudge={() => props.onNudge(arrow.by)} />}
      </For>
      <button type="button" onClick={() => props.stage.whole()}>
        {say.picture.whole}
      </button>
      <NudgeKey label={say.picture.zoomOut} sign="−" onNudge={() => zoom(1 / ZOOM)} />
      <NudgeKey label={say.picture.zoomIn} sign="+" onNudge={() => zoom(ZOOM)} />
      <NudgeKey label={say.picture.turnBack} sign="↺ 1°" onNudge={() => turn(-1)} />
      <NudgeKey label={say.picture.turnOn} sign="↻ 1°" onNudge={() => turn(1)} />
      <NudgeKey label={say.picture.turnQuarter} sign="↻ 90°" onNudge={() => turn(90)} />
    </div>
  );
}
