import type { Calculator } from '../../engine/calculator';
import type { Amount, Assumed } from '../../engine/order';
import { instructionOf } from '../../engine/tell';
import type { Reading } from '../../machine/schema';
import type { DecimalMark } from '../../quantity/parse';

/** What was to be done, in words. */
export interface Retold {
  readonly sentence: string;
  readonly steps: readonly string[];
}

type Kept = Reading['order'];

/** A kept amount; undefined where a record from elsewhere holds something else. */
function amountOf({ si, width, kind, unit }: Kept['assumes'][number]['amount']): Amount | undefined {
  if (typeof si !== 'number' || typeof width !== 'number') return undefined;
  return typeof kind === 'string' && typeof unit === 'string' ? { si, width, kind, unit } : undefined;
}

const assumedIn = (order: Kept): Assumed[] =>
  order.assumes.flatMap(({ symbol, amount }) => {
    const known = amountOf(amount);
    return known ? [{ symbol, amount: known }] : [];
  });

/**
 * A kept order in the words of today where the calculator still has all its keys, else in those of then. A key whose words come
 * to need other arguments gets another name (DEVELOPERS.md, Stored records).
 * @param calc undefined where the check is no longer there
 */
export function retold(order: Kept, calc: Calculator | undefined, mark: DecimalMark): Retold {
  const kept = { sentence: order.sentence, steps: order.steps.map(({ text }) => text) };
  if (!calc) return kept;
  const has = (words: object, key: string): boolean => Object.hasOwn(words, key);
  if (!has(calc.words.orders, order.say) || !order.steps.every(({ say }) => has(calc.words.steps, say))) return kept;
  try {
    const { sentence, steps } = instructionOf(
      calc,
      { ...order, assumes: assumedIn(order), movements: [], measureAgain: false },
      mark,
    );
    return { sentence, steps };
  } catch {
    // A record from elsewhere may hold anything under a key that exists: the words then have nothing to be made from.
    return kept;
  }
}
