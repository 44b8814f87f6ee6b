import { describe, expect, it } from 'vitest';
import { toolOptions } from '../../../src/app/sheet/tool-options';
import type { Calculator, Choices, InputSpec } from '../../../src/engine/calculator';
import { readEntry, type Entry, type InputUsed } from '../../../src/engine/entry';
import { evaluate, type Evaluation } from '../../../src/engine/evaluate';
import { doubtWith, featuresOf, toolsOf, usualTool } from '../../../src/engine/tooled';
import { toTyped } from '../../../src/quantity/parse';
import { fromSi, toSi } from '../../../src/quantity/unit';
import { AS_MARKED, halfWidth, reaches, readsFeature, toolById, type Tool } from '../../../src/reference/tools';
import { calculators, combinations, inputsUnder } from '../../support/calculators';
import { draws } from '../../support/second';
import { times } from '../../support/sweep';

const COUNT = times(60, 2);
/** Printed so finely that nothing of the value is lost. */
const DIGITS = 15;

/** Every input under each of the options that matter, once for each set of features it can have. */
function fields(calc: Calculator): (readonly [symbol: string, spec: InputSpec, choices: Choices])[] {
  const seen = new Set<string>();
  return combinations(calc).flatMap((choices) =>
    inputsUnder(calc, choices).flatMap((symbol) => {
      const spec = calc.inputs[symbol]!;
      const key = `${symbol} ${featuresOf(spec, choices)?.join() ?? ''}`;
      if (seen.has(key)) return [];
      seen.add(key);
      return [[symbol, spec, choices] as const];
    }),
  );
}

/** What is typed for a value, with its sign where one of two pictures is picked. */
function typedText(spec: InputSpec, si: number): string {
  const text = toTyped(si, spec.measure.unit, 'point', DIGITS);
  return typeof spec.signed === 'object' && si >= 0 ? `+${text}` : text;
}

const enter = (spec: InputSpec, text: string, tool: string): Entry => ({ text, unit: spec.measure.unit.id, tool });

function used(spec: InputSpec, entry: Entry, calc: Calculator, symbol: string, choices: Choices): InputUsed {
  const state = readEntry(symbol, spec, entry, undefined, calc.choices, choices, 'point');
  if (!state.ok) throw new Error(`${symbol}: ${state.reason}`);
  return state;
}

/** The limit or whole number that is open, the first of them; empty where none is. */
function firstOpen({ verdict, outcomes }: Evaluation): string {
  const limit = verdict.checks.findIndex(({ state }) => state === 'too close');
  if (limit >= 0) return `limit ${limit}`;
  const whole = Object.entries(outcomes).find(
    ([name, one]) => !one.ok && one.failure.kind === 'undetermined' && one.failure.symbol === name,
  );
  return whole ? `whole ${whole[0]}` : '';
}

function isOpen({ verdict, outcomes }: Evaluation, question: string): boolean {
  const [what, name = ''] = question.split(' ');
  return what === 'limit' ? verdict.checks[Number(name)]?.state === 'too close' : outcomes[name]?.ok !== true;
}

describe.each(calculators)('%s: its tools', (id, calc) => {
  const all = fields(calc);

  it('read the feature that the input is, the usual one and all that are offered', () => {
    for (const [symbol, spec, choices] of all) {
      const features = featuresOf(spec, choices);
      const usual = usualTool(spec, choices);
      const where = `${id} ${symbol} (${features?.join(' or ')})`;
      if (spec.tool !== undefined && (typeof spec.feature !== 'object' || !('choice' in spec.feature)))
        expect(usual?.id, `${where}: name a tool that reads it, or another feature`).toBe(spec.tool);
      if (spec.tool !== undefined) expect(usual, `${where}: no tool on the list reads it`).toBeDefined();
      for (const { id: offered } of toolOptions(spec, choices, '')) {
        const tool = toolById(offered);
        if (!tool) expect(['', AS_MARKED]).toContain(offered);
        else if (features) expect(readsFeature(tool, features), `${where}: ${offered} is offered`).toBe(true);
      }
    }
  });

  it('reach the values that are usual and those of the worked examples', () => {
    const reached = (symbol: string, tool: Tool, si: number): void =>
      expect(reaches(tool, si), `${id} ${symbol}: the ${tool.name} does not reach ${si} (SI)`).toBe(true);
    for (const [symbol, spec, choices] of all) {
      const tool = usualTool(spec, choices);
      if (tool && spec.typical !== undefined && spec.typical !== 0)
        reached(symbol, tool, toSi(spec.typical, spec.measure.unit));
    }
    for (const { given, choices } of calc.examples)
      for (const [symbol, text] of Object.entries(given)) {
        const spec = calc.inputs[symbol]!;
        const tool = usualTool(spec, choices ?? {});
        if (text === undefined || !tool || /±|\+-/.test(text)) continue;
        const signed = typeof spec.signed === 'object' && /^[\d.]/.test(text) ? `+${text}` : text;
        const state = used(spec, enter(spec, signed, ''), calc, symbol, choices ?? {});
        if (state.value !== 0) reached(symbol, tool, state.value);
      }
  });

  it('are doubted beside the field where they cannot have read the value, and there alone', () => {
    for (const [symbol, spec, choices] of all) {
      const [low, high] = spec.range.map((end) => toSi(end, spec.measure.unit)) as [number, number];
      for (const tool of toolsOf(spec, choices))
        for (const share of [0, 0.01, 0.2, 0.5, 1]) {
          const value = low + share * (high - low);
          const state = used(spec, enter(spec, typedText(spec, value), tool.id), calc, symbol, choices);
          const said = `${id} ${symbol}: ${fromSi(value, spec.measure.unit)} by ${tool.id}`;
          if (reaches(tool, state.value)) expect(state.beyondTool, said).toBeUndefined();
          else expect(state.beyondTool, said).toMatch(/^A .{10,}\.$/s);
          const sure = used(spec, enter(spec, `${typedText(spec, value)} ± 0`, tool.id), calc, symbol, choices);
          expect(sure.beyondTool, `${said}, its ± typed`).toBeUndefined();
        }
    }
  });

  it('give a difference of two readings the doubt of both', () => {
    for (const [symbol, spec, choices] of all)
      for (const tool of toolsOf(spec, choices)) {
        const middle = spec.typical ?? (spec.range[0] + spec.range[1]) / 2;
        const value = toSi(middle, spec.measure.unit);
        const state = used(spec, enter(spec, typedText(spec, value), tool.id), calc, symbol, choices);
        const one = halfWidth(tool, state.value, featuresOf(spec, choices));
        expect(state.half, `${id} ${symbol} by ${tool.id}`).toBeCloseTo(spec.difference ? 2 * one : one, 12);
        expect(state.shape, `${id} ${symbol}`).toBe(spec.difference ? 'triangular' : undefined);
      }
  });

  it('settle what they are said to settle, and where none does the half-width that would', () => {
    for (const situation of draws(calc, COUNT, 2903)) {
      const found = evaluate(calc, situation);
      const { settling } = found.verdict;
      const spec = settling && calc.inputs[settling.symbol];
      const state = settling && found.inputs[settling.symbol];
      if (!settling || !spec || !state?.ok) continue;
      const { symbol, tool, half } = settling;
      const question = firstOpen(found);
      const again = (text: string, named: string): Evaluation =>
        evaluate(calc, { ...situation, entries: { ...situation.entries, [symbol]: enter(spec, text, named) } });
      const told = `${id}, ${question} by ${symbol} = ${state.value} (SI), ${tool?.id ?? half}: ${JSON.stringify(situation)}`;
      const text = typedText(spec, state.value);
      if (tool) {
        const features = featuresOf(spec, found.choices);
        if (features) expect(readsFeature(tool, features), told).toBe(true);
        expect(reaches(tool, state.value), told).toBe(true);
        expect(isOpen(again(text, tool.id), question), told).toBe(false);
        continue;
      }
      const fit = toolsOf(spec, found.choices).filter((one) => reaches(one, state.value));
      for (const one of fit) {
        const width = doubtWith(one, spec, state.value, found.choices).half;
        if (half !== undefined) expect(width, `${told}: the ${one.name} would do`).toBeGreaterThan(half);
      }
      if (half !== undefined)
        expect(isOpen(again(`${text} ± ${half / spec.measure.unit.factor}`, ''), question), told).toBe(false);
    }
  });
});
