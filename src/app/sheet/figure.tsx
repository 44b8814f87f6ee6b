import { untrack } from 'solid-js';
import { createTrailing } from '../../ui/trailing';
import { useRecords } from '../desk/context';
import type { Sheet } from './open-sheet';
import { printSymbol } from '../desk/print-result';
import { valueOf } from './print';

/** The drawing of a check, to scale with the values on its bench: a frame behind them, and marked so long. */
export function SheetFigure(props: { sheet: Sheet }) {
  const records = useRecords();
  const trailing = createTrailing(
    () => props.sheet.bench.moment(),
    untrack(() => props.sheet.bench.moment()),
  );
  const evaluation = () => trailing.value().evaluation;
  return (
    <div aria-busy={trailing.late()}>
      <props.sheet.Figure
        value={(symbol) => valueOf(evaluation(), symbol)}
        text={(symbol) =>
          printSymbol(props.sheet.calculator, evaluation(), trailing.value().situation, symbol, false) ?? '…'
        }
        known={(symbol) => {
          const outcome = evaluation().outcomes[symbol];
          return outcome?.ok ? outcome : undefined;
        }}
        choice={evaluation().choices}
        mark={records.settings().mark}
      />
    </div>
  );
}
