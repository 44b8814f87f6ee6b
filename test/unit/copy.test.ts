import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { createCopy } from '../../src/worker/copy';
import type { Stage } from '../../src/worker/stage';

/** SHA-256 by Node (FIPS 180-4), not by the worker. */
const sha = (text: string): string => createHash('sha256').update(text).digest('base64');
const SCOPE = 'https://host.example/bench/';

/** As much of the Cache API (W3C Service Workers) as the copy uses. */
function fakeCaches() {
  const stores = new Map<string, Map<string, Response>>();
  const open = (name: string) => {
    const store = stores.get(name) ?? new Map<string, Response>();
    stores.set(name, store);
    return Promise.resolve({
      match: (url: string) => Promise.resolve(store.get(url)?.clone()),
      put: (url: string, response: Response) => Promise.resolve(void store.set(url, response)),
    } as unknown as Cache);
  };
  return {
    stores,
    caches: {
      open,
      keys: () => Promise.resolve([...stores.keys()]),
      delete: (name: string) => Promise.resolve(stores.delete(name)),
    } as CacheStorage,
  };
}

const FILES = {
  'index.html': '<p>page</p>',
  'assets/a-1.js': 'let a = 1;',
  'assets/a-2.css': 'p {}',
  'icon.png': 'png',
  'site.webmanifest': '{}',
};
const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html',
  js: 'text/javascript',
  css: 'text/css',
  png: 'image/png',
  webmanifest: 'application/json',
};
type Name = keyof typeof FILES;
const NAMES = Object.keys(FILES) as Name[];
const listed = NAMES.map((url) => ({ url, hash: sha(FILES[url]) }));
const good = (name: Name) =>
  new Response(FILES[name], { headers: { 'content-type': TYPES[name.split('.').at(-1)!]! } });

const wrong: Readonly<Record<string, (name: Name) => Response | Promise<Response>>> = {
  'a page with 200': () => new Response('<!doctype html>', { headers: { 'content-type': 'text/html' } }),
  'a page called by the type of the file': (name) => new Response('<!doctype html>', { headers: good(name).headers }),
  'the file as a page': (name) => new Response(FILES[name] + ' ', { headers: { 'content-type': 'text/html' } }),
  'the file without a type': (name) => new Response(new TextEncoder().encode(`${FILES[name]} `)),
  'half the file': (name) => new Response(FILES[name].slice(0, 1), { headers: good(name).headers }),
  'nothing in it': (name) => new Response('', { headers: good(name).headers }),
  'not found': () => new Response('no', { status: 404 }),
  'part of it': (name) => new Response(FILES[name], { status: 206, headers: good(name).headers }),
  'no answer': () => Promise.reject(new TypeError('network')),
};

function setUp(answer: (name: Name) => Response | Promise<Response>) {
  const { stores, caches } = fakeCaches();
  const stages: Stage[] = [];
  const fetch = (url: string) => Promise.resolve(answer(url.slice(SCOPE.length) as Name));
  const copy = createCopy(listed, { scope: SCOPE, caches, fetch });
  return { stores, caches, copy, stages, told: (stage: Stage) => void stages.push(stage) };
}

async function kept(stores: Map<string, Map<string, Response>>) {
  const all = [...stores.values()].flatMap((store) => [...store]);
  return Promise.all(
    all.map(async ([url, response]) => ({ url: url.slice(SCOPE.length), hash: sha(await response.clone().text()) })),
  );
}

for (const [what, answer] of Object.entries(wrong)) {
  test.each(NAMES)(`${what} in place of %s: nothing of it is kept, and the install fails`, async (spoiled) => {
    const { stores, copy, stages, told } = setUp((name) => (name === spoiled ? answer(name) : good(name)));
    await expect(copy.fill(told)).rejects.toThrow(spoiled);
    const found = await kept(stores);
    expect(found.map(({ url }) => url).sort()).toEqual(NAMES.filter((name) => name !== spoiled).sort());
    for (const one of found) expect(listed).toContainEqual(one);
    expect(stages.at(-1)).toMatchObject({ kind: 'failed', file: spoiled, have: NAMES.length - 1, of: NAMES.length });
  });

  test.each(NAMES)(`${what} in the copy in place of %s: not shown, and fetched anew`, async (spoiled) => {
    const { stores, copy, told } = setUp(good);
    await copy.fill(told);
    const spoil = async () => {
      const response = await Promise.resolve(answer(spoiled)).catch(() => undefined);
      for (const store of stores.values()) {
        if (response) store.set(SCOPE + spoiled, response.clone());
        else store.delete(SCOPE + spoiled);
      }
    };
    await spoil();
    expect(await (await copy.find(spoiled))?.text()).toBe(FILES[spoiled]);
    await spoil();
    expect(await copy.mend(told)).toEqual({ kind: 'whole', have: NAMES.length, of: NAMES.length });
    expect(await kept(stores)).toHaveLength(NAMES.length);
    for (const one of await kept(stores)) expect(listed).toContainEqual(one);
  });
}

test('a release that no open page runs is dropped; one that a page runs is not, nor any while a page does not say', async () => {
  const { stores, caches, copy, told } = setUp(good);
  const former = `trammel:${SCOPE}:former`;
  const put = async () => (await caches.open(former)).put(`${SCOPE}assets/a-0.js`, new Response('old'));
  await put();
  await copy.fill(told);
  await copy.dropOld(undefined, 'all');
  await copy.dropOld(['assets/a-1.js', 'assets/a-0.js'], 'all');
  expect([...stores.keys()]).toContain(former);
  expect(await (await copy.findOld('assets/a-0.js'))?.text()).toBe('old');
  await copy.dropOld(['assets/a-1.js'], 'older');
  expect([...stores.keys()]).not.toContain(former);
  // One that came after, and waits, is not the older one's to drop.
  await put();
  await copy.dropOld(['assets/a-1.js'], 'older');
  expect([...stores.keys()]).toContain(former);
  expect([...stores.keys()]).toHaveLength(2);
});

test('another app in another folder of the host keeps its caches', async () => {
  const { stores, caches, copy, told } = setUp(good);
  for (const name of ['other', 'trammel:https://host.example/:x', `trammel:${SCOPE}deeper/:x`]) await caches.open(name);
  await copy.fill(told);
  await copy.dropOld([], 'all');
  expect(stores.size).toBe(4);
});
