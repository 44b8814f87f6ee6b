import type { Calculator } from '../../src/engine/calculator';
import { readAgain, readEntry, type Entry } from '../../src/engine/entry';
import { effectiveChoices, evaluate, type Evaluation, type Situation } from '../../src/engine/evaluate';
import type { Order } from '../../src/engine/order';
import type { SecondModel, Seen } from '../../src/engine/second';
import { contextFor } from '../../src/engine/context';
import { signedText } from '../../src/engine/signs';
import { fromSi, toSi } from '../../src/quantity/unit';
import { generator, inputsUnder } from './calculators';

const modules = import.meta.glob<SecondModel>('../../src/calculators/*/second.ts', { eager: true, import: 'default' });

/** The second models, by the name of their folder. */
export const secondOf: Readonly<Record<string, SecondModel | undefined>> = Object.fromEntries(
  Object.entries(modules).map(([path, model]) => [path.split('/').at(-2) ?? '', model]),
);

/** Share of the draws in which a reading lies anywhere in its range, and not around a worked example. */
const ANYWHERE = 0.25;

/**
 * Entries as a person would type them: around a worked example, the check's readings spread widely, each with its usual tool. Always
 * the same ones for one seed.
 */
export function draws(calc: Calculator, count: number, seed: number): Situation[] {
  const random = generator(seed);
  const varied = new Set([...calc.measured, ...Object.keys(calc.levers)]);
  return Array.from({ length: count }, (_, i) => {
    const example = calc.examples[i % calc.examples.length]!;
    const choices = randomChoices(calc, effectiveChoices(calc, example.choices ?? {}), random);
    const typed = asTyped(calc, example.given);
    const entries: Record<string, Entry> = {};
    for (const symbol of inputsUnder(calc, choices)) {
      const spec = calc.inputs[symbol]!;
      const state = readEntry(symbol, spec, typed[symbol], undefined, calc.choices, choices, 'point');
      if (!state.ok && (spec.optional || spec.cell)) continue;
      if (state.ok && state.origin === 'typical' && !varied.has(symbol) && random() < 0.5) continue;
      const [low, high] = spec.range;
      const { unit, kind } = spec.measure;
      const known = state.ok ? fromSi(state.value, unit) : (low + high) / 2;
      const wide = varied.has(symbol) || spec.cell !== undefined;
      const anywhere = varied.has(symbol) && random() < ANYWHERE;
      const wished = anywhere
        ? low + random() * (high - low)
        : known * (wide ? 0.4 + 1.3 * random() : 0.95 + 0.1 * random());
      const turned = spec.signed && wide && random() < 0.5 ? -wished : wished;
      const inside = Math.min(Math.max(turned, low), high);
      const value = kind.whole ? Math.round(inside) : Number(inside.toPrecision(4));
      if (value < low || value > high) continue;
      const tool = spec.tool ?? '';
      entries[symbol] = { text: signedText(spec, String(value)), unit: unit.id, tool };
    }
    return { entries, choices, kept: {}, mark: 'point' };
  });
}

function randomChoices(calc: Calculator, from: Readonly<Record<string, string>>, random: () => number) {
  return Object.fromEntries(
    Object.entries(calc.choices).map(([name, { options }]) => {
      const all = Object.keys(options);
      const other = all[Math.floor(random() * all.length)] ?? all[0]!;
      return [name, random() < 0.4 ? other : (from[name] ?? other)];
    }),
  );
}

const asTyped = (calc: Calculator, given: Readonly<Record<string, string | undefined>>): Record<string, Entry> =>
  Object.fromEntries(
    Object.entries(given).flatMap(([symbol, text]) =>
      text === undefined
        ? []
        : [
            [
              symbol,
              {
                text: signedText(calc.inputs[symbol]!, text),
                unit: calc.inputs[symbol]!.measure.unit.id,
                tool: '',
              },
            ] as const,
          ],
    ),
  );

/** What a person sees in the fields: pictures in place of signs. */
function seen(calc: Calculator, found: Evaluation): Record<string, Seen> {
  return Object.fromEntries(
    Object.entries(found.inputs).flatMap(([symbol, state]): (readonly [string, Seen])[] => {
      if (!state.ok) return [];
      const signs = calc.inputs[symbol]?.signed;
      if (typeof signs !== 'object') return [[symbol, state.value]];
      const picture = state.value < 0 ? signs.minus : signs.plus;
      return [[symbol, { picture, size: Math.abs(state.value) }]];
    }),
  );
}

/** The same, back to a number. @throws Error for a picture that the input does not have */
function unseen(calc: Calculator, symbol: string, value: Seen): number {
  if (typeof value === 'number') return value;
  const signs = calc.inputs[symbol]?.signed;
  if (typeof signs !== 'object') throw new Error(`${symbol} has no pictures: return a number for it`);
  if (value.picture !== signs.plus && value.picture !== signs.minus)
    throw new Error(`${symbol} has no picture ${value.picture}`);
  return value.picture === signs.minus ? -value.size : value.size;
}

/** Readings after an order, each with the doubt that the reading before had. */
export function carriedOut(
  calc: Calculator,
  second: SecondModel,
  found: Evaluation,
  order: Order,
): Record<string, { value: number; half: number }> {
  const { movements, effect = {} } = order;
  const after = second.carry({ given: seen(calc, found), choices: found.choices, movements, effect });
  return Object.fromEntries(
    Object.entries(after).map(([symbol, value]) => [symbol, read(calc, found, symbol, unseen(calc, symbol, value))]),
  );
}

/** A value as the tool of the first reading would give it. */
const read = (calc: Calculator, found: Evaluation, symbol: string, value: number) =>
  readAgain(calc.inputs[symbol]!, found.inputs[symbol], value);

/** More settings than this are not tried. */
const MOST_SETTINGS = 400;

/** Looks among all that a hand can set, one lever at a time, for a setting that gives *within*. */
export function settingThatGives(calc: Calculator, situation: Situation, found: Evaluation) {
  const ask = contextFor(calc, found, situation);
  // Without the doubt of the other inputs first, which is quick: what is beyond even so needs no closer look.
  const exact = Object.entries(found.inputs).flatMap(([symbol, state]) =>
    state.ok ? [[symbol, { value: state.value, half: 0 }] as const] : [],
  );
  const plainly = contextFor(calc, found, { ...situation, read: Object.fromEntries(exact) });
  for (const [symbol, lever] of Object.entries(calc.levers)) {
    const state = found.inputs[symbol];
    const spec = calc.inputs[symbol];
    if (!lever || !spec || !state?.ok) continue;
    const step = lever.step(ask);
    const [low, high] = spec.range.map((end) => toSi(end, spec.measure.unit)) as [number, number];
    const from = Math.max(low, lever.from?.(ask) ?? low);
    const to = Math.min(high, lever.to?.(ask) ?? high);
    const [most, least] = [Math.floor((to - state.value) / step), Math.ceil((from - state.value) / step)];
    const jump = Math.max(1, Math.ceil((most - least) / MOST_SETTINGS));
    for (let n = least; n <= most; n += jump) {
      const value = state.value + n * step;
      const all = { [symbol]: value, ...lever.reads?.(ask, value) };
      if (plainly.after(all) === 'beyond' || ask.after(all) !== 'within') continue;
      const anew = Object.fromEntries(
        Object.entries(all).flatMap(([one, si]) =>
          si === undefined ? [] : [[one, read(calc, found, one, si)] as const],
        ),
      );
      const after = evaluate(calc, { ...situation, read: { ...situation.read, ...anew } });
      if (after.verdict.state === 'within') return { symbol, value };
    }
  }
  return undefined;
}
