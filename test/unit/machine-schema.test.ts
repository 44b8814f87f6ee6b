import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoMachine, demoReadings } from '../support/demo';
import { keyOf } from '../../src/machine/keys';
import { restoreAt } from '../../src/machine/restore-at';
import { blankMachine, edited, newId } from '../../src/machine/edit';
import { LIMITS } from '../../src/machine/limits';
import { migrate, restore, type Migration } from '../../src/machine/schema';
import { defaultSettings, VERSION } from '../../src/machine/version';
import { record } from '../support/machine-records';
import { times } from '../support/sweep';

const reasonOf = (stored: unknown): string => {
  const restored = restore(stored);
  return restored.ok ? 'read' : restored.reason;
};

/** What every record let through must be: plain data with finite numbers, whatever came in. */
function expectSound(value: unknown): void {
  if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
  if (typeof value !== 'object' || value === null) return;
  expect([Object.prototype, Array.prototype]).toContain(Object.getPrototypeOf(value));
  for (const key of Reflect.ownKeys(value)) {
    expect(key in Object.prototype && !Array.isArray(value), String(key)).toBe(false);
    expectSound(Reflect.get(value, key));
  }
}

/** The door never throws, and what it lets through goes through again unchanged. */
function expectDoorHolds(stored: unknown): void {
  const restored = restore(stored);
  if (restored.ok) {
    expectSound(restored.record);
    expect(restore(restored.record)).toEqual(restored);
    expect(keyOf(restored.record)).toMatch(/^(machine:|reading:|photo:|draft:|typed:|case:|settings$)/);
  } else {
    expect(restored.reason).toMatch(/^[A-Z].*\.$/s);
    expect(restored.reason.length).toBeLessThan(400);
  }
}

describe('round trips', () => {
  it('gives every record back as it was, through copying and through JSON', () => {
    fc.assert(
      fc.property(record, (written) => {
        expect(restore(written)).toEqual({ ok: true, record: written });
        expect(restore(structuredClone(written))).toEqual({ ok: true, record: written });
        const through: unknown = JSON.parse(JSON.stringify(written));
        // JSON writes -0 as 0.
        expect(restore(through)).toEqual({ ok: true, record: through });
      }),
    );
  });

  it('gives different keys to different records and refuses a record in the wrong place', () => {
    fc.assert(
      fc.property(record, record, (a, b) => {
        expect(restoreAt(keyOf(a), a).ok).toBe(true);
        if (keyOf(a) !== keyOf(b)) expect(restoreAt(keyOf(a), b).ok).toBe(false);
      }),
    );
  });
});

describe('every version', () => {
  // One record of each kind as each version wrote it, frozen here. A new version adds a row; none is ever removed.
  const written: Readonly<Record<number, readonly string[]>> = {
    1: [
      `{"v":1,"type":"machine","id":"m1","name":"By the door","note":"","demo":false,"created":"2026-01-02T03:04:05.678Z",
        "changed":"2026-01-02T03:04:05.678Z","values":{"z.lead":{"value":0.008,"half":0,"unit":"mm","origin":"nameplate",
        "tool":"as-marked","at":"2026-01-02T03:04:05.678Z"}},"choices":{"z.drive":"belt"}}`,
      `{"v":1,"type":"reading","id":"r1","machine":"m1","calculator":"dual-z-sync","at":"2026-01-02T03:04:05.678Z",
        "entries":{"dh":{"value":0.00075,"half":3e-5,"unit":"mm","origin":"measured","tool":"caliper"}},
        "choices":{"drive":"belt"},"results":{"n":{"value":1.875,"low":1.79,"high":1.96,"unit":"one","text":"1.875"}},
        "verdict":"too close","headline":"Measure again.","steps":["So."],"note":""}`,
      `{"v":1,"type":"draft","machine":null,"calculator":"dual-z-sync","entries":{"dh":{"text":"0,7","unit":"mm",
        "tool":""}},"choices":{},"changed":"2026-01-02T03:04:05.678Z"}`,
      `{"v":1,"type":"settings","mark":"comma","theme":"contrast","lengthUnit":"in","forceUnit":"lbf",
        "temperatureUnit":"F","machine":"m1","seenVersion":"0.1.0"}`,
    ],
    2: [
      `{"v":2,"type":"machine","id":"m1","name":"By the door","note":"","demo":false,"created":"2026-01-02T03:04:05.678Z",
        "changed":"2026-01-02T03:04:05.678Z","values":{"z.lead":{"value":0.008,"half":0,"unit":"mm","origin":"nameplate",
        "tool":"as-marked","at":"2026-01-02T03:04:05.678Z"}},"choices":{"z.drive":"belt"}}`,
      `{"v":2,"type":"reading","id":"r1","machine":"m1","calculator":"dual-z-sync","at":"2026-01-02T03:04:05.678Z",
        "entries":{"dh":{"value":0.00075,"half":3e-5,"unit":"mm","origin":"measured","tool":"caliper"}},
        "choices":{"drive":"belt"},"results":{"n":{"value":1.875,"low":1.79,"high":1.96,"unit":"one","text":"1.875"}},
        "verdict":"too close","headline":"Measure again.","steps":["So."],"note":""}`,
      `{"v":2,"type":"draft","machine":null,"calculator":"dual-z-sync","entries":{"dh":{"text":"0,7","unit":"mm",
        "tool":""}},"choices":{},"changed":"2026-01-02T03:04:05.678Z"}`,
      `{"v":2,"type":"settings","mark":"comma","theme":"contrast","lengthUnit":"in","forceUnit":"lbf",
        "temperatureUnit":"F","machine":"m1","seenVersion":"0.1.0","lastExport":"2026-01-02T03:04:05.678Z",
        "persistAsked":null}`,
    ],
    3: [
      `{"v":3,"type":"machine","id":"m1","name":"By the door","note":"","demo":false,"created":"2026-01-02T03:04:05.678Z",
        "changed":"2026-01-02T03:04:05.678Z","values":{"z.lead":{"value":0.008,"half":0,"unit":"mm","origin":"nameplate",
        "tool":"as-marked","at":"2026-01-02T03:04:05.678Z"}},"choices":{"z.drive":"belt"}}`,
      `{"v":3,"type":"reading","id":"r1","machine":"m1","calculator":"dual-z-sync","at":"2026-01-02T03:04:05.678Z",
        "entries":{"dh":{"value":0.00075,"half":3e-5,"unit":"mm","origin":"measured","tool":"caliper"}},
        "choices":{"drive":"belt"},"results":{"n":{"value":1.875,"low":1.79,"high":1.96,"unit":"one","text":"1.875"}},
        "verdict":"too close","headline":"Measure again.","steps":["So."],"note":""}`,
      `{"v":3,"type":"case","id":"c1","machine":"m1","symptom":"ridges-regular","owner":"Ada of the bakery","complaint":"Lines.",
        "opened":"2026-01-02T03:04:05.678Z","changed":"2026-01-02T03:04:05.678Z","facts":{"two-screws":true},"log":[
        {"kind":"made safe","at":"2026-01-02T03:04:05.678Z","note":""},
        {"kind":"answer","check":"period","answer":"lead","reading":{"at":"2026-01-02T03:04:05.678Z","id":"r1"},
        "at":"2026-01-02T03:04:05.678Z","note":""},{"kind":"skip","check":"listen","at":"2026-01-02T03:04:05.678Z","note":""},
        {"kind":"ruled out","cause":"belt","sure":"fairly","at":"2026-01-02T03:04:05.678Z","note":"new"},
        {"kind":"mended","cause":"bent-screw","cured":true,"at":"2026-01-02T03:04:05.678Z","note":""}],
        "closed":{"at":"2026-01-02T03:04:05.678Z","how":"cured","proof":"A plain wall."}}`,
      `{"v":3,"type":"draft","machine":null,"calculator":"dual-z-sync","entries":{"dh":{"text":"0,7","unit":"mm",
        "tool":""}},"choices":{},"changed":"2026-01-02T03:04:05.678Z"}`,
      `{"v":3,"type":"settings","mark":"comma","theme":"contrast","lengthUnit":"in","forceUnit":"lbf",
        "temperatureUnit":"F","machine":"m1","seenVersion":"0.1.0","lastExport":"2026-01-02T03:04:05.678Z",
        "persistAsked":null}`,
    ],
    4: [
      `{"v":4,"type":"machine","id":"m1","name":"By the door","note":"","demo":false,"created":"2026-01-02T03:04:05.678Z",
        "changed":"2026-01-02T03:04:05.678Z","values":{"z.lead":{"value":0.008,"half":0,"unit":"mm","origin":"nameplate",
        "tool":"as-marked","at":"2026-01-02T03:04:05.678Z"}},"choices":{"z.drive":"belt"}}`,
      `{"v":4,"type":"reading","id":"r1","machine":"m1","calculator":"dual-z-sync","at":"2026-01-02T03:04:05.678Z",
        "entries":{"dh":{"name":"Height difference","value":0.00075,"half":3e-5,"kind":"length","unit":"mm","origin":"measured",
        "tool":"caliper"}},"choices":{"drive":"belt"},"options":{"drive":{"name":"Drive","text":"a belt"}},
        "results":{"n":{"name":"Teeth out","value":1.875,"low":1.79,"high":1.96,"kind":"count","unit":"one","text":"1.875"}},
        "limits":[{"of":"n","name":"Teeth","max":"n_lim","symmetric":true,"verdict":"too close"}],"verdict":"too close",
        "order":{"say":"again","args":{"by":{"si":1,"width":0.1,"kind":"length","unit":"mm"},"sides":["left"],"sure":true},
        "glance":"Again","sentence":"Measure again.","steps":[{"say":"so","args":{},"text":"So."}]},"note":"","whole":true}`,
      `{"v":4,"type":"case","id":"c1","machine":"m1","symptom":"ridges-regular","owner":"Ada of the bakery","complaint":"Lines.",
        "opened":"2026-01-02T03:04:05.678Z","changed":"2026-01-02T03:04:05.678Z","facts":{"two-screws":true},"log":[
        {"kind":"answer","check":"period","answer":"lead","reading":{"at":"2026-01-02T03:04:05.678Z","id":"r1"},
        "at":"2026-01-02T03:04:05.678Z","note":""}],"closed":null}`,
      `{"v":4,"type":"draft","machine":null,"calculator":"dual-z-sync","entries":{"dh":{"text":"0,7","unit":"mm",
        "tool":""}},"choices":{},"changed":"2026-01-02T03:04:05.678Z"}`,
      `{"v":4,"type":"settings","mark":"comma","theme":"contrast","lengthUnit":"in","forceUnit":"lbf",
        "temperatureUnit":"F","machine":"m1","seenVersion":"0.1.0","lastExport":"2026-01-02T03:04:05.678Z",
        "persistAsked":null}`,
    ],
    5: [
      `{"v":5,"type":"machine","id":"m1","name":"By the door","note":"","demo":false,"created":"2026-01-02T03:04:05.678Z",
        "changed":"2026-01-02T03:04:05.678Z","values":{"z.lead":{"value":0.008,"half":0,"unit":"mm","origin":"nameplate",
        "tool":"as-marked","at":"2026-01-02T03:04:05.678Z"}},"choices":{"z.drive":"belt"}}`,
      `{"v":5,"type":"reading","id":"r1","machine":"m1","calculator":"dual-z-sync","at":"2026-01-02T03:04:05.678Z",
        "entries":{"dh":{"name":"Height difference","value":0.00075,"half":3e-5,"kind":"length","unit":"mm","origin":"measured",
        "tool":"caliper"}},"choices":{"drive":"belt"},"options":{"drive":{"name":"Drive","text":"a belt"}},
        "results":{"n":{"name":"Teeth out","value":1.875,"low":1.79,"high":1.96,"kind":"count","unit":"one","text":"1.875"}},
        "limits":[{"of":"n","name":"Teeth","max":"n_lim","symmetric":true,"verdict":"too close"}],"verdict":"too close",
        "order":{"say":"again","args":{"by":{"si":1,"width":0.1,"kind":"length","unit":"mm"},"sides":["left"],"sure":true},
        "glance":"Again","sentence":"Measure again.","steps":[{"say":"so","args":{},"text":"So."}],
        "assumes":[{"symbol":"P_h","amount":{"si":0.008,"width":0,"kind":"length","unit":"mm"}}],
        "expects":{"dh":{"name":"Height difference","value":0,"low":-4e-5,"high":4e-5,"kind":"length","unit":"mm"}}},
        "note":"","whole":true}`,
      `{"v":5,"type":"case","id":"c1","machine":"m1","symptom":"ridges-regular","owner":"Ada of the bakery","complaint":"Lines.",
        "opened":"2026-01-02T03:04:05.678Z","changed":"2026-01-02T03:04:05.678Z","facts":{"two-screws":true},"log":[
        {"kind":"answer","check":"period","answer":"lead","reading":{"at":"2026-01-02T03:04:05.678Z","id":"r1"},
        "at":"2026-01-02T03:04:05.678Z","note":""},{"kind":"mended","cause":"nut-worn","cured":true,"remedy":"replace",
        "at":"2026-01-02T03:04:05.678Z","note":""}],"closed":null}`,
      `{"v":5,"type":"draft","machine":null,"calculator":"dual-z-sync","entries":{"dh":{"text":"0,7","unit":"mm",
        "tool":""}},"choices":{},"changed":"2026-01-02T03:04:05.678Z"}`,
      `{"v":5,"type":"settings","mark":"comma","theme":"contrast","lengthUnit":"in","forceUnit":"lbf",
        "temperatureUnit":"F","machine":"m1","seenVersion":"0.1.0","lastExport":"2026-01-02T03:04:05.678Z",
        "persistAsked":null}`,
    ],
    6: [
      `{"v":6,"type":"machine","id":"m1","name":"By the door","note":"","demo":false,"created":"2026-01-02T03:04:05.678Z",
        "changed":"2026-01-02T03:04:05.678Z","ordinal":7,"values":{"z.lead":{"value":0.008,"half":0,"unit":"mm","origin":"nameplate",
        "tool":"as-marked","at":"2026-01-02T03:04:05.678Z","ordinal":6}},"choices":{"z.drive":"belt"}}`,
      `{"v":6,"type":"reading","id":"r1","machine":"m1","calculator":"two-z-screws","at":"2026-01-02T03:04:05.678Z","ordinal":5,
        "entries":{"dh":{"name":"Height difference","value":0.00075,"half":3e-5,"kind":"length","unit":"mm","origin":"measured",
        "tool":"caliper"}},"choices":{"drive":"belt"},"options":{"drive":{"name":"Drive","text":"a belt"}},
        "results":{"n":{"name":"Teeth out","value":1.875,"low":1.79,"high":1.96,"kind":"count","unit":"one","text":"1.875"}},
        "limits":[{"of":"n","name":"Teeth","max":"n_lim","symmetric":true,"verdict":"too close"}],"verdict":"too close",
        "order":{"say":"again","args":{"by":{"si":1,"width":0.1,"kind":"length","unit":"mm"},"sides":["left"],"sure":true},
        "glance":"Again","sentence":"Measure again.","steps":[{"say":"so","args":{},"text":"So."}],
        "assumes":[{"symbol":"P_h","amount":{"si":0.008,"width":0,"kind":"length","unit":"mm"}}],
        "expects":{"dh":{"name":"Height difference","value":0,"low":-4e-5,"high":4e-5,"kind":"length","unit":"mm"}}},
        "note":"","whole":true}`,
      `{"v":6,"type":"case","id":"c1","machine":"m1","symptom":"ridges-regular","owner":"Ada of the bakery","complaint":"Lines.",
        "opened":"2026-01-02T03:04:05.678Z","changed":"2026-01-02T03:04:05.678Z","ordinal":7,"since":4,"facts":{"two-screws":true},"log":[
        {"kind":"answer","check":"period","answer":"lead","reading":{"at":"2026-01-02T03:04:05.678Z","id":"r1"},
        "at":"2026-01-02T03:04:05.678Z","note":""},{"kind":"mended","cause":"nut-worn","cured":true,"remedy":"replace",
        "at":"2026-01-02T03:04:05.678Z","note":""}],"closed":null}`,
      `{"v":6,"type":"draft","machine":null,"calculator":"two-z-screws","entries":{"dh":{"text":"0,7","unit":"mm",
        "tool":""}},"choices":{},"before":{"entries":{},"choices":{"drive":"belt"}},"kept":null,
        "changed":"2026-01-02T03:04:05.678Z","ordinal":3}`,
      `{"v":6,"type":"typed","machine":"m1","case":"c1","field":"proof","text":"A plain wall.","other":"Two walls.",
        "picture":{"width":4,"height":3,"jpeg":"AAAA"},"changed":"2026-01-02T03:04:05.678Z","ordinal":2}`,
      `{"v":6,"type":"settings","mark":"comma","theme":"contrast","lengthUnit":"in","forceUnit":"lbf",
        "temperatureUnit":"F","machine":"m1","seenVersion":"0.1.0","lastExport":"2026-01-02T03:04:05.678Z",
        "persistAsked":null}`,
    ],
  };

  /** The record with its check under today's name, which it got in version 6. */
  const named = (text: string) => JSON.parse(text.replaceAll('dual-z-sync', 'two-z-screws')) as { type: string };
  /** Of version 6: what an earlier one wrote was not counted. */
  const uncounted = (type: string): object => (type === 'settings' ? {} : { ordinal: 0 });

  /** A record of versions 1 to 3 in today's form: readings kept neither names nor limits, and their order only in words. */
  const today = (stored: { type: string }): object => {
    if (stored.type === 'case') {
      const { log } = stored as typeof stored & { log: { kind: string }[] };
      const known = log.map((entry) => (entry.kind === 'mended' ? { ...entry, remedy: 'mend' } : entry));
      return { ...stored, v: VERSION, ordinal: 0, log: known };
    }
    if (stored.type !== 'reading') return { ...stored, ...uncounted(stored.type), v: VERSION };
    const { headline, steps, entries, results, ...rest } = stored as typeof stored & {
      headline: string;
      steps: string[];
      entries: Record<string, object>;
      results: Record<string, object>;
    };
    const unnamed = (map: Record<string, object>) =>
      Object.fromEntries(Object.entries(map).map(([symbol, one]) => [symbol, { ...one, name: '', kind: '' }]));
    const worded = steps.map((text) => ({ say: '', args: {}, text }));
    return {
      ...{
        ...rest,
        v: VERSION,
        ordinal: 0,
        entries: unnamed(entries),
        results: unnamed(results),
        options: {},
        limits: [],
      },
      order: { say: '', args: {}, glance: '', sentence: headline, steps: worded, assumes: [], expects: {} },
      whole: false,
    };
  };

  it('has its records here', () => {
    expect(Object.keys(written).map(Number)).toEqual(Array.from({ length: VERSION }, (_, i) => i + 1));
  });

  it.each(Object.entries(written))('%s can be read', (_, records) => {
    const kinds = records.map((text) => {
      const restored = restore(JSON.parse(text));
      if (!restored.ok) throw new Error(restored.reason);
      return restored.record.type;
    });
    expect(kinds.filter((kind) => kind !== 'case' && kind !== 'typed')).toEqual([
      'machine',
      'reading',
      'draft',
      'settings',
    ]);
  });

  it.each([
    ['cured', 'mend'],
    ['replaced', 'replace'],
    ['handed over', undefined],
  ] as const)('a case of version 4 that ended %s tells by its cure how it was mended', (how, remedy) => {
    const at = '2026-01-02T03:04:05.678Z';
    const before = { kind: 'mended', cause: 'nut-worn', cured: false, at, note: 'Turn the nut.' };
    const cure = { ...before, cause: 'bent-screw', cured: true, note: 'A new screw.' };
    const stored = JSON.parse(written[4]!.find((text) => text.includes('"case"'))!) as { log: object[] };
    const log = [...stored.log, before, cure];
    const closed = { at, how, proof: 'A plain wall.' };
    const restored = restore({ ...stored, log, closed });
    if (!restored.ok || restored.record.type !== 'case') throw new Error('the case was not read');
    expect(restored.record.log).toEqual([...stored.log, before, remedy === undefined ? cure : { ...cure, remedy }]);
    expect(restored.record.closed).toEqual(closed);
  });

  it('the records of version 1 come back whole, their settings with nothing exported and nothing asked', () => {
    const added: Readonly<Record<string, object>> = { settings: { lastExport: null, persistAsked: null } };
    for (const text of written[1]!) {
      const stored = JSON.parse(text) as { type: string };
      expect(restore(stored)).toEqual({ ok: true, record: { ...today(named(text)), ...added[stored.type] } });
    }
  });

  it.each([2, 3])('the records of version %i come back as they were, readings marked as not whole', (version) => {
    for (const text of written[version]!) {
      const stored = JSON.parse(text) as { type: string };
      expect(restore(stored)).toEqual({ ok: true, record: today(named(text)) });
    }
  });

  it.each([
    ['no headline', { headline: undefined }],
    ['steps that are no list', { steps: 'So.' }],
    ['steps that are no text', { steps: [1] }],
    ['entries that are no map', { entries: [] }],
    ['a result that is none', { results: { n: 1 } }],
  ])('a reading of version 3 with %s is refused, not mended', (_, change) => {
    const reading = written[3]!
      .map((text) => JSON.parse(text) as { type: string })
      .find((one) => one.type === 'reading');
    expect(restore({ ...reading, ...change })).toMatchObject({ ok: false, newer: false });
  });

  it('the records of version 4 come back as they were, their orders with nothing assumed and nothing expected', () => {
    for (const text of written[4]!) {
      const stored = JSON.parse(text) as { type: string; order?: object };
      const order = stored.order ? { order: { ...stored.order, assumes: [], expects: {} } } : {};
      expect(restore(stored)).toEqual({
        ok: true,
        record: { ...named(text), ...order, ...uncounted(stored.type), v: VERSION },
      });
    }
  });

  it('the records of version 5 come back under the names of today, before all that are counted', () => {
    for (const text of written[5]!) {
      const stored = JSON.parse(text) as { type: string };
      expect(restore(stored)).toEqual({ ok: true, record: { ...named(text), ...uncounted(stored.type), v: VERSION } });
    }
  });

  it('the records of today come back as they are', () => {
    for (const text of written[VERSION]!) {
      const stored: unknown = JSON.parse(text);
      expect(restore(stored)).toEqual({ ok: true, record: stored });
    }
  });

  it('a newer one is refused as newer, in a sentence', () => {
    const restored = restore({ ...demoMachine, v: VERSION + 1 });
    expect(restored).toMatchObject({ ok: false, newer: true });
    expect(reasonOf({ ...demoMachine, v: VERSION + 1 })).toContain('written by a newer Trammel');
  });

  it.each([undefined, null, 0, -1, 1.5, NaN, Infinity, '1', {}])('%s is no version', (v) => {
    expect(restore({ ...demoMachine, v })).toMatchObject({ ok: false, newer: false });
  });
});

describe('what version 2 added', () => {
  const photo = { v: 2, type: 'photo', machine: 'm1', reading: 'r1', width: 1280, height: 960, jpeg: '/9j/4AA=' };

  it('a photo stands apart from its reading', () => {
    const restored = restore(photo);
    if (!restored.ok) throw new Error(restored.reason);
    expect(restored.record).toEqual({ ...photo, v: VERSION });
    expect(keyOf(restored.record)).toBe('photo:m1:r1');
  });

  it.each([
    ['too wide', { width: 1281 }],
    ['of no height', { height: 0 }],
    ['not base64', { jpeg: '"><script>' }],
    ['empty', { jpeg: '' }],
    ['too long', { jpeg: 'A'.repeat(LIMITS.photo + 4) }],
    ['of a reading without a sound id', { reading: 'a:b' }],
  ])('a photo %s is refused', (_, part) => {
    expect(restore({ ...photo, ...part })).toMatchObject({ ok: false, newer: false });
  });

  it('days between readings are whole, above zero, and kept by an edit of something else', () => {
    const made = edited(
      blankMachine('Bench', new Date(0), 'bench'),
      { intervals: { 'two-z-screws': 30 } },
      new Date(0),
    );
    expect(restore(made)).toEqual({ ok: true, record: made });
    expect(edited(made, { name: 'Left' }, new Date(0)).intervals).toEqual({ 'two-z-screws': 30 });
    expect(edited(made, { intervals: { 'two-z-screws': undefined } }, new Date(0)).intervals).toEqual({});
    for (const days of [0, -1, 1.5, 3651, Infinity, '30']) {
      expect(restore({ ...made, intervals: { 'two-z-screws': days } })).toMatchObject({ ok: false });
    }
  });
});

describe('the chain of migrations', () => {
  const steps: Readonly<Record<number, Migration>> = {
    1: (old) => ({ ...old, a: `${String(old.a)}1` }),
    2: (old) => ({ ...old, a: `${String(old.a)}2` }),
    4: () => {
      throw new Error('planted');
    },
  };

  it('runs from any version to the newest, in order', () => {
    expect(migrate({ v: 1, a: '' }, steps, 3)).toEqual({ ok: true, record: { v: 3, a: '12' } });
    expect(migrate({ v: 2, a: '' }, steps, 3)).toEqual({ ok: true, record: { v: 3, a: '2' } });
    expect(migrate({ v: 3, a: '' }, steps, 3)).toEqual({ ok: true, record: { v: 3, a: '' } });
  });

  it('reports a gap and a migration that throws', () => {
    expect(migrate({ v: 3 }, steps, 4)).toMatchObject({ ok: false, newer: false });
    expect(migrate({ v: 4 }, steps, 5)).toMatchObject({ ok: false, newer: false });
    expect(migrate({ v: 5 }, steps, 4)).toMatchObject({ ok: false, newer: true });
  });
});

describe('hostile records', () => {
  it('anything at all: never thrown', () => {
    const anything = fc.anything({
      withBigInt: true,
      withDate: true,
      withMap: true,
      withSet: true,
      withNullPrototype: true,
      withSparseArray: true,
      withTypedArray: true,
      withObjectString: true,
      key: fc.oneof(fc.string(), fc.constantFrom('__proto__', 'constructor', 'v', 'type', 'values', 'toString')),
    });
    fc.assert(fc.property(anything, expectDoorHolds), { numRuns: times(500, 60) });
  });

  it('a valid record with one part replaced by anything: never thrown, never let through unsound', () => {
    const parts = (value: unknown): string[][] =>
      typeof value === 'object' && value !== null
        ? Object.entries(value).flatMap(([key, inner]) => [[key], ...parts(inner).map((rest) => [key, ...rest])])
        : [];
    const replaced = fc
      .tuple(record, fc.nat(), fc.oneof(fc.anything(), fc.constantFrom(NaN, Infinity, -Infinity, -1, '', '__proto__')))
      .map(([written, pick, value]) => {
        const mutant = structuredClone(written) as unknown;
        const paths = parts(mutant);
        const path = paths[pick % paths.length]!;
        const holder = path.slice(0, -1).reduce<unknown>((at, key) => Reflect.get(at as object, key), mutant);
        Reflect.set(holder as object, path.at(-1)!, value);
        return mutant;
      });
    fc.assert(fc.property(replaced, expectDoorHolds), { numRuns: times(500, 60) });
  });

  it('a prototype key in a map does not pass and does not reach any prototype', () => {
    const kept = '{"value":1,"half":0,"unit":"mm","origin":"measured","tool":"","at":"2026-01-02T03:04:05.678Z"}';
    for (const key of ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf']) {
      const machine = JSON.stringify({ ...demoMachine, values: {} }).replace(
        '"values":{}',
        `"values":{"${key}":${kept}}`,
      );
      expect(machine).toContain(key);
      const reading = JSON.stringify({ ...demoReadings[0], choices: {} }).replace(
        '"choices":{}',
        `"choices":{"${key}":"on"}`,
      );
      expect(reading).toContain(`"${key}":"on"`);
      for (const stored of [machine, reading].map((text): unknown => JSON.parse(text))) {
        const restored = restore(stored);
        if (restored.ok) {
          const { record: clean } = restored;
          expect(Object.keys(clean.type === 'machine' ? clean.values : {})).toEqual([]);
          expectSound(clean);
        }
      }
      // An option named like an inherited property would be "found" in any table.
      expect(restore({ ...demoReadings[0], choices: { drive: key } }).ok).toBe(!(key in Object.prototype));
    }
    expect(Reflect.get({}, 'value')).toBeUndefined();
    expect(Reflect.get({}, 'origin')).toBeUndefined();
  });

  const lead = demoMachine.values['z.lead']!;
  const withLead = (change: object) => ({ ...demoMachine, values: { 'z.lead': { ...lead, ...change } } });

  const demoReading = demoReadings[0]!;
  const withArgs = (args: unknown) => ({ ...demoReading, order: { ...demoReading.order, args } });
  const nested = (levels: number): unknown => (levels === 0 ? 0 : [nested(levels - 1)]);

  it('what words are made from may be as deep and as much as is stated', () => {
    expect(restore(withArgs({ a: nested(LIMITS.argDepth - 1) })).ok).toBe(true);
    expect(restore(withArgs({ a: Array.from({ length: LIMITS.args - 1 }, () => 0) })).ok).toBe(true);
  });

  it.each<[string, unknown]>([
    ['NaN', withLead({ value: NaN })],
    ['an infinite half-width', withLead({ half: Infinity })],
    ['a half-width below zero', withLead({ half: -1e-9 })],
    ['a number as text', withLead({ value: '0.008' })],
    ['an unknown origin', withLead({ origin: 'guessed' })],
    ['a time of another form', withLead({ at: '2026-01-02' })],
    ['a day that does not exist', withLead({ at: '2026-02-31T00:00:00.000Z' })],
    ['a list for a map', { ...demoMachine, values: [] }],
    ['a date for a map', { ...demoMachine, values: new Date() }],
    ['a map for a record', new Map(Object.entries(demoMachine))],
    ['a place without its group', { ...demoMachine, values: { lead } }],
    ['a name of blanks', { ...demoMachine, name: '  ' }],
    ['a huge note', { ...demoMachine, note: 'x'.repeat(1e6) }],
    ['a huge id', { ...demoMachine, id: 'x'.repeat(1e6) }],
    ['an id with a colon', { ...demoMachine, id: 'a:b' }],
    ['a huge key', { ...demoMachine, values: { ['x'.repeat(1e6)]: lead } }],
    [
      'a huge map',
      { ...demoMachine, values: Object.fromEntries(Array.from({ length: 1e5 }, (_, i) => [`z.p${i}`, lead])) },
    ],
    [
      'too many steps',
      {
        ...demoReading,
        order: { ...demoReading.order, steps: Array.from({ length: 1000 }, () => ({ say: '', args: {}, text: '' })) },
      },
    ],
    ['too many limits', { ...demoReading, limits: Array.from({ length: 1000 }, () => demoReading.limits[0]) }],
    ['what words are made from, without end', withArgs({ a: nested(100) })],
    ['what words are made from, a level too deep', withArgs({ a: nested(LIMITS.argDepth) })],
    ['what words are made from, too much of it', withArgs({ a: Array.from({ length: LIMITS.args }, () => 0) })],
    ['what words are made from, endless', withArgs({ a: Infinity })],
    ['what words are made from, empty', withArgs({ a: null })],
    ['what words are made from, a list for the map', withArgs([])],
    ['what words are made from, an inherited name', withArgs({ toString: 1 })],
    ['a kind of another form', { ...demoReading, entries: { dh: { ...demoReading.entries.dh, kind: 'a:b' } } }],
    [
      'an interval upside down',
      {
        ...demoReading,
        results: { n: { name: '', value: 1, low: 2, high: 1, kind: '', unit: '', text: '' } },
      },
    ],
    ['an unknown kind', { ...demoMachine, type: 'printer' }],
    ['a kind from the prototype', { ...demoMachine, type: 'constructor' }],
  ])('%s is refused with a sentence', (_, stored) => {
    expect(reasonOf(stored)).toMatch(/^This .*\.$/);
    expectDoorHolds(stored);
  });

  it('names the place of the fault', () => {
    expect(reasonOf(withLead({ value: NaN }))).toBe(
      'This record cannot be read at “values.z.lead.value”: this should be a number.',
    );
    const { note, ...rest } = demoMachine;
    expect(note).not.toBe('');
    expect(reasonOf(rest)).toContain('note');
  });

  it('leaves out fields that no record has', () => {
    expect(restore({ ...defaultSettings, sneaked: 1 })).toEqual({ ok: true, record: defaultSettings });
  });
});

describe('editing a machine', () => {
  const now = new Date('2026-05-06T07:08:09.000Z');

  it('starts blank, with an id of its own, and passes the door', () => {
    const blank = blankMachine('New', now);
    expect(restore(blank)).toEqual({ ok: true, record: blank });
    expect(new Set(Array.from({ length: 200 }, newId)).size).toBe(200);
  });

  it('changes what it is told and nothing else', () => {
    const next = edited(
      demoMachine,
      { values: { 'z.lead': undefined, 'z.starts': demoMachine.values['z.pulley-teeth'] } },
      now,
    );
    const { 'z.lead': gone, ...others } = demoMachine.values;
    expect(gone).toBeDefined();
    expect(next).toEqual({
      ...demoMachine,
      changed: now.toISOString(),
      ordinal: 3,
      values: { ...others, 'z.starts': { ...demoMachine.values['z.pulley-teeth'], ordinal: 3 } },
    });
    expect(restore(next).ok).toBe(true);
  });

  it('limits are what the door holds', () => {
    expect(restore({ ...demoMachine, name: 'n'.repeat(LIMITS.name) }).ok).toBe(true);
    expect(restore({ ...demoMachine, name: 'n'.repeat(LIMITS.name + 1) }).ok).toBe(false);
    expect(restore({ ...demoMachine, note: 'n'.repeat(LIMITS.note) }).ok).toBe(true);
  });
});
