import type { BuildFile, Fault } from './stage';
import { hashOf, NotTheFile, verified } from './verify';

/** What the copy stands on, so that it runs outside a worker too. */
export interface Ground {
  /** Address that every file's is relative to, with a slash at its end. */
  readonly scope: string;
  readonly caches: CacheStorage;
  readonly fetch: (url: string, how: RequestInit) => Promise<Response>;
}

/** Caches of earlier versions, which another library made. */
const FORMER = 'workbox-precache-v2-';

export type Stock = ReturnType<typeof createStock>;

/** The caches of this app's releases: one for each, named by what is in it. */
export function createStock(files: readonly BuildFile[], { scope, caches, fetch }: Ground) {
  const prefix = `trammel:${scope}:`;
  const own = hashOf(new TextEncoder().encode(JSON.stringify(files))).then((name) => prefix + name);
  const address = (url: string): string => scope + url;
  const match = async (name: string, url: string): Promise<Response | undefined> =>
    (await caches.open(name)).match(address(url), { ignoreSearch: true, ignoreVary: true });
  return {
    own,
    match,
    /** Of all releases, in the order in which they came. */
    names: async (): Promise<string[]> =>
      (await caches.keys()).filter((key) => key.startsWith(prefix) || key === FORMER + scope),
    drop: (name: string): Promise<boolean> => caches.delete(name),
    /** Out of the caches of that name, where it is whole. */
    async kept(file: BuildFile, among: readonly string[]): Promise<Response | undefined> {
      for (const name of among) {
        const found = await match(name, file.url);
        const whole = found && (await verified(file, found).catch(() => undefined));
        if (whole) return whole;
      }
      return undefined;
    },
    /** From the host. @throws NotTheFile */
    async fetched(file: BuildFile): Promise<Response> {
      let fault: Fault = 'unreachable';
      // What the browser itself has kept of it may be what is wrong: then past that.
      for (const cache of ['default', 'reload'] as const) {
        try {
          return await verified(file, await fetch(address(file.url), { cache }));
        } catch (error) {
          fault = error instanceof NotTheFile ? error.why : 'unreachable';
        }
      }
      throw new NotTheFile(file.url, fault);
    },
    /** Into this release's cache. @returns one to answer with @throws NotTheFile where there is no room */
    async put(file: BuildFile, response: Response): Promise<Response> {
      const answer = response.clone();
      try {
        await (await caches.open(await own)).put(address(file.url), response);
      } catch {
        throw new NotTheFile(file.url, 'no room');
      }
      return answer;
    },
  };
}
