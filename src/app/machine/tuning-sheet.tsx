import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import type { Machine } from '../../machine/schema';
import { ChoiceField } from '../../ui/choice-field';
import { cardOf, cardText } from './card';
import { cardPlaces } from '../desk/card-places';
import { useRecords } from '../desk/context';
import { OfMachine } from '../desk/of-machine';
import { printDay } from '../desk/time';
import say from './words/en';
import '../../ui/print.css';
import './card.css';

const PAPERS = [
  { id: 'a5', label: say.card.papers.a5 },
  { id: 'half-letter', label: say.card.papers['half-letter'] },
] as const;

/** Lines up to which each size of type keeps the card on one sheet. */
const SIZES = [
  { upTo: 24, size: 'roomy' },
  { upTo: 44, size: 'dense' },
  { upTo: 70, size: 'tiny' },
  { upTo: Infinity, size: 'least' },
] as const;

/** A machine's values to keep, on one sheet to hang on it. */
export function TuningSheet() {
  return <OfMachine>{(machine) => <Card machine={machine()} />}</OfMachine>;
}

function Card(props: { machine: Machine }) {
  const records = useRecords();
  const [places] = createResource(cardPlaces);
  // Only the first choice is given; after that the person picks.
  const [paper, setPaper] = createSignal<string>(records.settings().lengthUnit === 'in' ? 'half-letter' : 'a5');
  const groups = createMemo(() => cardOf(props.machine, places() ?? [], records.settings().mark));
  const size = () => {
    const lines = groups().reduce((sum, group) => sum + group.rows.length + 1.5, 0);
    return SIZES.find(({ upTo }) => lines <= upTo)?.size;
  };
  return (
    <>
      <div class="no-print">
        <h1>{say.card.title}</h1>
        <p>
          {say.card.of} <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>
        </p>
        <ChoiceField label={say.card.paper} options={PAPERS} value={paper()} onPick={setPaper} />
        <div class="row section">
          <button type="button" class="button button-main" disabled={groups().length === 0} onClick={() => print()}>
            {say.card.print}
          </button>
          <Hand name={props.machine.name} text={() => cardText(props.machine.name, groups(), new Date())} />
        </div>
      </div>
      <Show when={groups().length > 0} fallback={<p class="faint">{places() ? say.card.nothing : say.lookingUp}</p>}>
        <article class="card section" data-paper={paper()} data-size={size()}>
          <header>
            <h2>{props.machine.name}</h2>
            <p>{say.card.date(printDay(new Date().toISOString()))}</p>
          </header>
          <div class="card-groups">
            <For each={groups()}>
              {(group) => (
                <section>
                  <h3>{group.name}</h3>
                  <table>
                    <tbody>
                      <For each={group.rows}>
                        {(row) => (
                          <tr>
                            <th scope="row">
                              {row.label} <span class="card-origin">{row.origin}</span>
                            </th>
                            <td classList={{ 'card-value': true, 'card-option': row.origin === '' }}>{row.value}</td>
                          </tr>
                        )}
                      </For>
                    </tbody>
                  </table>
                </section>
              )}
            </For>
          </div>
        </article>
      </Show>
    </>
  );
}

/** Hands the card on as plain text: to another app where the phone can, else to the clipboard, else to the eye. */
function Hand(props: { name: string; text: () => string }) {
  const [told, setTold] = createSignal<string>();
  const [shown, setShown] = createSignal(false);
  const share = async () => {
    setTold(undefined);
    try {
      await navigator.share({ title: props.name, text: props.text() });
    } catch (error) {
      // Closing the sheet of apps without picking one is no failure.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      await copy();
    }
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(props.text());
      setTold(say.card.copied);
    } catch {
      setShown(true);
      setTold(say.card.notCopied);
    }
  };
  return (
    <>
      <Show when={'share' in navigator}>
        <button type="button" class="button" onClick={() => void share()}>
          {say.card.send}
        </button>
      </Show>
      <button type="button" class="button" onClick={() => void copy()}>
        {say.card.copy}
      </button>
      <p role="status" class="small">
        {told()}
      </p>
      <Show when={shown()}>
        <textarea class="text-input" rows="8" readonly aria-label={say.card.text} value={props.text()} />
      </Show>
    </>
  );
}
