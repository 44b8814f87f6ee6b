import rescuePage from 'virtual:rescue-page';
import { createCopy } from './copy';
import type { Scope, WindowClient } from './scope';
import { LOCK, type Asked, type BuildFile, type Stage } from './stage';

const worker = self as unknown as Scope;
// The build puts its list of files in place of this name; icons and manifest stand in it once more, without a hash.
const listed = (self as unknown as { readonly __WB_MANIFEST: readonly Partial<BuildFile>[] }).__WB_MANIFEST;

const { scope } = worker.registration;
const copy = createCopy(
  listed.flatMap(({ url, hash }) => (url === undefined || hash === undefined ? [] : [{ url, hash }])),
  { scope, caches, fetch: (url, how) => fetch(url, how) },
);

const pages = (): Promise<readonly WindowClient[]> =>
  worker.clients.matchAll({ type: 'window', includeUncontrolled: true });

const tell = (stage: Stage): void =>
  void pages().then((all) => {
    for (const page of all) page.postMessage({ type: 'STAGE', stage });
  });

/** Entry scripts of all open pages; undefined where a page does not say, as one of an earlier version does not. */
async function entriesOfPages(): Promise<readonly string[] | undefined> {
  if (!('locks' in navigator)) return undefined;
  const { held = [] } = await navigator.locks.query();
  const entries = held.flatMap(({ name = '' }) => (name.startsWith(LOCK) ? [name.slice(LOCK.length)] : []));
  // By number: what a lock says of its client is not the client's id in every browser.
  return entries.length >= (await pages()).length ? entries : undefined;
}

const dropOld = async (which: 'older' | 'all'): Promise<void> => copy.dropOld(await entriesOfPages(), which);

let checking: Promise<void> | undefined;
/** One check at a time. What the host has no longer is mended by the release that it has. */
async function check(): Promise<void> {
  const stage = await copy.mend(tell);
  await dropOld('older');
  if (stage.kind === 'failed' && stage.why !== 'unreachable') await worker.registration.update();
}

/**
 * The page from the copy; where it cannot be had, one that saves the records. An address below, which no file has, leads to
 * the page: served there, it would look for its files in the wrong folder.
 */
async function page(path: string, request: Request): Promise<Response> {
  const known = copy.find(path);
  if (known) {
    return known.catch(() => new Response(rescuePage, { headers: { 'content-type': 'text/html; charset=utf-8' } }));
  }
  const response = await fetch(request).catch(() => undefined);
  const elsewhere = response && (response.ok || response.type === 'opaqueredirect') && !(await copy.isPage(response));
  return elsewhere ? response : Response.redirect(scope);
}

async function asset(path: string, request: Request): Promise<Response> {
  try {
    return await (copy.find(path) ?? (await copy.findOld(path)) ?? fetch(request));
  } catch {
    return Response.error();
  }
}

worker.addEventListener('install', (event) => event.waitUntil(copy.fill(tell)));

worker.addEventListener('activate', (event) => event.waitUntil(worker.clients.claim().then(() => dropOld('all'))));

worker.addEventListener('message', (event) => {
  const { type } = event.data as Asked;
  if (type === 'SKIP_WAITING') event.waitUntil(worker.skipWaiting());
  else event.waitUntil((checking ??= check().finally(() => (checking = undefined))));
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const address = new URL(request.url);
  const path = (address.origin + address.pathname).slice(scope.length);
  // `no-store`: asks what the host has, past every copy.
  if (request.method !== 'GET' || request.cache === 'no-store' || !request.url.startsWith(scope)) return;
  if (request.mode === 'navigate') event.respondWith(page(path, request));
  else if (path !== 'sw.js') event.respondWith(asset(path, request));
});
