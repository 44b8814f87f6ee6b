import { applies, type Calculator } from '../../engine/calculator';
import { effectiveChoices } from '../../engine/evaluate';
import { loadCalculator } from '../../engine/list';
import { namedBy } from '../../engine/name';
import type { Choices } from '../../engine/spec';
import { stateOf } from '../../machine/history';
import type { Reading } from '../../machine/schema';
import { inSlices, type Steps, type Watch } from '../../machine/steps';
import { unitById } from '../../quantity/unit';
import { fetchPart } from './parts/fetch-part';

/** Name, kind and unit of a number as the calculator of today has them; the symbol, and SI, where it has it no longer. */
function named(calc: Calculator | undefined, choices: Choices, symbol: string, unit: string) {
  const spec = calc && namedBy(calc, symbol, choices);
  if (!spec) return { name: symbol, kind: '', unit };
  const { kind, unit: usual } = spec.measure;
  return { name: spec.name, kind: kind.id, unit: (unitById(kind, unit) ?? usual).id };
}

/** The limits of today that would have been in force. One alone has the reading's own verdict, several what the intervals say. */
function limitsFor(calc: Calculator, choices: Choices, reading: Reading): Reading['limits'] {
  const inForce = calc.limits.filter(({ when }) => applies(when, choices));
  return inForce.map(({ of, label, max, min, symmetric = false }) => {
    const limit = { of, ...(max === undefined ? {} : { max }), ...(min === undefined ? {} : { min }), symmetric };
    return { ...limit, name: label, verdict: inForce.length === 1 ? reading.verdict : stateOf(reading, limit) };
  });
}

/**
 * A reading of an earlier version with what that version did not keep, as the calculator of today has it: it stays marked
 * as not whole. The results of a model stay unknown.
 * @param calc undefined where the check is no longer there
 */
export function explained(reading: Reading, calc: Calculator | undefined): Reading {
  if (reading.whole) return reading;
  // A choice that came later stood at its typical option.
  const choices = calc ? effectiveChoices(calc, reading.choices) : reading.choices;
  const filled = <T extends { readonly unit: string }>(map: Readonly<Record<string, T>>) =>
    Object.fromEntries(
      Object.entries(map).map(([symbol, one]) => [symbol, { ...one, ...named(calc, choices, symbol, one.unit) }]),
    );
  const options = Object.entries(reading.choices).map(([choice, option]) => {
    const spec = calc?.choices[choice];
    return [choice, { name: spec?.label ?? choice, text: spec?.options[option]?.label ?? option }] as const;
  });
  return {
    ...reading,
    entries: filled(reading.entries),
    results: filled(reading.results),
    options: Object.fromEntries(options),
    limits: calc ? limitsFor(calc, choices, reading) : [],
  };
}

function* explainedSteps(
  readings: readonly Reading[],
  calculators: ReadonlyMap<string, Calculator | undefined>,
): Steps<readonly Reading[]> {
  const all: Reading[] = [];
  for (const reading of readings) {
    all.push(explained(reading, calculators.get(reading.calculator)));
    yield all.length / readings.length;
  }
  return all;
}

/**
 * The same for many, each of its own check; the others as they are. A check that cannot be fetched counts as not there.
 * @throws Cancelled
 */
export async function explainAll(readings: readonly Reading[], watch?: Watch): Promise<readonly Reading[]> {
  const ids = [...new Set(readings.flatMap(({ whole, calculator }) => (whole ? [] : [calculator])))];
  const load = async (id: string) => (await fetchPart(() => loadCalculator(id)).catch(() => undefined))?.calculator;
  const calculators = new Map(await Promise.all(ids.map(async (id) => [id, await load(id)] as const)));
  return inSlices(explainedSteps(readings, calculators), watch);
}
