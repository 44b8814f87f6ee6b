import type { Progress } from '../../../instrument/picture';
import say from './words/en';

/** A long task: what it is at, how far, and a key to stop it. */
export function Task(props: { progress: Progress; onCancel: () => void }) {
  return (
    <div class="task">
      <p role="status">{say.part[props.progress.part]}</p>
      <progress max="1" value={props.progress.done} aria-label={say.part[props.progress.part]} />
      <button type="button" class="button" onClick={() => props.onCancel()}>
        {say.cancel}
      </button>
    </div>
  );
}
