import { batch, createMemo, createSignal, untrack } from 'solid-js';
import { createStore, reconcile, unwrap } from 'solid-js/store';
import type { Calculator } from '../../engine/calculator';
import type { Entered, Sheet } from '../../machine/draft';
import type { Entry } from '../../engine/entry';

/** What is entered without the readings: what is set, and what is known of the machine, stays. */
export function withoutReadings(calc: Calculator, { entries, choices }: Entered): Entered {
  const read = new Set(calc.measured);
  return {
    entries: Object.fromEntries(Object.entries(entries).filter(([symbol]) => !read.has(symbol))),
    choices: { ...choices },
  };
}

interface Stored {
  readonly entries: Record<string, Entry>;
  readonly choices: Record<string, string>;
}

/** A store writes into the objects that it is given: others hold them too. */
const copyOf = ({ entries, choices }: Entered): Stored => ({
  entries: Object.fromEntries(Object.entries(entries).map(([symbol, entry]) => [symbol, { ...entry }])),
  choices: { ...choices },
});

/** What another tab wrote to one field. */
export interface Elsewhere {
  readonly symbol: string;
  readonly text: string;
}

/** What is entered on a sheet, and what stood there before it was cleared or an example put in. */
export function createEntries(start: Sheet, spent = false) {
  const [entered, setEntered] = createStore(copyOf(start));
  const [before, setBefore] = createSignal<Entered | undefined>(start.before);
  const [changes, setChanges] = createSignal(0);
  const [followed, setFollowed] = createSignal(0);
  const byHand = createMemo(() => changes() - followed());
  const [elsewhere, setElsewhere] = createSignal<Elsewhere>();
  /** What stands here was kept: once something new is entered, what stood here before it is of no use. */
  let isSpent = spent;
  const begin = () => {
    if (isSpent) setBefore(undefined);
    isSpent = false;
  };
  const changed = () => setChanges((count) => count + 1);
  return {
    entered,
    /** Counts every change of an entry or option. */
    changes,
    /** Counts the changes made here, without those that another tab made. */
    byHand,
    /** What is entered, apart from the store: all of it is taken anew with each change. */
    now: (): Entered => {
      changes();
      return copyOf(unwrap(entered));
    },
    /** Writes several lines at once, as one change. */
    write: (entries: Readonly<Record<string, Entry>>): void =>
      batch(() => {
        begin();
        for (const [symbol, entry] of Object.entries(entries)) {
          setEntered('entries', symbol, entry);
          if (symbol === elsewhere()?.symbol) setElsewhere(undefined);
        }
        changed();
      }),
    pick(name: string, option: string): void {
      batch(() => {
        begin();
        setEntered('choices', name, option);
        changed();
      });
    },
    /** Puts other entries in; what stood there can be put back. */
    replace(to: Entered): void {
      begin();
      setBefore(before() ?? structuredClone<Entered>(unwrap(entered)));
      setEntered(reconcile(copyOf(to)));
      changed();
    },
    /** All that is kept as the draft, as it stands now. */
    sheet: (): Sheet => untrack(() => structuredClone({ ...unwrap(entered), before: unwrap(before()) })),
    /** What another tab wrote to the field that the cursor stands in: said beside it until it is left. */
    elsewhere,
    setElsewhere,
    /** Takes over what another tab wrote. */
    follow: (to: Sheet): void =>
      batch(() => {
        setEntered(reconcile(copyOf(to)));
        setBefore(to.before);
        changed();
        setFollowed((count) => count + 1);
      }),
    /** What stands here was kept as a reading. */
    settle(): void {
      isSpent = true;
    },
    canPutBack: () => before() !== undefined,
    putBack(): void {
      const to = before();
      setBefore(undefined);
      if (to) setEntered(reconcile(copyOf(to)));
      changed();
    },
  };
}
