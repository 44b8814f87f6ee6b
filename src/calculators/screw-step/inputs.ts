import { placed, placedChoice } from '../../engine/shared-places';
import { ratio, torque } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { choice, input } from '../../engine/calculator';

export const choices = {
  lift: placedChoice('z.lift', { screw: {}, belt: {} }, 'screw'),
  // The usual driver keeps its current on and holds microsteps.
  grid: choice({ full: {}, micro: {} }, 'micro', {
    from: 'z.held-to',
  }),
};

/** What is asked: the drive, the layer height, the motor, and what is allowed. */
export const inputs = {
  h: placed('print.layer', { range: [0.01, 2] }),
  P_h: placed('z.lead', {
    range: [0.5, 50],
    when: { lift: 'screw' },
  }),
  p: placed('z.belt-pitch', {
    range: [1, 20],
    when: { lift: 'belt' },
  }),
  z: placed('z.pinion-teeth', {
    range: [8, 200],
    when: { lift: 'belt' },
  }),
  theta_s: placed('z.step-angle', { range: [0.1, 15] }),
  i_g: placed('z.gear-ratio', {
    seldom: true,
    range: [0.05, 200],
  }),
  m: placed('z.microsteps', {
    range: [1, 256],
    basis: commonPractice,
  }),
  tau_h: placed('z.holding-torque', {
    seldom: true,
    range: [5, 20000],
    basis: commonPractice,
  }),
  tau_f: input(torque.N_mm, {
    seldom: true,
    typical: 20,
    spread: 5,
    range: [0, 5000],
    basis: commonPractice,
    from: 'z.friction-torque',
  }),
  a: input(ratio.percent, {
    seldom: true,
    typical: 5,
    range: [0, 50],
    basis: commonPractice,
  }),
  k: input(ratio.percent, { differs: 0.2, seldom: true, typical: 5, range: [0.1, 100], basis: commonPractice }),
  k_h: input(ratio.percent, {
    seldom: true,
    typical: 25,
    decided: true,
    range: [1, 100],
    basis: commonPractice,
  }),
};
