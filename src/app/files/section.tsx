import { Show } from 'solid-js';
import type { Machine } from '../../machine/schema';
import type { Store } from '../../machine/store';
import { SaveFile } from './out';
import { TakeInFile } from './in';
import say from './words/en';

/** Saving to files and taking files in; for one machine, if it is given, saving only. */
export function Files(props: { store: Promise<Store>; machine?: Machine }) {
  return (
    <section class="section" id="files">
      <h2>{say.title}</h2>
      <SaveFile store={props.store} machine={props.machine} />
      <Show when={!props.machine}>
        <TakeInFile store={props.store} />
      </Show>
    </section>
  );
}
