import { createSignal, Show, type ParentProps } from 'solid-js';

/**
 * A section that folds. What is folded away is not built: it costs nothing while someone types.
 * `open` holds until the person folds or unfolds it.
 */
export function Fold(props: ParentProps<{ title: string; open?: boolean }>) {
  const [byHand, setByHand] = createSignal<boolean>();
  const open = () => byHand() ?? props.open === true;
  return (
    <details class="section" open={open()} onToggle={(event) => setByHand(event.currentTarget.open)}>
      <summary>
        <h2>{props.title}</h2>
      </summary>
      <Show when={open()}>{props.children}</Show>
    </details>
  );
}
