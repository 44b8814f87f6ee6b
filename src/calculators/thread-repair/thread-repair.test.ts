import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { fromSi } from '../../quantity/unit';
import { length } from '../../quantity/kinds';
import { compareWays, evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import calc from './index';
import { advisedWay, judgeWays, WAY_IDS, type Asked, type Span, type WayId } from './model';
import words from './words/en';

const plain = calc as unknown as Calculator;
const hole = { L_r: '6 mm', L_e: '0 mm', L_h: '12 mm', w: '5 mm' } as const;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) => {
  const now = situation(plain, { ...hole, ...given }, picked);
  const found = evaluate(plain, now);
  return { found, ways: compareWays(plain, found, now) };
};
const idOf = (name: string) => WAY_IDS.find((id) => words.ways.names[id] === name)!;
const standings = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  Object.fromEntries(look(given, picked).ways!.ways.map((way) => [idOf(way.name), way.standing]));
const order = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  look(given, picked).found.instruction!.order;

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
    expect(whole.found.instruction!.order.say).toBe('leave');
  });

  it('bars a bolt where the back cannot be reached, and an insert where the hole is too shallow', () => {
    expect(standings({}).bolt).toBe('not possible');
    expect(standings({}, { hole: 'reached' }).bolt).not.toBe('not possible');
    // 4.5 mm of insert and 2 mm of tap: 6.5 mm, blind; 4.5 mm through.
    expect(standings({ L_h: '6.4 mm' }).insert).toBe('not possible');
    expect(standings({ L_h: '6.6 mm' }).insert).not.toBe('not possible');
    expect(standings({ L_h: '6 mm' }, { hole: 'shut' }).insert).not.toBe('not possible');
  });

  it('takes a longer screw only where there is thread below', () => {
    expect(standings({ L_b: '0 mm' }).longer).toBe('not possible');
    expect(standings({ L_b: '8 mm', L_h: '20 mm' }).longer).toBe('advised');
  });

  it('lets a thin wall speak against drilling out', () => {
    const thin = standings({ w: '1.2 mm' }, { insert: '2d' });
    expect(thin.insert).toBe('falls short');
    expect(thin.next).toBe('falls short');
    expect(standings({ w: '0.3 mm' }).next).toBe('not possible');
  });

  it('names the insert that would be strong enough', () => {
    // Of 1.5 diameters it holds 101 % at the least.
    expect(order({ s_min: '105 %' }, { way: 'insert' }).args.but).toEqual([{ why: 'otherInsert', diameters: 2 }]);
    const insert = look({ s_min: '105 %' }).ways!.ways.find((way) => way.name === words.ways.names.insert)!;
    expect(insert.why).toMatch(/ 2 /);
    const longer = standings({}, { insert: '2d' });
    expect(['will do', 'advised']).toContain(longer.insert);
  });

  it('changes its advice with the costs that the person sets', () => {
    const dear = standings({ c_n: '500' }, { insert: '2d' });
    expect(dear.next).toBe('will do');
    expect(dear.insert).toBe('advised');
    expect(standings({ c_n: '500', c_i: '500', c_r: '0', t_r: '1 min' }, { insert: '2d' }).replace).toBe('advised');
  });

  it('names drills and taps by size', () => {
    const { ways } = look({}, { hole: 'reached' });
    const needs = Object.fromEntries(
      ways!.ways.map((way) => [idOf(way.name), way.needs.join('; ').replaceAll('\u00a0', ' ')]),
    );
    expect(needs.insert).toMatch(/3\.2 mm.*; .*M3 .*; .*M3 × 4\.5 mm/);
    expect(needs.next).toMatch(/3\.3 mm.*; .*M4.*; .*M4.*8\.8/);
    expect(needs.bolt).toMatch(/3\.4 mm.*; .*M3.*8\.8.*; .*M3/);
  });
});

describe('the advice', () => {
  const span = (value: number): Span => ({ value, low: value, high: value });
  const base: Record<Asked, number> = {
    ...{ s_l: 2, s_i: 2, s_n: 2, s_b: 1, s_r: 2, s_min: 1 },
    ...{ C_l: 5, C_i: 4, C_n: 3, C_b: 2, C_r: 1 },
    ...{ L_b: 1, x_i: 1, x_w: 1, w_i: 1, w_n: 1, m_i: 1, m_n: 1 },
    ...{ s_h: 2, s_k: 2, C_h: 6, C_k: 7, x_h: 1, x_k: 1, w_h: 1, w_k: 1, m_h: 1, m_k: 1 },
  };
  const best = (change: Partial<Record<Asked, number>>, wide: Partial<Record<Asked, number>> = {}) => {
    const read = (symbol: Asked): Span => {
      const { value } = span(change[symbol] ?? base[symbol]);
      const half = wide[symbol] ?? 0;
      return { value, low: value - half, high: value + half };
    };
    return advisedWay(judgeWays(read, { hole: 'reached', plastic: true, noIron: false }), read);
  };

  it.each(WAY_IDS)('can be any of them: %s, when the others cost more', (id) => {
    const symbol = {
      longer: 'C_l',
      insert: 'C_i',
      next: 'C_n',
      bolt: 'C_b',
      heatset: 'C_h',
      nut: 'C_k',
      replace: 'C_r',
    } as const;
    expect(best({ [symbol[id]]: 0 })).toBe(id);
  });

  it('puts surely before doubtful, doubtful before too weak, and takes the strongest among the weak', () => {
    expect(best({ C_r: 0 }, { s_r: 1.5 })).toBe('bolt');
    const weak = { s_l: 0.5, s_i: 0.6, s_n: 0.4, s_b: 0.3, s_h: 0.3, s_k: 0.3, s_r: 0.2 };
    expect(best(weak)).toBe('insert');
    expect(best(weak, { s_r: 0.9 })).toBe('replace');
    expect(best({ ...weak, x_i: -1 })).toBe('longer');
  });
});

describe('the instruction', () => {
  it('asks about readings that contradict each other', () => {
    const asked = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) => {
      const { found } = look(given, picked);
      if (found.contradiction) expect(found.instruction).toBeUndefined();
      return found.contradiction?.of;
    };
    expect(asked({ L_e: '8 mm' })).toEqual(['L_e', 'L_r']);
    expect(asked({ L_r: '14 mm' })).toEqual(['L_r', 'L_h']);
    expect(asked({ L_r: '14 mm' }, { hole: 'reached' })).toBeUndefined();
    expect(asked({ L_r: '14 mm', L_e: '13 mm' }, { hole: 'reached' })).toEqual(['L_e', 'L_h']);
    // A hole that ends before the longer screw's tip.
    expect(asked({ L_b: '6 mm' })).toBeUndefined();
    for (const hole of ['blind', 'reached', 'shut']) expect(asked({ L_b: '8 mm' }, { hole })).toContain('L_b');
  });

  it('takes a screw longer by what is surely there, and promises what is read then', () => {
    const { say, args, effect, movements, steps } = order({ L_b: '5.3 mm ± 0.1 mm', L_e: '2 mm' });
    expect(say).toBe('longer');
    expect(args.percent).toBeGreaterThan(100);
    expect(movements).toEqual([{ part: 'screw', direction: 'longer', amount: 0.005 }]);
    expect(effect).toMatchObject({ L_r: 0.011, L_e: 0.007 });
    expect(steps.find((one) => one.say === 'takeLonger')!.args).toMatchObject({ by: { si: 0.005 } });
  });

  it('tightens to two digits, never more than surely holds', () => {
    const { found } = look({ L_r: '10 mm', L_e: '10 mm' }, { part: 'steel' });
    const limit = found.outcomes.T_e!;
    const { si } = found.instruction!.order.args.torque as { si: number };
    expect(limit.ok && si <= limit.low && si > 0.85 * limit.low).toBe(true);
    expect(Number(si.toPrecision(2))).toBe(si);
  });

  it('drills by sizes that drills are made in', () => {
    expect(order({ D_d: '3.217 mm' }, { way: 'insert' }).args.drill).toMatchObject({ si: 0.0032 });
    expect(order({}, { way: 'next', size: '4-40' }).args).toMatchObject({ size: '6-32', named: '#36' });
  });

  it('says so where the doubt does not settle it', () => {
    const { found } = look({ L_e: '4.6 mm' });
    expect(found.verdict.state).toBe('too close');
    expect(found.instruction!.order.say).toBe('inDoubt');
    expect(found.instruction!.order.steps.slice(0, 2).map((one) => one.say)).toEqual(['measureLeft', 'whyCheapest']);
  });

  it.each([
    ['insert', { drill: 3.2e-3, length: 4.5e-3 }, { size: 'M3' }],
    ['next', { drill: 3.3e-3 }, { size: 'M4' }],
    ['bolt', { drill: 3.4e-3 }, { size: 'M3', but: [] }],
    ['replace', {}, {}],
    ['longer', {}, { size: 'M3', but: [{ why: 'noThreadBelow' }] }],
  ] as const)('describes the way picked, whatever is advised: %s', (way: WayId, lengths, rest) => {
    const { say, args } = order({}, { way, hole: 'reached' });
    expect(say).toBe(way);
    expect(args).toMatchObject(rest);
    for (const [name, si] of Object.entries(lengths)) expect((args[name] as { si: number }).si).toBeCloseTo(si, 9);
  });

  it('says why the way advised: the cheapest of several, the only one, or the strongest of none', () => {
    const why = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
      order(given, picked).steps[0];
    expect(why({}, { insert: '2d' })).toMatchObject({ say: 'whyCheapest', args: { only: false } });
    expect(why({ w: '1.2 mm' })).toMatchObject({ say: 'whyCheapest', args: { only: true } });
    const print = [{ L_r: '8 mm', L_h: '10 mm', w: '2 mm', tau: '5 MPa' }, { part: 'print-pla' }] as const;
    expect(Object.values(standings(...print))).not.toContain('will do');
    expect(why(...print)?.say).toBe('whyStrongest');
  });

  it('sets heat-set insert and captive nut beside the others in plastic, and there only', () => {
    const plastic = standings({ L_h: '20 mm', w: '8 mm' }, { part: 'print-abs' });
    expect(Object.keys(plastic)).toEqual([...WAY_IDS]);
    expect(Object.keys(standings({}))).not.toContain('heatset');
    expect(standings({}, { part: 'pom' }).heatset).toBe('not possible');
    expect(standings({ L_h: '6.5 mm' }, { part: 'print-abs' }).heatset).toBe('not possible');
    // 2.4 mm of nut and 3 mm of floor; 1.8 mm of a thin one.
    expect(standings({ L_h: '5.2 mm', L_r: '5 mm' }, { part: 'print-abs' }).nut).toBe('not possible');
    expect(standings({ L_h: '5.2 mm', L_r: '5 mm' }, { part: 'print-abs', nut: 'thin' }).nut).not.toBe('not possible');
  });

  it('says of a hot iron what it does before what to do with it, and how hot', () => {
    const { steps } = order({ w: '8 mm' }, { part: 'print-pla', way: 'heatset' });
    expect(steps[0]!.say).toBe('ironFirst');
    expect(steps.find((one) => one.say === 'meltIn')!.args.tip).toMatchObject({ si: 210 + 273.15 });
    expect(steps.find((one) => one.say === 'letsGo')!.args.softens).toMatchObject({ si: 60 + 273.15 });
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
