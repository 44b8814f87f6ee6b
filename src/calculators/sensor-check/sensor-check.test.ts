import { describe, expect, it } from 'vitest';
import { evaluate } from '../../engine/evaluate';
import { situation } from '../../../test/support/calculators';
import calc from './index';

const told = (given: Record<string, string>, choices: Record<string, string> = {}) =>
  evaluate(calc, situation(calc, { ...(choices.what === 'heater' ? {} : { T_a: '20 °C ± 1' }), ...given }, choices));

describe('the sensor', () => {
  it.each([
    ['a broken wire', { R_m: '100000' }, {}, 'beyond', 'sensorOpen', {}],
    ['no digits at all', { R_m: '200000' }, {}, 'beyond', 'sensorOpen', {}],
    ['a short of a tenth of an ohm, which has no temperature', { R_m: '0.1 ohm' }, {}, 'beyond', 'sensorShorted', {}],
    ['a short of nought, which is a reading', { R_m: '0 ohm' }, {}, 'beyond', 'sensorShorted', {}],
    ['a broken wire on the screen', { T_r: '-15' }, { by: 'shown' }, 'beyond', 'sensorOpen', {}],
    ['a short on the screen', { T_r: '380' }, { by: 'shown' }, 'beyond', 'sensorShorted', {}],
    ['a sound one', { R_m: '125.3 ± 1' }, {}, 'within', 'leaveSensor', {}],
    ['one that reads low', { R_m: '180 ± 1' }, {}, 'beyond', 'doNotTrust', { side: 'low' }],
    ['one that reads high', { R_m: '80 ± 1' }, {}, 'beyond', 'doNotTrust', { side: 'high' }],
    ['one at the limit', { R_m: '102 ± 1' }, {}, 'too close', 'sensorAgain', { side: 'high' }],
  ] as const)('%s', (_name, given, choices, state, say, args) => {
    const { verdict, instruction } = told(given, choices);
    expect(verdict.state).toBe(state);
    expect(instruction?.order).toMatchObject({ say, args });
  });

  it('that reads low hides a hotter block, one that reads high a colder', () => {
    const block = (R_m: string) =>
      told({ R_m }).instruction?.order.steps.find((step) => step.say === 'blockIs')?.args.block;
    expect(block('180 ± 1')).toBe('hotter');
    expect(block('80 ± 1')).toBe('colder');
  });

  it('of a short has no temperature, and the sheet says so in words', () => {
    const { outcomes } = told({ R_m: '0.1 ohm' });
    expect(outcomes.T_s?.ok).toBe(false);
  });
});

describe('agreement beats fixed bounds', () => {
  const cold = { T_a: '-12 °C ± 1', T_r: '-12 °C ± 0.5' };

  it('calls no circuit open that agrees with a cold garage, and clears it once it follows a hand', () => {
    const untried = told(cold, { by: 'shown' });
    expect(untried.verdict.state).toBe('none');
    expect(untried.instruction).toBeUndefined();
    const follows = told({ ...cold, T_h: '-3 °C ± 0.5' }, { by: 'shown' });
    expect(follows.verdict.state).toBe('within');
    expect(follows.instruction?.order.say).toBe('leaveSensor');
    const stands = told({ ...cold, T_h: '-12 °C ± 0.5' }, { by: 'shown' });
    expect(stands.verdict.state).toBe('beyond');
    expect(stands.instruction?.order.say).toBe('screenStands');
    const barely = told({ ...cold, T_h: '-10 °C ± 0.5' }, { by: 'shown' });
    expect(barely.instruction?.order).toMatchObject({ say: 'warmMore', measureAgain: true });
  });

  it('by ohms: a sensor of half a megohm in frost is no broken wire, one above its bound still is', () => {
    const frost = { R_n: '500 kohm ± 1', B: '3950 ± 10', T_a: '-12 °C ± 1' };
    const found = told({ ...frost, R_m: '3300 kohm ± 10' });
    expect(found.instruction?.order.say).toBe('leaveSensor');
    expect(told({ ...frost, R_m: '30000' }).instruction?.order.say).toBe('sensorOpen');
    expect(told({ ...frost, R_m: '8000 ± 10' }).instruction?.order.say).toBe('doNotTrust');
  });

  it('a screen that disagrees is not cleared by following a hand', () => {
    const found = told({ T_r: '36', T_h: '40' }, { by: 'shown' });
    expect(found.instruction?.order).toMatchObject({ say: 'doNotTrust', args: { side: 'high' } });
  });

  it('never clears a sensor for printing heat', () => {
    const { sentence } = told({ R_m: '125.3 ± 1' }).instruction!;
    expect(sentence).toMatch(/printing heat this does not show/);
  });
});

describe('platinum by IEC 60751', () => {
  const at = (R_m: string, law = 'pt100') => told({ R_m }, { law }).instruction?.order;

  it('is sound at 107.8 Ω in a room of 20 °C, which is no short', () => {
    expect(at('107.79 ohm ± 0.1')).toMatchObject({ say: 'leaveSensor' });
    expect(at('1077.9 ohm ± 1', 'pt1000')).toMatchObject({ say: 'leaveSensor' });
    expect(at('2 ohm')).toMatchObject({ say: 'sensorShorted' });
    expect(at('100000 kohm')).toMatchObject({ say: 'sensorOpen' });
    expect(at('112 ohm ± 0.1')).toMatchObject({ say: 'doNotTrust', args: { side: 'high' } });
  });

  it('shows the hot end where it is open, the cold end where it is shorted', () => {
    const shows = (T_r: string, law: string) => told({ T_r }, { by: 'shown', law }).instruction?.order.say;
    expect(shows('500', 'pt100')).toBe('sensorOpen');
    expect(shows('-60', 'pt100')).toBe('sensorShorted');
    expect(shows('500', 'beta')).toBe('sensorShorted');
    expect(shows('-60', 'beta')).toBe('sensorOpen');
  });
});

describe('the ratio of a wrong resistance', () => {
  it('is carried exactly: twice the ohms hide 46 K at 215 °C, not 42', () => {
    const { outcomes } = told({ R_m: '250.7 ± 0', R_n: '100 ± 0', B: '3950 ± 0', T_a: '20 °C ± 0', T_w: '215 °C' });
    const off = outcomes.dT_R;
    // 1/T = 1/488.15 − ln 2 / 3950: 533.9 K.
    expect(off?.ok && off.value).toBeCloseTo(-45.7, 1);
  });

  it.each([
    ['three lines', { R_1: '10', R_2: '0.6798', R_3: '0.0634', R_m: '25 ± 0.1' }, 'three'],
    ['platinum', { R_m: '95 ohm ± 0.1' }, 'pt100'],
  ] as const)('is carried for %s too: one that reads low hides a hotter block', (_name, given, law) => {
    const { instruction } = told(given, { law });
    expect(instruction?.order).toMatchObject({ say: 'doNotTrust', args: { side: 'low' } });
    expect(instruction?.order.steps.find((step) => step.say === 'blockIs')?.args.block).toBe('hotter');
  });
});

describe('the heater', () => {
  it.each([
    ['as marked', { R_h: '14.4' }, 'within', 'leaveHeater', {}],
    ['for half the voltage', { R_h: '3.6', V_r: '12 V' }, 'beyond', 'takeOut', { times: 4 }],
    ['with a loose joint', { R_h: '25' }, 'beyond', 'heaterWeak', { times: 0.58 }],
    ['burnt through', { R_h: '1000000' }, 'beyond', 'heaterOpen', {}],
    ['at the limit', { R_h: '18', V: '24 ± 0.5' }, 'too close', 'heaterAgain', { times: 0.8 }],
  ] as const)('%s', (_name, given, state, say, args) => {
    const { verdict, instruction } = told(given, { what: 'heater' });
    expect(verdict.state).toBe(state);
    expect(instruction?.order).toMatchObject({ say, args });
  });

  it('is open below a twentieth of its power, weak above', () => {
    const say = (R_h: string) => told({ R_h, V: '24 ± 0' }, { what: 'heater' }).instruction?.order.say;
    expect(say('280')).toBe('heaterWeak');
    expect(say('300')).toBe('heaterOpen');
  });

  it('blames the supply where that is another one, else the winding', () => {
    const steps = (given: Record<string, string>) =>
      told(given, { what: 'heater' }).instruction!.order.steps.map((step) => step.say);
    expect(steps({ R_h: '3.6', V_r: '12 V' })).toEqual(['squareOfVoltage', 'rightKind', 'wouldDraw']);
    expect(steps({ R_h: '7' })).toEqual(['shortedWinding', 'rightKind', 'wouldDraw']);
    expect(steps({ R_h: '7', V: '31 ± 0' })).toContain('shortedWinding');
    expect(steps({ R_h: '7', V: '32 ± 0' })).toContain('squareOfVoltage');
  });

  it('that is weak or open is looked at from its terminals on', () => {
    for (const R_h of ['25', '1000000'])
      expect(told({ R_h }, { what: 'heater' }).instruction!.order.steps.map((step) => step.say)).toEqual([
        'off',
        'shouldHave',
        'terminalsFirst',
      ]);
  });
});
