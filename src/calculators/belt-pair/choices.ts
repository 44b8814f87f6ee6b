import { placedChoice } from '../../engine/shared-places';
import { beltOptions } from '../../reference/belts';
import { choice } from '../../engine/calculator';

export const choices = {
  belts: choice({ same: {}, different: {} }, 'same'),
  belt: placedChoice(
    'belt.type',
    beltOptions({ pitch: 'p', mass: 'm_0', least: 'T_b', allowable: 'T_a', bending: 'EI_01' }),
    'curved2',
  ),
  belt_2: choice(beltOptions({ mass: 'm_02', least: 'T_b2', allowable: 'T_a2', bending: 'EI_02' }), 'curved2', {
    from: 'belt.second-type',
    when: { belts: 'different' },
  }),
  mass: choice(
    {
      weigh: {},
      table: {},
      typed: {},
    },
    'table',
  ),
  // A belt on pulleys lies between free and held ends; how far is not known.
  ends: choice(
    {
      string: { set: { chi_1: [0.5, 0.5], chi_2: [0.5, 0.5] } },
      between: { set: { chi_1: [0.5, 0.5], chi_2: [0.5, 0.5] } },
      pinned: { set: { chi_1: [0, 0], chi_2: [0, 0] } },
      clamped: { set: { chi_1: [1, 0], chi_2: [1, 0] } },
    },
    'string',
  ),
};
