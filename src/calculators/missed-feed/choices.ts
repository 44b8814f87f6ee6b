import { materials, type Material } from '../../reference/materials';
import { choice, type OptionSpec } from '../../engine/calculator';

type Share = readonly [percent: number, half: number];

/** A plastic as an option: its density, and what a cold joint and a glued one hold of a sound layer, %. */
function plastic({ density }: Material, label: string, joint: Share, glued: Share): OptionSpec {
  return { label, set: { rho: [density.value / 1000, density.half / 1000], j_c: joint, j_g: glued } };
}

export const choices = {
  by: choice(
    'What is known of the failure',
    {
      gap: { label: 'the gap left under the nozzle' },
      delay: { label: 'how long it ran without feed' },
      fed: { label: 'how much filament went in' },
    },
    'gap',
    { hint: 'The gap is worth most, if the nozzle still stands where it stopped.' },
  ),
  band: choice(
    'Thin, stringy layers at the end',
    {
      none: { label: 'none: it stopped at once' },
      trim: { label: 'some, to be cut away' },
      left: { label: 'some, to be left in and soaked with thin glue' },
    },
    'none',
    {
      hint: 'Run out or snapped: it stops at once. A clog that grows or a gear that grinds starves layer after layer.',
    },
  ),
  stands: choice(
    'The part',
    { stuck: { label: 'still stands on the bed, not moved' }, off: { label: 'has come off or moved' } },
    'stuck',
  ),
  plastic: choice(
    'Plastic',
    {
      pla: plastic(materials.pla, 'PLA', [60, 20], [60, 20]),
      petg: plastic(materials.petg, 'PETG', [60, 20], [40, 20]),
      abs: plastic(materials.abs, 'ABS', [40, 20], [75, 15]),
      pa: plastic(materials.pa66, 'polyamide', [50, 20], [25, 15]),
      pc: plastic(materials.pc, 'polycarbonate', [40, 20], [50, 20]),
    },
    'pla',
  ),
  duty: choice(
    'What the part has to do',
    {
      shown: { label: 'stand there, be looked at', set: { s_n: 20 } },
      used: { label: 'be handled and used', set: { s_n: 40 } },
      loaded: { label: 'carry a load across the seam', set: { s_n: 70 } },
      safety: { label: 'hold a person, heat, mains or a raised load', set: { s_n: 100 } },
    },
    'used',
    { hint: 'For the last one no seam will do, whatever it costs.' },
  ),
};
