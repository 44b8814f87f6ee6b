import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

const SYSTEM = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

export function attempt(command: string, args: readonly string[]): boolean {
  try {
    execFileSync(command, args, { stdio: 'inherit' });
    return true;
  } catch {
    return false;
  }
}

/** Where a browser that is not there can be installed as a package. */
export const rootOnDebian = (): boolean => process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');

/**
 * A Chromium to drive: the system's; else the one the driver has or downloads; else, as root on Debian, the package.
 * @throws when none can be had, with what to do
 */
export function findBrowser(): { executablePath?: string } {
  const found = SYSTEM.find((path) => existsSync(path));
  if (found !== undefined) return { executablePath: found };
  if (existsSync(chromium.executablePath()) || attempt('npx', ['--no-install', 'playwright', 'install', 'chromium']))
    return {};
  if (rootOnDebian()) {
    attempt('apt-get', ['update']);
    attempt('apt-get', ['install', '-y', '--no-install-recommends', 'chromium']);
    if (existsSync('/usr/bin/chromium')) return { executablePath: '/usr/bin/chromium' };
  }
  throw new Error(
    'No Chromium found and none could be installed. Install Chromium or Chrome, then run the tests again.',
  );
}
