import { calculator } from '../../engine/calculator';
import { contradiction, instruct } from './action';
import { choices } from './choices';
import { compare } from './compare';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: [
      'switchOffUnplug',
      'eyeProtectionChips',
      'clampPartNever',
      'drillChipsHot',
      'hotIron',
      'takeOutBoards',
      'whereScrewHolds',
    ],
    choices,
    inputs,
    formulas,
    limits,
    measured: ['L_r', 'L_e', 'L_h', 'w'],
    contradiction,
    action: instruct,
    ways: compare,
    beware: [
      'chartsDrillsWire',
      'shearAreasThose',
      'thinWallWidens',
      'torqueCoefficientScatters',
      'headsLowButton',
      'plasticsLoadCreeps',
      'heatInsertsDiffer',
      'largerScrewNeeds',
    ],
    examples,
  },
  words,
);
