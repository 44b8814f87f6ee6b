import { createMemo, createResource } from 'solid-js';
import { useParams } from '@solidjs/router';
import { loadCalculator } from '../../engine/list';
import { useRecords } from '../desk/context';
import { fetchPart } from '../desk/parts/fetch-part';
import type { Entered } from '../../machine/draft';
import type { Draft, Reading } from '../../machine/schema';
import type { Records } from '../desk/records';
import { createArrivals } from './arrival';
import type { Opening } from './open-sheet';

/** The newest reading of a check on a machine. */
async function newestOf(records: Records, machine: string, calculator: string): Promise<Reading | undefined> {
  const page = await records.latestReadings(machine, { calculator, limit: 1 });
  return page.records[0];
}

/** Nothing was entered since a reading was kept: what stands there is that reading. By the clock where it was not kept which. */
const isSpent = ({ kept, changed }: Draft, last: Reading): boolean =>
  kept === undefined ? changed <= last.at : kept !== null;

/** Finds the check that the address names and what was being entered for it. */
export function createFinding() {
  const records = useRecords();
  const params = useParams();
  const [loaded] = createResource(
    () => params.id,
    async (id) => ({ id, found: await fetchPart(() => loadCalculator(id)) }),
  );
  const arrivals = createArrivals(() => {
    const now = loaded();
    return now?.id === params.id ? now?.found?.calculator : undefined;
  });
  const draftOf = createMemo(
    () =>
      records.ready() && params.id && !arrivals.pending()
        ? { id: params.id, machine: records.onBench(), arrival: arrivals.here() }
        : undefined,
    undefined,
    {
      // A link opened over the same check makes the sheet anew, over the newest draft.
      equals: (a, b) => a?.id === b?.id && a?.machine === b?.machine && a?.arrival === b?.arrival,
    },
  );
  let carried: { readonly id: string; readonly entered: Entered } | undefined;
  const [draft] = createResource(draftOf, async (of) => {
    const found = await records.draftFor(of.machine, of.id);
    const last = of.machine === null ? undefined : await newestOf(records, of.machine, of.id);
    const adopted = of.machine !== null && carried?.id === of.id ? carried.entered : undefined;
    if (of.machine !== null) carried = undefined;
    const startsAgain = last !== undefined && !adopted && (found === undefined || isSpent(found, last));
    return { ...of, draft: found ?? adopted, carried: !found && adopted !== undefined, last, startsAgain };
  });
  const found = createMemo<Opening | undefined>(() => {
    const calculator = loaded();
    const entered = draft();
    if (!calculator?.found || calculator.id !== entered?.id || draft.loading) return undefined;
    return { loaded: calculator.found, ...entered };
  });
  return {
    found,
    /** There is no check of that name. */
    unknown: (): boolean => loaded() !== undefined && !loaded()?.found,
    /** What was entered before a machine was chosen goes along to the machine, unless it has entries of its own. */
    carry(id: string, entered: Entered): void {
      carried = { id, entered };
    },
  };
}
