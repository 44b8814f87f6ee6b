import { Match, Switch } from 'solid-js';
import say from './words/en';

export type MarkState = 'within' | 'beyond' | 'too close' | 'none';

export const verdictWords: Readonly<Record<MarkState, string>> = say.verdict;

/** A point of the beam, its tip at x. */
export const point = (x: number, beam: number, tip: number): string =>
  `M${x - 4.5} ${beam} h9 v${(tip - beam) * 0.45} L${x} ${tip} L${x - 4.5} ${beam + (tip - beam) * 0.45} z`;

/** A reading with its doubt: a line with end ticks. */
export const span = (from: number, to: number, y: number): string =>
  `M${from} ${y} H${to} M${from} ${y - 5} v10 M${to} ${y - 5} v10`;

/** The one sign: a disc between the points of a beam, past one, or across one with a line under it. Told apart without colour. */
export function VerdictMark(props: { state: MarkState }) {
  return (
    <svg class="mark" viewBox="0 0 60 44" aria-hidden="true">
      <path class="d-ink" d="M2 7 H58" />
      <path class="d-solid-ink" d={point(15, 7, 27) + point(39, 7, 27)} />
      <Switch>
        <Match when={props.state === 'within'}>
          <path class="d-ink" d={span(19, 35, 35)} />
          <circle class="d-solid-ink" cx="27" cy="35" r="4.5" />
        </Match>
        <Match when={props.state === 'beyond'}>
          <path class="d-red" d={span(46, 58, 35)} />
          <circle class="d-solid-red" cx="52" cy="35" r="4.5" />
        </Match>
        <Match when={props.state === 'too close'}>
          <path class="d-ink" d={`${span(31, 47, 35)} M33 30 h12`} />
          <circle class="d-solid-ink" cx="39" cy="35" r="4.5" />
        </Match>
      </Switch>
    </svg>
  );
}
