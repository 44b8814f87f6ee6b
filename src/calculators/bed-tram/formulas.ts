import { angle, length, slope } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula, type When } from '../../engine/calculator';
import { FOUR, THREE } from './choices';

const geometry = derived('where an adjuster sits, from the edges of the bed');
const plane = derived('height of a plane at a place');
const thread = cite('Machinery’s Handbook', 'screw threads: one turn travels one lead', true);
const slopeRun = derived('rise = slope × run');

const corners: When = { layout: 'corners' };
const four: When = { layout: 'four' };
const typed: When = { layout: ['three', 'four'] };
const inset: When = { layout: ['corners', 'front', 'back'] };
const fours: When = { layout: FOUR };

export const formulas = [
  formula('i_x = i_p + kappa * i_y', 'Slope, left to right', slope.mm_m, derived('the fitted plane along x alone')),
  formula('t_x = i_x * W', 'Rise from left to right', length.mm, slopeRun),
  formula('t_y = i_y * D', 'Rise from front to back', length.mm, slopeRun),
  formula('t_p = t_x + t_y', 'Tilt, front left to back right', length.mm, plane),
  formula('t_q = t_x - t_y', 'Tilt, back left to front right', length.mm, plane),
  formula('t_lim = k_t * h_1', 'Tilt allowed', length.mm, commonPractice),
  formula('F_lim = k_F * h_1', 'Warp allowed', length.mm, commonPractice),

  formula('X_1 = b_a', 'First adjuster, from left', length.mm, geometry, { layout: ['corners', 'front', 'back'] }),
  formula('Y_1 = b_a', 'First adjuster, from front', length.mm, geometry, { layout: ['corners', 'front'] }),
  formula('Y_1 = D - b_a', 'First adjuster, from front', length.mm, geometry, { layout: 'back' }),
  formula('X_2 = W - b_a', 'Second adjuster, from left', length.mm, geometry, inset),
  formula('Y_2 = b_a', 'Second adjuster, from front', length.mm, geometry, { layout: ['corners', 'front'] }),
  formula('Y_2 = D - b_a', 'Second adjuster, from front', length.mm, geometry, { layout: 'back' }),
  formula('X_3 = W - b_a', 'Third adjuster, from left', length.mm, geometry, corners),
  formula('X_3 = W / 2', 'Third adjuster, from left', length.mm, geometry, { layout: ['front', 'back'] }),
  formula('Y_3 = D - b_a', 'Third adjuster, from front', length.mm, geometry, { layout: ['corners', 'front'] }),
  formula('Y_3 = b_a', 'Third adjuster, from front', length.mm, geometry, { layout: 'back' }),
  formula('X_4 = b_a', 'Fourth adjuster, from left', length.mm, geometry, corners),
  formula('Y_4 = D - b_a', 'Fourth adjuster, from front', length.mm, geometry, corners),
  formula('X_1 = X_a', 'First adjuster, from left', length.mm, geometry, typed),
  formula('Y_1 = Y_a', 'First adjuster, from front', length.mm, geometry, typed),
  formula('X_2 = X_b', 'Second adjuster, from left', length.mm, geometry, typed),
  formula('Y_2 = Y_b', 'Second adjuster, from front', length.mm, geometry, typed),
  formula('X_3 = X_c', 'Third adjuster, from left', length.mm, geometry, typed),
  formula('Y_3 = Y_c', 'Third adjuster, from front', length.mm, geometry, typed),
  formula('X_4 = X_d', 'Fourth adjuster, from left', length.mm, geometry, four),
  formula('Y_4 = Y_d', 'Fourth adjuster, from front', length.mm, geometry, four),

  formula('H_1 = h_m + i_x * (X_1 - x_m) + i_y * (Y_1 - y_m)', 'Bed at the first adjuster', length.mm, plane),
  formula('H_2 = h_m + i_x * (X_2 - x_m) + i_y * (Y_2 - y_m)', 'Bed at the second adjuster', length.mm, plane),
  formula('H_3 = h_m + i_x * (X_3 - x_m) + i_y * (Y_3 - y_m)', 'Bed at the third adjuster', length.mm, plane),
  formula('H_4 = h_m + i_x * (X_4 - x_m) + i_y * (Y_4 - y_m)', 'Bed at the fourth adjuster', length.mm, plane, fours),
  formula('H_0 = w_1 * H_1 + w_2 * H_2 + w_3 * H_3', 'Height to bring all to', length.mm, plane, { layout: THREE }),
  formula('H_0 = w_1 * H_1 + w_2 * H_2 + w_3 * H_3 + w_4 * H_4', 'Height to bring all to', length.mm, plane, fours),
  formula(
    'dh_m = H_0 - h_m - i_x * (W / 2 - x_m) - i_y * (D / 2 - y_m)',
    'Rise of the bed’s middle by it',
    length.mm,
    plane,
  ),
  formula('psi_1 = rev * (H_0 - H_1) / P_s', 'Turn at the first adjuster, raising is +', angle.deg, thread),
  formula('psi_2 = rev * (H_0 - H_2) / P_s', 'Turn at the second adjuster, raising is +', angle.deg, thread),
  formula('psi_3 = rev * (H_0 - H_3) / P_s', 'Turn at the third adjuster, raising is +', angle.deg, thread),
  formula('psi_4 = rev * (H_0 - H_4) / P_s', 'Turn at the fourth adjuster, raising is +', angle.deg, thread, fours),
] as const;
