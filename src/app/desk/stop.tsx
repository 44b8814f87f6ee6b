import { createMemo, For, Show, type ParentProps } from 'solid-js';
import { dangerIn } from '../../diagnosis/danger';
import { firstActs } from '../../diagnosis/stop';
import type { FirstAct } from '../../diagnosis/types';
import say from './words/en';
import './stop.css';

/** What is to be done first where something may burn or give a shock. */
export function FirstActs(props: ParentProps<{ first: FirstAct }>) {
  return (
    <div class="stop">
      <p class="stop-kicker">{say.stop.kicker}</p>
      <h2>{firstActs(props.first).title}</h2>
      <ol>
        <For each={firstActs(props.first).acts}>{(act) => <li>{act}</li>}</For>
      </ol>
      <p>{say.stop.mains}</p>
      {props.children}
    </div>
  );
}

/** Under whatever a person types: the first acts, where the words tell of a danger. */
export function StopAt(props: ParentProps<{ text: string }>) {
  const danger = createMemo(() => dangerIn(props.text)?.first);
  return (
    <Show when={danger()}>
      {(first) => (
        <div role="alert">
          <FirstActs first={first()}>{props.children}</FirstActs>
        </div>
      )}
    </Show>
  );
}
