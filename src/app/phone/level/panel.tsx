import './level.css';
import { Show } from 'solid-js';
import { ENOUGH_PAIRS } from '../../../signal/level-reversal';
import type { PanelProps } from '../panel';
import { createAssumed, SlopeAssumed } from './assumed';
import { SlopeResult } from './result';
import { createSlopeSession } from './session';
import { SlopeStart, SlopeTaking, SlopeUndo } from './taking';
import say from './words/en';

/** The phone as a level: two readings half a turn apart, from which its own error drops out. */
export function SlopePanel(props: PanelProps) {
  const assumed = createAssumed(() => props.mark);
  const session = createSlopeSession(() => ({
    laying: assumed.laying.taken().value,
    direction: assumed.direction.taken().value,
  }));
  const { level, pairs } = session.readings;
  return (
    <div class="level">
      <Show when={session.problem()}>{(why) => <p class="problem">{say.problem[why()]}</p>}</Show>
      <Show when={session.running() === 'on'} fallback={<SlopeStart session={session} />}>
        <SlopeTaking session={session} />
      </Show>
      <div role="status">
        <Show when={level()}>{(now) => <SlopeResult level={now()} pairs={pairs()} mark={props.mark} />}</Show>
      </div>
      <Show when={level()}>
        {(now) => (
          <>
            <button
              type="button"
              class="button button-main level-key"
              onClick={() => props.onTake({ value: now().slope, halfWidth: now().halfWidth })}
            >
              {props.take}
            </button>
            <p class="faint small">
              {say.result.plus} {say.result.morePairs(ENOUGH_PAIRS)}
            </p>
          </>
        )}
      </Show>
      <SlopeUndo session={session} />
      <SlopeAssumed assumed={assumed} />
    </div>
  );
}
