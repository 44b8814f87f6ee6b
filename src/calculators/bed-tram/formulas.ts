import { angle, force, length, slope, stiffness, torque } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { formula, type When, cite, derived } from '../../engine/calculator';
import { FOUR, SPRUNG, THREE } from './choices';

const geometry = derived('whereAdjusterSits');
const plane = derived('heightPlanePlace');
const thread = cite('ISO 5408:2009', 'screwThreadsTurn', true);
const plates = cite(
  'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition (1959)',
  'cornerForce',
  true,
);
const slopeRun = derived('riseSlopeRun');

const corners: When = { layout: 'corners' };
const four: When = { layout: 'four' };
const typed: When = { layout: ['three', 'four'] };
const inset: When = { layout: ['corners', 'front', 'back'] };
const threes: When = { layout: THREE };
const fours: When = { layout: FOUR };
const sprung: When = { layout: FOUR, build: SPRUNG };

export const formulas = [
  formula('i_x = i_p + kappa * i_y', slope.mm_m, derived('fittedPlaneAlong')),
  formula('t_x = i_x * W', length.mm, slopeRun),
  formula('t_y = i_y * D', length.mm, slopeRun),
  formula('t_p = t_x + t_y', length.mm, plane),
  formula('t_q = t_x - t_y', length.mm, plane),
  formula('t_lim = k_t * h_1', length.mm, commonPractice),
  formula('F_lim = k_F * h_1', length.mm, commonPractice),

  formula('X_1 = b_a', length.mm, geometry, { layout: ['corners', 'front', 'back'] }),
  formula('Y_1 = b_a', length.mm, geometry, { layout: ['corners', 'front'] }),
  formula('Y_1 = D - b_a', length.mm, geometry, { layout: 'back' }),
  formula('X_2 = W - b_a', length.mm, geometry, inset),
  formula('Y_2 = b_a', length.mm, geometry, { layout: ['corners', 'front'] }),
  formula('Y_2 = D - b_a', length.mm, geometry, { layout: 'back' }),
  formula('X_3 = W - b_a', length.mm, geometry, corners),
  formula('X_3 = W / 2', length.mm, geometry, { layout: ['front', 'back'] }),
  formula('Y_3 = D - b_a', length.mm, geometry, { layout: ['corners', 'front'] }),
  formula('Y_3 = b_a', length.mm, geometry, { layout: 'back' }),
  formula('X_4 = b_a', length.mm, geometry, corners),
  formula('Y_4 = D - b_a', length.mm, geometry, corners),
  formula('X_1 = X_a', length.mm, geometry, typed),
  formula('Y_1 = Y_a', length.mm, geometry, typed),
  formula('X_2 = X_b', length.mm, geometry, typed),
  formula('Y_2 = Y_b', length.mm, geometry, typed),
  formula('X_3 = X_c', length.mm, geometry, typed),
  formula('Y_3 = Y_c', length.mm, geometry, typed),
  formula('X_4 = X_d', length.mm, geometry, four),
  formula('Y_4 = Y_d', length.mm, geometry, four),

  formula('H_1 = h_m + i_x * (X_1 - x_m) + i_y * (Y_1 - y_m)', length.mm, plane, threes),
  formula('H_1 = h_m + i_x * (X_1 - x_m) + i_y * (Y_1 - y_m) + tau * v_1', length.mm, plane, fours),
  formula('H_2 = h_m + i_x * (X_2 - x_m) + i_y * (Y_2 - y_m)', length.mm, plane, threes),
  formula('H_2 = h_m + i_x * (X_2 - x_m) + i_y * (Y_2 - y_m) + tau * v_2', length.mm, plane, fours),
  formula('H_3 = h_m + i_x * (X_3 - x_m) + i_y * (Y_3 - y_m)', length.mm, plane, threes),
  formula('H_3 = h_m + i_x * (X_3 - x_m) + i_y * (Y_3 - y_m) + tau * v_3', length.mm, plane, fours),
  formula('H_4 = h_m + i_x * (X_4 - x_m) + i_y * (Y_4 - y_m) + tau * v_4', length.mm, plane, fours),
  formula('H_0 = w_1 * H_1 + w_2 * H_2 + w_3 * H_3', length.mm, plane, { layout: THREE }),
  formula('H_0 = w_1 * H_1 + w_2 * H_2 + w_3 * H_3 + w_4 * H_4', length.mm, plane, fours),
  formula('dh_m = H_0 - h_m - i_x * (W / 2 - x_m) - i_y * (D / 2 - y_m)', length.mm, plane, threes),
  formula('dh_m = H_0 - h_m - i_x * (W / 2 - x_m) - i_y * (D / 2 - y_m) - tau * v_0', length.mm, plane, fours),
  formula('psi_1 = rev * (H_0 - H_1) / P_s', angle.deg, thread),
  formula('psi_2 = rev * (H_0 - H_2) / P_s', angle.deg, thread),
  formula('psi_3 = rev * (H_0 - H_3) / P_s', angle.deg, thread),
  formula('psi_4 = rev * (H_0 - H_4) / P_s', angle.deg, thread, fours),

  formula('D_b = E_b * d_b ^ 3 / (12 * (1 - nu_b ^ 2))', torque.N_m, plates, sprung),
  formula('K_b = 8 * D_b * (1 - nu_b) / (a_x * a_y)', stiffness.N_mm, plates, sprung),
  formula('F_b = K_b * tau', force.N, derived('stiffnessTwist'), sprung),
  formula('F_k = k_s * y_s', force.N, derived('springForce'), sprung),
] as const;
