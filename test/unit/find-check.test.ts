import { describe, expect, it } from 'vitest';
import { createFinder } from '../../src/app/desk/find-check';
import { calculators, metaOf } from '../support/calculators';

const find = createFinder(
  calculators.map(([id]) => {
    const meta = metaOf[id];
    if (!meta) throw new Error(`${id} is not in the list`);
    return { id, ...meta };
  }),
);
const firstFour = (query: string) => find(query).slice(0, 4);

// What people write to someone who mends printers, in their words and with their slips: invented.
const asked: readonly (readonly [query: string, check: string])[] = [
  ["screw won't tighten", 'thread-repair'],
  ['screw turns and turns', 'thread-repair'],
  ['stripped hole', 'thread-repair'],
  ['one side high', 'two-z-screws'],
  ['right side of the gantry is higher', 'two-z-screws'],
  ['bent screw', 'lead-screw-straightness'],
  ['wheels wobble', 'wheel-preload'],
  ['hairs between the parts', 'retraction'],
  ['stringing', 'retraction'],
  ['belt too loose', 'belt-tension'],
  ['which note should the belt have', 'belt-tension'],
  ['two belts not alike', 'belt-pair'],
  ['ridges up the wall', 'ridge-period'],
  ['gantry sinks when switched off', 'screw-holding'],
  ['hot end far too hot', 'heater-check'],
  ['thermistor reads wrong', 'sensor-check'],
  ['prints come out too long', 'steps-per-length'],
  ['circles are oval', 'squareness'],
  ['bed not level', 'bed-tram'],
  ['ghosts after corners', 'ringing'],
  ['carriage sticks', 'carriage-binding'],
  ['tall thin part falls over', 'test-column'],
  ['condensation on the bed', 'workshop-air'],
  ['wet filament', 'filament-moisture'],
  ['ran out of filament in the middle', 'missed-feed'],
  ['continue a print that stopped', 'resume-height'],
];

describe('what people say finds its check', () => {
  it.each(asked)('%s', (query, check) => {
    expect(firstFour(query)).toContain(check);
  });

  // One letter left out, doubled, or swapped with its neighbour in every long word.
  const slips: readonly (readonly [name: string, slip: (word: string) => string])[] = [
    ['a letter left out', (word) => word.slice(0, 3) + word.slice(4)],
    ['a letter doubled', (word) => word.slice(0, 3) + word.slice(2)],
    ['a wrong letter', (word) => `${word.slice(0, 3)}x${word.slice(4)}`],
  ];
  it.each(slips)('most of it with %s too', (_, slip) => {
    const found = asked.filter(([query, check]) => {
      const spoilt = query.replace(/[a-z]{6,}/g, slip);
      return firstFour(spoilt).includes(check);
    });
    expect(found.length).toBeGreaterThanOrEqual(Math.ceil(0.85 * asked.length));
  });

  it('finds a check by its name, first', () => {
    for (const [id] of calculators) expect(find(metaOf[id]?.title ?? '')[0], id).toBe(id);
  });

  it('finds nothing where no word is known, and all words may be empty ones', () => {
    expect(find('xqzzk')).toEqual([]);
    expect(find('the of and')).toEqual([]);
    expect(find('')).toEqual([]);
  });
});
