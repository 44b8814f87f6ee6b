import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import calc from './index';

const plain = calc as unknown as Calculator;
type Given = Readonly<Record<string, string>>;
const look = (given: Given, picked: Given = {}) => evaluate(plain, situation(plain, given, picked));
const valueOf = (found: ReturnType<typeof look>, symbol: string): number => {
  const outcome = found.outcomes[symbol];
  return outcome?.ok ? outcome.value : NaN;
};
const known = {
  E: '3.5 GPa ± 0',
  q_E: '1 ± 0',
  q_T: '1 ± 0',
  f_m: '40 Hz ± 0',
  sigma_a: '1 MPa ± 0',
  q_p: '40 % ± 0',
} as const;

describe('a wall thicker than half the width', () => {
  it('is a solid column, not one that is softer again', () => {
    for (const section of ['square', 'round']) {
      const solid = look({ b: '6 mm ± 0', L: '50 mm ± 0' }, { section });
      const thick = look({ b: '6 mm ± 0', L: '50 mm ± 0', t_w: '9 mm ± 0' }, { section, core: 'shell' });
      expect(valueOf(thick, 'I')).toBeCloseTo(valueOf(solid, 'I'), 18);
      expect(valueOf(thick, 'A')).toBeCloseTo(valueOf(solid, 'A'), 12);
    }
  });
});

describe('what is advised does it', () => {
  const tall = { ...known, b: '6 mm ± 0', L: '150 mm ± 0', F: '0.5 N ± 0', r: '0 mm ± 0', q_r: '50 % ± 0' };

  it('shortened to the least of the heights, every check is within', () => {
    const found = look(tall);
    expect(found.verdict.state).toBe('beyond');
    const least = Math.min(...['L_x', 'L_f', 'L_h'].map((symbol) => valueOf(found, symbol)));
    const at = (share: number) => look({ ...tall, L: `${least * 1000 * share} mm ± 0` }).verdict.state;
    expect(at(0.999)).toBe('within');
    expect(at(1.001)).toBe('beyond');
    const movement = found.instruction!.movements.find(({ part }) => part === 'column')!;
    expect(movement.direction).toBe('shorter');
    expect(0.15 - movement.amount).toBeCloseTo(least, 9);
  });

  it('with the rim it asks for, the foot holds', () => {
    const found = look(tall);
    const rim = found.instruction!.movements.find(({ part }) => part === 'rim round the foot')!;
    const check = (mm: number) =>
      look({ ...tall, r: `${mm} mm ± 0` }, { foot: 'brim' }).verdict.checks.find(({ limit }) => limit.of === 'sigma')!;
    expect(check(rim.amount * 1000 * 1.001).state).toBe('within');
    expect(check(rim.amount * 1000 * 0.99).state).toBe('beyond');
  });

  it('asks for a wider rim than there is, by the difference', () => {
    const bare = look(tall).instruction!.movements.find(({ part }) => part === 'rim round the foot')!;
    const some = look({ ...tall, r: '2 mm ± 0' }, { foot: 'brim' });
    const more = some.instruction!.movements.find(({ part }) => part === 'rim round the foot')!;
    expect(bare.amount - more.amount).toBeCloseTo(0.002, 9);
    expect(some.instruction!.steps.join()).toMatch(/widen its rim to/);
  });

  it('a width that sways as allowed, sways as allowed', () => {
    const found = look(tall);
    const wide = look({ ...tall, b: `${valueOf(found, 'b_x') * 1000} mm ± 0` });
    expect(valueOf(wide, 'x')).toBeCloseTo(valueOf(wide, 'x_lim'), 9);
  });
});

describe('what it says', () => {
  it('calls typical drag and hold too close, and says what to measure', () => {
    const found = look({ b: '8 mm', L: '40 mm' });
    expect(found.verdict.state).toBe('too close');
    expect(found.instruction!.measureAgain).toBe(true);
    expect(found.instruction!.steps.join()).toMatch(/test block/);
  });

  it('names every fault there is', () => {
    const found = look({ ...known, b: '4 mm ± 0', L: '200 mm ± 0', F: '1 N ± 0' });
    expect(found.instruction!.sentence).toMatch(/break loose, sway and be shaken up/);
  });

  it('asks for a pad where a rim would be too wide', () => {
    const found = look({ ...known, b: '4 mm ± 0', L: '200 mm ± 0', F: '10 N ± 0', q_r: '50 % ± 0' });
    // (6 · 10 · 200 / 0.4) ^ (1/3) = 31.07, rounded up to be sure.
    expect(found.instruction!.sentence).toMatch(/pad 2\smm thick and 32\smm wide/);
  });

  it('prints a stumpy piece', () => {
    const found = look({ ...known, b: '20 mm', L: '30 mm', F: '0.5 N ± 0.4' });
    expect(found.verdict.state).toBe('within');
    expect(found.instruction!.sentence).toMatch(/^Print it as it is/);
  });
});

/* Roark: the bar's stiffness falls with the cube of its length and rises with the fourth power of its width. */
describe('scaling', () => {
  it.each([2, 3])('%s times as tall: stiffness by the cube, frequency by the square', (times) => {
    const [one, more] = [40, 40 * times].map((L) => look({ ...known, b: '5 mm ± 0', L: `${L} mm ± 0` }));
    expect(valueOf(one!, 'k') / valueOf(more!, 'k')).toBeCloseTo(times ** 3, 9);
    expect(valueOf(one!, 'f') / valueOf(more!, 'f')).toBeCloseTo(times ** 2, 9);
  });
});
