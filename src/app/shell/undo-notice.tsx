import { Show } from 'solid-js';
import { useRecords } from '../desk/context';
import say from './words/en';

/** Says what was removed and puts it back: stays until the person has read it, or removes the next thing. */
export function UndoNotice() {
  const records = useRecords();
  return (
    <Show when={records.undo()}>
      {(undo) => (
        <div class="notice row no-print" role="status">
          <span>{undo().said}</span>
          <button type="button" class="button" onClick={() => void records.putBack(undo())}>
            {say.undo.putBack}
          </button>
          <button type="button" class="button button-plain" onClick={() => records.forgetUndo()}>
            {say.undo.leave}
          </button>
        </div>
      )}
    </Show>
  );
}
