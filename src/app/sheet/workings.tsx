import { createDeferred, createMemo, For, Show, untrack } from 'solid-js';
import type { FormulaSpec, LimitSpec } from '../../engine/calculator';
import { explain, nameOf, symbolOf, unitOf } from '../../engine/evaluate';
import { expanded } from '../../formula/outcome';
import { filledMathml, formulaMathml, wordsMathml } from '../../formula/mathml';
import { parseFormula } from '../../formula/parse';
import { fromSi } from '../../quantity/unit';
import { printCitation } from '../../reference/citation';
import { Gauge } from '../../ui/gauge';
import { createTrailing } from '../../ui/trailing';
import { createVisible } from '../../ui/visible';
import { Working } from '../../ui/working';
import { printKnown, printSymbol } from '../desk/print-result';
import type { OnBench } from './bench';
import type { Moment } from './follow';
import { printPutIn, valueOf } from './print';
import say from './words/en';

/** Every formula that ran: typeset, with the numbers put in, with its uncertainty budget and its source. */
export function Workings(props: OnBench) {
  // A sheet has dozens of formulas and a phone shows three: those follow a frame behind each keystroke, the others in an idle moment.
  const soon = createTrailing(
    () => props.bench.moment(),
    untrack(() => props.bench.moment()),
  );
  const later = createDeferred(soon.value, { timeoutMs: 250 });
  return (
    <div aria-busy={soon.late()}>
      <For each={Object.entries(props.calculator.model?.outputs ?? {})}>
        {([symbol, spec]) => (
          <Working
            meaning={spec.meaning}
            result={printSymbol(props.calculator, later().evaluation, later().situation, symbol, true) ?? '—'}
            reason={later().evaluation.modelProblem}
            symbolic={wordsMathml(symbol, spec.equation)}
            filled={undefined}
            source={printCitation(spec.cite)}
            method=""
            shares={[]}
          />
        )}
      </For>
      <For each={soon.value().evaluation.formulas}>
        {(spec) => <OneWorking spec={spec} calculator={props.calculator} soon={soon.value()} later={later()} />}
      </For>
    </div>
  );
}

function OneWorking(props: Pick<OnBench, 'calculator'> & { spec: FormulaSpec; soon: Moment; later: Moment }) {
  const { visible, watch } = createVisible();
  const parsed = createMemo(() => parseFormula(props.spec.text));
  const symbolic = createMemo(() => formulaMathml(parsed()));
  const view = createMemo(() => {
    const { evaluation, situation } = visible() ? props.soon : props.later;
    const symbol = symbolOf(props.spec);
    const [calculator, formula] = [props.calculator, parsed()];
    const print = (name: string, full: boolean) => printSymbol(calculator, evaluation, situation, name, full);
    const putIn = (name: string) => printPutIn(calculator, evaluation, situation, name);
    const short = print(symbol, false);
    const outcome = evaluation.outcomes[symbol];
    return {
      result: print(symbol, true) ?? '—',
      filled: short === undefined ? undefined : filledMathml(formula, putIn, short),
      reason: outcome && !outcome.ok ? explain(calculator, outcome.failure) : undefined,
      method: outcome?.ok ? say.workings.methods[outcome.method] : '',
      shares: outcome?.ok
        ? outcome.budget.map((part) => ({ name: nameOf(calculator, part.symbol), share: part.share }))
        : [],
    };
  });
  return (
    <div ref={watch}>
      <Working
        meaning={props.spec.meaning}
        result={view().result}
        reason={view().reason}
        symbolic={symbolic()}
        filled={view().filled}
        source={printCitation(props.spec.cite)}
        method={view().method}
        shares={view().shares}
      />
    </div>
  );
}

/** Each limit in force as a gauge, with where the limit comes from. */
export function Limits(props: OnBench) {
  const trailing = createTrailing(
    () => props.bench.moment(),
    untrack(() => props.bench.moment()),
  );
  return (
    <div aria-busy={trailing.late()}>
      <For each={trailing.value().evaluation.verdict.checks.map((check) => check.limit)}>
        {(limit) => <OneLimit limit={limit} calculator={props.calculator} moment={trailing.value()} />}
      </For>
    </div>
  );
}

function OneLimit(props: Pick<OnBench, 'calculator'> & { limit: LimitSpec; moment: Moment }) {
  const evaluation = () => props.moment.evaluation;
  const gauge = createMemo(() => {
    const { situation } = props.moment;
    const unit = unitOf(props.calculator, evaluation(), props.limit.of, situation);
    const result = evaluation().outcomes[props.limit.of];
    const input = evaluation().inputs[props.limit.of];
    const value = valueOf(evaluation(), props.limit.of);
    if (!unit || value === undefined) return undefined;
    const known = result?.ok ? result : undefined;
    const half = known ? expanded(known) : input?.ok ? input.half : 0;
    const show = (si: number | undefined) => (si === undefined ? undefined : fromSi(si, unit));
    const limitOf = (symbol: string | undefined) => (symbol === undefined ? undefined : valueOf(evaluation(), symbol));
    const max = limitOf(props.limit.max);
    const min = limitOf(props.limit.min) ?? (props.limit.symmetric && max !== undefined ? -max : undefined);
    const text = (symbol: string | undefined) =>
      symbol === undefined ? '' : (printSymbol(props.calculator, evaluation(), situation, symbol, false) ?? '');
    const maxText = text(props.limit.max);
    return {
      label: known
        ? printKnown(known, unit, situation.mark)
        : (printSymbol(props.calculator, evaluation(), situation, props.limit.of, true) ?? ''),
      value: fromSi(value, unit),
      low: fromSi(known?.low ?? value - half, unit),
      high: fromSi(known?.high ?? value + half, unit),
      min: show(min),
      max: show(max),
      minText: props.limit.min === undefined ? `−${maxText}` : text(props.limit.min),
      maxText,
    };
  });
  return (
    <div class="working">
      <h3>{props.limit.label}</h3>
      <Show when={gauge()} fallback={<p class="faint small">{say.workings.notKnown}</p>}>
        {(shape) => <Gauge {...shape()} />}
      </Show>
      <p class="small faint">{say.workings.limitFrom(printCitation(props.limit.cite))}</p>
    </div>
  );
}
