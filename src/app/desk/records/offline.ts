import { createSignal, onMount } from 'solid-js';
import { isTold, LOCK, type Asked, type Stage } from '../../../worker/stage';

const ask = (worker: ServiceWorker | null | undefined, asked: Asked): void => worker?.postMessage(asked);

/** Says for as long as the page is open which script it runs: what it may still ask for is kept that long. */
function holdRelease(): void {
  if (!('locks' in navigator)) return;
  const entry = document.querySelector<HTMLScriptElement>('script[type="module"][src]')?.getAttribute('src');
  if (entry) {
    void navigator.locks.request(
      LOCK + entry.replace(/^\.\//, ''),
      { mode: 'shared' },
      () => new Promise(() => undefined),
    );
  }
}

/** The page's own worker, which keeps the app for offline; undefined where the browser has none or it cannot be fetched. */
async function register(): Promise<ServiceWorkerRegistration | undefined> {
  try {
    return await navigator.serviceWorker.register('./sw.js', { updateViaCache: 'none' });
  } catch {
    return undefined;
  }
}

/** Whether the page works without a signal, how far its copy is, and the new version that waits, if one does. */
export function createOffline() {
  const [stage, setStage] = createSignal<Stage>();
  const [update, setUpdate] = createSignal<() => Promise<void>>();
  const [active, setActive] = createSignal(false);

  const offer = (waiting: ServiceWorker): void =>
    void setUpdate(() => () => {
      navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
      ask(waiting, { type: 'SKIP_WAITING' });
      return Promise.resolve();
    });
  const follow = (registration: ServiceWorkerRegistration): void => {
    if (registration.waiting && registration.active) offer(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const coming = registration.installing;
      coming?.addEventListener('statechange', () => {
        if (coming.state === 'installed' && registration.active) offer(coming);
      });
    });
  };
  /** Looks whether all of the copy is there, and fetches what is not. */
  const check = async (): Promise<void> => {
    const registration = await navigator.serviceWorker.getRegistration();
    if (registration?.active) ask(registration.active, { type: 'CHECK' });
    else await register();
  };

  onMount(() => {
    holdRelease();
    if (import.meta.env.DEV || !('serviceWorker' in navigator)) return;
    const { serviceWorker } = navigator;
    serviceWorker.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
      if (isTold(data)) setStage(data.stage);
    });
    // Said only when it is true: a worker is active and controls or will control this page.
    void serviceWorker.ready.then(() => setActive(true));
    const start = async (): Promise<void> => {
      const registration = await register();
      if (registration) follow(registration);
      await check();
    };
    // What the screen needs comes first.
    if (document.readyState === 'complete') void start();
    else addEventListener('load', () => void start(), { once: true });
    addEventListener('online', () => void check());
  });
  return {
    ready: () => active() && stage()?.kind !== 'failed',
    stage,
    check,
    update,
  };
}
