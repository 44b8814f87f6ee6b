import { materials, type Material } from '../../reference/materials';
import { choice } from '../../engine/calculator';
import type { OptionData } from '../../engine/spec';

type Share = readonly [percent: number, half: number];

/** A plastic as an option: its density, and what a cold joint and a glued one hold of a sound layer, %. */
function plastic({ density }: Material, joint: Share, glued: Share): OptionData {
  return { set: { rho: [density.value / 1000, density.half / 1000], j_c: joint, j_g: glued } };
}

export const choices = {
  by: choice(
    {
      gap: {},
      delay: {},
      fed: {},
    },
    'gap',
  ),
  band: choice(
    {
      none: {},
      trim: {},
      left: {},
    },
    'none',
  ),
  stands: choice({ stuck: {}, off: {} }, 'stuck'),
  plastic: choice(
    {
      pla: plastic(materials.pla, [60, 20], [60, 20]),
      petg: plastic(materials.petg, [60, 20], [40, 20]),
      abs: plastic(materials.abs, [40, 20], [75, 15]),
      pa: plastic(materials.pa66, [50, 20], [25, 15]),
      pc: plastic(materials.pc, [40, 20], [50, 20]),
    },
    'pla',
  ),
  duty: choice(
    {
      shown: { set: { s_n: 20 } },
      used: { set: { s_n: 40 } },
      loaded: { set: { s_n: 70 } },
      safety: { set: { s_n: 100 } },
    },
    'used',
  ),
};
