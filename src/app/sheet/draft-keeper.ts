import { onCleanup } from 'solid-js';
import { mergeSheets, sameSheet, type Sheet } from '../../machine/draft';
import { createBehind } from '../desk/behind';
import type { Records } from '../desk/records';
import type { Bench } from './bench';

/**
 * Writes what is being entered a moment after each change, each field by itself, and follows what another tab writes to the
 * same sheet. A field that is being changed here is never taken from the hand.
 * @param found what the store held when the sheet was opened
 */
export function createDraftKeeper(
  records: Records,
  machine: string | null,
  calculator: string,
  bench: Pick<Bench, 'sheet' | 'follow'>,
  found: Sheet,
) {
  /** What the store holds, as far as this tab knows. */
  let base = found;
  let kept: string | null = null;
  const behind = createBehind(async () => {
    const [from, mine] = [base, bench.sheet()];
    if (kept === null && sameSheet(from, mine)) return true;
    base = mine;
    const written = await records.changeDraft(machine, calculator, (old) => ({
      ...mergeSheets(from, mine, old ?? { entries: {}, choices: {} }),
      kept,
    }));
    if (!written) base = from;
    return written;
  });
  onCleanup(
    records.onDraft(machine, calculator, (theirs) => {
      const merged = mergeSheets(base, bench.sheet(), theirs);
      base = theirs;
      if (!sameSheet(merged, bench.sheet())) bench.follow(merged);
    }),
  );
  onCleanup(() => behind.end());
  return {
    note(): void {
      kept = null;
      behind.note();
    },
    /** Writes at once what waits. */
    flush: behind.flush,
    /** What stands here was kept as this reading. */
    spend(reading: string): Promise<boolean> {
      kept = reading;
      behind.note();
      return behind.flush();
    },
  };
}
