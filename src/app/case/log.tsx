import { createSignal, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { inspectionOf } from '../../diagnosis/pick';
import type { Case } from '../../machine/schema';
import { answeredOtherwise, without } from './edit';
import { entryWords } from './said';
import say from './words/en';
import { useRecords } from '../desk/context';
import { readingHref } from '../desk/reading-entry';
import { printTime } from '../desk/time';

type CaseEntry = Case['log'][number];

/** Everything that was done in a case; each entry can be taken back, an answer changed, and the order follows. */
export function CaseLog(props: { case: Case; fixed: boolean }) {
  return (
    <Show when={props.case.log.length > 0} fallback={<p class="faint">{say.log.none}</p>}>
      <ol class="case-log">
        <For each={props.case.log}>{(entry) => <Line case={props.case} entry={entry} fixed={props.fixed} />}</For>
      </ol>
    </Show>
  );
}

function Line(props: { case: Case; entry: CaseEntry; fixed: boolean }) {
  const records = useRecords();
  const [changing, setChanging] = createSignal(false);
  const words = () => entryWords(catalogue, props.entry);
  const reading = () => (props.entry.kind === 'answer' ? props.entry.reading : undefined);
  const edit = (change: (old: Case) => Case) => {
    const { machine, id } = props.case;
    void records.changeCase(machine, id, change);
  };
  const others = () => {
    const entry = props.entry;
    return entry.kind === 'answer'
      ? inspectionOf(catalogue, entry.check).answers.filter(({ id }) => id !== entry.answer)
      : [];
  };
  return (
    <li>
      <p class="case-log-what">
        {say.log.what(words().what)}
        <strong>{words().said}</strong>
        <br />
        <span class="small faint">
          {printTime(props.entry.at)}
          <Show when={words().note}> · {words().note}</Show>
        </span>
        <Show when={reading()} keyed>
          {(at) => (
            <>
              <br />
              <A class="small" href={readingHref({ machine: props.case.machine, ...at })}>
                {say.log.reading}
              </A>
            </>
          )}
        </Show>
      </p>
      <Show when={!props.fixed}>
        <div class="row no-print">
          <Show when={others().length > 0}>
            <button
              type="button"
              class="button"
              aria-expanded={changing()}
              onClick={() => setChanging(!changing())}
              aria-label={say.log.changeWhat(words().what)}
            >
              {say.log.change}
            </button>
          </Show>
          <button
            type="button"
            class="button"
            onClick={() => edit(without(props.entry))}
            aria-label={say.log.backWhat(words().what)}
          >
            {say.log.back}
          </button>
        </div>
        <Show when={changing()}>
          <div class="case-keys">
            <For each={others()}>
              {(answer) => (
                <button
                  type="button"
                  class="button case-answer"
                  onClick={() => edit(answeredOtherwise(props.entry, answer.id))}
                >
                  {answer.label}
                </button>
              )}
            </For>
          </div>
        </Show>
      </Show>
    </li>
  );
}
