import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { compareWays, evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import calc from './index';

const plain = calc as unknown as Calculator;
const hole = { L_r: '6 mm', L_e: '0 mm', L_h: '20 mm', w: '5 mm' } as const;
const look = (picked: Readonly<Record<string, string>>) => {
  const now = situation(plain, hole, picked);
  const found = evaluate(plain, now);
  return { found, ways: compareWays(plain, found, now) };
};

describe('the instruction', () => {
  // Every option of every choice at once: nothing may be left without words, and nothing may show a hole.
  it('holds for every size, class, material and kind of hole', () => {
    for (const size of Object.keys(plain.choices.size!.options)) {
      for (const grade of Object.keys(plain.choices.grade!.options)) {
        for (const part of Object.keys(plain.choices.part!.options)) {
          const kind = Object.keys(plain.choices.hole!.options)[(size.length + part.length) % 3]!;
          const { found, ways } = look({ size, grade, part, hole: kind });
          const said = [
            found.instruction!.glance,
            found.instruction!.sentence,
            found.instruction!.spoken,
            ...found.instruction!.steps,
            ...ways!.ways.flatMap((way) => [way.why, ...way.facts, ...way.needs]),
          ];
          for (const text of said) expect(text, `${size} ${grade} ${part}`).not.toMatch(/NaN|undefined|Infinity/);
          expect(ways!.ways.filter((way) => way.standing === 'advised')).toHaveLength(1);
        }
      }
    }
  });
});
