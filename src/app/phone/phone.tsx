import { createUniqueId, lazy, onCleanup, onMount, Suspense, type Component } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { PhoneInstrument } from '../../engine/calculator';
import { useRecords } from '../desk/context';
import type { Taken } from '../desk/handed';
import type { PanelProps } from './panel-props';

interface Phone {
  readonly title: string;
  /** The question it answers. */
  readonly question: string;
  /** What a person would say, for the search. */
  readonly sayings: readonly string[];
  /** Words on the key beside a line that it can fill. */
  readonly key: string;
  readonly Panel: Component<PanelProps>;
}

/** The phone's own instruments. Each is loaded when it is first asked for. */
export const phones: Readonly<Record<PhoneInstrument, Phone>> = {
  note: {
    title: 'Note of a belt',
    question: 'Which note does a plucked belt give?',
    sayings: ['belt too loose', 'belt too tight', 'pluck the belt', 'listen to the belt', 'microphone'],
    key: 'Listen with the phone',
    Panel: lazy(async () => ({ default: (await import('./note/panel')).NotePanel })),
  },
  ridges: {
    title: 'Ridges in a photo',
    question: 'How far apart are the ridges of a wall?',
    sayings: ['ridges up the wall', 'banding', 'lines in a photo', 'camera', 'picture of a wall'],
    key: 'Measure in a photo',
    Panel: lazy(async () => ({ default: (await import('./ridges/panel')).RidgesPanel })),
  },
  slope: {
    title: 'Level',
    question: 'How far is it from level?',
    sayings: ['spirit level', 'gantry slopes', 'table not level', 'leaning'],
    key: 'Lay the phone on it',
    Panel: lazy(async () => ({ default: (await import('./level/panel')).SlopePanel })),
  },
};

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
          Back to the sheet
        </button>
      </header>
      <Suspense fallback={<p>Fetching the instrument…</p>}>
        <Dynamic
          component={phones[props.phone].Panel}
          mark={records.settings().mark}
          take={props.take}
          onTake={(taken: Taken) => props.onTake(taken)}
        />
      </Suspense>
    </dialog>
  );
}
