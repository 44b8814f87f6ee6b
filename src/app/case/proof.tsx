import { createResource, createSignal, For, Show } from 'solid-js';
import { listed } from '../../engine/list';
import { catalogue } from '../../diagnosis/catalogue';
import { causeOf } from '../../diagnosis/pick';
import type { CauseId } from '../../diagnosis/types';
import { promisedOf } from '../../machine/history';
import { proofPhoto } from '../../machine/keys';
import type { Case, Reading } from '../../machine/schema';
import { LIMITS } from '../../machine/limits';
import { readingNote } from './note';
import { Problem } from './problem';
import say from './words/en';
import { useRecords } from '../desk/context';
import { printPromised } from '../desk/promised';
import { titleOf, verdictWord } from '../desk/reading-entry';
import { ReadingPhoto } from '../desk/reading-photo';
import { printTime } from '../desk/time';
import { StopAt } from '../desk/stop';
import { createTypedText, OtherText } from '../desk/typed-text';

/** By the count; by the clock where an earlier version kept one of the two. */
const isAfter = (reading: Reading, cure: Case['log'][number] | undefined): boolean =>
  cure?.ordinal === undefined || reading.ordinal === 0 ? reading.at > (cure?.at ?? '') : reading.ordinal > cure.ordinal;

/** Readings offered as a proof: the newest ones. */
const OFFERED = 6;

/** A mend has cured: what shows it closes the case, a reading kept after the mend or the reprint. */
export function CaseProof(props: { case: Case; cause: CauseId }) {
  const records = useRecords();
  const words = createTypedText(() => ({ machine: props.case.machine, case: props.case.id, field: 'proof' }));
  const [picked, setPicked] = createSignal<Reading>();
  const [problem, setProblem] = createSignal<string>();
  const cause = () => causeOf(catalogue, props.cause);
  const cure = () => props.case.log.filter((entry) => entry.kind === 'mended').find(({ cured }) => cured);
  const [page] = createResource(
    () => ({ machine: props.case.machine, tick: records.readingsTick() }),
    ({ machine }) => records.latestReadings(machine, { limit: OFFERED }),
  );
  const after = () => (page.latest?.records ?? []).filter((reading) => isAfter(reading, cure()));
  const [promises] = createResource(after, async (readings) =>
    Promise.all(
      readings.map(async (reading) => {
        const before = await records.readingBefore(reading);
        return { id: reading.id, said: before ? promisedOf(before, reading) : [] };
      }),
    ),
  );
  const promised = (reading: Reading) =>
    (promises.latest?.find(({ id }) => id === reading.id)?.said ?? []).map((one) =>
      printPromised(one, records.settings().mark),
    );
  const photo = () => ({ machine: props.case.machine, at: props.case.opened, id: proofPhoto(props.case.id) });
  const close = async () => {
    const reading = picked();
    const shown = reading !== undefined || words.text().trim() !== '' || (await records.photoOf(photo())) !== undefined;
    if (!shown) {
      setProblem(say.proof.ask);
      return;
    }
    const said = words.text().trim() || (reading ? readingNote(reading) : say.proof.seePhoto);
    const how = cure()?.remedy === 'replace' ? 'replaced' : 'cured';
    const proof = reading ? { reading: { at: reading.at, id: reading.id } } : {};
    const closed = { at: new Date().toISOString(), how, proof: said, ...proof } as const;
    if (await records.changeCase(props.case.machine, props.case.id, (old) => ({ ...old, closed }))) await words.used();
  };
  return (
    <>
      <p class="case-kicker">{say.proof.kicker}</p>
      <h2>{say.step.names.proof}</h2>
      <p>{cause().proof}</p>
      <Show when={listed.find(({ id }) => id === cause().mend.calculator)?.id} keyed>
        {(id) => (
          <p class="small">
            <a href={`#/check/${id}`}>{say.proof.again(titleOf(id))}</a>
          </p>
        )}
      </Show>
      <Show when={after().length > 0} fallback={<p class="small faint">{say.proof.none}</p>}>
        <fieldset class="choice">
          <legend>{say.proof.readings}</legend>
          <For each={after()}>
            {(reading) => (
              <button
                type="button"
                class="case-symptom"
                aria-pressed={picked()?.id === reading.id}
                onClick={() => setPicked(picked()?.id === reading.id ? undefined : reading)}
              >
                <strong>
                  {say.proof.reading(titleOf(reading.calculator), verdictWord(reading.calculator, reading.verdict))}
                </strong>
                <span class="small">{printTime(reading.at)}</span>
                <For each={promised(reading)}>{(sentence) => <span class="small">{sentence}</span>}</For>
              </button>
            )}
          </For>
        </fieldset>
      </Show>
      <ReadingPhoto reading={photo()} title={say.photo.reprint} ask={say.photo.askReprint} alt={say.photo.reprint} />
      <label class="case-line">
        {say.proof.words}
        <textarea
          class="text-input"
          rows="2"
          maxlength={LIMITS.line}
          value={words.text()}
          onInput={(event) => words.type(event.currentTarget.value)}
        />
      </label>
      <OtherText typed={words} />
      <StopAt text={words.text()} />
      <Problem sentence={problem()} />
      <button type="button" class="button button-main case-wide" onClick={() => void close()}>
        {say.proof.close}
      </button>
    </>
  );
}
