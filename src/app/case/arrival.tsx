import { createMemo, createResource, Show } from 'solid-js';
import { A, useLocation } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { hazardOf } from '../../diagnosis/dangers';
import { decodeCase, type Letter } from '../../diagnosis/link';
import { symptomOf, unreadable } from '../../diagnosis/pick';
import { inCaseNow } from '../../reference/renamed';
import { AsNew, Beside } from './arrival-take';
import say from './words/en';
import { useRecords } from '../desk/context';
import { FirstActs } from '../desk/stop';
import { printTime } from '../desk/time';
import './case.css';

/** A case that came with a link: shown whole before anything of it is kept. */
export function CaseArrival() {
  const location = useLocation();
  const read = createMemo(() => {
    const opened = decodeCase(location.search, inCaseNow);
    if (!opened.ok) return opened;
    const reason = unreadable(catalogue, opened.letter);
    return reason === undefined ? opened : ({ ok: false, reason: say.arrival.newer(reason) } as const);
  });
  return (
    <main>
      <Show
        when={((now) => now.ok && now.letter)(read())}
        keyed
        fallback={
          <>
            <h1>{say.arrival.bad}</h1>
            <p class="problem">{((now) => (now.ok ? '' : now.reason))(read())}</p>
            <p>
              <A class="button" href="/case/new">
                {say.fresh.title}
              </A>
            </p>
          </>
        }
      >
        {(letter) => <Arrived letter={letter} />}
      </Show>
    </main>
  );
}

function Arrived(props: { letter: Letter }) {
  const records = useRecords();
  const symptom = () => symptomOf(catalogue, props.letter.symptom);
  const [ours] = createResource(
    () => (records.ready() ? { id: props.letter.id, tick: records.casesTick() } : undefined),
    async ({ id }) => ({ found: await records.findCase(id) }),
  );
  return (
    <>
      <h1>{symptom().title}</h1>
      <p class="small">{say.arrival.came(props.letter.owner, props.letter.machine, printTime(props.letter.opened))}</p>
      <Show when={props.letter.complaint}>
        <blockquote class="case-complaint">{say.quote(props.letter.complaint)}</blockquote>
      </Show>
      <Show when={props.letter.closed === null && hazardOf(catalogue, props.letter)}>
        {(danger) => (
          <FirstActs first={danger().first}>
            <p>{say.arrival.unplug}</p>
          </FirstActs>
        )}
      </Show>
      <Show when={ours.latest}>
        {(looked) => (
          <Show when={looked().found} fallback={<AsNew letter={props.letter} />}>
            {(mine) => <Beside letter={props.letter} ours={mine()} />}
          </Show>
        )}
      </Show>
    </>
  );
}
