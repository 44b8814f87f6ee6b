import { createMemo, For, Show } from 'solid-js';
import type { Calculator, FormulaSpec, LimitSpec } from '../calculators/calculator';
import { explain, nameOf, symbolOf, unitOf } from '../calculators/evaluate';
import { expanded, type Method } from '../formula/outcome';
import { filledMathml, formulaMathml } from '../formula/mathml';
import { parseFormula } from '../formula/parse';
import { fromSi } from '../quantity/unit';
import { printCitation } from '../reference/citation';
import { Gauge } from '../ui/gauge';
import { Working } from '../ui/working';
import type { Bench } from './bench';
import { printKnown, printSymbol, valueOf } from './print';

const METHODS: Readonly<Record<Method, string>> = {
  exact: '',
  'first order': 'Uncertainty to first order (JCGM 100). Shares:',
  'second order': 'Uncertainty to second order (JCGM 100, note to 5.1.2). Shares:',
  sampled: 'Curved here: uncertainty by sampling (JCGM 101). Shares, about:',
};

/** Every formula that ran: typeset, with the numbers put in, with its uncertainty budget and its source. */
export function Workings(props: { calculator: Calculator; bench: Bench }) {
  return (
    <For each={props.bench.evaluation().formulas}>
      {(spec) => <OneWorking spec={spec} calculator={props.calculator} bench={props.bench} />}
    </For>
  );
}

function OneWorking(props: { spec: FormulaSpec; calculator: Calculator; bench: Bench }) {
  const parsed = createMemo(() => parseFormula(props.spec.text));
  const symbolic = createMemo(() => formulaMathml(parsed()));
  const outcome = () => props.bench.evaluation().outcomes[symbolOf(props.spec)];
  const print = (symbol: string, full: boolean) =>
    printSymbol(props.calculator, props.bench.evaluation(), props.bench.situation(), symbol, full);
  const result = createMemo(() => print(symbolOf(props.spec), true) ?? '—');
  const short = (symbol: string) => print(symbol, false);
  const filled = createMemo(() => {
    const value = short(symbolOf(props.spec));
    return value === undefined ? undefined : filledMathml(parsed(), short, value);
  });
  const reason = () => {
    const now = outcome();
    return now && !now.ok ? explain(props.calculator, now.failure) : undefined;
  };
  const shares = () => {
    const now = outcome();
    return now?.ok
      ? now.budget.map((part) => ({ name: nameOf(props.calculator, part.symbol), share: part.share }))
      : [];
  };
  const method = () => {
    const now = outcome();
    return now?.ok ? METHODS[now.method] : '';
  };
  return (
    <Working
      meaning={props.spec.meaning}
      result={result()}
      reason={reason()}
      symbolic={symbolic()}
      filled={filled()}
      source={printCitation(props.spec.cite)}
      method={method()}
      shares={shares()}
    />
  );
}

/** Each limit in force as a gauge, with where the limit comes from. */
export function Limits(props: { calculator: Calculator; bench: Bench }) {
  return (
    <For each={props.bench.shown().evaluation.verdict.checks.map((check) => check.limit)}>
      {(limit) => <OneLimit limit={limit} {...props} />}
    </For>
  );
}

function OneLimit(props: { limit: LimitSpec; calculator: Calculator; bench: Bench }) {
  const evaluation = () => props.bench.shown().evaluation;
  const gauge = createMemo(() => {
    const situation = props.bench.situation();
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
      <Show when={gauge()} fallback={<p class="faint small">Not known yet.</p>}>
        {(shape) => <Gauge {...shape()} />}
      </Show>
      <p class="small faint">Limit: {printCitation(props.limit.cite)}</p>
    </div>
  );
}
