import { RESCUE } from './call';
import { filesOf, readEverything } from './records';
import say from './words/en';

/*
 * Stands in the page itself, and in the page that the worker shows where it has no other: it needs no second file. It comes
 * up where the app did not.
 */

const PATIENCE_MS = 20_000;

let shown = false;

const started = (): boolean => document.querySelector('#app > .page') !== null;

function element<K extends keyof HTMLElementTagNameMap>(name: K, text: string): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  made.textContent = text;
  return made;
}

function save(text: string, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), PATIENCE_MS);
}

async function saveEverything(): Promise<string> {
  try {
    const made = new Date().toISOString();
    const { texts, records } = filesOf((await readEverything(indexedDB)) ?? [], made);
    if (records === 0) return say.empty;
    texts.forEach((text, i) => save(text, say.file(made.slice(0, 10), i + 1, texts.length)));
    return say.saved(records, texts.length);
  } catch (error) {
    return say.unreadable(String(error));
  }
}

/** Asks past what the browser itself keeps of the files that the page names: a wrong one may stand there for a year. */
async function renewFiles(): Promise<void> {
  const named = document.querySelectorAll<HTMLScriptElement | HTMLLinkElement>('script[src], link[href]');
  const renew = (one: HTMLScriptElement | HTMLLinkElement): Promise<unknown> =>
    fetch('src' in one ? one.src : one.href, { cache: 'reload' }).catch(() => undefined);
  await Promise.all(Array.from(named, renew));
}

/** Drops the copy of the app, never the records, once it is sure that the host has one. */
async function fetchAnew(): Promise<string> {
  const worker = await fetch('./sw.js', { cache: 'no-store' }).catch(() => undefined);
  if (worker?.ok !== true || worker.headers.get('content-type')?.includes('javascript') !== true) return say.noHost;
  const scope = new URL('./', location.href).href;
  const registration = await navigator.serviceWorker.getRegistration(scope);
  await registration?.unregister();
  for (const name of await caches.keys()) if (name.includes(scope)) await caches.delete(name);
  await renewFiles();
  location.reload();
  return '';
}

function show(): void {
  const root = document.getElementById('app');
  if (shown || started() || !root) return;
  shown = true;
  const main = document.createElement('main');
  const told = element('p', '');
  told.setAttribute('role', 'status');
  const key = (label: string, act: () => Promise<string>): HTMLElement => {
    const button = element('button', label);
    button.type = 'button';
    button.className = 'button';
    button.onclick = () => void act().then((sentence) => (told.textContent = sentence));
    const line = document.createElement('p');
    line.append(button);
    return line;
  };
  const again = async (): Promise<string> => {
    await renewFiles();
    location.reload();
    return '';
  };
  const steps = [
    key(say.again, again),
    key(say.save, saveEverything),
    element('p', say.about),
    key(say.anew, fetchAnew),
  ];
  main.append(element('h1', say.title), element('p', say.why), ...steps, told);
  root.replaceChildren(main);
}

addEventListener(
  'error',
  ({ target }) => {
    if (target instanceof HTMLScriptElement) show();
  },
  true,
);
addEventListener('load', show);
addEventListener(RESCUE, show);
setTimeout(show, PATIENCE_MS);
