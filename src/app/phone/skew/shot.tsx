import { createEffect, createResource, For, Show } from 'solid-js';
import type { OpenPicture, Progress } from '../../../instrument/picture';
import { formatNumber } from '../../../quantity/format';
import type { DecimalMark } from '../../../quantity/parse';
import type { SheetFinding } from '../../../signal/sheet';
import type { Point } from '../../../signal/ridge-types';
import { FileKey } from '../photo/file-key';
import { createOpening } from '../photo/opening';
import { Task } from '../photo/task';
import { troubleOf } from '../photo/trouble';
import shared from '../photo/words/en';
import say from './words/en';

const MM = 1e-3;

const outline = (corners: readonly Point[]): string =>
  corners.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** One of the two photos: opened, and what was found in it. */
export function createShot() {
  const opening = createOpening();
  let finding: AbortController | undefined;
  const [found] = createResource(opening.picture, (picture) => {
    finding = new AbortController();
    return picture.sheet(finding.signal);
  });
  const busy = (): Progress | undefined =>
    opening.progress() ?? (found.loading ? { part: 'fitting', done: 0.5 } : undefined);
  return {
    picture: opening.picture,
    open: opening.open,
    busy,
    stop: () => {
      opening.stop();
      finding?.abort();
    },
    trouble: () =>
      opening.trouble() ?? (found.state === 'errored' ? troubleOf(found.error, shared.cancelled.reading) : undefined),
    finding: (): SheetFinding | undefined => (opening.picture() && found.state === 'ready' ? found() : undefined),
  };
}

export type Shot = ReturnType<typeof createShot>;

/** The picture, small, with the outlines found on it. */
function Seen(props: { picture: OpenPicture; finding: SheetFinding | undefined }) {
  const corners = () => {
    const found = props.finding;
    if (!found) return [];
    return found.status === 'seen' ? [found.sheet, found.part] : found.sheet ? [found.sheet] : [];
  };
  let canvas: HTMLCanvasElement | undefined;
  createEffect(() => {
    const { preview } = props.picture;
    if (!canvas || preview.width === 0) return;
    [canvas.width, canvas.height] = [preview.width, preview.height];
    canvas.getContext('2d')?.drawImage(preview, 0, 0);
  });
  return (
    <div class="shot" role="img" aria-label={say.outlines}>
      <canvas ref={(element) => (canvas = element)} />
      <svg viewBox={`0 0 ${props.picture.width} ${props.picture.height}`} aria-hidden="true">
        <For each={corners()}>
          {(four) => (
            <>
              <polygon class="shot-casing" points={outline(four)} />
              <polygon class="shot-line" points={outline(four)} />
            </>
          )}
        </For>
      </svg>
    </div>
  );
}

/** Keys for one photo, the photo, and what was found in it or why nothing was. */
export function ShotView(props: { shot: Shot; words: (typeof say.photos)['first']; main: boolean; mark: DecimalMark }) {
  const seen = () => ((found) => (found?.status === 'seen' ? found : undefined))(props.shot.finding());
  const refused = () => ((found) => (found?.status === 'refused' ? found.reason : undefined))(props.shot.finding());
  const print = (metres: number) => formatNumber(metres / MM, 3, props.mark);
  return (
    <section class="section" aria-label={props.words.title}>
      <h2>{props.words.title}</h2>
      <div class="row shot-keys">
        <FileKey label={props.words.take} main={props.main} camera onFile={(file) => void props.shot.open(file)} />
        <FileKey label={props.words.choose} main={false} camera={false} onFile={(file) => void props.shot.open(file)} />
      </div>
      <Show when={props.shot.busy()}>{(now) => <Task progress={now()} onCancel={() => props.shot.stop()} />}</Show>
      <Show when={props.shot.trouble()}>
        {(words) => (
          <p class="problem" role="alert">
            {words()}
          </p>
        )}
      </Show>
      <Show when={props.shot.picture()} keyed>
        {(picture) => <Seen picture={picture} finding={props.shot.finding()} />}
      </Show>
      <div role="status">
        <Show when={seen()}>{(one) => <p>{say.seen(print(one().size[0]), print(one().size[1]))}</p>}</Show>
        <Show when={refused()}>{(reason) => <p class="problem">{say.refusal[reason()]}</p>}</Show>
      </div>
    </section>
  );
}
