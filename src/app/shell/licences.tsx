import { createResource, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { fetchPart } from '../desk/parts/fetch-part';
import { Waiting } from '../desk/parts/part';
import say from './words/en';

async function load(): Promise<string> {
  const response = await fetch('./licences.txt');
  const type = response.headers.get('content-type') ?? '';
  if (!response.ok || type.includes('html')) throw new Error(`${response.status} ${type}`);
  return response.text();
}

/** The licence of Trammel and of every package in it, as the build found them. */
export function LicencesScreen() {
  const [text] = createResource(() => fetchPart(load));
  return (
    <main>
      <h1>{say.licences.title}</h1>
      <p>{say.licences.why}</p>
      <p>
        <A class="button" href="/settings">
          {say.head.settings}
        </A>
      </p>
      <Show when={text()} fallback={<Waiting what={say.parts.licences} />}>
        {(found) => (
          <pre class="licences" translate="no">
            {found()}
          </pre>
        )}
      </Show>
    </main>
  );
}
