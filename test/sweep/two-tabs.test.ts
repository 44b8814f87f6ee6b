import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mergeSheets, type Sheet } from '../../src/machine/draft';
import { times } from '../support/sweep';

/*
 * Two tabs on one sheet, as the keeper of drafts works: each changes fields, writes what it changed over what the store holds,
 * and hears of the other's writing some time later. Beside it stands a plain table of what
 * each hand has typed and not yet written.
 */

const FIELDS = ['a', 'b', 'c'] as const;
type Field = (typeof FIELDS)[number];
const entry = (text: string) => ({ text, unit: 'mm', tool: '' });

interface Tab {
  base: Sheet;
  mine: Sheet;
}
type Act =
  | { readonly kind: 'type'; readonly tab: number; readonly field: Field; readonly text: string | null }
  | { readonly kind: 'pick'; readonly tab: number; readonly field: Field; readonly text: string }
  | { readonly kind: 'write'; readonly tab: number }
  | { readonly kind: 'hear'; readonly tab: number };

const tab = fc.constantFrom(0, 1);
const field = fc.constantFrom(...FIELDS);
const act: fc.Arbitrary<Act> = fc.oneof(
  fc.record({ kind: fc.constant('type' as const), tab, field, text: fc.option(fc.string({ maxLength: 3 })) }),
  fc.record({ kind: fc.constant('pick' as const), tab, field, text: fc.constantFrom('x', 'y') }),
  fc.record({ kind: fc.constant('write' as const), tab }),
  fc.record({ kind: fc.constant('hear' as const), tab }),
);

const BLANK: Sheet = { entries: {}, choices: {} };

function without(fields: Sheet['entries'], name: string): Sheet['entries'] {
  return Object.fromEntries(Object.entries(fields).filter(([one]) => one !== name));
}

describe('two tabs on one sheet', () => {
  it('keep both hands’ fields, whatever the order of writing and hearing, and end alike', () => {
    fc.assert(
      fc.property(fc.array(act, { maxLength: 40 }), (acts) => {
        const tabs: [Tab, Tab] = [
          { base: BLANK, mine: BLANK },
          { base: BLANK, mine: BLANK },
        ];
        let store = BLANK;
        const unwritten = [new Map<string, string | null>(), new Map<string, string | null>()];
        const write = (of: number) => {
          const one = tabs[of]!;
          store = mergeSheets(one.base, one.mine, store);
          one.base = one.mine;
          unwritten[of]!.clear();
        };
        const hear = (of: number) => {
          const one = tabs[of]!;
          one.mine = mergeSheets(one.base, one.mine, store);
          one.base = store;
        };
        for (const one of acts) {
          const at = tabs[one.tab]!;
          if (one.kind === 'write') write(one.tab);
          else if (one.kind === 'hear') hear(one.tab);
          else if (one.kind === 'pick') {
            // Picking what stands there already changes nothing.
            if (at.mine.choices[one.field] !== one.text) unwritten[one.tab]!.set(`choice ${one.field}`, one.text);
            at.mine = { ...at.mine, choices: { ...at.mine.choices, [one.field]: one.text } };
          } else {
            const was = at.mine.entries[one.field]?.text ?? null;
            if (was !== one.text) unwritten[one.tab]!.set(one.field, one.text);
            const rest = without(at.mine.entries, one.field);
            at.mine = { ...at.mine, entries: one.text === null ? rest : { ...rest, [one.field]: entry(one.text) } };
          }
          // What the hand has typed and not written stands in its tab, whatever was heard.
          for (const [i, mine] of unwritten.entries()) {
            for (const [name, text] of mine) {
              const sheet = tabs[i]!.mine;
              const stands = name.startsWith('choice ')
                ? sheet.choices[name.slice('choice '.length)]
                : (sheet.entries[name]?.text ?? null);
              expect(stands).toBe(text);
            }
          }
        }
        for (const of of [0, 1, 0, 1]) {
          write(of);
          hear(of);
        }
        hear(0);
        expect(tabs[0].mine).toEqual(store);
        expect(tabs[1].mine).toEqual(store);
      }),
      { numRuns: times(2000, 300) },
    );
  });

  it('typing in different fields at once keeps both, to the letter', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(tab, fc.string({ maxLength: 3 })), { maxLength: 20 }), (typed) => {
        const names = ['left', 'right'] as const;
        let store = BLANK;
        const base = [BLANK, BLANK];
        const last: [string?, string?] = [];
        for (const [of, text] of typed) {
          const mine = { ...base[of]!, entries: { ...base[of]!.entries, [names[of]]: entry(text) } };
          store = mergeSheets(base[of]!, mine, store);
          base[of] = mine;
          last[of] = text;
        }
        expect(store.entries).toEqual(
          Object.fromEntries(names.flatMap((name, i) => (last[i] === undefined ? [] : [[name, entry(last[i])]]))),
        );
      }),
      { numRuns: times(1000, 200) },
    );
  });
});
