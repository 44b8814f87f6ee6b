import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/diagnosis/catalogue';
import {
  byRule,
  cheapest,
  difference,
  fixedList,
  mendsOnly,
  mostLikely,
  ours,
  remembered,
  simulate,
} from '../support/diagnosis-simulate';

/*
 * A short run of what `npm run bench` does at length. The others mend at half belief or above, which suits them best of the
 * thresholds that the bench tries (0.4 is as good).
 */
const CASES = 25;

describe('simulated cases, the same for all orders', () => {
  const mine = simulate(catalogue, remembered(ours), CASES, 'unit');

  it('are drawn again alike from the same seed', () => {
    expect(simulate(catalogue, remembered(ours), 3, 'again')).toEqual(simulate(catalogue, ours, 3, 'again'));
  });

  it.each([
    ['the fixed list', byRule(fixedList, 0.5)],
    ['the most likely first', byRule(mostLikely, 0.5)],
    ['the cheapest first', byRule(cheapest, 0.5)],
    ['mends without a check', mendsOnly],
  ])('cost less in our order than with %s, by more than two standard errors', (_, order) => {
    const theirs = simulate(catalogue, order, CASES, 'unit');
    const saved = difference(theirs, mine, ({ effort }) => effort);
    expect(saved.mean).toBeGreaterThan(2 * saved.se);
    const sooner = difference(theirs, mine, ({ search }) => search);
    expect(sooner.mean).toBeGreaterThan(2 * sooner.se);
  });
});
