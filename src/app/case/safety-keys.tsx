import { For } from 'solid-js';
import { SAFETIES, type Safety } from './safety';
import say from './words/en';

/** Done, will do, cannot: one of them can be ticked. */
export function SafetyKeys(props: { said: Safety | undefined; onTick: (safety: Safety) => void }) {
  return (
    <div class="case-keys" role="group" aria-label={say.safe.ask}>
      <For each={SAFETIES}>
        {(safety) => (
          <button
            type="button"
            class="button case-answer"
            classList={{ 'button-main': safety === (props.said ?? 'done') }}
            aria-pressed={props.said === safety}
            onClick={() => props.onTick(safety)}
          >
            {say.safe.ticks[safety]}
          </button>
        )}
      </For>
    </div>
  );
}
