import { Show } from 'solid-js';
import type { PanelEar } from './ear';
import say from './words/en';

/** What is wrong with the microphone, and what to do about it. */
export function EarTrouble(props: { ear: PanelEar; instead: string }) {
  return (
    <Show when={props.ear.trouble()}>
      {(trouble) => (
        <div class="problem" role="alert">
          <p>{say.trouble[trouble()]}</p>
          <p>{props.instead}</p>
          <Show when={trouble() === 'suspended'}>
            <button type="button" class="button" onClick={() => props.ear.resume()}>
              {say.goOn}
            </button>
          </Show>
        </div>
      )}
    </Show>
  );
}

/** What the phone does to the sound that makes the answer doubtful; `effect` says what may come of it. */
export function EarDoubts(props: { ear: PanelEar; effect: string }) {
  return (
    <>
      <Show when={props.ear.meddling().length > 0}>
        <p class="due small">
          {say.meddling.sentence(props.ear.meddling().map((one) => say.meddling.names[one]))} {props.effect}
        </p>
      </Show>
      <Show when={props.ear.isOn()}>
        <p class="small faint">{say.meddling.unknown}</p>
      </Show>
      <Show when={props.ear.rateOff()}>
        <p class="problem" role="alert">
          {say.rateOff}
        </p>
      </Show>
    </>
  );
}
