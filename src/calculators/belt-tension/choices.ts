import { placedChoice } from '../../engine/shared-places';
import { beltOptions } from '../../reference/belts';
import { choice } from '../../engine/calculator';

export const choices = {
  by: choice({ note: {}, press: {} }, 'note'),
  which: choice({ first: {}, second: {} }, 'first'),
  belt: placedChoice(
    'belt.type',
    beltOptions({ mass: 'm_0', least: 'T_b', allowable: 'T_a', springRate: 'C_0', bending: 'EI_0' }),
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
  // A belt on pulleys lies between free and held ends; how far is not known.
  ends: choice(
    {
      string: { set: { chi: [0.5, 0.5] } },
      between: { set: { chi: [0.5, 0.5] } },
      pinned: { set: { chi: [0, 0] } },
      clamped: { set: { chi: [1, 0] } },
    },
    'string',
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
