import { placedChoice } from '../../engine/shared-places';
import { beltOptions } from '../../reference/belts';
import { choice } from '../../engine/calculator';

export const choices = {
  by: choice({ note: {}, press: {} }, 'note'),
  which: choice({ first: {}, second: {} }, 'first'),
  belt: placedChoice(
    'belt.type',
    beltOptions({ height: 'h', mass: 'm_0', least: 'T_b', allowable: 'T_a', springRate: 'C_0' }),
    'curved2',
  ),
  mass: choice(
    {
      weigh: {},
      table: {},
      typed: {},
    },
    'table',
    { when: { by: 'note' } },
  ),
  ends: choice(
    {
      string: {},
      pinned: {},
      clamped: {},
    },
    'string',
    {
      when: { by: 'note' },
    },
  ),
  adjuster: choice(
    {
      clockwise: {},
      anticlockwise: {},
      slide: {},
    },
    'clockwise',
    { from: 'belt.adjuster' },
  ),
};
