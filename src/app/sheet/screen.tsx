import { Show } from 'solid-js';
import { A } from '@solidjs/router';
import { useRecords } from '../desk/context';
import { createFinding } from './find-sheet';
import { openSheet } from './open-sheet';
import { SheetView } from './sheet-view';
import say from './words/en';
import './sheet.css';

/** One screen for every calculator: finds it, finds what was being entered, and shows the sheet. */
export function CalculatorScreen() {
  const records = useRecords();
  const finding = createFinding();
  return (
    <Show
      when={finding.found()}
      keyed
      fallback={
        <main>
          <Show when={finding.unknown()} fallback={<p>{say.screen.fetching}</p>}>
            <h1>{say.screen.unknown}</h1>
            <p>
              <A href="/">{say.screen.all}</A>
            </p>
          </Show>
        </main>
      }
    >
      {(found) => {
        const sheet = openSheet(found, records, (id, entered) => finding.carry(id, entered));
        return <SheetView sheet={sheet} />;
      }}
    </Show>
  );
}
