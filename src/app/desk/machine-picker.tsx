import { createSignal, createUniqueId, For, Show } from 'solid-js';
import { useNavigate } from '@solidjs/router';
import { LIMITS } from '../../machine/limits';
import { useRecords } from './context';
import say from './words/en';

/** Which machine is on the bench; makes one where there is none. */
export function MachinePicker(props: { onPicked?: () => void }) {
  const records = useRecords();
  const id = createUniqueId();
  const [making, setMaking] = createSignal(false);
  return (
    <Show
      when={!making()}
      fallback={
        <NewMachine
          onDone={() => {
            setMaking(false);
            props.onPicked?.();
          }}
        />
      }
    >
      <label for={id}>{say.machine.label}</label>
      <div class="row">
        <Show when={records.machines().length > 0} fallback={<span class="faint">{say.machine.none}</span>}>
          <select
            id={id}
            value={records.current()?.id ?? ''}
            onChange={(event) => {
              void records.choose(event.currentTarget.value || null);
              props.onPicked?.();
            }}
          >
            <option value="">{say.machine.no}</option>
            <For each={records.machines()}>
              {(machine) => (
                <option value={machine.id} selected={machine.id === records.onBench()}>
                  {machine.demo ? say.machine.demo(machine.name) : machine.name}
                </option>
              )}
            </For>
          </select>
        </Show>
        <button type="button" class="button" onClick={() => setMaking(true)}>
          {say.machine.make}
        </button>
      </div>
    </Show>
  );
}

/** A name is enough to start; values come as they are measured. */
export function NewMachine(props: { onDone: () => void }) {
  const records = useRecords();
  const [name, setName] = createSignal('');
  const [problem, setProblem] = createSignal<string>();
  const make = async (event: SubmitEvent) => {
    event.preventDefault();
    if (name().trim() === '') {
      setProblem(say.machine.nameless);
      return;
    }
    await records.addMachine(name().trim());
    props.onDone();
  };
  return (
    <form class="panel" onSubmit={(event) => void make(event)}>
      <label>
        {say.machine.name}
        <input
          class="text-input"
          value={name()}
          maxlength={LIMITS.name}
          onInput={(event) => {
            setName(event.currentTarget.value);
            setProblem(undefined);
          }}
        />
      </label>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <div class="row section">
        <button type="submit" class="button button-main">
          {say.machine.makeIt}
        </button>
        <button type="button" class="button" onClick={() => props.onDone()}>
          {say.machine.cancel}
        </button>
      </div>
    </form>
  );
}

/** Offers the invented machine to look around with. */
export function DemoOffer() {
  const records = useRecords();
  const navigate = useNavigate();
  const add = async () => {
    const id = await records.addDemo();
    navigate(`/machines/${id}`);
  };
  return (
    <Show when={!records.machines().some((machine) => machine.demo)}>
      <button type="button" class="button" onClick={() => void add()}>
        {say.machine.putDemo}
      </button>
    </Show>
  );
}
