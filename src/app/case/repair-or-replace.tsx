import { createMemo, createSignal } from 'solid-js';
import type { Ways } from '../../engine/ways';
import { catalogue, type WordedCause } from '../../diagnosis/catalogue';
import { causeOf } from '../../diagnosis/pick';
import { weigh, WORTH } from '../../diagnosis/worth';
import type { CauseId } from '../../diagnosis/types';
import { parseQuantity } from '../../quantity/parse';
import { count } from '../../quantity/kinds';
import { Problem } from './problem';
import { money, setWorth, worth } from './worth';
import say from './words/en';
import { useRecords } from '../desk/context';
import { WaysTable } from '../desk/ways-table';

type Remedy = NonNullable<WordedCause['replace']>;

/** What an hour may be worth, in the money that costs are in. */
const LEAST = 1;
const MOST = 10_000;

/** Minutes, money and risk of both ways, at the person's own hourly worth. */
export function RepairOrReplace(props: { cause: CauseId }) {
  const records = useRecords();
  const [text, setText] = createSignal(String(worth()));
  const [problem, setProblem] = createSignal<string>();
  const change = (typed: string) => {
    setText(typed);
    const read = parseQuantity(typed, count.one.kind, count.one.unit, records.settings().mark);
    if (!read.ok || read.value < LEAST || read.value > MOST) {
      setProblem(say.ways.bad(LEAST, MOST, worth()));
      return;
    }
    setProblem(undefined);
    setWorth(read.value);
  };
  const ways = createMemo((): Ways => {
    const cause = causeOf(catalogue, props.cause);
    const weighed = weigh(cause, worth());
    const row = (name: string, one: Remedy, total: number, mine: 'mend' | 'replace'): Ways['ways'][number] => ({
      name,
      standing: weighed.cheaper === mine ? 'advised' : 'will do',
      facts: [`${Math.round(one.minutes)}`, money(one.cost), money(total)],
      why: one.risk,
      needs: [],
    });
    const rows = [row(say.ways.mend, cause.mend, weighed.mend, 'mend')];
    if (cause.replace && weighed.replace !== undefined) {
      rows.push(row(say.ways.replace, cause.replace, weighed.replace, 'replace'));
    }
    return {
      title: say.ways.title,
      columns: [say.ways.minutes, say.ways.parts, say.ways.total],
      ways: rows,
      note: weighed.cheaper === 'alike' ? say.ways.alike : say.ways.note,
    };
  });
  return (
    <>
      <label>
        {say.ways.worth}
        <input
          class="text-input"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          value={text()}
          onInput={(event) => change(event.currentTarget.value)}
        />
      </label>
      <p class="small faint">{say.ways.typical(WORTH)}</p>
      <Problem sentence={problem()} />
      <WaysTable ways={ways()} />
    </>
  );
}
