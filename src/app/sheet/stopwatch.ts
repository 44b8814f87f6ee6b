import { createSignal, onCleanup } from 'solid-js';
import { keepAwake } from '../../instrument/wake-lock';

const TICK_MS = 100;

/**
 * A stopwatch that goes by the clock, not by its ticks: a locked screen or a sleeping tab stops the ticks only. Leaves the
 * screen on while it runs.
 */
export function createStopwatch() {
  const [start, setStart] = createSignal<number>();
  const [now, setNow] = createSignal(0);
  const [running, setRunning] = createSignal(false);
  let ticks: ReturnType<typeof setInterval> | undefined;
  let letSleep: (() => void) | undefined;
  const tick = (): void => void setNow(Date.now());
  const halt = (): void => {
    clearInterval(ticks);
    letSleep?.();
    letSleep = undefined;
    document.removeEventListener('visibilitychange', tick);
  };
  onCleanup(halt);
  return {
    running,
    /** Seconds since the start, or until it was stopped; 0 before. */
    elapsed: (): number => Math.max(0, now() - (start() ?? now())) / 1000,
    start(): void {
      halt();
      setStart(Date.now());
      tick();
      setRunning(true);
      ticks = setInterval(tick, TICK_MS);
      letSleep = keepAwake();
      document.addEventListener('visibilitychange', tick);
    },
    /** Reads the clock anew, so that what follows counts from this very moment. */
    tick,
    stop(): void {
      if (!running()) return;
      tick();
      halt();
      setRunning(false);
    },
  };
}
