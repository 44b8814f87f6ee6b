import { For } from 'solid-js';
import type { Example } from '../../engine/calculator';
import { nameOf, symbolOf } from '../../engine/evaluate';
import { signedText } from '../../engine/signs';
import { printCitation } from '../../reference/citation';
import { formatMeasured, formatNumber } from '../../quantity/format';
import { parseQuantity } from '../../quantity/parse';
import type { OnBench } from './bench';
import say from './words/en';

/** The calculator's worked examples: the same data that the tests run. */
export function Examples(props: OnBench) {
  const unitLabel = (symbol: string) =>
    props.calculator.formulas.find((f) => symbolOf(f) === symbol)?.measure.unit.label ??
    props.calculator.inputs[symbol]?.measure.unit.label ??
    '';
  /** Examples are typed as by hand, "90 deg ± 1 deg": shown as a quantity is everywhere, "(90.0 ± 1.0)°". */
  const printed = (symbol: string, text: string) => {
    const measure = props.calculator.inputs[symbol]?.measure;
    const read = measure && parseQuantity(text, measure.kind, measure.unit);
    return read?.ok ? formatMeasured(read.value, read.half ?? 0, read.unit) : text;
  };
  const given = (example: Example) =>
    Object.entries(example.given).flatMap(([symbol, text]) => (text === undefined ? [] : [[symbol, text] as const]));
  const expected = (example: Example) =>
    Object.entries(example.expect).flatMap(([symbol, pair]) =>
      pair === undefined ? [] : [[symbol, pair[0]] as const],
    );
  const entryOf = (symbol: string, text: string) => {
    const spec = props.calculator.inputs[symbol];
    return { text: spec ? signedText(spec, text) : text, unit: spec?.measure.unit.id ?? '', tool: '' };
  };
  const load = (example: Example) =>
    props.bench.replace({
      entries: Object.fromEntries(given(example).map(([symbol, text]) => [symbol, entryOf(symbol, text)])),
      choices: { ...example.choices },
    });
  return (
    <For each={props.calculator.examples}>
      {(example) => (
        <div class="working">
          <h3>{example.title}</h3>
          <table class="sheet-table">
            <tbody>
              <For each={given(example)}>
                {([symbol, text]) => (
                  <tr>
                    <td>{nameOf(props.calculator, symbol)}</td>
                    <td class="number">{printed(symbol, text)}</td>
                  </tr>
                )}
              </For>
              <For each={expected(example)}>
                {([symbol, value]) => (
                  <tr>
                    <th scope="row">{nameOf(props.calculator, symbol)}</th>
                    <th class="number">
                      {formatNumber(value)} {unitLabel(symbol)}
                    </th>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
          <p class="small faint">{printCitation(example.source)}</p>
          <button type="button" class="button" onClick={() => load(example)}>
            {say.examples.putIn}
          </button>
        </div>
      )}
    </For>
  );
}
