import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import calc from './index';

const plain = calc as unknown as Calculator;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  evaluate(plain, situation(plain, given, picked));
const valueOf = (found: ReturnType<typeof look>, symbol: string): number => {
  const outcome = found.outcomes[symbol];
  return outcome?.ok ? outcome.value : NaN;
};

/*
 * Dew points as printed to a tenth of a degree in DIN 4108-3, table of dew point temperatures (from memory): by air
 * temperature, the humidities 30 % upwards in steps of five. Left out: 19.1 for 20 °C and 95 %, where the full equations and
 * the standard's own approximation both give 19.17; misprinted or misremembered.
 */
const printed: Readonly<Record<number, readonly number[]>> = {
  30: [10.5, 12.9, 14.9, 16.8, 18.4, 20.0, 21.4, 22.7, 23.9, 25.1, 26.2, 27.2, 28.2, 29.1],
  25: [6.2, 8.5, 10.5, 12.2, 13.9, 15.3, 16.7, 18.0, 19.1, 20.3, 21.3, 22.3, 23.2, 24.1],
  20: [1.9, 4.1, 6.0, 7.7, 9.3, 10.7, 12.0, 13.2, 14.4, 15.4, 16.4, 17.4, 18.3],
};

describe('dew points against a printed table', () => {
  it.each(Object.entries(printed))('air of %s °C, within the table’s rounding', (t, row) => {
    row.forEach((dew, i) => {
      const found = look({ T: `${t} °C`, U: `${30 + 5 * i} %`, T_s: '10 °C' });
      const ours = valueOf(found, 'T_d') - 273.15;
      expect(Math.abs(ours - dew), `${30 + 5 * i} %: ${ours}, printed ${dew}`).toBeLessThanOrEqual(0.0501);
    });
  });
});

/** The project's own reference sheet, worked out from the same constants with another program. */
describe('Magnus’s formula', () => {
  it.each([
    [0, 6.112],
    [5, 8.717],
    [20, 23.326],
    [25, 31.601],
    [30, 42.337],
    [40, 73.675],
    [50, 123.45],
  ])('gives at %s °C %s hPa', (t, e) => {
    const found = look({ T: `${t} °C`, U: '100 %', T_s: '10 °C' });
    expect(Math.abs(valueOf(found, 'e_w') / 100 - e)).toBeLessThanOrEqual(t === 50 ? 0.005 : 0.001);
  });

  it.each([
    [20, 50, 9.26],
    [25, 40, 10.46],
    [30, 60, 21.39],
    [25, 10, -8.77],
  ])('air of %s °C and %s % has the dew point %s °C', (t, u, dew) => {
    const found = look({ T: `${t} °C`, U: `${u} %`, T_s: '10 °C' });
    expect(Math.abs(valueOf(found, 'T_d') - 273.15 - dew)).toBeLessThanOrEqual(0.005);
  });

  /* Steam tables, saturated water at 60, 80 and 100 °C: 19.95, 47.41 and 101.42 kPa (from memory). */
  it.each([
    [60, 199.5, 0.003],
    [80, 474.1, 0.013],
    [100, 1014.2, 0.026],
  ])('stays at %s °C within what the notes say of a box', (t, e, share) => {
    const found = look({ T: '20 °C', U: '50 %', T_b: `${t} °C` }, { ask: 'box' });
    expect(Math.abs(valueOf(found, 'e_b') / 100 / e - 1)).toBeLessThanOrEqual(share);
  });
});

describe('what to do', () => {
  it('mirrors the way of Z zero with the swing', () => {
    const swing = (T_1: string, T_2: string, lift: string) =>
      look({ T_1, T_2, h_1: '0.1 mm' }, { ask: 'swing', lift }).instruction?.movements[0];
    const morning = swing('5 °C ± 0.2', '25 °C ± 0.2', 'nozzle-foot')!;
    const evening = swing('25 °C ± 0.2', '5 °C ± 0.2', 'nozzle-foot')!;
    expect(morning).toMatchObject({ part: 'Z zero', direction: 'farther' });
    expect(evening).toMatchObject({ part: 'Z zero', direction: 'nearer' });
    expect(morning.amount).toBeCloseTo(evening.amount, 12);
    expect(swing('5 °C ± 0.2', '25 °C ± 0.2', 'nozzle-head')).toMatchObject({ direction: 'nearer' });
  });

  it('opens no gap in a machine of one material, whatever its lengths', () => {
    const same = { alpha_s: '17 µm/(m·K)', alpha_f: '17 µm/(m·K)', alpha_r: '17 µm/(m·K)' };
    const found = look({ ...same, T_1: '5 °C', T_2: '35 °C', l_s: '500 mm', l_f: '210 mm' }, { ask: 'swing' });
    expect(Math.abs(valueOf(found, 'dg'))).toBeLessThan(1e-15);
  });

  it('covers wet, near, open and dry surfaces', () => {
    const stepsOf = (found: ReturnType<typeof look>) => found.instruction!.order.steps.map((step) => step.say);
    const at = (T_s: string) => look({ T: '20 °C ± 0.5', U: '50 % ± 2 %', T_s: `${T_s} °C ± 0.5` });
    expect(at('5').instruction!.order.say).toBe('getsWet');
    expect(at('10').instruction!.order.say).toBe('tooNear');
    expect(at('11.3').instruction!.order.say).toBe('waitAndRead');
    expect(at('18').instruction!.order.say).toBe('unwrap');
    const damp = look({ T: '20 °C ± 0.1', U: '50 % ± 0.5 %', T_s: '12.4 °C ± 0.1' });
    expect(stepsOf(damp)).toContain('rust');
    expect(stepsOf(look({ T: '10 °C', U: '30 %', T_s: '-20 °C' }))).toContain('frost');
  });

  it('names a box temperature that is enough, and it is', () => {
    const cool = look({ T: '22 °C ± 0', U: '60 % ± 0', T_b: '30 °C ± 0' }, { ask: 'box' });
    expect(cool.verdict.state).toBe('beyond');
    const enough = valueOf(cool, 'T_o') - 273.15;
    const warm = look({ T: '22 °C ± 0', U: '60 % ± 0', T_b: `${enough} °C ± 0` }, { ask: 'box' });
    expect(valueOf(warm, 'U_b')).toBeCloseTo(0.2, 6);
    const { T_b } = cool.instruction!.order.effect as { T_b: number };
    expect(T_b - 273.15).toBeCloseTo(45, 9);
    expect(look({ T: '22 °C ± 0', U: '60 % ± 0', T_b: '45 °C ± 0' }, { ask: 'box' }).verdict.state).toBe('within');
  });

  it('settles frost by the formula over ice, sooner than dew would', () => {
    // WMO-No. 8 over ice: 2.597 hPa at −10 °C; over water that is the dew point of −11.2 °C.
    const found = look({ T: '5 °C ± 0', U: '29.8 % ± 0', T_s: '-10.5 °C ± 0', m_d: '0 K' });
    expect(valueOf(found, 'T_k') - 273.15).toBeCloseTo(-10, 1);
    expect(found.verdict.state).toBe('beyond');
    const warm = look({ T: '20 °C ± 0', U: '50 % ± 0', T_s: '12 °C ± 0' });
    expect(valueOf(warm, 'T_k')).toBe(valueOf(warm, 'T_d'));
  });

  it('waits for a whole degree that surely does, and for none that the room never gives', () => {
    const cold = look({ T: '20 °C ± 0.5', U: '50 % ± 2 %', T_s: '5 °C ± 0.5' });
    const { T_s } = cold.instruction!.order.effect as { T_s: number };
    expect(T_s - 273.15).toBeCloseTo(Math.round(T_s - 273.15), 9);
    const at = (celsius: number) =>
      look({ T: '20 °C ± 0.5', U: '50 % ± 2 %', T_s: `${celsius} °C ± 0.5` }).verdict.state;
    expect(at(T_s - 273.15)).toBe('within');
    const muggy = look({ T: '20 °C ± 0.5', U: '97 % ± 1 %', T_s: '5 °C ± 0.5' }).instruction!.order;
    expect(muggy).toMatchObject({ say: 'neverDry' });
    expect(muggy.effect).toBeUndefined();
  });

  it('never warms a box beyond what lies in it stands', () => {
    const damp = { T: '30 °C ± 1', U: '80 % ± 5 %' };
    const pla = look({ ...damp, T_b: '45 °C ± 2' }, { ask: 'box', plastic: 'pla' });
    expect(pla.instruction!.order).toMatchObject({ say: 'dryBox' });
    const abs = look({ ...damp, T_b: '45 °C ± 2' }, { ask: 'box', plastic: 'abs' });
    expect(abs.instruction!.order.say).toBe('warmBox');
    const hot = look({ T: '22 °C ± 0', U: '40 % ± 0', T_b: '80 °C ± 2' }, { ask: 'box', plastic: 'pla' });
    expect(hot.verdict.state).toBe('beyond');
    expect(hot.instruction!.order.say).toBe('coolBox');
    expect((hot.instruction!.order.effect as { T_b: number }).T_b - 273.15).toBeLessThanOrEqual(55);
  });
});
