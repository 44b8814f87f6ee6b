import { createMemo, createSignal, For, Show } from 'solid-js';
import { ChoiceField } from '../../ui/choice-field';
import { PhoneDialog } from '../phone/dialog';
import type { OnBench } from './bench';
import { InputLine } from './input-line';
import { createLines } from './lines';
import { Tables } from './tables';
import say from './words/en';

/** The table of options and inputs; one line open at a time, what is still missing always open. */
export function Inputs(props: OnBench) {
  const lines = createLines(props);
  const [taking, setTaking] = createSignal<string>();
  const [unfolded, setUnfolded] = createSignal(false);
  const line = (symbol: string) => (
    <InputLine
      calculator={props.calculator}
      bench={props.bench}
      symbol={symbol}
      lines={lines}
      onPhone={() => setTaking(symbol)}
    />
  );
  return (
    <div>
      <For each={lines.groups().measured}>{line}</For>
      <Tables calculator={props.calculator} bench={props.bench} />
      <For each={lines.choices()}>
        {(name) => <Choice calculator={props.calculator} bench={props.bench} name={name} />}
      </For>
      <For each={lines.groups().usual}>{line}</For>
      <Show when={lines.groups().seldom.length > 0}>
        <details
          class="seldom"
          open={unfolded() || lines.wanted()}
          onToggle={(event) => setUnfolded(event.currentTarget.open)}
        >
          <summary>{say.readings.seldom(lines.groups().seldom.length)}</summary>
          <For each={lines.groups().seldom}>{line}</For>
        </details>
      </Show>
      <Taking
        calculator={props.calculator}
        bench={props.bench}
        symbol={taking()}
        onTaken={(symbol) => props.bench.openLine(symbol)}
        onClose={() => setTaking(undefined)}
      />
      <SheetKeys bench={props.bench} />
    </div>
  );
}

function Choice(props: OnBench & { name: string }) {
  return (
    <Show when={props.calculator.choices[props.name]}>
      {(spec) => (
        <ChoiceField
          label={spec().label}
          hint={spec().hint}
          options={Object.entries(spec().options).map(([id, option]) => ({ id, label: option.label }))}
          value={props.bench.choices()[props.name] ?? spec().typical}
          onPick={(option) => props.bench.pick(props.name, option)}
        />
      )}
    </Show>
  );
}

/** The phone's instrument over the sheet, for the line it measures. */
function Taking(
  props: OnBench & { symbol: string | undefined; onTaken: (symbol: string) => void; onClose: () => void },
) {
  const line = createMemo(() => {
    const spec = props.symbol === undefined ? undefined : props.calculator.inputs[props.symbol];
    return props.symbol !== undefined && spec?.phone ? { symbol: props.symbol, spec, phone: spec.phone } : undefined;
  });
  return (
    <Show when={line()} keyed>
      {({ symbol, spec, phone }) => (
        <PhoneDialog
          phone={phone}
          take={say.readings.useAs(spec.label)}
          onClose={() => props.onClose()}
          onTake={(taken) => {
            props.onClose();
            props.onTaken(symbol);
            props.bench.measured(symbol, taken);
          }}
        />
      )}
    </Show>
  );
}

function SheetKeys(props: Pick<OnBench, 'bench'>) {
  return (
    <div class="row section no-print">
      <button
        type="button"
        class="button"
        disabled={Object.keys(props.bench.entered.entries).length === 0}
        onClick={() => props.bench.replace({ entries: {}, choices: { ...props.bench.entered.choices } })}
      >
        {say.readings.clear}
      </button>
      <Show when={props.bench.canPutBack()}>
        <button type="button" class="button" onClick={() => props.bench.putBack()}>
          {say.putBack}
        </button>
      </Show>
    </div>
  );
}
