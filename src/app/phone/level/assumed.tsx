import { createMemo, createSignal, createUniqueId, Show, type Accessor } from 'solid-js';
import { angle, slope } from '../../../quantity/kinds';
import { parseQuantity, type DecimalMark } from '../../../quantity/parse';
import type { Measure } from '../../../quantity/unit';
import say from './words/en';

/** A limit that is assumed until the person knows better: what stands in its field, and what that comes to, SI. */
function createLimit(usual: string, measure: Measure, mark: Accessor<DecimalMark>) {
  const [text, setText] = createSignal(usual);
  const read = (typed: string) => parseQuantity(typed, measure.kind, measure.unit, mark());
  const taken = createMemo(() => {
    const typed = read(text());
    if (typed.ok && typed.value >= 0) return { value: typed.value, problem: undefined };
    const problem = typed.ok ? say.assumed.negative : typed.reason;
    const instead = read(usual);
    return { value: instead.ok ? instead.value : 0, problem: say.assumed.untilThen(problem, usual) };
  });
  return { text, setText: (next: string): void => void setText(next), taken };
}

/** How exactly the phone is laid: assumed, and to be changed by the person. */
export function createAssumed(mark: Accessor<DecimalMark>) {
  const laying = createLimit('1', slope.mm_m, mark);
  const direction = createLimit('3', angle.deg, mark);
  return { laying, direction };
}

type Assumed = ReturnType<typeof createAssumed>;

function Limit(props: { label: string; limit: Assumed['laying'] }) {
  const id = createUniqueId();
  const problem = () => props.limit.taken().problem;
  return (
    <div class="level-assumed">
      <label for={id}>{props.label}</label>
      <input
        id={id}
        class="text-input"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        value={props.limit.text()}
        aria-invalid={problem() !== undefined}
        aria-describedby={`${id}-problem`}
        onInput={(event) => props.limit.setText(event.currentTarget.value)}
      />
      <div id={`${id}-problem`}>
        <Show when={problem()}>{(why) => <p class="problem">{why()}</p>}</Show>
      </div>
    </div>
  );
}

/** What is assumed of the laying, in a fold. */
export function SlopeAssumed(props: { assumed: Assumed }) {
  return (
    <details class="section">
      <summary>{say.assumed.title}</summary>
      <Limit label={say.assumed.laying} limit={props.assumed.laying} />
      <Limit label={say.assumed.direction} limit={props.assumed.direction} />
      <p class="faint small">{say.assumed.basis}</p>
    </details>
  );
}
