import { createResource, createSignal, For, Show } from 'solid-js';
import { A, useNavigate, useParams } from '@solidjs/router';
import { listed } from '../calculators/list';
import type { Machine, Reading } from '../machine/schema';
import { LIMITS } from '../machine/schema-parts';
import { verdictWords, VerdictMark } from '../ui/verdict-mark';
import { useRecords } from './context';
import { DemoOffer, NewMachine } from './machine-picker';
import { MachineValues } from './machine-values';
import { printTime } from './print';

export function MachinesScreen() {
  const records = useRecords();
  const navigate = useNavigate();
  return (
    <main>
      <h1>Machines</h1>
      <ul class="index-list">
        <For each={records.machines()}>
          {(machine) => (
            <li>
              <A class="index-entry" href={`/machines/${machine.id}`}>
                <span>
                  <strong>{machine.name}</strong>{' '}
                  <Show when={machine.demo}>
                    <span class="stamp">demo</span>
                  </Show>
                  <br />
                  <span class="faint">{Object.keys(machine.values).length} values kept</span>
                </span>
                <span class="leader" aria-hidden="true">
                  ›
                </span>
              </A>
            </li>
          )}
        </For>
      </ul>
      <Show when={records.machines().length === 0}>
        <p>No machine yet. A name is enough; its values come as you measure them.</p>
      </Show>
      <NewMachine onDone={() => navigate('/')} />
      <DemoOffer />
    </main>
  );
}

export function MachineScreen() {
  const records = useRecords();
  const params = useParams();
  const machine = () => records.machines().find((one) => one.id === params.id);
  return (
    <main>
      <Show when={machine()} fallback={<Gone />}>
        {(one) => <MachineSheet machine={one()} />}
      </Show>
    </main>
  );
}

function Gone() {
  const records = useRecords();
  return (
    <Show when={records.ready()} fallback={<p>Looking it up…</p>}>
      <h1>No such machine</h1>
      <p>
        It may have been removed. <A href="/machines">All machines</A>
      </p>
    </Show>
  );
}

function MachineSheet(props: { machine: Machine }) {
  const records = useRecords();
  const [readings] = createResource(
    () => ({ id: props.machine.id, tick: records.readingsTick() }),
    ({ id }) => records.readingsFor(id),
  );
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
        <button
          type="button"
          class="button"
          disabled={records.settings().machine === props.machine.id}
          onClick={() => void records.choose(props.machine.id)}
        >
          {records.settings().machine === props.machine.id ? 'On the bench' : 'Put on the bench'}
        </button>
      </div>
      <section class="section">
        <h2>Readings</h2>
        <Show when={(readings()?.length ?? 0) > 0} fallback={<p class="faint">None kept yet.</p>}>
          <ul class="index-list">
            <For each={readings()}>
              {(reading) => (
                <li>
                  <ReadingEntry reading={reading} />
                </li>
              )}
            </For>
          </ul>
        </Show>
      </section>
      <section class="section">
        <h2>Values</h2>
        <MachineValues machine={props.machine} />
      </section>
      <section class="section">
        <h2>Name and note</h2>
        <Rename machine={props.machine} />
      </section>
      <section class="section">
        <Remove machine={props.machine} />
      </section>
    </>
  );
}

export function ReadingEntry(props: { reading: Reading }) {
  const title = () => listed.find((entry) => entry.id === props.reading.calculator)?.title ?? props.reading.calculator;
  return (
    <A class="index-entry" href={`/check/${props.reading.calculator}`}>
      <span>
        <strong>{title()}</strong>: {verdictWords[props.reading.verdict].toLowerCase()}
        <br />
        <span class="small">{props.reading.headline}</span>
        <br />
        <span class="faint small">
          {printTime(props.reading.at)}
          <For
            each={Object.entries(props.reading.entries)
              .filter(([, entry]) => entry.origin === 'measured')
              .slice(0, 3)}
          >
            {([symbol]) => <Show when={props.reading.results[symbol]?.text}>{(text) => <> · {text()}</>}</Show>}
          </For>
          <Show when={props.reading.note}> · {props.reading.note}</Show>
        </span>
      </span>
      <VerdictMark state={props.reading.verdict} />
    </A>
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
        <p>Removes “{props.machine.name}” with its values and readings from this device.</p>
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
