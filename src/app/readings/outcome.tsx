import { createMemo, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import {
  changedBetween,
  compare,
  didItWork,
  judgedBy,
  promisedOf,
  type Comparison,
  type Pair,
} from '../../machine/history';
import type { Reading } from '../../machine/schema';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { printChanged, type CheckFacts } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { printTime } from '../desk/time';
import { readingHref } from '../desk/reading-entry';
import { printPromised } from '../desk/promised';
import { nameIn, printGap, unbroken, unitIn } from '../desk/reading-print';
import say from './words/en';

const half = ({ low, high }: { readonly low: number; readonly high: number }): number => (high - low) / 2;

/** "Error across the bed: 0.412 ± 0.019 mm before, 0.011 ± 0.019 mm after. Better by 0.402 ± 0.027 mm; within the limit now." */
function printComparison(one: Comparison, after: Reading, mark: DecimalMark): string {
  const unit = unitIn(after, one.of);
  const print = (x: Comparison['before']) => unbroken(formatMeasured(x.value, half(x), unit, { mark }));
  const gap = unbroken(printGap(one.gain.value, half(one.gain), unit, mark));
  const stands = one.now === 'beyond' && one.was === 'beyond' ? 'still' : one.now;
  const name = nameIn(after, one.of);
  return say.outcome.comparison(name, print(one.before), print(one.after), one.change, gap, stands);
}

/** What a reading advised, and what the next one says of it. */
export function Outcome(props: { pair: Pair; facts: CheckFacts }) {
  const records = useRecords();
  const mark = () => records.settings().mark;
  const found = createMemo(() => {
    const { before, after } = props.pair;
    if (!after) return undefined;
    const comparisons = after.limits.flatMap((limit) => compare(before, after, limit) ?? []);
    return {
      after,
      answer: didItWork(comparisons),
      judged: judgedBy(comparisons),
      promised: promisedOf(before, after).map((one) => printPromised(one, mark())),
      changed: changedBetween(before, after, props.facts.uses).map((one) =>
        printChanged(one, before, (choice) => after.options[choice]?.text, mark()),
      ),
    };
  });
  return (
    <div class="panel outcome">
      <p>
        <A href={readingHref(props.pair.before)}>{printTime(props.pair.before.at)}</A>:{' '}
        {props.pair.before.order.sentence}
      </p>
      <Show when={found()} fallback={<p class="faint">{say.outcome.notYet}</p>}>
        {(now) => (
          <>
            <p>
              {say.outcome.question} <strong>{say.outcome.answers[now().answer]}</strong>
            </p>
            <ul>
              <For each={now().judged}>{(one) => <li>{printComparison(one, now().after, mark())}</li>}</For>
            </ul>
            <Show when={now().promised.length > 0}>
              <ul>
                <For each={now().promised}>{(one) => <li>{one}</li>}</For>
              </ul>
            </Show>
            <Show when={now().changed.length > 0}>
              <p class="problem">{say.outcome.changed(now().changed)}</p>
            </Show>
            <p class="small faint">
              {say.outcome.again} <A href={readingHref(now().after)}>{printTime(now().after.at)}</A>.{' '}
              {say.outcome.independent}
            </p>
          </>
        )}
      </Show>
    </div>
  );
}
