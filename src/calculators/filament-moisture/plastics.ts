import { cite, derived } from '../../engine/calculator';
import { commonPractice } from '../../reference/citation';
import { materials } from '../../reference/materials';
import say from './words/en';

export const sources = {
  /** Looked up: polylactic acid, polyurethane, polypropylene. The others are common practice. */
  diffusion: cite(say.works.diffusion, 'middleLogarithms'),
  spread: derived('publishedCoefficientsPolymer'),
  activation: cite(say.works.activation, 'activationEnergiesDiffusion'),
  water: cite(say.works.water, 'broughtSaturatedAir'),
  allowed: commonPractice,
  softening: cite(say.works.softening, 'glassTransitionPolyamide'),
  oven: commonPractice,
} as const;

const soft = (id: 'pla' | 'petg' | 'abs' | 'pc'): readonly [number, number] => {
  const { value, half } = materials[id].softens;
  return [value, half];
};

/**
 * Typical values by plastic, in the inputs' units: D_1 in µm²/s at T_1 in °C, b in powers of ten, E_a in kJ/mol, W_s and
 * W_lim in percent of the dry mass, T_g and T_b in °C.
 */
export const plastics = {
  pla: {
    set: { D_1: 20, T_1: 50, b: [0, 0.8], E_a: [40, 15], W_s: [0.3, 0.18], W_lim: 0.025, T_g: soft('pla'), T_b: [45, 3] },
  },
  petg: {
    set: { D_1: 0.57, T_1: 24, b: [0, 0.7], E_a: [45, 10], W_s: [0.5, 0.2], W_lim: 0.04, T_g: soft('petg'), T_b: [65, 3] },
  },
  abs: {
    set: { D_1: 3, T_1: 23, b: [0, 0.7], E_a: [40, 15], W_s: [0.75, 0.25], W_lim: 0.1, T_g: soft('abs'), T_b: [80, 3] },
  },
  pa: {
    set: { D_1: 0.3, T_1: 23, b: [0, 0.8], E_a: [50, 10], W_s: [6.5, 2.5], W_lim: 0.2, T_g: [95, 5], T_b: [80, 3] },
  },
  pc: {
    set: { D_1: 5, T_1: 25, b: [0, 0.5], E_a: [30, 10], W_s: [0.35, 0.05], W_lim: 0.02, T_g: soft('pc'), T_b: [110, 5] },
  },
  tpu: {
    set: { D_1: 2, T_1: 23, b: [0, 0.5], E_a: [40, 15], W_s: [1.5, 0.4], W_lim: 0.05, T_g: [80, 10], T_b: [50, 3] },
  },
  asa: {
    set: { D_1: 3, T_1: 23, b: [0, 0.7], E_a: [40, 15], W_s: [0.75, 0.35], W_lim: 0.1, T_g: [98, 5], T_b: [80, 3] },
  },
  pp: {
    set: { D_1: 7, T_1: 25, b: [0, 0.5], E_a: [41, 10], W_s: [0.015, 0.01], W_lim: 0.05, T_g: [95, 10], T_b: [70, 3] },
  },
  other: {},
} as const; // prettier-ignore
