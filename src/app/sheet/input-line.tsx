import { createMemo, Show } from 'solid-js';
import type { PhoneInstrument } from '../../engine/calculator';
import { picturesOf, sizeOf } from '../../engine/signs';
import { symbolMathml } from '../../formula/mathml';
import { QuantityField } from '../../ui/quantity-field';
import { phones } from '../phone/phones';
import type { OnBench } from './bench';
import type { Lines } from './lines';
import { printEarlier } from './repeat';
import { printInput, printOrigin } from './print';
import { SignKeys } from './signs/sign-keys';
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
  const print = createMemo(() => printInput(props.calculator, evaluation(), props.bench.situation(), props.symbol));
  const pictures = createMemo(() => ((input) => input && picturesOf(input))(spec()));
  const earlier = createMemo(() => printEarlier(props.bench, props.symbol));
  const problem = createMemo(() => props.lines.problem(props.symbol));
  const remark = createMemo(() => {
    const state = evaluation().inputs[props.symbol];
    return state?.ok ? state.beyondTool : undefined;
  });
  const open = createMemo(() => props.lines.isOpen(props.symbol));
  const origin = createMemo(() => {
    const state = evaluation().inputs[props.symbol];
    const input = spec();
    if (!state || !input) return '';
    const optional = !state.ok && state.blank && input.optional === true;
    return optional ? say.readings.optional : printOrigin(input, state, props.bench.situation().mark);
  });
  return (
    <Show when={spec()}>
      {(input) => (
        <QuantityField
          symbol={symbolMathml(props.symbol)}
          label={input().label}
          hint={input().hint}
          text={pictures() ? sizeOf(entry().text) : entry().text}
          unit={entry().unit}
          units={input().measure.kind.units.map((unit) => ({ id: unit.id, label: unit.label || '—' }))}
          tool={entry().tool}
          tools={toolOptions(input(), evaluation().choices, entry().tool)}
          remark={remark()}
          shown={print() ?? '…'}
          origin={origin()}
          placeholder={entry().text === '' ? (print() ?? '') : ''}
          problem={problem()}
          mark={props.lines.isAsked(props.symbol) ? say.readings.asked : undefined}
          earlier={earlier()}
          anchor={props.symbol}
          signed={input().signed !== undefined && !pictures()}
          phone={phoneWords(input().phone)}
          onPhone={() => props.onPhone()}
          open={open()}
          onToggle={() => props.lines.toggle(props.symbol)}
          onText={(text) =>
            pictures() ? props.bench.typeSize(props.symbol, text) : props.bench.change(props.symbol, { text })
          }
          onUnit={(unit) => props.bench.change(props.symbol, { unit })}
          onTool={(tool) => props.bench.change(props.symbol, { tool })}
          onNudge={(divisions) => props.bench.nudge(props.symbol, divisions)}
        >
          <Show when={pictures()}>
            {(two) => (
              <SignKeys
                label={input().label}
                pictures={two()}
                side={props.bench.sideIn(props.symbol)}
                onPick={(side) => props.bench.pickSide(props.symbol, side)}
              />
            )}
          </Show>
        </QuantityField>
      )}
    </Show>
  );
}
