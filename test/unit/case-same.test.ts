import { describe, expect, it } from 'vitest';
import { sameEntry, standing, type Logged } from '../../src/diagnosis/same';
import type { Entry } from '../../src/diagnosis/types';

const at = '2026-03-02T09:00:00.000Z';
const log = (entry: Entry, note = '', when = at): Logged => ({ ...entry, at: when, note });

/** Every kind of entry, and each of its parts otherwise. */
const entries: readonly Entry[] = [
  { kind: 'made safe' },
  { kind: 'not safe', why: 'cannot' },
  { kind: 'not safe', why: 'will do' },
  { kind: 'answer', check: 'one', answer: 'yes' },
  { kind: 'answer', check: 'one', answer: 'no' },
  { kind: 'answer', check: 'two', answer: 'yes' },
  { kind: 'skip', check: 'one' },
  { kind: 'skip', check: 'two' },
  { kind: 'ruled out', cause: 'one', sure: 'certain' },
  { kind: 'ruled out', cause: 'one', sure: 'fairly' },
  { kind: 'ruled out', cause: 'two', sure: 'certain' },
  { kind: 'mended', cause: 'one', cured: true, remedy: 'mend' },
  { kind: 'mended', cause: 'one', cured: false, remedy: 'mend' },
  { kind: 'mended', cause: 'two', cured: true, remedy: 'mend' },
  { kind: 'mended', cause: 'one', cured: true, remedy: 'replace' },
];

describe('an entry of a case', () => {
  it('is the same as itself with another note, and as no other, nor as itself at another time', () => {
    entries.forEach((a, i) =>
      entries.forEach((b, j) =>
        expect(sameEntry(log(a), log(b, 'noted')), `${JSON.stringify(a)} ${JSON.stringify(b)}`).toBe(i === j),
      ),
    );
    for (const entry of entries) expect(sameEntry(log(entry), log(entry, '', '2026-03-02T09:00:01.000Z'))).toBe(false);
  });

  it('parts two logs where it differs, however far they agree before', () => {
    const [safe, ...others] = entries.map((entry) => log(entry));
    for (const [i, other] of others.entries()) {
      const next = others[(i + 1) % others.length]!;
      expect(standing([safe!, other], [safe!, next])).toBe('apart');
      expect(standing([safe!, other, next], [safe!, next, next])).toBe('apart');
      expect(standing([safe!, other], [safe!, other, next])).toBe('theirs goes on');
      expect(standing([safe!, other, next], [safe!, other])).toBe('ours goes on');
      expect(standing([safe!, other], [safe!, other])).toBe('same');
    }
  });
});
