import * as math from 'mathjs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../engine/evaluate';
import type { Amount } from '../../engine/order';
import { materials } from '../../reference/materials';
import { situation } from '../../../test/support/calculators';
import { simulate, type Lump, type Moment } from './curve';
import { fitCurve, type Fit, type Point } from './fit';
import calc from './index';
import words from './words/en';
import { isWhole } from '../../../test/support/sweep';

const ZERO = 273.15;
/** A block of 2.7 g/cm³ and 15.04 cm² of surface, its mass by a scale. */
const body = { a_1: '20 ± 0.5', a_2: '16 ± 0.5', a_3: '12 ± 0.5', m_b: '10.4 ± 1.5' };
const lump: Lump = { C: 9.302, P: 40, G: 0.11392603809, R: 0.3 * 5.670374419e-8 * 1504e-6, Ta: 293.15 };

interface Solution {
  readonly t: readonly number[];
  readonly y: readonly (readonly [number])[];
}

/** The same block by mathjs's solveODE (Dormand and Prince, its own steps). */
function theirs({ C, P, G, R, Ta }: Lump, start: number, seconds: number): Moment[] {
  const slope = (_t: number, [T]: readonly [number]): number[] => [(P - G * (T - Ta) - R * (T ** 4 - Ta ** 4)) / C];
  // Not in mathjs's declarations under this signature.
  const solve = (math as unknown as { solveODE: (...args: readonly unknown[]) => Solution }).solveODE;
  const { t, y } = solve(slope, [0, seconds], [start], { method: 'RK45', tol: 1e-9, maxStep: seconds / 100 });
  return t.map((at, i) => ({ t: at, T: y[i]![0] }));
}

describe('the simulated block', () => {
  it('goes the way scipy 1.17 solve_ivp (DOP853, rtol 1e-11) gives, radiation and all', () => {
    const moments = simulate({ ...lump, C: 10.37e-3 * 897 }, { t: 0, T: 293.15 }, 300, 600);
    const at = (seconds: number) => moments[seconds * 2]!.T - ZERO;
    const scipy = [
      [20, 96.01583],
      [60, 200.1488],
      [120, 281.06913],
      [300, 336.58129],
    ] as const;
    for (const [t, T] of scipy) expect(Math.abs(at(t) - T), `${t} s`).toBeLessThan(2e-5);
  });

  it.each([
    ['from cold, fully on', lump, 293.15],
    ['with a black cover', { ...lump, R: 0.9 * 5.670374419e-8 * 1504e-6, G: 0.06 }, 293.15],
    ['stuck on from 215 °C, four times the power', { ...lump, P: 160 }, 488.15],
    ['switched off', { ...lump, P: 0 }, 520],
  ])('agrees with mathjs solveODE at its every step: %s', (_name, block, start) => {
    const found = theirs(block, start, 200);
    expect(found.length).toBeGreaterThan(50);
    for (const { t, T } of found.slice(1)) {
      const ours = simulate(block, { t: 0, T: start }, t, 400).at(-1)!.T;
      expect(Math.abs(ours - T), `${t} s`).toBeLessThan(1e-4);
    }
  });

  // solveODE never ends once it stands still; outside.ts holds the very end against scipy.
  it('closes in on the formula’s end temperature from below and from above', () => {
    const { outcomes } = evaluate(calc, situation(calc, { ...body, R_h: '14.4', V: '24' }));
    const v = (symbol: string): number => {
      const outcome = outcomes[symbol];
      return outcome?.ok ? outcome.value : NaN;
    };
    const block = { C: v('C'), P: v('P'), G: v('G_c'), R: 0.3 * 5.670374419e-8 * v('A'), Ta: 295.15 };
    for (const side of [-40, 40]) {
      const left = theirs(block, v('T_e') + side, 400).map(({ T }) => (T - v('T_e')) / side);
      expect(left.every((share, i) => share > 0 && share <= (left[i - 1] ?? 1))).toBe(true);
      expect(left.at(-1)).toBeLessThan(0.05);
    }
  });
});

/** A curve with noise from a fixed sequence, K. */
function noisy(noise: number): Point[] {
  const moments = simulate({ ...lump, C: 12, G: 0.06 }, { t: 0, T: 330 }, 78, 780);
  return Array.from({ length: 14 }, (_, i) => {
    const { t, T } = moments[i * 60]!;
    return { t, T: T + noise * Math.sin(37 * i * i + 1), ut: 0.1, uT: 0.29 };
  });
}

describe('the fit', () => {
  it('takes readings in any order, and any start of the clock', () => {
    const points = noisy(0.3);
    const plain = fitCurve(points)!;
    const mixed = fitCurve(
      [...points.slice(5), ...points.slice(0, 5)].map((point) => ({ ...point, t: point.t + 1000 })),
    )!;
    for (const key of ['at', 'rate', 'uRate', 'k', 'uk'] as const) expect(mixed[key]).toBeCloseTo(plain[key], 8);
  });

  it('grows its uncertainty where the readings scatter more than they claim, and not where less', () => {
    const [calm, usual, wild] = [0, 0.3, 3].map((noise) => fitCurve(noisy(noise))!.uk) as [number, number, number];
    expect(usual / calm).toBeCloseTo(1, 1);
    expect(wild / calm).toBeGreaterThan(5);
  });

  it.runIf(isWhole)('has rate and loss rate that do not correlate, over many curves with random errors', () => {
    // Box and Muller from a linear congruence (Numerical Recipes, from memory): the fits scatter as they say.
    let state = 1;
    const uniform = () => (state = (state * 1664525 + 1013904223) % 2 ** 32) / 2 ** 32;
    const normal = () => Math.sqrt(-2 * Math.log(uniform() + 1e-12)) * Math.cos(2 * Math.PI * uniform());
    const exact = noisy(0).map((point) => ({ ...point, ut: 0 }));
    const at = fitCurve(exact)!.at;
    const fits = Array.from({ length: 400 }, () => {
      const fit = fitCurve(exact.map((point) => ({ ...point, T: point.T + 0.29 * normal() })))!;
      return [fit.rate - fit.k * (at - fit.at), fit.k] as const;
    });
    const mean = (of: (pair: readonly [number, number]) => number) =>
      fits.reduce((sum, pair) => sum + of(pair), 0) / 400;
    const [rate, k] = [mean(([r]) => r), mean(([, one]) => one)];
    const [sr, sk] = [Math.sqrt(mean(([r]) => (r - rate) ** 2)), Math.sqrt(mean(([, one]) => (one - k) ** 2))];
    expect(Math.abs(mean(([r, one]) => (r - rate) * (one - k)) / (sr * sk))).toBeLessThan(0.15);
    const said = fitCurve(exact)!;
    expect(sr / said.uRate).toBeGreaterThan(0.85);
    expect(sr / said.uRate).toBeLessThan(1.15);
    expect(sk / said.uk).toBeGreaterThan(0.85);
    expect(sk / said.uk).toBeLessThan(1.15);
  });

  /**
   * The same covariance the long way: derivatives of the curve by differences of the curve itself, the matrix of weights by mathjs,
   * and the rate carried to `at` by one more difference.
   */
  function covariance(points: readonly Point[], { start, startRate, k }: Fit) {
    const curve = ([a, b, c]: readonly number[], t: number) => a! + (b! * (1 - Math.exp(-c! * t))) / c!;
    const at = [start, startRate, k];
    const moved = (j: number, by: number) => at.map((one, i) => (i === j ? one + by : one));
    const by = [1e-3, 1e-4, 1e-6];
    const slopes = points.map(({ t }) => by.map((h, j) => (curve(moved(j, h), t) - curve(moved(j, -h), t)) / (2 * h)));
    const weights = points.map(({ t, ut, uT }) => 1 / (uT ** 2 + (startRate * Math.exp(-k * t) * ut) ** 2 + 1e-8));
    const normal = [0, 1, 2].map((i) =>
      [0, 1, 2].map((j) => slopes.reduce((sum, row, n) => sum + weights[n]! * row[i]! * row[j]!, 0)),
    );
    const chi2 = points.reduce((sum, { t, T }, n) => sum + weights[n]! * (T - curve(at, t)) ** 2, 0);
    return { matrix: math.inv(normal), birge: Math.max(1, chi2 / (points.length - 3)) };
  }

  it.each([0, 0.3, 3])('has the covariance that derivatives by differences give, at a noise of %s K', (noise) => {
    const points = noisy(noise).map((point) => ({ ...point, t: point.t - noisy(noise)[0]!.t }));
    const fit = fitCurve(points)!;
    const { matrix, birge } = covariance(points, fit);
    // rate(at) = startRate − k (at − start), by start, startRate and k.
    const row = [fit.k, 1, -(fit.at - fit.start)];
    const times = (v: readonly number[]) => matrix.map((line) => line.reduce((sum, one, i) => sum + one * v[i]!, 0));
    const dot = (v: readonly number[], w: readonly number[]) => v.reduce((sum, one, i) => sum + one * w[i]!, 0);
    expect(fit.rate).toBeCloseTo(fit.startRate - fit.k * (fit.at - fit.start), 10);
    expect(fit.uk / Math.sqrt(matrix[2]![2]! * birge)).toBeCloseTo(1, 4);
    expect(fit.uRate / Math.sqrt(dot(row, times(row)) * birge)).toBeCloseTo(1, 4);
    expect(times(row)[2]! / Math.sqrt(matrix[2]![2]! * dot(row, times(row)))).toBeCloseTo(0, 4);
    // Where it lies is a weighted middle of what was read.
    expect(fit.at).toBeGreaterThan(points[0]!.T);
    expect(fit.at).toBeLessThan(points.at(-1)!.T);
  });

  it('has nothing to say of too few readings, of one moment, or of readings all at one temperature', () => {
    const points = noisy(0);
    expect(fitCurve(points.slice(0, 3))).toBeUndefined();
    expect(fitCurve(points.map((point) => ({ ...point, t: 5 })))).toBeUndefined();
    const flat = fitCurve(points.map((point) => ({ ...point, T: 300 })));
    expect(flat === undefined || Math.abs(flat.rate) < 1e-9).toBe(true);
  });
});

describe('what the sheet says', () => {
  const told = (given: Record<string, string>, choices: Record<string, string> = {}) =>
    evaluate(calc, situation(calc, { ...body, t_g: '20', dT_l: '4', dT_g: '4', ...given }, choices));

  it.each([
    ['a quick guard and no cut-off', { t_g: '10' }, {}, 'fitCutOff'],
    ['a slow guard', { t_g: '60' }, {}, 'shortenTime'],
    ['a rise wanted that is too great', { t_g: '10', dT_g: '25' }, {}, 'lowerRise'],
    ['a cut-off that opens too late', { t_g: '10', T_f: '400' }, { cutoff: 'fitted' }, 'cutOffLower'],
    ['a cut-off that opens in use', { t_g: '10', T_f: '200' }, { cutoff: 'fitted' }, 'cutOffHigher'],
    ['all well', { t_g: '10', T_f: '248 ± 5' }, { cutoff: 'fitted' }, 'leaveAndProve'],
  ])('%s', (_name, given, choices, say) => {
    const { instruction } = told({ R_h: '14.4 ± 0.1', ...given }, choices);
    expect(instruction?.order.say).toBe(say);
    expect(instruction?.order.steps.map((step) => step.say)).toContain('failedClosed');
  });

  it('names what a stuck heater ruins, and the time that would do', () => {
    const args = (t_g: string) => told({ R_h: '14.4 ± 0.1', t_g }).instruction?.order.args;
    expect(args('10')).toMatchObject({ harm: { sure: expect.arrayContaining(['liner']) as readonly string[] } });
    const { from, to } = args('60') as { from: Amount; to: number };
    expect(from.si).toBe(60);
    expect(to).toBeGreaterThanOrEqual(10);
    expect(to).toBeLessThan(30);
  });

  it.each([
    ['a slow guard', { t_g: '60' }],
    ['one that gives false alarms', { t_g: '10', dT_g: '25' }],
    ['a short time with a small rise', { t_g: '1', dT_g: '3' }],
    ['slow, and with a rise too great for any quick time', { t_g: '60', dT_g: '30' }],
  ])('sets time and rise in whole steps, and the same check passes: %s', (_name, given) => {
    const all: Record<string, string> = { R_h: '14.4 ± 0.1', T_f: '248 ± 5', ...given };
    const fitted = { cutoff: 'fitted' };
    const { instruction, verdict } = told(all, fitted);
    expect(verdict.state).toBe('beyond');
    const { t_g, dT_g } = instruction!.order.effect as { t_g?: number; dT_g?: number };
    if (t_g !== undefined) expect(t_g).toBe(Math.round(t_g));
    if (dT_g !== undefined) expect(2 * dT_g).toBe(Math.round(2 * dT_g));
    const after = {
      ...all,
      ...(t_g === undefined ? {} : { t_g: String(t_g) }),
      ...(dT_g === undefined ? {} : { dT_g: String(dT_g) }),
    };
    expect(told(after, fitted).verdict.state).toBe('within');
  });

  it('uses no guard where no time is short enough', () => {
    const { instruction } = told({ R_h: '1.44 ± 0.01', D_h: '5 ± 0.1', T_w: '235' }, { loss: 'held' });
    expect(instruction?.order.say).toBe('doNotUse');
    expect(instruction?.order.effect).toBeUndefined();
  });

  it('withholds a test that would do the damage it looks for', () => {
    const steps = (given: Record<string, string>, choices = {}) =>
      told(given, choices).instruction!.order.steps.map((step) => step.say);
    expect(steps({ R_h: '14.4 ± 0.1', t_g: '10' })).toContain('testSensorOut');
    // A heater of 160 W: 340 °C by the pass mark of 30 s.
    const strong = steps({ R_h: '3.6 ± 0.04', t_g: '2' });
    expect(strong).toContain('sensorOutWithheld');
    expect(strong).not.toContain('testSensorOut');
    const hot = steps({ R_h: '14.4 ± 0.1', t_g: '5', T_w: '262' });
    for (const heats of ['testHealthy', 'testSensorOut']) expect(hot).not.toContain(heats);
  });

  it('chooses a cut-off by where it holds and by where it opens, in steps of 5 °C', () => {
    const found = told({ R_h: '14.4 ± 0.1', t_g: '10' }).instruction!.order.steps.find(
      ({ say }) => say === 'cutOffHolds',
    );
    expect(found?.args).toEqual({ holds: 225, opens: 260 });
    const text = words.steps.cutOffHolds({ holds: 225, opens: 260 }, { number: String } as never);
    expect(text).toMatch(/IEC 60691.*\(Th\).*crimp or screw.*never solder/);
    const fitted = told({ R_h: '14.4 ± 0.1', t_g: '10', T_f: '248 ± 5' }, { cutoff: 'fitted' }).instruction!.order;
    expect(fitted.steps.find(({ say }) => say === 'holdsToo')?.args).toEqual({ holds: 225 });
  });

  it('cites the specific heats of brass and steel as the table of materials has them', () => {
    const { brass, steel } = materials;
    expect(calc.inputs.c_x?.basis?.source).toContain(`brass, ${brass.heat.value}, and steel, ${steel.heat.value} J`);
  });

  it('refuses a curve that goes the wrong way, is too straight or too short, in words', () => {
    const { problems } = words;
    const at = (temperatures: readonly number[]) =>
      Object.fromEntries(temperatures.flatMap((T, i) => [[`t_${i + 1}`, `${i * 10}`], [`T_${i + 1}`, `${T}`]])); // prettier-ignore
    const problem = (temperatures: readonly number[], loss: string) =>
      told({ R_h: '14.4', ...at(temperatures) }, { loss }).modelProblem;
    expect(problem([200, 180, 162, 146], 'cooling')).toBe(problems.fewReadings({ least: 5, taken: 4 }));
    expect(problem([200, 180, 162, 146, 131], 'heating')).toBe(problems.notRising);
    expect(problem([20, 60, 97, 131, 162], 'cooling')).toBe(problems.notFalling);
    expect(problem([20, 60, 100, 140, 180, 220], 'heating')).toBe(problems.tooStraight);
    expect(problem([20, 80, 130, 170, 203, 229, 251], 'heating')).toBeUndefined();
  });
});
