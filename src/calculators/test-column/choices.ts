import { materials, type Material } from '../../reference/materials';
import { choice, type OptionSpec } from '../../engine/calculator';

/** A plastic as an option that brings its stiffness and density. */
function plastic({ E, density }: Material, label: string): OptionSpec {
  return { label, set: { E: [E.value, E.half], rho: [density.value / 1000, density.half / 1000] } };
}

export const choices = {
  section: choice('Section of the column', { square: { label: 'square' }, round: { label: 'round' } }, 'square', {
    hint: 'An oblong one: take it as square with its smaller width, the way it gives most.',
  }),
  core: choice(
    'Inside',
    {
      solid: { label: 'solid: lines all through' },
      shell: { label: 'walls, with infill or nothing between' },
    },
    'solid',
    { hint: 'Infill counts as weight only: it is far softer sideways than the walls.' },
  ),
  plastic: choice(
    'Plastic',
    {
      pla: plastic(materials.pla, 'PLA'),
      petg: plastic(materials.petg, 'PETG'),
      abs: plastic(materials.abs, 'ABS'),
      pa: plastic(materials.pa66, 'polyamide'),
      pc: plastic(materials.pc, 'polycarbonate'),
    },
    'pla',
  ),
  warmth: choice(
    'While it prints, the column is',
    {
      cool: { label: 'cool: fan on, layers long', set: { q_T: [0.95, 0.05] } },
      warm: { label: 'warm: short layers or a hot bed', set: { q_T: [0.75, 0.2] } },
      soft: { label: 'hardly set: it gives to the finger', set: { q_T: [0.25, 0.2] } },
    },
    'cool',
    { hint: 'PLA goes soft near 60 °C, PETG near 80 °C. A thin column hardly cools between its short layers.' },
  ),
  bed: choice(
    'What holds it to the bed',
    {
      film: { label: 'sheet with a plastic film, clean and warm', set: { sigma_a: [1, 0.7] } },
      glass: { label: 'bare glass, clean and warm', set: { sigma_a: [0.6, 0.5] } },
      glue: { label: 'glue stick or spray', set: { sigma_a: [1, 0.7] } },
      tested: { label: 'measured: a test block pushed off' },
    },
    'film',
    { hint: 'The first three are typical and wide. A block pushed off with a scale is worth more than any of them.' },
  ),
  foot: choice(
    'Foot',
    {
      bare: { label: 'as wide as the column', set: { r: 0, q_r: [50, 20] } },
      brim: { label: 'with a rim one layer thick', set: { r: 5, q_r: [50, 20] } },
      pad: { label: 'with a pad some 2 mm thick', set: { r: 5, q_r: [100, 0] } },
    },
    'bare',
  ),
};
