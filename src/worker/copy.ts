import type { BuildFile, Stage } from './stage';
import { createStock, type Ground, type Stock } from './stock';
import { NotTheFile, verified } from './verify';

/** How many files are fetched at a time. */
const AT_ONCE = 6;

type Tell = (stage: Stage) => void;

/** One release kept for offline: no byte comes in or goes out that is not the build's own. */
export interface Copy {
  /** Fetches what is not there yet. @throws NotTheFile: then nothing but whole files of the build is in the cache */
  fill(told: Tell): Promise<void>;
  /** Looks at every file, fetches anew what is missing or damaged, and says how it ended. */
  mend(told: Tell): Promise<Stage>;
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

const others = async (stock: Stock): Promise<string[]> => {
  const own = await stock.own;
  return (await stock.names()).filter((name) => name !== own);
};

/** Sees to every file, several at a time; goes on after a fault, so that what can be had is there. @returns the first fault */
async function seeToAll(files: readonly BuildFile[], stock: Stock, told: Tell): Promise<NotTheFile | undefined> {
  const [own, rest, of] = [await stock.own, await others(stock), files.length];
  const queue = [...files];
  let have = 0;
  let fault: NotTheFile | undefined;
  const work = async (): Promise<void> => {
    for (let file = queue.shift(); file; file = queue.shift()) {
      try {
        if (!(await stock.kept(file, [own]))) {
          await stock.put(file, (await stock.kept(file, rest)) ?? (await stock.fetched(file)));
        }
        have += 1;
        if (!fault) told({ kind: 'coming', have, of });
      } catch (error) {
        fault ??= error instanceof NotTheFile ? error : new NotTheFile(file.url, 'unreachable');
      }
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  told(fault ? { kind: 'failed', have, of, file: fault.file, why: fault.why } : { kind: 'whole', have, of });
  return fault;
}

export function createCopy(files: readonly BuildFile[], ground: Ground): Copy {
  const stock = createStock(files, ground);
  const byUrl = new Map(files.map((file) => [file.url, file]));
  const found = async (file: BuildFile): Promise<Response> => {
    const here = await stock.kept(file, [await stock.own]);
    if (here) return here;
    const whole = (await stock.kept(file, await others(stock))) ?? (await stock.fetched(file));
    // Where there is no room to keep it, it is shown all the same.
    return stock.put(file, whole.clone()).catch(() => whole);
  };
  return {
    async fill(told) {
      const fault = await seeToAll(files, stock, told);
      if (fault) throw fault;
    },
    async mend(told) {
      let last: Stage = { kind: 'coming', have: 0, of: files.length };
      await seeToAll(files, stock, (stage) => {
        last = stage;
      });
      told(last);
      return last;
    },
    find(path) {
      const file = byUrl.get(path === '' ? 'index.html' : path);
      return file && found(file);
    },
    async findOld(path) {
      for (const name of await others(stock)) {
        const response = await stock.match(name, path);
        if (response) return response;
      }
      return undefined;
    },
    async isPage(response) {
      const page = byUrl.get('index.html');
      return page !== undefined && (await verified(page, response.clone()).then(Boolean, () => false));
    },
    async dropOld(entries, which) {
      if (!entries) return;
      const [all, own] = [await stock.names(), await stock.own];
      const out = which === 'all' ? all.filter((name) => name !== own) : all.slice(0, Math.max(0, all.indexOf(own)));
      for (const name of out) {
        const runs = await Promise.all(entries.map(async (one) => !byUrl.has(one) && (await stock.match(name, one))));
        if (!runs.some(Boolean)) await stock.drop(name);
      }
    },
  };
}
