import { createMemo, createSignal, For, Show, type ParentProps } from 'solid-js';
import { A } from '@solidjs/router';
import { listed } from '../../engine/list';
import type { Ways } from '../../engine/ways';
import { catalogue, type WordedCause } from '../../diagnosis/catalogue';
import { causeOf } from '../../diagnosis/pick';
import { weigh, WORTH } from '../../diagnosis/worth';
import type { CauseId } from '../../diagnosis/types';
import { parseQuantity } from '../../quantity/parse';
import { count } from '../../quantity/kinds';
import { Fold } from '../../ui/fold';
import type { NewEntry } from './edit';
import { minutesWords } from './said';
import { setWorth, worth } from './worth';
import { useRecords } from '../desk/context';
import { titleOf } from '../desk/reading-entry';
import { WaysTable } from '../desk/ways-table';

const money = (amount: number): string => String(Math.round(amount));

/** A mend, its replacement beside it, and whether it cured. */
export function CaseMend(props: ParentProps<{ cause: CauseId; onEntry: (entry: NewEntry) => void }>) {
  const cause = () => causeOf(catalogue, props.cause);
  const [replacing, setReplacing] = createSignal(false);
  const way = () => (replacing() ? (cause().replace ?? cause().mend) : cause().mend);
  const calculator = () => listed.find(({ id }) => id === cause().mend.calculator)?.id;
  const done = (cured: boolean) => props.onEntry({ kind: 'mended', cause: props.cause, cured, note: way().headline });
  return (
    <>
      <p class="case-kicker">
        Next: mend, {minutesWords(way().minutes)}, {way().cost > 0 ? `parts about ${money(way().cost)}` : 'no parts'}
      </p>
      <h2>{way().headline}</h2>
      <p>
        Suspected: {cause().title}. <span class="faint">Part: {cause().part}.</span>
      </p>
      <div class="cautions">
        <strong>First</strong>
        <ul>
          <li>Switched off and unplugged, unless a step says otherwise; hot parts cold to the hand.</li>
          <li>{way().risk}</li>
        </ul>
      </div>
      <ol>
        <For each={way().steps}>{(line) => <li>{line}</li>}</For>
      </ol>
      <Show when={calculator()}>
        {(id) => (
          <A class="button case-wide" href={`/check/${id()}`}>
            By how much: {titleOf(id())}
          </A>
        )}
      </Show>
      <h3 class="case-ask">Did it cure the complaint?</h3>
      <p class="small">Try the machine as it failed. Proof: {cause().proof}</p>
      <div class="case-keys case-two">
        <button type="button" class="button case-answer" onClick={() => done(true)}>
          Yes, it is gone
        </button>
        <button type="button" class="button case-answer" onClick={() => done(false)}>
          No, still there
        </button>
      </div>
      <Show when={cause().replace}>
        <Fold title="Repair or replace" open>
          <SideBySide cause={props.cause} />
          <button type="button" class="button" onClick={() => setReplacing(!replacing())}>
            {replacing() ? 'Repair it after all' : 'Replace it instead'}
          </button>
        </Fold>
      </Show>
      {props.children}
    </>
  );
}

/** Minutes, money and risk of both ways, at the person's own hourly worth. */
function SideBySide(props: { cause: CauseId }) {
  const records = useRecords();
  const [text, setText] = createSignal(String(worth()));
  const [problem, setProblem] = createSignal<string>();
  const change = (typed: string) => {
    setText(typed);
    const read = parseQuantity(typed, count.one.kind, count.one.unit, records.settings().mark);
    if (!read.ok || read.value < 1 || read.value > 10_000) {
      setProblem(`Give a number from 1 to 10000; until then it is reckoned with ${worth()}.`);
      return;
    }
    setProblem(undefined);
    setWorth(read.value);
  };
  const ways = createMemo((): Ways => {
    const cause = causeOf(catalogue, props.cause);
    const weighed = weigh(cause, worth());
    type Remedy = NonNullable<WordedCause['replace']>;
    const row = (name: string, one: Remedy, total: number, mine: 'mend' | 'replace'): Ways['ways'][number] => ({
      name,
      standing: weighed.cheaper === mine ? 'advised' : 'will do',
      facts: [`${Math.round(one.minutes)}`, money(one.cost), money(total)],
      why: one.risk,
      needs: [],
    });
    const rows = [row('Repair', cause.mend, weighed.mend, 'mend')];
    if (cause.replace && weighed.replace !== undefined) {
      rows.push(row('Replace', cause.replace, weighed.replace, 'replace'));
    }
    const alike = weighed.cheaper === 'alike' ? ' The totals are alike at these rough prices: choose by the risk.' : '';
    return {
      title: 'Repair or replace',
      columns: ['min', 'parts', 'total'],
      ways: rows,
      note: `Total: parts, and minutes at your hour’s worth, in your own money. Times and prices are rough typicals.${alike}`,
    };
  });
  return (
    <>
      <label>
        An hour of mine is worth
        <input
          class="text-input"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          value={text()}
          onInput={(event) => change(event.currentTarget.value)}
        />
      </label>
      <p class="small faint">
        Typical {WORTH}, in the money you reckon prices in. Remembered until this page is closed; the order of the
        checks is reckoned with it too.
      </p>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <WaysTable ways={ways()} />
    </>
  );
}
