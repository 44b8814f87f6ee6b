import { createMemo, Show } from 'solid-js';
import type { PhoneInstrument } from '../../engine/calculator';
import { isSameEntry } from '../../engine/entry';
import { picturesOf, sizeOf } from '../../engine/signs';
import { symbolMathml } from '../../formula/mathml';
import { QuantityField } from '../../ui/quantity-field';
import { TermKeys } from '../desk/glossary/terms';
import { phones } from '../phone/phones';
import type { OnBench } from './bench';
import type { Lines } from './lines';
import { printEarlier, printElsewhere } from './repeat';
import { printInput, printOrigin } from './print';
import { SignKeys } from './signs/sign-keys';
import { toolOptions } from './tool-options';
import say from './words/en';

const phoneWords = (phone: PhoneInstrument | undefined) => (phone === undefined ? undefined : phones[phone].key);

/** One input as a line of the table. */
export function InputLine(props: OnBench & { symbol: string; lines: Lines; onPhone: () => void }) {
  const spec = () => props.calculator.inputs[props.symbol];
  const state = () => props.bench.stateOf(props.symbol);
  const mark = () => props.bench.mark();
  const entry = createMemo(() => props.bench.entryOf(props.symbol), undefined, { equals: isSameEntry });
  const tool = createMemo(() => entry().tool);
  const tools = createMemo(() => ((input) => (input ? toolOptions(input, props.bench.choices(), tool()) : []))(spec()));
  const print = createMemo(() => printInput(spec(), state(), mark()));
  const pictures = createMemo(() => ((input) => input && picturesOf(input))(spec()));
  const earlier = createMemo(() => printEarlier(props.bench, props.symbol));
  const problem = createMemo(() => props.lines.problem(props.symbol));
  const elsewhere = () => printElsewhere(props.bench, props.symbol);
  const remark = () => elsewhere() ?? ((now) => (now?.ok ? now.beyondTool : undefined))(state());
  const open = createMemo(() => props.lines.isOpen(props.symbol));
  const origin = createMemo(() => {
    const [now, input] = [state(), spec()];
    if (!now || !input) return '';
    const optional = !now.ok && now.blank && input.optional === true;
    return optional ? say.readings.optional : printOrigin(input, now, mark());
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
          tool={tool()}
          tools={tools()}
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
          about={<TermKeys texts={[input().label, input().hint ?? '']} />}
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
