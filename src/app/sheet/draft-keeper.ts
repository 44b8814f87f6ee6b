import { onCleanup } from 'solid-js';
import type { Entry } from '../../engine/entry';
import { mergeSheets, sameSheet, type Entered, type Sheet } from '../../machine/draft';
import { createBehind } from '../desk/behind';
import type { Records } from '../desk/records';
import type { Bench } from './bench';
import { underHand } from './plate';

/** The entries with another one, or none, under a symbol. */
function withEntry(entries: Entered['entries'], symbol: string, entry: Entry | undefined): Entered['entries'] {
  const rest = Object.fromEntries(Object.entries(entries).filter(([name]) => name !== symbol));
  return entry === undefined ? rest : { ...rest, [symbol]: entry };
}

/**
 * Writes what is being entered a moment after each change, each field by itself, and follows what another tab writes to the
 * same sheet. A field that is being changed here, or that the cursor stands in, is never taken from the hand: what another tab
 * wrote there is said beside it, and taken when the field is left as it was.
 * @param found what the store held when the sheet was opened
 */
export function createDraftKeeper(
  records: Records,
  machine: string | null,
  calculator: string,
  bench: Pick<Bench, 'calc' | 'sheet' | 'follow' | 'elsewhere' | 'setElsewhere'>,
  found: Sheet,
) {
  /** What the store holds, as far as this tab knows. */
  let base = found;
  let kept: string | null = null;
  /** What another tab wrote while the cursor stood in a field of it. */
  let waiting: Sheet | undefined;
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
  const follow = (theirs: Sheet): void => {
    const mine = bench.sheet();
    const merged = mergeSheets(base, mine, theirs);
    const hand = underHand(bench.calc);
    const held = hand === undefined ? undefined : mine.entries[hand];
    const given = hand === undefined ? undefined : merged.entries[hand];
    if (hand === undefined || (given?.text ?? '') === (held?.text ?? '')) {
      base = theirs;
      bench.setElsewhere(undefined);
      if (!sameSheet(merged, mine)) bench.follow(merged);
      return;
    }
    // What stands under the hand counts as unchanged here, so that it is not written over theirs while nobody types.
    const asHeld = (sheet: Sheet): Sheet => ({ ...sheet, entries: withEntry(sheet.entries, hand, held) });
    base = asHeld(theirs);
    waiting = theirs;
    const rest = asHeld(merged);
    if (!sameSheet(rest, mine)) bench.follow(rest);
    bench.setElsewhere({ symbol: hand, text: given?.text ?? '' });
  };
  /** The field was left: what waits for it is taken, where it was not written meanwhile. */
  const onLeave = (): void => {
    setTimeout(() => {
      const at = bench.elsewhere()?.symbol;
      if (at !== undefined && waiting && underHand(bench.calc) !== at) follow(waiting);
    });
  };
  onCleanup(records.onDraft(machine, calculator, follow));
  document.addEventListener('focusout', onLeave);
  onCleanup(() => document.removeEventListener('focusout', onLeave));
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
