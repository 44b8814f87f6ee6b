import type { OptionSpec } from '../../engine/calculator';
import { materials } from '../../reference/materials';
import { choice } from '../../engine/calculator';

const kept = { ask: 'swing', zero: 'kept' };

/** A material of the shared table as an option that brings its expansion. */
function expanding(id: keyof typeof materials, symbol: string, label: string = materials[id].name): OptionSpec {
  const { value, half } = materials[id].expansion;
  return { label, set: { [symbol]: [value, half] } };
}

export const choices = {
  ask: choice(
    'The question',
    {
      cold: { label: 'will something cold get wet?' },
      box: { label: 'how dry is this air in a warm box?' },
      swing: { label: 'how far does the first-layer gap move over the day?' },
    },
    'cold',
  ),
  zero: choice(
    'Z zero',
    {
      kept: { label: 'set once, when trammed, and kept since' },
      switch: { label: 'found on a switch on the frame before each print' },
    },
    'kept',
    {
      when: { ask: 'swing' },
      hint: 'Felt on the bed itself before each print, it takes all of this away: then nothing need be worked out.',
    },
  ),
  lift: choice(
    'The screws carry',
    {
      'nozzle-foot': { label: 'the nozzle; held endways at their lower end' },
      'nozzle-head': { label: 'the nozzle; held endways at their upper end' },
      'bed-foot': { label: 'the bed; held endways at their lower end' },
      'bed-head': { label: 'the bed; held endways at their upper end' },
    },
    'nozzle-foot',
    {
      from: 'z.carried-and-held',
      when: kept,
      hint: 'Held endways: by a thrust bearing, or by the motor it is coupled to. The other end floats.',
    },
  ),
  frame: choice(
    'Material of the frame’s uprights',
    {
      aluminium: expanding('al-6063', 'alpha_f'),
      steel: expanding('steel', 'alpha_f'),
      other: { label: 'another: enter its expansion' },
    },
    'aluminium',
    { from: 'frame.material', when: { ask: 'swing' } },
  ),
  screw: choice(
    'Material of the screw',
    {
      steel: expanding('steel', 'alpha_s', 'steel'),
      stainless: expanding('stainless', 'alpha_s', 'stainless steel'),
    },
    'steel',
    { from: 'z.screw-material', when: kept },
  ),
  rest: choice(
    'The rest of the way, mostly',
    {
      aluminium: expanding('al-6061', 'alpha_r', 'aluminium'),
      steel: expanding('steel', 'alpha_r', 'steel'),
      petg: expanding('petg', 'alpha_r', 'printed brackets: PETG'),
      abs: expanding('abs', 'alpha_r', 'printed brackets: ABS'),
      pla: expanding('pla', 'alpha_r', 'printed brackets: PLA'),
    },
    'aluminium',
    {
      from: 'frame.rest-material',
      when: { ask: 'swing' },
      hint: 'What fills the height that screw and frame leave open: carriage and hot-end mount, or the bed’s posts.',
    },
  ),
};
