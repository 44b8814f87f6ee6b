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
});
