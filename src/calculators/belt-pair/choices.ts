import { placedChoice } from '../../engine/shared-places';
import { beltOptions } from '../../reference/belts';
import { choice } from '../../engine/calculator';

export const choices = {
  belts: choice({ same: {}, different: {} }, 'same'),
  belt: placedChoice(
    'belt.type',
    beltOptions({ pitch: 'p', height: 'h', mass: 'm_0', least: 'T_b', allowable: 'T_a' }),
    'curved2',
  ),
  belt_2: choice(beltOptions({ mass: 'm_02', least: 'T_b2', allowable: 'T_a2' }), 'curved2', {
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
  ends: choice(
    {
      string: {},
      pinned: {},
      clamped: {},
    },
    'string',
  ),
};
