import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';
import { model } from './model';
import { tables } from './table';
import words from './words/en';

export default calculator(
  {
    cautions: ['neverAlone', 'mainsKills', 'switchFails', 'blockBurns', 'keepGuardOn', 'guardIsSoftware'],
    choices,
    inputs,
    tables,
    model,
    formulas,
    limits,
    measured: ['R_h', 'D_h'],
    levers: { t_g: { step: () => 1 }, dT_l: { step: () => 0.5 }, dT_g: { step: () => 0.5 } },
    action: instruct,
    beware: ['oneLump', 'straightLoss', 'airCarriesMore', 'sensorHalfOut', 'wiresGoFirst', 'notForBeds', 'cutOffOpens'],
    examples,
  },
  words,
);
