import { createSignal, Match, Show, Switch } from 'solid-js';
import { useNavigate } from '@solidjs/router';
import type { Letter } from '../../diagnosis/link';
import { sameEntry } from '../../diagnosis/same';
import type { Case } from '../../machine/schema';
import { ArrivalEntries } from './arrival-entries';
import { caseOf, letterStanding } from './letter';
import { Problem } from './problem';
import say from './words/en';
import { useRecords } from '../desk/context';
import { MachinePicker } from '../desk/machine-picker';

/** Keeps the case on a machine, and says why where it cannot. */
function useTaking(props: { letter: Letter }) {
  const records = useRecords();
  const navigate = useNavigate();
  const [problem, setProblem] = createSignal<string>();
  const take = async (machine: string, ours: Case | undefined) => {
    const made = caseOf(props.letter, machine, ours, new Date());
    if (typeof made === 'string') {
      setProblem(made);
      return;
    }
    if (await records.addCase(made)) navigate(`/case/${machine}/${made.id}`, { replace: true });
  };
  return { take, problem };
}

/** A case that is not here yet: what was done, and whose it becomes. */
export function AsNew(props: { letter: Letter }) {
  const records = useRecords();
  const { take, problem } = useTaking(props);
  const makeAndTake = async () => {
    const id = await records.addMachine(props.letter.machine.slice(0, 120));
    await take(id, undefined);
  };
  return (
    <>
      <section class="section">
        <h2>{say.arrival.soFar}</h2>
        <ArrivalEntries log={props.letter.log} closed={props.letter.closed} />
      </section>
      <section class="section">
        <h2>{say.arrival.whose}</h2>
        <MachinePicker />
        <div class="case-keys section">
          <Show when={records.current()}>
            {(machine) => (
              <button type="button" class="button button-main" onClick={() => void take(machine().id, undefined)}>
                {say.arrival.take(machine().name)}
              </button>
            )}
          </Show>
          <Show when={props.letter.machine.trim() !== '' && records.current()?.name !== props.letter.machine}>
            <button type="button" class="button" onClick={() => void makeAndTake()}>
              {say.arrival.make(props.letter.machine)}
            </button>
          </Show>
        </div>
        <Problem sentence={problem()} />
      </section>
    </>
  );
}

/** A case that is here already: how the link's stands to ours, and which of the two to go on with. */
export function Beside(props: { letter: Letter; ours: Case }) {
  const navigate = useNavigate();
  const { take, problem } = useTaking(props);
  const how = () => letterStanding(props.ours, props.letter);
  const fresh = () => props.letter.log.filter((entry) => !props.ours.log.some((one) => sameEntry(one, entry)));
  const open = () => navigate(`/case/${props.ours.machine}/${props.ours.id}`, { replace: true });
  const Take = (own: { words: string }) => (
    <button type="button" class="button button-main" onClick={() => void take(props.ours.machine, props.ours)}>
      {own.words}
    </button>
  );
  const Open = (own: { words: string }) => (
    <button type="button" class="button" onClick={open}>
      {own.words}
    </button>
  );
  return (
    <section class="section">
      <Switch>
        <Match when={how() === 'same'}>
          <p>{say.arrival.same}</p>
          <Open words={say.arrival.open} />
        </Match>
        <Match when={how() === 'ours goes on'}>
          <p>{say.arrival.behind}</p>
          <Open words={say.arrival.open} />
        </Match>
        <Match when={how() === 'theirs goes on'}>
          <p>{say.arrival.ahead}</p>
          <ArrivalEntries log={fresh()} closed={props.letter.closed} />
          <div class="case-keys">
            <Take words={say.arrival.takeOver} />
            <Open words={say.arrival.leave} />
          </div>
        </Match>
        <Match when={how() === 'apart'}>
          <p>{say.arrival.apart}</p>
          <div class="two-columns">
            <div>
              <h2>{say.arrival.here}</h2>
              <ArrivalEntries log={props.ours.log} closed={props.ours.closed} />
              <Open words={say.arrival.keep} />
            </div>
            <div>
              <h2>{say.arrival.inLink}</h2>
              <ArrivalEntries log={props.letter.log} closed={props.letter.closed} />
              <Take words={say.arrival.takeLink} />
            </div>
          </div>
        </Match>
      </Switch>
      <Problem sentence={problem()} />
    </section>
  );
}
