import { For } from 'solid-js';
import { sideName, type Side, type SignPicture, type Signs } from '../../../engine/signs';
import { drawings } from './drawings';
import say from '../words/en';
import './signs.css';

const SIDES: readonly Side[] = ['minus', 'plus'];

function Picture(props: { of: SignPicture }) {
  return (
    <svg class="sign-picture" viewBox="0 0 64 40" aria-hidden="true">
      <path class="d-ghost" d={drawings[props.of].ghost} />
      <path class="d-ink" d={drawings[props.of].ink} />
      <path class="d-accent" d={drawings[props.of].arrow} />
    </svg>
  );
}

/** Two pictures of how the thing stands, to tap in place of a sign. */
export function SignKeys(props: {
  /** What is read. */
  label: string;
  pictures: Signs;
  /** The one in force; undefined until one is picked. */
  side: Side | undefined;
  onPick: (side: Side) => void;
}) {
  return (
    <div class="sign-keys" role="group" aria-label={say.signs.which(props.label)}>
      <For each={SIDES}>
        {(side) => (
          <button type="button" class="sign-key" aria-pressed={props.side === side} onClick={() => props.onPick(side)}>
            <Picture of={props.pictures[side]} />
            <span>{sideName(props.pictures[side])}</span>
          </button>
        )}
      </For>
    </div>
  );
}
