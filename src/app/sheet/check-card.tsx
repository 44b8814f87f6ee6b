import { createSignal, For, onCleanup, Show, type JSX } from 'solid-js';
import { applies, type Calculator } from '../../engine/calculator';
import { compareWays, inSentence, unitOf } from '../../engine/evaluate';
import { printCitation } from '../../reference/citation';
import type { Bench } from './bench';
import { printKnown, printOrigin, printSymbol } from './print';
import { verdictWord } from '../desk/reading-entry';
import { printDay } from '../desk/time';
import { WaysTable } from '../desk/ways-table';
import '../../ui/print.css';

interface Sheet {
  id: string;
  title: string;
  machine: string | undefined;
  calculator: Calculator;
  bench: Bench;
  drawing: () => JSX.Element;
}

/** What the printer gets of a check in place of the screen: made when printing begins, whoever began it. */
export function CheckCard(props: Sheet) {
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
      <Card {...props} />
    </Show>
  );
}

/** One card: cautions, the thing to do, the drawing, the steps, what it rests on. */
function Card(props: Sheet) {
  const evaluation = () => props.bench.shown().evaluation;
  const situation = () => props.bench.situation();
  const ways = () => compareWays(props.calculator, evaluation(), situation());
  const options = () =>
    Object.entries(props.calculator.choices).flatMap(([name, spec]) => {
      const option = evaluation().choices[name];
      if (!applies(spec.when, evaluation().choices) || option === undefined) return [];
      return [{ label: spec.label, value: spec.options[option]?.label ?? option, origin: '' }];
    });
  // What seldom changes stands on the card only where it was entered.
  const readings = () =>
    Object.entries(props.calculator.inputs).flatMap(([symbol, spec]) => {
      const state = evaluation().inputs[symbol];
      if (!state?.ok || (spec.seldom && state.origin === 'typical')) return [];
      const value = printSymbol(props.calculator, evaluation(), situation(), symbol, false) ?? '';
      return [{ label: spec.label, value, origin: printOrigin(state, situation().mark) }];
    });
  const checks = () =>
    evaluation().verdict.checks.flatMap(({ limit }) => {
      const result = evaluation().outcomes[limit.of];
      const unit = unitOf(props.calculator, evaluation(), limit.of, situation());
      if (!result?.ok || !unit) return [];
      const end = (words: string, symbol: string | undefined) =>
        symbol === undefined
          ? []
          : [`${words} ${printSymbol(props.calculator, evaluation(), situation(), symbol, false) ?? ''}`];
      const against = [...end('at least', limit.min), ...end('at most', limit.max)].join(', ');
      return [
        {
          label: limit.label,
          value: printKnown(result, unit, situation().mark),
          origin: `${against}${limit.symmetric ? ' either way' : ''}; ${inSentence(printCitation(limit.cite))}`,
        },
      ];
    });
  return (
    <article class="card check-card">
      <header>
        <h2>{props.title}</h2>
        <p>{[props.machine, printDay(new Date().toISOString())].filter((part) => part !== undefined).join(', ')}</p>
      </header>
      <Show when={props.calculator.cautions.length > 0}>
        <div class="cautions">
          <strong>First</strong>
          <ul>
            <For each={props.calculator.cautions}>{(caution) => <li>{caution}</li>}</For>
          </ul>
        </div>
      </Show>
      <p class="bench-headline">
        <span class="bench-word">{verdictWord(props.id, evaluation().verdict.state)}.</span>{' '}
        {evaluation().instruction?.headline ?? evaluation().cannot}
      </p>
      <div class="check-card-body">
        <div>
          {props.drawing()}
          <table>
            <tbody>
              <For each={[...checks(), ...options(), ...readings()]}>
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
                <h3>Steps</h3>
                <ol>
                  <For each={instruction().steps}>{(step) => <li>{step}</li>}</For>
                </ol>
              </>
            )}
          </Show>
          <h3>Proof</h3>
          <p>{props.calculator.proof}</p>
          <Show when={evaluation().typical.length > 0}>
            <p>Rests on typical values: {evaluation().typical.map(inSentence).join('; ')}.</p>
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
