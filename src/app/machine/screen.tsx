import { createSignal, lazy, Show } from 'solid-js';
import { A, useNavigate } from '@solidjs/router';
import type { Machine } from '../../machine/schema';
import { LIMITS } from '../../machine/schema-parts';
import { useRecords } from '../desk/context';
import { Files } from '../files/section';
import { Glance } from './glance';
import { MachineValues } from './values';
import { OfMachine } from '../desk/of-machine';
import { ReadingList } from '../readings/list';
import '../../ui/lists.css';

const CasesList = lazy(async () => ({ default: (await import('../case/cases-list')).CasesList }));

/** One machine: what stands how, what is due, its readings, its values. */
export function MachineScreen() {
  return <OfMachine>{(machine) => <MachineSheet machine={machine()} />}</OfMachine>;
}

function MachineSheet(props: { machine: Machine }) {
  const records = useRecords();
  const onBench = () => records.settings().machine === props.machine.id;
  return (
    <>
      <h1>
        {props.machine.name}{' '}
        <Show when={props.machine.demo}>
          <span class="stamp">demo, invented</span>
        </Show>
      </h1>
      <Show when={props.machine.note}>
        <p>{props.machine.note}</p>
      </Show>
      <div class="row section">
        <button type="button" class="button" disabled={onBench()} onClick={() => void records.choose(props.machine.id)}>
          {onBench() ? 'On the bench' : 'Put on the bench'}
        </button>
        <A class="button" href={`/machines/${props.machine.id}/card`}>
          Card to hang on it
        </A>
      </div>
      <div class="two-columns">
        <div>
          <section class="section">
            <h2>At a glance</h2>
            <Glance machine={props.machine} />
          </section>
          <section class="section">
            <h2>Cases</h2>
            <CasesList machine={props.machine.id} />
          </section>
          <section class="section">
            <h2>Readings</h2>
            <ReadingList machine={props.machine.id} />
          </section>
        </div>
        <section class="section">
          <h2>Values</h2>
          <MachineValues machine={props.machine} />
        </section>
      </div>
      <section class="section">
        <h2>Name and note</h2>
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
  const rename = (name: string) => {
    if (name.trim() === '') {
      setProblem(`A machine needs a name; it stays “${props.machine.name}”.`);
      return;
    }
    setProblem(undefined);
    void records.changeMachine(props.machine.id, { name: name.trim() });
  };
  return (
    <>
      <label>
        Name
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
        Note (whose it is, what was changed lately)
        <textarea
          class="text-input"
          rows="3"
          maxlength={LIMITS.note}
          value={props.machine.note}
          onChange={(event) => {
            const note = event.currentTarget.value;
            void records.changeMachine(props.machine.id, { note });
          }}
        />
      </label>
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
          Remove this machine…
        </button>
      }
    >
      <div class="panel">
        <p>Removes “{props.machine.name}” with its values, readings, cases and photos from this device.</p>
        <div class="row">
          <button type="button" class="button button-main" onClick={() => void remove()}>
            Remove it
          </button>
          <button type="button" class="button" onClick={() => setAsked(false)}>
            Keep it
          </button>
        </div>
      </div>
    </Show>
  );
}
