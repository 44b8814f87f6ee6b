import { For } from 'solid-js';
import { canKeepAwake } from '../../../instrument/wake-lock';
import { Fold } from '../../../ui/fold';
import say from './words/en';

export function NoteCautions() {
  return (
    <section class="cautions" aria-label={say.cautions.label}>
      <b>{say.cautions.first}</b>
      <ul>
        <For each={say.cautions.list}>{(one) => <li>{one}</li>}</For>
      </ul>
    </section>
  );
}

/** How a belt is plucked so that its note is its own. */
export function NoteHow(props: { open: boolean }) {
  return (
    <Fold title={say.how.title} open={props.open}>
      <ol>
        <For each={say.how.steps}>{(step) => <li>{step}</li>}</For>
      </ol>
      <p class="small faint">
        {canKeepAwake() ? say.how.staysOn : say.how.mayGoOff} {say.how.notKept}
      </p>
    </Fold>
  );
}
