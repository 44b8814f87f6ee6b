import { createMemo, createSignal, For, Show } from 'solid-js';
import { systemFor } from '../../engine/system';
import { nameOf, symbolOf, unitOf } from '../../engine/evaluate';
import { signedText } from '../../engine/signs';
import { parseQuantity } from '../../quantity/parse';
import type { OnBench } from './bench';
import { reversed, type Root } from './reverse';
import say from './words/en';

/** What is picked and typed the other way round, and what that gives. */
function createAsking(on: OnBench) {
  const [target, setTarget] = createSignal<string>();
  const [unknown, setUnknown] = createSignal<string>();
  const [text, setText] = createSignal('');

  const evaluation = () => on.bench.evaluation();
  const system = () => systemFor(on.calculator, evaluation().choices);
  const results = () =>
    evaluation().formulas.map((f) => ({ symbol: symbolOf(f), name: f.meaning, measure: f.measure }));
  const result = () => results().find((r) => r.symbol === target()) ?? results()[0];
  const reach = () =>
    system().steps.find((step) => step.formula.symbol === result()?.symbol)?.inputs ?? new Set<string>();
  const askable = () => [...reach()].filter((symbol) => Object.hasOwn(on.calculator.inputs, symbol));
  const input = () => {
    const picked = unknown();
    return picked !== undefined && reach().has(picked) ? picked : askable()[0];
  };
  const typed = createMemo(() => {
    const wanted = result();
    if (!wanted || text().trim() === '') return undefined;
    const situation = on.bench.situation();
    const shownUnit = unitOf(on.calculator, evaluation(), wanted.symbol, situation);
    return parseQuantity(text(), wanted.measure.kind, shownUnit ?? wanted.measure.unit, situation.mark);
  });
  const found = createMemo(() => {
    const [wanted, symbol, value] = [result(), input(), typed()];
    const spec = symbol === undefined ? undefined : on.calculator.inputs[symbol];
    if (!wanted || symbol === undefined || !spec || !value?.ok) return undefined;
    return reversed(on, {
      system: system(),
      reach: reach(),
      result: wanted,
      value: value.value,
      valueUnit: value.unit,
      input: symbol,
      spec,
    });
  });
  return {
    results,
    result,
    setTarget,
    askable,
    input,
    setUnknown,
    text,
    setText,
    found,
    /** Why what is typed cannot be read. */
    refused: () => ((now) => (now && !now.ok ? now.reason : undefined))(typed()),
    /** Puts a value found into the sheet. */
    use(root: Root): void {
      const symbol = input();
      if (symbol === undefined) return;
      const whole = on.calculator.inputs[symbol]?.measure.kind.whole === true;
      const digits = whole ? String(Math.round(Number(root.typed.replace(',', '.')))) : root.typed;
      const spec = on.calculator.inputs[symbol];
      on.bench.change(symbol, { text: spec ? signedText(spec, digits) : digits, unit: root.unit.id });
    },
  };
}

/** The other way round: a result is given and one input asked for. */
export function Ask(props: OnBench) {
  const asking = createAsking(props);
  return (
    <div>
      <p>
        <label>
          {say.ask.wanted}
          <select
            class="text-input"
            value={asking.result()?.symbol}
            onChange={(event) => asking.setTarget(event.currentTarget.value)}
          >
            <For each={asking.results()}>
              {(r) => (
                <option value={r.symbol} selected={r.symbol === asking.result()?.symbol}>
                  {r.name}
                </option>
              )}
            </For>
          </select>
        </label>
      </p>
      <p>
        <label>
          {say.ask.toBe}
          <input
            class="text-input"
            type="text"
            inputmode="decimal"
            autocomplete="off"
            value={asking.text()}
            placeholder={asking.result()?.measure.unit.label}
            onInput={(event) => asking.setText(event.currentTarget.value)}
          />
        </label>
      </p>
      <Show when={asking.refused()}>
        {(reason) => (
          <p class="problem" role="alert">
            {reason()}
          </p>
        )}
      </Show>
      <p>
        <label>
          {say.ask.byChanging}
          <select
            class="text-input"
            value={asking.input()}
            onChange={(event) => asking.setUnknown(event.currentTarget.value)}
          >
            <For each={asking.askable()}>
              {(symbol) => (
                <option value={symbol} selected={symbol === asking.input()}>
                  {nameOf(props.calculator, symbol)}
                </option>
              )}
            </For>
          </select>
        </label>
      </p>
      <div aria-live="polite">
        <Show when={asking.found()}>
          {(found) => (
            <>
              <For each={found().roots}>
                {(root) => (
                  <div class="row">
                    <strong>{root.text}</strong>
                    <button type="button" class="button" onClick={() => asking.use(root)}>
                      {say.ask.putIn}
                    </button>
                  </div>
                )}
              </For>
              <p>{found().sentence}</p>
            </>
          )}
        </Show>
      </div>
    </div>
  );
}
