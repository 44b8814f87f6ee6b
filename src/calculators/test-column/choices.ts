import { materials, type Material } from '../../reference/materials';
import { choice } from '../../engine/calculator';

/** A plastic as an option that brings its stiffness and density. */
function plastic({ E, density }: Material) {
  return { set: { E: [E.value, E.half], rho: [density.value / 1000, density.half / 1000] } } as const;
}

export const choices = {
  section: choice({ square: {}, round: {} }, 'square'),
  core: choice(
    {
      solid: {},
      shell: {},
    },
    'solid',
  ),
  plastic: choice(
    {
      pla: plastic(materials.pla),
      petg: plastic(materials.petg),
      abs: plastic(materials.abs),
      pa: plastic(materials.pa66),
      pc: plastic(materials.pc),
    },
    'pla',
  ),
  warmth: choice(
    {
      cool: { set: { q_T: [0.95, 0.05] } },
      warm: { set: { q_T: [0.75, 0.2] } },
      soft: { set: { q_T: [0.25, 0.2] } },
    },
    'cool',
  ),
  bed: choice(
    {
      film: { set: { sigma_a: [1, 0.7] } },
      glass: { set: { sigma_a: [0.6, 0.5] } },
      glue: { set: { sigma_a: [1, 0.7] } },
      tested: {},
    },
    'film',
  ),
  foot: choice(
    {
      bare: { set: { r: 0, q_r: [50, 20] } },
      rim: { set: { r: 5, q_r: [50, 20] } },
      pad: { set: { r: 5, q_r: [100, 0] } },
    },
    'bare',
  ),
};
