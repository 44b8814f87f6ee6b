import { describe, expect, test } from 'vitest';
import { frequency, length } from '../../src/quantity/kinds';
import { parseQuantity, toTypedMeasured } from '../../src/quantity/parse';

describe('a measurement as text for a field', () => {
  test('two digits of the half-width, the value to the same place (JCGM 100, 7.2.6)', () => {
    expect(toTypedMeasured(110.0234, 0.0512, frequency.Hz.unit)).toBe('110.023 ± 0.051');
    expect(toTypedMeasured(0.0080004, 0.000021, length.mm.unit)).toBe('8.000 ± 0.021');
    expect(toTypedMeasured(-0.00042, 0.00003, length.mm.unit, 'comma')).toBe('-0,420 ± 0,030');
    expect(toTypedMeasured(1234, 160, frequency.Hz.unit)).toBe('1234 ± 160');
    expect(toTypedMeasured(0.008, 0, length.mm.unit)).toBe('8');
  });

  test.each(['point', 'comma'] as const)('is read back as it was, decimal %s', (mark) => {
    for (const [value, half] of [
      [110.0234, 0.0512],
      [82.41, 1.3],
      [35.00001, 0.000912],
      [-3.2, 0.4],
    ] as const) {
      const read = parseQuantity(
        toTypedMeasured(value, half, frequency.Hz.unit, mark),
        frequency.Hz.kind,
        frequency.Hz.unit,
        mark,
      );
      expect(read.ok && Math.abs(read.value - value)).toBeLessThanOrEqual(half / 20);
      expect(read.ok && Math.abs((read.half ?? 0) / half - 1)).toBeLessThanOrEqual(0.05);
    }
  });
});
