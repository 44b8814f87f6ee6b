import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { headersOf } from '../../build/headers.js';
import { outDir } from '../../build/chosen';

/** What a host may answer with in place of a file: a page (of a sign-in, of its own for what is missing), the file cut short, as another type, nothing found, nothing at all. */
export const FAULTS = ['page', 'cut', 'type', 'missing', 'dead'] as const;
export type HostFault = (typeof FAULTS)[number];

export interface Host {
  readonly folder: string;
  readonly url: string;
  /** By path below the folder. */
  readonly faults: Map<string, HostFault>;
  /** Answers of these files wait until the promise is kept. */
  readonly held: Map<string, Promise<void>>;
  /** Answers nothing at all, as without a signal. */
  dark: boolean;
  close(): void;
}

const SIGN_IN = '<!doctype html><html><head><title>Sign in</title></head><body><h1>Sign in</h1></body></html>';

/** A host of a copy of the build that can be made to fail file by file. */
export async function openHost(): Promise<Host> {
  const folder = mkdtempSync(join(tmpdir(), 'trammel-'));
  cpSync(outDir, folder, { recursive: true });
  const faults: Host['faults'] = new Map();
  const held: Host['held'] = new Map();
  const host = { dark: false };
  const server = createServer((request, response) => {
    const path =
      decodeURI(new URL(request.url ?? '/', 'http://localhost').pathname).replace(/^\/bench\//, '') || 'index.html';
    const file = join(folder, path);
    const fault = faults.get(path);
    const answer = (): void => {
      if (fault === 'dead' || host.dark) response.destroy();
      else if (fault === 'page') response.writeHead(200, { 'content-type': 'text/html; charset=utf-8' }).end(SIGN_IN);
      else if (fault === 'missing' || !existsSync(file) || !statSync(file).isFile())
        response.writeHead(404).end('not here');
      else {
        const bytes = readFileSync(file);
        const type = fault === 'type' ? { 'Content-Type': 'text/html; charset=utf-8' } : {};
        response.writeHead(200, { ...headersOf(path), ...type });
        response.end(fault === 'cut' ? bytes.subarray(0, bytes.length / 2) : bytes);
      }
    };
    void (held.get(path) ?? Promise.resolve()).then(answer);
  });
  await new Promise<void>((resolve) => server.listen(0, 'localhost', resolve));
  const { port } = server.address() as AddressInfo;
  return Object.assign(host, {
    folder,
    url: `http://localhost:${port}/bench/`,
    faults,
    held,
    close() {
      server.closeAllConnections();
      server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  });
}

interface Listed {
  readonly url: string;
  readonly hash: string;
}

const LIST = /\[\{"hash":.*?\}\]/s;

/** The files that the worker of a build keeps, with their hashes. */
export function listedIn(folder: string): readonly Listed[] {
  const [list] = LIST.exec(readFileSync(join(folder, 'sw.js'), 'utf8')) ?? [];
  if (list === undefined) throw new Error('sw.js has no list of files');
  // Icons and manifest stand in it once more, without a hash.
  return (JSON.parse(list) as Partial<Listed>[]).filter((one): one is Listed => one.hash !== undefined);
}

/** Base64 of the SHA-256, by Node. */
const sha256 = (file: string): string => createHash('sha256').update(readFileSync(file)).digest('base64');

/** The entry script that a page names. */
export const entryOf = (folder: string): string =>
  /<script type="module"[^>]* src="\.\/([^"]+)"/.exec(readFileSync(join(folder, 'index.html'), 'utf8'))![1]!;

/** Puts another release into the folder: the same, with these files under other names everywhere. @returns their new names */
export function putNextRelease(folder: string, renamed: readonly string[]): readonly string[] {
  const names = renamed.map((name) => [name, name.replace(/\.(\w+)$/, '-next.$1')] as const);
  for (const [from, to] of names) renameSync(join(folder, from), join(folder, to));
  const bare = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!/\.(js|html)$/.test(name)) continue;
    const file = join(folder, name);
    const text = names.reduce((all, [from, to]) => all.replaceAll(bare(from), bare(to)), readFileSync(file, 'utf8'));
    writeFileSync(file, text);
  }
  const list = listedIn(folder).map((one) => ({ ...one, hash: sha256(join(folder, one.url)) }));
  const worker = join(folder, 'sw.js');
  writeFileSync(
    worker,
    readFileSync(worker, 'utf8').replace(LIST, () => JSON.stringify(list)),
  );
  return names.map(([, to]) => to);
}

/** Draws by a seed, the same every time; SEED in the environment draws others (mulberry32, public domain). */
export function drawer(salt: number): <T>(from: readonly T[], count: number) => T[] {
  let state = Number(process.env.SEED ?? 1) * 7919 + salt;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return (from, count) => {
    const left = [...from];
    return Array.from(
      { length: Math.min(count, left.length) },
      () => left.splice(Math.floor(next() * left.length), 1)[0]!,
    );
  };
}
