import { describe, expect, it } from 'vitest';
import type { ChoiceSpec, InputSpec } from '../../src/engine/calculator';
import { places } from '../../src/engine/shared-places';
import { catalogue } from '../../src/diagnosis/catalogue';
import { checkNow, inCaseNow, optionNow, placesNow } from '../../src/reference/renamed';
import desk from '../../src/app/desk/words/en';
import { calculators } from '../support/calculators';
import { otherNames } from '../support/one-name';

/** An id as the words that it is made of. */
const asWords = (id: string): string => id.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/[-._]/g, ' ');

/** What is wrong with an id that a file, a link or a spreadsheet shows: another name for a thing that has one, or a former id. */
const wrongIn = (ids: readonly string[], now: (id: string) => string): readonly string[] =>
  ids.flatMap((id) => [
    ...otherNames(asWords(id)).map(
      ({ found, name }) => `${id}: “${found}” (say: ${name}), and put the old id into renamed.ts`,
    ),
    ...(now(id) === id ? [] : [`${id} is an old name, of ${now(id)}`]),
  ]);

describe('ids that reach a file or a link', () => {
  it.each(calculators)('%s: checks, options and places have the names that the screens say', (check, calc) => {
    expect(wrongIn([check], checkNow)).toEqual([]);
    const inputs = Object.values<InputSpec>(calc.inputs);
    const choices = Object.entries<ChoiceSpec>(calc.choices);
    const drawn = [...inputs, ...choices.map(([, choice]) => choice)].flatMap(({ from }) => from ?? []);
    expect(wrongIn(drawn, (place) => placesNow(place).join())).toEqual([]);
    for (const [symbol, { options }] of choices)
      expect(wrongIn(Object.keys(options), (option) => optionNow(check, symbol, option))).toEqual([]);
  });

  it('those of the machine’s card and of shared places do', () => {
    const all = [...Object.keys(places), ...Object.keys(desk.places)];
    expect(wrongIn(all, (place) => placesNow(place).join())).toEqual([]);
  });

  it('those of a case do', () => {
    const { symptoms, causes, facts, inspections } = catalogue;
    const all = [...symptoms, ...causes, ...facts, ...inspections].map(({ id }) => id);
    expect(wrongIn(all, inCaseNow)).toEqual([]);
    expect(
      wrongIn(
        inspections.flatMap(({ answers }) => answers.map(({ id }) => id)),
        (id) => id,
      ),
    ).toEqual([]);
  });
});
