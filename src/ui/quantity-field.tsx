import { createEffect, createSignal, createUniqueId, Index, Show, type JSX } from 'solid-js';
import { NudgeKey } from './nudge-key';
import { ThumbRule } from './thumb-rule';
import say from './words/en';

export interface Option {
  readonly id: string;
  readonly label: string;
}

interface FieldProps {
  /** MathML of the symbol. */
  symbol: string;
  label: string;
  hint?: string | undefined;
  text: string;
  unit: string;
  units: readonly Option[];
  tool: string;
  tools: readonly Option[];
  /** The value in force, printed, and where it comes from. */
  shown: string;
  origin: string;
  /** Printed inside the empty box. */
  placeholder: string;
  problem?: string | undefined;
  /** Said beside it though it can be used. */
  remark?: string | undefined;
  /** Why it is marked, where nothing is wrong with it by itself. */
  mark?: string | undefined;
  /** What it was at an earlier time, beside an entry that starts anew. */
  earlier?: string | undefined;
  /** Where a key that goes to it finds it. */
  anchor?: string | undefined;
  /** It may be below zero, and its sign is typed: a key turns it. */
  signed: boolean;
  /** Keys behind the entry: what its words mean. */
  about?: JSX.Element;
  /** Keys that stand before the entry. */
  children?: JSX.Element;
  /** Words on the key that takes it with the phone; none where the phone cannot. */
  phone?: string | undefined;
  onPhone: () => void;
  open: boolean;
  onToggle: () => void;
  onText: (text: string) => void;
  onUnit: (unit: string) => void;
  onTool: (tool: string) => void;
  /** Move the value by so many divisions. */
  onNudge: (divisions: number) => void;
}

function Pick(props: { label: string; value: string; options: readonly Option[]; onPick: (id: string) => void }) {
  return (
    <select aria-label={props.label} value={props.value} onChange={(event) => props.onPick(event.currentTarget.value)}>
      <Index each={props.options}>{(one) => <option value={one().id}>{one().label}</option>}</Index>
    </select>
  );
}

/** One quantity: closed a line of the table, open a large number with keys, unit, tool and a rule to drag. */
export function QuantityField(props: FieldProps) {
  const id = createUniqueId();
  const [letters, setLetters] = createSignal(false);
  const [entry, setEntry] = createSignal<HTMLInputElement>();
  const flip = () =>
    props.onText(/^\s*[-−]/.test(props.text) ? props.text.replace(/^\s*[-−]/, '') : `-${props.text.trim()}`);
  // What the box holds while the person types is theirs: only a change from outside (nudge, other tab) writes into it.
  createEffect(() => {
    const box = entry();
    if (box && box.value !== props.text) box.value = props.text;
  });
  return (
    <div class="field" data-symbol={props.label} data-input={props.anchor}>
      <button
        type="button"
        class="field-line"
        aria-expanded={props.open}
        aria-controls={`${id}-open`}
        onClick={() => props.onToggle()}
      >
        {/* MathML of our own tree, escaped where it is made */}
        <span class="field-symbol" innerHTML={`<math>${props.symbol}</math>`} />
        <span class="field-label">{props.label}</span>
        <span class="field-value">
          {props.shown}
          <span class="field-origin">{props.origin}</span>
        </span>
      </button>
      <Show when={props.problem}>
        {(problem) => (
          <p class="problem" id={`${id}-problem`} role="alert">
            {problem()}
          </p>
        )}
      </Show>
      <Show when={props.remark}>
        {(remark) => (
          <p class="small" role="status">
            {remark()}
          </p>
        )}
      </Show>
      <Show when={props.mark}>{(mark) => <p class="problem">{mark()}</p>}</Show>
      <Show when={props.earlier}>{(earlier) => <p class="field-earlier">{earlier()}</p>}</Show>
      <Show when={props.open}>
        <div class="field-open" id={`${id}-open`}>
          {props.children}
          <div class="field-entry">
            <NudgeKey label={say.field.less(props.label)} sign="−" onNudge={() => props.onNudge(-1)} />
            <div class="field-box">
              <input
                ref={setEntry}
                type="text"
                inputmode={letters() ? 'text' : 'decimal'}
                autocomplete="off"
                autocapitalize="off"
                spellcheck={false}
                aria-label={props.label}
                aria-invalid={props.problem ? 'true' : undefined}
                aria-describedby={`${props.problem ? `${id}-problem ` : ''}${id}-hint`}
                placeholder={props.placeholder}
                onInput={(event) => {
                  props.onText(event.currentTarget.value);
                  // What was taken otherwise than typed (a sign that picked a picture) stands in the box as it was taken.
                  if (event.currentTarget.value !== props.text) event.currentTarget.value = props.text;
                }}
                onFocus={(event) => event.currentTarget.select()}
              />
              <Show when={props.units.length > 1} fallback={<span class="row faint">{props.units[0]?.label}</span>}>
                <Pick
                  label={say.field.unit(props.label)}
                  value={props.unit}
                  options={props.units}
                  onPick={(unit) => props.onUnit(unit)}
                />
              </Show>
            </div>
            <NudgeKey label={say.field.more(props.label)} sign="+" onNudge={() => props.onNudge(1)} />
          </div>
          <Show when={props.phone}>
            {(words) => (
              <button type="button" class="button field-phone" onClick={() => props.onPhone()}>
                {words()}
              </button>
            )}
          </Show>
          <ThumbRule onSlide={(divisions) => props.onNudge(divisions)} />
          <div class="field-extra">
            {props.about}
            <Show when={props.tools.length > 0}>
              <Pick
                label={say.field.readWith(props.label)}
                value={props.tool}
                options={props.tools}
                onPick={(tool) => props.onTool(tool)}
              />
            </Show>
            <Show when={props.signed}>
              <button type="button" class="button" aria-label={say.field.changeSign(props.label)} onClick={flip}>
                + ⇄ −
              </button>
            </Show>
            <button
              type="button"
              class="button"
              aria-pressed={letters()}
              aria-label={say.field.letters}
              onClick={() => {
                setLetters(!letters());
                entry()?.focus();
              }}
            >
              {say.field.lettersKey}
            </button>
          </div>
          <p class="field-hint" id={`${id}-hint`}>
            {props.hint} <Show when={letters()}>{say.field.understood}</Show>
          </p>
        </div>
      </Show>
    </div>
  );
}
