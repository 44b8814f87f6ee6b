import { calculator } from '../../engine/calculator';
import { action, judge } from './action';
import { examples } from './examples';
import { formulas } from './formulas';
import { choices, inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['switchOffUnplug', 'supportGantryBed', 'hotEndStays'],
    choices,
    inputs,
    formulas,
    limits: [],
    measured: ['L', 'N', 'P_w'],
    judge,
    action,
    beware: [
      'periodAgreesSuspicion',
      'onlyPartsListed',
      'wavesAfterCorner',
      'wallDoesRun',
      'whereMotorsMove',
      'cycleHeaterShorter',
      'layerHeightScrew',
    ],
    examples,
  },
  words,
);
