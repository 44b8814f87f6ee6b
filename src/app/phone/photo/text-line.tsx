import { createUniqueId, Show } from 'solid-js';

/** A line to type a quantity into, with what is wrong with it below. */
export function TextLine(props: {
  label: string;
  text: string;
  placeholder: string;
  problem: string | undefined;
  decimal: boolean;
  onText: (text: string) => void;
}) {
  const id = createUniqueId();
  return (
    <p>
      <label for={id}>{props.label}</label>
      <input
        id={id}
        class="text-input"
        type="text"
        inputmode={props.decimal ? 'decimal' : 'numeric'}
        autocomplete="off"
        placeholder={props.placeholder}
        value={props.text}
        aria-invalid={props.problem === undefined ? undefined : 'true'}
        aria-describedby={props.problem === undefined ? undefined : `${id}-problem`}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
      <Show when={props.problem}>
        {(problem) => (
          <span class="problem measure-problem" id={`${id}-problem`} role="alert">
            {problem()}
          </span>
        )}
      </Show>
    </p>
  );
}
