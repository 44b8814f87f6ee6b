import { describe, expect, it } from 'vitest';
import { evaluate } from '../../engine/evaluate';
import { situation } from '../../../test/support/calculators';
import calc from './index';

const told = (given: Record<string, string>, choices: Record<string, string> = {}) =>
  evaluate(calc, situation(calc, { ...(choices.what === 'heater' ? {} : { T_a: '20 °C ± 1' }), ...given }, choices));

describe('the sensor', () => {
  it.each([
    ['a broken wire', { R_m: '100000' }, {}, 'beyond', /circuit is open/],
    ['no digits at all', { R_m: '200000' }, {}, 'beyond', /circuit is open/],
    ['a short of a tenth of an ohm, which has no temperature', { R_m: '0.1 ohm' }, {}, 'beyond', /touch each other/],
    ['a broken wire on the screen', { T_r: '-15' }, { by: 'shown' }, 'beyond', /circuit is open/],
    ['a short on the screen', { T_r: '380' }, { by: 'shown' }, 'beyond', /touch each other/],
    ['a sound one', { R_m: '125.3 ± 1' }, {}, 'within', /^Leave the sensor/],
    ['one that reads low', { R_m: '180 ± 1' }, {}, 'beyond', /Do not trust.*too low/],
    ['one that reads high', { R_m: '80 ± 1' }, {}, 'beyond', /Do not trust.*too high/],
    ['one at the limit', { R_m: '102 ± 1' }, {}, 'too close', /measure again/],
  ] as const)('%s', (_name, given, choices, state, words) => {
    const { verdict, instruction } = told(given, choices);
    expect(verdict.state).toBe(state);
    expect(instruction?.headline).toMatch(words);
  });

  it('that reads low hides a hotter block, one that reads high a colder', () => {
    const steps = (R_m: string) => told({ R_m }).instruction?.steps.join(' ');
    expect(steps('180 ± 1')).toMatch(/block is hotter than shown/);
    expect(steps('80 ± 1')).toMatch(/block is colder than shown/);
  });

  it('of a short has no temperature, and the sheet says so in words', () => {
    const { outcomes } = told({ R_m: '0.1 ohm' });
    expect(outcomes.T_s?.ok).toBe(false);
  });
});

describe('the heater', () => {
  it.each([
    ['as marked', { R_h: '14.4' }, 'within', /^Leave the heater/],
    ['for half the voltage', { R_h: '3.6', V_r: '12 V' }, 'beyond', /Take this heater out.*4 times/],
    ['with a loose joint', { R_h: '25' }, 'beyond', /wrong heater or a bad joint/],
    ['burnt through', { R_h: '1000000' }, 'beyond', /circuit is open/],
    ['at the limit', { R_h: '18', V: '24 ± 0.5' }, 'too close', /measure again/],
  ] as const)('%s', (_name, given, state, words) => {
    const { verdict, instruction } = told(given, { what: 'heater' });
    expect(verdict.state).toBe(state);
    expect(instruction?.headline).toMatch(words);
  });
});
