import { expansion, length, ratio, temperature, temperatureDifference } from '../../quantity/kinds';
import { cite, commonPractice } from '../../reference/citation';
import { input } from '../../engine/calculator';

const nozzle = { plan: 'nozzle' };
const byCaliper = { plan: ['rod', 'glue'] };
const going = { plan: ['nozzle', 'rod'] };
const glue = { plan: 'glue' };

export const inputs = {
  Z_r: input('Nozzle height Z at which the leaf just drags', length.mm, {
    spread: 0.02,
    range: [0.05, 2000],
    hint: 'Nozzle clean and warm, not oozing. Lower it over a sound, flat place of the top until the leaf just drags.',
    when: nozzle,
  }),
  g_f: input('Thickness of the leaf', length.mm, {
    typical: 0.1,
    spread: 0.01,
    range: [0, 5],
    tool: 'feeler',
    hint: 'A steel leaf. Paper gives: take ± 0.03 mm.',
    when: nozzle,
  }),
  H: input('Height of the part', length.mm, {
    range: [0.05, 2000],
    tool: 'caliper',
    hint: 'From bed or foot to the last sound layer. Thin, stringy layers cut off first. Keep clear of the foot’s squeezed-out edge and of curled corners; mean of five.',
    when: byCaliper,
  }),
  h: input('Layer height', length.mm, { typical: 0.2, range: [0.01, 2], from: 'print.layer' }),
  h_1: input('First layer', length.mm, { typical: 0.2, range: [0.04, 2], from: 'print.first-layer' }),
  H_t: input('Height of the whole, as drawn', length.mm, { range: [0.1, 2000], when: glue }),
  T_m: input('Temperature of the part now', temperature.C, {
    typical: 22,
    spread: 3,
    range: [-20, 150],
    tool: 'thermometer',
    when: { heat: 'cold' },
  }),
  T_p: input('Temperature of the part while it printed', temperature.C, {
    seldom: true,
    range: [-20, 200],
    basis: commonPractice,
    hint: 'On the whole: the foot is as warm as the bed, most of a tall part is cooler.',
    when: { heat: 'cold' },
  }),
  dT: input('Cooler now than while it printed', temperatureDifference.K, {
    seldom: true,
    typical: 0,
    spread: 4,
    range: [-50, 50],
    signed: true,
    basis: commonPractice,
    hint: 'Without the hot nozzle above it the top is a little cooler; a warmer room makes it less.',
    when: { heat: 'warm' },
  }),
  alpha: input('Expansion of the plastic', expansion.um_mK, {
    seldom: true,
    range: [1, 300],
    basis: cite('Table of materials in this app', 'linear expansion'),
  }),
  s: input('First layer pressed thinner than set', length.mm, {
    seldom: true,
    typical: 0.03,
    spread: 0.05,
    range: [-0.5, 0.5],
    signed: true,
    basis: commonPractice,
    hint: 'Zero set close to the bed gives a foot that is squeezed wide and a part that is too low by this. Below zero: set too far away.',
    when: byCaliper,
  }),
  g: input('Thickness of the glue', length.mm, {
    seldom: true,
    typical: 0.05,
    spread: 0.05,
    range: [0, 3],
    basis: commonPractice,
    hint: 'Thin glue next to nothing; a paste that fills up to 0.2 mm.',
    when: glue,
  }),
  q: input('Misfit allowed, over the layer height', ratio.percent, {
    seldom: true,
    decided: true,
    typical: 25,
    range: [1, 50],
    basis: commonPractice,
    hint: 'A first new layer a quarter too thin or too thick still holds and hardly shows.',
    when: going,
  }),
  e_lim: input('Error of the whole height allowed', length.mm, {
    seldom: true,
    decided: true,
    typical: 0.2,
    range: [0.01, 10],
    basis: commonPractice,
    when: glue,
  }),
};
