import { createMemo, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import {
  changedBetween,
  compare,
  didItWork,
  judgedBy,
  type Answer,
  type Comparison,
  type Pair,
} from '../../machine/history';
import type { Reading } from '../../machine/schema';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { limitsIn, nameIn, printChanged, printGap, unitIn, whole, type CheckFacts } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { printTime } from '../desk/time';
import { readingHref } from '../desk/reading-entry';

const ANSWERS: Readonly<Record<Answer, string>> = {
  yes: 'Yes.',
  settled: 'Within the limit now, though by no more than these readings can tell.',
  'in part': 'In part: better, but not surely within the limit.',
  'no change': 'No change that these readings can tell.',
  worse: 'No: worse than before.',
  'not comparable': 'These two readings do not compare: another option or limit was in force.',
};

function printNow(one: Comparison): string {
  if (one.now === 'within') return 'within the limit now';
  if (one.now === 'too close') return 'whether it is within the limit is too close to call';
  if (one.now === 'none') return 'no limit to hold it against';
  return one.was === 'beyond' ? 'still beyond the limit' : 'beyond the limit now';
}

const half = ({ low, high }: { readonly low: number; readonly high: number }): number => (high - low) / 2;

/** "Error across the bed: 0.412 ± 0.019 mm before, 0.011 ± 0.019 mm after. Better by 0.402 ± 0.027 mm; within the limit now." */
function printComparison(one: Comparison, after: Reading, facts: CheckFacts, mark: DecimalMark): string {
  const unit = unitIn(facts.calculator, after, one.of);
  const print = (x: Comparison['before']) => whole(formatMeasured(x.value, half(x), unit, { mark }));
  const gap = whole(printGap(one.gain.value, half(one.gain), unit, mark));
  const change = {
    better: `Better by ${gap}`,
    worse: `Worse by ${gap}`,
    'no change': `No nearer and no farther than these readings can tell (${gap})`,
  }[one.change];
  const name = nameIn(facts.calculator, after, one.of);
  return `${name}: ${print(one.before)} before, ${print(one.after)} after. ${change}; ${printNow(one)}.`;
}

/** What a reading advised, and what the next one says of it. */
export function Outcome(props: { pair: Pair; facts: CheckFacts }) {
  const records = useRecords();
  const mark = () => records.settings().mark;
  const found = createMemo(() => {
    const { before, after } = props.pair;
    if (!after) return undefined;
    const comparisons = limitsIn(props.facts.calculator, after).flatMap((limit) => compare(before, after, limit) ?? []);
    return {
      after,
      answer: didItWork(comparisons),
      judged: judgedBy(comparisons),
      changed: changedBetween(before, after, props.facts.uses),
    };
  });
  return (
    <div class="panel outcome">
      <p>
        <A href={readingHref(props.pair.before)}>{printTime(props.pair.before.at)}</A>: {props.pair.before.headline}
      </p>
      <Show when={found()} fallback={<p class="faint">Not measured again since: take it once more to see.</p>}>
        {(now) => (
          <>
            <p>
              Did it work? <strong>{ANSWERS[now().answer]}</strong>
            </p>
            <ul>
              <For each={now().judged}>
                {(one) => <li>{printComparison(one, now().after, props.facts, mark())}</li>}
              </For>
            </ul>
            <Show when={now().changed.length > 0}>
              <p class="problem">
                Something else was changed between the two, so the difference is not the correction’s alone.{' '}
                {now()
                  .changed.map((one) => printChanged(one, props.facts.calculator, mark()))
                  .join('; ')}
                .
              </p>
            </Show>
            <p class="small faint">
              Measured again <A href={readingHref(now().after)}>{printTime(now().after.at)}</A>. The two readings’
              errors are taken as independent.
            </p>
          </>
        )}
      </Show>
    </div>
  );
}
