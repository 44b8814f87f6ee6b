import { cite, derived } from '../../reference/citation';

const johnson = cite('Johnson, Contact Mechanics', 'chapter 4, equations (4.22) and (4.45), worked by hand', true);

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
    title: 'A cantilevered arm: moment, least preload, slip test in a V, sag',
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
    source: derived('1 × (9.80665 × 0.1 + 1 × 0.05); 8 / 0.25 × sin 30°; 0.05 × 200 / 100'),
  },
  {
    title: 'Bush turned 30° from fully retracted',
    given: { F_slip: '5 N', e: '0.8 mm ± 0', theta_0: '0 deg', theta: '30 deg' },
    expect: { u: [0.10718, 5e-6], x: [0, 1e-12], q: [0, 1e-9] },
    source: derived('0.8 mm × (1 − cos 30°) = 0.8 × 0.133975'),
  },
  {
    title: 'Line contact of polyoxymethylene on aluminium, 20 N on 5 mm',
    given: { ...flatTread, l_f: '5 mm ± 0' },
    expect: { E_s: [3.066, 0.003], Q: [20, 1e-9], b: [0.1412, 0.0001], p_0: [18.04, 0.018] },
    source: johnson,
  },
  {
    title: 'The same load on a ball-shaped contact',
    given: { ...flatTread, r_e: '12 mm ± 0' },
    choices: { contact: 'edge' },
    // Equal radii across and along: a ball of 12 mm on a flat.
    expect: { R_e: [12, 1e-9], a_c: [0.3886, 0.0004], p_0: [63.2, 0.063] },
    source: johnson,
  },
  {
    title: 'Preload from the turn of the bush alone',
    given: {
      theta_t: '60 deg ± 0',
      theta_0: '66 deg ± 0',
      theta: '70 deg ± 0',
      e: '0.8 mm ± 0',
      c_w: '200 N/mm ± 0',
    },
    choices: { by: 'bush' },
    expect: { u_t: [0.0746107, 1e-7], N: [14.92214, 2e-5], u: [0.0517732, 1e-7] },
    source: derived('cos 60° = 0.5, cos 66° = 0.4067366, cos 70° = 0.3420201; 0.8 mm times the differences'),
  },
  {
    title: 'A crowned wheel, bush turned from 90° to 120°',
    given: { theta_t: '90 deg ± 0', theta_0: '120 deg', e: '0.8 mm ± 0', c_w: '50 N/mm ± 0', d: '0 mm', r_e: '8 mm' },
    choices: { by: 'bush', contact: 'edge' },
    expect: { u_t: [0.4, 1e-9], N: [20, 1e-9] },
    source: derived('0.8 mm × (0 + 0.5) = 0.4 mm; 50 N/mm × 0.4 mm'),
  },
  {
    title: 'Slip test with the weight left on',
    given: { ...hanging, F_slip: '2 N ± 0' },
    choices: { by: 'hanging' },
    expect: { F_g: [3.268883, 1e-6], N: [7.268883, 1e-6] },
    source: derived('0.5 × 9.80665 × 40 / 60; 2 / 0.25 × sin 30° + 3.268883'),
  },
  {
    title: 'The same on a crowned wheel, bush not turned: the slip force stays',
    given: { ...hanging, F_slip: '2 N ± 0', theta_0: '90 deg ± 0', theta: '90 deg ± 0', r_e: '8 mm' },
    choices: { by: 'hanging', contact: 'edge' },
    expect: { N: [7.268883, 1e-6], u: [0, 1e-12], F_1: [2, 1e-9] },
    source: derived('no gap closed, no change'),
  },
  {
    title: 'No moment to hold: a small preload all the same, for a line and its room',
    given: { ...flatTread, F_slip: '40 N ± 0', h: '0 mm ± 0', N_0: '1 N', l_f: '5 mm ± 0', p_lim: '35 MPa' },
    expect: { M_o: [0, 1e-12], N_min: [1, 1e-9], N_max: [150.6, 0.1], N_aim: [12.27, 0.01] },
    verdict: 'beyond',
    source: derived('2 · π · 12 mm · 5 mm · (35 MPa)² / 3066 MPa = 150.6 N; √(1 · 150.6); carried 40 / 0.25 = 160 N'),
  },
  {
    title: 'Too loose to hold: turn the bush in',
    given: { F_slip: '0.5 N ± 0.1 N', theta_0: '90 deg ± 0.5 deg' },
    expect: { P: [2, 1e-9], N: [1.414214, 1e-6] },
    verdict: 'beyond',
    source: derived('0.5 / 0.25 × sin 45°'),
  },
] as const;
