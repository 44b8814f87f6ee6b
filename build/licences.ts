import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** Where the notices stand in the build. */
export const LICENCES = 'licences.txt';

const PACKAGE = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/;
/** Code that the build tools themselves put in names no folder. */
const TOOLS = /^\0(vite|rolldown)\//;

interface Notice {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

/** The part of a text under a heading about the licence, up to the next heading. */
const underHeading = (text: string): string =>
  /^#+\s*licen[cs]e\s*\n([\s\S]*?)(?=^#|$(?![\s\S]))/im.exec(text)?.[1] ?? '';

/** A tool's file goes on with what it bundles for itself, which is not in the page. */
const ownPart = (text: string): string => text.split(/^# Licenses of bundled dependencies/m)[0] ?? text;

/**
 * What a package says of its licence, from its folder.
 * @throws Error where it says nothing
 */
function noticeOf(folder: string): Notice {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    readonly name: string;
    readonly version: string;
    readonly license?: string;
  };
  const files = readdirSync(folder);
  const read = (file: string): string => readFileSync(join(folder, file), 'utf8');
  const own = files
    .filter((file) => /^(licen[cs]e|copying|notice)/i.test(file))
    .map((file) => ownPart(read(file)).trim());
  const readme = files.filter((file) => /^readme/i.test(file)).map((file) => underHeading(read(file)).trim());
  const text = (own.length > 0 ? own : readme).filter((part) => part !== '').join('\n\n');
  if (license === undefined || text === '')
    throw new Error(`${name} says nothing of its licence: it cannot be bundled`);
  return { name, version, licence: license, text };
}

const print = ({ name, version, licence, text }: Notice): string => `${name} ${version} (${licence})\n\n${text}\n`;

function folderOf(module: string): string | undefined {
  const [, tool] = TOOLS.exec(module) ?? [];
  return tool === undefined ? PACKAGE.exec(module)?.[1] : join('node_modules', tool);
}

/** What src/ui/faces is cut out of. */
const FACES = ['@fontsource/besley', '@fontsource/barlow-semi-condensed'].map((name) => join('node_modules', name));

/** Folders of the packages that any bundle of the build holds: the page's and its workers'. */
const bundled = new Set<string>();

/** Notes the packages of a bundle; the page's, which comes last, writes the file with the notices of all. */
export const licences = (writes: 'page' | 'worker'): Plugin => ({
  name: `licences-of-the-${writes}`,
  apply: 'build',
  generateBundle(_, bundle) {
    for (const output of Object.values(bundle)) {
      if (output.type !== 'chunk') {
        if (output.fileName.endsWith('.woff2')) FACES.forEach((folder) => bundled.add(folder));
        continue;
      }
      for (const module of output.moduleIds) {
        const folder = folderOf(module);
        if (folder !== undefined) bundled.add(folder);
      }
    }
    if (writes === 'worker') return;
    const notices = [...bundled].map(noticeOf).sort((a, b) => (a.name < b.name ? -1 : 1));
    const ours = readFileSync('LICENSE', 'utf8').trim();
    const source = [`Trammel\n\n${ours}\n`, ...notices.map(print)].join(`\n${'-'.repeat(60)}\n\n`);
    this.emitFile({ type: 'asset', fileName: LICENCES, source });
  },
});
