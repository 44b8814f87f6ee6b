import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import type { InputSpec } from '../calculators/calculator';
import { readEntry, type Entry } from '../calculators/entry';
import { machinePlaces, type Place } from '../calculators/places';
import type { KeptValue, Machine } from '../machine/schema';
import { formatMeasured } from '../quantity/format';
import { unitById } from '../quantity/unit';
import { AS_MARKED, toolById, toolsFor } from '../reference/tools';
import { ChoiceField } from '../ui/choice-field';
import { useRecords } from './context';
import { printTime } from './print';

/** Groups of places as a person calls them; others show their own word. */
const GROUPS: Readonly<Record<string, string>> = {
  bed: 'Bed',
  belt: 'Belts',
  carriage: 'Carriage',
  extruder: 'Extruder',
  filament: 'Filament',
  hotend: 'Hot end',
  nozzle: 'Nozzle',
  print: 'Usual print',
  wheel: 'Wheels',
  z: 'Z drive',
};

const groupOf = (place: string): string => place.split('.')[0] ?? '';

/** The machine's card of values: what is known, from where, since when; each can be typed here too. */
export function MachineValues(props: { machine: Machine }) {
  const [places] = createResource(machinePlaces);
  const groups = createMemo(() => {
    const byGroup = new Map<string, Place[]>();
    for (const place of places() ?? []) {
      const group = groupOf(place.place);
      byGroup.set(group, [...(byGroup.get(group) ?? []), place]);
    }
    return [...byGroup];
  });
  return (
    <For each={groups()} fallback={<p class="faint">Looking up…</p>}>
      {([group, members]) => (
        <div class="section">
          <h3>{GROUPS[group] ?? group}</h3>
          <For each={members}>
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

function printKept(kept: KeptValue, input: InputSpec): string {
  const unit = unitById(input.measure.kind, kept.unit) ?? input.measure.unit;
  return formatMeasured(kept.value, kept.half, unit);
}

function ValueLine(props: { machine: Machine; place: string; input: InputSpec }) {
  const records = useRecords();
  const [editing, setEditing] = createSignal(false);
  const [text, setText] = createSignal('');
  const [tool, setTool] = createSignal(AS_MARKED);
  const kept = () => props.machine.values[props.place];
  const origin = () => {
    const value = kept();
    if (!value) return 'not known yet';
    const how = value.origin === 'nameplate' ? 'as marked' : (toolById(value.tool)?.name ?? value.origin);
    return `${how}, ${printTime(value.at)}`;
  };
  const read = () => {
    const entry: Entry = { text: text(), unit: kept()?.unit ?? props.input.measure.unit.id, tool: tool() };
    return readEntry('', props.input, entry, undefined, {}, {}, records.settings().mark);
  };
  const problem = () => {
    if (text().trim() === '') return undefined;
    const state = read();
    return state.ok ? undefined : state.reason;
  };
  const write = async () => {
    const state = read();
    if (text().trim() === '' || !state.ok) return;
    const at = new Date().toISOString();
    const value: KeptValue = {
      value: state.value,
      half: state.half,
      unit: state.unit.id,
      origin: state.origin,
      tool: state.tool,
      at,
    };
    await records.changeMachine(props.machine.id, { values: { [props.place]: value } });
    setText('');
    setEditing(false);
  };
  return (
    <div class="field">
      <button type="button" class="field-line" aria-expanded={editing()} onClick={() => setEditing(!editing())}>
        <span class="field-symbol" />
        <span class="field-label">{props.input.label}</span>
        <span class="field-value">
          {((value) => (value ? printKept(value, props.input) : '…'))(kept())}
          <span class="field-origin">{origin()}</span>
        </span>
      </button>
      <Show when={editing()}>
        <div class="field-open">
          <input
            class="text-input"
            type="text"
            inputmode="decimal"
            autocomplete="off"
            aria-label={props.input.label}
            placeholder={`in ${props.input.measure.unit.label || 'whole numbers'}`}
            value={text()}
            onInput={(event) => setText(event.currentTarget.value)}
          />
          <Show when={problem()}>
            <p class="problem" role="alert">
              {problem()}
            </p>
          </Show>
          <div class="field-extra">
            <select
              aria-label={`Read with: ${props.input.label}`}
              value={tool()}
              onChange={(event) => setTool(event.currentTarget.value)}
            >
              <option value={AS_MARKED}>as marked on the part</option>
              <For each={toolsFor(props.input.measure.kind.id)}>
                {(one) => <option value={one.id}>read with: {one.name}</option>}
              </For>
              <option value="">otherwise: ± as typed</option>
            </select>
            <button
              type="button"
              class="button button-main"
              disabled={text().trim() === '' || problem() !== undefined}
              onClick={() => void write()}
            >
              Keep it
            </button>
          </div>
        </div>
      </Show>
    </div>
  );
}
