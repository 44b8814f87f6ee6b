import { createEffect, createResource, createSignal, Match, on, Show, Switch, untrack } from 'solid-js';
import { A } from '@solidjs/router';
import { catalogue, type WordedInspection } from '../../diagnosis/catalogue';
import { symptomOf } from '../../diagnosis/pick';
import type { Machine, Reading } from '../../machine/schema';
import { answersTo, withEntry, type NewEntry } from './edit';
import { readingNote } from './note';
import { TakeReading } from './readings';
import { waitingCase, type Waiting } from './waiting';
import say from './words/en';
import { useRecords } from '../desk/context';
import './case.css';

/** On a calculator's sheet: says that a case waits for its reading, and takes the reading that is kept as the answer. */
export function CaseBanner(props: { machine: Machine; calculator: string; kept: Reading | undefined }) {
  const records = useRecords();
  const [waiting] = createResource(
    () => ({ machine: props.machine.id, calculator: props.calculator, tick: records.casesTick() }),
    async ({ machine, calculator }) => ({ found: waitingCase(await records.casesOf(machine), calculator) }),
  );
  /** What was answered here, and what is left to pick. */
  const [taken, setTaken] = createSignal<{
    readonly of: Waiting;
    readonly answer: WordedInspection['answers'][number];
  }>();
  const [open, setOpen] = createSignal<{ readonly of: Waiting; readonly reading: Reading }>();

  const keep = async (of: Waiting, entry: NewEntry) => {
    const at = new Date().toISOString();
    const done = await records.changeCase(of.case.machine, of.case.id, withEntry(entry, at));
    setOpen(undefined);
    const given = of.check.answers.find(({ id }) => entry.kind === 'answer' && id === entry.answer);
    if (done && given) setTaken({ of, answer: given });
  };
  const answer = async (reading: Reading) => {
    const of = waiting.latest?.found;
    if (!of) return;
    const answers = answersTo(of.check, reading.verdict);
    const [only] = answers;
    if (answers.length > 1) setOpen({ of, reading });
    else if (only) {
      const note = readingNote(reading);
      const { at, id } = reading;
      await keep(of, { kind: 'answer', check: of.check.id, answer: only.id, note, reading: { at, id } });
    }
  };
  createEffect(
    on(
      () => props.kept,
      (reading) => {
        if (reading?.machine === untrack(() => props.machine.id)) void answer(reading);
      },
      { defer: true },
    ),
  );

  const called = (of: Waiting) => symptomOf(catalogue, of.case.symptom).title;
  const Back = (own: { of: Waiting }) => (
    <A class="button" href={`/case/${own.of.case.machine}/${own.of.case.id}`}>
      {say.back}
    </A>
  );
  return (
    <Switch>
      <Match when={open()}>
        {(now) => (
          <div class="panel no-print" role="status">
            <p>{say.banner.asks(called(now().of), now().of.check.title)}</p>
            <TakeReading
              reading={now().reading}
              check={now().of.check}
              onEntry={(entry) => void keep(now().of, entry)}
            />
          </div>
        )}
      </Match>
      <Match when={taken()}>
        {(now) => (
          <div class="panel no-print" role="status">
            <p>
              {say.banner.taken(called(now().of), now().answer.label)}
              <Show when={now().answer.verdict === 'too close'}> {say.banner.little}</Show>
            </p>
            <Back of={now().of} />
          </div>
        )}
      </Match>
      <Match when={waiting.latest?.found}>
        {(now) => (
          <div class="panel no-print" role="status">
            <p>{say.banner.waits(called(now()), props.machine.name)}</p>
            <Back of={now()} />
          </div>
        )}
      </Match>
    </Switch>
  );
}
