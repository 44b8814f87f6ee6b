import './photo.css';
import { Show, type Component, type JSX } from 'solid-js';
import type { OpenPicture } from '../../../instrument/picture';
import { Fold } from '../../../ui/fold';
import { FileKey } from './file-key';
import { createOpening } from './opening';
import { Task } from './task';
import say from './words/en';

/** A picture taken or chosen, what is done with it, and how to take one. */
export function PhotoPanel(props: { title: string; How: Component; children: (opened: OpenPicture) => JSX.Element }) {
  const opening = createOpening();
  return (
    <div class="measure">
      <div class="row">
        <FileKey label={say.panel.take} main={!opening.picture()} camera onFile={(file) => void opening.open(file)} />
        <FileKey
          label={opening.picture() ? say.panel.another : say.panel.choose}
          main={false}
          camera={false}
          onFile={(file) => void opening.open(file)}
        />
      </div>
      <p class="small faint">{say.panel.notKept}</p>
      <Show when={opening.progress()}>{(now) => <Task progress={now()} onCancel={() => opening.stop()} />}</Show>
      <Show when={opening.trouble()}>
        {(words) => (
          <p class="problem" role="alert">
            {words()}
          </p>
        )}
      </Show>
      <Show
        when={opening.picture()}
        keyed
        fallback={
          <section class="section">
            <h2>{props.title}</h2>
            <props.How />
          </section>
        }
      >
        {(opened) => (
          <>
            <div class="measure-grid">{props.children(opened)}</div>
            <Fold title={props.title}>
              <props.How />
            </Fold>
          </>
        )}
      </Show>
    </div>
  );
}
