import type { ParentProps } from 'solid-js';
import say from './words/en';

/** What comes before a step, as items of its list. */
export function Cautions(props: ParentProps) {
  return (
    <div class="cautions">
      <strong>{say.cautions}</strong>
      <ul>{props.children}</ul>
    </div>
  );
}
