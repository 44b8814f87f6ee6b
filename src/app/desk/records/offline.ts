import { createSignal, onMount } from 'solid-js';

/** Whether the page works without a signal, and the new version that waits, if one does. */
export function createOffline() {
  const [ready, setReady] = createSignal(false);
  const [update, setUpdate] = createSignal<() => Promise<void>>();
  onMount(() => {
    if (!('serviceWorker' in navigator)) return;
    // Said only when it is true: a worker is active and controls or will control this page.
    void navigator.serviceWorker.ready.then(() => setReady(true));
    void import('virtual:pwa-register').then(({ registerSW }) => {
      const activate = registerSW({
        immediate: true,
        onNeedRefresh: () =>
          setUpdate(() => () => {
            // A page that was open before its first worker came is not reloaded by the helper itself.
            navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
            return activate(false);
          }),
        onOfflineReady: () => setReady(true),
      });
    });
  });
  return { ready, update };
}
