import { useRecords } from '../desk/context';
import type { Sheet } from './open-sheet';
import { printSymbol } from '../desk/print-result';
import { valueOf } from './print';

/** The drawing of a check, to scale with the values on its bench. */
export function SheetFigure(props: { sheet: Sheet }) {
  const records = useRecords();
  const evaluation = () => props.sheet.bench.evaluation();
  return (
    <props.sheet.Figure
      value={(symbol) => valueOf(evaluation(), symbol)}
      text={(symbol) =>
        printSymbol(props.sheet.calculator, evaluation(), props.sheet.bench.situation(), symbol, false) ?? '…'
      }
      known={(symbol) => {
        const outcome = evaluation().outcomes[symbol];
        return outcome?.ok ? outcome : undefined;
      }}
      choice={evaluation().choices}
      mark={records.settings().mark}
    />
  );
}
