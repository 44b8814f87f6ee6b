import { For, Show } from 'solid-js';
import { useNavigate } from '@solidjs/router';
import { listed } from '../../engine/list';
import { catalogue, type WordedInspection } from '../../diagnosis/catalogue';
import { hazardOf } from '../../diagnosis/dangers';
import type { Proposal } from '../../diagnosis/types';
import type { Case } from '../../machine/schema';
import { Fold } from '../../ui/fold';
import { Cautions } from './cautions';
import type { NewEntry } from './edit';
import { CaseReadings } from './readings';
import { minutesWords } from './said';
import { textsOfCheck } from './texts-of';
import { expectAnswer } from './waiting';
import { Why } from './why';
import say from './words/en';
import { useRecords } from '../desk/context';
import { TermKeys } from '../desk/glossary/terms';
import { titleOf } from '../desk/reading-entry';

/** One check: how it is done, and its answers or the calculator that gives them. */
export function CheckStep(props: {
  case: Case;
  check: WordedInspection;
  /** What is proposed, where it is this check. */
  proposal: Proposal | undefined;
  onEntry: (entry: NewEntry) => void;
}) {
  const records = useRecords();
  const navigate = useNavigate();
  const calculator = () => listed.find(({ id }) => id === props.check.calculator);
  const plugIn = () => hazardOf(catalogue, props.case) !== undefined && props.check.powered;
  const openCheck = async (id: string) => {
    expectAnswer({ machine: props.case.machine, case: props.case.id, check: props.check.id });
    await records.choose(props.case.machine);
    navigate(`/check/${id}`);
  };
  return (
    <>
      <p class="case-kicker">
        {say.check.kicker(say.check.kinds[props.check.kind], minutesWords(props.check.minutes), props.check.toolNames)}
      </p>
      <h2>{props.check.title}</h2>
      <Show when={props.check.cautions.length > 0 || plugIn()}>
        <Cautions>
          <Show when={plugIn()}>
            <li>{say.check.powered}</li>
          </Show>
          <For each={props.check.cautions}>{(caution) => <li>{caution}</li>}</For>
        </Cautions>
      </Show>
      <ol>
        <For each={props.check.how}>{(line) => <li>{line}</li>}</For>
      </ol>
      <TermKeys texts={textsOfCheck(props.check)} />
      <Show when={calculator()} fallback={<Answers check={props.check} onEntry={(entry) => props.onEntry(entry)} />}>
        {(found) => (
          <>
            <button type="button" class="button button-main case-wide" onClick={() => void openCheck(found().id)}>
              {say.check.open(titleOf(found().id))}
            </button>
            <p class="small faint">{say.check.comesBack}</p>
            <CaseReadings case={props.case} check={props.check} onEntry={(entry) => props.onEntry(entry)} />
            <Fold title={say.check.without}>
              <Answers check={props.check} onEntry={(entry) => props.onEntry(entry)} />
            </Fold>
          </>
        )}
      </Show>
      <div class="row">
        <button type="button" class="button" onClick={() => props.onEntry({ kind: 'skip', check: props.check.id })}>
          {say.check.skip}
        </button>
      </div>
      <Show when={props.proposal}>{(proposal) => <Why proposal={proposal()} check={props.check} />}</Show>
    </>
  );
}

function Answers(props: { check: WordedInspection; onEntry: (entry: NewEntry) => void }) {
  return (
    <div class="case-keys">
      <For each={props.check.answers}>
        {(answer) => (
          <button
            type="button"
            class="button case-answer"
            onClick={() => props.onEntry({ kind: 'answer', check: props.check.id, answer: answer.id })}
          >
            {answer.label}
          </button>
        )}
      </For>
    </div>
  );
}
