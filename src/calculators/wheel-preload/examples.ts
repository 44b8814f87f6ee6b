import { cite, derived } from '../../engine/calculator';

const johnson = cite('Johnson, Contact Mechanics (1985)', 'chapterEquationsWorked', true);

/** A wheel with a flat tread, so that each half carries 20 N of the 40 N that the slip test gives. */
const flatTread = {
  F_slip: '10 N ± 0',
  mu: '0.25 ± 0',
  beta: '90 deg ± 0',
  d: '0 mm ± 0',
  r_w: '12 mm ± 0',
  E_w: '2.8 GPa ± 0',
  nu_w: '0.35 ± 0',
  E_r: '70 GPa ± 0',
  nu_r: '0.33 ± 0',
} as const;

const hanging = {
  M: '0.5 kg ± 0',
  d: '40 mm ± 0',
  s: '60 mm ± 0',
  mu: '0.25 ± 0',
  beta: '30 deg ± 0',
} as const;

export const examples = [
  {
    key: 'cantileveredArmMoment',
    given: {
      F_slip: '8 N ± 0',
      mu: '0.25 ± 0',
      beta: '30 deg ± 0',
      M: '1 kg ± 0',
      d: '100 mm ± 0',
      h: '50 mm ± 0',
      a: '1000 mm/s²',
      s: '100 mm ± 0',
      k: '1.5',
      N_0: '0 N',
      c_rr: '0.02 ± 0',
      j: '0.05 mm ± 0',
      R: '200 mm ± 0',
    },
    expect: {
      M_o: [1.030665, 1e-9],
      F_o: [10.30665, 1e-9],
      N_min: [15.459975, 1e-9],
      P: [32, 1e-9],
      N: [16, 1e-9],
      F_r: [0.32, 1e-9],
      y: [0.1, 1e-9],
    },
    source: derived('cantileveredArmMoment'),
  },
  {
    key: 'bushTurnedFully',
    given: { F_slip: '5 N', e: '0.8 mm ± 0', theta_0: '0 deg', theta: '30 deg' },
    expect: { u: [0.10718, 5e-6], x: [0, 1e-12], q: [0, 1e-9] },
    source: derived('bushTurnedFully'),
  },
  {
    key: 'lineContactPolyoxymethylene',
    given: { ...flatTread, l_f: '5 mm ± 0' },
    expect: { E_s: [3.066, 0.003], Q: [20, 1e-9], b: [0.1412, 0.0001], p_0: [18.04, 0.018] },
    source: johnson,
  },
  {
    key: 'sameLoadBall',
    given: { ...flatTread, r_e: '12 mm ± 0' },
    choices: { contact: 'edge' },
    // Equal radii across and along: a ball of 12 mm on a flat.
    expect: { R_e: [12, 1e-9], a_c: [0.3886, 0.0004], p_0: [63.2, 0.063] },
    source: johnson,
  },
  {
    key: 'preloadTurnBush',
    given: {
      theta_t: '60 deg ± 0',
      theta_0: '66 deg ± 0',
      theta: '70 deg ± 0',
      e: '0.8 mm ± 0',
      c_w: '200 N/mm ± 0',
    },
    choices: { by: 'bush' },
    expect: { u_t: [0.0746107, 1e-7], N: [14.92214, 2e-5], u: [0.0517732, 1e-7] },
    source: derived('preloadTurnBush'),
  },
  {
    key: 'crownedWheelBush',
    given: { theta_t: '90 deg ± 0', theta_0: '120 deg', e: '0.8 mm ± 0', c_w: '50 N/mm ± 0', d: '0 mm', r_e: '8 mm' },
    choices: { by: 'bush', contact: 'edge' },
    expect: { u_t: [0.4, 1e-9], N: [20, 1e-9] },
    source: derived('crownedWheelBush'),
  },
  {
    key: 'slipTestWeight',
    given: { ...hanging, F_slip: '2 N ± 0' },
    choices: { by: 'hanging' },
    expect: { F_g: [3.268883, 1e-6], N: [7.268883, 1e-6] },
    source: derived('slipTestWeight'),
  },
  {
    key: 'sameCrownedWheel',
    given: { ...hanging, F_slip: '2 N ± 0', theta_0: '90 deg ± 0', theta: '90 deg ± 0', r_e: '8 mm' },
    choices: { by: 'hanging', contact: 'edge' },
    expect: { N: [7.268883, 1e-6], u: [0, 1e-12], F_1: [2, 1e-9] },
    source: derived('sameCrownedWheel'),
  },
  {
    key: 'momentHoldSmall',
    given: { ...flatTread, F_slip: '40 N ± 0', h: '0 mm ± 0', N_0: '1 N', l_f: '5 mm ± 0', p_lim: '35 MPa' },
    expect: { M_o: [0, 1e-12], N_min: [1, 1e-9], N_max: [150.6, 0.1], N_aim: [12.27, 0.01] },
    verdict: 'beyond',
    source: derived('momentHoldSmall'),
  },
  {
    key: 'tooLooseHold',
    given: { F_slip: '0.5 N ± 0.1 N', theta_0: '90 deg ± 0.5 deg' },
    expect: { P: [2, 1e-9], N: [1.414214, 1e-6] },
    verdict: 'beyond',
    source: derived('tooLooseHold'),
  },
] as const;
