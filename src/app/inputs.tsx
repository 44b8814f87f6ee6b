import { createSignal, For, Show } from 'solid-js';
import { applies, type Calculator } from '../calculators/calculator';
import { explain } from '../calculators/evaluate';
import { symbolMathml } from '../formula/mathml';
import { AS_MARKED, toolsFor } from '../reference/tools';
import { ChoiceField } from '../ui/choice-field';
import { QuantityField } from '../ui/quantity-field';
import type { Bench } from './bench';
import { printOrigin, printSymbol } from './print';

function toolOptions(kind: string) {
  const known = toolsFor(kind).map((tool) => ({ id: tool.id, label: `read with: ${tool.name}` }));
  return [...known, { id: AS_MARKED, label: 'as marked on the part' }, { id: '', label: 'otherwise: ± as typed' }];
}

/** The table of options and inputs; one line open at a time, what is still missing always open. */
export function Inputs(props: { calculator: Calculator; bench: Bench }) {
  const [opened, setOpened] = createSignal<string>();
  const evaluation = () => props.bench.evaluation();
  const symbols = () =>
    Object.keys(props.calculator.inputs).filter((symbol) =>
      applies(props.calculator.inputs[symbol]?.when, evaluation().choices),
    );
  const choices = () =>
    Object.entries(props.calculator.choices).filter(([, spec]) => applies(spec.when, evaluation().choices));

  // A formula that left its domain is told beside the inputs it hangs on.
  const domainProblem = (symbol: string): string | undefined => {
    for (const outcome of Object.values(evaluation().outcomes)) {
      if (!outcome.ok && outcome.failure.kind === 'domain' && outcome.failure.symbols.includes(symbol)) {
        return explain(props.calculator, outcome.failure);
      }
    }
    return undefined;
  };
  const problem = (symbol: string): string | undefined => {
    const state = evaluation().inputs[symbol];
    if (state && !state.ok) return state.blank ? undefined : state.reason;
    return domainProblem(symbol);
  };
  const mustMeasure = (symbol: string): boolean => props.calculator.inputs[symbol]?.typical === undefined;
  const [closed, setClosed] = createSignal<ReadonlySet<string>>(new Set());
  const isOpen = (symbol: string): boolean =>
    opened() === symbol || problem(symbol) !== undefined || (mustMeasure(symbol) && !closed().has(symbol));
  const toggle = (symbol: string): void => {
    if (isOpen(symbol)) {
      setOpened(undefined);
      setClosed((before) => new Set([...before, symbol]));
    } else {
      setOpened(symbol);
    }
  };

  const field = (symbol: string) => {
    const spec = () => props.calculator.inputs[symbol];
    const state = () => evaluation().inputs[symbol];
    const entry = () => props.bench.entryOf(symbol);
    const print = () => printSymbol(props.calculator, evaluation(), props.bench.situation(), symbol, false);
    return (
      <Show when={spec()}>
        {(input) => (
          <QuantityField
            symbol={symbolMathml(symbol)}
            label={input().label}
            hint={input().hint}
            text={entry().text}
            unit={entry().unit}
            units={input().measure.kind.units.map((unit) => ({ id: unit.id, label: unit.label || '—' }))}
            tool={entry().tool}
            tools={input().measure.kind.whole ? [] : toolOptions(input().measure.kind.id)}
            shown={print() ?? '…'}
            origin={((now) => (now ? printOrigin(now, props.bench.situation().mark) : ''))(state())}
            placeholder={entry().text === '' ? (print() ?? '') : ''}
            problem={problem(symbol)}
            signed={input().signed === true}
            open={isOpen(symbol)}
            onToggle={() => toggle(symbol)}
            onText={(text) => props.bench.change(symbol, { text })}
            onUnit={(unit) => props.bench.change(symbol, { unit })}
            onTool={(tool) => props.bench.change(symbol, { tool })}
            onNudge={(divisions) => props.bench.nudge(symbol, divisions)}
          />
        )}
      </Show>
    );
  };

  return (
    <div>
      <For each={symbols().filter((symbol) => mustMeasure(symbol))}>{field}</For>
      <For each={choices()}>
        {([name, spec]) => (
          <ChoiceField
            label={spec.label}
            hint={spec.hint}
            options={Object.entries(spec.options).map(([id, option]) => ({ id, label: option.label }))}
            value={evaluation().choices[name] ?? spec.typical}
            onPick={(option) => props.bench.pick(name, option)}
          />
        )}
      </For>
      <For each={symbols().filter((symbol) => !mustMeasure(symbol))}>{field}</For>
      <div class="row section no-print">
        <button
          type="button"
          class="button"
          disabled={Object.keys(props.bench.entered.entries).length === 0}
          onClick={() => props.bench.replace({ entries: {}, choices: { ...props.bench.entered.choices } })}
        >
          Clear the sheet
        </button>
        <Show when={props.bench.canPutBack()}>
          <button type="button" class="button" onClick={() => props.bench.putBack()}>
            Put my numbers back
          </button>
        </Show>
      </div>
    </div>
  );
}
