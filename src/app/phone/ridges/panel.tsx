import './ridges.css';
import { createSignal, onCleanup, Show } from 'solid-js';
import { openPicture, type OpenPicture, type Progress } from '../../../instrument/picture';
import { Fold } from '../../../ui/fold';
import type { PanelProps } from '../panel';
import { RidgesAsking } from './asking';
import { RidgesHow } from './how';
import { createLooking } from './looking';
import { createMarking } from './marking';
import { RidgesPicture } from './picture';
import { Task } from './task';
import { troubleOf } from './trouble';
import say from './words/en';

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
      if (running === stop) setTrouble(troubleOf(error, say.cancelled.reading));
    } finally {
      if (running === stop) setProgress(undefined);
    }
  };

  return (
    <div class="measure">
      <div class="row">
        <FileKey label={say.panel.take} main={!picture()} camera onFile={(file) => void open(file)} />
        <FileKey
          label={picture() ? say.panel.another : say.panel.choose}
          main={false}
          camera={false}
          onFile={(file) => void open(file)}
        />
      </div>
      <p class="small faint">{say.panel.notKept}</p>
      <Show when={progress()}>{(now) => <Task progress={now()} onCancel={() => running?.abort()} />}</Show>
      <Show when={trouble()}>
        {(words) => (
          <p class="problem" role="alert">
            {words()}
          </p>
        )}
      </Show>
      <Show when={picture()} keyed fallback={<HowFirst />}>
        {(opened) => {
          const marking = createMarking(opened);
          const looking = createLooking(opened, marking.marks, () => props.mark);
          return (
            <>
              <div class="measure-grid">
                <RidgesPicture
                  picture={opened}
                  marking={marking}
                  finding={looking.isStale() ? undefined : looking.found()?.finding}
                />
                <RidgesAsking
                  looking={looking}
                  mark={props.mark}
                  take={props.take}
                  onTake={(taken) => props.onTake(taken)}
                />
              </div>
              <Fold title={say.how.title}>
                <RidgesHow />
              </Fold>
            </>
          );
        }}
      </Show>
    </div>
  );
}

function HowFirst() {
  return (
    <section class="section">
      <h2>{say.how.title}</h2>
      <RidgesHow />
    </section>
  );
}
