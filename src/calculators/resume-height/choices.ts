import { materials, type Material } from '../../reference/materials';
import { choice } from '../../engine/calculator';

/** A plastic as an option: its expansion, and how warm a part of it is on the whole while it prints, °C. */
function plastic({ expansion }: Material, warm: readonly [number, number]) {
  return { set: { alpha: [expansion.value, expansion.half], T_p: warm } } as const;
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
  /** Which way off, each beside the amount: no sign is asked for. */
  drift: choice({ cooler: {}, warmer: {} }, 'cooler', { when: { heat: 'warm' } }),
  zero: choice({ close: {}, far: {} }, 'close', { when: { plan: ['rod', 'glue'] } }),
  duty: choice({ other: {}, safety: {} }, 'other'),
  plastic: choice(
    {
      pla: plastic(materials.pla, [40, 8]),
      petg: plastic(materials.petg, [50, 10]),
      abs: plastic(materials.abs, [70, 15]),
      pa: plastic(materials.pa66, [55, 12]),
      pc: plastic(materials.pc, [80, 15]),
    },
    'pla',
  ),
};
