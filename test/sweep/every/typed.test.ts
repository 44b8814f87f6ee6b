import { describe, expect, it } from 'vitest';
import type { Calculator, Choices, InputSpec } from '../../../src/engine/calculator';
import { readEntry, type InputState } from '../../../src/engine/entry';
import { evaluate, nameOf } from '../../../src/engine/evaluate';
import { systemFor } from '../../../src/engine/system';
import {
  cases,
  entriesFrom,
  fewCases,
  filledSheet,
  inputsUnder,
  plausible,
  situation,
} from '../../support/calculators';
import { newcomers } from '../../support/newcomers';
import { expectSound } from '../../support/sound';
import { isWhole, times } from '../../support/sweep';

const beyond = (spec: InputSpec): string[] => {
  const [low, high] = spec.range;
  const span = high - low;
  return [String(Math.ceil(high + span)), String(Math.floor(low - span - 1)), '1e30', '-1e30', '1e999', '9'.repeat(60)];
};
/**
 * Inputs to spoil one at a time. Down a column of a table they are all alike (held above), so a full line, the first empty
 * one and the last stand for the others.
 */
function spoilt(calc: Calculator, choices: Choices): string[] {
  const filled = filledSheet(calc, choices);
  return inputsUnder(calc, choices).filter((name) => {
    const cell = calc.inputs[name]?.cell;
    if (!cell) return true;
    const column = Object.entries(calc.inputs).filter(
      ([, one]) => one.cell?.table === cell.table && one.cell.column === cell.column,
    );
    const empty = column.findIndex(([symbol]) => !Object.hasOwn(filled, symbol));
    return [1, empty + 1, column.length].includes(cell.line);
  });
}

const nonsense = ['abc', '1..2', '--1', '1/0', '1 furlong', '± 3', '1 ± ', '1 ± -1', '1,000', '十二', '{}', '1e', '½½'];
/** Half-widths that a person could type and that no instrument has. */
const absurd = ['1e30', '1e300'];

/** What is amiss with how a bad entry was read. A list, and no `expect` for each: there are a million of them. */
function faultsOf(state: InputState): readonly string[] {
  if (state.ok) return ['was taken; narrow its range'];
  return [
    ...(state.blank ? ['was passed over as blank'] : []),
    ...(/^[A-Z“−\d].{10,}\.$/s.test(state.reason) ? [] : [`is not refused in a sentence: ${state.reason}`]),
    ...(/NaN|undefined/.test(state.reason) ? [`is refused in no words: ${state.reason}`] : []),
  ];
}

/** In a part of the sweep the whole sheet is worked out anew for one input in so many; every entry is read. */
const SPARE = times(1, 9);

/**
 * In a part of the sweep each input is spoilt once, under the first options that have it; else under all that bring other formulas to
 * rest on it, a table's cell under all that bring any.
 */
const isNew = newcomers();
function toSpoil(id: string, calc: Calculator, choices: Choices): string[] {
  const { steps } = systemFor(calc, choices);
  const resting = (name: string): string =>
    steps.flatMap(({ formula, inputs }) => (calc.inputs[name]?.cell || inputs.has(name) ? [formula.text] : [])).join();
  return spoilt(calc, choices).filter((name) => isNew(id, name, isWhole ? resting(name) : ''));
}
const fields = cases.map(
  ([id, options, calc, choices]) => [id, options, calc, choices, toSpoil(id, calc, choices)] as const,
);

describe('anything typed into any field', () => {
  it.each(fields)(
    '%s (%s): a bad entry yields a sentence, never an exception or NaN',
    (_id, _options, calc, choices, names) => {
      if (names.length === 0) return;
      const good = filledSheet(calc, choices);
      const filled = evaluate(calc, situation(calc, good, choices));
      expectSound(calc, filled);
      const wrong: string[] = [];
      expect(
        filled.modelProblem,
        'a full sheet must give the model a result: add a worked example under these options',
      ).toBeUndefined();
      for (const [i, name] of names.entries()) {
        const spec = calc.inputs[name]!;
        if (i % SPARE === 0) expectSound(calc, evaluate(calc, situation(calc, { ...good, [name]: 'abc' }, choices)));
        const read = (text: string) =>
          readEntry(name, spec, entriesFrom(calc, { [name]: text })[name], undefined, calc.choices, choices, 'point');
        const middle = plausible(calc, name);
        for (const text of [...nonsense, ...beyond(spec), ...absurd.map((half) => `${middle} ± ${half}`)])
          wrong.push(...faultsOf(read(text)).map((fault) => `${name}: “${text}” ${fault}`));
        if (!isWhole) continue;
        const [low, high] = spec.range;
        const widest = `${middle} ± ${high - low}`;
        expectSound(calc, evaluate(calc, situation(calc, { ...good, [name]: widest }, choices)));
      }
      expect(wrong).toEqual([]);
    },
  );

  it.each(fields)(
    '%s (%s): values at the ends of every range, and around them',
    (_id, _options, calc, choices, names) => {
      const good = filledSheet(calc, choices);
      for (const [i, name] of names.entries()) {
        const [low, high] = calc.inputs[name]!.range;
        const ends = [low, high, ...(low < 0 && high > 0 ? [0] : [])];
        // In a part of the sweep a few inputs, each at one of its ends.
        for (const end of isWhole ? ends : i % SPARE === 1 ? [ends[((i - 1) / SPARE) % 2]!] : []) {
          const found = evaluate(calc, situation(calc, { ...good, [name]: String(end) }, choices));
          expect(found.inputs[name], `${name}: ${end}, an end of its own range, is refused`).toMatchObject({
            ok: true,
          });
          expectSound(calc, found);
        }
      }
    },
  );

  it.each(fewCases)(
    '%s (%s): an empty field that has no typical value is asked for by its label',
    (_id, _options, calc, choices) => {
      const found = evaluate(calc, situation(calc, {}, choices));
      expectSound(calc, found);
      for (const [name, state] of Object.entries(found.inputs)) {
        if (!state.ok) expect(state).toEqual({ ok: false, blank: true, reason: `Enter: ${nameOf(calc, name)}.` });
        else expect(state.origin, `${name} is filled with nothing typed`).toBe('typical');
      }
    },
  );
});
