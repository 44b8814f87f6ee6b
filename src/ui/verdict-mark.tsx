import { Match, Switch } from 'solid-js';
import say from './words/en';

export type MarkState = 'within' | 'beyond' | 'too close' | 'none';

export const verdictWords: Readonly<Record<MarkState, string>> = say.verdict;

/** The verdict as a shape: a bar between the jaws, a bar past them, a bar across one. Told apart without colour. */
export function VerdictMark(props: { state: MarkState }) {
  return (
    <svg class="mark" viewBox="0 0 60 44" aria-hidden="true">
      <path class="d-ink" d="M6 8 v28 M6 8 h5 M6 36 h5 M38 8 v28 M38 8 h-5 M38 36 h-5" />
      <Switch fallback={<path class="d-ghost" d="M13 22 h18" />}>
        <Match when={props.state === 'within'}>
          <path class="d-ink" d="M13 22 h18 M13 17 v10 M31 17 v10" />
          <circle class="d-ink d-shade" cx="22" cy="22" r="5" />
        </Match>
        <Match when={props.state === 'beyond'}>
          <path class="d-accent" d="M43 22 h14 M43 17 v10 M57 17 v10" />
          <path class="d-solid" d="M50 14 l8 8 l-8 8 l-8 -8 z" />
        </Match>
        <Match when={props.state === 'too close'}>
          <path class="d-accent" d="M27 22 h22 M27 17 v10 M49 17 v10" />
          <path class="d-ink d-fill" d="M38 14 l7 14 h-14 z" />
        </Match>
      </Switch>
    </svg>
  );
}
