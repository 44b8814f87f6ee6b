/** Whether this browser can be asked to leave the screen on. */
export const canKeepAwake = (): boolean => 'wakeLock' in navigator;

/**
 * Leaves the screen on until the returned function is called. A phone takes the lock away when the page goes out of sight:
 * it is asked for again when the page is shown. A refusal (battery low) is no trouble: the screen just goes dark.
 */
export function keepAwake(): () => void {
  if (!canKeepAwake()) return () => undefined;
  let lock: WakeLockSentinel | undefined;
  let wanted = true;
  const isWanted = (): boolean => wanted;
  const ask = async (): Promise<void> => {
    if (!isWanted() || document.visibilityState !== 'visible' || lock?.released === false) return;
    try {
      const got = await navigator.wakeLock.request('screen');
      await lock?.release();
      lock = got;
      if (!isWanted()) await got.release();
    } catch {
      lock = undefined;
    }
  };
  const onShown = (): void => void ask();
  document.addEventListener('visibilitychange', onShown);
  void ask();
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', onShown);
    void lock?.release();
  };
}
