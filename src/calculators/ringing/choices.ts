import { placedChoice } from '../../engine/shared-places';
import { beltOptions } from '../../reference/belts';
import { choice } from '../../engine/calculator';

export const choices = {
  by: choice(
    {
      count: {},
      direct: {},
    },
    'count',
  ),
  along: choice({ wall: {}, axis: {} }, 'wall'),
  test: choice({ one: {}, two: {} }, 'one'),
  corner: choice({ rest: {}, kept: {} }, 'rest'),
  belt: placedChoice('belt.type', beltOptions({ springRate: 'C_0' }), 'curved2'),
};
