import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parseSync } from 'vite';

/*
 * Whatever is fetched when it is asked for goes through one door, which knows how to ask again: a failed part is a sentence
 * with a key, never a blank page.
 */

const DOORS = ['fetchPart', 'part', 'screen'];
/** The engine fetches by the folders of the checks, and knows no door: whoever calls it from a room stands at one. */
const LOADERS = ['loadCalculator', 'machinePlaces'];

interface Node {
  readonly type: string;
  readonly [name: string]: unknown;
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;
const nameOf = (node: unknown): unknown => (isNode(node) && node.type === 'Identifier' ? node.name : undefined);

/** Lines of code that fetch a part outside of any door. */
function outsideDoors(value: unknown, inside: boolean, found: string[], source: string): void {
  if (Array.isArray(value)) for (const one of value) outsideDoors(one, inside, found, source);
  if (!isNode(value)) return;
  const called = value.type === 'CallExpression' ? nameOf(value.callee) : undefined;
  const fetches = value.type === 'ImportExpression' || (typeof called === 'string' && LOADERS.includes(called));
  if (fetches && !inside) found.push(source.slice(Number(value.start), Number(value.end)));
  const within = inside || (typeof called === 'string' && DOORS.includes(called));
  for (const part of Object.values(value)) outsideDoors(part, within, found, source);
}

const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter(
  (file) =>
    /\.tsx?$/.test(file) && !/\.d\.ts$|\.test\.ts$|^engine\/(list|places)\.ts$/.test(file.replaceAll('\\', '/')),
);

test.each(files.filter((file) => /\bimport\(|loadCalculator|machinePlaces/.test(readFileSync(`src/${file}`, 'utf8'))))(
  '%s fetches nothing outside of the door',
  (file) => {
    const source = readFileSync(`src/${file}`, 'utf8');
    const { program, errors } = parseSync(file, source);
    expect(errors).toEqual([]);
    const found: string[] = [];
    outsideDoors(program.body, false, found, source);
    expect(found, 'fetchPart(() => import(…)), or part() for a component').toEqual([]);
  },
);

test('no component is fetched by the framework itself, which keeps a failure for ever', () => {
  const users = files.filter((file) => /\blazy\b[^;]*from 'solid-js'/.test(readFileSync(`src/${file}`, 'utf8')));
  expect(users).toEqual([]);
});
