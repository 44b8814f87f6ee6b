import { createUniqueId, For, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { drawingOf } from './drawings';
import { termsIn, type TermId } from './find';
import say from './words/en';
import './terms.css';

export const TERMS_TITLE = say.title;

const Meaning = (props: { id: TermId }) => (
  <>
    <p>{say.terms[props.id].line}</p>
    <Show when={drawingOf[props.id]}>{(drawing) => <Dynamic component={drawing()} />}</Show>
  </>
);

/** The trade's words in these texts, each a key that opens its line over the page: nothing beneath it moves. */
export function TermKeys(props: { texts: readonly string[] }) {
  const id = createUniqueId();
  return (
    <div class="terms no-print">
      <For each={termsIn(props.texts)}>
        {(term) => (
          <>
            <button type="button" class="button term-key" popovertarget={`${id}-${term}`}>
              {say.terms[term].name}
            </button>
            <div class="term-line" id={`${id}-${term}`} popover="auto">
              <strong>{say.terms[term].name}</strong>
              <Meaning id={term} />
            </div>
          </>
        )}
      </For>
    </div>
  );
}
