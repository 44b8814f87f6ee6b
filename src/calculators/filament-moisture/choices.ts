import { choice } from '../../engine/calculator';
import { plastics } from './plastics';

export const choices = {
  ask: choice(
    'The question',
    {
      dry: { label: 'how long must it dry?' },
      store: { label: 'how wet did it get, lying open?' },
      weigh: { label: 'weighed before and after drying: is it dry?' },
    },
    'dry',
  ),
  plastic: choice('Plastic', plastics, 'pla'),
  form: choice(
    'Wound or loose',
    {
      spool: { label: 'wound on its spool', set: { k_s: [2, 1] } },
      loose: { label: 'a loose coil or strand, air all round', set: { k_s: 1 } },
    },
    'spool',
  ),
};
