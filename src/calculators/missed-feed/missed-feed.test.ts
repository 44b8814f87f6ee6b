import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { compareWays, evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import calc from './index';

const plain = calc as unknown as Calculator;
type Given = Readonly<Record<string, string>>;
const job = {
  h: '0.2 mm',
  h_1: '0.2 mm',
  w: '0.5 mm',
  v: '50 mm/s',
  t_L: '60 s ± 0',
  q_x: '80 % ± 0',
  rho: '1.25 g/cm³ ± 0',
  H_t: '100 mm',
  Z_s: '84 mm',
  G: '4 mm ± 0.03 mm',
  j_c: '60 % ± 5 %',
  j_g: '60 % ± 5 %',
  r_h: '0',
} as const;

function look(given: Given, picked: Given = {}) {
  const now = situation(plain, { ...job, ...given }, picked);
  const found = evaluate(plain, now);
  const ways = compareWays(plain, found, now)!.ways;
  return { ...found, advice: ways.find(({ standing }) => standing === 'advised')!.name, ways };
}

describe('which way out', () => {
  it('goes on late in a job, and starts again early in it', () => {
    const late = look({});
    expect(late.verdict.state).toBe('within');
    expect(late.advice).toMatch(/^Go on/);
    expect(late.instruction!.headline).toMatch(/^Go on with this part: about 20 layers, 4\smm, are missing/);
    expect(late.instruction!.movements![0]).toMatchObject({ direction: 'down' });
    const early = look({ Z_s: '6 mm' });
    expect(early.verdict.state).toBe('beyond');
    expect(early.advice).toMatch(/^Print it again/);
    expect(early.instruction!.headline).toMatch(/^Print it again/);
  });

  it('does not glue or go on where a load has to be held', () => {
    for (const stands of ['stuck', 'off']) {
      const found = look({}, { duty: 'safety', stands });
      expect(found.verdict.state).toBe('beyond');
      expect(found.advice).toMatch(/^Print it again/);
    }
  });

  it('glues what came off, never goes on with it', () => {
    const found = look({}, { stands: 'off' });
    expect(found.verdict.state).toBe('within');
    expect(found.ways[0]!.standing).toBe('not possible');
    expect(found.instruction!.headline).toMatch(/^Cut it flat/);
  });

  it('glues where the band is too high to be cut away in place', () => {
    const found = look({ b_m: '6 mm ± 0.5 mm' }, { band: 'trim' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.ways[0]!.standing).toBe('falls short');
    expect(found.advice).toMatch(/^Cut, print/);
    expect(look({ b_m: '2 mm ± 0.5 mm' }, { band: 'trim' }).verdict.state).toBe('within');
    expect(look({ b_m: '3.1 mm ± 0.5 mm' }, { band: 'trim' }).verdict.state).toBe('too close');
  });

  it('advises the cheapest of what surely does, and no other', () => {
    for (const [given, picked] of [
      [{}, {}],
      [{ r_h: '20' }, {}],
      [{ p_r: '90 %' }, {}],
      [{ j_c: '45 % ± 20 %' }, {}],
      [{}, { duty: 'loaded' }],
    ] as const) {
      const { ways } = look(given, picked);
      const sure = ways.filter(({ standing }) => standing === 'advised' || standing === 'will do');
      const least = Math.min(...sure.map(({ facts }) => Number(facts[2])));
      expect(Number(ways.find(({ standing }) => standing === 'advised')!.facts[2])).toBe(least);
    }
  });

  it('says what is open where it is too close to call, and what is surely right', () => {
    const found = look({ j_c: '45 % ± 20 %' });
    expect(found.verdict.state).toBe('too close');
    expect(found.instruction!.headline).toMatch(/too close to call.*Surely right is: cut it/);
    expect(found.instruction!.steps[0]).toMatch(/break them by hand/);
  });
});

describe('where the last sound layer lies', () => {
  it('is one number by the gap and a range by the clock', () => {
    expect(look({ G: '4 mm ± 0' }).instruction!.steps[0]).toMatch(/number 400, at Z = 80\smm/);
    const found = evaluate(plain, situation(plain, { ...job, t_d: '20 min ± 10 min' }, { by: 'delay' }));
    // 10 layers as a rectangle: ± 2 · 10 / √3 = ± 11.5.
    expect(found.instruction!.steps[0]).toMatch(/between 388 and 412, Z = 77.6\smm to 82.4\smm/);
  });

  it('refuses readings that contradict each other', () => {
    expect(look({ Z_s: '120 mm' }).instruction!.headline).toMatch(/above the height of the whole/);
    expect(look({ G: '90 mm ± 1 mm' }).instruction!.headline).toMatch(/nothing at all was printed/);
    const heavy = look({ m_f: '180 g ± 1 g', m_t: '150 g ± 1 g', k_u: '1 ± 0' }, { by: 'fed' });
    expect(heavy.instruction!.headline).toMatch(/higher than where the nozzle stopped/);
    for (const found of [heavy]) expect(found.instruction!.measureAgain).toBe(true);
  });
});
