import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { caching, everywhere } from '../../build/headers.js';

const readme = readFileSync('README.md', 'utf8');

test('the README gives whoever hosts it the headers that the tests are served with', () => {
  for (const [name, value] of Object.entries(everywhere)) expect(readme).toContain(`    ${name}: ${value}`);
  for (const file of ['assets/any-1a2b3c4d.js', 'sw.js'])
    expect(readme).toContain(`    Cache-Control: ${caching(file)}`);
});

test('what changes under its own name is asked for anew, what is named by its content is not', () => {
  // RFC 9111, 5.2.2.4; RFC 8246.
  for (const file of ['index.html', 'sw.js', 'manifest.webmanifest', 'robots.txt', 'licences.txt', 'icon.svg']) {
    expect(caching(file)).toBe('no-cache');
  }
  expect(caching('assets/index-1a2b3c4d.js')).toContain('immutable');
});

test('robots.txt is one by RFC 9309: groups of user-agent lines and rules, nothing else', () => {
  const lines = readFileSync('public/robots.txt', 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '');
  expect(lines[0]).toMatch(/^user-agent:\s*(\*|[A-Za-z_-]+)$/i);
  for (const line of lines) expect(line).toMatch(/^(user-agent:\s*(\*|[A-Za-z_-]+)|(dis)?allow:\s*(\/\S*)?)$/i);
});
