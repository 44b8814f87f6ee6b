import { createMemo, createResource, For, Show } from 'solid-js';
import { takesFile, type Choice, type Difference } from '../../machine/exchange-merge';
import { outcomeOf, type Group, type Item } from '../../machine/exchange-plan';
import type { StoredRecord } from '../../machine/schema';
import { ChoiceField } from '../../ui/choice-field';
import { cardPlaces } from '../desk/card-places';
import { useRecords } from '../desk/context';
import { printSide, printWhat, type Places } from './differences';

const CHOICES = [
  { id: 'newest', label: 'the newer of each' },
  { id: 'here', label: 'keep what is here' },
  { id: 'file', label: 'take the file’s' },
] as const;

const KINDS: Readonly<Record<Exclude<StoredRecord['type'], 'machine' | 'settings'>, readonly [string, string]>> = {
  reading: ['reading', 'readings'],
  photo: ['photo', 'photos'],
  case: ['case', 'cases'],
  draft: ['half-typed check', 'half-typed checks'],
};

const DIFFERENCES_SHOWN = 60;

function machineSentence({ file, state }: Item): string {
  if (file.type !== 'machine') return '';
  const values = Object.keys(file.values).length;
  switch (state) {
    case 'added':
      return `A new machine, with ${values} ${values === 1 ? 'value' : 'values'}.`;
    case 'same':
      return 'Its values are the same.';
    case 'newer':
      return 'The file has newer values.';
    case 'older':
      return 'What is here is newer.';
    case 'conflict':
      return 'It was changed both here and in the file.';
  }
}

/** "12 readings to be added, 3 the same, 1 differs." */
function countSentence(items: readonly Item[], [one, many]: readonly [string, string]): string {
  const of = (wanted: (item: Item) => boolean) => items.filter(wanted).length;
  const added = of(({ state }) => state === 'added');
  const same = of(({ state }) => state === 'same');
  const other = items.length - added - same;
  const parts = [
    ...(added > 0 ? [`${added} to be added`] : []),
    ...(same > 0 ? [`${same} the same`] : []),
    ...(other > 0 ? [`${other} ${other === 1 ? 'differs' : 'differ'}`] : []),
  ];
  return `${items.length} ${items.length === 1 ? one : many}: ${parts.join(', ')}.`;
}

interface Row {
  readonly item: Item;
  readonly difference: Difference;
}

/** What a file would do to one machine and all that is its, or to what belongs to none. */
export function GroupPlan(props: { group: Group; choice: Choice; onChoose: (choice: Choice) => void }) {
  const machine = () => props.group.items.find(({ file }) => file.type === 'machine');
  const sentences = () =>
    Object.entries(KINDS).flatMap(([type, words]) => {
      const items = props.group.items.filter(({ file }) => file.type === type);
      return items.length === 0 ? [] : [countSentence(items, words)];
    });
  const settings = () => props.group.items.find(({ file }) => file.type === 'settings');
  const rows = createMemo(() =>
    props.group.items.flatMap((item) => item.differences.map((difference): Row => ({ item, difference }))),
  );
  return (
    <div class="section">
      <h4>{props.group.machine === null ? 'No machine' : props.group.name}</h4>
      <p>
        {((item) => (item ? `${machineSentence(item)} ` : ''))(machine())}
        {sentences().join(' ')}
        {((item) => (item?.state === 'added' ? ' The settings, as there are none here.' : ''))(settings())}
      </p>
      <Show when={props.group.namesake && machine()?.state === 'added'}>
        <p class="small">Another machine here has this name; both would stand side by side.</p>
      </Show>
      <Show when={rows().length > 0}>
        <ChoiceField
          label="Where they differ"
          options={CHOICES}
          value={props.choice}
          hint="What only one side knows is kept either way, unless you keep what is here."
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
  return (
    <>
      <table class="sheet-table">
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">What</span>
            </th>
            <th scope="col">Here</th>
            <th scope="col">In the file</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.rows.slice(0, DIFFERENCES_SHOWN)}>
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
        <p>And {props.rows.length - DIFFERENCES_SHOWN} more.</p>
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
        <strong>✓ {words()}</strong>
        <span class="unseen"> (this will stand)</span>
      </Show>
    </td>
  );
}
