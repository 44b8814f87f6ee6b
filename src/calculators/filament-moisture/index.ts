import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import { DIAL, HOUR, hottest, LONGEST } from './oven';
import { sources } from './plastics';
import words from './words/en';

export default calculator(
  {
    cautions: ['neverLeaveUnattended', 'ovenDryerFilament', 'warmPlasticGives', 'ovenWallsSpool'],
    choices,
    inputs,
    formulas,
    limits: [
      {
        of: 'T_b',
        max: 'T_max',
        cite: sources.softening,
        when: { ask: ['dry', 'weigh'] },
      },
      { of: 'T', max: 'T_max', cite: sources.softening, when: { ask: 'store' } },
      {
        of: 'u_e',
        max: 'u_max',
        cite: commonPractice,
        when: { ask: 'dry' },
      },
      {
        of: 't_q',
        max: 't',
        cite: derived('diffusionOutCylinder'),
        when: { ask: 'dry' },
      },
      { of: 'W_o', max: 'W_lim', cite: sources.allowed, when: { ask: 'store' } },
      { of: 'W_2', max: 'W_lim', cite: sources.allowed, when: { ask: 'weigh' } },
    ],
    measured: ['T', 'U', 't_o', 'm_1', 'm_2'],
    // What was dried, or lay open, is past: only the oven to come can be set.
    levers: {
      T_b: {
        step: () => DIAL,
        to: (ask) => (ask.choice('ask') === 'dry' ? (hottest(ask) ?? 0) : ask.number('T_b')),
        from: (ask) => (ask.choice('ask') === 'dry' ? 0 : ask.number('T_b')),
      },
      t: {
        step: () => HOUR,
        to: (ask) => (ask.choice('ask') === 'dry' ? LONGEST : ask.number('t')),
        from: (ask) => (ask.choice('ask') === 'dry' ? 0 : ask.number('t')),
      },
    },
    action: instruct,
    beware: [
      'publishedRatesPlastic',
      'sumsBareStrand',
      'waterPolylacticAcid',
      'softenedWaterDamp',
      'waterHasAlready',
      'allowedWaterMoulding',
      'solventsPlasticiserLeave',
    ],
    examples,
  },
  words,
);
