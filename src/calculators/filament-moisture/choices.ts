import { choice } from '../../engine/calculator';
import { plastics } from './plastics';

export const choices = {
  ask: choice(
    {
      dry: {},
      store: {},
      weigh: {},
    },
    'dry',
  ),
  plastic: choice(plastics, 'pla'),
  form: choice(
    {
      spool: { set: { k_s: [2, 1] } },
      loose: { set: { k_s: 1 } },
    },
    'spool',
  ),
};
