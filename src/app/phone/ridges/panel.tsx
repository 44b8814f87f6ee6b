import { createSignal, onCleanup, Show } from 'solid-js';
import { openPicture, type OpenPicture, type Progress } from '../../../instrument/picture';
import { Fold } from '../../../ui/fold';
import type { PanelProps } from '../panel-props';
import { RidgesBench } from './bench';
import { RidgesHow } from './how';
import { Task } from './task';
import { troubleWords } from './ridges-words';

function FileKey(props: { label: string; main: boolean; camera: boolean; onFile: (file: File) => void }) {
  const take = (field: HTMLInputElement) => {
    const file = field.files?.[0];
    // The same file may be chosen again.
    field.value = '';
    if (file) props.onFile(file);
  };
  return (
    <label class={props.main ? 'button button-main file-key' : 'button file-key'}>
      {props.label}
      <input
        type="file"
        accept="image/*"
        capture={props.camera ? 'environment' : undefined}
        onChange={(event) => take(event.currentTarget)}
      />
    </label>
  );
}

/** The spacing of a wall's ridges, from a photo of it. */
export function RidgesPanel(props: PanelProps) {
  const [picture, setPicture] = createSignal<OpenPicture>();
  const [progress, setProgress] = createSignal<Progress>();
  const [trouble, setTrouble] = createSignal<string>();
  let running: AbortController | undefined;

  const put = (next: OpenPicture | undefined) => {
    const before = picture();
    setPicture(() => next);
    before?.close();
    before?.preview.close();
  };
  onCleanup(() => {
    running?.abort();
    put(undefined);
  });

  const open = async (file: File) => {
    running?.abort();
    const stop = new AbortController();
    running = stop;
    setTrouble(undefined);
    setProgress({ part: 'decoding', done: 0 });
    try {
      const opened = await openPicture(file, stop.signal, setProgress);
      if (running === stop && !stop.signal.aborted) put(opened);
      else {
        opened.close();
        opened.preview.close();
      }
    } catch (error) {
      if (running === stop) setTrouble(troubleWords(error, 'Reading the picture was cancelled.'));
    } finally {
      if (running === stop) setProgress(undefined);
    }
  };

  return (
    <div class="measure">
      <div class="row">
        <FileKey label="Take a picture" main={!picture()} camera onFile={(file) => void open(file)} />
        <FileKey
          label={picture() ? 'Choose another' : 'Choose a picture'}
          main={false}
          camera={false}
          onFile={(file) => void open(file)}
        />
      </div>
      <p class="small faint">The picture stays on this device and is not kept.</p>
      <Show when={progress()}>{(now) => <Task progress={now()} onCancel={() => running?.abort()} />}</Show>
      <Show when={trouble()}>
        {(words) => (
          <p class="problem" role="alert">
            {words()}
          </p>
        )}
      </Show>
      <Show when={picture()} keyed fallback={<HowFirst />}>
        {(opened) => (
          <>
            <RidgesBench picture={opened} mark={props.mark} take={props.take} onTake={(taken) => props.onTake(taken)} />
            <Fold title="How to take the photo">
              <RidgesHow />
            </Fold>
          </>
        )}
      </Show>
    </div>
  );
}

function HowFirst() {
  return (
    <section class="section">
      <h2>How to take the photo</h2>
      <RidgesHow />
    </section>
  );
}
