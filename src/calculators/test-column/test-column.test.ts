import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import type { Amount } from '../../engine/order';
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

  const heightOf = (found: ReturnType<typeof look>, key: string) =>
    found.instruction!.order.steps.find(({ say }) => say === key)?.args as { to: Amount } | undefined;
  const mm = (si: number) => Math.round(si * 1e6) / 1000;

  it('thickened by half millimetres, every check is within, and half a millimetre less is not enough', () => {
    const found = look(tall);
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction!.order.say).toBe('widen');
    const { b } = found.instruction!.order.effect as { b: number };
    expect(2 * mm(b)).toBe(Math.round(2 * mm(b)));
    const at = (width: number) => look({ ...tall, b: `${width} mm ± 0` }).verdict.state;
    expect(at(mm(b))).toBe('within');
    expect(at(mm(b) - 1)).not.toBe('within');
    expect(found.instruction!.movements).toEqual([
      { part: 'column', direction: 'thicker', amount: expect.closeTo(b - 0.006, 9) as number },
    ]);
  });

  it('thin walls too, where the width goes by no single power', () => {
    const walls = { ...tall, t_w: '1.2 mm ± 0.05', q_i: '15 % ± 3', b: '8 mm ± 0.03' };
    const found = look(walls, { core: 'shell' });
    const { b } = found.instruction!.order.effect as { b: number };
    expect(look({ ...walls, b: `${mm(b)} mm ± 0.03` }, { core: 'shell' }).verdict.state).toBe('within');
  });

  it('shortened to the height it names, every check is within', () => {
    const low = { ...tall, b: '10 mm ± 0.03', L: '150 mm ± 0.5' };
    const to = heightOf(look(low), 'shorten')!.to.si;
    expect(mm(to)).toBe(Math.round(mm(to)));
    expect(look({ ...low, L: `${mm(to)} mm ± 0.5` }).verdict.state).toBe('within');
  });

  const loose = { ...known, b: '20 mm ± 0.03', L: '150 mm ± 0.5', F: '6 N ± 0.5' };
  const stiff = { ...loose, E: '20 GPa ± 0', w: '4 mm', f_m: '1 Hz ± 0' };

  it('with the rim it asks for, the whole check passes', () => {
    const found = look({ ...stiff, r: '0 mm ± 0', q_r: '50 % ± 20' });
    expect(found.instruction!.order.say).toBe('changeFoot');
    const { r } = found.instruction!.order.effect as { r: number };
    expect(2 * mm(r)).toBe(Math.round(2 * mm(r)));
    const after = look({ ...stiff, r: `${mm(r)} mm ± 0`, q_r: '50 % ± 20' }, { foot: 'rim' });
    expect(after.verdict.state).toBe('within');
  });

  it('asks for a wider rim than there is, by the difference', () => {
    const rim = (r: string, foot: string) => look({ ...stiff, r, q_r: '50 % ± 20' }, { foot }).instruction!;
    const [bare, some] = [rim('0 mm ± 0', 'bare'), rim('2 mm ± 0', 'rim')];
    expect(bare.movements[0]!.amount - some.movements[0]!.amount).toBeCloseTo(0.002, 9);
    expect(some.steps.join()).toMatch(/widen its rim to/);
  });

  it('draws it another way where neither three times the width nor half the height does', () => {
    const found = look({ ...tall, b: '2 mm ± 0', L: '500 mm ± 0', F: '10 N ± 0' }).instruction!.order;
    expect(found.say).toBe('drawAnew');
    expect(found.effect).toBeUndefined();
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
    // (6 · 10 · 200 / 0.4) ^ (1/3) = 31.07, rounded up to be sure: by half a millimetre on either side.
    expect(found.instruction!.steps.join()).toMatch(/pad 2\smm thick and 32\smm wide/);
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
