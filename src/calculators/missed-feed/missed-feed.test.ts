import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import { compareWays, evaluate } from '../../engine/evaluate';
import type { Calculator } from '../../engine/calculator';
import calc from './index';
import say from './words/en';

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
  const advised = ways.find(({ standing }) => standing === 'advised')!;
  const advice = Object.entries(say.ways.names).find(([, name]) => name === advised.name)![0];
  return { ...found, advice, ways, order: found.instruction!.order };
}

describe('which way out', () => {
  it('goes on late in a job, and starts again early in it', () => {
    const late = look({});
    expect(late.verdict.state).toBe('within');
    expect(late.advice).toBe('resume');
    expect(late.order.say).toBe('resume');
    expect(late.order.args.missing).toMatchObject({ layers: 20, height: { si: 0.004, unit: 'mm' } });
    const early = look({ Z_s: '6 mm' });
    expect(early.verdict.state).toBe('beyond');
    expect(early.advice).toBe('anew');
    expect(early.order.say).toBe('anew');
  });

  it('does not glue or go on where a load has to be held', () => {
    for (const stands of ['stuck', 'off']) {
      const found = look({}, { duty: 'safety', stands });
      expect(found.verdict.state).toBe('beyond');
      expect(found.advice).toBe('anew');
    }
  });

  it('never saves with a seam what holds a person, heat, mains or a raised load, whatever is typed, and says why', () => {
    const strong = { s_n: '0 %', j_c: '100 % ± 0', j_g: '100 % ± 0', p_r: '0 %', p_g: '0 %' };
    for (const stands of ['stuck', 'off'])
      for (const band of ['none', 'trim'])
        for (const given of [{}, strong, { ...strong, s_n: '1 %', r_h: '100' }]) {
          const found = look({ b_m: '0.5 mm ± 0.1 mm', ...given }, { duty: 'safety', stands, band });
          expect(found.verdict.state).toBe('beyond');
          expect(found.advice).toBe('anew');
          expect(found.order.say).toBe('neverSeam');
          const reasons = found.order.steps
            .filter(({ say: key }) => key === 'speaksAgainst')
            .map(({ args }) => args.against);
          const never = [{ what: 'duty', how: 'surely' }];
          expect(reasons).toEqual([never, never]);
          expect(found.ways.slice(0, 2).map(({ standing }) => standing)).toEqual(['not possible', 'not possible']);
        }
  });

  it('cuts all that may be starved, to half a millimetre', () => {
    const { order } = look({ b_m: '1.8 mm ± 0.5 mm', r_h: '0' }, { band: 'trim' });
    // 1.8 mm and twice 0.5 / √3.
    expect(order.steps[1]).toMatchObject({ say: 'cutBand', args: { height: { si: 0.0025 } } });
  });

  it('glues what came off, never goes on with it', () => {
    const found = look({}, { stands: 'off' });
    expect(found.verdict.state).toBe('within');
    expect(found.ways[0]!.standing).toBe('not possible');
    expect(found.order.say).toBe('glue');
  });

  it('glues where the band is too high to be cut away in place', () => {
    const found = look({ b_m: '6 mm ± 0.5 mm' }, { band: 'trim' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.ways[0]!.standing).toBe('falls short');
    expect(found.advice).toBe('glue');
    expect(look({ b_m: '2 mm ± 0.5 mm' }, { band: 'trim' }).verdict.state).toBe('within');
    expect(look({ b_m: '3.1 mm ± 0.5 mm' }, { band: 'trim' }).verdict.state).toBe('too close');
  });

  it('says the same aloud whichever decimal mark the person writes', () => {
    const now = situation(plain, { ...job, Z_s: '84 mm' });
    const entries = Object.fromEntries(
      Object.entries(now.entries).map(([symbol, entry]) => [
        symbol,
        entry && { ...entry, text: entry.text.replaceAll('.', ',') },
      ]),
    );
    const [point, comma] = [now, { ...now, entries, mark: 'comma' as const }].map((one) => evaluate(plain, one));
    expect(point!.instruction!.order.args.hours).toBe(2.1);
    expect(comma!.instruction!.order.args).toEqual(point!.instruction!.order.args);
    expect(comma!.instruction!.sentence).not.toBe(point!.instruction!.sentence);
    expect(comma!.instruction!.spoken).toBe(point!.instruction!.spoken);
    expect(comma!.instruction!.spoken).toMatch(/two point one hours/);
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
    expect(found.order).toMatchObject({ say: 'tooClose', args: { sure: 'glue' } });
    expect(found.order.steps[0]).toMatchObject({ say: 'strength', args: { holds: 45, wanted: 40 } });
  });
});

describe('where the last sound layer lies', () => {
  it('is one number by the gap and a range by the clock', () => {
    expect(look({ G: '4 mm ± 0' }).order.steps[0]).toMatchObject({
      say: 'lastSound',
      args: { layer: 400, at: { si: 0.08, width: 0, unit: 'mm' } },
    });
    const found = evaluate(plain, situation(plain, { ...job, t_d: '20 min ± 10 min' }, { by: 'delay' }));
    // 10 layers as a rectangle, alone: never more than ± 10.
    const [place] = found.instruction!.order.steps;
    expect(place).toMatchObject({ say: 'lastSoundBetween', args: { from: 390, to: 410 } });
    expect(place!.args).toMatchObject({ low: { si: 0.078, unit: 'mm' }, high: { si: 0.082, unit: 'mm' } });
  });

  it('asks about readings that contradict each other', () => {
    const asked = (given: Given, picked: Given = {}) => {
      const found = evaluate(plain, situation(plain, { ...job, ...given }, picked));
      expect(found.verdict.state).toBe('none');
      expect(found.instruction).toBeUndefined();
      return found.contradiction!.of;
    };
    expect(asked({ Z_s: '120 mm' })).toEqual(['Z_s', 'H_t']);
    expect(asked({ G: '90 mm ± 1 mm' })).toEqual(['G', 'Z_s']);
    expect(asked({ m_f: '180 g ± 1 g', m_t: '150 g ± 1 g', k_u: '1 ± 0' }, { by: 'fed' })).toContain('m_f');
  });
});
