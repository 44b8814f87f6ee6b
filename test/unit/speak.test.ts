import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allKinds, kindById } from '../../src/quantity/all-kinds';
import { formatMeasured, formatValue } from '../../src/quantity/format';
import * as kinds from '../../src/quantity/kinds';
import { speakMeasured, speakNumber, speakValue } from '../../src/quantity/speak';
import { toSi, type Unit } from '../../src/quantity/unit';

const { angle, count, length, ratio, slope, temperature } = kinds;

const allUnits = allKinds.flatMap((kind) => kind.units.map((unit) => [`${kind.id} in ${unit.id}`, unit] as const));

fc.configureGlobal({ seed: 20_260_401, endOnFailure: true });

/** A reader of spoken English numbers, with nothing of the code's: words to the digits that were printed. */
const SMALL: Readonly<Record<string, number>> = Object.fromEntries(
  [
    'zero',
    ...['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'],
    ...['thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'],
  ].map((word, i) => [word, i]),
);
const TENS: Readonly<Record<string, number>> = Object.fromEntries(
  ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'].map((word, i) => [word, 20 + 10 * i]),
);

const digit = (word: string): string => {
  const found = SMALL[word];
  if (found === undefined || found > 9) throw new Error(`“${word}” is no digit`);
  return String(found);
};

function heard(spoken: string): string {
  if (spoken.startsWith('minus ')) return `-${heard(spoken.slice(6))}`;
  const [mantissa, exponent] = spoken.split(' times ten to the ');
  if (exponent !== undefined) return `${heard(mantissa!)}e${heard(exponent)}`;
  const [whole, digits] = mantissa!.split(' point ');
  if (digits !== undefined) return `${heard(whole!)}.${digits.split(' ').map(digit).join('')}`;
  const words = whole!.split(/[ -]/).filter((word) => word !== 'and');
  if (words.length > 6 && words.every((word) => word in SMALL)) return words.map(digit).join('');
  let [sum, part] = [0, 0];
  for (const word of words) {
    if (word === 'hundred') part *= 100;
    else if (word === 'thousand' || word === 'million') {
      sum += part * (word === 'thousand' ? 1000 : 1e6);
      part = 0;
    } else part += SMALL[word] ?? TENS[word] ?? NaN;
  }
  return String(sum + part);
}

const plain = (printed: string) => printed.replaceAll('−', '-').replace('e+', 'e');

describe('a number said aloud', () => {
  it.each([
    ['2.3', 'two point three'],
    ['−0.05', 'minus zero point zero five'],
    ['0', 'zero'],
    ['1', 'one'],
    ['13', 'thirteen'],
    ['20', 'twenty'],
    ['42', 'forty-two'],
    ['100', 'one hundred'],
    ['101', 'one hundred and one'],
    ['235.40', 'two hundred and thirty-five point four zero'],
    ['1005', 'one thousand and five'],
    ['1500', 'one thousand five hundred'],
    ['73118', 'seventy-three thousand one hundred and eighteen'],
    ['999999', 'nine hundred and ninety-nine thousand nine hundred and ninety-nine'],
    ['1000000', 'one million'],
    ['2500000', 'two five zero zero zero zero zero'],
    ['1.5e-7', 'one point five times ten to the minus seven'],
    ['3e+21', 'three times ten to the twenty-one'],
  ])('%s is “%s”', (printed, spoken) => {
    expect(speakNumber(printed)).toBe(spoken);
    expect(heard(spoken)).toBe(plain(printed));
  });

  it('is heard back as every whole number up to a thousand, and as whole numbers up to ten million', () => {
    for (let n = 0; n <= 1000; n++) expect(heard(speakNumber(String(n)))).toBe(String(n));
    fc.assert(fc.property(fc.integer({ min: 0, max: 10_000_000 }), (n) => heard(speakNumber(String(n))) === String(n)));
  });
});

describe('a value said aloud', () => {
  it.each([
    [2.3, 0.14, angle.deg.unit, 'two point three zero degrees'],
    [2.34, 1.2, angle.deg.unit, 'two point three degrees'],
    [1, 0, angle.deg.unit, 'one degree'],
    [-1, 0, angle.deg.unit, 'minus one degree'],
    [1, 0.2, angle.deg.unit, 'one point zero zero degrees'],
    [0.02, 0, slope.mm_m.unit, 'zero point zero two millimetres a metre'],
    [215, 0, temperature.C.unit, 'two hundred and fifteen degrees Celsius'],
    [20, 0, count.one.unit, 'twenty'],
    [12.5, 0, ratio.percent.unit, 'twelve point five per cent'],
    [1, 0, length.thou.unit, 'one thousandth of an inch'],
  ])('%f, ± %f', (shown, width, unit, spoken) => {
    expect(speakValue(toSi(shown, unit), width * unit.factor, unit)).toBe(spoken);
  });

  it('leaves out the sign where the sentence says the direction', () => {
    const { unit } = angle.deg;
    expect(speakValue(toSi(-2.3, unit), 0, unit, { magnitude: true })).toBe('two point three degrees');
  });

  it('says an interval', () => {
    const { unit } = length.mm;
    expect(speakMeasured(0.75e-3, 0.035e-3, unit)).toBe(
      'zero point seven five zero plus or minus zero point zero three five millimetres',
    );
    expect(speakMeasured(0.75e-3, 0, unit)).toBe('zero point seven five millimetres');
  });

  it('has the digits that are printed, whatever value and width', () => {
    const { unit } = length.mm;
    const some = fc.double({ min: -2, max: 2, noNaN: true });
    const width = fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 1, noNaN: true }));
    fc.assert(
      fc.property(some, width, (si, expanded) => {
        const spoken = speakValue(si, expanded, unit).replace(/ millimetres?$/, '');
        expect(heard(spoken)).toBe(plain(formatValue(si, expanded, unit).replace(/\u00a0mm$/, '')));
        const parts = speakMeasured(si, expanded, unit)
          .replace(/ millimetres?$/, '')
          .split(' plus or minus ');
        const printed = formatMeasured(si, expanded, unit)
          .replace(/\u00a0mm$/, '')
          .split(' ± ');
        expect(parts.map(heard)).toEqual(printed.map(plain));
      }),
    );
  });
});

describe('every unit', () => {
  const name = (unit: Unit, shown: number) =>
    speakValue(toSi(shown, unit), 0, unit)
      .replace(shown === 1 ? 'one' : 'seven', '')
      .trim();

  it.each(allUnits)('%s is said in words, without its sign', (_, unit) => {
    for (const spoken of [name(unit, 1), name(unit, 7)]) {
      if (unit.label === '') expect(spoken).toBe('');
      else expect(spoken).toMatch(/^[A-Za-z]{2,}[A-Za-z -]* ?[A-Za-z]*$/);
    }
  });

  it('is told apart from every other of its kind', () => {
    for (const kind of allKinds) {
      for (const shown of [1, 7]) {
        const names = kind.units.map((unit) => name(unit, shown));
        expect(new Set(names).size).toBe(names.length);
      }
    }
  });

  it('belongs to a kind that is found by its id', () => {
    for (const kind of allKinds) {
      expect(kindById(kind.id)).toBe(kind);
      for (const unit of kind.units) expect(unit.kind).toBe(kind.id);
    }
    expect(kindById('constructor')).toBeUndefined();
  });
});
