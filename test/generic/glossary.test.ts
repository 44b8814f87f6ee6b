import { describe, expect, it } from 'vitest';
import { termsIn, type TermId } from '../../src/app/desk/glossary/find';
import { drawingOf } from '../../src/app/desk/glossary/drawings';
import say from '../../src/app/desk/glossary/words/en';
import { textsOf } from '../../src/app/sheet/texts-of';
import { calculators } from '../support/calculators';
import { textsOfCheck, textsOfMend } from '../../src/app/case/texts-of';
import { catalogue } from '../../src/diagnosis/catalogue';
import { otherNames } from '../support/one-name';
import { shownTexts } from '../support/words';

/** Terms of the trade that a person at the bench may not know: one that is said on a screen is explained. */
const TRADE = [
  ...[
    'lead',
    'pitch',
    'starts',
    'TIR',
    'B value',
    'detent torque',
    'land',
    'flow index',
    'wrap',
    'preload',
    'dead centre',
  ],
  ...[
    'second moment',
    'slenderness',
    'whirl',
    'heat break',
    'run-out',
    'NTC',
    'holding torque',
    'full step',
    'microstep',
  ],
  ...['consistency', 'shear rate', 'retraction', 'span', 'idler', 'spring rate', 'bending stiffness', 'eccentric bush'],
  ...['critical speed', 'buckling', 'core diameter', 'bulk modulus', 'backlash', 'lost motion', 'gantry', 'feeder'],
  ...[
    'limit switch',
    'thermal cut-off',
    'heater guard',
    'time constant',
    'emissivity',
    'dew point',
    'glass transition',
  ],
  ...['proof load', 'wire thread insert', 'V-block', 'tram', 'critical damping', 'Young’s modulus'],
];
const ids = Object.keys(say.terms) as TermId[];
const shown = shownTexts().filter(({ file }) => !file.includes('/glossary/'));
const onScreens = termsIn(shown.map(({ text }) => text));

describe('the glossary', () => {
  it.each(TRADE)('explains %s, which a screen says', (term) => {
    const word = new RegExp(`(?<![\\p{L}-])${term}`, 'iu');
    expect(
      shown.some(({ text }) => word.test(text)),
      'no screen says it: take it off this list',
    ).toBe(true);
    expect(termsIn([term]).length, 'add it to src/app/desk/glossary/words/en.ts').toBeGreaterThan(0);
  });

  it.each(ids)('%s stands on a screen, with one short line in plain words', (id) => {
    const { name, line } = say.terms[id];
    expect(termsIn([name])).toContain(id);
    expect(onScreens).toContain(id);
    expect(line).toMatch(/^[A-Z].*[.]$/);
    for (const sentence of line.split(/(?<=[.:]) /)) expect(sentence.split(' ').length, sentence).toBeLessThan(21);
    expect(otherNames(`${name} ${line}`)).toEqual([]);
  });

  it('draws what a picture says better, lead and pitch first', () => {
    for (const id of ['lead', 'pitch', 'tir', 'wrap', 'land', 'heatBreak', 'deadCentre'] as const)
      expect(drawingOf[id], id).toBeDefined();
  });

  it.each(calculators)('offers on the screen of %s every word that its fields, cautions and results use', (_, calc) => {
    const offered = termsIn(textsOf(calc));
    for (const { label, hint = '' } of Object.values(calc.inputs))
      for (const id of termsIn([label, hint])) expect(offered).toContain(id);
    for (const caution of calc.cautions) for (const id of termsIn([caution])) expect(offered).toContain(id);
  });

  /** All texts of an entry of the catalogue, but its ids. */
  const sentencesIn = (value: unknown, key = ''): readonly string[] => {
    if (typeof value === 'string')
      return ['id', 'kind', 'calculator', 'fact', 'tools', 'cause'].includes(key) ? [] : [value];
    if (Array.isArray(value)) return value.flatMap((one) => sentencesIn(one, key));
    return value && typeof value === 'object'
      ? Object.entries(value).flatMap(([name, one]) => sentencesIn(one, name))
      : [];
  };

  it('offers every word that a case uses of a check or a mend', () => {
    const { inspections, causes } = catalogue;
    const told = [
      ...inspections.map((one) => [one, textsOfCheck(one)] as const),
      ...causes.map((one) => [one, textsOfMend(one)] as const),
    ];
    for (const [one, texts] of told) expect(termsIn(texts), one.id).toEqual(termsIn(sentencesIn(one)));
    expect(told.filter(([, texts]) => termsIn(texts).length > 0).length).toBeGreaterThan(told.length / 3);
  });

  it('finds words whole, whatever their case, and not inside others', () => {
    expect(termsIn(['Screw lead'])).toEqual(['lead']);
    expect(termsIn(['Misleading leader'])).toEqual([]);
    expect(termsIn(['an island'])).toEqual([]);
  });
});
