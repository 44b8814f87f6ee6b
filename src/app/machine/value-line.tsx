import { createSignal, For, Show } from 'solid-js';
import type { InputSpec } from '../../engine/calculator';
import { readEntry, type Entry } from '../../engine/entry';
import { toolsOf } from '../../engine/tooled';
import type { KeptValue, Machine } from '../../machine/schema';
import { AS_MARKED } from '../../reference/tools';
import { useRecords } from '../desk/context';
import { printTime } from '../desk/time';
import { printHow, printKept } from './value-groups';
import say from './words/en';

interface Line {
  readonly machine: Machine;
  readonly place: string;
  readonly input: InputSpec;
}

/** A value of a machine as it is typed: nothing is kept before it can be read. */
function createTyping(line: Line) {
  const records = useRecords();
  const [text, setText] = createSignal('');
  const [tool, setTool] = createSignal(AS_MARKED);
  const blank = () => text().trim() === '';
  const read = () => {
    const unit = line.machine.values[line.place]?.unit ?? line.input.measure.unit.id;
    const entry: Entry = { text: text(), unit, tool: tool() };
    return readEntry('', line.input, entry, undefined, {}, {}, records.settings().mark);
  };
  return {
    text,
    setText,
    tool,
    setTool,
    blank,
    changeSign: () => setText(/^\s*[-−]/.test(text()) ? text().replace(/^\s*[-−]/, '') : `-${text().trim()}`),
    /** Why it cannot be read; undefined while nothing is typed. */
    problem: () => {
      if (blank()) return undefined;
      const state = read();
      return state.ok ? undefined : state.reason;
    },
    /** What to keep; undefined while it cannot be read. */
    typed: (): KeptValue | undefined => {
      const state = read();
      if (blank() || !state.ok) return undefined;
      const { value, half, unit, origin, tool: readWith } = state;
      return { value, half, unit: unit.id, origin, tool: readWith, at: new Date().toISOString() };
    },
  };
}

type Typing = ReturnType<typeof createTyping>;

/** One value of a machine: what it is, from where, since when; unfolds to be typed anew or forgotten. */
export function ValueLine(props: Line) {
  const records = useRecords();
  const [editing, setEditing] = createSignal(false);
  const [forgotten, setForgotten] = createSignal<KeptValue>();
  const typing = createTyping(props);
  const kept = () => props.machine.values[props.place];
  const print = (value: KeptValue) => printKept(value, props.input, records.settings().mark);
  const origin = () => {
    const value = kept();
    return value ? say.value.origin(printHow(value), printTime(value.at)) : say.value.unknown;
  };
  const put = (value: KeptValue | undefined) =>
    records.changeMachine(props.machine.id, { values: { [props.place]: value } });
  const write = async () => {
    const value = typing.typed();
    if (!value) return;
    await put(value);
    typing.setText('');
    setForgotten(undefined);
    setEditing(false);
  };
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
          {((value) => (value ? print(value) : '…'))(kept())}
          <span class="field-origin">{origin()}</span>
        </span>
      </button>
      <Show when={kept() ? undefined : forgotten()}>
        {(value) => (
          <p class="row small" role="status">
            {say.value.forgotten(print(value()))}
            <button type="button" class="button" onClick={() => void putBack(value())}>
              {say.value.putBack}
            </button>
          </p>
        )}
      </Show>
      <Show when={editing()}>
        <Editor
          input={props.input}
          typing={typing}
          kept={kept() !== undefined}
          onKeep={() => void write()}
          onForget={() => void forget()}
        />
      </Show>
    </div>
  );
}

/** The open part of a line: the field, what reads it, and the keys to keep or forget. */
function Editor(props: { input: InputSpec; typing: Typing; kept: boolean; onKeep: () => void; onForget: () => void }) {
  const unit = () => props.input.measure.unit.label;
  return (
    <div class="field-open">
      <input
        class="text-input"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        aria-label={props.input.label}
        placeholder={unit() === '' ? say.value.inWholeNumbers : say.value.inUnit(unit())}
        value={props.typing.text()}
        onInput={(event) => props.typing.setText(event.currentTarget.value)}
      />
      <Show when={props.typing.problem()}>
        {(problem) => (
          <p class="problem" role="alert">
            {problem()}
          </p>
        )}
      </Show>
      <div class="field-extra">
        <Show when={props.input.signed}>
          <button
            type="button"
            class="button"
            aria-label={say.value.changeSign(props.input.label)}
            onClick={() => props.typing.changeSign()}
          >
            + ⇄ −
          </button>
        </Show>
        <select
          aria-label={say.value.readWith(props.input.label)}
          value={props.typing.tool()}
          onChange={(event) => props.typing.setTool(event.currentTarget.value)}
        >
          <option value={AS_MARKED}>{say.value.asMarked}</option>
          <For each={toolsOf(props.input, {})}>
            {(one) => <option value={one.id}>{say.value.tool(one.name)}</option>}
          </For>
          <option value="">{say.value.otherwise}</option>
        </select>
        <button
          type="button"
          class="button button-main"
          disabled={props.typing.blank() || props.typing.problem() !== undefined}
          onClick={() => props.onKeep()}
        >
          {say.value.keep}
        </button>
        <Show when={props.kept}>
          <button type="button" class="button" onClick={() => props.onForget()}>
            {say.value.forget}
          </button>
        </Show>
      </div>
    </div>
  );
}
