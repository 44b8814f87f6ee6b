import { COVERAGE, type InputValue, type Known, type Outcome } from '../formula/outcome';
import { propagate, type Outcomes } from '../formula/propagate';
import type { Calculator, InputSpec } from './calculator';
import type { DecimalMark } from '../quantity/parse';
import { isSameEntry, readAsGiven, readEntry, type Entry, type InputState, type KeptValue } from './entry';
import type { Situation } from './situation';
import { applies, type Choices, type ModelResult } from './spec';
import { systemFor } from './system';
import { standard } from './tooled';

const lastChoices = new WeakMap<Calculator['choices'], Choices>();

/** The options in force: what was picked where it is one of the options, else the typical one. The same object while they stay the same. */
export function effectiveChoices(calc: Calculator, picked: Choices): Choices {
  const chosen = Object.entries(calc.choices).map(([name, spec]) => {
    const option = picked[name];
    return [name, option !== undefined && Object.hasOwn(spec.options, option) ? option : spec.typical] as const;
  });
  const last = lastChoices.get(calc.choices);
  if (last && chosen.every(([name, option]) => last[name] === option)) return last;
  const choices = Object.fromEntries(chosen);
  lastChoices.set(calc.choices, choices);
  return choices;
}

const valuesOfStates = new WeakMap<InputState, InputValue>();

/** An input as the propagation takes it: rectangular, or triangular where it is the difference of two readings. */
function inputValue(state: InputState): InputValue | undefined {
  if (!state.ok) return undefined;
  const found = valuesOfStates.get(state);
  if (found) return found;
  const { value, half, shape = 'rectangular' } = state;
  const made = { value, u: standard(half, shape), shape };
  valuesOfStates.set(state, made);
  return made;
}

function inputValues(states: Readonly<Record<string, InputState>>): Record<string, InputValue | undefined> {
  const values: Record<string, InputValue | undefined> = {};
  for (const [symbol, state] of Object.entries(states)) values[symbol] = inputValue(state);
  return values;
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

interface Read {
  readonly entry: Entry | undefined;
  readonly kept: KeptValue | undefined;
  readonly specs: Calculator['choices'];
  readonly choices: Choices;
  readonly mark: DecimalMark;
  readonly state: InputState;
}

const lastRead = new WeakMap<InputSpec, Read>();

/** An input as it was read last, the same object, where nothing that it is read from has changed since. */
function readOnce(
  symbol: string,
  spec: InputSpec,
  entry: Entry | undefined,
  kept: KeptValue | undefined,
  specs: Calculator['choices'],
  choices: Choices,
  mark: DecimalMark,
): InputState {
  const last = lastRead.get(spec);
  if (
    last &&
    last.kept === kept &&
    last.specs === specs &&
    last.choices === choices &&
    last.mark === mark &&
    isSameEntry(last.entry, entry)
  ) {
    return last.state;
  }
  const state = readEntry(symbol, spec, entry, kept, specs, choices, mark);
  lastRead.set(spec, { entry: entry && { ...entry }, kept, specs, choices, mark, state });
  return state;
}

const lastShared = new WeakMap<InputSpec, { readonly of: number; readonly spec: InputSpec }>();

/** An input whose typical value is a share of another, with the typical value that it has beside this one (SI). */
function sharing(spec: InputSpec, of: number): InputSpec {
  const last = lastShared.get(spec);
  if (last?.of === of || !spec.share) return last?.spec ?? spec;
  const { times, within } = spec.share;
  const { factor } = spec.measure.unit;
  const made = { ...spec, typical: (times * of) / factor, spread: (within * of) / factor };
  lastShared.set(spec, { of, spec: made });
  return made;
}

/** What stands at a place: here, or on the machine; undefined where nothing was entered that can be used. SI. */
function standsAt(
  place: string,
  calc: Calculator,
  situation: Situation,
  states: Readonly<Record<string, InputState>>,
): number | undefined {
  const here = Object.keys(calc.inputs).find((symbol) => calc.inputs[symbol]?.from === place);
  const state = here === undefined ? undefined : states[here];
  return state?.ok ? state.value : situation.kept[place]?.value;
}

/** Each input in force as it is read: typed, of the machine, typical, or why not. */
export function readInputs(calc: Calculator, situation: Situation, choices: Choices): Record<string, InputState> {
  const states: Record<string, InputState> = {};
  for (const [symbol, own] of Object.entries<InputSpec>(calc.inputs)) {
    if (!applies(own.when, choices)) continue;
    const base = own.share ? standsAt(own.share.of, calc, situation, states) : undefined;
    const spec = base === undefined ? own : sharing(own, base);
    const kept = spec.from === undefined ? undefined : situation.kept[spec.from];
    const given = situation.read?.[symbol];
    states[symbol] = given
      ? readAsGiven(given, spec, situation.mark, choices)
      : readOnce(symbol, spec, situation.entries[symbol], kept, calc.choices, choices, situation.mark);
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

/** Reads the entries and works the formulas: each result when it is first asked for. */
export function workOut(calc: Calculator, situation: Situation, choices: Choices): Worked {
  const inputs = readInputs(calc, situation, choices);
  const read = inputValues(inputs);
  const made = calc.model?.compute(read, choices);
  const values = made?.ok ? { ...read, ...made.values } : read;
  const outcomes = propagate(systemFor(calc, choices), values, { beside: outputsOf(calc, made) });
  return { inputs, values, made, outcomes };
}
