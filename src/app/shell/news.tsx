import { For, Show } from 'solid-js';
import { useRecords } from '../desk/context';
import say from './words/en/news';

const news: Readonly<Record<string, readonly string[]>> = say.versions;

/** What this version brought, once, for whoever used an earlier one. */
export function News() {
  const records = useRecords();
  return (
    <Show when={news[__TRAMMEL_VERSION__]}>
      {(lines) => (
        <div class="notice no-print" role="status">
          <strong>{say.title(__TRAMMEL_VERSION__)}</strong>
          <ul>
            <For each={lines()}>{(line) => <li>{line}</li>}</For>
          </ul>
          <button
            type="button"
            class="button"
            onClick={() => void records.changeSettings({ seenVersion: __TRAMMEL_VERSION__ })}
          >
            {say.understood}
          </button>
        </div>
      )}
    </Show>
  );
}
