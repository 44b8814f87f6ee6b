import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { build, type Rolldown } from 'vite';
import solid from 'vite-plugin-solid';
import { LICENCES, licences } from '../../build/licences';

test('every package whose code is in the build is named with its version and its licence', async () => {
  const built = (await build({
    configFile: false,
    logLevel: 'error',
    base: './',
    define: { __TRAMMEL_VERSION__: '"test"' },
    plugins: [solid(), licences('page')],
    worker: { plugins: () => [licences('worker')] },
    build: { write: false, sourcemap: true, target: 'es2022' },
  })) as Rolldown.RolldownOutput;
  const texts = new Map(
    built.output.map((one) => [one.fileName, one.type === 'asset' ? String(one.source) : JSON.stringify(one.map)]),
  );
  const notices = texts.get(LICENCES) ?? '';
  // By other means than the plugin: the source maps name the files that the code came from (ECMA-426).
  const maps = [...texts]
    .filter(([name]) => !name.endsWith('.txt'))
    .map(([, text]) => text)
    .join('\n');
  const packages = new Set([...maps.matchAll(/node_modules\/((?:@[^/"\\]+\/)?[^/"\\]+)\//g)].map(([, name]) => name!));
  expect([...packages]).toEqual(expect.arrayContaining(['solid-js', 'valibot', 'idb-keyval', 'fft.js']));
  for (const name of packages) {
    const { version } = JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8')) as { version: string };
    expect(notices, name).toContain(`\n${name} ${version} (`);
    const file = ['LICENSE', 'LICENCE', 'LICENSE.md', 'LICENSE.txt'].find((one) =>
      existsSync(`node_modules/${name}/${one}`),
    );
    const text = readFileSync(`node_modules/${name}/${file ?? 'README.md'}`, 'utf8');
    const copyright = /^.*copyright \(?c?\)?.*\d{4}.*$|^copyright .*$/im.exec(text)?.[0].trim();
    if (copyright !== undefined) expect(notices, name).toContain(copyright);
  }
});
