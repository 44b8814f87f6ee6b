import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { InputSpec } from '../../src/engine/calculator';
import { allKinds } from '../../src/quantity/all-kinds';
import * as kinds from '../../src/quantity/kinds';
import { parseQuantity, type DecimalMark } from '../../src/quantity/parse';
import { fromSi, type Kind, type Measure, type Unit } from '../../src/quantity/unit';
import { anyText } from '../support/any-text';
import { everyCalculator } from '../support/calculators';
import { times } from '../support/sweep';

const { length, resistance, temperature, temperatureDifference, angle, time, voltage } = kinds;
const { count } = kinds;

function si(text: string, kind: Kind, unit: Unit, mark: DecimalMark = 'point'): number {
  const read = parseQuantity(text, kind, unit, mark);
  if (!read.ok) throw new Error(`${text} in ${kind.id} ${unit.id}: ${read.reason}`);
  return read.value;
}

const of = (text: string, { kind, unit }: Measure, mark: DecimalMark = 'point'): number => si(text, kind, unit, mark);

describe('ways to write a quantity', () => {
  it.each([
    // The inch is 25.4 mm exactly (NIST SP 811, B.8).
    ['1-1/2 in', length.mm, 0.0381],
    ['1 1/2 in', length.mm, 0.0381],
    ['1\u20131/2 in', length.mm, 0.0381],
    ['1-½″', length.mm, 0.0381],
    ['-1-1/2 in', length.mm, -0.0381],
    ['⅓ in', length.mm, 0.0254 / 3],
    ["5''", length.mm, 0.127],
    ['5"', length.mm, 0.127],
    ['5′′', length.mm, 0.127],
    ["5'", length.mm, 1.524],
    ['５．２５', length.mm, 5.25e-3],
    ['１／２ ｉｎ', length.mm, 12.7e-3],
    ['٤٫٥', length.mm, 4.5e-3],
    ['𝟜𝟚', length.mm, 42e-3],
    ['१२', length.mm, 12e-3],
    // IEC 60062: a letter for mark and unit.
    ['4k7', resistance.ohm, 4700],
    ['4K7', resistance.kohm, 4700],
    ['4R7', resistance.kohm, 4.7],
    ['R47', resistance.ohm, 0.47],
    ['1M', resistance.ohm, 1e6],
    ['2M2', resistance.kohm, 2.2e6],
    ['10k', resistance.ohm, 1e4],
    ['100R', resistance.kohm, 100],
    ['4k7 Ω', resistance.ohm, 4700],
    ['1 MΩ', resistance.ohm, 1e6],
    ['3V3', voltage.V, 3.3],
    ['1:30', time.s, 90],
    ['1:30', time.min, 90],
    ['0:05,5', time.s, 5.5],
    ['1:02:03', time.h, 3723],
    ['1:30 h', time.h, 5400],
    ['90:00', time.s, 5400],
    ['25°', angle.rad, (25 * Math.PI) / 180],
    ['25°', temperature.C, 298.15],
    ['77°', temperature.F, 298.15],
    ['25°', temperature.K, 298.15],
    ['25º', temperature.C, 298.15],
    ['25℃', temperature.K, 298.15],
    ['5°', temperatureDifference.K, 5],
    ['9°', temperatureDifference.F, 5],
  ])('%s is understood', (text, measure, value) => {
    expect(of(text, measure)).toBeCloseTo(value, 9);
  });

  it.each([
    ['1m', resistance.ohm],
    ['1 mΩ', resistance.ohm],
    ['4m7', resistance.ohm],
    ['4x7', resistance.ohm],
    ['4k7', length.mm],
    ['1:60', time.s],
    ['1:2:3:4', time.s],
    ['1:', time.s],
    ['1:30 s', time.s],
    ['1:30', length.mm],
    ['1/2-1', length.mm],
    ['25°', length.mm],
  ])('%s is refused where it means nothing', (text, measure) => {
    const read = parseQuantity(text, measure.kind, measure.unit);
    expect(read.ok ? read.value : 'refused').toBe('refused');
  });
});

describe('what may mean two things is asked about', () => {
  const asked = (text: string, { kind, unit }: Measure, mark: DecimalMark = 'point'): string => {
    const read = parseQuantity(text, kind, unit, mark);
    if (read.ok) throw new Error(`“${text}” was read as ${read.value}`);
    return read.reason;
  };

  it('20 ± 1 K on a scale: which scale is the 20 of?', () => {
    for (const text of ['20 +- 1 K', '20 ± 1K', '20±1 k'])
      expect(asked(text, temperature.C)).toMatch(/20 °C ± 1 ?K, or 20 K ± 1 ?K/i);
    expect(asked('68 ± 1 K', temperature.F)).toContain('68 °F');
    // With its unit behind it, or in a difference, nothing is open.
    expect(parseQuantity('20 °C ± 1 K', temperature.C.kind, temperature.C.unit)).toMatchObject({ ok: true, half: 1 });
    expect(parseQuantity('20° ± 1 K', temperature.C.kind, temperature.C.unit)).toMatchObject({ ok: true, half: 1 });
    expect(of('293.15 K ± 1 K', temperature.C)).toBeCloseTo(293.15, 9);
    expect(of('20 ± 1 K', temperatureDifference.K)).toBe(20);
  });

  it('1:30 in a field of hours: hours or minutes?', () => {
    expect(asked('1:30', time.h)).toContain('1:30 h or 1:30 min');
    expect(of('1:30 min', time.h)).toBe(90);
  });

  it('thousands as the other half of the world writes them', () => {
    expect(asked('1,500', length.mm)).toContain('1.500 or 1500');
    expect(asked('1.500', length.mm, 'comma')).toContain('1,500 or 1500');
    expect(asked('2 ± 1.500', length.mm, 'comma')).toContain('1,500 or 1500');
  });
});

/** Digits of scripts that a phone's keyboard may give. */
const SCRIPTS = ['\uff10', '\u0660', '\u06f0', '\u0966', '\u09e6', '\u0e50', '\u{1d7ce}', '\u{1d7d8}', '\u{1d7f6}'];
const inScript = (text: string, zero: string): string =>
  text.replace(/\d/g, (digit) => String.fromCodePoint((zero.codePointAt(0) ?? 0) + Number(digit)));

/** How a value of a kind may be written, and what it then is, SI; drawn from whole numbers so that each form can be checked by hand. */
interface Form {
  readonly name: string;
  readonly kinds: readonly string[];
  readonly write: (a: number, b: number, unit: Unit) => readonly [text: string, si: number];
}

const two = (n: number): string => String(n).padStart(2, '0');
const every = allKinds.map((kind) => kind.id);
const measured = allKinds.filter((kind) => !kind.whole).map((kind) => kind.id);
const at = (x: number, unit: Unit): number => x * unit.factor + unit.offset;

const forms: readonly Form[] = [
  ...SCRIPTS.map((zero, i): Form => ({
    name: `script ${i}`,
    kinds: every,
    write: (a, _, unit) => [inScript(String(a), zero), at(a, unit)],
  })),
  { name: 'mixed, hyphen', kinds: measured, write: (a, b, unit) => [`${a}-${b}/64`, at(a + b / 64, unit)] },
  { name: 'mixed, space', kinds: measured, write: (a, b, unit) => [`${a} ${b}/64`, at(a + b / 64, unit)] },
  { name: 'inches', kinds: ['length'], write: (a, b) => [`${a}-${b}/64''`, 0.0254 * (a + b / 64)] },
  { name: 'kilohms', kinds: ['resistance'], write: (a, b) => [`${a}k${two(b)}`, 1e3 * (a + b / 100)] },
  { name: 'ohms', kinds: ['resistance'], write: (a, b) => [`${a}R${two(b)}`, a + b / 100] },
  { name: 'megohms', kinds: ['resistance'], write: (a, b) => [`${a}M${two(b)}`, 1e6 * (a + b / 100)] },
  { name: 'a mega behind', kinds: ['resistance'], write: (a) => [`${a}M`, 1e6 * a] },
  {
    name: 'h:min:s',
    kinds: ['time'],
    write: (a, b) => [`${a}:${two(b % 60)}:${two(a % 60)}`, a * 3600 + (b % 60) * 60 + (a % 60)],
  },
  { name: 'min:s', kinds: ['time'], write: (a, b) => [`${a}:${two(b % 60)} min`, a * 60 + (b % 60)] },
  { name: 'degrees of an angle', kinds: ['angle'], write: (a) => [`${a}°`, (a * Math.PI) / 180] },
  {
    name: 'degrees of a scale',
    kinds: ['temperature'],
    write: (a, _, unit) => [`${a}°`, unit.id === 'F' ? ((a + 459.67) * 5) / 9 : a + 273.15],
  },
  {
    name: 'degrees between',
    kinds: ['temperature difference'],
    write: (a, _, unit) => [`${a}°`, unit.id === 'F' ? (a * 5) / 9 : a],
  },
];

describe('every form in every field of its kind', () => {
  const fields = [
    ...new Map(
      everyCalculator.flatMap(([, calc]) =>
        Object.values<InputSpec>(calc.inputs).map(
          ({ measure }) => [`${measure.kind.id}.${measure.unit.id}`, measure.kind] as const,
        ),
      ),
    ).values(),
    count.one.kind,
  ];

  it.each(forms)('$name', ({ kinds: ids, write }) => {
    const kind = fc.constantFrom(...fields.filter(({ id }) => ids.includes(id)));
    const field = kind.chain((k) => fc.constantFrom(...k.units.map((unit) => [k, unit] as const)));
    const digits = fc.tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 63 }));
    fc.assert(
      fc.property(field, digits, fc.constantFrom<DecimalMark>('point', 'comma'), ([k, unit], [a, b], mark) => {
        const [text, value] = write(a, b, unit);
        const read = si(text, k, unit, mark);
        expect(Math.abs(read - value), text).toBeLessThanOrEqual(1e-9 * Math.abs(value));
        // With a half-width behind it the value is the same.
        const doubted = parseQuantity(`${text} ± 0`, k, unit, mark);
        expect(doubted.ok ? doubted.value : doubted.reason, text).toBe(read);
      }),
      { numRuns: times(200, 50) },
    );
  });

  it('gives a number or a sentence for anything made of their signs', () => {
    const piece = fc.constantFrom(
      '1',
      '３',
      '٣',
      ':',
      '-',
      '/',
      ' ',
      'k',
      'M',
      'R',
      '°',
      "'",
      '"',
      '½',
      '±',
      '.',
      ',',
      'K',
      'in',
      'h',
      'min',
      '%',
      '1e308',
    );
    const text = fc.oneof(
      fc.array(piece, { maxLength: 12 }).map((parts) => parts.join('')),
      anyText(12),
    );
    fc.assert(
      fc.property(
        text,
        fc.constantFrom(...allKinds),
        fc.constantFrom<DecimalMark>('point', 'comma'),
        (typed, kind, mark) => {
          for (const unit of kind.units) {
            const read = parseQuantity(typed, kind, unit, mark);
            if (!read.ok) expect(read.reason).not.toMatch(/NaN|undefined|null|Infinity/);
            else expect([fromSi(read.value, unit), read.half ?? 0].every(Number.isFinite), typed).toBe(true);
          }
        },
      ),
      { numRuns: times(5000, 800) },
    );
  });
});
