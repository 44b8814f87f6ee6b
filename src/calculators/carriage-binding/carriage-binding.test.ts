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
const sure = { mu_p: '0.25 ± 0.01', L: '40 mm ± 0.5 mm', e: '0 mm ± 1 mm' };

describe('binding advice', () => {
  it('moves the drive or lengthens the guide where it binds, and does not ask for more force', () => {
    const found = look({ ...sure, d_0: '100 mm ± 1 mm' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.outcomes.F?.ok).toBe(false);
    const text = said(found);
    expect(text).toMatch(/^Move the drive .* towards the guide, or lengthen the guide/);
    expect(text).toContain('Do not raise the motor’s current');
    expect(found.instruction!.movements).toEqual([
      { part: 'drive’s point', direction: 'towards the guide', amount: expect.closeTo(0.06, 6) as number },
    ]);
  });

  it('has a verdict and an instruction at any offset, bound or not', () => {
    for (const d_0 of [0, 20, 60, 90, 120, 150, 200, 400]) {
      for (const way of ['level', 'upright']) {
        const found = look({ d_0: `${d_0} mm` }, { way });
        expect(found.verdict.state, `${d_0} ${way}`).not.toBe('none');
        expect(found.instruction, `${d_0} ${way}`).toBeDefined();
      }
    }
  });

  it('has moved far enough when it has done as told', () => {
    const found = look({ ...sure, d_0: '100 mm ± 1 mm' });
    const moved = 100 - found.instruction!.movements[0]!.amount * 1000;
    const outcome = look({ ...sure, d_0: `${moved} mm` }).outcomes.q;
    expect(outcome?.ok && outcome.value).toBeCloseTo(0.5, 9);
  });

  it('mirrors left and right of two drives', () => {
    const left = look({ ...sure, d_1: '150 mm', d_2: '140 mm', s: '80 % ± 1 %', e: '3 mm' }, { drive: 'both' });
    const right = look({ ...sure, d_1: '140 mm', d_2: '150 mm', s: '20 % ± 1 %', e: '-3 mm' }, { drive: 'both' });
    const [l] = left.instruction!.movements;
    const [r] = right.instruction!.movements;
    expect(l!.direction).toBe('more on the right');
    expect(r!.direction).toBe('more on the left');
    expect(l!.amount).toBeCloseTo(r!.amount, 9);
    expect(left.verdict.state).toBe(right.verdict.state);
  });

  it('gives the same forces seen from the other side', () => {
    const turned = (d_1: number, d_2: number, s: number, e: number) =>
      look(
        { mu_p: '0.12 ± 0', d_1: `${d_1} mm`, d_2: `${d_2} mm`, s: `${s} %`, e: `${e} mm`, L: '80 mm' },
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

  it('does not believe a far pull that is smaller', () => {
    const found = look({ F_a: '3 N', F_b: '2 N', a_2: '80 mm' }, { by: 'scale' });
    expect(found.instruction!.sentence).toMatch(/^Pull again/);
  });

  it('supports an arm that would hang up', () => {
    const found = look({ ...sure, d_0: '10 mm', e: '150 mm', F_m: '500 N' }, { way: 'upright' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction!.sentence).toMatch(/^Support it/);
  });

  it('squares a clamped gantry before it lightens the carriage', () => {
    const found = look({ ...sure, d_0: '5 mm', dx: '3 mm', F_m: '10 N', c_g: '100 N/mm ± 5 N/mm' });
    expect(found.instruction!.sentence).toMatch(/^Square the gantry/);
    expect(found.instruction!.movements).toContainEqual(
      expect.objectContaining({ part: 'leading end of the gantry', direction: 'back' }),
    );
    expect(said(look({ ...sure, d_0: '5 mm', F_m: '1 N', F_0: '2 N ± 0.2 N' }))).toMatch(
      /^Leave the guide; lower the acceleration/,
    );
  });

  it('leaves a guide alone that runs, with the right lubricant', () => {
    const found = look({ L: '60 mm', d_0: '20 mm', e: '0 mm ± 2 mm' }, { pair: 'bronze' });
    expect(found.verdict.state).toBe('within');
    expect(said(found)).toMatch(/^Leave the guide[^]*thin mineral oil/);
    expect(said(look({ L: '60 mm', d_0: '20 mm' }, { pair: 'wheels' }))).toContain('No lubricant on wheels');
  });
});
