import { createMemo, createResource } from 'solid-js';
import { useParams } from '@solidjs/router';
import { loadCalculator } from '../../engine/list';
import { useRecords } from '../desk/context';
import { fetchPart } from '../desk/parts/fetch-part';
import type { Reading } from '../../machine/schema';
import type { Records } from '../desk/records';
import { createArrivals } from './arrival';
import type { Entered } from './entries';
import type { Opening } from './open-sheet';

/** The newest reading of a check on a machine. */
async function newestOf(records: Records, machine: string, calculator: string): Promise<Reading | undefined> {
  const page = await records.latestReadings(machine, { calculator, limit: 1 });
  return page.records[0];
}

/** Finds the check that the address names and what was being entered for it. */
export function createFinding() {
  const records = useRecords();
  const params = useParams();
  const arrival = createArrivals();
  const [loaded] = createResource(
    () => params.id,
    async (id) => ({ id, found: await fetchPart(() => loadCalculator(id)) }),
  );
  const draftOf = createMemo(
    () =>
      records.ready() && params.id
        ? { id: params.id, machine: records.settings().machine, arrival: arrival() }
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
    // Nothing entered since the last reading was kept: what stands there is that reading.
    const startsAgain = last !== undefined && !adopted && (found === undefined || found.changed <= last.at);
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
