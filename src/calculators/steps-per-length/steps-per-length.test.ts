import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import type { Calculator } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import type { Amount } from '../../engine/order';
import calc from './index';

const plain = calc as unknown as Calculator;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  evaluate(plain, situation(plain, given, picked));
type Found = ReturnType<typeof look>;
const order = (found: Found) => found.instruction!.order;
const keys = (found: Found) => order(found).steps.map((one) => one.say);
const argsOf = (found: Found, key: string) => order(found).steps.find((one) => one.say === key)?.args;
const suspects = (found: Found) => argsOf(found, 'suspect')?.found;
/** As printed. */
const sentence = (found: Found) => found.instruction!.sentence.replaceAll('\u00a0', ' ');
const exact = { x_1: '0 mm ± 0', b: '0 mm ± 0', e_lim: '0.1 %', q_p: '0.1 %' };

describe('the drive’s own travel', () => {
  it('leaves a drive alone that moves what it is told', () => {
    const found = look({ ...exact, S_x: '80', x_2: '100 mm ± 0.03 mm' });
    expect(found.verdict.state).toBe('within');
    expect(order(found)).toMatchObject({ say: 'leaveBoth', args: { axis: 'x' }, movements: [] });
  });

  it('sets the counted number, not the measured digits, where the two agree', () => {
    const found = look({ ...exact, S_x: '78.7', x_2: '98.36 mm ± 0.05 mm' });
    expect(found.verdict.state).toBe('beyond');
    expect(order(found)).toMatchObject({ say: 'set', args: { change: { axis: 'x', raise: true } } });
    expect(keys(found)).toContain('takeCounted');
    expect(sentence(found)).toContain('from 78.7 steps per mm to 80 steps per mm');
    expect(found.instruction!.spoken).toContain('to eighty\u00a0steps per millimetre');
    expect(found.instruction!.movements).toEqual([
      { part: 'steps per length, x', direction: 'raise', amount: expect.closeTo(1300, 6) as number },
    ]);
  });

  it('mirrors the direction with the reading', () => {
    const small = order(look({ ...exact, S_x: '80', x_2: '99.8 mm ± 0.03 mm' }));
    const large = order(look({ ...exact, S_x: '80', x_2: '100.2 mm ± 0.03 mm' }));
    expect(small).toMatchObject({ args: { far: false, change: { raise: true } }, movements: [{ direction: 'raise' }] });
    expect(large).toMatchObject({ args: { far: true, change: { raise: false } }, movements: [{ direction: 'lower' }] });
  });

  it.each([
    ['101.6 mm', { part: 'belt', fits: 2.032, counted: 2 }],
    ['200 mm', { part: 'driver', fits: 8, counted: 16 }],
    ['50 mm', { part: 'driver', fits: 32, counted: 16 }],
    ['80 mm', { part: 'pulley', fits: 16, counted: 20 }],
  ])('does not paper over a wrong part: %s for 100 mm', (moved, cause) => {
    const found = look({ ...exact, S_x: '80', x_2: `${moved} ± 0.05 mm` });
    expect(order(found)).toMatchObject({ say: 'findPart', movements: [] });
    expect(suspects(found)).toContainEqual(cause);
  });

  it('takes no number for what no belt stretches by', () => {
    for (const moved of ['101', '99'])
      expect(order(look({ ...exact, S_x: '80', x_2: `${moved} mm ± 0.03 mm` })), moved).toMatchObject({
        say: 'findPart',
        movements: [],
      });
  });

  it('holds a travel against what this belt could have stretched: rubber less, steel cord at its higher pull more', () => {
    const far = { ...exact, S_x: '80', x_2: '100.28 mm ± 0.01 mm' };
    expect(order(look(far, { belt: 'curved2' })).say).not.toBe('set');
    expect(order(look(far, { belt: 'straight5' })).say).toBe('set');
    const farther = look({ ...exact, S_x: '80', x_2: '100.6 mm ± 0.01 mm' }, { belt: 'straight5' });
    expect(order(farther).say).toBe('findPart');
    expect(argsOf(farther, 'couldStretch')).toMatchObject({ most: { si: expect.closeTo(0.005, 6) as number } });
    expect(keys(farther)).toContain('notThePiece');
  });

  it('names the screw that moves like it', () => {
    const found = look({ ...exact, S_z: '400', x_2: '25 mm ± 0.05 mm' }, { axis: 'z' });
    expect(suspects(found)).toContainEqual({ part: 'screw', fits: 2, counted: 8 });
  });

  it('keeps a number that moves right, whatever the parts entered make', () => {
    const found = look({ ...exact, S_x: '100', x_2: '100 mm ± 0.03 mm' });
    expect(found.verdict.state).toBe('beyond');
    expect(order(found).say).toBe('correctEntries');
    expect(suspects(found)).toContainEqual({ part: 'pulley', fits: 16, counted: 20 });
  });

  it('says how long the test would have to be, and a test that long settles it', () => {
    const ruled = { S_x: '80', x_1: '0 mm ± 0.1 mm', b: '0 mm ± 0' };
    const short = look({ ...ruled, x_2: '100 mm ± 0.1 mm' });
    expect(short.verdict.state).toBe('too close');
    const needed = (argsOf(short, 'thisLong')!.length as Amount).si * 1e3;
    const at = (length: number) => look({ ...ruled, l_c: `${length} mm`, x_2: `${length} mm ± 0.1 mm` }).verdict.state;
    expect(at(needed)).toBe('within');
    expect(at(0.8 * needed)).toBe('too close');
  });

  it('says so where no length would settle it', () => {
    expect(keys(look({ S_x: '80', x_1: '0 mm ± 0.1 mm', x_2: '100.1 mm ± 0.1 mm' }))).toContain('noLengthSettles');
  });

  it('asks again where the readings are swapped', () => {
    const found = look({ S_x: '80', x_1: '100 mm', x_2: '20 mm' });
    expect(order(found)).toMatchObject({ say: 'placesSwapped', measureAgain: true });
  });
});

describe('counting alone', () => {
  const parts = { by: 'parts' };
  it('gives the number before any is set, then compares', () => {
    const counted = look({}, parts);
    expect(counted.instruction).toBeUndefined();
    expect(counted.outcomes.S_c).toMatchObject({ ok: true, value: expect.closeTo(80e3, 6) as number });
    expect(look({ S_x: '80' }, parts).verdict.state).toBe('within');
    const wrong = look({ S_x: '160' }, parts);
    expect(order(wrong)).toMatchObject({ say: 'setCounted', args: { change: { axis: 'x', raise: false } } });
    expect(sentence(wrong)).toContain('from 160 steps per mm to 80 steps per mm');
    expect(suspects(wrong)).toContainEqual({ part: 'driver', fits: 32, counted: 16 });
  });

  it('does not trust the diameter of a feed gear', () => {
    const found = look({ S_e: '96' }, { axis: 'feed', fed: 'parts' });
    expect(found.verdict.state).toBe('too close');
    expect(order(found)).toMatchObject({ say: 'measureTravel', measureAgain: true });
  });
});

describe('the filament feed', () => {
  const feed = { axis: 'feed' };
  const told = { S_e: '128', r_1: '120 mm ± 0.3 mm' };
  it('raises the steps where too little is fed and lowers them where too much is', () => {
    const little = order(look({ ...told, r_2: '25 mm ± 0.3 mm' }, feed));
    expect(little).toMatchObject({ say: 'setFeed', args: { little: true }, movements: [{ direction: 'raise' }] });
    // 128 / 0.95 = 134.7368, set to a hundredth.
    expect(little.movements[0]!.amount / 1e3).toBeCloseTo(134.74 - 128, 9);
    const much = order(look({ ...told, r_2: '15 mm ± 0.3 mm' }, feed));
    expect(much).toMatchObject({ say: 'setFeed', args: { little: false }, movements: [{ direction: 'lower' }] });
  });

  it('keeps slip out of the steps', () => {
    const found = look({ ...told, r_2: '20 mm ± 0.3 mm', r_3: '28 mm ± 0.3 mm' }, feed);
    expect(found.verdict.state).toBe('within');
    expect(keys(found)).toEqual(['slip']);
    expect(keys(look({ ...told, r_2: '20 mm ± 0.3 mm', r_3: '20.2 mm ± 0.3 mm' }, feed))).toEqual(['noSlip']);
  });

  it('asks for a longer piece where the rule cannot tell', () => {
    const found = look({ ...told, r_1: '120 mm ± 1 mm', r_2: '21 mm ± 1 mm' }, feed);
    expect(found.verdict.state).toBe('too close');
    expect(order(found).say).toBe('feedLonger');
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
    expect(order(found)).toMatchObject({ say: 'plasticShrank', args: { axis: 'x', scale: { up: true } } });
    expect(keys(found)).toContain('leaveOutline');
    const { scale } = order(found).args as { scale: { to: Amount } };
    expect(scale.to.si).toBeCloseTo(1 / 0.9975, 9);
    expect(found.instruction!.movements).toEqual([]);
  });

  it('tells a wall that stands out from a wrong scale, both ways', () => {
    const out = argsOf(look(made(0, 0.06), other), 'moveOutline')!;
    const back = argsOf(look(made(0, -0.06), other), 'moveOutline')!;
    expect([out.out, back.out]).toEqual([true, false]);
    expect((out.by as Amount).si).toBeCloseTo(0.06e-3, 9);
  });

  it('never sets steps by a piece, however far it is off', () => {
    for (const drive of [-0.03, -0.004, 0.004, 0.03]) {
      const found = look(made(drive, 0.05), other);
      expect(found.verdict.state).toBe('beyond');
      expect(order(found)).toMatchObject({ say: 'untilMeasured', args: { larger: drive > 0 } });
      expect(found.instruction!).toMatchObject({ movements: [], measureAgain: true });
    }
  });

  it('cannot tell a drive within a tenth of a percent through a plastic’s usual shrinkage', () => {
    const found = look({ S_x: '80', m_o: '99.78 mm ± 0.03 mm', m_i: '79.82 mm ± 0.03 mm' }, print);
    expect(found.verdict.state).toBe('too close');
    expect(order(found).say).toBe('pieceCannotTell');
  });

  it('wants the number set right before anything else', () => {
    expect(order(look({ ...made(0, 0), S_x: '81' }, other))).toMatchObject({ say: 'driveFirst', measureAgain: true });
  });
});
