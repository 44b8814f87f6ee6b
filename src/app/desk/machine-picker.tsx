import { createSignal, createUniqueId, For, Show } from 'solid-js';
import { useNavigate } from '@solidjs/router';
import { LIMITS } from '../../machine/schema-parts';
import { useRecords } from './context';

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
      <label for={id}>Machine on the bench</label>
      <div class="row">
        <Show
          when={records.machines().length > 0}
          fallback={<span class="faint">None yet: checks work without, but nothing is remembered.</span>}
        >
          <select
            id={id}
            value={records.settings().machine ?? ''}
            onChange={(event) => {
              void records.choose(event.currentTarget.value || null);
              props.onPicked?.();
            }}
          >
            <option value="">no machine</option>
            <For each={records.machines()}>
              {(machine) => (
                <option value={machine.id} selected={machine.id === records.settings().machine}>
                  {machine.name}
                  {machine.demo ? ' (demo)' : ''}
                </option>
              )}
            </For>
          </select>
        </Show>
        <button type="button" class="button" onClick={() => setMaking(true)}>
          New machine
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
      setProblem('A machine needs a name you will know it by, such as “left bench” or its owner’s.');
      return;
    }
    await records.addMachine(name().trim());
    props.onDone();
  };
  return (
    <form class="panel" onSubmit={(event) => void make(event)}>
      <label>
        Name of the machine
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
          Make it
        </button>
        <button type="button" class="button" onClick={() => props.onDone()}>
          Cancel
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
        Put a demo machine on the bench
      </button>
    </Show>
  );
}
