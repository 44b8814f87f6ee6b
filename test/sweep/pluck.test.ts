import { describe, expect, test } from 'vitest';
import { createListener, type ListenerEvent } from '../../src/signal/listener';
import type { NoteFound } from '../../src/signal/note';
import { combinePlucks } from '../../src/signal/pluck-set';
import { gaussian, pluck, random } from '../support/plucks';
import { isWhole, some, times } from '../support/sweep';

const found = (frequency: number, halfWidth = 0.02): NoteFound => ({
  status: 'found',
  frequency,
  halfWidth,
  inharmonicity: 0,
  partials: [],
  snrDb: 20,
  spectrum: { step: 1, decibels: new Float32Array(0) },
});

describe('several plucks', () => {
  test('two that agree among as many sounds of no belt are chance; four are not', () => {
    const two = [110.1, 110.2].map((f) => found(f));
    expect(combinePlucks(two, 1).status).toBe('found');
    expect(combinePlucks(two, 2).status).toBe('too few');
    expect(combinePlucks([...two, found(110), found(110.3)], 6).status).toBe('found');
  });

  test('an octave, a half and another string are told apart', () => {
    const set = combinePlucks([110.1, 220.3, 110.0, 109.9, 55, 130.8, 110.2].map((f) => found(f)));
    expect(set).toMatchObject({ status: 'found', used: [0, 2, 3, 6], outliers: [1, 4, 5] });
    if (set.status === 'found') expect(set.frequency).toBeCloseTo(110.05, 6);
  });

  test('too few where not even two agree, or no majority does', () => {
    expect(combinePlucks([])).toMatchObject({ status: 'too few' });
    expect(combinePlucks([found(110)])).toMatchObject({ status: 'too few', used: [0] });
    expect(combinePlucks([found(110), found(220)])).toMatchObject({ status: 'too few' });
    expect(combinePlucks([110, 110.1, 220, 220.1].map((f) => found(f)))).toMatchObject({ status: 'too few' });
  });

  test('two groups that are no overtones are told as two, the larger first', () => {
    const set = combinePlucks([84.1, 87, 84.15, 87.1, 84.05].map((f) => found(f)));
    expect(set.status).toBe('two');
    if (set.status !== 'two') return;
    expect(set.groups.map(({ used }) => used)).toEqual([
      [0, 2, 4],
      [1, 3],
    ]);
    expect(set.groups[0].frequency).toBeCloseTo(84.1, 6);
    expect(set.groups[1].frequency).toBeCloseTo(87.05, 6);
    expect(combinePlucks([84.1, 87, 87.1, 84.15].map((f) => found(f)))).toMatchObject({ status: 'two' });
    // One that stands alone is a slip, and an octave is the same belt's.
    expect(combinePlucks([84.1, 87, 84.15, 84.05].map((f) => found(f)))).toMatchObject({ status: 'found' });
    expect(combinePlucks([84.1, 168.2, 84.15, 168.3, 84.05].map((f) => found(f)))).toMatchObject({ status: 'found' });
  });

  test.each(some([2, 3, 4, 5, 8, 12], 6))('the half-width of %i plucks holds the true note 95 times in 100', (n) => {
    const normal = gaussian(random(900 + n));
    const draws = 4000;
    let inside = 0;
    for (let i = 0; i < draws; i += 1) {
      const set = combinePlucks(Array.from({ length: n }, () => found(100 + 0.1 * normal(), 0.01)));
      if (set.status === 'found' && Math.abs(set.frequency - 100) <= set.halfWidth) inside += 1;
    }
    // Three standard deviations of so many draws; the median's loss is that of many plucks, so few are held too wide.
    expect(inside / draws).toBeGreaterThan(0.95 - 0.0105);
    expect(inside / draws).toBeLessThan(0.985);
  });

  test('plucks that happen to agree are no better known than each of them says', () => {
    const set = combinePlucks([found(100, 1), found(100, 1), found(100, 1)]);
    expect(set.status === 'found' && set.halfWidth).toBeCloseTo(Math.sqrt(Math.PI / 6), 6);
  });
});

describe('the listener', () => {
  const room = { noise: 'pink', microphone: 'plain', snrDb: 20, low: 60, high: 120 } as const;

  /** Noise, then each pluck with its own room, end to end. */
  function listen(seeds: readonly number[], block: number): { events: ListenerEvent[]; at: number[]; notes: number[] } {
    const made = seeds.map((seed) => pluck(room, seed));
    const parts = made.flatMap(({ before, samples }) => [before, samples]);
    const sound = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0) + 12_000);
    const at: number[] = [];
    let from = 0;
    parts.forEach((part, i) => {
      if (i % 2 === 1) at.push(from / 48_000);
      sound.set(part, from);
      from += part.length;
    });
    const listener = createListener(48_000);
    const events: ListenerEvent[] = [];
    for (let t = 0; t < sound.length; t += block) events.push(...listener.push(sound.subarray(t, t + block)));
    return { events, at, notes: made.map(({ frequency }) => frequency) };
  }

  test.each(isWhole ? [128, 4096, 500_000] : [4096])(
    'hears each pluck once and names it, fed %i samples at a time',
    (block) => {
      const seeds = some([1, 2, 3], 3);
      const { events, at, notes } = listen(seeds, block);
      const heard = events.filter((event) => event.kind === 'pluck');
      // Where one room's sound is joined to the next another fan sets in: that is heard too, and is no note.
      const plucks = heard.filter(({ note }) => note.status === 'found');
      expect(heard.length).toBeLessThanOrEqual(2 * seeds.length - 1);
      expect(plucks.length).toBe(seeds.length);
      plucks.forEach((event, i) => {
        expect(Math.abs(event.at - at[i]!)).toBeLessThan(0.02);
        if (event.note.status === 'found') expect(event.note.frequency / notes[i]!).toBeCloseTo(1, 3);
      });
    },
  );

  test('tells the level ten times a second', () => {
    const normal = gaussian(random(4));
    const listener = createListener(48_000);
    const sound = Float32Array.from({ length: 96_000 }, () => 0.01 * normal());
    const levels = listener.push(sound).filter((event) => event.kind === 'level');
    expect(levels.length).toBe(20);
    for (const { rms, noise } of levels) {
      expect(rms).toBeCloseTo(-40, 0);
      expect(noise).toBeLessThanOrEqual(rms);
    }
  });

  test('hears no pluck in much noise', () => {
    const normal = gaussian(random(6));
    const listener = createListener(48_000);
    let plucks = 0;
    for (let second = 0; second < times(60, 4); second += 1) {
      const sound = Float32Array.from({ length: 48_000 }, () => 0.01 * normal());
      plucks += listener.push(sound).filter((event) => event.kind === 'pluck').length;
    }
    expect(plucks).toBe(0);
  });
});
