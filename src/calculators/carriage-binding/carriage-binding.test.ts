import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import type { Calculator } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import calc from './index';

const plain = calc as unknown as Calculator;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  evaluate(plain, situation(plain, given, picked));
const said = (found: ReturnType<typeof look>): string =>
  [found.instruction!.sentence, ...found.instruction!.steps].join('\n').replaceAll('\u00a0', ' ');
const sure = { mu_p: '0.25 ± 0.01', L: '40 mm ± 0.5 mm', e: '0 mm ± 1 mm', q_lim: '50 %' };
const order = (found: ReturnType<typeof look>) => found.instruction!.order;

describe('binding advice', () => {
  it('moves the drive where it binds, so far that the doubt is within too, and does not ask for more force', () => {
    const found = look({ ...sure, d_0: '100 mm ± 1 mm' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.outcomes.F?.ok).toBe(false);
    expect(order(found)).toMatchObject({ say: 'driveTo', args: { bound: {} } });
    expect(said(found)).toContain('Do not raise the motor’s current');
    const to = order(found).effect!.d_0 as number;
    // At best 40 mm; a whole millimetre, and no nearer to the guide than the doubt of 4.5 % asks for.
    expect(to * 1e3).toBeCloseTo(Math.round(to * 1e3), 9);
    expect(to).toBeLessThan(0.039);
    expect(to).toBeGreaterThan(0.034);
    expect(look({ ...sure, d_0: `${to * 1e3} mm ± 1 mm` }).verdict.state).toBe('within');
  });

  it('has a verdict and an instruction at any offset, bound or not', () => {
    for (const d_0 of [0, 20, 60, 90, 120, 150, 200, 400]) {
      for (const way of ['level', 'upright']) {
        const found = look({ L: '40 mm', d_0: `${d_0} mm` }, { way });
        expect(found.verdict.state, `${d_0} ${way}`).not.toBe('none');
        expect(found.instruction, `${d_0} ${way}`).toBeDefined();
      }
    }
  });

  it('mirrors left and right of two drives', () => {
    const { mu_p, L } = sure;
    const left = look({ mu_p, L, d_1: '150 mm', d_2: '140 mm', s: '80 % ± 1 %', e_l: '3 mm' }, { drive: 'both' });
    const right = look({ mu_p, L, d_1: '140 mm', d_2: '150 mm', s: '20 % ± 1 %', e_l: '-3 mm' }, { drive: 'both' });
    const [l] = left.instruction!.movements;
    const [r] = right.instruction!.movements;
    expect(l!.direction).toBe('more on the right');
    expect(r!.direction).toBe('more on the left');
    // Each to its twentieth: 0.45 and 0.55 of the way from 0.8 and 0.2, give or take the rounding.
    expect(l!.amount).toBeCloseTo(r!.amount, 9);
    expect(left.verdict.state).toBe(right.verdict.state);
  });

  it('gives the same forces seen from the other side', () => {
    const turned = (d_1: number, d_2: number, s: number, e: number) =>
      look(
        { mu_p: '0.12 ± 0', d_1: `${d_1} mm`, d_2: `${d_2} mm`, s: `${s} %`, e_l: `${e} mm`, L: '80 mm' },
        { drive: 'both' },
      ).outcomes.F;
    const [one, other] = [turned(120, 90, 60, 15), turned(90, 120, 40, -15)];
    expect(one?.ok && other?.ok && Math.abs(one.value - other.value)).toBeLessThan(1e-12);
  });

  it('asks for two pulls where the pair leaves it open', () => {
    const found = look({ mu_p: '0.25 ± 0.1', L: '40 mm', d_0: '40 mm' });
    expect(found.verdict.state).toBe('too close');
    expect(found.instruction).toMatchObject({ measureAgain: true });
    expect(said(found)).toContain('luggage scale');
  });

  it('does not believe a far pull that is smaller, and judges nothing by it', () => {
    const found = look({ L: '40 mm', d_0: '30 mm', F_a: '3 N', F_b: '2 N', a_2: '80 mm' }, { by: 'scale' });
    expect(found.contradiction).toMatchObject({ of: ['F_a', 'F_b'] });
    expect(found.verdict.state).toBe('none');
  });

  it('promises nothing that its doubt does not carry', () => {
    // Shares known to a tenth, drives nearly two metres out: no share of them is surely within.
    const given = { L: '95 mm', d_1: '150 mm', d_2: '1880 mm', s: '53 %', mu_p: '0.21' };
    const found = look(given, { drive: 'both' });
    expect(found.verdict.state).toBe('beyond');
    expect(order(found)).toMatchObject({ say: 'finerFirst', measureAgain: true, movements: [] });
  });

  it('supports an arm that would hang up', () => {
    const found = look({ ...sure, d_0: '10 mm', e: '150 mm', F_m: '500 N' }, { way: 'upright' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction!.sentence).toMatch(/^Support it/);
  });

  it('squares a clamped gantry before it lightens the carriage', () => {
    const found = look({ ...sure, d_0: '5 mm', dx: '6 mm', F_m: '10 N', c_g: '100 N/mm ± 5 N/mm' });
    expect(order(found)).toMatchObject({ say: 'squareFirst', effect: { dx: 0 } });
    expect(found.instruction!.movements).toContainEqual({
      part: 'leading end of the gantry',
      direction: 'back',
      amount: expect.closeTo(0.006, 9) as number,
    });
    const slower = look({ ...sure, d_0: '5 mm', a: '5000', F_m: '4 N', F_0: '2 N ± 0.2 N' });
    expect(order(slower).say).toBe('slower');
    expect(order(slower).effect!.a).toBeGreaterThan(0);
    const weak = look({ ...sure, d_0: '5 mm', F_m: '1 N', F_0: '2 N ± 0.2 N' });
    expect(order(weak)).toMatchObject({ say: 'tooWeak', movements: [] });
  });

  it('halves the clamping between the two ends of the guide', () => {
    // 2 in 300 over 60 mm are 0.4 mm; the play takes 0.1 mm, each end half of the other 0.3 mm.
    const found = look({ L: '60 mm', d_0: '5 mm', dx: '2 mm ± 0', j: '0.1 mm ± 0', c_g: '100 N/mm ± 0' }).outcomes.N_c;
    expect(found?.ok && found.value).toBeCloseTo(15, 9);
  });

  it.each([-120, -30, 30, 120])('finds the friction of an upright arm by two pulls, mass at %i mm', (e) => {
    // An arm of 2 kg, friction 0.1 on 80 mm, drag 1 N: what a scale would show, by trying until forces and moments balance.
    const pull = (at: number): number => {
      let force = 0;
      for (let i = 0; i < 200; i += 1) {
        const pressed = Math.abs(force * at - 2 * 9.80665 * e) / 80;
        force = 1 + 2 * 9.80665 + 2 * 0.1 * pressed;
      }
      return force;
    };
    const given = {
      L: '80 mm ± 0',
      d_0: '30 mm',
      M: '2 kg ± 0',
      e: `${e} mm ± 0`,
      F_a: `${pull(20)} N ± 0`,
      a_1: '20 mm ± 0',
      F_b: `${pull(90)} N ± 0`,
      a_2: '90 mm ± 0',
    };
    const { mu, F_d } = look(given, { by: 'scale', way: 'upright' }).outcomes;
    expect(mu?.ok && mu.value).toBeCloseTo(0.1, 6);
    expect(F_d?.ok && F_d.value).toBeCloseTo(1, 6);
  });

  it('leaves a guide alone that runs, with the right lubricant', () => {
    const found = look({ L: '60 mm', d_0: '20 mm', e: '0 mm ± 2 mm' }, { pair: 'bronze' });
    expect(found.verdict.state).toBe('within');
    expect(said(found)).toMatch(/^Leave the guide[^]*thin mineral oil/);
    expect(said(look({ L: '60 mm', d_0: '20 mm' }, { pair: 'wheels' }))).toContain('No lubricant on wheels');
  });
});
