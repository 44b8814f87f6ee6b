import { Show } from 'solid-js';
import { A, Navigate, useLocation, useParams } from '@solidjs/router';
import { checkNow, isFormerCheck } from '../../reference/renamed';
import { useRecords } from '../desk/context';
import { Waiting } from '../desk/parts/part';
import { createFinding } from './find-sheet';
import { openSheet } from './open-sheet';
import { SheetView } from './sheet-view';
import say from './words/en';
import './sheet.css';

/** One screen for every calculator; an address with a check's former name goes on to today's. */
export function CalculatorScreen() {
  const params = useParams();
  const location = useLocation();
  const former = () => (params.id !== undefined && isFormerCheck(params.id) ? params.id : undefined);
  return (
    <Show when={former()} fallback={<CheckScreen />}>
      {(id) => <Navigate href={`/check/${checkNow(id())}${location.search}`} />}
    </Show>
  );
}

/** Finds the check, finds what was being entered, and shows the sheet. */
function CheckScreen() {
  const records = useRecords();
  const finding = createFinding();
  return (
    <Show
      when={finding.found()}
      keyed
      fallback={
        <main>
          <Show when={finding.unknown()} fallback={<Waiting what={say.screen.what} />}>
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
