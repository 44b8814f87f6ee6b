import { For, Show } from 'solid-js';
import type { Calculator } from '../../engine/calculator';
import say from './words/en';

/** What to do or leave alone before anything else; nothing where there is nothing. */
export function Cautions(props: { calculator: Calculator }) {
  return (
    <Show when={props.calculator.cautions.length > 0}>
      <div class="cautions">
        <strong>{say.cautions.title}</strong>
        <ul>
          <For each={props.calculator.cautions}>{(caution) => <li>{caution}</li>}</For>
        </ul>
      </div>
    </Show>
  );
}
