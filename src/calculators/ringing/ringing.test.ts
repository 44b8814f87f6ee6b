import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import type { Calculator } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import calc from './index';

const plain = calc as unknown as Calculator;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  evaluate(plain, situation(plain, given, picked));
type Found = ReturnType<typeof look>;
const said = (found: Found) =>
  [found.instruction!.sentence, ...found.instruction!.steps].join('\n').replaceAll('\u00a0', ' ');

/** Ripples at a frequency, at 80 mm/s, counted well beyond the ramp. */
const at = (hertz: number, more: Readonly<Record<string, string>> = {}) => ({
  x_N: `${(5 * 80) / hertz} mm ± 0.05 mm`,
  v: '80',
  x_0: '30 mm ± 0.5 mm',
  a: '1000',
  x_tol: '0.02 mm ± 0',
  ...more,
});

describe('the acceleration', () => {
  it('is lowered to what surely keeps the ripples low, in steps that can be set', () => {
    const found = look(at(60, { a: '3000' }));
    expect(found.verdict.state).toBe('beyond');
    const { order } = found.instruction!;
    // At best 1421 mm/s² (references: 0.02 mm at 60 Hz); the spacing is known to 0.75 %, which counts double.
    expect(order).toMatchObject({ say: 'lowerTo', effect: { a: 1.35 } });
    expect(look(at(60, { a: '1350' })).verdict.state).toBe('within');
    const [move] = found.instruction!.movements;
    expect(move).toMatchObject({ part: 'acceleration', direction: 'down' });
    expect(move!.amount).toBeCloseTo(1.65, 9);
  });

  it('has the doubt of the height that is seen: a gloss wall shows half, a dull one hides half as much again', () => {
    const { x_tol, ...unsaid } = at(60, { a: '1000' });
    expect(look({ ...unsaid, x_tol }).verdict.state).toBe('within');
    const found = look(unsaid);
    expect(found.verdict.state).toBe('too close');
    const [low, high] = [0.6, 1.4].map((share) => look({ ...unsaid, a: `${1421 * share}` }).verdict.state);
    expect([low, high]).toEqual(['too close', 'too close']);
    expect(look({ ...unsaid, a: '400' }).verdict.state).toBe('within');
    expect(look({ ...unsaid, a: '3000' }).instruction!.order.effect!.a).toBeLessThan(0.7);
    expect(found.instruction!.order).toMatchObject({ say: 'lookAtWall', measureAgain: true });
    const share = found.outcomes.a_s;
    expect(share?.ok && share.budget[0]?.symbol).toBe('x_tol');
  });

  it('is lowered with the count begun beyond the longer ramp', () => {
    // 80 mm/s at 1350 mm/s²: 2.4 mm; where counting began at 1.5 mm it begins anew.
    const found = look(at(60, { a: '3000', x_0: '1.5 mm ± 0.05 mm' }));
    expect(found.instruction!.order.effect).toMatchObject({ a: 1.35, x_0: 0.003 });
    expect(said(found)).toContain('begin to count at 3 mm from the corner or farther');
  });

  it('is left alone where it is low enough, and where the reading cannot tell', () => {
    const low = look(at(60, { a: '900' }));
    expect(low.verdict.state).toBe('within');
    expect(said(low)).toMatch(/^Leave the acceleration: up to 1350 mm/);
    const close = look(at(60, { a: '1420' }));
    expect(close.verdict.state).toBe('too close');
    expect(close.instruction!.measureAgain).toBe(true);
    expect(said(close)).toContain('too close to call');
  });

  it('may pass between the two limits where it starts softly, not above', () => {
    expect(said(look(at(60, { a: '2500' })))).toContain('may pass');
    expect(said(look(at(60, { a: '4000' })))).toContain('even a soft start bends it too far');
  });

  it('names the accelerations of a whole number of swings', () => {
    // 80 mm/s at 60 Hz: 4800; at 3000 mm/s² the ramp lasts 1.6 swings, so the next is two: 2400.
    const text = said(look(at(60, { a: '3000', x_N: `${400 / 60} mm ± 0` })));
    expect(text).toContain('4800 mm/s² lasts one at this speed');
    expect(text).toContain('the next below the present one is 2400 mm/s², for 2 of them');
  });
});

describe('what is no swinging', () => {
  it('wants counting beyond the ramp', () => {
    const found = look(at(60, { x_0: '1 mm ± 0.5 mm' }));
    expect(found.verdict.state).toBe('beyond');
    expect(said(found)).toContain('counting began inside it');
    expect(found.instruction!.movements).toEqual([]);
  });

  it('asks for a second speed where the spacing is that of teeth or steps', () => {
    const teeth = look(at(40, { x_N: '10 mm ± 0.05 mm', a: '300' }));
    expect(said(teeth)).toContain('the belt’s teeth (2 mm)');
    expect(said(teeth)).toContain('at half the speed');
    const steps = look(at(100, { x_N: '4 mm ± 0.05 mm', a: '300' }));
    expect(said(steps)).toContain('four full steps of the motor (0.8 mm)');
    expect(steps.instruction!.measureAgain).toBe(true);
  });

  it('measures along the axis for that: a wall at 60° has teeth twice as far apart', () => {
    const found = look({ ...at(20), x_N: '20 mm ± 0.05 mm', theta_w: '60° ± 0' });
    expect(said(found)).toContain('the belt’s teeth');
  });

  it('tells a part from swinging by the second speed', () => {
    const two = { test: 'two' };
    const first = at(40, { x_N: '10 mm ± 0.1 mm', a: '300' });
    const swings = look({ ...first, x_N2: '5 mm ± 0.1 mm', v_2: '40' }, two);
    expect(swings.verdict.state).toBe('within');
    expect(said(swings)).toMatch(/^Leave the acceleration: up to/);
    const part = look({ ...first, x_N2: '10 mm ± 0.1 mm', v_2: '40' }, two);
    expect(part.verdict.state).toBe('beyond');
    expect(said(part)).toContain('Ridge period');
    expect(part.instruction!.movements).toEqual([]);
    const close = look({ ...first, x_N2: '9.6 mm ± 0.4 mm', v_2: '74' }, two);
    expect(close.verdict.state).toBe('too close');
    expect(said(close)).toContain('speeds farther apart');
  });
});

describe('what swings', () => {
  const belt = { L_1: '200 mm ± 0', L_t1: '1000 mm ± 0', C_0: '31000 N ± 0', M: '0.5 kg ± 0', w: '6 mm' };
  const frame = { F: '20 N ± 0', y_f: '0.5 mm ± 0', M_f: '4 kg ± 0' };
  it('is the belt where its frequency fits, the frame where that fits', () => {
    const onBelt = said(look(at(76, { a: '6000', ...belt, ...frame })));
    expect(onBelt).toContain('Belt: see that it is tight enough');
    expect(onBelt).not.toContain('Frame: screw');
    const onFrame = said(look(at(16, { ...belt, ...frame })));
    expect(onFrame).toContain('Frame: screw its corners tight');
    expect(onFrame).not.toContain('Belt: see');
  });

  it('is something softer than the belt where the ripples are slower, and asks for the frame', () => {
    const text = said(look(at(30, belt)));
    expect(text).toContain('Something softer than the belt swings');
    expect(text).toContain('Pull the frame with a luggage scale');
    expect(said(look(at(30, { ...belt, ...frame })))).not.toContain('Pull the frame');
  });

  it('is a small part on the carriage where they are faster', () => {
    expect(said(look(at(150, { ...belt, a: '20000', x_0: '60 mm' })))).toContain(
      'a hot end that can be wagged by hand',
    );
  });
});

describe('the speed kept through a corner', () => {
  const kept = { corner: 'kept' };
  it('is lowered where it alone rings too high, whatever the acceleration, to what surely does', () => {
    const found = look(at(60, { a: '900', v_c: '20' }), kept);
    expect(found.verdict.state).toBe('beyond');
    expect(said(found)).toMatch(
      /^Leave the acceleration, and lower the speed kept through corners from 20 mm\/s to 7 mm\/s/,
    );
    const [move] = found.instruction!.movements;
    expect(move).toMatchObject({ part: 'corner speed', direction: 'down' });
    // 2e-5 · 2π · 60 at best, to half a millimetre a second.
    expect(move!.amount).toBeCloseTo(0.02 - 0.007, 9);
  });

  it('comes on top where both are too high, and is left where it is low', () => {
    const both = look(at(60, { a: '3000', v_c: '20' }), kept).instruction!;
    expect(both.movements.map((one) => one.part)).toEqual(['acceleration', 'corner speed']);
    expect(look(at(60, { a: '900', v_c: '2' }), kept).verdict.state).toBe('within');
    expect(look(at(60, { a: '900', v_c: '7.54' }), kept).verdict.state).toBe('too close');
  });
});

it('needs the ripples, the speed and the acceleration, and names them', () => {
  expect(look({}).cannot).toMatch(/nothing has been measured/);
  expect(look({}).verdict.state).toBe('none');
  expect(look({ x_N: '8 mm', v: '80', x_0: '8 mm' }).cannot).toMatch(/acceleration/i);
  expect(look({ x_N: '8 mm', v: '80', x_0: '8 mm', a: '900' }).verdict.state).not.toBe('none');
});
