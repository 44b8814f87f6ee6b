import { createMemo, createSignal, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { listed, type Listed } from '../calculators/list';
import { useRecords } from './context';
import { phones } from './phone';
import { DemoOffer, MachinePicker } from './machine-picker';

const SMALL_WORDS = new Set([
  'the',
  'and',
  'with',
  'that',
  'this',
  'not',
  'too',
  'are',
  'was',
  'has',
  'its',
  'for',
  'out',
  'off',
]);
/** Letters by which words count as alike: wheel, wheels; level, levelled. */
const STEM = 4;

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^a-z0-9.]+/)
    .filter((word) => word.length > 2 && !SMALL_WORDS.has(word));

/** How many of the words asked for an entry answers to. */
function score(asked: readonly string[], texts: readonly string[]): number {
  const has = texts.flatMap(wordsOf);
  return asked.filter((word) => has.some((other) => other.startsWith(word.slice(0, Math.max(STEM, word.length - 2)))))
    .length;
}

/** Entries that answer best to what was asked; all of them where nothing was. */
function find(query: string): readonly Listed[] {
  const asked = wordsOf(query);
  if (asked.length === 0) return listed;
  const scored = listed.map((entry) => ({
    entry,
    points: score(asked, [entry.title, entry.question, ...entry.sayings]),
  }));
  const best = Math.max(...scored.map(({ points }) => points));
  return scored
    .filter(({ points }) => points > 0 && points * 2 >= best)
    .sort((a, b) => b.points - a.points)
    .map(({ entry }) => entry);
}

/** The list of checks and the machine at hand. */
export function Home() {
  const records = useRecords();
  const [query, setQuery] = createSignal('');
  const found = createMemo(() => find(query()));
  return (
    <main>
      <h1>What needs measuring?</h1>
      <div class="section">
        <MachinePicker />
        <Show when={records.ready() && records.machines().length === 0}>
          <p>
            <DemoOffer />
          </p>
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
      <section class="section">
        <h2>The phone as an instrument</h2>
        <ul class="index-list">
          <For each={Object.entries(phones)}>
            {([name, phone]) => (
              <li>
                <A class="index-entry" href={`/phone/${name}`}>
                  <span>
                    <strong>{phone.title}</strong>
                    <br />
                    <span class="faint">{phone.question}</span>
                  </span>
                  <span class="leader" aria-hidden="true">
                    ›
                  </span>
                </A>
              </li>
            )}
          </For>
        </ul>
      </section>
      <Show when={records.worksOffline()}>
        <p class="faint small">All of this works without a signal. Nothing you enter leaves this device.</p>
      </Show>
    </main>
  );
}
