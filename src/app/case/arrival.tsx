import { createMemo, createResource, createSignal, For, Match, Show, Switch } from 'solid-js';
import { useLocation, useNavigate } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { decodeCase, type Letter } from '../../diagnosis/link';
import { symptomOf, unreadable } from '../../diagnosis/pick';
import { sameEntry, type Logged } from '../../diagnosis/same';
import type { Case } from '../../machine/schema';
import { caseOf, letterStanding } from './letter';
import { ENDS, entryWords } from './said';
import { useRecords } from '../desk/context';
import { MachinePicker } from '../desk/machine-picker';
import { printTime } from '../desk/time';
import './case.css';

/** A case that came with a link: shown whole before anything of it is kept. */
export function CaseArrival() {
  const location = useLocation();
  const read = createMemo(() => {
    const opened = decodeCase(location.search);
    if (!opened.ok) return opened;
    const reason = unreadable(catalogue, opened.letter);
    return reason === undefined
      ? opened
      : ({
          ok: false,
          reason: `${reason} The link may come from a newer Trammel: bring this one up to date.`,
        } as const);
  });
  return (
    <main>
      <Show
        when={((now) => now.ok && now.letter)(read())}
        keyed
        fallback={
          <>
            <h1>This link opens no case</h1>
            <p class="problem">{((now) => (now.ok ? '' : now.reason))(read())}</p>
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
      <p class="small">
        A case came with a link
        <Show when={props.letter.owner}>, asked by {props.letter.owner}</Show>. There the machine is called “
        {props.letter.machine || 'no name'}”; opened {printTime(props.letter.opened)}.
      </p>
      <Show when={props.letter.complaint}>
        <blockquote class="case-complaint">“{props.letter.complaint}”</blockquote>
      </Show>
      <Show when={symptom().hazard && props.letter.closed === null}>
        <div class="cautions">
          <strong>First</strong>
          <ul>
            <li>
              See with your own eyes that the machine is switched off and its plug is out, whatever the link says.
            </li>
          </ul>
        </div>
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

function Entries(props: { log: readonly Logged[]; closed: Letter['closed'] }) {
  const ended = () => Object.entries(ENDS).find(([how]) => how === props.closed?.how)?.[1];
  return (
    <Show when={props.log.length > 0 || props.closed} fallback={<p class="faint">Nothing done yet.</p>}>
      <ol class="case-log">
        <For each={props.log}>
          {(entry) => (
            <li>
              {entryWords(catalogue, entry).what}: <strong>{entryWords(catalogue, entry).said}</strong>
              <br />
              <span class="small faint">
                {printTime(entry.at)}
                <Show when={entryWords(catalogue, entry).note}> · {entryWords(catalogue, entry).note}</Show>
              </span>
            </li>
          )}
        </For>
        <Show when={props.closed}>
          {(closed) => (
            <li>
              Closed: <strong>{ended() ?? closed().how}</strong>
              <br />
              <span class="small faint">
                {printTime(closed().at)} · {closed().proof}
              </span>
            </li>
          )}
        </Show>
      </ol>
    </Show>
  );
}

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

function AsNew(props: { letter: Letter }) {
  const records = useRecords();
  const { take, problem } = useTaking(props);
  const makeAndTake = async () => {
    const id = await records.addMachine(props.letter.machine.slice(0, 120));
    await take(id, undefined);
  };
  return (
    <>
      <section class="section">
        <h2>What was done so far</h2>
        <Entries log={props.letter.log} closed={props.letter.closed} />
      </section>
      <section class="section">
        <h2>Whose case is it here?</h2>
        <MachinePicker />
        <div class="case-keys section">
          <Show when={records.current()}>
            {(machine) => (
              <button type="button" class="button button-main" onClick={() => void take(machine().id, undefined)}>
                Make it a case of {machine().name}
              </button>
            )}
          </Show>
          <Show when={props.letter.machine.trim() !== '' && records.current()?.name !== props.letter.machine}>
            <button type="button" class="button" onClick={() => void makeAndTake()}>
              Make a machine “{props.letter.machine}” for it
            </button>
          </Show>
        </div>
        <Problem sentence={problem()} />
      </section>
    </>
  );
}

function Problem(props: { sentence: string | undefined }) {
  return (
    <Show when={props.sentence}>
      <p class="problem" role="alert">
        {props.sentence}
      </p>
    </Show>
  );
}

function Beside(props: { letter: Letter; ours: Case }) {
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
          <p>This case is here already, and the link says nothing new.</p>
          <Open words="Open it" />
        </Match>
        <Match when={how() === 'ours goes on'}>
          <p>This case is here already, and further on than the link.</p>
          <Open words="Open it" />
        </Match>
        <Match when={how() === 'theirs goes on'}>
          <p>This case is here already. The link goes on from it:</p>
          <Entries log={fresh()} closed={props.letter.closed} />
          <div class="case-keys">
            <Take words="Take this over" />
            <Open words="Leave ours as it is" />
          </div>
        </Match>
        <Match when={how() === 'apart'}>
          <p>This case is here already, and the two have come apart: something was changed on both phones.</p>
          <div class="two-columns">
            <div>
              <h2>Here</h2>
              <Entries log={props.ours.log} closed={props.ours.closed} />
              <Open words="Keep what is here" />
            </div>
            <div>
              <h2>In the link</h2>
              <Entries log={props.letter.log} closed={props.letter.closed} />
              <Take words="Take the link’s instead" />
            </div>
          </div>
        </Match>
      </Switch>
      <Problem sentence={problem()} />
    </section>
  );
}
