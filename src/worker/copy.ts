import type { BuildFile, Fault, Stage } from './stage';
import { hashOf, NotTheFile, verified } from './verify';

/** What the copy stands on, so that it runs outside a worker too. */
export interface Ground {
  /** Address that every file's is relative to, with a slash at its end. */
  readonly scope: string;
  readonly caches: CacheStorage;
  readonly fetch: (url: string, how: RequestInit) => Promise<Response>;
}

/** How many files are fetched at a time. */
const AT_ONCE = 6;

/** Caches of earlier versions, which another library made. */
const FORMER = 'workbox-precache-v2-';

/** One release kept for offline: no byte comes in or goes out that is not the build's own. */
export interface Copy {
  /** Fetches what is not there yet. @throws NotTheFile: then nothing but whole files of the build is in the cache */
  fill(told: (stage: Stage) => void): Promise<void>;
  /** Looks at every file, fetches anew what is missing or damaged, and says how it ended. */
  mend(told: (stage: Stage) => void): Promise<Stage>;
  /** The file of that address; undefined where this release has none. @throws NotTheFile where it cannot be had */
  find(path: string): Promise<Response> | undefined;
  /** A file of another release that is still kept, for a page that was opened with it. */
  findOld(path: string): Promise<Response | undefined>;
  /** It is the page itself, whatever address it came from. */
  isPage(response: Response): Promise<boolean>;
  /**
   * Drops releases that no open page runs.
   * @param entries entry scripts of open pages; undefined where one is not known: then nothing is dropped
   * @param which `older`: not one that came after, and waits
   */
  dropOld(entries: readonly string[] | undefined, which: 'older' | 'all'): Promise<void>;
}

export function createCopy(files: readonly BuildFile[], { scope, caches, fetch }: Ground): Copy {
  const prefix = `trammel ${scope} `;
  const byUrl = new Map(files.map((file) => [file.url, file]));
  const own = hashOf(new TextEncoder().encode(JSON.stringify(files))).then((name) => prefix + name);
  const address = (url: string): string => scope + url;
  // In the order in which they came.
  const ours = async (): Promise<string[]> =>
    (await caches.keys()).filter((key) => key.startsWith(prefix) || key === FORMER + scope);
  const others = async (): Promise<string[]> => {
    const name = await own;
    return (await ours()).filter((key) => key !== name);
  };
  const match = async (name: string, url: string): Promise<Response | undefined> =>
    (await caches.open(name)).match(address(url), { ignoreSearch: true, ignoreVary: true });

  /** Out of the caches: this release's, and any other that happens to hold the same file. */
  async function kept(file: BuildFile, among: readonly string[]): Promise<Response | undefined> {
    for (const name of among) {
      const found = await match(name, file.url);
      const whole = found && (await verified(file, found).catch(() => undefined));
      if (whole) return whole;
    }
    return undefined;
  }

  async function fetched(file: BuildFile): Promise<Response> {
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
  }

  async function put(file: BuildFile, response: Response): Promise<Response> {
    const answer = response.clone();
    try {
      await (await caches.open(await own)).put(address(file.url), response);
    } catch {
      throw new NotTheFile(file.url, 'no room');
    }
    return answer;
  }

  async function ensure(file: BuildFile, rest: readonly string[]): Promise<void> {
    if (await kept(file, [await own])) return;
    await put(file, (await kept(file, rest)) ?? (await fetched(file)));
  }

  /** Every file in turn, several at a time; goes on after a fault, so that what can be had is there. */
  async function all(told: (stage: Stage) => void): Promise<NotTheFile | undefined> {
    const rest = await others();
    const queue = [...files];
    let have = 0;
    let fault: NotTheFile | undefined;
    const work = async (): Promise<void> => {
      for (let file = queue.shift(); file; file = queue.shift()) {
        try {
          await ensure(file, rest);
          have += 1;
          if (!fault) told({ kind: 'coming', have, of: files.length });
        } catch (error) {
          fault ??= error instanceof NotTheFile ? error : new NotTheFile(file.url, 'unreachable');
        }
      }
    };
    await Promise.all(Array.from({ length: AT_ONCE }, work));
    const of = files.length;
    told(fault ? { kind: 'failed', have, of, file: fault.file, why: fault.why } : { kind: 'whole', have, of });
    return fault;
  }

  return {
    async fill(told) {
      const fault = await all(told);
      if (fault) throw fault;
    },
    async mend(told) {
      let last: Stage = { kind: 'coming', have: 0, of: files.length };
      await all((stage) => {
        last = stage;
      });
      told(last);
      return last;
    },
    find(path) {
      const file = byUrl.get(path === '' ? 'index.html' : path);
      if (!file) return undefined;
      return (async () => {
        const here = await kept(file, [await own]);
        if (here) return here;
        const found = (await kept(file, await others())) ?? (await fetched(file));
        // Where there is no room to keep it, it is shown all the same.
        return put(file, found.clone()).catch(() => found);
      })();
    },
    async findOld(path) {
      for (const name of await others()) {
        const found = await match(name, path);
        if (found) return found;
      }
      return undefined;
    },
    async isPage(response) {
      const page = byUrl.get('index.html');
      return page !== undefined && (await verified(page, response.clone()).then(Boolean, () => false));
    },
    async dropOld(entries, which) {
      if (!entries) return;
      const [all, name] = [await ours(), await own];
      const dropped =
        which === 'all' ? all.filter((one) => one !== name) : all.slice(0, Math.max(0, all.indexOf(name)));
      for (const one of dropped) {
        const runs = await Promise.all(entries.map(async (entry) => !byUrl.has(entry) && (await match(one, entry))));
        if (!runs.some(Boolean)) await caches.delete(one);
      }
    },
  };
}
