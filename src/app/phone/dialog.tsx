import './phone.css';
import { createUniqueId, onCleanup, onMount } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { PhoneInstrument } from '../../engine/calculator';
import { useRecords } from '../desk/context';
import type { Taken } from '../desk/handed';
import { phones } from './phones';
import say from './words/en';

/** An instrument over the sheet that asked for it. */
export function PhoneDialog(props: {
  phone: PhoneInstrument;
  take: string;
  onTake: (taken: Taken) => void;
  onClose: () => void;
}) {
  const records = useRecords();
  const id = createUniqueId();
  let box: HTMLDialogElement | undefined;
  onMount(() => box?.showModal());
  onCleanup(() => box?.close());
  return (
    <dialog
      ref={(element) => (box = element)}
      class="phone-dialog"
      aria-labelledby={id}
      onClose={() => props.onClose()}
    >
      <header class="row">
        <h2 id={id}>{phones[props.phone].title}</h2>
        <button type="button" class="button" onClick={() => props.onClose()}>
          {say.dialog.back}
        </button>
      </header>
      <Dynamic
        component={phones[props.phone].Panel}
        mark={records.settings().mark}
        take={props.take}
        onTake={(taken: Taken) => props.onTake(taken)}
      />
    </dialog>
  );
}
