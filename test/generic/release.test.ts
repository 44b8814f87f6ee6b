import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import news from '../../src/app/shell/words/en/news';

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly version: string };

it('the version has its news in the app and its part of the changelog', () => {
  expect(Object.keys(news.versions), 'say in src/app/shell/words/en/news.ts what this version brought').toContain(
    version,
  );
  expect(readFileSync('CHANGELOG.md', 'utf8'), 'move what stands under Unreleased under this version').toContain(
    `\n## ${version}, `,
  );
});
