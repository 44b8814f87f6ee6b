import { createSignal, onCleanup, Show, type JSX } from 'solid-js';
import type { DecimalMark } from '../../../quantity/parse';
import type { Strip } from '../../../signal/ridge-types';
import type { Looking } from './looking';
import type { Standard } from './scale';
import { ScaleForm } from './scale-form';
import { Task } from './task';

/** What is asked of an open picture, and what it says. */
export function Asking<F>(props: {
  looking: Looking<F>;
  mark: DecimalMark;
  /** On the key that looks. */
  label: string;
  standards: readonly Standard[];
  children: (found: { readonly finding: F; readonly strip: Strip }) => JSX.Element;
}) {
  const scale = () => props.looking.scale;
  const [roomy, setRoomy] = createSignal(false);
  // The picture first, the form in a task of its own: on a slow phone both at once would hold up the fingers.
  const later = setTimeout(() => setRoomy(true));
  onCleanup(() => clearTimeout(later));
  return (
    <div>
      <Show when={roomy()}>
        <ScaleForm
          entry={scale().entry()}
          distance={scale().distance()}
          layer={scale().layer()}
          keptLayer={scale().keptLayer()}
          unit={scale().unit()}
          mark={props.mark}
          standards={props.standards}
          onEntry={(part) => scale().enter(part)}
        />
      </Show>
      <p>
        <button
          type="button"
          class="button button-main"
          disabled={props.looking.wanting() !== '' || props.looking.progress() !== undefined}
          onClick={() => void props.looking.look()}
        >
          {props.label}
        </button>
      </p>
      <Show when={props.looking.wanting()}>{(words) => <p class="small">{words()}</p>}</Show>
      <Show when={props.looking.progress()}>
        {(now) => <Task progress={now()} onCancel={() => props.looking.stop()} />}
      </Show>
      <Show when={props.looking.trouble()}>
        {(words) => (
          <p class="problem" role="alert">
            {words()}
          </p>
        )}
      </Show>
      <Show when={props.looking.found()} keyed>
        {(found) => props.children(found)}
      </Show>
    </div>
  );
}
