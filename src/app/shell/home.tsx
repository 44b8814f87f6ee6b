import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { listed } from '../../engine/list';
import { TOPICS } from '../../engine/topics';
import { useRecords } from '../desk/context';
import type { Findable } from '../desk/find-check';
import { fetchPart } from '../desk/parts/fetch-part';
import { CopyStage } from '../desk/copy-stage';
import { part, Trouble } from '../desk/parts/part';
import { phones } from '../phone/phones';
import { DemoOffer, MachinePicker } from '../desk/machine-picker';
import say from './words/en';

interface Place extends Findable {
  readonly href: string;
  readonly topic?: string;
}

const places: readonly Place[] = [
  ...listed.map((entry) => ({ ...entry, href: `/check/${entry.id}` })),
  ...Object.entries(phones).map(([id, phone]) => ({ ...phone, id: `phone/${id}`, href: `/phone/${id}` })),
];

const CasesList = part(async () => (await import('../case/cases-list')).CasesList, say.parts.cases);

const StopAt = part(async () => (await import('../desk/stop')).StopAt, say.parts.firstActs);

const underTopic = (topic: string) => places.filter((place) => place.topic === topic);

function Entries(props: { places: readonly Place[] }) {
  return (
    <ul class="index-list">
      <For each={props.places}>
        {(place) => (
          <li>
            <A class="index-entry" href={place.href}>
              <span>
                <strong>{place.title}</strong>
                <br />
                <span class="faint">{place.question}</span>
              </span>
              <span class="leader" aria-hidden="true">
                ›
              </span>
            </A>
          </li>
        )}
      </For>
    </ul>
  );
}

/** The list of checks and the machine at hand. */
export function Home() {
  const records = useRecords();
  const [query, setQuery] = createSignal('');
  const asked = () => query().trim();
  // Fetched when first asked for: it is on the phone already, and the list is wanted sooner.
  const [finder, { refetch }] = createResource(
    () => asked() !== '' || undefined,
    async () => {
      const [{ createFinder }, { complaints }, { dangerIn }] = await fetchPart(() =>
        Promise.all([import('../desk/find-check'), import('./complaints'), import('../../diagnosis/danger')]),
      );
      const all: readonly Place[] = [...places, ...complaints];
      const find = createFinder(all);
      return {
        find: (query: string) => find(query).flatMap((id) => all.find((place) => place.id === id) ?? []),
        danger: (query: string) => dangerIn(query) !== undefined,
      };
    },
  );
  const found = createMemo<readonly Place[]>((before) => {
    const by = finder.state === 'ready' ? finder() : undefined;
    return by ? by.find(asked()) : before;
  }, []);
  /** What is asked tells of a danger: what to do first comes before any list. */
  const danger = createMemo(() => finder.state === 'ready' && finder().danger(asked()));
  return (
    <main>
      <h1>{say.home.title}</h1>
      <div class="section">
        <A class="button button-main" href="/case/new">
          {say.home.complain}
        </A>
        <Show when={records.current()} keyed>
          {(machine) => <CasesList machine={machine.id} open />}
        </Show>
      </div>
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
          {say.home.find}
          <input
            class="text-input"
            type="search"
            value={query()}
            placeholder={say.home.example}
            onInput={(event) => setQuery(event.currentTarget.value)}
          />
        </label>
        <Show when={finder.state === 'errored'}>
          <Trouble what={say.parts.search} error={finder.error as unknown} onMended={() => void refetch()} />
        </Show>
        <Show when={danger()}>
          <StopAt text={asked()}>
            <A class="button button-main" href={`/case/new?said=${encodeURIComponent(asked())}`}>
              {say.home.stopped}
            </A>
            <p class="small">{say.home.harmless}</p>
          </StopAt>
        </Show>
        <Show when={asked() !== '' && !danger()}>
          <Entries places={found()} />
          <Show when={finder.state === 'ready' && found().length === 0}>
            <p>{say.home.nothing}</p>
          </Show>
        </Show>
      </div>
      <Show when={asked() === ''}>
        <For each={Object.entries(TOPICS)}>
          {([topic, heading]) => (
            <Show when={underTopic(topic).length > 0}>
              <section class="section">
                <h2>{heading}</h2>
                <Entries places={underTopic(topic)} />
              </section>
            </Show>
          )}
        </For>
        <section class="section">
          <h2>{say.home.phone}</h2>
          <Entries places={places.filter((place) => place.id.startsWith('phone/'))} />
        </section>
      </Show>
      <Show when={records.worksOffline()} fallback={<CopyStage />}>
        <p class="faint small">{say.home.offline}</p>
      </Show>
    </main>
  );
}
