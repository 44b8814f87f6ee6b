import { unwrap } from 'solid-js/store';
import type { Entered } from './entries';
import type { Records } from '../desk/records';

const PAUSE_MS = 120;
/** Until the next attempt where there was no room. */
const RETRY_MS = 3000;

/** Writes what is being entered a moment after each change, and at once when the page goes out of sight. */
export function createDraftKeeper(records: Records, machine: string | null, calculator: string) {
  let waiting: Entered | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let ended = false;
  const flush = () => {
    clearTimeout(timer);
    if (!waiting) return;
    const entered = waiting;
    const { entries, choices } = structuredClone(unwrap(entered));
    waiting = undefined;
    void records
      .saveDraft({ machine, calculator, entries, choices, changed: new Date().toISOString() })
      .then((written) => {
        if (written || waiting || ended) return;
        waiting = entered;
        timer = setTimeout(flush, RETRY_MS);
      });
  };
  const onHide = () => {
    if (document.visibilityState === 'hidden') flush();
  };
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', flush);
  return {
    note(entered: Entered): void {
      waiting = entered;
      clearTimeout(timer);
      timer = setTimeout(flush, PAUSE_MS);
    },
    /** Writes at once what waits. */
    flush,
    end(): void {
      flush();
      ended = true;
      document.removeEventListener('visibilitychange', onHide);
      window.removeEventListener('pagehide', flush);
    },
  };
}
