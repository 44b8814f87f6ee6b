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
    {
      cold: {},
      box: {},
      swing: {},
    },
    'cold',
  ),
  zero: choice(
    {
      kept: {},
      switch: {},
    },
    'kept',
    {
      when: { ask: 'swing' },
    },
  ),
  lift: choice(
    {
      'nozzle-foot': {},
      'nozzle-head': {},
      'bed-foot': {},
      'bed-head': {},
    },
    'nozzle-foot',
    {
      from: 'z.carried-and-held',
      when: kept,
    },
  ),
  frame: choice(
    {
      aluminium: expanding('al-6063', 'alpha_f'),
      steel: expanding('steel', 'alpha_f'),
      other: {},
    },
    'aluminium',
    { from: 'frame.material', when: { ask: 'swing' } },
  ),
  screw: choice(
    {
      steel: expanding('steel', 'alpha_s', 'steel'),
      stainless: expanding('stainless', 'alpha_s', 'stainless steel'),
    },
    'steel',
    { from: 'z.screw-material', when: kept },
  ),
  rest: choice(
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
    },
  ),
};
