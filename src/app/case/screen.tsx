import { createMemo, Show } from 'solid-js';
import { A, useNavigate } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { safetySaid } from '../../diagnosis/dangers';
import { symptomOf, unreadable } from '../../diagnosis/pick';
import type { Case, Machine } from '../../machine/schema';
import { cureOf } from './course';
import { RemoveCase } from './end';
import { OfCase } from './of-case';
import { CaseWork } from './work';
import say from './words/en';
import { printTime } from '../desk/time';
import './case.css';
import '../../ui/lists.css';

/** One case: what to do now, what is suspected, what was done. */
export function CaseScreen() {
  return <OfCase>{(found, machine) => <Readable case={found()} machine={machine()} />}</OfCase>;
}

/** What cannot be read with this catalogue is shown as it stands. */
function Readable(props: { case: Case; machine: Machine }) {
  const navigate = useNavigate();
  const reason = createMemo(() => unreadable(catalogue, props.case));
  return (
    <Show
      when={reason()}
      fallback={
        <>
          <Head case={props.case} machine={props.machine} />
          <CaseWork case={props.case} machine={props.machine} />
        </>
      }
    >
      {(sentence) => (
        <>
          <h1>{say.screen.bad}</h1>
          <p class="problem">{say.screen.newer(sentence())}</p>
          <p>
            {say.screen.where.before}
            <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>
            {say.screen.where.after(printTime(props.case.opened))}
          </p>
          <Show when={props.case.complaint}>
            <p>{say.quote(props.case.complaint)}</p>
          </Show>
          <RemoveCase case={props.case} onGone={() => navigate(`/machines/${props.machine.id}`)} />
        </>
      )}
    </Show>
  );
}

function Head(props: { case: Case; machine: Machine }) {
  const symptom = () => symptomOf(catalogue, props.case.symptom);
  const unplugged = () =>
    props.case.closed === null && cureOf(props.case) === undefined && safetySaid(props.case) === 'done'
      ? props.case.log.findLast(({ kind }) => kind === 'made safe')
      : undefined;
  return (
    <>
      <h1>{symptom().title}</h1>
      <p class="small">
        <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>
        {say.screen.asked(props.case.owner, printTime(props.case.opened))}
      </p>
      <Show when={props.case.complaint}>
        <blockquote class="case-complaint">{say.quote(props.case.complaint)}</blockquote>
      </Show>
      <Show when={unplugged()} keyed>
        {(entry) => <p class="due small">{say.screen.unplugged(printTime(entry.at))}</p>}
      </Show>
    </>
  );
}
