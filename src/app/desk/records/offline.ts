import { createSignal, onMount } from 'solid-js';
import { keepAll } from '../behind';
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

/** Loads the page anew once all that was typed is kept. */
const reload = (): void => void keepAll().then((kept) => kept && location.reload());

/** Tells of every new version that waits, with what changes over to it. */
function followUpdates(
  registration: ServiceWorkerRegistration,
  offer: (changeOver: () => Promise<void>) => void,
): void {
  const offered = (waiting: ServiceWorker): void =>
    offer(async () => {
      // Where something could not be kept the page stays: the notice says that nothing is kept.
      if (!(await keepAll())) return;
      // Taken over in another tab, which changed nothing here: this page still runs what it was loaded with.
      if (waiting.state !== 'installed') {
        location.reload();
        return;
      }
      navigator.serviceWorker.addEventListener('controllerchange', reload, { once: true });
      ask(waiting, { type: 'SKIP_WAITING' });
    });
  if (registration.waiting && registration.active) offered(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && registration.active) offered(coming);
    });
  });
}

/** Whether the page works without a signal, how far its copy is, and the new version that waits, if one does. */
export function createOffline() {
  const [stage, setStage] = createSignal<Stage>();
  const [update, setUpdate] = createSignal<() => Promise<void>>();
  const [active, setActive] = createSignal(false);

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
      if (registration) followUpdates(registration, (changeOver) => void setUpdate(() => changeOver));
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
