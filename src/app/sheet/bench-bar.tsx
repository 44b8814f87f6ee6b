import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Calculator } from '../../engine/calculator';
import { inSentence, nameOf, refusedIn, type Evaluation } from '../../engine/evaluate';
import { formatValue } from '../../quantity/format';
import { createTrailing } from '../../ui/trailing';
import { VerdictMark } from '../../ui/verdict-mark';
import { verdictWord } from '../desk/reading-entry';
import type { OnBench } from './bench';
import type { Moment } from './follow';
import { Cautions } from './cautions';
import { expectSentence, goTo, PLATE } from './plate';
import say from './words/en';

/** What would settle an open verdict, as a sentence; undefined when nothing is open. */
function settlingSentence(calc: Calculator, { evaluation, situation }: Moment): string | undefined {
  const { mark } = situation;
  const { settling } = evaluation.verdict;
  if (!settling) return undefined;
  const name = inSentence(nameOf(calc, settling.symbol));
  const share = Math.round(settling.share * 100);
  const most = say.bar.doubt(share, name);
  const state = evaluation.inputs[settling.symbol];
  if (state?.ok && state.origin === 'typical') {
    const custom = calc.inputs[settling.symbol]?.differs !== undefined;
    return `${most} ${custom ? say.bar.customDiffers : say.bar.measureTypical}`;
  }
  if (settling.tool) return `${most} ${say.bar.settle(settling.tool.name)}`;
  if (settling.half === undefined || !state?.ok) return `${most} ${say.bar.noTool}`;
  const half = formatValue(settling.half, settling.half, { ...state.unit, offset: 0 }, { mark });
  return `${most} ${say.bar.wouldSettle(half)}`;
}

/** An order that is made sure of by more trials is said a frame later: until then none stands there. */
const FEW_TRIALS = 3;

interface Told {
  readonly evaluation: Evaluation | undefined;
  readonly trials: number;
}

/** Always in view: the verdict, the one instruction, and the keys. */
export function BenchBar(props: OnBench & { id: string; children: JSX.Element }) {
  const [unfolded, setUnfolded] = createSignal(false);
  const now = () => props.bench.evaluation();
  const state = () => now().verdict.state;
  // Each costs several evaluations: they come behind the keystroke, in tasks of their own, and their words are unseen until they do.
  const moment = () => props.bench.moment();
  const ordered = createTrailing<Moment | undefined>(moment, undefined);
  const expecting = createTrailing<Moment | undefined>(moment, undefined);
  const settled = createTrailing<Moment | undefined>(moment, undefined);
  const of = (found: Moment | undefined, sentence: typeof expectSentence) => found && sentence(props.calculator, found);
  const expected = createMemo(() => of(expecting.value(), expectSentence));
  const settling = createMemo(() => of(settled.value(), settlingSentence));
  const troubled = createMemo(() => now().contradiction?.of ?? refusedIn(now()));
  const told = createMemo<Told>(
    (before) => {
      const found = now();
      if (before.trials > FEW_TRIALS && ordered.late()) return { ...before, evaluation: undefined };
      return { evaluation: found, trials: found.trials };
    },
    { evaluation: undefined, trials: 0 },
  );
  const headline = () => {
    const found = told().evaluation;
    return found ? (found.instruction?.sentence ?? found.cannot ?? '') : '…';
  };
  return (
    <aside class="bench" aria-label={say.bar.title}>
      <div class="bench-body" role="group" aria-label={say.bar.verdict} tabindex="0">
        <div class="bench-line">
          <VerdictMark state={state()} />
          <div aria-live="polite">
            <p class="bench-headline" id={PLATE}>
              <span class="bench-word">{say.bar.word(verdictWord(props.id, state()))}</span> {headline()}
            </p>
          </div>
        </div>
        <Show when={troubled().length > 0}>
          <div class="row no-print">
            <For each={troubled()}>
              {(symbol) => (
                <button type="button" class="button" onClick={() => goTo(props, symbol)}>
                  {say.bar.goTo(nameOf(props.calculator, symbol))}
                </button>
              )}
            </For>
          </div>
        </Show>
        <Show when={expected()}>
          {(sentence) => (
            <p class="bench-expect" aria-busy={expecting.late()}>
              {sentence()}
            </p>
          )}
        </Show>
        <Show when={settling()}>
          {(sentence) => (
            <p class="small" aria-busy={settled.late()}>
              {sentence()}
            </p>
          )}
        </Show>
        <Show when={unfolded()}>
          <Steps calculator={props.calculator} evaluation={told().evaluation} />
        </Show>
      </div>
      <div class="bench-keys">
        <button type="button" class="button" aria-expanded={unfolded()} onClick={() => setUnfolded(!unfolded())}>
          {unfolded() ? say.bar.fold : say.bar.steps}
        </button>
        {props.children}
      </div>
    </aside>
  );
}

function Steps(props: { calculator: Calculator; evaluation: Evaluation | undefined }) {
  return (
    <div>
      <Cautions calculator={props.calculator} />
      <ol>
        <For each={props.evaluation?.instruction?.steps ?? []}>{(step) => <li>{step}</li>}</For>
      </ol>
      <p>
        <strong>{say.bar.proof}</strong> {props.calculator.proof}
      </p>
      <Show when={props.evaluation?.typical}>
        {(typical) => (
          <Show when={typical().length > 0}>
            <p class="small faint">{say.bar.restsOn(typical().map(inSentence))}</p>
          </Show>
        )}
      </Show>
    </div>
  );
}
