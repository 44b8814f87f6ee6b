import { createMemo, createResource, For } from 'solid-js';
import type { Place } from '../../engine/places';
import type { Machine } from '../../machine/schema';
import { ChoiceField } from '../../ui/choice-field';
import { cardPlaces } from '../desk/card-places';
import { useRecords } from '../desk/context';
import { groupsOf } from './value-groups';
import { ValueLine } from './value-line';
import say from './words/en';

/** The machine's card of values: what is known, from where, since when; each can be typed here too. */
export function MachineValues(props: { machine: Machine }) {
  const [places] = createResource(cardPlaces);
  const groups = createMemo(() => groupsOf(places() ?? []));
  return (
    <For each={groups()} fallback={<p class="faint">{say.lookingUp}</p>}>
      {(group) => (
        <div class="section">
          <h3>{group.name}</h3>
          <For each={group.places}>
            {(place) =>
              'input' in place ? (
                <ValueLine machine={props.machine} place={place.place} input={place.input} />
              ) : (
                <ChoiceLine machine={props.machine} place={place} />
              )
            }
          </For>
        </div>
      )}
    </For>
  );
}

function ChoiceLine(props: { machine: Machine; place: Extract<Place, { choice: unknown }> }) {
  const records = useRecords();
  const change = (option: string) =>
    void records.changeMachine(props.machine.id, { choices: { [props.place.place]: option } });
  return (
    <ChoiceField
      label={props.place.choice.label}
      options={Object.entries(props.place.choice.options).map(([id, option]) => ({ id, label: option.label }))}
      value={props.machine.choices[props.place.place] ?? ''}
      onPick={change}
    />
  );
}
