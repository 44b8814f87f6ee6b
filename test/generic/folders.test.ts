import { existsSync, readdirSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate';
import { calculators, everyCalculator, metaOf, situation } from '../support/calculators';
import { onlyCalculator } from '../support/sweep';

const ROOT = 'src/calculators';
const folders = readdirSync(ROOT).filter((name) => statSync(`${ROOT}/${name}`).isDirectory());
const looked = folders.filter((name) => onlyCalculator === undefined || name === onlyCalculator);

describe('the folders', () => {
  it('are found, every one of them', () => {
    const found = everyCalculator.map(([id]) => id);
    const bare = folders.filter((folder) => !found.includes(folder));
    expect(bare, 'give each of these folders an index.ts that exports its calculator by default').toEqual([]);
    expect(folders.length, `${ROOT} is empty`).toBeGreaterThan(0);
  });

  it.each(looked)('%s has its entry for the list, its data and its drawing', (folder) => {
    for (const file of ['meta.ts', 'index.ts', 'figure.tsx']) {
      expect(existsSync(`${ROOT}/${folder}/${file}`), `add ${ROOT}/${folder}/${file}`).toBe(true);
    }
    const meta = metaOf[folder]!;
    const here = `${ROOT}/${folder}/meta.ts`;
    expect(meta.title.length, `${here}: give it a title`).toBeGreaterThan(3);
    expect(meta.question, `${here}: end the question with a question mark`).toMatch(/\?$/);
    expect(meta.sayings.length, `${here}: add at least two sayings, else nobody finds it`).toBeGreaterThan(1);
  });

  it.each(calculators)('%s has a title and a place in the list of its own', (id) => {
    const { title, order } = metaOf[id]!;
    const others = Object.entries(metaOf).filter(([other]) => other !== id);
    const orders = new Set(others.map(([, meta]) => meta.order));
    let free = order;
    while (orders.has(free)) free += 1;
    const sameOrder = others.filter(([, meta]) => meta.order === order).map(([other]) => other);
    expect(sameOrder, `${id} and ${sameOrder.join(', ')} have order ${order}; free next to it: ${free}`).toEqual([]);
    const sameTitle = others.filter(([, meta]) => meta.title === title).map(([other]) => other);
    expect(sameTitle, `${id} and ${sameTitle.join(', ')} are both called “${title}”: rename one`).toEqual([]);
  });
});

describe('choices from outside', () => {
  it.each(calculators)('%s takes the typical option for one that does not exist', (_id, calc) => {
    const odd = Object.fromEntries(Object.keys(calc.choices).map((name) => [name, 'constructor']));
    const typical = Object.fromEntries(Object.entries(calc.choices).map(([name, choice]) => [name, choice.typical]));
    expect(evaluate(calc, situation(calc, {}, odd)).choices).toEqual(typical);
    expect(evaluate(calc, situation(calc, {}, { nobody: 'knows' })).choices).toEqual(typical);
  });
});
