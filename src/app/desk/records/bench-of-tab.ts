import { createSignal } from 'solid-js';

/** What stands on this tab's bench, and what a link took off it. Ids of machines; null for none. */
interface OnBench {
  readonly machine: string | null;
  /** Stood there until a link was opened: the person can put it back. */
  readonly off: string | null;
}

const KEY = 'trammel-bench';
const EMPTY: OnBench = { machine: null, off: null };

const idOrNull = (value: unknown): string | null => (typeof value === 'string' ? value : null);

/** What this tab had on its bench before it was loaded anew; undefined in a new tab. */
function remembered(): OnBench | undefined {
  try {
    const found: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    if (typeof found !== 'object' || found === null) return undefined;
    const { machine, off }: Partial<Record<keyof OnBench, unknown>> = found;
    return { machine: idOrNull(machine), off: idOrNull(off) };
  } catch {
    return undefined;
  }
}

function remember(on: OnBench): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify(on));
  } catch {
    // The tab begins with the default then when it is loaded anew.
  }
}

/** The machine on the bench belongs to the tab: no other tab and no link changes it under the hand. */
export function createBenchOfTab() {
  const [on, setOn] = createSignal<OnBench>(EMPTY);
  let kept = EMPTY;
  const put = (next: OnBench): void => {
    kept = next;
    setOn(next);
    remember(next);
  };
  return {
    machine: () => on().machine,
    off: () => on().off,
    /** Once, as the tab opens. @param usual what a new tab begins with @param all the machines there are */
    begin(usual: string | null, all: ReadonlySet<string>): void {
      const { machine, off } = remembered() ?? { machine: usual, off: null };
      const there = (id: string | null) => (id !== null && all.has(id) ? id : null);
      put({ machine: there(machine), off: there(off) });
    },
    choose: (machine: string | null): void => put({ machine, off: null }),
    /** Clears the bench for a link's numbers: until they are accepted, a tab that is loaded anew has the machine back. */
    layAside: (): void => void setOn(({ machine, off }) => ({ machine: null, off: machine ?? off })),
    /** The link's numbers were accepted: the bench stays clear. */
    accept: (): void => put(on()),
    /** They were not: the bench is as it was. */
    decline: (): void => void setOn(kept),
  };
}
