import { materials, type Material } from '../../reference/materials';
import { choice } from '../../engine/calculator';
import type { OptionData } from '../../engine/spec';

/** Where a metal stops being solid, and what a kilogram of it stores. */
function block({ name, heat, melts }: Material): OptionData {
  if (!melts) throw new Error(`${name} has no melting point`);
  return { set: { c_b: [heat.value, heat.half], T_bl: melts.value } };
}

function nozzle({ name, melts }: Material): OptionData {
  if (!melts) throw new Error(`${name} has no melting point`);
  return { set: { T_no: melts.value } };
}

export const choices = {
  loss: choice(
    {
      surface: {},
      held: {},
      heating: {},
      cooling: {},
    },
    'surface',
  ),
  block: choice(
    {
      aluminium: block(materials['al-6061']),
      copper: block(materials.copper),
      brass: block(materials.brass),
      steel: block(materials.stainless),
    },
    'aluminium',
    { from: 'heater.block' },
  ),
  nozzle: choice(
    {
      brass: nozzle(materials.brass),
      copper: nozzle(materials.copper),
      steel: nozzle(materials.steel),
    },
    'brass',
    { from: 'nozzle.material' },
  ),
  liner: choice({ ptfe: {}, none: {} }, 'ptfe', { from: 'heater.liner' }),
  cutoff: choice({ none: {}, fitted: {} }, 'none', {
    from: 'heater.cutoff',
  }),
};
