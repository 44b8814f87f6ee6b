import { createMemo, createSignal, Index, Show } from 'solid-js';
import { formatNumber } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { LONGEST_REPEAT, patternOf, USUAL_HEIGHTS } from './model';
import say from './words/en';

interface Props {
  /** Travel of one step of the grid, m; 0 or less where there is none. */
  readonly g: number;
  /** The same as printed. */
  readonly travel: string;
  readonly grid: 'full' | 'micro';
  readonly mark: DecimalMark;
}

/** The usual layer heights on this grid, folded away until asked for. */
export function UsualHeights(props: Props) {
  const [unfolded, setUnfolded] = createSignal(false);
  const rows = createMemo(() =>
    unfolded() && props.g > 0 ? USUAL_HEIGHTS.map((height) => ({ height, ...patternOf(height, props.g) })) : [],
  );
  const bare = (si: number | undefined) => (si === undefined ? '–' : formatNumber(si * 1e3, 4, props.mark));
  return (
    <Show when={props.g > 0}>
      <details class="seldom" onToggle={(event) => setUnfolded(event.currentTarget.open)}>
        <summary>{say.figure.usual.title}</summary>
        <table class="sheet-table">
          <caption>{say.figure.usual.caption(props.grid, props.travel)}</caption>
          <thead>
            <tr>
              <th scope="col">{say.figure.usual.layer}</th>
              <th scope="col">{say.figure.usual.repeats}</th>
              <th scope="col">{say.figure.usual.error}</th>
              <th scope="col">{say.figure.usual.below}</th>
              <th scope="col">{say.figure.usual.above}</th>
            </tr>
          </thead>
          <tbody>
            <Index each={rows()}>
              {(row) => (
                <tr>
                  <th scope="row">{bare(row().height)}</th>
                  <td>{row().repeat ?? say.figure.usual.over(LONGEST_REPEAT)}</td>
                  <td>
                    {row().repeat === 1
                      ? say.figure.usual.none
                      : `${formatNumber((row().largest / row().height) * 100, 2, props.mark)} %`}
                  </td>
                  <td>{bare(row().below)}</td>
                  <td>{bare(row().above)}</td>
                </tr>
              )}
            </Index>
          </tbody>
        </table>
      </details>
    </Show>
  );
}
