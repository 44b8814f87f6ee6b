import { createMemo, createSignal, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { listed } from '../calculators/list';
import { useRecords } from './context';
import { DemoOffer, MachinePicker } from './machine-picker';

function matches(query: string, texts: readonly string[]): boolean {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  const all = texts.join(' ').toLowerCase();
  return words.every((word) => all.includes(word));
}

/** The list of checks and the machine at hand. */
export function Home() {
  const records = useRecords();
  const [query, setQuery] = createSignal('');
  const found = createMemo(() =>
    listed.filter((entry) => matches(query(), [entry.title, entry.question, ...entry.sayings])),
  );
  return (
    <main>
      <h1>What needs measuring?</h1>
      <div class="section">
        <MachinePicker />
        <Show when={records.ready() && records.machines().length === 0}>
          <DemoOffer />
        </Show>
      </div>
      <div class="section">
        <label>
          Find a check
          <input
            class="text-input"
            type="search"
            value={query()}
            placeholder="one side high, hairs, ridges…"
            onInput={(event) => setQuery(event.currentTarget.value)}
          />
        </label>
        <ul class="index-list">
          <For each={found()}>
            {(entry) => (
              <li>
                <A class="index-entry" href={`/check/${entry.id}`}>
                  <span>
                    <strong>{entry.title}</strong>
                    <br />
                    <span class="faint">{entry.question}</span>
                  </span>
                  <span class="leader" aria-hidden="true">
                    ›
                  </span>
                </A>
              </li>
            )}
          </For>
        </ul>
        <Show when={found().length === 0}>
          <p>No check is described by these words. Try fewer of them: a part, or what you see.</p>
        </Show>
      </div>
      <Show when={records.worksOffline()}>
        <p class="faint small">All of this works without a signal. Nothing you enter leaves this device.</p>
      </Show>
    </main>
  );
}
