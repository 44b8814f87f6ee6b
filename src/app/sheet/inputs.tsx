import { createMemo, createSelector, createSignal, For, Show } from 'solid-js';
import { applies, type Calculator, type PhoneInstrument } from '../../engine/calculator';
import { mustMeasure } from '../../engine/entry';
import { explain } from '../../engine/evaluate';
import { symbolMathml } from '../../formula/mathml';
import { ChoiceField } from '../../ui/choice-field';
import { QuantityField } from '../../ui/quantity-field';
import type { Bench } from './bench';
import { PhoneDialog } from '../phone/dialog';
import { phones } from '../phone/phones';
import { printOrigin, printSymbol } from './print';
import { Tables } from './tables';
import { toolOptions } from './tool-options';

const phoneWords = (phone: PhoneInstrument | undefined) => (phone === undefined ? undefined : phones[phone].key);

const MOST_CULPRITS = 3;

/** The table of options and inputs; one line open at a time, what is still missing always open. */
export function Inputs(props: { calculator: Calculator; bench: Bench }) {
  const [picked, setPicked] = createSignal<string>();
  const [taking, setTaking] = createSignal<string>();
  const [unfolded, setUnfolded] = createSignal(false);
  const evaluation = () => props.bench.evaluation();
  // Options decide which lines there are; readings do not, so the lists stay as they are while someone types.
  const options = createMemo(() => evaluation().choices, undefined, {
    equals: (a, b) => Object.keys(b).every((name) => a[name] === b[name]),
  });
  const choices = createMemo(() =>
    Object.keys(props.calculator.choices).filter((name) => applies(props.calculator.choices[name]?.when, options())),
  );
  const groups = createMemo(() => {
    const lists = { measured: [] as string[], usual: [] as string[], seldom: [] as string[] };
    for (const [symbol, spec] of Object.entries(props.calculator.inputs)) {
      if (spec.cell || !applies(spec.when, options())) continue;
      if (!spec.optional && mustMeasure(symbol, spec, props.calculator.choices)) lists.measured.push(symbol);
      else lists[spec.seldom ? 'seldom' : 'usual'].push(symbol);
    }
    return lists;
  });
  // One line open at a time, at first the first that only a reading can fill.
  const isOpened = createSelector(() => picked() ?? groups().measured[0]);

  const entryProblem = (symbol: string): string | undefined => {
    const state = evaluation().inputs[symbol];
    return state && !state.ok && !state.blank ? state.reason : undefined;
  };
  // A formula that left its domain is told beside the inputs it hangs on, unless that would be half the sheet.
  const domainProblems = createMemo(() => {
    const problems: Record<string, string> = {};
    for (const outcome of Object.values(evaluation().outcomes)) {
      if (outcome.ok || outcome.failure.kind !== 'domain' || outcome.failure.symbols.length > MOST_CULPRITS) continue;
      for (const symbol of outcome.failure.symbols) problems[symbol] ??= explain(props.calculator, outcome.failure);
    }
    return problems;
  });
  // A line in the fold that the verdict waits for opens the fold.
  const wanted = () =>
    groups().seldom.some((symbol) => {
      const state = evaluation().inputs[symbol];
      return state?.ok === false && props.calculator.inputs[symbol]?.optional !== true;
    });
  const isOpen = (symbol: string): boolean => isOpened(symbol) || entryProblem(symbol) !== undefined;
  const toggle = (symbol: string): void => {
    setPicked(isOpen(symbol) ? '' : symbol);
  };

  const field = (symbol: string) => {
    const spec = () => props.calculator.inputs[symbol];
    const entry = createMemo(() => props.bench.entryOf(symbol), undefined, {
      equals: (a, b) => a.text === b.text && a.unit === b.unit && a.tool === b.tool,
    });
    const print = createMemo(() => printSymbol(props.calculator, evaluation(), props.bench.situation(), symbol, false));
    const problem = createMemo(() => entryProblem(symbol) ?? domainProblems()[symbol]);
    const open = createMemo(() => isOpen(symbol));
    const origin = createMemo(() => {
      const state = evaluation().inputs[symbol];
      if (!state) return '';
      const optional = !state.ok && state.blank && spec()?.optional === true;
      return optional ? 'optional' : printOrigin(state, props.bench.situation().mark);
    });
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
            origin={origin()}
            placeholder={entry().text === '' ? (print() ?? '') : ''}
            problem={problem()}
            signed={input().signed === true}
            phone={phoneWords(input().phone)}
            onPhone={() => setTaking(symbol)}
            open={open()}
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

  const beingTaken = createMemo(() => {
    const symbol = taking();
    const spec = symbol === undefined ? undefined : props.calculator.inputs[symbol];
    return symbol !== undefined && spec?.phone ? { symbol, spec, phone: spec.phone } : undefined;
  });

  const choice = (name: string) => (
    <Show when={props.calculator.choices[name]}>
      {(spec) => (
        <ChoiceField
          label={spec().label}
          hint={spec().hint}
          options={Object.entries(spec().options).map(([id, option]) => ({ id, label: option.label }))}
          value={evaluation().choices[name] ?? spec().typical}
          onPick={(option) => props.bench.pick(name, option)}
        />
      )}
    </Show>
  );

  return (
    <div>
      <For each={groups().measured}>{field}</For>
      <Tables calculator={props.calculator} bench={props.bench} />
      <For each={choices()}>{choice}</For>
      <For each={groups().usual}>{field}</For>
      <Show when={groups().seldom.length > 0}>
        <details
          class="seldom"
          open={unfolded() || wanted()}
          onToggle={(event) => setUnfolded(event.currentTarget.open)}
        >
          <summary>Seldom changed ({groups().seldom.length})</summary>
          <For each={groups().seldom}>{field}</For>
        </details>
      </Show>
      <Show when={beingTaken()} keyed>
        {({ symbol, spec, phone }) => (
          <PhoneDialog
            phone={phone}
            take={`Use as: ${spec.label}`}
            onClose={() => setTaking(undefined)}
            onTake={(taken) => {
              setTaking(undefined);
              setPicked(symbol);
              props.bench.measured(symbol, taken);
            }}
          />
        )}
      </Show>
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
