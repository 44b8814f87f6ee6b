import { createResource, createSignal, Show } from 'solid-js';
import type { Reading } from '../../machine/schema';
import { useRecords } from './context';
import { photoAddress, photoKb, shrinkPhoto } from './photo';
import say from './words/en';
import './reading-photo.css';

/** The photo of a reading or of a case, if it has one; adds one, removes it. */
export function ReadingPhoto(props: {
  /** What the photo belongs to. */
  reading: Pick<Reading, 'machine' | 'at' | 'id'>;
  title?: string;
  /** Words on the key that takes one. */
  ask?: string;
  alt?: string;
}) {
  const records = useRecords();
  const [busy, setBusy] = createSignal(false);
  const [problem, setProblem] = createSignal<string>();
  const [photo] = createResource(
    () => ({
      machine: props.reading.machine,
      at: props.reading.at,
      id: props.reading.id,
      tick: records.readingsTick(),
    }),
    (taken) => records.photoOf(taken),
  );
  const add = async (file: File | undefined) => {
    if (!file) return;
    setProblem(undefined);
    setBusy(true);
    const picture = await shrinkPhoto(file);
    if (typeof picture === 'string') setProblem(picture);
    else await records.keepPhoto(props.reading, picture);
    setBusy(false);
  };
  return (
    <section class="section">
      <h2>{props.title ?? say.photo.title}</h2>
      <Show
        when={photo.latest}
        fallback={
          <label class="no-print">
            {props.ask ?? say.photo.ask}
            <input
              class="text-input"
              type="file"
              accept="image/*"
              disabled={busy()}
              onChange={(event) => void add(event.currentTarget.files?.[0])}
            />
          </label>
        }
      >
        {(kept) => (
          <>
            <img
              class="photo"
              src={photoAddress(kept())}
              width={kept().width}
              height={kept().height}
              alt={props.alt ?? say.photo.alt}
            />
            <div class="row section no-print">
              <span class="faint">{say.photo.size(kept().width, kept().height, photoKb(kept()))}</span>
              <button type="button" class="button" onClick={() => void records.removePhoto(props.reading)}>
                {say.photo.remove}
              </button>
            </div>
          </>
        )}
      </Show>
      <Show when={busy()}>
        <p role="status">{say.photo.shrinking}</p>
      </Show>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
    </section>
  );
}
