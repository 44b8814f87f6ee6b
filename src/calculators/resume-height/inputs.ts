import { placed } from '../../engine/shared-places';
import { expansion, length, ratio, temperature, temperatureDifference } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input, cite } from '../../engine/calculator';

const nozzle = { plan: 'nozzle' };
const byCaliper = { plan: ['rod', 'glue'] };
const going = { plan: ['nozzle', 'rod'] };
const glue = { plan: 'glue' };

export const inputs = {
  Z_r: input(length.mm, { feature: 'set', spread: 0.02, range: [0.05, 2000], when: nozzle }),
  g_f: input(length.mm, {
    feature: 'marked',
    typical: 0.1,
    spread: 0.01,
    range: [0, 5],
    when: nozzle,
  }),
  H: input(length.mm, { feature: 'outside', range: [0.05, 2000], tool: 'caliper', when: byCaliper }),
  h: placed('print.layer', { range: [0.01, 2] }),
  h_1: placed('print.first-layer', { range: [0.04, 2] }),
  H_t: input(length.mm, { feature: 'set', range: [0.1, 2000], when: glue }),
  T_m: input(temperature.C, {
    feature: 'contact',
    typical: 22,
    spread: 3,
    range: [-20, 150],
    tool: 'thermometer',
    when: { heat: 'cold' },
  }),
  T_p: input(temperature.C, {
    feature: 'contact',
    seldom: true,
    range: [-20, 200],
    basis: commonPractice,
    when: { heat: 'cold' },
  }),
  dT: input(temperatureDifference.K, {
    feature: 'set',
    seldom: true,
    typical: 0,
    spread: 4,
    range: [0, 50],
    basis: commonPractice,
    when: { heat: 'warm' },
  }),
  alpha: input(expansion.um_mK, {
    seldom: true,
    range: [1, 300],
    basis: cite('Table of materials in this app', 'linearExpansion'),
  }),
  s: input(length.mm, {
    feature: 'set',
    seldom: true,
    typical: 0.03,
    spread: 0.05,
    range: [0, 0.5],
    basis: commonPractice,
    when: byCaliper,
  }),
  g: input(length.mm, {
    feature: 'set',
    seldom: true,
    typical: 0.05,
    spread: 0.05,
    range: [0, 3],
    basis: commonPractice,
    when: glue,
  }),
  q: input(ratio.percent, {
    seldom: true,
    decided: true,
    typical: 25,
    range: [1, 50],
    basis: commonPractice,
    when: going,
  }),
  e_lim: input(length.mm, {
    seldom: true,
    decided: true,
    typical: 0.2,
    range: [0.01, 10],
    basis: commonPractice,
    when: glue,
  }),
};
