import { calculator } from '../../engine/calculator';
import { instruct } from './action';
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
      'takeOutBoards',
      'whereScrewHolds',
    ],
    choices,
    inputs,
    formulas,
    limits,
    action: instruct,
    ways: compare,
    beware: [
      'chartsDrillsWire',
      'shearAreasThose',
      'thinWallWidens',
      'torqueCoefficientScatters',
      'headsLowButton',
      'plasticsLoadCreeps',
      'largerScrewNeeds',
    ],
    examples,
  },
  words,
);
