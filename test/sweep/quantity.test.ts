import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allKinds } from '../../src/quantity/all-kinds';
import * as kinds from '../../src/quantity/kinds';
import { formatExpanded, formatMeasured, formatNumber, formatValue } from '../../src/quantity/format';
import { parseQuantity, toTyped, type DecimalMark } from '../../src/quantity/parse';
import { fromSi, toSi, type Kind, type Measure } from '../../src/quantity/unit';
import { anyText } from '../support/any-text';
import { times } from '../support/sweep';

const { length, force, angle, count, ratio, pressure, temperature, shearRate, torque } = kinds;

const allUnits = allKinds.flatMap((kind) =>
  kind.units.map((unit) => [`${kind.id} in ${unit.id}`, kind, unit] as const),
);

const read = (text: string, measure: Measure, mark: DecimalMark = 'point') =>
  parseQuantity(text, measure.kind, measure.unit, mark);

function value(text: string, measure: Measure, mark: DecimalMark = 'point'): number {
  const found = read(text, measure, mark);
  if (!found.ok) throw new Error(found.reason);
  return found.value;
}

function reason(text: string, measure: Measure, mark: DecimalMark = 'point'): string {
  const found = read(text, measure, mark);
  if (found.ok) throw new Error(`“${text}” was read as ${found.value}`);
  return found.reason;
}

describe('what a person types', () => {
  // [text, SI value of a length shown in mm]: the inch is 25.4 mm exactly (NIST SP 811, appendix B.8).
  it.each([
    ['0.4', 0.4e-3],
    ['0,4', 0.4e-3],
    ['.5', 0.5e-3],
    ['-.5', -0.5e-3],
    ['5.', 5e-3],
    ['+2', 2e-3],
    ['  7  ', 7e-3],
    ['1e-3', 1e-6],
    ['0,400', 0.4e-3],
    ['1000.5', 1.0005],
    ['1000,5', 1.0005],
    ['400 um', 0.4e-3],
    ['400um', 0.4e-3],
    ['400 µm', 0.4e-3],
    ['400 μm', 0.4e-3],
    ['400 microns', 0.4e-3],
    ['1 MM', 1e-3],
    ['1 Mm', 1e-3],
    ['3 1/2', 3.5e-3],
    ['-3 1/2', -3.5e-3],
    ['1/32 in', 0.79375e-3],
    ['1/32"', 0.79375e-3],
    ['1 / 32 in', 0.79375e-3],
    ['½ in', 12.7e-3],
    ['3½ in', 88.9e-3],
    ['−½″', -12.7e-3],
    ['2 1/4 inches', 57.15e-3],
    ['5 thou', 0.127e-3],
    ['1 ft', 304.8e-3],
    ['\u22120.75', -0.75e-3],
    ['\u20130.75', -0.75e-3],
    ['0.75\u00a0mm', 0.75e-3],
  ])('%s is a length', (text, si) => {
    expect(value(text, length.mm)).toBeCloseTo(si, 15);
  });

  it('keeps the unit typed', () => {
    expect(read('1/32 in', length.mm)).toMatchObject({ ok: true, unit: { id: 'in' } });
    expect(read('0.4', length.in)).toMatchObject({ ok: true, unit: { id: 'in' }, value: 0.4 * 0.0254 });
  });

  it.each([
    ['1,000', '1.000', '1000'],
    ['10,000 mm', '10.000', '10000'],
    ['-1,000', '1.000', '1000'],
  ])('refuses %s where the decimal mark is a point, and says both readings', (text, small, large) => {
    expect(reason(text, length.mm)).toContain(`${small} or ${large}`);
  });

  it.each([
    ['1.500', '1,500', '1500'],
    ['10.000 mm', '10,000', '10000'],
    ['-1.000', '1,000', '1000'],
  ])('refuses %s where the decimal mark is a comma, and says both readings', (text, small, large) => {
    expect(reason(text, length.mm, 'comma')).toContain(`${small} or ${large}`);
  });

  it('reads three decimals behind the own mark, and behind either one that is not thousands', () => {
    expect(value('1,000', length.mm, 'comma')).toBe(1e-3);
    expect(value('1.000', length.mm)).toBe(1e-3);
    for (const mark of ['point', 'comma'] as const)
      for (const text of ['0.400', '0,400', '1.50', '1,50', '1234.500', '1234,500'])
        expect(read(text, length.mm, mark).ok).toBe(true);
  });

  it.each(['1.000,5', '1,000.5', '1.2.3', '1,2,3', '1 000', '1..2'])('refuses %s: two marks', (text) => {
    for (const mark of ['point', 'comma'] as const) expect(reason(text, length.mm, mark)).toContain('more than one');
  });

  it.each(['', ' ', '\u00a0', '\n'])('says that nothing was entered for %j', (text) => {
    expect(reason(text, length.mm)).toBe('Nothing entered yet.');
  });

  it.each(['abc', 'mm', '-', '.', ',', 'NaN', 'Infinity', '± 2', '#1', '(', 'e5', '²'])('refuses %s', (text) => {
    expect(reason(text, length.mm)).toMatch(/does not start with a number. Accepted: 0\.4/);
  });

  it.each(['1/0', '1/0 in', '3 1/0', '0/0'])('refuses %s: divided by zero', (text) => {
    expect(reason(text, length.mm)).toContain('divides by zero');
  });

  it.each([
    ['5 N', length.mm, '“N” is not a unit of length. Accepted: mm, µm, cm, m, in, thou or ft.'],
    ['5 mm', force.N, '“mm” is not a unit of force. Accepted: N, mN, kgf, gf, lbf or ozf.'],
    ['5 kg', force.N, '“kg” is not a unit of force'],
    ['20 teeth', count.one, '“teeth” is not a unit of count. Accepted: no unit.'],
    ['5 constructor', length.mm, 'is not a unit of length'],
    ['5 mm mm', length.mm, 'is not a unit of length'],
  ])('refuses %s as another kind and lists what is accepted', (text, measure, sentence) => {
    expect(reason(text, measure)).toContain(sentence);
  });

  it.each([
    ['1e999', length.mm],
    ['9'.repeat(400), length.mm],
    [`${'9'.repeat(400)}/${'9'.repeat(400)}`, length.mm],
    // Finite as a number of turns, not as radians.
    ['1e308', angle.turn],
  ])('refuses %s: too large', (text, measure) => {
    expect(reason(text, measure)).toContain('too large');
  });

  it.each(['2.5', '1/2', '0,5'])('wants a whole number for a count: %s', (text) => {
    expect(reason(text, count.one)).toContain('whole number');
  });

  it('takes 20 and 40/2 as counts', () => {
    expect([value('20', count.one), value('40/2', count.one)]).toEqual([20, 20]);
  });

  it('tells mega from milli, and is easy about case elsewhere', () => {
    expect(value('5 mN', force.N)).toBe(5e-3);
    expect(value('5 mn', force.N)).toBe(5e-3);
    expect(reason('5 MN', force.N)).toContain('not a unit of force');
    expect(value('5 MPa', pressure.MPa)).toBe(5e6);
    expect(value('5 mpa', pressure.Pa)).toBe(5e6);
    expect(reason('5 mPa', pressure.MPa)).toContain('not a unit of pressure');
    expect(value('5 KHz', kinds.frequency.Hz)).toBe(5e3);
    expect(value('5 n', force.kgf)).toBe(5);
  });

  it('reads units that start with a digit or carry a dot', () => {
    expect(value('100 1/s', shearRate.per_s)).toBe(100);
    expect(value('100 s^-1', shearRate.per_s)).toBe(100);
    expect(value('3 N·mm', torque.N_m)).toBeCloseTo(3e-3, 15);
    expect(value('3 N mm', torque.N_m)).toBeCloseTo(3e-3, 15);
    expect(value('3 nm', torque.N_mm)).toBe(3);
  });

  it('reads temperatures on their scale', () => {
    expect(value('215', temperature.C)).toBeCloseTo(488.15, 10);
    expect(value('419 °F', temperature.C)).toBeCloseTo(488.15, 10);
    expect(value('-40 f', temperature.C)).toBeCloseTo(233.15, 10);
  });

  it('reads minutes of arc and degrees', () => {
    expect(value("30'", angle.deg)).toBeCloseTo(Math.PI / 360, 15);
    expect(value('1.8°', angle.rad)).toBeCloseTo(Math.PI / 100, 15);
  });
});

describe('a half-width after the value', () => {
  const half = (text: string, measure: Measure, mark: DecimalMark = 'point') => {
    const found = read(text, measure, mark);
    if (!found.ok) throw new Error(found.reason);
    return [found.value, found.half, found.unit.id];
  };

  it.each([
    '0.40 +- 0.02',
    '0.40 ± 0.02',
    '0.40 +/- 0.02',
    '0,40 + - 0,02',
    '0.40±0.02',
    '0.40 ± .02 mm',
    '400 ± 20 um',
  ])('reads %s', (text) => {
    const [si, width] = half(text, length.mm);
    expect(si).toBeCloseTo(0.4e-3, 12);
    expect(width).toBeCloseTo(0.02e-3, 12);
  });

  it('takes the unit of either side for both, or each its own', () => {
    expect(half('1 in ± 0.5 mm', length.mm)).toEqual([0.0254, 0.5e-3, 'in']);
    expect(half('1 ± 0.5 in', length.mm)).toEqual([0.0254, 0.0127, 'in']);
    expect(half('1 in ± 0.5', length.mm)).toEqual([0.0254, 0.0127, 'in']);
  });

  it('reads a share: 30 N ± 5 %', () => {
    expect(half('30 N ± 5 %', force.N)).toEqual([30, 1.5, 'N']);
    expect(half('-30 N ± 5%', force.N)).toEqual([-30, 1.5, 'N']);
  });

  it('takes a share of the degrees typed, not of the kelvins: 20 °C ± 5 % is ± 1 K', () => {
    expect(half('20 °C ± 5 %', temperature.C)[1]).toBeCloseTo(1, 12);
    expect(half('68 °F ± 5 %', temperature.C)[1]).toBeCloseTo((3.4 * 5) / 9, 12);
    expect(half('20 ± 2 °C', temperature.C)[1]).toBe(2);
  });

  it('means percentage points where the quantity is itself a share', () => {
    expect(half('50 % ± 5 %', ratio.percent)[1]).toBeCloseTo(0.05, 15);
  });

  it('reads no half-width as none, zero as zero', () => {
    expect(read('0.4', length.mm)).not.toHaveProperty('half');
    expect(half('0.4 ± 0', length.mm)[1]).toBe(0);
  });

  it.each([
    ['0.4 ± -1', 'cannot be negative'],
    ['0.4 ± ', 'After the ±'],
    ['0.4 ± x', 'After the ±'],
    ['0.4 ± 0.1 N', 'or %'],
    ['0.4 ± 1,000', 'After the ±'],
    ['0.4 ± 0.1 ± 0.1', 'Only one ±'],
    ['0.4 ± 1e999', 'half-width is too large'],
    ['0.4 ± 1/0', 'divides by zero'],
  ])('refuses %s', (text, sentence) => {
    expect(reason(text, length.mm)).toContain(sentence);
  });
});

describe('reading anything at all', () => {
  const kind = fc.constantFrom(...allKinds);
  const typedPieces = fc
    .array(
      fc.constantFrom(
        '1',
        '0',
        '25',
        '.',
        ',',
        '-',
        '−',
        '+',
        '±',
        '/',
        ' ',
        'e',
        '%',
        'mm',
        'in',
        '"',
        '½',
        'N',
        '°C',
        '1e300',
        '٣',
        '５',
        ':',
        'k',
        'M',
        'R',
        '°',
        "'",
      ),
    )
    .map((parts) => parts.join(''));

  it('never throws and never yields NaN or an infinity', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), anyText(30), typedPieces),
        kind,
        fc.constantFrom<DecimalMark>('point', 'comma'),
        (text, k, mark) => {
          const unit = k.units[0]!;
          const found = parseQuantity(text, k, unit, mark);
          if (found.ok) {
            expect(Number.isFinite(found.value)).toBe(true);
            if (found.half !== undefined) expect(found.half >= 0 && Number.isFinite(found.half)).toBe(true);
          } else {
            expect(found.reason.length).toBeGreaterThan(10);
            expect(found.reason).not.toMatch(/NaN|undefined|null/);
          }
        },
      ),
      { numRuns: times(3000, 400) },
    );
  });
});

/** Numbers a bench could meet in any unit. */
const benchNumber = fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter((x) => x === 0 || Math.abs(x) > 1e-6);

const wholeIf = (kind: Kind, x: number): number => (kind.whole ? Math.round(x) : x);

describe.each(allUnits)('printing and reading back: %s', (_name, kind, unit) => {
  it('gives the same value in the same unit, with both decimal marks', () => {
    fc.assert(
      fc.property(benchNumber, fc.constantFrom<DecimalMark>('point', 'comma'), (x, mark) => {
        const si = toSi(wholeIf(kind, x), unit);
        const shown = fromSi(si, unit);
        const typed = parseQuantity(toTyped(si, unit, mark), kind, unit, mark);
        expect(typed).toMatchObject({ ok: true, unit: { id: unit.id } });
        if (typed.ok)
          expect(Math.abs(fromSi(typed.value, unit) - shown)).toBeLessThanOrEqual(
            1e-9 * Math.abs(x) + Math.abs(unit.offset / unit.factor) * 1e-9,
          );
        const other = kind.units.at(-1)!;
        const printed = parseQuantity(formatValue(si, 0, unit, { mark }), kind, other, mark);
        expect(printed.ok).toBe(true);
        // A unit without a label is read in the field's own unit.
        const back = printed.ok ? fromSi(printed.value, unit.label === '' ? other : unit) : NaN;
        expect(Math.abs(back - shown)).toBeLessThanOrEqual(
          5e-6 * Math.abs(shown) + Math.abs(unit.offset / unit.factor) * 1e-9,
        );
      }),
      { numRuns: times(100, 20) },
    );
  });

  it('gives a half-width back to its two digits, and the value to the same place', () => {
    const width = fc.double({ min: 1e-6, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(benchNumber, width, fc.constantFrom<DecimalMark>('point', 'comma'), (x, w, mark) => {
        const si = toSi(x, unit);
        const text = formatMeasured(si, w * unit.factor, unit, { mark });
        const typed = parseQuantity(text.replace(/[()]/g, ''), { ...kind, whole: false }, unit, mark);
        expect(typed).toMatchObject({ ok: true, unit: { id: unit.id } });
        if (!typed.ok) return;
        const back = (typed.half ?? NaN) / unit.factor;
        expect(Math.abs(back - w)).toBeLessThanOrEqual(0.0501 * w);
        expect(Math.abs(fromSi(typed.value, unit) - fromSi(si, unit))).toBeLessThanOrEqual(
          0.0501 * w + 1e-9 * (Math.abs(x) + Math.abs(unit.offset / unit.factor)),
        );
      }),
      { numRuns: times(100, 20) },
    );
  });
});

describe('two digits of uncertainty (JCGM 100, 7.2.6)', () => {
  const mm = (x: number, width: number, mark: DecimalMark = 'point') =>
    formatMeasured(x * 1e-3, width * 1e-3, length.mm.unit, { mark });

  // JCGM 100, 7.2.2 writes 100.021 47 g with a standard uncertainty of 0.35 mg to the same place: 100.021 47(35) g.
  it('prints the example of JCGM 100, 7.2.2', () => {
    expect(formatMeasured(0.1000214712, 0.35e-6, kinds.mass.g.unit)).toBe('100.02147 ± 0.00035\u00a0g');
  });

  it.each([
    [0.75, 0.035, '0.750 ± 0.035\u00a0mm'],
    [0.75, 0.0996, '0.75 ± 0.10\u00a0mm'],
    [0.75, 0.0994, '0.750 ± 0.099\u00a0mm'],
    [12.3456, 0.996, '12.3 ± 1.0\u00a0mm'],
    [12.3456, 9.96, '12 ± 10\u00a0mm'],
    [1234.5, 12, '1235 ± 12\u00a0mm'],
    [1234.5, 120, '1230 ± 120\u00a0mm'],
    [1234.5, 1250, '1200 ± 1300\u00a0mm'],
    [-0.75, 0.035, '\u22120.750 ± 0.035\u00a0mm'],
    [0, 0.035, '0.000 ± 0.035\u00a0mm'],
    [-0.0001, 0.035, '0.000 ± 0.035\u00a0mm'],
    [-4, 120, '0 ± 120\u00a0mm'],
    [0.75, 0, '0.75\u00a0mm'],
  ])('%s ± %s mm', (x, width, text) => {
    expect(mm(x, width)).toBe(text);
  });

  it('prints a decimal comma', () => {
    expect(mm(0.75, 0.035, 'comma')).toBe('0,750 ± 0,035\u00a0mm');
    expect(formatNumber(-1.25, 6, 'comma')).toBe('\u22121,25');
  });

  it('brackets degrees, which stand close to the number', () => {
    expect(formatMeasured(-2.25 * (Math.PI / 180), 0.7 * (Math.PI / 180), angle.deg.unit)).toBe('(\u22122.25 ± 0.70)°');
    expect(formatValue(-2.25 * (Math.PI / 180), 0, angle.deg.unit)).toBe('\u22122.25°');
    expect(formatValue(-2.25 * (Math.PI / 180), 0, angle.deg.unit, { magnitude: true })).toBe('2.25°');
  });

  it('prints no half-width for the dust that rounding leaves, rather than ± 0.000000000000', () => {
    expect(mm(0.75, 1e-17)).toBe('0.75\u00a0mm');
    expect(formatExpanded(1e-20, length.mm.unit)).toBe('');
    expect(mm(0.75, 1.2e-11)).toBe('0.750000000000 ± 0.000000000012\u00a0mm');
  });

  it('prints the half-width alone, and nothing where there is none', () => {
    expect(formatExpanded(0.0996e-3, length.mm.unit)).toBe('0.10\u00a0mm');
    expect(formatExpanded(0, length.mm.unit)).toBe('');
  });

  it('prints temperatures on their scale but half-widths as differences', () => {
    expect(formatMeasured(293.15, 1, temperature.C.unit)).toBe('20.0 ± 1.0\u00a0°C');
    expect(formatMeasured(293.15, 1, temperature.F.unit)).toBe('68.0 ± 1.8\u00a0°F');
  });

  it('never prints a minus before zero, and always a true minus sign', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e7, max: 1e7, noNaN: true }),
        fc.double({ min: 0, max: 1e7, noNaN: true }),
        (x, width) => {
          for (const text of [
            formatMeasured(x, width, length.m.unit),
            formatValue(x, width, length.m.unit),
            formatNumber(x),
          ]) {
            expect(text).not.toMatch(/[-\u2212]0*(\.0*)?(?![.\d])(?!e)/);
            expect(text).not.toMatch(/^-/);
            expect(text).not.toMatch(/NaN|undefined/);
          }
        },
      ),
      { numRuns: times(2000, 200) },
    );
    expect(formatNumber(-0)).toBe('0');
    expect(formatValue(-0, 0, length.mm.unit)).toBe('0\u00a0mm');
    expect(formatValue(-0, 0.01, length.m.unit)).toBe('0.000\u00a0m');
  });
});
