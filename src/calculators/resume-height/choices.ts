import { materials, type Material } from '../../reference/materials';
import { choice, type OptionSpec } from '../../engine/calculator';

/** A plastic as an option: its expansion, and how warm a part of it is on the whole while it prints, °C. */
function plastic({ expansion }: Material, label: string, warm: readonly [number, number]): OptionSpec {
  return { label, set: { alpha: [expansion.value, expansion.half], T_p: warm } };
}

export const choices = {
  plan: choice(
    'What is planned',
    {
      nozzle: { label: 'go on, on the bed; height felt with the nozzle' },
      rod: { label: 'go on, on the bed; height by caliper' },
      glue: { label: 'print the rest by itself and glue it on' },
    },
    'nozzle',
    {
      hint: 'Going on needs a part that has not moved on the bed, not by a hair. One that came off can only be glued. Felt with the nozzle, height and restart are counted from the same zero.',
    },
  ),
  heat: choice(
    'The part now is',
    {
      cold: { label: 'cold, or cooling' },
      warm: { label: 'as warm as it was: bed at its heat for half an hour' },
    },
    'cold',
    { hint: 'Cold, it has shrunk by much of a layer for each 100 mm of height.' },
  ),
  plastic: choice(
    'Plastic',
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
