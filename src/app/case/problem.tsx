import { Show } from 'solid-js';

/** What is wrong with what was just done, read out as it comes up. */
export function Problem(props: { sentence: string | undefined }) {
  return (
    <Show when={props.sentence}>
      <p class="problem" role="alert">
        {props.sentence}
      </p>
    </Show>
  );
}
