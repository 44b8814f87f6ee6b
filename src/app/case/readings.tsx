import { createResource, For, Show } from 'solid-js';
import { answersTo, type NewEntry } from './edit';
import { readingNote } from './note';
import say from './words/en';
import { useRecords } from '../desk/context';
import { verdictWord } from '../desk/reading-entry';
import { printTime } from '../desk/time';
import type { WordedInspection } from '../../diagnosis/catalogue';
import type { Case, Reading } from '../../machine/schema';

const isSince = (reading: Reading, { since, opened }: Case): boolean =>
  since === undefined || reading.ordinal === 0 ? reading.at > opened : reading.ordinal > since;

/** Readings offered as an answer: the newest ones. */
const OFFERED = 3;

/** Readings of a check's calculator that were kept since the case was opened, each to be taken as the answer. */
export function CaseReadings(props: { case: Case; check: WordedInspection; onEntry: (entry: NewEntry) => void }) {
  const records = useRecords();
  const [page] = createResource(
    () =>
      props.check.calculator === undefined
        ? undefined
        : { machine: props.case.machine, calculator: props.check.calculator, tick: records.readingsTick() },
    ({ machine, calculator }) => records.latestReadings(machine, { calculator, limit: OFFERED }),
  );
  const offered = () =>
    (page.latest?.records ?? []).filter(
      (reading) => isSince(reading, props.case) && answersTo(props.check, reading.verdict).length > 0,
    );
  return (
    <For each={offered()}>
      {(reading) => <TakeReading reading={reading} check={props.check} onEntry={(entry) => props.onEntry(entry)} />}
    </For>
  );
}

/** One reading as a check's answer; where its verdict has several answers, the person picks. */
export function TakeReading(props: { reading: Reading; check: WordedInspection; onEntry: (entry: NewEntry) => void }) {
  const answers = () => answersTo(props.check, props.reading.verdict);
  const take = (answer: string) => {
    const { at, id } = props.reading;
    const note = readingNote(props.reading);
    props.onEntry({ kind: 'answer', check: props.check.id, answer, note, reading: { at, id } });
  };
  return (
    <div>
      <p class="small">
        {say.reading.of(printTime(props.reading.at), verdictWord(props.reading.calculator, props.reading.verdict))}
        <Show when={answers().length > 1}> {say.reading.which}</Show>
      </p>
      <div class="case-keys">
        <For each={answers()}>
          {(answer) => (
            <button type="button" class="button" onClick={() => take(answer.id)}>
              {answers().length > 1 ? answer.label : say.reading.take}
            </button>
          )}
        </For>
      </div>
    </div>
  );
}
