import { createMemo, Show } from 'solid-js';
import type { PhoneInstrument } from '../../engine/calculator';
import { symbolMathml } from '../../formula/mathml';
import { QuantityField } from '../../ui/quantity-field';
import { phones } from '../phone/phones';
import type { OnBench } from './bench';
import type { Lines } from './lines';
import { printSymbol } from '../desk/print-result';
import { printOrigin } from './print';
import { toolOptions } from './tool-options';
import say from './words/en';

const phoneWords = (phone: PhoneInstrument | undefined) => (phone === undefined ? undefined : phones[phone].key);

/** One input as a line of the table. */
export function InputLine(props: OnBench & { symbol: string; lines: Lines; onPhone: () => void }) {
  const evaluation = () => props.bench.evaluation();
  const spec = () => props.calculator.inputs[props.symbol];
  const entry = createMemo(() => props.bench.entryOf(props.symbol), undefined, {
    equals: (a, b) => a.text === b.text && a.unit === b.unit && a.tool === b.tool,
  });
  const print = createMemo(() =>
    printSymbol(props.calculator, evaluation(), props.bench.situation(), props.symbol, false),
  );
  const problem = createMemo(() => props.lines.problem(props.symbol));
  const open = createMemo(() => props.lines.isOpen(props.symbol));
  const origin = createMemo(() => {
    const state = evaluation().inputs[props.symbol];
    if (!state) return '';
    const optional = !state.ok && state.blank && spec()?.optional === true;
    return optional ? say.readings.optional : printOrigin(state, props.bench.situation().mark);
  });
  return (
    <Show when={spec()}>
      {(input) => (
        <QuantityField
          symbol={symbolMathml(props.symbol)}
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
          onPhone={() => props.onPhone()}
          open={open()}
          onToggle={() => props.lines.toggle(props.symbol)}
          onText={(text) => props.bench.change(props.symbol, { text })}
          onUnit={(unit) => props.bench.change(props.symbol, { unit })}
          onTool={(tool) => props.bench.change(props.symbol, { tool })}
          onNudge={(divisions) => props.bench.nudge(props.symbol, divisions)}
        />
      )}
    </Show>
  );
}
