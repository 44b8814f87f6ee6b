import { For, type JSX } from 'solid-js';
import { Drawing } from '../../../ui/drawing';

/** How to take a photo: a drawing, and what to mind. */
export function How(props: { height: number; label: string; list: readonly string[]; children: JSX.Element }) {
  return (
    <>
      <Drawing width={340} height={props.height} label={props.label}>
        {props.children}
      </Drawing>
      <ul>
        <For each={props.list}>{(one) => <li>{one}</li>}</For>
      </ul>
    </>
  );
}
