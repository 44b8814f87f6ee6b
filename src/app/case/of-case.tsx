import { createResource, Show, type JSX } from 'solid-js';
import { A, useParams } from '@solidjs/router';
import type { Case, Machine } from '../../machine/schema';
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
          <Show when={looked()} fallback={<p>Looking it up…</p>}>
            <h1>No such case</h1>
            <p>
              It may have been removed, or kept on another device. <A href="/case/new">A new case</A>
            </p>
          </Show>
        }
      >
        {(one) => (
          <Show when={machine()} fallback={<h1>Its machine is no longer there</h1>}>
            {(of) => props.children(one, of)}
          </Show>
        )}
      </Show>
    </main>
  );
}
