import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import { A, useNavigate } from '@solidjs/router';
import { useRecords } from '../desk/context';
import { ExportReminder } from '../files/export-reminder';
import { DemoOffer, NewMachine } from '../desk/machine-picker';
import say from './words/en';
import './list.css';

/** From this many on, a list wants a search. */
const MANY = 12;
/** Rows made before the first picture: more than any screen shows. The others come right after it. */
const FIRST = 30;

/** Every machine by name. Reads no readings: with hundreds of machines it opens as fast as with one. */
export function MachinesScreen() {
  const records = useRecords();
  const navigate = useNavigate();
  const [query, setQuery] = createSignal('');
  const [rows, setRows] = createSignal(FIRST);
  onMount(() => {
    const timer = setTimeout(() => setRows(Infinity), 50);
    onCleanup(() => clearTimeout(timer));
  });
  const found = createMemo(() => {
    const words = query().toLowerCase().split(/\s+/).filter(Boolean);
    return records.machines().filter((machine) => {
      const text = `${machine.name} ${machine.note}`.toLowerCase();
      return words.every((word) => text.includes(word));
    });
  });
  return (
    <main>
      <ExportReminder href="/settings" />
      <h1>{say.list.title}</h1>
      <Show when={records.machines().length > MANY}>
        <label>
          {say.list.find}
          <input
            class="text-input"
            type="search"
            value={query()}
            placeholder={say.list.example}
            onInput={(event) => setQuery(event.currentTarget.value)}
          />
        </label>
        <p class="faint small" role="status">
          {say.list.found(found().length, records.machines().length)}
        </p>
      </Show>
      <ul class="index-list long-list">
        <For each={found().slice(0, rows())}>
          {(machine) => (
            <li>
              <A class="index-entry" href={`/machines/${machine.id}`}>
                <span>
                  <strong>{machine.name}</strong>{' '}
                  <Show when={machine.demo}>
                    <span class="stamp">{say.list.demo}</span>
                  </Show>{' '}
                  <Show when={records.onBench() === machine.id}>
                    <span class="stamp">{say.list.onBench}</span>
                  </Show>
                  <br />
                  <span class="faint">{say.list.kept(Object.keys(machine.values).length)}</span>
                </span>
                <span class="leader" aria-hidden="true">
                  ›
                </span>
              </A>
            </li>
          )}
        </For>
      </ul>
      <Show when={records.ready() && records.machines().length === 0}>
        <p>{say.list.none}</p>
      </Show>
      <NewMachine onDone={() => navigate('/')} />
      <DemoOffer />
    </main>
  );
}
