// Gets Debian's freepats package by name, unpacks it into a temporary folder and prints the folder with its patches; says
// why on stderr and ends with 1 where it cannot. The samples stay out of the repository (their licence is their own).
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PATCHES = 'usr/share/midi/freepats/Tone_000';
const LIMIT_MS = 40_000;

function fetched() {
  if (existsSync(`/${PATCHES}`)) return `/${PATCHES}`;
  const kept = join(tmpdir(), 'trammel-freepats');
  if (existsSync(join(kept, PATCHES))) return join(kept, PATCHES);
  const folder = mkdtempSync(join(tmpdir(), 'trammel-freepats-'));
  try {
    const got = spawnSync('apt-get', ['download', 'freepats'], { cwd: folder, timeout: LIMIT_MS });
    if (got.error) throw new Error(`apt-get did not run: ${got.error.message}`);
    const file = readdirSync(folder).find((name) => name.endsWith('.deb'));
    if (!file)
      throw new Error(`apt-get download freepats got nothing: ${got.stderr.toString().trim().split('\n').at(-1)}`);
    mkdirSync(kept, { recursive: true });
    const unpacked = spawnSync('dpkg-deb', ['-x', join(folder, file), kept]);
    if (unpacked.status !== 0) throw new Error('dpkg-deb could not unpack the package');
    return join(kept, PATCHES);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

try {
  process.stdout.write(fetched());
} catch (failure) {
  process.stderr.write(failure.message);
  process.exitCode = 1;
}
