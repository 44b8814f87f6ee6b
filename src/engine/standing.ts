import { formatValue } from '../quantity/format';
import type { Calculator } from './calculator';
import { contextFor, unitOf, unlessUnavailable, type Found } from './context';
import type { InputState } from './entry';
import type { Evaluation, Situation } from './situation';
import { nameOf } from './name';
import type { Assumed, Order } from './order';
import { applies } from './spec';
import { systemFor } from './system';
import { contradictionText } from './tell';
import say from './words/en';

/** The readings of a check of which not one was taken: those in force that are blank. A table's cells are the model's to judge. */
export function blankReadings(calc: Calculator, inputs: Readonly<Record<string, InputState>>): string[] {
  const inForce = calc.measured.filter(
    (symbol) => inputs[symbol] !== undefined && calc.inputs[symbol]?.cell === undefined,
  );
  const taken = inForce.some((symbol) => {
    const state = inputs[symbol];
    return state?.ok === true ? state.origin !== 'typical' : !state?.blank;
  });
  return taken ? [] : inForce.filter((symbol) => !calc.inputs[symbol]?.optional);
}

/** Inputs in force that count as the check's readings, and were not read: nobody has measured anything there. */
export function unmeasured(calc: Calculator, inputs: Readonly<Record<string, InputState>>): string[] {
  return calc.measured.filter((symbol) => {
    const state = inputs[symbol];
    return state?.ok === true && state.origin === 'typical' && !calc.inputs[symbol]?.optional;
  });
}

/** Symbols that limits are made of: what is allowed, not what is. */
function ofLimits(calc: Calculator): ReadonlySet<string> {
  return new Set(calc.limits.flatMap(({ max, min }) => [max, min].filter((end) => end !== undefined)));
}

/** A typical value that nobody measured or decided, and no limit. */
export function isAssumed(calc: Calculator, found: Pick<Evaluation, 'inputs'>, symbol: string): boolean {
  const state = found.inputs[symbol];
  return (
    state?.ok === true && state.origin === 'typical' && !calc.inputs[symbol]?.decided && !ofLimits(calc).has(symbol)
  );
}

/**
 * What an order that moves or changes something rests on and nobody measured: the typical values behind every symbol that its
 * action took the value of.
 */
export function assumedBehind(
  calc: Calculator,
  found: Found,
  situation: Situation,
  order: Order,
  asked: ReadonlySet<string>,
): { readonly assumes?: readonly Assumed[] } {
  if (order.movements.length === 0 && order.effect === undefined) return {};
  const limits = ofLimits(calc);
  const { steps } = systemFor(calc, found.choices);
  const behind = [...asked]
    .filter((symbol) => !limits.has(symbol))
    .flatMap((symbol) => [symbol, ...(steps.find(({ formula }) => formula.symbol === symbol)?.inputs ?? [])]);
  const ask = contextFor(calc, found, situation);
  const assumes = [...new Set(behind)]
    .filter((symbol) => isAssumed(calc, found, symbol))
    .map((symbol): Assumed => ({ symbol, amount: { ...ask.quantity(symbol), width: 0 } }));
  return assumes.length > 0 ? { assumes } : {};
}

/** A least that lies above its most, where both were entered: the limits of one result. */
function leastAboveMost(calc: Calculator, found: Found, situation: Situation): Evaluation['contradiction'] {
  for (const { min, max, when } of calc.limits) {
    if (min === undefined || max === undefined || !applies(when, found.choices)) continue;
    const [least, most] = [valueOf(found, min), valueOf(found, max)];
    if (least === undefined || most === undefined || least <= most) continue;
    const print = (symbol: string, si: number): string => {
      const unit = unitOf(calc, found, symbol, situation);
      return unit ? formatValue(si, 0, unit, { mark: situation.mark }) : String(si);
    };
    const sentence = say.leastAboveMost(nameOf(calc, min), print(min, least), nameOf(calc, max), print(max, most));
    return { sentence, of: [min, max] };
  }
  return undefined;
}

/** Of an input: a least and a most that are worked out may leave no room, which is the check's to say. */
function valueOf(found: Found, symbol: string): number | undefined {
  const state = found.inputs[symbol];
  return state?.ok ? state.value : undefined;
}

/** Entries that cannot all be right, by the engine's own rule or the calculator's. */
export function contradictionIn(calc: Calculator, found: Found, situation: Situation): Evaluation['contradiction'] {
  const own = leastAboveMost(calc, found, situation);
  if (own) return own;
  return unlessUnavailable(
    () => {
      const asked = calc.contradiction?.(contextFor(calc, found, situation));
      return asked && { sentence: contradictionText(calc, asked, situation.mark), of: asked.of };
    },
    () => undefined,
  );
}
