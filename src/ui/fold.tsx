import { createSignal, Show, type ParentProps } from 'solid-js';

/** A section that folds. What is folded away is not built: it costs nothing while someone types. */
export function Fold(props: ParentProps<{ title: string; open?: boolean }>) {
  // Only the first state is given; after that the person folds.
  // eslint-disable-next-line solid/reactivity
  const [open, setOpen] = createSignal(props.open === true);
  return (
    <details class="section" open={open()} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{props.title}</h2>
      </summary>
      <Show when={open()}>{props.children}</Show>
    </details>
  );
}
