import { createDeferred, createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Calculator } from '../../engine/calculator';
import { inSentence, nameOf, type Evaluation } from '../../engine/evaluate';
import { VerdictMark } from '../../ui/verdict-mark';
import type { Bench } from './bench';
import { verdictWord } from '../desk/reading-entry';

/** What would settle an open verdict, as a sentence; undefined when nothing is open. */
function settlingSentence(calc: Calculator, evaluation: Evaluation): string | undefined {
  const { settling } = evaluation.verdict;
  if (!settling) return undefined;
  const name = inSentence(nameOf(calc, settling.symbol));
  const share = Math.round(settling.share * 100);
  const most = `Most of the doubt (${share} %) is in: ${name}.`;
  const state = evaluation.inputs[settling.symbol];
  if (state?.ok && state.origin === 'typical')
    return `${most} That is still a typical value: measure it on this machine.`;
  return settling.tool
    ? `${most} A ${settling.tool.name} would settle it.`
    : `${most} No better tool on the list settles it alone: measure the others better too, or repeat the reading.`;
}

/** Always in view: the verdict, the one instruction, and the keys. */
export function BenchBar(props: { id: string; calculator: Calculator; bench: Bench; children: JSX.Element }) {
  const [unfolded, setUnfolded] = createSignal(false);
  const shown = () => props.bench.shown();
  const now = () => props.bench.evaluation();
  const state = () => shown().evaluation.verdict.state;
  // Trying every tool costs several evaluations: done in an idle moment, not at each keystroke.
  const later = createDeferred(() => shown().evaluation, { timeoutMs: 250 });
  const settling = createMemo(() => settlingSentence(props.calculator, later()));
  const headline = () => shown().evaluation.instruction?.headline ?? shown().evaluation.cannot ?? '';
  return (
    <aside class="bench" aria-label="Verdict and instruction">
      <div class="bench-body" role="group" aria-label="Verdict" tabindex="0" classList={{ stale: shown().stale }}>
        <div class="bench-line">
          <VerdictMark state={state()} />
          <div aria-live="polite">
            <p class="bench-headline">
              <span class="bench-word">{verdictWord(props.id, state())}.</span> {headline()}
            </p>
          </div>
        </div>
        <Show when={settling()}>
          <p class="small">{settling()}</p>
        </Show>
        <Show when={unfolded()}>
          <Steps calculator={props.calculator} bench={props.bench} />
        </Show>
      </div>
      <Show when={shown().stale}>
        <p class="problem small">
          Last good verdict. {now().cannot ?? 'One entry cannot be used at the moment: see the marked line.'}
        </p>
      </Show>
      <div class="bench-keys">
        <button type="button" class="button" aria-expanded={unfolded()} onClick={() => setUnfolded(!unfolded())}>
          {unfolded() ? 'Fold' : 'How, step by step'}
        </button>
        {props.children}
      </div>
    </aside>
  );
}

function Steps(props: { calculator: Calculator; bench: Bench }) {
  const evaluation = () => props.bench.shown().evaluation;
  return (
    <div>
      <Show when={props.calculator.cautions.length > 0}>
        <div class="cautions">
          <strong>First</strong>
          <ul>
            <For each={props.calculator.cautions}>{(caution) => <li>{caution}</li>}</For>
          </ul>
        </div>
      </Show>
      <ol>
        <For each={evaluation().instruction?.steps ?? []}>{(step) => <li>{step}</li>}</For>
      </ol>
      <p>
        <strong>Proof.</strong> {props.calculator.proof}
      </p>
      <Show when={evaluation().typical.length > 0}>
        <p class="small faint">Rests on typical values: {evaluation().typical.map(inSentence).join('; ')}.</p>
      </Show>
    </div>
  );
}
