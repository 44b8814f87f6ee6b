import fc from 'fast-check';
import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import type { Calculator, Choices } from '../../../src/engine/calculator';
import type { KeptValue } from '../../../src/engine/entry';
import { evaluate, type Situation } from '../../../src/engine/evaluate';
import { decodeLink, encodeLink, linkAddress } from '../../../src/engine/link';
import { LIMITS } from '../../../src/machine/limits';
import type { DecimalMark } from '../../../src/quantity/parse';
import { toSi, unitById } from '../../../src/quantity/unit';
import { AS_MARKED, toolsFor } from '../../../src/reference/tools';
import { calculators, entriesFrom, situation } from '../../support/calculators';
import { opened, pictureOf, queryOf, told } from '../../support/link';
import { anyText } from '../../support/any-text';
import { some, times } from '../../support/sweep';

/** A number of up to five digits in an input's range, in its declared unit. */
const inRange = (range: readonly [number, number], whole: boolean) =>
  fc.double({ min: 0, max: 1, noNaN: true }).map((share) => {
    const value = range[0] + share * (range[1] - range[0]);
    return whole ? Math.round(value) : Number(value.toPrecision(5));
  });

function entryFor(one: Calculator, symbol: string, mark: DecimalMark) {
  const { measure, range } = one.inputs[symbol]!;
  const { kind, unit } = measure;
  const tools = ['', AS_MARKED, ...toolsFor(kind.id).map((tool) => tool.id)];
  const half = fc.constantFrom('', ' ± 0', ' +- 0.01', '±1e-3', ' +/- 2 %', ' ± 1/64');
  return fc
    .tuple(
      inRange(range, kind.whole),
      kind.whole ? fc.constant('') : half,
      fc.boolean(),
      fc.constantFrom(...kind.units),
    )
    .chain(([value, plusMinus, spelt, other]) => {
      const name = spelt && unit.label !== '' ? ` ${unit.label}` : '';
      const text = `${value}${name}${plusMinus}`;
      return fc.record({
        // Where the text names no unit the field's is meant: then it must be the range's.
        unit: fc.constant(name === '' ? unit.id : other.id),
        text: fc.constant(mark === 'comma' ? text.replace('.', ',') : text),
        tool: fc.constantFrom(...(kind.whole ? ['', AS_MARKED] : tools)),
      });
    });
}

function keptFor(one: Calculator, symbol: string): fc.Arbitrary<KeptValue> {
  const { measure, range } = one.inputs[symbol]!;
  const { kind, unit } = measure;
  const tools = ['', ...toolsFor(kind.id).map((tool) => tool.id)];
  return fc
    .tuple(inRange(range, kind.whole), fc.constantFrom(0, 0.003, 0.05), fc.constantFrom('', ...tools), fc.boolean())
    .map(([value, half, tool, marked]) => ({
      value: toSi(value, unit),
      half: kind.whole ? 0 : half * unit.factor,
      unit: unit.id,
      origin: marked ? 'nameplate' : 'measured',
      tool: marked ? AS_MARKED : tool,
      at: '2025-11-25T10:00:00.000Z',
    }));
}

function situationFor(one: Calculator): fc.Arbitrary<Situation> {
  const symbols = Object.keys(one.inputs);
  const places = symbols.flatMap((symbol) => {
    const from = one.inputs[symbol]!.from;
    return from === undefined ? [] : [[from, symbol] as const];
  });
  const choices = fc.record(
    Object.fromEntries(
      Object.entries(one.choices).map(([name, spec]) => [name, fc.constantFrom(...Object.keys(spec.options))]),
    ),
    { requiredKeys: [] },
  ) as fc.Arbitrary<Choices>;
  return fc.constantFrom<DecimalMark>('point', 'comma').chain((mark) =>
    fc.record({
      mark: fc.constant(mark),
      choices,
      entries: fc.record(Object.fromEntries(symbols.map((s) => [s, entryFor(one, s, mark)])), { requiredKeys: [] }),
      kept: fc.record(Object.fromEntries(places.map(([place, s]) => [place, keptFor(one, s)])), { requiredKeys: [] }),
    }),
  );
}

const RUNS = { numRuns: times(40, 3), seed: 20251125 } as const;

describe.each(some(calculators, 6))('%s', (_, one) => {
  it('reads the same on a phone without the machine, whatever was typed, kept and picked', () => {
    let compared = 0;
    // The more entries, the more often one of them is no number and the case tells nothing.
    const numRuns = Math.max(RUNS.numRuns, times(2, 0.04) * Object.keys(one.inputs).length);
    fc.assert(
      fc.property(situationFor(one), fc.constantFrom<DecimalMark>('point', 'comma'), (now, mark) => {
        const evaluation = evaluate(one, now);
        const encoded = encodeLink(one, evaluation, now);
        const usable = Object.values(evaluation.inputs).every((state) => state.ok || state.blank);
        expect(encoded.ok).toBe(usable);
        if (!encoded.ok) return;
        compared += 1;
        const there = opened(one, encoded.query, mark);
        const again = opened(one, encoded.query, now.mark);
        const read = evaluate(one, again);
        expect(told(read)).toEqual(told(evaluation));
        // Under the other mark the same numbers; only how they are printed may differ.
        const readThere = evaluate(one, there);
        expect(told(readThere).states).toEqual(told(evaluation).states);
        expect(encodeLink(one, read, again)).toEqual(encodeLink(one, readThere, there));
      }),
      { ...RUNS, numRuns: Math.ceil(numRuns) },
    );
    expect(compared, 'too few of the entries drawn could be used: look at the ranges').toBeGreaterThan(
      times(RUNS.numRuns / 3, 0),
    );
  });

  it('takes over or names what a hostile link holds, and never throws', () => {
    const names = [...Object.keys(one.inputs), ...Object.keys(one.choices), '__proto__', 'constructor', 'v', '%', ''];
    const units = Object.values(one.inputs).map((spec) => spec.measure.unit.id);
    const field = fc.oneof(
      anyText(150),
      fc.constantFrom(
        '1',
        '0~1',
        '1e999',
        '9'.repeat(400),
        '<script>',
        '%00',
        '%',
        'toString',
        ...units,
        'caliper',
        AS_MARKED,
      ),
    );
    const part = fc
      .tuple(fc.constantFrom(...names), fc.array(field, { maxLength: 4 }))
      .map(([name, fields]) => `${name}=${fields.join(';')}`);
    fc.assert(
      fc.property(
        fc.constantFrom('v=1&', '?v=1&', ''),
        fc.array(fc.oneof(part, field), { maxLength: 12 }),
        (start, parts) => {
          const decoded = decodeLink(one, start + parts.join('&'));
          if (!decoded.ok) {
            expect(decoded.reason).toMatch(/\.$/);
            return;
          }
          const { entries, choices } = decoded.values;
          for (const sentence of decoded.leftOut) expect(sentence).not.toMatch(/\p{C}/u);
          for (const [symbol, { text, unit }] of Object.entries(entries)) {
            expect(Object.keys(one.inputs)).toContain(symbol);
            expect(unitById(one.inputs[symbol]!.measure.kind, unit)).toBeDefined();
            expect(text.length).toBeLessThanOrEqual(LIMITS.typed + 10);
          }
          for (const [name, option] of Object.entries(choices)) {
            expect(Object.keys(one.choices[name]!.options)).toContain(option);
          }
          if (Object.keys(entries).length > 0) evaluate(one, { entries, choices, kept: {}, mark: 'point' });
        },
      ),
      { ...RUNS, numRuns: times(200, 2) },
    );
  });

  it.each(some(one.examples, 9))('$title comes through whole', ({ given, choices }) => {
    const now = situation(one, given, choices);
    const query = queryOf(one, now);
    expect(told(evaluate(one, opened(one, query, 'point')))).toEqual(told(evaluate(one, now)));
  });
});

// Read back by jsqr, a decoder that shares nothing with the encoder.
describe('the QR code', () => {
  it.each(calculators.slice(-times(calculators.length, 1)))(
    'of a link to %s with every input typed reads back to it',
    (id, one) => {
      const given = Object.fromEntries(
        Object.entries(one.inputs).map(([symbol, { range, measure }]) => {
          const middle = (range[0] + range[1]) / 2;
          return [symbol, String(measure.kind.whole ? Math.round(middle) : middle)];
        }),
      );
      const now: Situation = { entries: entriesFrom(one, given), choices: {}, kept: {}, mark: 'point' };
      // jsqr overlooks a dense code here and there that zbar (Debian's zbar-tools) reads: then it is shown the same link from another host.
      const links = [
        'bench/',
        'b/',
        'a/longer/address/',
        'a/longer/address/of/the/workshop/by/the/window/',
        'x'.repeat(90),
      ]
        .map((path) => `https://trammel.example/${path}`)
        .map((base) => linkAddress(base, id, queryOf(one, now)));
      const isRead = (link: string): boolean => {
        const { data, side } = pictureOf(link);
        const found = jsQR(data, side, side)?.data;
        // Overlooked is one thing; a code that says something else is never right.
        if (found !== undefined) expect(found).toBe(link);
        return found !== undefined;
      };
      expect(links.some(isRead), links[0]).toBe(true);
    },
  );
});
