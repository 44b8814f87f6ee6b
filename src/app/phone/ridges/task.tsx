import type { Progress } from '../../../instrument/picture';
import { partWords } from './ridges-words';

/** A long task: what it is at, how far, and a key to stop it. */
export function Task(props: { progress: Progress; onCancel: () => void }) {
  return (
    <div class="task">
      <p role="status">{partWords[props.progress.part]}</p>
      <progress max="1" value={props.progress.done} aria-label={partWords[props.progress.part]} />
      <button type="button" class="button" onClick={() => props.onCancel()}>
        Cancel
      </button>
    </div>
  );
}
