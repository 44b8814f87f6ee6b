import { createMemo, createSignal, For, Show } from 'solid-js';
import { systemFor, type Calculator } from '../../engine/calculator';
import { inSentence, nameOf, symbolOf, unitOf } from '../../engine/evaluate';
import { solve } from '../../formula/solve';
import { COVERAGE } from '../../formula/outcome';
import { formatMeasured, formatValue } from '../../quantity/format';
import { parseQuantity, toTyped } from '../../quantity/parse';
import { toSi, type Unit } from '../../quantity/unit';
import type { Bench } from './bench';

interface Answer {
  readonly sentence: string;
  readonly roots: readonly { readonly text: string; readonly typed: string; readonly unit: Unit }[];
}

/** The other way round: a result is given and one input asked for. */
export function Ask(props: { calculator: Calculator; bench: Bench }) {
  const [target, setTarget] = createSignal<string>();
  const [unknown, setUnknown] = createSignal<string>();
  const [text, setText] = createSignal('');

  const evaluation = () => props.bench.evaluation();
  const system = () => systemFor(props.calculator, evaluation().choices);
  const results = () =>
    evaluation().formulas.map((f) => ({ symbol: symbolOf(f), name: f.meaning, measure: f.measure }));
  const result = () => results().find((r) => r.symbol === target()) ?? results()[0];
  const reach = () =>
    system().steps.find((step) => step.formula.symbol === result()?.symbol)?.inputs ?? new Set<string>();
  const askable = () => [...reach()].filter((symbol) => Object.hasOwn(props.calculator.inputs, symbol));
  const asked = () => {
    const picked = unknown();
    return picked !== undefined && reach().has(picked) ? picked : askable()[0];
  };

  const typed = createMemo(() => {
    const wanted = result();
    if (!wanted || text().trim() === '') return undefined;
    const { mark } = props.bench.situation();
    const shownUnit = unitOf(props.calculator, evaluation(), wanted.symbol, props.bench.situation());
    return parseQuantity(text(), wanted.measure.kind, shownUnit ?? wanted.measure.unit, mark);
  });

  const answer = createMemo<Answer | undefined>(() => {
    const wanted = result();
    const input = asked();
    const value = typed();
    const spec = input === undefined ? undefined : props.calculator.inputs[input];
    if (!wanted || input === undefined || !spec || !value?.ok) return undefined;
    const { mark } = props.bench.situation();
    const inputs = evaluation().values;
    const missing = [...reach()].filter((symbol) => symbol !== input && !inputs[symbol]);
    if (missing.length > 0) {
      return {
        sentence: `Still needed: ${missing.map((symbol) => inSentence(nameOf(props.calculator, symbol))).join(', ')}.`,
        roots: [],
      };
    }
    const state = evaluation().inputs[input];
    const unit = state?.ok ? state.unit : spec.measure.unit;
    const [low, high] = spec.range;
    const range = [toSi(low, spec.measure.unit), toSi(high, spec.measure.unit)] as const;
    const found = solve(system(), inputs, { unknown: input, target: wanted.symbol, value: value.value, range });
    const name = inSentence(nameOf(props.calculator, input));
    const from = `${formatValue(range[0], 0, unit, { mark })} to ${formatValue(range[1], 0, unit, { mark })}`;
    if (!found.ok) {
      if (found.reason === 'no result')
        return { sentence: `No ${name} from ${from} gives any ${inSentence(wanted.name)}.`, roots: [] };
      const ends = [found.low, found.high].map((end) => formatValue(end, 0, value.unit, { mark }));
      return {
        sentence: `No ${name} from ${from} gives that: over this range the ${inSentence(wanted.name)} runs from ${ends[0] ?? ''} to ${ends[1] ?? ''}.`,
        roots: [],
      };
    }
    const roots = found.roots.map((root) => ({
      text: formatMeasured(root.value, COVERAGE * (root.u ?? 0), unit, { mark }),
      typed: toTyped(root.value, unit, mark, 8),
      unit,
    }));
    const whole =
      spec.measure.kind.whole && found.roots.some((root) => Math.abs(root.value - Math.round(root.value)) > 1e-6);
    return { sentence: whole ? 'Only a whole number can be had: take the nearest and look at the result.' : '', roots };
  });

  const use = (root: Answer['roots'][number]): void => {
    const input = asked();
    if (input === undefined) return;
    const spec = props.calculator.inputs[input];
    const whole = spec?.measure.kind.whole === true;
    props.bench.change(input, {
      text: whole ? String(Math.round(Number(root.typed.replace(',', '.')))) : root.typed,
      unit: root.unit.id,
    });
  };

  return (
    <div>
      <p>
        <label>
          I want the result
          <select
            class="text-input"
            value={result()?.symbol}
            onChange={(event) => setTarget(event.currentTarget.value)}
          >
            <For each={results()}>
              {(r) => (
                <option value={r.symbol} selected={r.symbol === result()?.symbol}>
                  {r.name}
                </option>
              )}
            </For>
          </select>
        </label>
      </p>
      <p>
        <label>
          to be
          <input
            class="text-input"
            type="text"
            inputmode="decimal"
            autocomplete="off"
            value={text()}
            placeholder={result()?.measure.unit.label}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </label>
      </p>
      <Show when={((now) => (now && !now.ok ? now.reason : undefined))(typed())}>
        {(reason) => (
          <p class="problem" role="alert">
            {reason()}
          </p>
        )}
      </Show>
      <p>
        <label>
          by changing
          <select class="text-input" value={asked()} onChange={(event) => setUnknown(event.currentTarget.value)}>
            <For each={askable()}>
              {(symbol) => (
                <option value={symbol} selected={symbol === asked()}>
                  {nameOf(props.calculator, symbol)}
                </option>
              )}
            </For>
          </select>
        </label>
      </p>
      <div aria-live="polite">
        <Show when={answer()}>
          {(now) => (
            <>
              <For each={now().roots}>
                {(root) => (
                  <div class="row">
                    <strong>{root.text}</strong>
                    <button type="button" class="button" onClick={() => use(root)}>
                      Put it in
                    </button>
                  </div>
                )}
              </For>
              <p>{now().sentence}</p>
            </>
          )}
        </Show>
      </div>
    </div>
  );
}
