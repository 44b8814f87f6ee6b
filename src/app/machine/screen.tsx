import { createSignal, Show } from 'solid-js';
import { A, useNavigate } from '@solidjs/router';
import type { Machine } from '../../machine/schema';
import { LIMITS } from '../../machine/limits';
import { useRecords } from '../desk/context';
import { createBehindText } from '../desk/typed-text';
import { Files } from '../files/section';
import { Glance } from './glance';
import { MachineValues } from './values';
import { OfMachine } from '../desk/of-machine';
import { part } from '../desk/parts/part';
import { StopAt } from '../desk/stop';
import { ReadingList } from '../readings/list';
import say from './words/en';
import '../../ui/lists.css';

const CasesList = part(async () => (await import('../case/cases-list')).CasesList, say.page.casesList);

/** One machine: what stands how, what is due, its readings, its values. */
export function MachineScreen() {
  return <OfMachine>{(machine) => <MachineSheet machine={machine()} />}</OfMachine>;
}

function MachineSheet(props: { machine: Machine }) {
  const records = useRecords();
  const onBench = () => records.onBench() === props.machine.id;
  return (
    <>
      <h1>
        {props.machine.name}{' '}
        <Show when={props.machine.demo}>
          <span class="stamp">{say.page.demo}</span>
        </Show>
      </h1>
      <Show when={props.machine.note}>
        <p>{props.machine.note}</p>
      </Show>
      <div class="row section">
        <button type="button" class="button" disabled={onBench()} onClick={() => void records.choose(props.machine.id)}>
          {onBench() ? say.page.onBench : say.page.putOnBench}
        </button>
        <A class="button" href={`/machines/${props.machine.id}/card`}>
          {say.page.card}
        </A>
      </div>
      <div class="two-columns">
        <div>
          <section class="section">
            <h2>{say.page.glance}</h2>
            <Glance machine={props.machine} />
          </section>
          <section class="section">
            <h2>{say.page.cases}</h2>
            <CasesList machine={props.machine.id} />
          </section>
          <section class="section">
            <h2>{say.page.readings}</h2>
            <ReadingList machine={props.machine.id} />
          </section>
        </div>
        <section class="section">
          <h2>{say.page.values}</h2>
          <MachineValues machine={props.machine} />
        </section>
      </div>
      <section class="section">
        <h2>{say.page.nameAndNote}</h2>
        <Rename machine={props.machine} />
      </section>
      <Files store={records.store} machine={props.machine} />
      <section class="section">
        <Remove machine={props.machine} />
      </section>
    </>
  );
}
function Rename(props: { machine: Machine }) {
  const records = useRecords();
  const [problem, setProblem] = createSignal<string>();
  const note = createBehindText(
    () => props.machine.note,
    (text) => records.changeMachine(props.machine.id, { note: text }),
  );
  const rename = (name: string) => {
    if (name.trim() === '') {
      setProblem(say.page.nameless(props.machine.name));
      return;
    }
    setProblem(undefined);
    void records.changeMachine(props.machine.id, { name: name.trim() });
  };
  return (
    <>
      <label>
        {say.page.name}
        <input
          class="text-input"
          maxlength={LIMITS.name}
          value={props.machine.name}
          onChange={(event) => rename(event.currentTarget.value)}
        />
      </label>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <label>
        {say.page.note}
        <textarea
          class="text-input"
          rows="3"
          maxlength={LIMITS.note}
          value={note.text()}
          onInput={(event) => note.type(event.currentTarget.value)}
        />
      </label>
      <StopAt text={note.text()} />
    </>
  );
}

function Remove(props: { machine: Machine }) {
  const records = useRecords();
  const navigate = useNavigate();
  const [asked, setAsked] = createSignal(false);
  const remove = async () => {
    if (await records.removeMachine(props.machine.id)) navigate('/machines');
  };
  return (
    <Show
      when={asked()}
      fallback={
        <button type="button" class="button" onClick={() => setAsked(true)}>
          {say.page.remove}
        </button>
      }
    >
      <div class="panel">
        <p>{say.page.removes(props.machine.name)}</p>
        <div class="row">
          <button type="button" class="button button-main" onClick={() => void remove()}>
            {say.page.removeIt}
          </button>
          <button type="button" class="button" onClick={() => setAsked(false)}>
            {say.page.keepIt}
          </button>
        </div>
      </div>
    </Show>
  );
}
