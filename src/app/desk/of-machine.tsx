import { Show, type JSX } from 'solid-js';
import { A, useParams } from '@solidjs/router';
import type { Machine } from '../../machine/schema';
import { useRecords } from './context';
import say from './words/en';

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
          <Show when={records.ready()} fallback={<p>{say.machine.looking}</p>}>
            <h1>{say.machine.gone}</h1>
            <p>
              {say.machine.mayBeRemoved} <A href="/machines">{say.machine.all}</A>
            </p>
          </Show>
        }
      >
        {(found) => props.children(found)}
      </Show>
    </main>
  );
}
