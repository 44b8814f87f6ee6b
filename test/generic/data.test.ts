import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applies, type Calculator, type InputSpec } from '../../src/engine/calculator';
import { symbolOf } from '../../src/engine/evaluate';
import { parseFormula } from '../../src/formula/parse';
import { toolById, toolsFor } from '../../src/reference/tools';
import {
  calculators,
  combinations,
  generator,
  inputsUnder,
  measureOf,
  metaOf,
  nearbyReadings,
  randomReadings,
} from '../support/calculators';

const ROOT = 'src/calculators';

/** Inputs that the model looks at, whatever the options. */
function askedByModel(calc: Calculator): ReadonlySet<string> {
  const asked = new Set<string>();
  const random = generator(5);
  for (const choices of calc.model ? combinations(calc) : []) {
    for (const read of [nearbyReadings(calc, choices, random), randomReadings(calc, choices, random)]) {
      const watched = new Proxy(read, {
        get: (target, name) => (asked.add(String(name)), Reflect.get(target, name) as unknown),
      });
      calc.model?.compute(watched, choices);
    }
  }
  return asked;
}

describe.each(calculators)('%s: its data', (id, calc) => {
  const inputs = Object.entries<InputSpec>(calc.inputs);
  const choiceNames = Object.keys(calc.choices);
  const results = new Set(calc.formulas.map(symbolOf));

  it('has typical values and spreads that lie in their ranges', () => {
    for (const [name, spec] of inputs) {
      const [low, high] = spec.range;
      expect(low, `${name}: write its range as [low, high]`).toBeLessThan(high);
      expect(spec.spread ?? 0, `${name}: a spread is a half-width, not negative`).toBeGreaterThanOrEqual(0);
      if (spec.typical !== undefined) {
        const where = `${name}: typical ${spec.typical} is not in its range ${low} to ${high}; change one of them`;
        expect(spec.typical >= low && spec.typical <= high, where).toBe(true);
      }
      if (spec.measure.kind.whole)
        expect(Number.isInteger(spec.typical ?? 0), `${name} is counted: make its typical value whole`).toBe(true);
      if (low < 0 && spec.measure.unit.offset === 0)
        expect(
          spec.signed,
          `${name} may be negative: add \`signed: { plus, minus }\`, two pictures, or \`signed: 'scale'\` where the sign is no direction`,
        ).toBeDefined();
      if (spec.signed) expect(low, `${name} is never negative: take \`signed\` away`).toBeLessThan(0);
      expect(spec.label, `${name}: give it a label, without blanks around it`).toMatch(/^\S.*\S$/);
    }
  });

  it('gives every option’s values to inputs that exist, in their ranges', () => {
    for (const [choiceName, choice] of Object.entries(calc.choices)) {
      expect(Object.keys(choice.options), `${choiceName}: its typical option is none of its options`).toContain(
        choice.typical,
      );
      expect(
        Object.keys(choice.options).length,
        `${choiceName}: one option is no choice; leave it out`,
      ).toBeGreaterThan(1);
      for (const [option, { set }] of Object.entries(choice.options)) {
        for (const [name, given] of Object.entries(set ?? {})) {
          const where = `${choiceName}: ${option} sets ${name}`;
          const spec = calc.inputs[name];
          expect(spec, `${where}, which is no input`).toBeDefined();
          const [value, half] = typeof given === 'number' ? [given, 0] : given;
          const [low, high] = spec!.range;
          expect(value >= low && value <= high, `${where} to ${value}, not in ${low} to ${high}`).toBe(true);
          expect(half, `${where}: a half-width is not negative`).toBeGreaterThanOrEqual(0);
        }
      }
    }
  });

  it('names tools that exist and read that kind of quantity', () => {
    for (const [name, spec] of inputs) {
      if (spec.tool === undefined) continue;
      expect(
        toolById(spec.tool),
        `${name}: there is no tool ${spec.tool}; of its kind there are: ${toolsFor(spec.measure.kind.id)
          .map((tool) => tool.id)
          .join(', ')} (src/reference/tools.ts)`,
      ).toBeDefined();
      const fit = toolsFor(spec.measure.kind.id).map((tool) => tool.id);
      expect(fit, `${name}: ${spec.tool} does not read ${spec.measure.kind.id}; take one of these`).toContain(
        spec.tool,
      );
    }
  });

  it('names choices and options that exist wherever something depends on them', () => {
    const all = [...inputs.map(([, spec]) => spec), ...Object.values(calc.choices), ...calc.formulas, ...calc.limits];
    for (const { when } of all) {
      for (const [name, wanted] of Object.entries(when ?? {})) {
        expect(choiceNames, `\`when\` names the choice ${name}, which is none of these`).toContain(name);
        const options = Object.keys(calc.choices[name]!.options);
        for (const option of [wanted].flat())
          expect(options, `\`when\` names ${name}: ${option}, which is none of its options`).toContain(option);
      }
    }
  });

  it('uses every input, in a formula or in the instruction', () => {
    const used = new Set<string>();
    for (const { text } of calc.formulas) for (const name of parseFormula(text).uses) used.add(name);
    for (const { of, max, min } of calc.limits)
      for (const name of [of, max, min]) if (name !== undefined) used.add(name);
    const sources = readdirSync(`${ROOT}/${id}`).filter((file) => file.endsWith('.ts'));
    const text = sources.map((file) => readFileSync(`${ROOT}/${id}/${file}`, 'utf8')).join('\n');
    for (const [, name] of text.matchAll(/\b(?:number|quantity|known|value)\('(\w+)'/g)) used.add(name!);
    for (const name of askedByModel(calc)) used.add(name);
    const idle = inputs.map(([name]) => name).filter((name) => !used.has(name));
    expect(idle, 'nothing uses these inputs: take them out, or use them').toEqual([]);
  });

  it('checks results that exist against limits that can be seen and edited, whatever the options', () => {
    for (const choices of combinations(calc)) {
      const names = [
        ...inputsUnder(calc, choices),
        ...calc.formulas.filter((f) => applies(f.when, choices)).map(symbolOf),
        ...Object.keys(calc.model?.outputs ?? {}),
      ];
      for (const limit of calc.limits.filter((one) => applies(one.when, choices))) {
        const under = Object.values(choices).join(', ');
        const where = `the limit of ${limit.of} under (${under})`;
        expect(names, `${where}: there is no such result; give the limit the same \`when\``).toContain(limit.of);
        const ends = [limit.max, limit.min].filter((name) => name !== undefined);
        expect(ends.length, `${where}: add \`max:\` or \`min:\``).toBeGreaterThan(0);
        for (const name of ends) {
          expect(names, `${where}: ${name} does not exist; give it the same \`when\``).toContain(name);
          const [ours, theirs] = [limit.of, name].map((one) => measureOf(calc, choices, one).kind);
          expect(theirs!.dimension, `${where}: a ${ours!.id} cannot be held against ${name}, a ${theirs!.id}`).toEqual(
            ours!.dimension,
          );
        }
      }
    }
  });

  it('words its verdicts where it judges by itself, and only there', () => {
    const worded = Object.keys(metaOf[id]?.verdicts ?? {}).sort();
    const wanted = calc.judge ? ['beyond', 'too close', 'within'] : [];
    expect(
      worded,
      calc.judge
        ? 'meta.ts: word all three verdicts under `verdicts:`'
        : 'meta.ts: leave out `verdicts:`, limits have their own words',
    ).toEqual(wanted);
    if (calc.judge) expect(calc.limits, '`judge` overrules every limit: leave out one or the other').toEqual([]);
  });

  it('has no symbol that is both input and result, and says how to prove the work', () => {
    const outputs = Object.keys(calc.model?.outputs ?? {});
    for (const name of [...inputs.map(([symbol]) => symbol), ...outputs])
      expect(results.has(name), `${name} is given, and a formula defines it: rename one`).toBe(false);
    for (const [name] of inputs) expect(outputs, `${name} is an input and an output of the model`).not.toContain(name);
    expect(calc.proof.length, 'say in `proof:` how to prove that the work was done').toBeGreaterThan(20);
  });

  it('warns of what can hurt, and leaves no line of words empty', () => {
    expect(calc.cautions.length, 'add `cautions:` what to switch off, unplug or keep fingers out of').toBeGreaterThan(
      0,
    );
    for (const [what, lines] of Object.entries({ cautions: calc.cautions, beware: calc.beware, proof: [calc.proof] }))
      for (const line of lines)
        expect(line, `\`${what}:\` holds a line that is no sentence`).toMatch(/^\S.{10,}[.!?)]$/s);
  });
});
