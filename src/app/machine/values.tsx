import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import type { InputSpec } from '../../engine/calculator';
import { readEntry, type Entry } from '../../engine/entry';
import type { Place } from '../../engine/places';
import type { KeptValue, Machine } from '../../machine/schema';
import { AS_MARKED, toolsFor } from '../../reference/tools';
import { ChoiceField } from '../../ui/choice-field';
import { cardPlaces } from '../desk/card-places';
import { useRecords } from '../desk/context';
import { printTime } from '../desk/time';
import { groupsOf, printHow, printKept } from './value-groups';

/** The machine's card of values: what is known, from where, since when; each can be typed here too. */
export function MachineValues(props: { machine: Machine }) {
  const [places] = createResource(cardPlaces);
  const groups = createMemo(() => groupsOf(places() ?? []));
  return (
    <For each={groups()} fallback={<p class="faint">Looking up…</p>}>
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

function ValueLine(props: { machine: Machine; place: string; input: InputSpec }) {
  const records = useRecords();
  const [editing, setEditing] = createSignal(false);
  const [text, setText] = createSignal('');
  const [tool, setTool] = createSignal(AS_MARKED);
  const [forgotten, setForgotten] = createSignal<KeptValue>();
  const kept = () => props.machine.values[props.place];
  const origin = () => {
    const value = kept();
    if (!value) return 'not known yet';
    return `${printHow(value)}, ${printTime(value.at)}`;
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
    setForgotten(undefined);
    setEditing(false);
  };
  const put = (value: KeptValue | undefined) =>
    records.changeMachine(props.machine.id, { values: { [props.place]: value } });
  const forget = async () => {
    const value = kept();
    if (value && (await put(undefined))) setForgotten(value);
  };
  const putBack = async (value: KeptValue) => {
    if (await put(value)) setForgotten(undefined);
  };
  return (
    <div class="field">
      <button type="button" class="field-line" aria-expanded={editing()} onClick={() => setEditing(!editing())}>
        <span class="field-symbol" />
        <span class="field-label">{props.input.label}</span>
        <span class="field-value">
          {((value) => (value ? printKept(value, props.input, records.settings().mark) : '…'))(kept())}
          <span class="field-origin">{origin()}</span>
        </span>
      </button>
      <Show when={kept() ? undefined : forgotten()}>
        {(value) => (
          <p class="row small" role="status">
            Forgotten: {printKept(value(), props.input, records.settings().mark)}.
            <button type="button" class="button" onClick={() => void putBack(value())}>
              Put it back
            </button>
          </p>
        )}
      </Show>
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
            <Show when={props.input.signed}>
              <button
                type="button"
                class="button"
                aria-label={`Change sign: ${props.input.label}`}
                onClick={() => setText(/^\s*[-−]/.test(text()) ? text().replace(/^\s*[-−]/, '') : `-${text().trim()}`)}
              >
                + ⇄ −
              </button>
            </Show>
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
            <Show when={kept()}>
              <button type="button" class="button" onClick={() => void forget()}>
                Forget it
              </button>
            </Show>
          </div>
        </div>
      </Show>
    </div>
  );
}
