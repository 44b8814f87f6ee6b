import { describe, expect, it } from 'vitest';
import { calculators, situation } from '../../../test/support/calculators';
import { evaluate } from '../../engine/evaluate';
import { nearestMade } from './leads';

const calc = calculators.find(([id]) => id === 'screw-lead')![1];
const measure = (given: Record<string, string>) => evaluate(calc, situation(calc, given));
const turned = (lead: number, set: string, N = 10) =>
  measure({ x: `${(N * lead).toFixed(2)} ± 0.03`, N: `${N}`, P_h: set });
const leadSet = (found: ReturnType<typeof evaluate>) => found.instruction!.order.effect?.P_h;

describe('what is set', () => {
  // Leads by the standards' tables, from memory: ISO 2904 (Tr 8×2, Tr 10×3), ISO 261 (1.25), ASME B1.5 (10 and 5 to the inch), B1.1 (20).
  it.each([
    [2, '8', 2],
    [2.005, '8', 2],
    [1.996, '8', 2],
    [3.003, '2', 3],
    [1.2497, '1.5', 1.25],
    [25.4 / 20, '1.25', 1.27],
    [25.4 / 10, '2.5', 2.54],
    [25.4 / 5, '5', 5.08],
    [8, '25.4', 8],
  ])('a screw that moves %d mm a turn, set to %s mm: the lead it is made with, %d mm', (found, set, made) => {
    const lead = leadSet(turned(found, set, 20));
    expect(typeof lead === 'number' && lead * 1e3).toBeCloseTo(made, 9);
  });

  it('is told from its neighbour, or measured again', () => {
    expect(turned(1.27, '1.25', 5).verdict.state).toBe('beyond');
    // Between 1/32 in and 0.8 mm: 0.5 % is no room for two.
    const between = turned(0.797, '1', 10);
    expect(between.verdict.state).toBe('beyond');
    expect(between.instruction).toMatchObject({ measureAgain: true, movements: [] });
    expect(between.instruction!.order.say).toBe('tellApart');
  });

  it('is nothing where no screw is made so', () => {
    const odd = turned(6.6, '8', 20);
    expect(odd.instruction!.order.say).toBe('noneMade');
    expect(odd.instruction).toMatchObject({ measureAgain: true, movements: [] });
  });
});

it('judges by a share of the travel: the same hundredth is much of a small lead and little of a large one', () => {
  expect(turned(1.27, '1.25', 20).verdict.state).toBe('beyond');
  expect(turned(25.02, '25', 20).verdict.state).toBe('within');
});

it('asks about a marking that makes another lead than is set', () => {
  const given = { x: '40 ± 0.03', N: '5', P: '2', P_h: '8' };
  expect(measure({ ...given, n_s: '1' }).contradiction?.of).toEqual(['P', 'n_s', 'P_h']);
  expect(measure({ ...given, n_s: '4' }).verdict.state).toBe('within');
});

it('knows leads with their neighbours', () => {
  expect(nearestMade(1.252e-3, 2).map((lead) => Math.round(lead * 1e6))).toEqual([1250, 1270]);
});
