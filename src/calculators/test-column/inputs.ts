import { density, force, frequency, length, pressure, ratio } from '../../quantity/kinds';
import { cite, commonPractice } from '../../reference/citation';
import { input } from '../../engine/calculator';

const shell = { core: 'shell' };
const typicalHold = { bed: ['film', 'glass', 'glue'] };
const tested = { bed: 'tested' };

export const inputs = {
  b: input('Width of the column; round: diameter', length.mm, {
    range: [0.5, 500],
    tool: 'caliper',
    hint: 'Or as drawn: then choose “as marked”. A tapered one: the width at a third of its height.',
  }),
  L: input('Height of the column', length.mm, {
    range: [1, 2000],
    tool: 'rule',
    hint: 'From the bed to the layer being printed; for a whole piece, to its top.',
  }),
  t_w: input('Thickness of its walls', length.mm, {
    typical: 0.9,
    spread: 0.05,
    range: [0.1, 100],
    tool: 'caliper',
    hint: 'Number of wall lines times the line width.',
    when: shell,
  }),
  q_i: input('Infill', ratio.percent, {
    typical: 15,
    spread: 3,
    range: [0, 100],
    hint: 'Counts as weight, not as stiffness.',
    when: shell,
  }),
  w: input('Line width', length.mm, { typical: 0.45, range: [0.1, 4], from: 'print.line-width' }),
  F: input('Sideways drag of the nozzle', force.N, {
    typical: 0.5,
    spread: 0.4,
    range: [0.01, 50],
    tool: 'luggage-scale',
    basis: commonPractice,
    hint: 'More with thin layers, too much plastic or curled edges. To find it: see how far a column of known stiffness gives.',
  }),
  E: input('Modulus of the plastic', pressure.GPa, {
    seldom: true,
    range: [0.005, 20],
    basis: cite('Table of materials in this app', 'modulus at room temperature'),
  }),
  q_E: input('Printed over moulded stiffness', ratio.one, {
    seldom: true,
    typical: 0.8,
    spread: 0.15,
    range: [0.05, 1.2],
    basis: commonPractice,
    hint: 'Lines with gaps between them bend more easily than a solid bar.',
  }),
  q_T: input('Stiffness left in the warm', ratio.one, {
    seldom: true,
    range: [0.02, 1],
    basis: commonPractice,
    hint: 'Plastics lose stiffness well before they go soft; near that temperature nearly all of it.',
  }),
  rho: input('Density of the plastic', density.g_cm3, {
    seldom: true,
    range: [0.5, 8],
    basis: cite('Table of materials in this app', 'density'),
  }),
  q_w: input('Sway allowed, over the line width', ratio.percent, {
    seldom: true,
    decided: true,
    typical: 25,
    range: [1, 200],
    basis: commonPractice,
    hint: 'Beyond a quarter of a line the wall looks rough; beyond a half, lines miss those below.',
  }),
  f_m: input('Frequency at which the machine shakes it', frequency.Hz, {
    typical: 40,
    spread: 15,
    range: [1, 1000],
    basis: commonPractice,
    hint: 'That of the ripples after corners: speed over their spacing. It is the fastest shaking there is.',
  }),
  r_min: input('Least own frequency, over that', ratio.one, {
    seldom: true,
    decided: true,
    typical: 2,
    range: [1.1, 20],
    basis: commonPractice,
    hint: 'At twice the frequency a column follows with a third more than its still bend; at the same frequency it builds up.',
  }),
  sigma_a: input('Pull that the bed holds, straight up', pressure.MPa, {
    seldom: true,
    range: [0.001, 30],
    basis: commonPractice,
    when: typicalHold,
  }),
  q_p: input('Share of it left when an edge peels', ratio.percent, {
    seldom: true,
    typical: 40,
    spread: 20,
    range: [2, 100],
    basis: commonPractice,
    hint: 'An edge lifts before the whole face would: the even share-out of the formula is too hopeful.',
    when: typicalHold,
  }),
  b_t: input('Test block: side of its square foot', length.mm, {
    typical: 10,
    range: [2, 100],
    tool: 'caliper',
    hint: 'Solid, same plastic, same bed and heat, no rim. Twice as tall as it is wide.',
    when: tested,
  }),
  h_t: input('Test block: height at which it is pushed', length.mm, {
    typical: 18,
    spread: 0.5,
    range: [1, 200],
    tool: 'rule',
    when: tested,
  }),
  F_t: input('Test block: force at which it lets go', force.N, {
    range: [0.05, 500],
    tool: 'luggage-scale',
    hint: 'Loop the scale round the block and pull level, slowly. Mean of three.',
    when: tested,
  }),
  r: input('Rim all round the foot', length.mm, { range: [0, 200], tool: 'rule' }),
  q_r: input('Share of the rim’s width that holds', ratio.percent, {
    seldom: true,
    range: [5, 100],
    basis: commonPractice,
    hint: 'A thin rim bends up before it pulls; a thick pad holds all through.',
  }),
};
