import { createUniqueId, Show } from 'solid-js';

/** A limit that is assumed until the person knows better. */
export function SlopeAssumed(props: {
  label: string;
  text: string;
  problem: string | undefined;
  onText: (text: string) => void;
}) {
  const id = createUniqueId();
  return (
    <div class="level-assumed">
      <label for={id}>{props.label}</label>
      <input
        id={id}
        class="text-input"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        value={props.text}
        aria-invalid={props.problem !== undefined}
        aria-describedby={`${id}-problem`}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
      <div id={`${id}-problem`}>
        <Show when={props.problem}>{(why) => <p class="problem">{why()}</p>}</Show>
      </div>
    </div>
  );
}
