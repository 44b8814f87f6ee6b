import type { InputValue, Known, Outcome } from '../formula/outcome';
import { COVERAGE } from '../formula/outcome';
import { propagate, type Outcomes } from '../formula/propagate';
import type { System } from '../formula/system';
import type { Calculator, InputSpec } from './calculator';
import { readAsGiven, readEntry, type InputState } from './entry';
import type { Situation } from './situation';
import { applies, type Choices, type ModelResult } from './spec';
import { excessNames, systemFor } from './system';
import { standard } from './tooled';

/** The options in force: what was picked where it is one of the options, else the typical one. */
export function effectiveChoices(calc: Calculator, picked: Choices): Choices {
  return Object.fromEntries(
    Object.entries(calc.choices).map(([name, spec]) => {
      const chosen = picked[name];
      return [name, chosen !== undefined && Object.hasOwn(spec.options, chosen) ? chosen : spec.typical];
    }),
  );
}

/** Inputs as the propagation takes them: rectangular, or triangular where one is the difference of two readings. */
function inputValues(states: Readonly<Record<string, InputState>>): Record<string, InputValue | undefined> {
  return Object.fromEntries(
    Object.entries(states).map(([symbol, state]) => {
      if (!state.ok) return [symbol, undefined];
      const { value, half, shape = 'rectangular' } = state;
      return [symbol, { value, u: standard(half, shape), shape }];
    }),
  );
}

/** What the model worked out, in the form of results: their own uncertainty, no budget. */
function outputsOf(calc: Calculator, made: ModelResult | undefined): Record<string, Outcome> {
  const outputs: Record<string, Outcome> = {};
  for (const symbol of Object.keys(calc.model?.outputs ?? {})) {
    const output = made?.ok ? made.values[symbol] : undefined;
    if (!output) {
      outputs[symbol] = { ok: false, failure: { kind: 'missing', symbols: [symbol] } };
      continue;
    }
    const { value, u } = output;
    const [low, high] = [value - COVERAGE * u, value + COVERAGE * u];
    const method: Known['method'] = u > 0 ? 'first order' : 'exact';
    outputs[symbol] = { ok: true, value, u, low, high, method, budget: [], gradient: {} };
  }
  return outputs;
}

function readInputs(calc: Calculator, situation: Situation, choices: Choices): Record<string, InputState> {
  const states: Record<string, InputState> = {};
  for (const [symbol, spec] of Object.entries<InputSpec>(calc.inputs)) {
    if (!applies(spec.when, choices)) continue;
    const kept = spec.from === undefined ? undefined : situation.kept[spec.from];
    const given = situation.read?.[symbol];
    states[symbol] = given
      ? readAsGiven(given, spec, situation.mark, choices)
      : readEntry(symbol, spec, situation.entries[symbol], kept, calc.choices, choices, situation.mark);
  }
  return states;
}

/** What the formulas start from, and what comes of them. */
export interface Worked {
  readonly inputs: Readonly<Record<string, InputState>>;
  /** Readings and what the model made of them, SI. */
  readonly values: Readonly<Record<string, InputValue | undefined>>;
  readonly made: ModelResult | undefined;
  readonly outcomes: Outcomes;
}

/** The limits that are asked about: all, or those of one result. */
export type AskedLimits = 'limits' | { readonly of: string };

const limitsOnly = new WeakMap<System, Map<string, System>>();

/** The steps that the limits asked about rest on, and no other. */
function forLimits(calc: Calculator, system: System, asked: AskedLimits): System {
  const key = asked === 'limits' ? '' : asked.of;
  const cached = limitsOnly.get(system) ?? new Map<string, System>();
  limitsOnly.set(system, cached);
  const found = cached.get(key);
  if (found) return found;
  const wanted = calc.limits.flatMap(({ of }, i) =>
    asked === 'limits' || of === asked.of ? Object.values(excessNames(i)) : [],
  );
  const needed = new Set<string>(wanted);
  const steps = [...system.steps].reverse().filter(({ formula }) => {
    if (!needed.has(formula.symbol)) return false;
    for (const name of formula.uses) needed.add(name);
    return true;
  });
  const small = { ...system, steps: steps.reverse() };
  cached.set(key, small);
  return small;
}

/** Reads the entries and works the formulas, all of them or those that a limit rests on. */
export function workOut(calc: Calculator, situation: Situation, choices: Choices, only?: AskedLimits): Worked {
  const inputs = readInputs(calc, situation, choices);
  const read = inputValues(inputs);
  const made = calc.model?.compute(read, choices);
  const values = made?.ok ? { ...read, ...made.values } : read;
  const system = systemFor(calc, choices);
  const outcomes = propagate(only ? forLimits(calc, system, only) : system, values);
  return { inputs, values, made, outcomes: { ...outcomes, ...outputsOf(calc, made) } };
}
