import fc from 'fast-check';
import { expect, it } from 'vitest';
import { writeFile } from '../../src/machine/exchange';
import { canonical } from '../../src/machine/canonical';
import type { Choice } from '../../src/machine/exchange-merge';
import { outcome } from '../../src/machine/exchange-plan';
import { readFile } from '../../src/machine/exchange-read';
import { gather, planFor, takeIn } from '../../src/machine/exchange-store';
import { demoMachine, demoReadings } from '../support/demo';
import { keyOf } from '../../src/machine/keys';
import { restore } from '../../src/machine/schema';
import type { Store } from '../../src/machine/store';
import { times } from '../support/sweep';
import { household, MADE, memoryStore, must, samples } from '../support/exchange-samples';

const FILES = times(5000, 30);
const SEED = 20261125;

/** Put into a file as JSON text, in place of a value. */
const NASTY = [
  ...[
    'null',
    'true',
    '[]',
    '{}',
    '""',
    '0',
    '-0',
    '1e999',
    '-1e999',
    '1e308',
    '5e-324',
    '123456789012345678901234567890',
  ],
  ...[
    '"__proto__"',
    '"constructor"',
    '"toString"',
    '"../../etc"',
    '"a:b"',
    '"\\ud800"',
    '"\\u0000"',
    '"9999-12-31T23:59:59.999Z"',
  ],
  ...['"<script>document.title=1</script>"', '"\\"><img src=x onerror=alert(1)>"', '"=1+1"', '"javascript:alert(1)"'],
  '{"__proto__":{"value":1,"polluted":true}}',
  '{"constructor":{"prototype":{"polluted":true}}}',
  '{"toString":"x","hasOwnProperty":1,"then":1,"length":1e9}',
  `"${'x'.repeat(5000)}"`,
  `${'['.repeat(2000)}${']'.repeat(2000)}`,
  `${'{"a":'.repeat(2000)}1${'}'.repeat(2000)}`,
];

const nasty = fc.oneof(
  fc.constantFrom(...NASTY),
  fc.anything({ withNullPrototype: true }).map((value) => JSON.stringify([value]).slice(1, -1)),
);

type Json = null | boolean | number | string | Json[] | { [name: string]: Json };
const MARK = '\u0007put here\u0007';

const DEEP = 6;

const pathsOf = (value: Json, deep = 0): (string | number)[][] =>
  typeof value !== 'object' || value === null || deep === DEEP
    ? []
    : Object.keys(value).flatMap((name) => {
        const at = Array.isArray(value) ? Number(name) : name;
        return [[at], ...pathsOf(Reflect.get(value, at) as Json, deep + 1).map((rest) => [at, ...rest])];
      });

/** A file with the value at one of its places replaced by this JSON text, or that place said twice or renamed. */
function damaged(text: string, pick: number, how: 'value' | 'name' | 'drop' | 'double', json: string): string {
  const root = JSON.parse(text) as Json;
  const paths = pathsOf(root);
  const path = paths[pick % paths.length]!;
  const holder = path.slice(0, -1).reduce<Json>((at, name) => Reflect.get(at as object, name) as Json, root) as object;
  const last = path.at(-1)!;
  const old = Reflect.get(holder, last) as Json;
  if (how === 'drop') Reflect.deleteProperty(holder, last);
  else if (Array.isArray(holder) && how === 'double') holder.push(old, old, { ...(old as object), v: 1 });
  else if (how === 'name' && !Array.isArray(holder)) {
    Reflect.deleteProperty(holder, last);
    Object.defineProperty(holder, json.slice(0, 40).replaceAll('"', ''), {
      value: old,
      enumerable: true,
      configurable: true,
    });
  } else Reflect.set(holder, last, MARK);
  return JSON.stringify(root).replace(JSON.stringify(MARK), () => json);
}

/** Made once: to make records anew for each of the files takes minutes. */
const sound = fc.constantFrom(
  writeFile(samples, MADE),
  ...fc.sample(household(true), { numRuns: times(60, 10), seed: SEED }).map((records) => writeFile(records, MADE)),
  // What is stored, later and in other words: changes that a plan may make.
  ...['2026-01-01T00:00:00.000Z', '2026-12-01T00:00:00.000Z'].flatMap((changed) =>
    Array.from({ length: 20 }, (_, i) =>
      writeFile([{ ...demoMachine, changed, name: '<script>alert(1)</script>', note: `${i}` }, ...demoReadings], MADE),
    ),
  ),
);

const replaced = fc
  .tuple(sound, fc.nat(), fc.constantFrom('value' as const, 'name' as const, 'drop' as const, 'double' as const), nasty)
  .map(([text, pick, how, json]) => damaged(text, pick, how, json));

const hostile = fc.oneof(
  { weight: 6, arbitrary: replaced },
  {
    weight: 2,
    arbitrary: fc.tuple(replaced, fc.nat(), nasty).map(([text, pick, json]) => {
      try {
        return damaged(text, pick, 'value', json);
      } catch {
        return text;
      }
    }),
  },
  // Cut short; bytes changed; a piece put in.
  { weight: 2, arbitrary: fc.tuple(sound, fc.nat()).map(([text, at]) => text.slice(0, at % (text.length + 1))) },
  {
    weight: 2,
    arbitrary: fc.tuple(sound, fc.nat(), fc.string({ maxLength: 4 })).map(([text, at, bytes]) => {
      const cut = at % (text.length + 1);
      return text.slice(0, cut) + bytes + text.slice(cut + bytes.length);
    }),
  },
  { weight: 1, arbitrary: fc.tuple(sound, sound).map(([one, two]) => one + two) },
  {
    weight: 1,
    arbitrary: fc
      .array(nasty, { maxLength: 6 })
      .map(
        (list) =>
          `{"format":"trammel","v":1,"made":"${MADE}","machines":[${list.join()}],"readings":[${list.join()}],"settings":${list[0] ?? '0'}}`,
      ),
  },
  { weight: 1, arbitrary: fc.oneof(fc.string(), fc.json(), nasty) },
);

const dump = async (store: Store): Promise<ReadonlyMap<string, string>> =>
  new Map(must(await gather(store, 'everything')).records.map((one) => [keyOf(one), canonical(one)]));

const prototypes = () =>
  [Object.prototype, Array.prototype, Function.prototype].map((one) => Reflect.ownKeys(one).length);

it(`${FILES} hostile files are refused in a sentence or taken in cleanly; nothing stored changes but by the plan`, async () => {
  const started = prototypes();
  const ended = { refused: 0, 'taken in': 0, 'with refusals': 0, changing: 0 };
  await fc.assert(
    fc.asyncProperty(hostile, fc.constantFrom<Choice>('newest', 'here', 'file'), async (text, choice) => {
      const read = readFile(text);
      if (!read.ok) {
        ended.refused += 1;
        expect(read.reason).toMatch(/^This [^\n]*\.$/);
        expect(read.reason.length).toBeLessThan(300);
        return;
      }
      const store = await memoryStore();
      must(await store.save(...samples));
      const before = await dump(store);
      const plan = must(await planFor(store, read));
      for (const { what, reason } of plan.refused) {
        expect(reason).toMatch(/^[A-Z].*\.$/);
        expect(what.length + reason.length).toBeLessThan(400);
      }
      const writes = outcome(plan, () => choice);
      const planned = new Map(writes.map((one) => [keyOf(one) as string, canonical(one)]));
      expect(planned.size).toBe(writes.length);
      for (const one of writes) expect(restore(one)).toEqual({ ok: true, record: one });
      const shown = new Map(plan.groups.flatMap(({ items }) => items.map((item) => [item.key as string, item.state])));
      for (const key of planned.keys()) expect(shown.get(key)).not.toBe(before.has(key) ? 'added' : 'same');

      const done = must(await takeIn(store, read, plan, () => choice));
      expect(done).toEqual({ kind: 'written', records: writes.length });
      expect(await dump(store)).toEqual(new Map([...before, ...planned]));
      expect(outcome(must(await planFor(store, read)), () => choice)).toEqual([]);
      ended['taken in'] += 1;
      if (plan.refused.length > 0) ended['with refusals'] += 1;
      if ([...planned.keys()].some((key) => before.has(key))) ended.changing += 1;
    }),
    { numRuns: FILES, seed: SEED, endOnFailure: true },
  );
  expect(prototypes()).toEqual(started);
  expect(Reflect.get({}, 'polluted')).toBeUndefined();
  // Each way out was taken often enough to count.
  for (const count of Object.values(ended)) expect(count).toBeGreaterThan(FILES / 50);
});
