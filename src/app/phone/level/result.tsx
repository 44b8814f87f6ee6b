import { For, Show } from 'solid-js';
import type { DecimalMark } from '../../../quantity/parse';
import type { Level } from '../../../signal/level-reversal';
import { SlopeDrawing } from './drawing';
import { angleText, budgetOf, endWords, layingWords, slopeText, stepsRule } from './slope-words';

/** What the pairs give: the slope, which end is high, the sensor's own error, and what the ± is made of. */
export function SlopeResult(props: { level: Level; pairs: number; mark: DecimalMark }) {
  const text = (value: number, half: number) => slopeText(value, half, props.mark);
  return (
    <section class="section">
      <h2>
        {props.pairs === 1 ? 'From one pair' : `From ${props.pairs} pairs`}: {endWords(props.level)}
      </h2>
      <p class="level-value">{text(props.level.slope, props.level.halfWidth)}</p>
      <p class="faint">{angleText(props.level.slope, props.level.halfWidth, props.mark)}, 95 %</p>
      <SlopeDrawing slope={props.level.slope} text={text(Math.abs(props.level.slope), props.level.halfWidth)} />
      <For each={layingWords(props.level)}>{(words) => <p>{words}</p>}</For>
      <Show when={stepsRule(props.level)}>
        <p>
          Most of the ± is the steps in which this browser passes the sensor’s numbers on: more pairs do not help much.
          A machinist’s level, two heights, or a browser with finer numbers do.
        </p>
      </Show>
      <details>
        <summary>What the ± is made of</summary>
        <ul class="level-list">
          <For each={budgetOf(props.level)}>
            {(row) => (
              <li>
                <span>{row.name}</span>
                <span>± {text(row.half, row.half).replace(/^.*± /, '')}</span>
              </li>
            )}
          </For>
        </ul>
        <p class="faint small">
          Added in squares. The sensor’s own error, cancelled here: {text(props.level.zero, props.level.halfWidth)}{' '}
          along, {text(props.level.zeroAcross, props.level.halfWidth)} across.
        </p>
      </details>
    </section>
  );
}
