import { createMemo, createResource, For, Show } from 'solid-js';
import { catalogue } from '../../diagnosis/catalogue';
import { unreadable } from '../../diagnosis/pick';
import { proofPhoto } from '../../machine/keys';
import type { Case, Machine } from '../../machine/schema';
import { Cautions } from './cautions';
import { OfCase } from './of-case';
import { caseSheet, sheetText } from './sheet';
import { SheetKeys } from './sheet-keys';
import { readingsOfCase } from './sheet-readings';
import say from './words/en';
import { useRecords } from '../desk/context';
import { photoAddress } from '../desk/photo';
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
  const [readings] = createResource(
    () => ({ one: props.case, tick: records.readingsTick() }),
    ({ one }) => readingsOfCase(records.readingAt, one),
  );
  const sheet = createMemo(() => caseSheet(catalogue, props.case, props.machine.name, readings.latest ?? []));
  return (
    <>
      <h1 class="unseen">{say.sheet.title}</h1>
      <SheetKeys
        back={`/case/${props.case.machine}/${props.case.id}`}
        title={sheet().title}
        text={sheetText(sheet())}
        day={props.case.opened.slice(0, 10)}
      />
      <article class="card check-card case-sheet" data-ready={readings.state === 'ready'}>
        <header>
          <h2>{sheet().title}</h2>
          <p>{sheet().head}</p>
        </header>
        <Show when={sheet().cautions.length > 0}>
          <Cautions>
            <For each={sheet().cautions}>{(caution) => <li>{caution}</li>}</For>
          </Cautions>
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
          <KeptPhoto case={props.case} id={props.case.id} alt={say.photo.complaint} caption={say.photo.before} />
          <KeptPhoto
            case={props.case}
            id={proofPhoto(props.case.id)}
            alt={say.photo.reprint}
            caption={say.photo.after}
          />
        </div>
      </article>
    </>
  );
}

/** One photo of a case, where it is kept. */
function KeptPhoto(props: { case: Case; id: string; alt: string; caption: string }) {
  const records = useRecords();
  const [photo] = createResource(
    () => ({
      machine: props.case.machine,
      at: props.case.opened,
      id: props.id,
      tick: records.readingsTick(),
    }),
    (at) => records.photoOf(at),
  );
  return (
    <Show when={photo.latest}>
      {(kept) => (
        <figure>
          <img src={photoAddress(kept())} alt={props.alt} />
          <figcaption class="small">{props.caption}</figcaption>
        </figure>
      )}
    </Show>
  );
}
