import { For, Show } from 'solid-js';
import type { DecimalMark } from '../../../quantity/parse';
import type { Level } from '../../../signal/level-reversal';
import { SlopeDrawing } from './drawing';
import { budgetOf, printAngle, printSlope, sayEnd, sayLaying, stepsRule } from './print';
import say from './words/en';

/** What the pairs give: the slope, which end is high, the sensor's own error, and what the ± is made of. */
export function SlopeResult(props: { level: Level; pairs: number; mark: DecimalMark }) {
  const text = (value: number, half: number) => printSlope(value, half, props.mark);
  return (
    <section class="section">
      <h2>{sayEnd(props.level, props.pairs)}</h2>
      <p class="level-value">{text(props.level.slope, props.level.halfWidth)}</p>
      <p class="faint">{say.result.interval(printAngle(props.level.slope, props.level.halfWidth, props.mark))}</p>
      <SlopeDrawing slope={props.level.slope} text={text(Math.abs(props.level.slope), props.level.halfWidth)} />
      <For each={sayLaying(props.level)}>{(words) => <p>{words}</p>}</For>
      <Show when={stepsRule(props.level)}>
        <p>{say.result.stepsRule}</p>
      </Show>
      <details>
        <summary>{say.budget.title}</summary>
        <ul class="level-list">
          <For each={budgetOf(props.level)}>
            {(row) => (
              <li>
                <span>{row.name}</span>
                <span>{say.budget.half(text(row.half, row.half).replace(/^.*± /, ''))}</span>
              </li>
            )}
          </For>
        </ul>
        <p class="faint small">
          {say.budget.squares}{' '}
          {say.budget.zero(
            text(props.level.zero, props.level.halfWidth),
            text(props.level.zeroAcross, props.level.halfWidth),
          )}
        </p>
      </details>
    </section>
  );
}
