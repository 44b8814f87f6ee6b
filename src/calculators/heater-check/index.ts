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
    cautions: ['fireBurnsNever', 'mainsKillsCovers', 'switchHasFailed', 'blockBurnsOnce', 'neverSwitchWatchdog'],
    choices,
    inputs,
    tables,
    model,
    formulas,
    limits,
    action: instruct,
    beware: [
      'blockTakenLump',
      'timesTakeLoss',
      'airCarriesMore',
      'sensorHalfOut',
      'insulationWiresSolder',
      'heatedBedObeys',
      'cutOffOpens',
    ],
    examples,
  },
  words,
);
