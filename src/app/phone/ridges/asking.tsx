import { createSignal, onCleanup, Show } from 'solid-js';
import type { PanelProps } from '../panel';
import type { Looking } from './looking';
import { RidgesResult } from './result';
import { ScaleForm } from './scale-form';
import { Task } from './task';
import say from './words/en';

/** What is asked of an open picture, and what it says. */
export function RidgesAsking(props: PanelProps & { looking: Looking }) {
  const scale = () => props.looking.scale;
  const [roomy, setRoomy] = createSignal(false);
  // The picture first, the form in a task of its own: on a slow phone both at once would hold up the fingers.
  const later = setTimeout(() => setRoomy(true));
  onCleanup(() => clearTimeout(later));
  return (
    <div>
      <Show when={roomy()}>
        <ScaleForm
          entry={scale().entry()}
          distance={scale().distance()}
          layer={scale().layer()}
          keptLayer={scale().keptLayer()}
          unit={scale().unit()}
          mark={props.mark}
          onEntry={(part) => scale().enter(part)}
        />
      </Show>
      <p>
        <button
          type="button"
          class="button button-main"
          disabled={props.looking.wanting() !== '' || props.looking.progress() !== undefined}
          onClick={() => void props.looking.look()}
        >
          {say.looking.key}
        </button>
      </p>
      <Show when={props.looking.wanting()}>{(words) => <p class="small">{words()}</p>}</Show>
      <Show when={props.looking.progress()}>
        {(now) => <Task progress={now()} onCancel={() => props.looking.stop()} />}
      </Show>
      <Show when={props.looking.trouble()}>
        {(words) => (
          <p class="problem" role="alert">
            {words()}
          </p>
        )}
      </Show>
      <Show when={props.looking.found()}>
        {(now) => (
          <RidgesResult
            finding={now().finding}
            strip={now().strip}
            stale={props.looking.isStale()}
            unit={scale().unit()}
            mark={props.mark}
            take={props.take}
            onTake={(taken) => props.onTake(taken)}
          />
        )}
      </Show>
    </div>
  );
}
