import { materials, type Material } from '../../reference/materials';
import { choice, type OptionSpec } from '../../engine/calculator';

/** Where a metal stops being solid, and what a kilogram of it stores. */
function block({ name, heat, melts }: Material): OptionSpec {
  if (!melts) throw new Error(`${name} has no melting point`);
  return { label: name.replace(/,.*/, ''), set: { c_b: [heat.value, heat.half], T_bl: melts.value } };
}

function nozzle({ name, melts }: Material): OptionSpec {
  if (!melts) throw new Error(`${name} has no melting point`);
  return { label: name.replace(/,.*/, ''), set: { T_no: melts.value } };
}

export const choices = {
  loss: choice(
    'How the loss of heat is known',
    {
      surface: { label: 'reckoned from its surface' },
      held: { label: 'from the power that holds it hot' },
      heating: { label: 'from a heating curve, fully on' },
      cooling: { label: 'from a cooling curve, switched off' },
    },
    'surface',
    { hint: 'A measured loss is worth more than a reckoned one. Fan and cover as in use.' },
  ),
  block: choice(
    'Block of',
    {
      aluminium: { ...block(materials['al-6061']), label: 'aluminium alloy' },
      copper: block(materials.copper),
      brass: { ...block(materials.brass), label: 'brass' },
      steel: { ...block(materials.stainless), label: 'stainless steel' },
    },
    'aluminium',
    { from: 'heater.block' },
  ),
  nozzle: choice(
    'Nozzle of',
    {
      brass: { ...nozzle(materials.brass), label: 'brass' },
      copper: nozzle(materials.copper),
      steel: { ...nozzle(materials.steel), label: 'steel' },
    },
    'brass',
    { from: 'nozzle.material' },
  ),
  liner: choice(
    'Liner of PTFE in the hot part',
    { ptfe: { label: 'down to the nozzle' }, none: { label: 'none: metal all the way' } },
    'ptfe',
    { from: 'heater.liner' },
  ),
  cutoff: choice(
    'Separate thermal cut-off on the block',
    { none: { label: 'none' }, fitted: { label: 'fitted, in the heater’s own supply' } },
    'none',
    {
      from: 'heater.cutoff',
      hint: 'A thermal fuse or a thermal switch that cuts the supply by itself, without any program. A fuse for current is none: a heater that is stuck on draws no more than usual.',
    },
  ),
};
