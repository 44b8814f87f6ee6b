import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import calc from './index';
import { shareLeft } from './series';
import type { Span } from './words/en/orders';

const plain = calc as unknown as Calculator;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  evaluate(plain, situation(plain, { T: '20 °C ± 1', U: '45 % ± 5 %', ...given }, picked));
const known = (found: ReturnType<typeof look>, symbol: string) => {
  const outcome = found.outcomes[symbol];
  if (!outcome?.ok) throw new Error(symbol);
  return outcome;
};

/** J₀ by its integral, (1/π) ∫ cos(z sin θ) dθ: the trapezoid rule is exact to rounding for a periodic function. */
function besselJ0(z: number): number {
  const n = 400;
  let sum = 0;
  for (let i = 0; i < n; i += 1) sum += Math.cos(z * Math.sin((Math.PI * i) / n));
  return sum / n;
}

/** The k-th zero of J₀, k from 1, by halving between (k − ½)π and (k + ½)π − π/2. */
function zeroOf(k: number): number {
  let [low, high] = [(k - 0.5) * Math.PI, k * Math.PI];
  const sign = Math.sign(besselJ0(low));
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (Math.sign(besselJ0(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const zeros = Array.from({ length: 100 }, (_, i) => zeroOf(i + 1));
/** The whole series, as good as that: 100 terms leave less than 1e-9 out from x = 0.0003 on. */
const whole = (x: number): number => zeros.reduce((sum, z) => sum + (4 / z ** 2) * Math.exp(-(z ** 2) * x), 0);

describe('the series', () => {
  it('has the zeros that handbooks print', () => {
    // Abramowitz and Stegun, table 9.5 (from memory): 2.40483, 5.52008, 8.65373, 11.79153, 14.93092.
    [2.40483, 5.52008, 8.65373, 11.79153, 14.93092].forEach((z, i) => expect(zeros[i]).toBeCloseTo(z, 5));
  });

  it('is held to 0.0001 at every x, and so is the formula on the screen', () => {
    for (let i = 0; i <= 300; i += 1) {
      const x = 3e-4 * 10 ** ((4 * i) / 300);
      expect(Math.abs(shareLeft(x) - whole(x)), `x = ${x}`).toBeLessThan(1e-4);
    }
    for (const x of [0.001, 0.0242, 0.05, 0.3, 1, 4]) {
      const t = `${(x * 0.000875 ** 2) / 1e-12 / 3600} h`;
      const given = { T_b: '50 °C ± 0', T_1: '50 °C ± 0', D_1: '1e-12 m²/s', b: '0 ± 0', d_f: '1.75 ± 0', t };
      const found = look(given, { form: 'loose' });
      expect(known(found, 'q_t').value).toBeCloseTo(shareLeft(x), 6);
    }
  });

  it('is turned round to 0.02 % up to 30 % left', () => {
    for (const q of [0.001, 0.01, 0.05, 0.1, 0.2, 0.3]) {
      let [low, high] = [1e-3, 3];
      for (let i = 0; i < 60; i += 1) {
        const middle = (low + high) / 2;
        if (whole(middle) > q) low = middle;
        else high = middle;
      }
      const x = known(look({ q: `${100 * q} %` }), 'x_q').value;
      expect(Math.abs(x / low - 1), `q = ${q}`).toBeLessThan(2e-4);
    }
  });
});

describe('a band, never one time', () => {
  it('spreads over ten to a hundred times for every plastic, even on a loose strand', () => {
    for (const plastic of ['pla', 'petg', 'abs', 'pa', 'pc', 'tpu', 'asa', 'pp']) {
      const { low, high } = known(look({}, { plastic, form: 'loose' }), 't_q');
      expect(low, plastic).toBeGreaterThan(0);
      expect(high / low, plastic).toBeGreaterThan(8);
      expect(high / low, plastic).toBeLessThan(120);
    }
  });

  it('is named in the instruction from end to end, and the scale decides', () => {
    const { instruction, verdict } = look({ T_b: '45 °C ± 2' });
    expect(verdict.state).toBe('too close');
    const { say, steps, measureAgain } = instruction!.order;
    expect(say).toBe('dryThenWeigh');
    expect(steps[0]!.say).toBe('band');
    const { from, to } = steps[0]!.args.takes as unknown as Span;
    expect(from.unit).toBe('h');
    expect(to.count * (to.unit === 'days' ? 24 : 1)).toBeGreaterThan(8 * from.count);
    expect(steps[0]!.args.left).toMatchObject({ si: 0.1, unit: 'percent' });
    expect(measureAgain).toBe(true);
  });

  it('is certain where even its end is short enough, or its beginning too long', () => {
    expect(look({ T_b: '45 °C ± 2', t: '500 h' }).verdict.state).toBe('within');
    const short = look({ T_b: '45 °C ± 2', t: '0.1 h' });
    expect(short.verdict.state).toBe('beyond');
    const { say, effect } = short.instruction!.order;
    expect(say).toBe('dryUpTo');
    const hours = (effect as { t: number }).t / 3600;
    expect(hours).toBe(Math.round(hours));
    expect(look({ T_b: '45 °C ± 2', t: `${hours} h` }).verdict.state).toBe('within');
  });
});

describe('before the time: heat and damp air', () => {
  it('keeps each plastic of the table below where it softens, by its usual oven', () => {
    for (const plastic of ['pla', 'petg', 'abs', 'pa', 'pc', 'tpu', 'asa', 'pp']) {
      const found = look({}, { plastic });
      const hot = found.verdict.checks.find((check) => check.limit.of === 'T_b');
      expect(hot?.state, plastic).toBe('within');
    }
    const hot = look({ T_b: '65 °C ± 2' }).instruction!;
    expect(hot.order.say).toBe('ovenDown');
    const { T_b } = hot.order.effect as { T_b: number };
    expect([45, 50]).toContain(Math.round(T_b - 273.15));
    expect(look({ T_b: '54 °C ± 2' }).instruction!.order.say).toBe('probeFirst');
    expect(look({ T_b: '65 °C ± 2' }, { plastic: 'petg' }).instruction!.order.say).not.toBe('ovenDown');
  });

  it('sees that muggy air in a lukewarm oven dries nothing', () => {
    const muggy = look({ T: '28 °C ± 0.5', U: '80 % ± 2 %', T_b: '35 °C ± 1', U_0: '50 % ± 2 %' });
    expect(muggy.instruction!.order.say).toBe('dryAir');
    expect(known(muggy, 'Q').value).toBeGreaterThan(1);
    expect(look({ U: '70 % ± 15 %', T_b: '45 °C ± 1' }).instruction!.order.say).toBe('hygrometer');
  });
});

describe('nothing is dried above where it softens, whatever the question', () => {
  const weighed = { m_1: '1203 g ± 1', m_2: '1201 g ± 1', m_s: '200 g ± 1', t: '24 h' };

  it('how long: an oven of 70 °C is turned down for PLA, and what is then set passes', () => {
    const hot = { T_b: '70 °C ± 2', T: '10 °C ± 1' };
    const { order } = look(hot).instruction!;
    const { T_b, t } = order.effect as { T_b: number; t: number };
    expect((T_b - 273.15) / 5).toBeCloseTo(Math.round((T_b - 273.15) / 5), 9);
    expect(look({ ...hot, T_b: `${T_b - 273.15} °C ± 2`, t: `${t / 3600} h` }).verdict.state).toBe('within');
  });

  it('is it dry: weighed out of an oven of 70 °C, PLA is not dried there again', () => {
    for (const given of [weighed, { ...weighed, m_2: '1203 g' }]) {
      const found = look({ ...given, T_b: '70 °C ± 2' }, { ask: 'weigh' });
      expect(found.verdict.state).toBe('beyond');
      expect(found.instruction!.order.say).toBe('driedTooHot');
    }
    expect(look({ ...weighed, T_b: '54 °C ± 2' }, { ask: 'weigh' }).instruction!.order.say).toBe('probeFirst');
    expect(look({ ...weighed, T_b: '70 °C ± 2' }, { ask: 'weigh', plastic: 'abs' }).instruction!.order.say).not.toBe(
      'driedTooHot',
    );
  });

  it('how wet: says how hot at most before it says to dry, and calls a hot attic one', () => {
    const wet = look({ t_o: '2000 h', U: '60 % ± 5 %' }, { ask: 'store', plastic: 'pa' }).instruction!.order;
    expect(wet.say).toBe('dryFirst');
    const most = wet.steps.find(({ say }) => say === 'noHotter')!.args.most as { si: number };
    expect(most.si).toBeLessThan(90 + 273.15);
    const attic = look({ T: '58 °C ± 1', t_o: '1 h' }, { ask: 'store' });
    expect(attic.instruction!.order.say).toBe('lieCooler');
  });

  it('has no oven for what goes soft in a warm room', () => {
    const found = look({ T_b: '45 °C ± 2', T_g: '24 °C ± 1' });
    expect(found.instruction!.order).toMatchObject({ say: 'noOven' });
    expect(found.instruction!.order.effect).toBeUndefined();
  });
});

describe('lying open, and weighed', () => {
  it('knows an hour from a month', () => {
    const open = (t_o: string) => look({ t_o, U: '60 % ± 5 %' }, { ask: 'store', plastic: 'pa' });
    expect(open('0.1 h').verdict.state).toBe('within');
    expect(open('2000 h').verdict.state).toBe('beyond');
    expect(open('1 h').verdict.state).toBe('too close');
  });

  it('does not believe a kitchen scale with a kilogram of PLA, but a fine one with a strand', () => {
    const spool = { m_1: '1203 g ± 1', m_2: '1201 g ± 1', m_s: '200 g ± 1', t: '24 h', T_b: '45 °C ± 1' };
    expect(look(spool, { ask: 'weigh' }).verdict.state).toBe('too close');
    const coil = { m_1: '10.030 g ± 0.001', m_2: '10.000 g ± 0.001', m_s: '0 g', t: '48 h', T_b: '50 °C ± 1' };
    const found = look({ ...coil, T: '5 °C ± 1' }, { ask: 'weigh', form: 'loose' });
    expect(known(found, 'w_l').value).toBeCloseTo(0.003, 6);
    expect(['stopDrying', 'dryAndWeighAgain']).toContain(found.instruction!.order.say);
  });

  it('shows nothing where nothing was lost', () => {
    const gained = look({ m_1: '1200 g', m_2: '1201 g', m_s: '200 g' }, { ask: 'weigh' });
    expect(gained.instruction!.order.say).toBe('weighAgain');
    expect(gained.instruction!.measureAgain).toBe(true);
  });
});
