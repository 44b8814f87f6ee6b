import { Show } from 'solid-js';
import { ChoiceField } from '../../../ui/choice-field';
import type { Listening } from './listening';
import say from './words/en';

const COUNTS = ['3', '5', '7'].map((count) => ({ id: count, label: count }));

/** How many plucks to wait for, and the keys that listen, stop and hand the note over. */
export function NoteKeys(props: { listening: Listening; take: string; onListen: () => void; onTake: () => void }) {
  const tally = () => props.listening.tally;
  const isOn = () => props.listening.ear.isOn();
  const found = () => tally().combined().found !== undefined;
  const listenKey = () => {
    if (tally().plucks().length === 0) return say.keys.listen;
    return tally().missing() > 0 ? say.keys.listenFor(tally().missing()) : say.keys.again;
  };
  return (
    <>
      <Show when={!isOn()}>
        <ChoiceField
          label={say.keys.wanted}
          options={COUNTS}
          value={String(tally().wanted())}
          onPick={(id) => props.listening.want(Number(id))}
        />
      </Show>
      <div class="ear-keys">
        <Show
          when={isOn()}
          fallback={
            <button
              type="button"
              class="button"
              classList={{ 'button-main': !found() }}
              onClick={() => props.onListen()}
            >
              {listenKey()}
            </button>
          }
        >
          <Show when={props.listening.ear.phase() === 'listening'}>
            <button type="button" class="button note-now" onClick={() => props.listening.plucked()}>
              {say.keys.plucked}
            </button>
          </Show>
          <button type="button" class="button" onClick={() => props.listening.stop()}>
            {say.keys.stop}
          </button>
        </Show>
        <Show when={tally().plucks().length > 0 || isOn()}>
          <button
            type="button"
            class="button"
            classList={{ 'button-main': found() }}
            disabled={!found()}
            onClick={() => props.onTake()}
          >
            {props.take}
          </button>
        </Show>
      </div>
    </>
  );
}
