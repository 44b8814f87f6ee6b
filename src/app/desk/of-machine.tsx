import { Show, type JSX } from 'solid-js';
import { A, useParams } from '@solidjs/router';
import type { Machine } from '../../machine/schema';
import { useRecords } from './context';

/** A page about the machine in the address, or word that it is gone. */
export function OfMachine(props: { children: (machine: () => Machine) => JSX.Element }) {
  const records = useRecords();
  const params = useParams();
  const machine = () => records.machines().find((one) => one.id === params.id);
  return (
    <main>
      <Show
        when={machine()}
        fallback={
          <Show when={records.ready()} fallback={<p>Looking it up…</p>}>
            <h1>No such machine</h1>
            <p>
              It may have been removed. <A href="/machines">All machines</A>
            </p>
          </Show>
        }
      >
        {(found) => props.children(found)}
      </Show>
    </main>
  );
}
