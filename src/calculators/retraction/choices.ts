import { choice } from '../../engine/calculator';
import { plastics } from './materials';

export const choices = {
  drive: choice(
    {
      tube: { set: { L: [450, 20], a_lo: 0.5, a_hi: 2, x_max: 7, x_step: 0.5 } },
      head: { set: { L: [45, 10], a_lo: 0.1, a_hi: 0.7, x_max: 2, x_step: 0.1 } },
    },
    'tube',
    { from: 'feed.place' },
  ),
  material: choice(plastics, 'pla'),
  source: choice({ table: {}, force: {} }, 'table'),
  land: choice({ same: {}, scaled: {} }, 'same'),
};
