import { createResource, createSignal, For, Show } from 'solid-js';
import { listed } from '../../engine/list';
import { catalogue } from '../../diagnosis/catalogue';
import { causeOf } from '../../diagnosis/pick';
import type { CauseId } from '../../diagnosis/types';
import { proofPhoto } from '../../machine/keys';
import type { Case, Reading } from '../../machine/schema';
import { LIMITS } from '../../machine/schema-parts';
import { readingNote } from './note';
import { useRecords } from '../desk/context';
import { titleOf, verdictWord } from '../desk/reading-entry';
import { ReadingPhoto } from '../desk/reading-photo';
import { printTime } from '../desk/time';

/** Readings offered as a proof: the newest ones. */
const OFFERED = 6;

/** A mend has cured: what shows it closes the case, a reading kept after the mend or the reprint. */
export function CaseProof(props: { case: Case; cause: CauseId }) {
  const records = useRecords();
  const [words, setWords] = createSignal('');
  const [picked, setPicked] = createSignal<Reading>();
  const [problem, setProblem] = createSignal<string>();
  const cause = () => causeOf(catalogue, props.cause);
  const cure = () => props.case.log.find((entry) => entry.kind === 'mended' && entry.cured);
  const [page] = createResource(
    () => ({ machine: props.case.machine, tick: records.readingsTick() }),
    ({ machine }) => records.latestReadings(machine, { limit: OFFERED }),
  );
  const after = () => (page.latest?.records ?? []).filter(({ at }) => at > (cure()?.at ?? ''));
  const photo = () => ({ machine: props.case.machine, at: props.case.opened, id: proofPhoto(props.case.id) });
  const close = async () => {
    const reading = picked();
    const shown = reading !== undefined || words().trim() !== '' || (await records.photoOf(photo())) !== undefined;
    if (!shown) {
      setProblem('What shows that it is cured? Pick a reading, add a photo of the reprint, or say it in a sentence.');
      return;
    }
    const said = words().trim() || (reading ? await readingNote(reading) : 'See the photo of the reprint.');
    const how = cure()?.note === cause().replace?.headline ? 'replaced' : 'cured';
    const proof = reading ? { reading: { at: reading.at, id: reading.id } } : {};
    const at = new Date().toISOString();
    await records.changeCase(props.case.machine, props.case.id, (old) => ({
      ...old,
      closed: { at, how, proof: said, ...proof },
    }));
  };
  return (
    <>
      <p class="case-kicker">Last step</p>
      <h2>Prove the mend</h2>
      <p>{cause().proof}</p>
      <Show when={listed.find(({ id }) => id === cause().mend.calculator)?.id} keyed>
        {(id) => (
          <p class="small">
            <a href={`#/check/${id}`}>Measure it again: {titleOf(id)}</a>
          </p>
        )}
      </Show>
      <Show
        when={after().length > 0}
        fallback={<p class="small faint">No reading was kept on this machine since the mend.</p>}
      >
        <fieldset class="choice">
          <legend>The reading after</legend>
          <For each={after()}>
            {(reading) => (
              <button
                type="button"
                class="case-symptom"
                aria-pressed={picked()?.id === reading.id}
                onClick={() => setPicked(picked()?.id === reading.id ? undefined : reading)}
              >
                <strong>
                  {titleOf(reading.calculator)}: {verdictWord(reading.calculator, reading.verdict).toLowerCase()}
                </strong>
                <span class="small">{printTime(reading.at)}</span>
              </button>
            )}
          </For>
        </fieldset>
      </Show>
      <ReadingPhoto
        reading={photo()}
        title="The reprint"
        ask="A photo of the reprint (made smaller and kept on this device)"
        alt="The reprint"
      />
      <label class="case-line">
        What it shows, in a sentence
        <textarea
          class="text-input"
          rows="2"
          maxlength={LIMITS.line}
          value={words()}
          onInput={(event) => setWords(event.currentTarget.value)}
        />
      </label>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <button type="button" class="button button-main case-wide" onClick={() => void close()}>
        Close the case
      </button>
    </>
  );
}
