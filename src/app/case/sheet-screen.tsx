import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { unreadable } from '../../diagnosis/pick';
import { proofPhoto } from '../../machine/keys';
import type { Case, Machine } from '../../machine/schema';
import { caseSheet, sheetText, type ReadingLines } from './sheet';
import { loadFacts, nameIn } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { OfCase } from './of-case';
import { photoAddress } from '../desk/photo';
import { titleOf, verdictWord } from '../desk/reading-entry';
import './case.css';
import '../../ui/print.css';

/** A case on one sheet: to print, to send as text, to save. */
export function CaseSheetScreen() {
  return (
    <OfCase>
      {(found, machine) => (
        <Show when={unreadable(catalogue, found())} fallback={<Sheet case={found()} machine={machine()} />}>
          {(reason) => <p class="problem">{reason()}</p>}
        </Show>
      )}
    </OfCase>
  );
}

function Sheet(props: { case: Case; machine: Machine }) {
  const records = useRecords();
  const [told, setTold] = createSignal('');
  const [readings] = createResource(
    () => ({ one: props.case, tick: records.readingsTick() }),
    async ({ one }): Promise<readonly ReadingLines[]> => {
      const entries = one.log.flatMap((entry) => (entry.kind === 'answer' && entry.reading ? [entry.reading] : []));
      const taken = [...entries, ...(one.closed?.reading ? [one.closed.reading] : [])];
      const found = await Promise.all(taken.map((at) => records.readingAt({ machine: one.machine, ...at })));
      return Promise.all(
        found.flatMap((reading) => {
          if (!reading) return [];
          return [
            loadFacts(reading.calculator).then(({ calculator }) => ({
              id: reading.id,
              reading,
              title: titleOf(reading.calculator),
              lines: [
                [verdictWord(reading.calculator, reading.verdict).toLowerCase(), reading.headline]
                  .filter(Boolean)
                  .join('. '),
                ...Object.entries(reading.results).map(
                  ([symbol, { text }]) => `${nameIn(calculator, reading, symbol)} ${text}`,
                ),
              ],
            })),
          ];
        }),
      );
    },
  );
  const photoAt = (id: string) => ({
    machine: props.case.machine,
    at: props.case.opened,
    id,
    tick: records.readingsTick(),
  });
  const [before] = createResource(
    () => photoAt(props.case.id),
    (at) => records.photoOf(at),
  );
  const [after] = createResource(
    () => photoAt(proofPhoto(props.case.id)),
    (at) => records.photoOf(at),
  );
  const sheet = createMemo(() => caseSheet(catalogue, props.case, props.machine.name, readings.latest ?? []));
  const text = () => sheetText(sheet());
  const send = async () => {
    try {
      await navigator.share({ title: sheet().title, text: text() });
      setTold('');
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return;
      setTold('This phone did not take the text. Copy it instead.');
    }
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text());
      setTold('The text is copied.');
    } catch {
      setTold('This browser does not let the text be copied. Save it as a file instead.');
    }
  };
  const save = () => {
    const address = URL.createObjectURL(new Blob([text()], { type: 'text/plain' }));
    const link = document.createElement('a');
    link.href = address;
    link.download = `trammel-case-${props.case.opened.slice(0, 10)}.txt`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
  };
  return (
    <>
      <h1 class="unseen">The case on one sheet</h1>
      <div class="row no-print">
        <A class="button" href={`/case/${props.case.machine}/${props.case.id}`}>
          Back to the case
        </A>
        <button type="button" class="button button-main" onClick={() => window.print()}>
          Print
        </button>
        <Show when={'share' in navigator}>
          <button type="button" class="button" onClick={() => void send()}>
            Send as text
          </button>
        </Show>
        <button type="button" class="button" onClick={() => void copy()}>
          Copy the text
        </button>
        <button type="button" class="button" onClick={save}>
          Save the text
        </button>
      </div>
      <p role="status" class="small no-print">
        {told()}
      </p>
      <article class="card check-card case-sheet" data-ready={readings.state === 'ready'}>
        <header>
          <h2>{sheet().title}</h2>
          <p>{sheet().head}</p>
        </header>
        <Show when={sheet().cautions.length > 0}>
          <div class="cautions">
            <strong>First</strong>
            <ul>
              <For each={sheet().cautions}>{(caution) => <li>{caution}</li>}</For>
            </ul>
          </div>
        </Show>
        <For each={sheet().parts}>
          {(part) => (
            <section>
              <h3>{part.title}</h3>
              <For each={part.lines}>
                {(line) => <p classList={{ 'case-number': line.startsWith('   ') }}>{line}</p>}
              </For>
            </section>
          )}
        </For>
        <div class="case-photos">
          <Show when={before.latest}>
            {(kept) => (
              <figure>
                <img src={photoAddress(kept())} alt="The complaint" />
                <figcaption class="small">As it came</figcaption>
              </figure>
            )}
          </Show>
          <Show when={after.latest}>
            {(kept) => (
              <figure>
                <img src={photoAddress(kept())} alt="The reprint" />
                <figcaption class="small">After the mend</figcaption>
              </figure>
            )}
          </Show>
        </div>
      </article>
    </>
  );
}
