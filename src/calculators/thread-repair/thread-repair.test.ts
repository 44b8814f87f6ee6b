import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { fromSi } from '../../quantity/unit';
import { length } from '../../quantity/kinds';
import { compareWays, evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import calc from './index';
import { advisedWay, judgeWays, WAY_IDS, type Asked, type Span } from './model';

const plain = calc as unknown as Calculator;
const hole = { L_r: '6 mm', L_e: '0 mm', L_h: '12 mm', w: '5 mm' } as const;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) => {
  const now = situation(plain, { ...hole, ...given }, picked);
  const found = evaluate(plain, now);
  return { found, ways: compareWays(plain, found, now) };
};
const standings = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  Object.fromEntries(look(given, picked).ways!.ways.map((way) => [way.name, way.standing]));

describe('the ways side by side', () => {
  it('need the hole measured first', () => {
    const now = situation(plain, {}, {});
    expect(compareWays(plain, evaluate(plain, now), now)).toBeUndefined();
  });

  it('advises one way at most, and none where what is left will do', () => {
    expect(Object.values(standings({})).filter((one) => one === 'advised')).toHaveLength(1);
    const whole = look({ L_r: '10 mm', L_e: '10 mm' }, { part: 'steel' });
    expect(whole.found.verdict.state).toBe('within');
    expect(whole.ways!.ways.map((way) => way.standing)).not.toContain('advised');
    expect(whole.found.instruction!.headline).toMatch(/^Leave the hole as it is/);
  });

  it('bars a bolt where the back cannot be reached, and an insert where the hole is too shallow', () => {
    expect(standings({})['Bolt and nut']).toBe('not possible');
    expect(standings({}, { hole: 'reached' })['Bolt and nut']).not.toBe('not possible');
    // 4.5 mm of insert and 2 mm of tap: 6.5 mm, blind; 4.5 mm through.
    expect(standings({ L_h: '6.4 mm' })['Wire thread insert']).toBe('not possible');
    expect(standings({ L_h: '6.6 mm' })['Wire thread insert']).not.toBe('not possible');
    expect(standings({ L_h: '6 mm' }, { hole: 'shut' })['Wire thread insert']).not.toBe('not possible');
  });

  it('takes a longer screw only where there is thread below', () => {
    expect(standings({ L_b: '0 mm' })['Longer screw']).toBe('not possible');
    expect(standings({ L_b: '8 mm' })['Longer screw']).toBe('advised');
  });

  it('lets a thin wall speak against drilling out', () => {
    const thin = standings({ w: '1.2 mm' }, { insert: '2d' });
    expect(thin['Wire thread insert']).toBe('falls short');
    expect(thin['Next larger screw']).toBe('falls short');
    expect(standings({ w: '0.3 mm' })['Next larger screw']).toBe('not possible');
  });

  it('names the insert that would be strong enough', () => {
    const insert = look({}).ways!.ways.find((way) => way.name === 'Wire thread insert')!;
    expect(insert.why).toBe('Choose 2 screw diameters: that length is strong enough.');
    const longer = standings({}, { insert: '2d' });
    expect(['will do', 'advised']).toContain(longer['Wire thread insert']);
  });

  it('changes its advice with the costs that the person sets', () => {
    const dear = standings({ c_n: '500' }, { insert: '2d' });
    expect(dear['Next larger screw']).toBe('will do');
    expect(dear['Wire thread insert']).toBe('advised');
    expect(standings({ c_n: '500', c_i: '500', c_r: '0', t_r: '1 min' }, { insert: '2d' })['New part']).toBe('advised');
  });

  it('names drills and taps by size', () => {
    const { ways } = look({}, { hole: 'reached' });
    const needs = Object.fromEntries(
      ways!.ways.map((way) => [way.name, way.needs.join('; ').replaceAll('\u00a0', ' ')]),
    );
    expect(needs['Wire thread insert']).toContain('drill 3.2 mm; tap M3 wire-insert; insert M3 × 4.5 mm');
    expect(needs['Next larger screw']).toContain('drill 3.3 mm; tap M4; screw M4, class 8.8');
    expect(needs['Bolt and nut']).toContain('drill 3.4 mm; bolt M3, class 8.8; nut M3');
  });
});

describe('the advice', () => {
  const span = (value: number): Span => ({ value, low: value, high: value });
  const base: Record<Asked, number> = {
    ...{ s_l: 2, s_i: 2, s_n: 2, s_b: 1, s_r: 2, s_min: 1 },
    ...{ C_l: 5, C_i: 4, C_n: 3, C_b: 2, C_r: 1 },
    ...{ L_b: 1, x_i: 1, x_w: 1, w_i: 1, w_n: 1, m_i: 1, m_n: 1 },
  };
  const best = (change: Partial<Record<Asked, number>>, wide: Partial<Record<Asked, number>> = {}) => {
    const read = (symbol: Asked): Span => {
      const { value } = span(change[symbol] ?? base[symbol]);
      const half = wide[symbol] ?? 0;
      return { value, low: value - half, high: value + half };
    };
    return advisedWay(judgeWays(read, 'reached'), read);
  };

  it.each(WAY_IDS)('can be any of them: %s, when the others cost more', (id) => {
    const symbol = { longer: 'C_l', insert: 'C_i', next: 'C_n', bolt: 'C_b', replace: 'C_r' } as const;
    expect(best({ [symbol[id]]: 0 })).toBe(id);
  });

  it('puts surely before doubtful, doubtful before too weak, and takes the strongest among the weak', () => {
    expect(best({ C_r: 0 }, { s_r: 1.5 })).toBe('bolt');
    const weak = { s_l: 0.5, s_i: 0.6, s_n: 0.4, s_b: 0.3, s_r: 0.2 };
    expect(best(weak)).toBe('insert');
    expect(best(weak, { s_r: 0.9 })).toBe('replace');
    expect(best({ ...weak, x_i: -1 })).toBe('longer');
  });
});

describe('the instruction', () => {
  it('refuses readings that contradict each other', () => {
    expect(look({ L_e: '8 mm' }).found.instruction).toMatchObject({ measureAgain: true });
    expect(look({ L_r: '14 mm' }).found.instruction).toMatchObject({ measureAgain: true });
    expect(look({ L_r: '14 mm' }, { hole: 'reached' }).found.instruction?.measureAgain).toBeUndefined();
  });

  it('says so where the doubt does not settle it', () => {
    const { found } = look({ L_e: '4.6 mm' });
    expect(found.verdict.state).toBe('too close');
    expect(found.instruction!.headline).toMatch(/too close to call: tighten to no more than .* or mend it/);
  });

  it('describes the way picked, whatever is advised', () => {
    const headline = (way: string) =>
      look({}, { way, hole: 'reached' }).found.instruction!.headline.replaceAll('\u00a0', ' ');
    expect(headline('insert')).toContain('drill 3.2 mm, tap M3 wire-insert');
    expect(headline('next')).toContain('drill 3.3 mm, tap M4');
    expect(headline('bolt')).toContain('3.4 mm');
    expect(headline('replace')).toContain('Replace the part');
    expect(headline('longer')).toContain('no good thread below');
  });

  // The trade's rule: 2 d of aluminium for an 8.8 screw, 1 d of steel (from memory; see references).
  it('agrees with the rules of thumb for engagement', () => {
    const reachNeeded = (part: string) => {
      const { found } = look({}, { part, size: 'M6' });
      const f = found.outcomes.f!;
      const F = found.outcomes.F_p!;
      return f.ok && F.ok ? fromSi(F.value / f.value, length.mm.unit) / 6 : NaN;
    };
    expect(reachNeeded('al-6063')).toBeGreaterThan(1.2);
    expect(reachNeeded('al-6063')).toBeLessThan(2);
    expect(reachNeeded('steel')).toBeGreaterThan(0.4);
    expect(reachNeeded('steel')).toBeLessThan(1);
  });
});
