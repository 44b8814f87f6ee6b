import { createResource, Show, type JSX } from 'solid-js';
import { A, useParams } from '@solidjs/router';
import type { Case, Machine } from '../../machine/schema';
import say from './words/en';
import { useRecords } from '../desk/context';

/** A page about the case in the address, or word that it is gone. */
export function OfCase(props: { children: (found: () => Case, machine: () => Machine) => JSX.Element }) {
  const records = useRecords();
  const params = useParams();
  const at = () => ({ machine: params.machine ?? '', id: params.id ?? '' });
  const [loaded] = createResource(
    () => (records.ready() ? { ...at(), tick: records.casesTick() } : undefined),
    async ({ machine, id }) => ({ found: await records.caseAt(machine, id) }),
  );
  const found = () => {
    const one = loaded.latest?.found;
    return one?.id === at().id && one.machine === at().machine ? one : undefined;
  };
  const machine = () => records.machines().find(({ id }) => id === at().machine);
  const looked = () => loaded.state === 'ready';
  return (
    <main>
      <Show
        when={found()}
        fallback={
          <Show when={looked()} fallback={<p>{say.gone.looking}</p>}>
            <h1>{say.gone.title}</h1>
            <p>
              {say.gone.why} <A href="/case/new">{say.fresh.title}</A>
            </p>
          </Show>
        }
      >
        {(one) => (
          <Show
            when={machine()}
            fallback={
              <>
                <h1>{say.gone.machine}</h1>
                <p>
                  <A href="/case/new">{say.fresh.title}</A>
                </p>
              </>
            }
          >
            {(of) => props.children(one, of)}
          </Show>
        )}
      </Show>
    </main>
  );
}
