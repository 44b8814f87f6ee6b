import { Show } from 'solid-js';
import type { Stage } from '../../worker/stage';
import { useRecords } from './context';
import say from './words/en';

function sentence(stage: Stage): string {
  switch (stage.kind) {
    case 'coming':
      return say.copy.coming(stage.have, stage.of);
    case 'whole':
      return say.copy.whole(stage.of);
    case 'failed':
      return say.copy.failed(stage.have, stage.of, stage.file, say.copy.why[stage.why]);
  }
}

/** How far the copy of the app on this device is; with a key to go on where it stopped. */
export function CopyStage() {
  const records = useRecords();
  return (
    <Show when={records.copyStage()}>
      {(stage) => (
        <>
          <p role="status">{sentence(stage())}</p>
          <Show when={stage().kind === 'failed'}>
            <p>
              <button type="button" class="button" onClick={() => void records.checkCopy()}>
                {say.copy.again}
              </button>
            </p>
          </Show>
        </>
      )}
    </Show>
  );
}
