import { keepAll } from '../behind';
import { isTold, LOCK, type Asked, type Stage } from '../../../worker/stage';

const ask = (worker: ServiceWorker | null | undefined, asked: Asked): void => worker?.postMessage(asked);

/** What a page wants to hear of the worker. */
export interface Following {
  readonly onStage: (stage: Stage) => void;
  /** A new version waits; the function changes over to it. */
  readonly onUpdate: (changeOver: () => Promise<void>) => void;
}

/** Says for as long as the page is open which script it runs: what it may still ask for is kept that long. */
function holdRelease(): void {
  if (!('locks' in navigator)) return;
  const entry = document.querySelector<HTMLScriptElement>('script[type="module"][src]')?.getAttribute('src');
  if (entry) {
    const held = () => new Promise(() => undefined);
    void navigator.locks.request(LOCK + entry.replace(/^\.\//, ''), { mode: 'shared' }, held);
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

function followUpdates(registration: ServiceWorkerRegistration, offer: Following['onUpdate']): void {
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

/** Looks whether all of the copy is there, and fetches what is not. */
export async function checkCopy(): Promise<void> {
  const registration = await navigator.serviceWorker.getRegistration();
  if (registration?.active) ask(registration.active, { type: 'CHECK' });
  else await register();
}

/** Registers the worker, follows what it says, and has it look at its copy, now and when the signal comes back. */
export async function followWorker({ onStage, onUpdate }: Following): Promise<void> {
  holdRelease();
  navigator.serviceWorker.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (isTold(data)) onStage(data.stage);
  });
  addEventListener('online', () => void checkCopy());
  const registration = await register();
  if (registration) followUpdates(registration, onUpdate);
  await checkCopy();
}
