import { createMemo, createResource, For, Show } from 'solid-js';
import { A, useNavigate, useParams } from '@solidjs/router';
import type { Pair } from '../../machine/history';
import type { Machine, Reading } from '../../machine/schema';
import { LIMITS } from '../../machine/schema-parts';
import { formatMeasured } from '../../quantity/format';
import { toolById } from '../../reference/tools';
import { VerdictMark } from '../../ui/verdict-mark';
import { loadFacts, nameIn, unitIn, whole, type CheckFacts } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { OfMachine } from '../desk/of-machine';
import { Outcome } from './outcome';
import { printTime } from '../desk/time';
import { titleOf, verdictWord } from '../desk/reading-entry';
import { ReadingPhoto } from '../desk/reading-photo';
import say from './words/en';
import './screen.css';

const TIME_LENGTH = '2026-01-01T00:00:00.000Z'.length;

/** One reading, whole: what was entered, what came out, what was to be done. */
export function ReadingScreen() {
  const records = useRecords();
  const params = useParams();
  const taken = () => {
    const [machine = '', both = ''] = [params.id, params.taken];
    return { machine, at: both.slice(0, TIME_LENGTH), id: both.slice(TIME_LENGTH + 1) };
  };
  const [reading] = createResource(
    () => ({ ...taken(), tick: records.readingsTick() }),
    async (at) => ({ found: await records.readingAt(at) }),
  );
  return (
    <OfMachine>
      {(machine) => (
        <Show when={reading.latest} fallback={<p>{say.lookingUp}</p>}>
          {(answer) => (
            <Show
              when={answer().found}
              fallback={
                <>
                  <h1>{say.reading.gone}</h1>
                  <p>
                    {say.reading.mayBeRemoved} <A href={`/machines/${machine().id}`}>{machine().name}</A>
                  </p>
                </>
              }
            >
              {(found) => <ReadingSheet machine={machine()} reading={found()} />}
            </Show>
          )}
        </Show>
      )}
    </OfMachine>
  );
}

function ReadingSheet(props: { machine: Machine; reading: Reading }) {
  const records = useRecords();
  const navigate = useNavigate();
  const [facts] = createResource(() => props.reading.calculator, loadFacts);
  const remove = async () => {
    if (await records.removeReading(props.reading)) navigate(`/machines/${props.machine.id}`);
  };
  return (
    <>
      <h1>{titleOf(props.reading.calculator)}</h1>
      <p>
        {say.reading.on(printTime(props.reading.at))} <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>
      </p>
      <div class="bench-line section">
        <VerdictMark state={props.reading.verdict} />
        <div>
          <strong>{verdictWord(props.reading.calculator, props.reading.verdict)}</strong>
          <br />
          {props.reading.headline}
        </div>
      </div>
      <Show when={props.reading.steps.length > 0}>
        <ol>
          <For each={props.reading.steps}>{(step) => <li>{step}</li>}</For>
        </ol>
      </Show>
      <Show when={facts.latest}>
        {(known) => (
          <div class="two-columns">
            <div>
              <Entered reading={props.reading} facts={known()} />
              <Results reading={props.reading} facts={known()} />
            </div>
            <div>
              <Show when={props.reading.verdict === 'beyond'}>
                <WhatCameOfIt reading={props.reading} facts={known()} />
              </Show>
              <section class="section">
                <h2>{say.reading.note}</h2>
                <textarea
                  class="text-input"
                  rows="3"
                  aria-label={say.reading.note}
                  maxlength={LIMITS.note}
                  value={props.reading.note}
                  onChange={(event) => void records.noteOn(props.reading, event.currentTarget.value)}
                />
              </section>
              <ReadingPhoto reading={props.reading} />
            </div>
          </div>
        )}
      </Show>
      <div class="row section no-print">
        <A class="button" href={`/machines/${props.machine.id}/check/${props.reading.calculator}`}>
          {say.reading.overTime}
        </A>
        <button type="button" class="button" onClick={() => void remove()}>
          {say.reading.remove}
        </button>
      </div>
    </>
  );
}

interface Part {
  reading: Reading;
  facts: CheckFacts;
}

function printOrigin({ origin, tool }: Reading['entries'][string]): string {
  const name = origin === 'measured' ? toolById(tool)?.name : undefined;
  return name === undefined ? say.reading.origins[origin] : say.reading.measuredWith(name);
}

function Entered(props: Part) {
  const records = useRecords();
  const calculator = () => props.facts.calculator;
  const print = (symbol: string, { value, half }: Reading['entries'][string]) =>
    whole(formatMeasured(value, half, unitIn(calculator(), props.reading, symbol), { mark: records.settings().mark }));
  const options = () =>
    Object.entries(props.reading.choices).map(([name, option]) => {
      const spec = calculator()?.choices[name];
      return { label: spec?.label ?? name, option: spec?.options[option]?.label ?? option };
    });
  const entries = createMemo(() => {
    const order = Object.keys(calculator()?.inputs ?? {});
    return Object.entries(props.reading.entries).sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
  });
  return (
    <section class="section">
      <h2>{say.reading.entered}</h2>
      <table class="sheet-table reading-values">
        <tbody>
          <For each={options()}>
            {(one) => (
              <tr>
                <th scope="row">{one.label}</th>
                <td>{one.option}</td>
              </tr>
            )}
          </For>
          <For each={entries()}>
            {([symbol, entry]) => (
              <tr>
                <th scope="row">{nameIn(calculator(), props.reading, symbol)}</th>
                <td>
                  {print(symbol, entry)}
                  <br />
                  <span class="faint small">{printOrigin(entry)}</span>
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </section>
  );
}

/** As they were printed then. */
function Results(props: Part) {
  return (
    <section class="section">
      <h2>{say.reading.results}</h2>
      <table class="sheet-table reading-values">
        <tbody>
          <For each={Object.entries(props.reading.results)}>
            {([symbol, result]) => (
              <tr>
                <th scope="row">{nameIn(props.facts.calculator, props.reading, symbol)}</th>
                <td>{whole(result.text)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </section>
  );
}

function WhatCameOfIt(props: Part) {
  const records = useRecords();
  const [pair] = createResource(
    () => ({ before: props.reading, tick: records.readingsTick() }),
    async ({ before }): Promise<Pair> => ({ before, after: await records.readingAfter(before) }),
  );
  return (
    <Show when={pair.latest}>
      {(found) => (
        <section class="section">
          <h2>{say.reading.outcome}</h2>
          <Outcome pair={found()} facts={props.facts} />
        </section>
      )}
    </Show>
  );
}
