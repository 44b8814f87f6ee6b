import { createMemo, createSignal, For, onCleanup, Show } from 'solid-js';
import { compareWays, inSentence } from '../../engine/evaluate';
import { verdictWord } from '../desk/reading-entry';
import { printDay } from '../desk/time';
import { WaysTable } from '../desk/ways-table';
import { cardRows } from './card-rows';
import { Cautions } from './cautions';
import { expectSentence } from './plate';
import { SheetFigure } from './figure';
import type { Sheet } from './open-sheet';
import say from './words/en';
import '../../ui/print.css';
import './check-card.css';

/** What the printer gets of a check in place of the screen: made when printing begins, whoever began it. */
export function CheckCard(props: { sheet: Sheet }) {
  const [printing, setPrinting] = createSignal(false);
  const begin = () => setPrinting(true);
  const end = () => setPrinting(false);
  window.addEventListener('beforeprint', begin);
  window.addEventListener('afterprint', end);
  onCleanup(() => {
    window.removeEventListener('beforeprint', begin);
    window.removeEventListener('afterprint', end);
  });
  return (
    <Show when={printing()}>
      <Card sheet={props.sheet} />
    </Show>
  );
}

/** One card: cautions, the thing to do, the drawing, the steps, what it rests on. */
function Card(props: { sheet: Sheet }) {
  const evaluation = () => props.sheet.bench.evaluation();
  const situation = () => props.sheet.bench.situation();
  const ways = () => compareWays(props.sheet.calculator, evaluation(), situation());
  const rows = createMemo(() => cardRows(props.sheet.calculator, evaluation(), situation()));
  return (
    <article class="card check-card">
      <header>
        <h2>{props.sheet.title}</h2>
        <p>{say.card.of(props.sheet.machine()?.name, printDay(new Date().toISOString()))}</p>
      </header>
      <Cautions calculator={props.sheet.calculator} />
      <p class="bench-headline">
        <span class="bench-word">{say.bar.word(verdictWord(props.sheet.id, evaluation().verdict.state))}</span>{' '}
        {evaluation().instruction?.sentence ?? evaluation().cannot}
      </p>
      <Show when={expectSentence(props.sheet.calculator, props.sheet.bench.moment())}>
        {(sentence) => <p>{sentence()}</p>}
      </Show>
      <div class="check-card-body">
        <div>
          <SheetFigure sheet={props.sheet} />
          <table>
            <tbody>
              <For each={rows()}>
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
        </div>
        <div>
          <Show when={evaluation().instruction}>
            {(instruction) => (
              <>
                <h3>{say.card.steps}</h3>
                <ol>
                  <For each={instruction().steps}>{(step) => <li>{step}</li>}</For>
                </ol>
              </>
            )}
          </Show>
          <h3>{say.card.proof}</h3>
          <p>{props.sheet.calculator.proof}</p>
          <Show when={evaluation().typical.length > 0}>
            <p>{say.bar.restsOn(evaluation().typical.map(inSentence))}</p>
          </Show>
        </div>
      </div>
      <Show when={ways()}>
        {(found) => (
          <section>
            <h3>{found().title}</h3>
            <WaysTable ways={found()} />
          </section>
        )}
      </Show>
    </article>
  );
}
