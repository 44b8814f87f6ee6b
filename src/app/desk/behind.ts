/*
 * What is being typed is written a moment behind the hand. Everything that waits to be written is known here, so that the page
 * can be left, or a new version taken, with nothing lost.
 */

/** Pause in the typing after which it is written, and how long it waits at the most while the typing goes on. */
const PAUSE_MS = 120;
const MOST_MS = 300;

const open = new Set<() => Promise<boolean>>();

/**
 * Writes all that waits, in this tab.
 * @returns whether all of it is kept
 */
export async function keepAll(): Promise<boolean> {
  const kept = await Promise.all([...open].map((flush) => flush()));
  return kept.every(Boolean);
}

/** A writer that runs behind: a moment after the last note, at most `MOST_MS` after the first, and when the page goes out of sight. */
export interface Behind {
  /** There is something to write. */
  readonly note: () => void;
  /** Writes at once what waits. @returns whether all that was noted is kept */
  readonly flush: () => Promise<boolean>;
  /** Writes what waits and stops. */
  readonly end: () => void;
}

/** @param write writes what has been noted; false where there was no room and it is worth another attempt by and by */
export function createBehind(write: () => Promise<boolean>, retryMs = 3000): Behind {
  const state = { waiting: false, ended: false };
  let since = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last: Promise<boolean> = Promise.resolve(true);
  // Asked by a call: it may have come true while the write was on its way.
  const isWaiting = (): boolean => state.waiting;
  const run = async (): Promise<boolean> => {
    clearTimeout(timer);
    if (!state.waiting) return last;
    state.waiting = false;
    const mine = write();
    last = mine;
    const kept = await mine;
    if (kept || isWaiting() || state.ended) return kept;
    state.waiting = true;
    since = performance.now();
    timer = setTimeout(() => void run(), retryMs);
    return false;
  };
  const onHide = () => {
    if (document.visibilityState === 'hidden') void run();
  };
  const onLeave = () => void run();
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', onLeave);
  open.add(run);
  return {
    note() {
      // Not the time of day: a clock that is set back meanwhile would put the writing off for as long as somebody types.
      const now = performance.now();
      if (!state.waiting) since = now;
      state.waiting = true;
      clearTimeout(timer);
      timer = setTimeout(() => void run(), Math.max(0, Math.min(PAUSE_MS, since + MOST_MS - now)));
    },
    flush: run,
    end() {
      void run();
      state.ended = true;
      open.delete(run);
      document.removeEventListener('visibilitychange', onHide);
      window.removeEventListener('pagehide', onLeave);
    },
  };
}
