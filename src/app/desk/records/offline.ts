import { createSignal, onMount } from 'solid-js';
import type { Stage } from '../../../worker/stage';
import { fetchPart } from '../parts/fetch-part';

const follower = () => fetchPart(() => import('./follow-worker'));

/** Whether the page works without a signal, how far its copy is, and the new version that waits, if one does. */
export function createOffline() {
  const [stage, setStage] = createSignal<Stage>();
  const [update, setUpdate] = createSignal<() => Promise<void>>();
  const [active, setActive] = createSignal(false);
  onMount(() => {
    if (import.meta.env.DEV || !('serviceWorker' in navigator)) return;
    // Said only when it is true: a worker is active and controls or will control this page.
    void navigator.serviceWorker.ready.then(() => setActive(true));
    const start = async (): Promise<void> => {
      const { followWorker } = await follower();
      await followWorker({ onStage: setStage, onUpdate: (changeOver) => void setUpdate(() => changeOver) });
    };
    // What the screen needs comes first.
    if (document.readyState === 'complete') void start();
    else addEventListener('load', () => void start(), { once: true });
  });
  return {
    ready: () => active() && stage()?.kind !== 'failed',
    stage,
    check: async (): Promise<void> => (await follower()).checkCopy(),
    update,
  };
}
