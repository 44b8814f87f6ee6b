import { choice } from '../../engine/calculator';
import type { OptionData } from '../../engine/spec';
import { materials } from '../../reference/materials';

const kept = { ask: 'swing', zero: 'kept' };

/** A material of the shared table as an option that brings its expansion. */
function expanding(id: keyof typeof materials, symbol: string): OptionData {
  const { value, half } = materials[id].expansion;
  return { set: { [symbol]: [value, half] } };
}

/** Where a plastic of the shared table goes soft. */
function softening(id: 'pla' | 'petg' | 'abs' | 'pc'): OptionData {
  const { value, half } = materials[id].softens;
  return { set: { T_g: [value, half] } };
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
  plastic: choice(
    {
      pla: softening('pla'),
      petg: softening('petg'),
      abs: softening('abs'),
      pc: softening('pc'),
      // Partly crystalline or rubbery: where a wound strand takes a set (common practice).
      tpu: { set: { T_g: [80, 10] } },
      pa: { set: { T_g: [95, 5] } },
      other: {},
    },
    'pla',
    { when: { ask: 'box' } },
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
      steel: expanding('steel', 'alpha_s'),
      stainless: expanding('stainless', 'alpha_s'),
    },
    'steel',
    { from: 'z.screw-material', when: kept },
  ),
  rest: choice(
    {
      aluminium: expanding('al-6061', 'alpha_r'),
      steel: expanding('steel', 'alpha_r'),
      petg: expanding('petg', 'alpha_r'),
      abs: expanding('abs', 'alpha_r'),
      pla: expanding('pla', 'alpha_r'),
    },
    'aluminium',
    {
      from: 'frame.rest-material',
      when: { ask: 'swing' },
    },
  ),
};
