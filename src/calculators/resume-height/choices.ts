import { materials, type Material } from '../../reference/materials';
import { choice, type OptionSpec } from '../../engine/calculator';

/** A plastic as an option: its expansion, and how warm a part of it is on the whole while it prints, °C. */
function plastic({ expansion }: Material, label: string, warm: readonly [number, number]): OptionSpec {
  return { label, set: { alpha: [expansion.value, expansion.half], T_p: warm } };
}

export const choices = {
  plan: choice(
    {
      nozzle: {},
      rod: {},
      glue: {},
    },
    'nozzle',
  ),
  heat: choice(
    {
      cold: {},
      warm: {},
    },
    'cold',
  ),
  plastic: choice(
    {
      pla: plastic(materials.pla, 'PLA', [40, 8]),
      petg: plastic(materials.petg, 'PETG', [50, 10]),
      abs: plastic(materials.abs, 'ABS', [70, 15]),
      pa: plastic(materials.pa66, 'polyamide', [55, 12]),
      pc: plastic(materials.pc, 'polycarbonate', [80, 15]),
    },
    'pla',
  ),
};
