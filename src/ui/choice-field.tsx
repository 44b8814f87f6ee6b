import { createUniqueId, Index, Show } from 'solid-js';
import type { Option } from './quantity-field';

/** One of a few, as keys for a thumb. */
export function ChoiceField(props: {
  label: string;
  options: readonly Option[];
  value: string;
  hint?: string | undefined;
  onPick: (id: string) => void;
}) {
  const name = createUniqueId();
  return (
    <fieldset class="choice">
      <legend>{props.label}</legend>
      <div class="choice-options">
        <Index each={props.options}>
          {(option) => (
            <label>
              <input
                type="radio"
                name={name}
                checked={option().id === props.value}
                onChange={() => props.onPick(option().id)}
              />
              {option().label}
            </label>
          )}
        </Index>
      </div>
      <Show when={props.hint}>
        <p class="field-hint">{props.hint}</p>
      </Show>
    </fieldset>
  );
}
