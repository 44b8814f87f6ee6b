import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
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
        when: { ask: 'dry' },
      },
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
