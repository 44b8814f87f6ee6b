import { createMemo, createResource, For, Show } from 'solid-js';
import { takesFile, type Choice, type Difference } from '../../machine/exchange-merge';
import { outcomeOf, type Group, type Item } from '../../machine/exchange-plan';
import { ChoiceField } from '../../ui/choice-field';
import { cardPlaces } from '../desk/card-places';
import { useRecords } from '../desk/context';
import { printSide, printWhat, type Places } from './differences';
import say from './words/en';

const CHOICES = (['newest', 'here', 'file'] as const).map((id) => ({ id, label: say.group.choices[id] }));

/** What may belong to a machine, or to none, in the order it is told. */
const KINDS = ['reading', 'photo', 'case', 'draft'] as const;

const DIFFERENCES_SHOWN = 60;

function machineSentence({ file, state }: Item): string {
  if (file.type !== 'machine') return '';
  return state === 'added' ? say.group.machine.added(Object.keys(file.values).length) : say.group.machine[state];
}

/** "12 readings: 3 to be added, 8 the same, 1 differs." */
function countSentence(kind: (typeof KINDS)[number], items: readonly Item[]): string {
  const of = (wanted: (item: Item) => boolean) => items.filter(wanted).length;
  const added = of(({ state }) => state === 'added');
  const same = of(({ state }) => state === 'same');
  const other = items.length - added - same;
  return say.group.counts(kind, items.length, [
    ...(added > 0 ? [say.group.added(added)] : []),
    ...(same > 0 ? [say.group.same(same)] : []),
    ...(other > 0 ? [say.group.differ(other)] : []),
  ]);
}

interface Row {
  readonly item: Item;
  readonly difference: Difference;
}

/** What a file would do to one machine and all that is its, or to what belongs to none. */
export function GroupPlan(props: { group: Group; choice: Choice; onChoose: (choice: Choice) => void }) {
  const machine = () => props.group.items.find(({ file }) => file.type === 'machine');
  const sentences = () =>
    KINDS.flatMap((kind) => {
      const items = props.group.items.filter(({ file }) => file.type === kind);
      return items.length === 0 ? [] : [countSentence(kind, items)];
    });
  const settings = () => props.group.items.find(({ file }) => file.type === 'settings');
  const rows = createMemo(() =>
    props.group.items.flatMap((item) => item.differences.map((difference): Row => ({ item, difference }))),
  );
  return (
    <div class="section">
      <h4>{props.group.machine === null ? say.group.none : props.group.name}</h4>
      <p>
        {((item) => (item ? `${machineSentence(item)} ` : ''))(machine())}
        {sentences().join(' ')}
        {((item) => (item?.state === 'added' ? ` ${say.group.settings}` : ''))(settings())}
      </p>
      <Show when={props.group.namesake && machine()?.state === 'added'}>
        <p class="small">{say.group.namesake}</p>
      </Show>
      <Show when={rows().length > 0}>
        <ChoiceField
          label={say.group.where}
          options={CHOICES}
          value={props.choice}
          hint={say.group.hint}
          onPick={(id) => {
            const picked = CHOICES.find((one) => one.id === id);
            if (picked) props.onChoose(picked.id);
          }}
        />
        <Differences rows={rows()} choice={props.choice} />
      </Show>
    </div>
  );
}

/** True where the file's side would stand afterwards. */
function takes({ item, difference }: Row, choice: Choice): boolean {
  const { type } = item.file;
  return type === 'machine' || type === 'settings'
    ? takesFile(difference, choice)
    : outcomeOf(item, choice) !== undefined;
}

function Differences(props: { rows: readonly Row[]; choice: Choice }) {
  const records = useRecords();
  const [known] = createResource(cardPlaces);
  const places = (): Places => new Map((known.latest ?? []).map((place) => [place.place, place]));
  // Before the names of the places are there, a line would show a place's id.
  const shown = () => (known.latest ? props.rows.slice(0, DIFFERENCES_SHOWN) : []);
  return (
    <>
      <table class="sheet-table">
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">{say.group.what}</span>
            </th>
            <th scope="col">{say.group.here}</th>
            <th scope="col">{say.group.inFile}</th>
          </tr>
        </thead>
        <tbody>
          <For each={shown()}>
            {(row) => (
              <tr>
                <th scope="row">{printWhat(row.item, row.difference, places())}</th>
                <Side
                  row={row}
                  file={false}
                  stands={!takes(row, props.choice)}
                  places={places()}
                  mark={records.settings().mark}
                />
                <Side
                  row={row}
                  file={true}
                  stands={takes(row, props.choice)}
                  places={places()}
                  mark={records.settings().mark}
                />
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <Show when={props.rows.length > DIFFERENCES_SHOWN}>
        <p>{say.andMore(props.rows.length - DIFFERENCES_SHOWN)}</p>
      </Show>
    </>
  );
}

/** One side of a difference; the one that will stand carries a mark and is strong. */
function Side(props: { row: Row; file: boolean; stands: boolean; places: Places; mark: 'point' | 'comma' }) {
  const words = () => {
    const { difference } = props.row;
    return printSide(difference, props.file ? difference.file : difference.here, props.places, props.mark);
  };
  return (
    <td>
      <Show when={props.stands} fallback={<span class="faint">{words()}</span>}>
        <strong>{say.group.stands(words())}</strong>
        <span class="unseen"> {say.group.willStand}</span>
      </Show>
    </td>
  );
}
