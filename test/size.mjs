// What the built page weighs, gzip: all that index.html loads before any screen (itself, its styles, its entry, and whatever
// these import without being asked, followed to the end), its type, which no screen waits for, and all that the service worker keeps for offline.
// `node test/size.mjs [folder of the build] [--write]`; limits in kB of 1000 bytes; --write puts the figures in DEVELOPERS.md.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseSync } from 'vite';
import { table, writeMeasured } from './bench/measured.mjs';

// Wanted: 640 with the type. 665 since ticks by ear, ripples and a square in photos came in (22 kB): nearly all of the rest is words.
const LIMITS = { first: 45, type: 40, precached: 665, app: 634 };
const WRITE = process.argv.includes('--write');
const BUILD = process.argv.slice(2).find((one) => !one.startsWith('--')) ?? 'dist';

const read = (file) => readFileSync(join(BUILD, file));
const weight = (files) => files.reduce((sum, file) => sum + gzipSync(read(file), { level: 9 }).length, 0);

/** Files that a file cannot do without: what it imports at once, or what its styles draw in. */
function needs(file) {
  const text = read(file).toString();
  const near = (address) => join(dirname(file), address);
  if (file.endsWith('.css')) return [...text.matchAll(/@import\s*(?:url\()?["']?([^"')\s;]+)/g)].map((m) => near(m[1]));
  if (!file.endsWith('.js')) return [];
  const { module, errors } = parseSync(file, text);
  if (errors.length > 0) throw new Error(`${file} cannot be read: ${errors[0].message}`);
  const asked = [
    ...module.staticImports.map((one) => one.moduleRequest.value),
    ...module.staticExports.flatMap((one) => one.entries.flatMap((entry) => entry.moduleRequest?.value ?? [])),
  ];
  return asked.filter((address) => address.startsWith('.')).map(near);
}

/** The files, and all that they need, once each. */
function closure(files) {
  const found = new Set();
  const walk = (file) => {
    if (found.has(file)) return;
    found.add(file);
    needs(file).forEach(walk);
  };
  files.forEach(walk);
  return [...found];
}

/** What the page itself names: scripts, styles and whatever it says to load beforehand. */
function namedByPage() {
  const page = read('index.html').toString();
  const tags = [...page.matchAll(/<(script|link)\b[^>]*>/g)].map(([tag, name]) => {
    const get = (attribute) => new RegExp(`\\b${attribute}="([^"]*)"`).exec(tag)?.[1];
    const loads = name === 'script' || /stylesheet|preload/.test(get('rel') ?? '');
    return loads ? (get('src') ?? get('href')) : undefined;
  });
  const files = tags.filter((file) => file !== undefined);
  if (!files.some((file) => file.endsWith('.js'))) throw new Error('index.html names no script');
  return files.map((file) => join(file));
}

function precached() {
  const listed = read('sw.js')
    .toString()
    .matchAll(/"?url"?:\s*["'`]([^"'`]+)["'`]/g);
  const files = [...listed].map((match) => match[1]);
  if (!files.includes('index.html')) throw new Error('sw.js does not list index.html');
  return [...new Set(files)];
}

let beyond = 0;
const rows = [];
function line(what, files, limit) {
  const kilobytes = weight(files) / 1000;
  const holds = kilobytes <= limit;
  rows.push([what, `${kilobytes.toFixed(1)} kB`, `${limit} kB`]);
  if (!holds) beyond += 1;
  process.stdout.write(
    `${what}: ${kilobytes.toFixed(1)} kB of ${limit} kB in ${files.length} files${holds ? '' : ': TOO MUCH'}\n`,
  );
  return holds;
}

const named = namedByPage();
const isType = (file) => file.endsWith('.woff2');
const first = closure(['index.html', ...named.filter((file) => !isType(file))]);
if (!line('Before the first screen', first, LIMITS.first)) {
  const largest = first.map((file) => [weight([file]), file]).sort(([a], [b]) => b - a);
  for (const [bytes, file] of largest) process.stdout.write(`  ${String(bytes).padStart(7)}  ${file}\n`);
  process.stdout.write('Load what the first screen does without by `import()`.\n');
}
line('Type, asked for beside it', named.filter(isType), LIMITS.type);
line('Kept for offline', precached(), LIMITS.precached);
line(
  'Of it all but the type',
  precached().filter((file) => !isType(file)),
  LIMITS.app,
);
if (WRITE) await writeMeasured('size', 'node test/size.mjs --write', table(['what', 'gzip', 'limit'], rows));
process.exitCode = beyond === 0 ? 0 : 1;
