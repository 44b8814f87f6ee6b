import { existsSync } from 'node:fs';
import { attempt, rootOnDebian } from '../find-browser';
import type { Driver } from './driver';
import { openFirefox } from './firefox';
import { openWebKit } from './webkit';

/** A browser that runs, for a test to drive. */
export interface Opened {
  readonly driver: Driver;
  readonly version: string;
  readonly end: () => void;
}

export const ENGINES = ['Firefox', 'WebKit'] as const;
export type Engine = (typeof ENGINES)[number];

const firstOf = (paths: readonly string[]): string | undefined => paths.find((path) => existsSync(path));

type Open = (port: number) => Promise<Opened>;

function firefox(): Open | undefined {
  const program = firstOf(['/usr/bin/firefox-esr', '/usr/bin/firefox']);
  return program === undefined ? undefined : (port) => openFirefox(program, port);
}

const LIBRARIES = ['/usr/lib/x86_64-linux-gnu', '/usr/lib/aarch64-linux-gnu', '/usr/libexec'];
const SMALL_BROWSERS = LIBRARIES.flatMap((folder) =>
  ['6.0', '4.1', '4.0'].map((version) => `${folder}/webkit2gtk-${version}/MiniBrowser`),
);

function webkit(): Open | undefined {
  const [driver, browser, screen] = [
    firstOf(['/usr/bin/WebKitWebDriver']),
    firstOf(SMALL_BROWSERS),
    firstOf(['/usr/bin/Xvfb']),
  ];
  if (driver === undefined || browser === undefined || screen === undefined) return undefined;
  return (port) => openWebKit(driver, browser, screen, port);
}

const KNOWN: Readonly<Record<Engine, { readonly find: () => Open | undefined; readonly packages: readonly string[] }>> =
  {
    Firefox: { find: firefox, packages: ['firefox-esr'] },
    WebKit: { find: webkit, packages: ['webkit2gtk-driver', 'xvfb'] },
  };

/** How to open an engine: the system's, else, as root on Debian, its package; undefined where it cannot be had. */
export function findEngine(engine: Engine): Open | undefined {
  const { find, packages } = KNOWN[engine];
  const found = find();
  if (found || !rootOnDebian()) return found;
  attempt('apt-get', ['update']);
  attempt('apt-get', ['install', '-y', '--no-install-recommends', ...packages]);
  return find();
}
