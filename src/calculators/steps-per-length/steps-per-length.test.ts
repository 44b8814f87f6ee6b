import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import type { Calculator } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import calc from './index';

const plain = calc as unknown as Calculator;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  evaluate(plain, situation(plain, given, picked));
const said = (found: ReturnType<typeof look>) =>
  [found.instruction!.headline, ...found.instruction!.steps].join('\n').replaceAll('\u00a0', ' ');
const exact = { x_1: '0 mm ± 0', b: '0 mm ± 0' };

describe('the drive’s own travel', () => {
  it('leaves a drive alone that moves what it is told', () => {
    const found = look({ ...exact, S_x: '80', x_2: '100 mm ± 0.03 mm' });
    expect(found.verdict.state).toBe('within');
    expect(said(found)).toMatch(/^Leave the steps of X: .*the parts make the same number/);
    expect(found.instruction!.movements ?? []).toEqual([]);
  });

  it('sets the counted number, not the measured digits, where the two agree', () => {
    const found = look({ ...exact, S_x: '78.7', x_2: '98.36 mm ± 0.05 mm' });
    expect(found.verdict.state).toBe('beyond');
    expect(said(found)).toContain('raise the steps of X from 78.7 steps per mm to 80 steps per mm');
    expect(found.instruction!.movements).toEqual([
      { part: 'steps per length, X', direction: 'raise', amount: expect.closeTo(1300, 6) as number },
    ]);
  });

  it('mirrors the direction with the reading', () => {
    const small = look({ ...exact, S_x: '80', x_2: '99.7 mm ± 0.03 mm' }).instruction!;
    const large = look({ ...exact, S_x: '80', x_2: '100.3 mm ± 0.03 mm' }).instruction!;
    expect(small.headline).toContain('too short');
    expect(small.movements![0]!.direction).toBe('raise');
    expect(large.headline).toContain('too far');
    expect(large.movements![0]!.direction).toBe('lower');
  });

  it.each([
    ['101.6 mm', 'belt of 2.032 mm pitch'],
    ['200 mm', '8 microsteps in place of 16'],
    ['50 mm', '32 microsteps in place of 16'],
    ['80 mm', 'pulley of 16 teeth in place of 20'],
  ])('does not paper over a wrong part: %s for 100 mm', (moved, cause) => {
    const found = look({ ...exact, S_x: '80', x_2: `${moved} ± 0.05 mm` });
    expect(said(found)).toContain('find the part that is other than counted');
    expect(said(found)).toContain(cause);
    expect(found.instruction!.movements).toEqual([]);
  });

  it('names the screw that moves like it', () => {
    const found = look({ ...exact, S_z: '400', x_2: '25 mm ± 0.05 mm' }, { axis: 'z' });
    expect(said(found)).toContain('screw of 2 mm lead in place of 8 mm');
  });

  it('keeps a number that moves right, whatever the parts entered make', () => {
    const found = look({ ...exact, S_x: '100', x_2: '100 mm ± 0.03 mm' });
    expect(found.verdict.state).toBe('beyond');
    expect(said(found)).toMatch(/^Leave the steps of X: it moves what it is told\. Correct what is entered/);
    expect(said(found)).toContain('pulley of 16 teeth in place of 20');
  });

  it('says how long the test would have to be, and a test that long settles it', () => {
    const ruled = { S_x: '80', x_1: '0 mm ± 0.1 mm', b: '0 mm ± 0' };
    const short = look({ ...ruled, x_2: '100 mm ± 0.1 mm' });
    expect(short.verdict.state).toBe('too close');
    const needed = /about (\d+) mm long/.exec(said(short))![1]!;
    const at = (length: number) => look({ ...ruled, l_c: `${length} mm`, x_2: `${length} mm ± 0.1 mm` }).verdict.state;
    expect(at(Number(needed))).toBe('within');
    expect(at(0.8 * Number(needed))).toBe('too close');
  });

  it('says so where no length would settle it', () => {
    expect(said(look({ S_x: '80', x_1: '0 mm ± 0.1 mm', x_2: '100.1 mm ± 0.1 mm' }))).toContain(
      'no length of test will settle it',
    );
  });

  it('asks again where the readings are swapped', () => {
    const found = look({ S_x: '80', x_1: '100 mm', x_2: '20 mm' });
    expect(found.instruction!.measureAgain).toBe(true);
    expect(said(found)).toContain('Measure again');
  });
});

describe('counting alone', () => {
  const parts = { by: 'parts' };
  it('gives the number before any is set, then compares', () => {
    expect(said(look({}, parts))).toMatch(/^X: the parts make 80 steps per mm/);
    expect(look({ S_x: '80' }, parts).verdict.state).toBe('within');
    const wrong = look({ S_x: '160' }, parts);
    expect(said(wrong)).toContain('lower the steps of X from 160 steps per mm to 80 steps per mm');
    expect(said(wrong)).toContain('32 microsteps in place of 16');
  });

  it('does not trust the diameter of a feed gear', () => {
    const found = look({ S_e: '93' }, { axis: 'feed', fed: 'parts' });
    expect(found.verdict.state).toBe('too close');
    expect(said(found)).toContain('Measure the travel');
  });
});

describe('the filament feed', () => {
  const feed = { axis: 'feed' };
  const told = { S_e: '93', r_1: '120 mm ± 0.3 mm' };
  it('raises the steps where too little is fed and lowers them where too much is', () => {
    const little = look({ ...told, r_2: '25 mm ± 0.3 mm' }, feed).instruction!;
    expect(little.movements![0]).toMatchObject({ direction: 'raise' });
    expect(little.movements![0]!.amount / 1e3).toBeCloseTo(93 / 0.95 - 93, 6);
    expect(look({ ...told, r_2: '15 mm ± 0.3 mm' }, feed).instruction!.movements![0]).toMatchObject({
      direction: 'lower',
    });
  });

  it('keeps slip out of the steps', () => {
    const found = look({ ...told, r_2: '20 mm ± 0.3 mm', r_3: '28 mm ± 0.3 mm' }, feed);
    expect(found.verdict.state).toBe('within');
    expect(said(found)).toContain('that is slip under back pressure');
    expect(said(look({ ...told, r_2: '20 mm ± 0.3 mm', r_3: '20.2 mm ± 0.3 mm' }, feed))).toContain(
      'no more is missing',
    );
  });

  it('asks for a longer piece where the rule cannot tell', () => {
    const found = look({ ...told, r_1: '120 mm ± 1 mm', r_2: '21 mm ± 1 mm' }, feed);
    expect(found.verdict.state).toBe('too close');
    expect(said(found)).toContain('feed a longer piece');
  });
});

describe('a printed piece', () => {
  const print = { by: 'print' };
  const made = (drive: number, wall: number) => ({
    S_x: '80',
    m_o: `${100 * (1 + drive) * (1 - 0.0025) + 2 * wall} mm ± 0.01 mm`,
    m_i: `${80 * (1 + drive) * (1 - 0.0025) - 2 * wall} mm ± 0.01 mm`,
    s_m: '0.25 % ± 0.02 %',
  });
  const other = { ...print, material: 'other' };

  it('scales the piece and leaves the drive where shrinkage explains it', () => {
    const found = look(made(0, 0), other);
    expect(found.verdict.state).toBe('within');
    expect(said(found)).toContain('Leave the steps of X');
    expect(said(found)).toContain('Leave the outline');
    expect(found.instruction!.movements).toEqual([
      { part: 'scale of the piece', direction: 'up', amount: expect.closeTo(1 / 0.9975 - 1, 9) as number },
    ]);
  });

  it('tells a wall that stands out from a wrong scale, both ways', () => {
    const out = look(made(0, 0.06), other).instruction!.movements!;
    const back = look(made(0, -0.06), other).instruction!.movements!;
    expect(out.find((one) => one.part === 'outline')).toMatchObject({ direction: 'inwards' });
    expect(back.find((one) => one.part === 'outline')).toMatchObject({ direction: 'outwards' });
    expect(out.find((one) => one.part === 'outline')!.amount).toBeCloseTo(0.06e-3, 9);
  });

  it('never sets steps by a piece, however far it is off', () => {
    for (const drive of [-0.03, -0.004, 0.004, 0.03]) {
      const found = look(made(drive, 0.05), other);
      expect(found.verdict.state).toBe('beyond');
      expect(said(found)).toContain('until its own travel is measured');
      expect(found.instruction!.movements!.map((one) => one.part)).not.toContain('steps per length, X');
    }
  });

  it('cannot tell a drive within a tenth of a percent through a plastic’s usual shrinkage', () => {
    const found = look({ S_x: '80', m_o: '99.78 mm ± 0.03 mm', m_i: '79.82 mm ± 0.03 mm' }, print);
    expect(found.verdict.state).toBe('too close');
    expect(said(found)).toContain('a printed piece cannot tell a drive that well');
  });

  it('wants the number set right before anything else', () => {
    expect(said(look({ ...made(0, 0), S_x: '81' }, other))).toMatch(/^Leave the piece for now/);
  });
});
