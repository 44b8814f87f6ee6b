import { describe, expect, it } from 'vitest';
import { generator, situation } from '../../../test/support/calculators';
import { expanded } from '../../formula/outcome';
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
const sharp = { alpha: '68 µm/(m·K) ± 0', T_p: '40 °C ± 0', T_m: '22 °C ± 0', h: '0.2 mm', h_1: '0.3 mm' } as const;

describe('a part built up in a loop, pressed at the foot, cooled and measured', () => {
  it('is counted back to the layer it has, and no other', () => {
    const random = generator(7);
    for (let i = 0; i < 40; i += 1) {
      const layers = 1 + Math.floor(random() * 600);
      const layer = 0.08 + Math.round(random() * 20) / 100;
      let top = 0.24;
      for (let n = 2; n <= layers; n += 1) top += layer;
      // What a caliper finds: the foot's loss missing, the rest shrunk by 74 × 10⁻⁶ · 40.
      const measured = top / (1 + 74e-6 * 40) - 0.06;
      const found = look(
        {
          H: `${measured} mm ± 0.005`,
          s: '0.06 mm ± 0',
          h: `${layer} mm`,
          h_1: '0.24 mm',
          alpha: '74 µm/(m·K) ± 0',
          T_p: '62 °C ± 0',
          T_m: '22 °C ± 0',
        },
        { plan: 'rod' },
      );
      expect(found.verdict.state).toBe('within');
      expect(valueOf(found, 'N')).toBe(layers);
      expect(valueOf(found, 'Z_n') * 1000).toBeCloseTo(top + layer, 9);
      expect(found.instruction!.sentence).toMatch(`layer ${layers + 1},`);
    }
  });
});

/* JCGM 100, 4.3.7: half-widths 0.02 and 0.01 mm, rectangular, independent: u = √(0.02² + 0.01²) / √3 = 0.01291 mm. */
describe('doubt', () => {
  it('of reading and leaf adds as independent rectangles', () => {
    const found = look({ ...sharp, Z_r: '24.2 mm ± 0.02', g_f: '0.1 mm ± 0.01', T_p: '22 °C ± 0' });
    const known = found.outcomes.Z_w!;
    expect(known.ok && known.u * 1e3).toBeCloseTo(0.0129099, 6);
    const x = found.outcomes.x!;
    expect(x.ok && expanded(x)).toBeCloseTo((2 * 0.0129099) / 0.2, 5);
  });

  it('names the layers that it may be', () => {
    const found = look({ ...sharp, Z_r: '24.3 mm ± 0.3', g_f: '0.1 mm ± 0' });
    expect(found.verdict.state).toBe('too close');
    expect(found.outcomes.N).toMatchObject({ ok: false, failure: { kind: 'undetermined' } });
    expect(found.instruction!.sentence).toMatch(/may be any from 119 to 122/);
    expect(found.instruction!.steps.join()).toMatch(/coming down each time/);
  });

  it('sends a tall cold part back to the warm bed', () => {
    const found = look({ h: '0.2 mm', h_1: '0.2 mm', Z_r: '150.1 mm', g_f: '0.1 mm' });
    expect(found.verdict.state).toBe('too close');
    expect(found.instruction!.steps[0]).toMatch(/as warm as it was/);
  });

  it('says how well the top would have to be known, and that settles it', () => {
    const found = look({ ...sharp, T_p: '22 °C ± 0', Z_r: '24.22 mm ± 0.04', g_f: '0.1 mm ± 0' });
    expect(found.verdict.state).toBe('too close');
    expect(found.instruction!.sentence).toMatch(/layer 121 comes next/);
    expect(found.instruction!.steps.join()).toMatch(/known to ± 0.03\smm/);
    // ± 0.03 at two standard uncertainties is a half-width of 0.03 · √3 / 2.
    const better = look({ ...sharp, T_p: '22 °C ± 0', Z_r: '24.22 mm ± 0.0259', g_f: '0.1 mm ± 0' });
    expect(better.verdict.state).toBe('within');
  });
});

describe('what to do', () => {
  const at = (Z_r: string) => look({ ...sharp, T_p: '22 °C ± 0', Z_r: `${Z_r} mm ± 0.01`, g_f: '0.1 mm ± 0' });

  it('mirrors with the misfit', () => {
    const [high, low] = [at('24.22'), at('24.18')].map((found) => found.instruction!.movements[0]!);
    expect(high).toMatchObject({ part: 'first new layer', direction: 'thinner' });
    expect(low).toMatchObject({ part: 'first new layer', direction: 'thicker' });
    expect(high!.amount).toBeCloseTo(low!.amount, 12);
  });

  it('does not start midway between two layers', () => {
    const found = at('24.31');
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction!.sentence).toMatch(/between layers 120 and 121/);
    expect(at('24.29').instruction!.sentence).toMatch(/between layers 120 and 121/);
  });

  it('asks about what is lower than half a first layer', () => {
    const asked = (given: Given, picked: Given = {}) => {
      const found = look({ ...sharp, ...given }, picked);
      expect(found.instruction).toBeUndefined();
      return found.contradiction!.of;
    };
    expect(asked({ Z_r: '0.12 mm ± 0', g_f: '0.1 mm ± 0', h: '0.1 mm' })).toEqual(['Z_r', 'h_1']);
    expect(asked({ H: '80 mm', H_t: '79 mm' }, { plan: 'glue' })).toEqual(['H', 'H_t']);
  });

  it('promises what is read once the first new layer lies', () => {
    const { order } = at('24.22').instruction!;
    // Layer 121 up to 0.3 + 120 · 0.2, and the leaf.
    expect(order.effect!.Z_r).toBeCloseTo(0.0244, 9);
  });

  it('never goes on or glues what holds a person, heat, mains or a raised load, and says why', () => {
    const fits = { ...sharp, T_p: '22 °C ± 0' };
    for (const [given, plan] of [
      [{ Z_r: '24.2 mm ± 0.01', g_f: '0.1 mm ± 0' }, 'nozzle'],
      [{ H: '24.1 mm ± 0.01', s: '0 mm ± 0' }, 'rod'],
      [{ H: '24.1 mm ± 0.01', s: '0 mm ± 0', g: '0 mm ± 0', H_t: '44.4 mm', e_lim: '10 mm' }, 'glue'],
    ] as const) {
      expect(look({ ...fits, ...given }, { plan }).verdict.state).toBe('within');
      const found = look({ ...fits, ...given }, { plan, duty: 'safety' });
      expect(found.verdict.state).toBe('beyond');
      expect(found.instruction!.order.say).toBe('neverSeam');
      expect(found.instruction!.movements).toEqual([]);
    }
  });

  it('takes the foot’s loss and the warmth by their way, not by a sign', () => {
    const top = (picked: Given) =>
      valueOf(look({ ...sharp, H: '30 mm', s: '0.1 mm' }, { plan: 'rod', ...picked }), 'Z_c');
    expect(top({ zero: 'close' }) * 1e3).toBeCloseTo(30.1, 9);
    expect(top({ zero: 'far' }) * 1e3).toBeCloseTo(29.9, 9);
    const shrunk = (drift: string) =>
      valueOf(look({ alpha: '68 µm/(m·K) ± 0', Z_r: '30.1 mm', dT: '5 K' }, { heat: 'warm', drift }), 'dZ_w');
    expect(shrunk('cooler')).toBeGreaterThan(0);
    expect(shrunk('warmer')).toBeCloseTo(-shrunk('cooler'), 12);
  });

  it('takes up what whole thick layers leave over, in the second part’s first one', () => {
    const glued = (H_t: string) =>
      look(
        { ...sharp, T_p: '22 °C ± 0', H: '30 mm ± 0', g: '0 mm ± 0', h: '1 mm', h_1: '0.8 mm', H_t },
        { plan: 'glue' },
      );
    const low = glued('50.2 mm');
    expect(low.verdict.state).toBe('beyond');
    expect(low.instruction!.sentence).toMatch(/second part of 20.2\smm, 20 layers/);
    expect(low.instruction!.steps.join()).toMatch(/first layer of 1.2\smm instead of 0.8\smm/);
    expect(low.instruction!.movements[0]).toMatchObject({ direction: 'thicker' });
    expect(low.instruction!.order.effect!.h_1).toBeCloseTo(1.2e-3, 9);
    expect(glued('49.5 mm').instruction!.movements[0]).toMatchObject({ direction: 'thinner' });
    expect(glued('49.8 mm').verdict.state).toBe('within');
  });
});
