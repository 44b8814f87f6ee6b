import { derived } from '../../engine/calculator';

type Given = Record<string, string>;

/** `[x, y, z]` in mm, exact, as a table's lines. */
function points(...lines: readonly (readonly [number, number, number])[]): Given {
  const cells = lines.flatMap(([x, y, z], i) => [
    [`x_${i + 1}`, `${x} ± 0`],
    [`y_${i + 1}`, `${y} ± 0`],
    [`z_${i + 1}`, `${z} ± 0`],
  ]);
  return Object.fromEntries(cells) as Given;
}

const fivePoints = points([20, 20, 0.1], [180, 20, -0.05], [180, 180, 0.02], [20, 180, 0.15], [100, 100, 0.06]);

const typedPlaces = { X_a: '0 ± 0', Y_a: '0 ± 0', X_b: '200 ± 0', Y_b: '0 ± 0', X_c: '100 ± 0', Y_c: '200 ± 0' };

export const examples = [
  {
    key: 'fivePointsThree',
    given: { ...fivePoints, ...typedPlaces, W: '200 ± 0', D: '200 ± 0', P_s: '0.5' },
    choices: { by: 'height', layout: 'three', keep_3: '1' },
    expect: {
      i_x: [-0.875, 1e-9],
      i_y: [0.375, 1e-9],
      F: [0.01, 1e-9],
      t_p: [-0.1, 1e-9],
      t_q: [-0.25, 1e-9],
      psi_1: [0, 1e-9],
      psi_2: [126, 1e-6],
      psi_3: [9, 1e-6],
    },
    verdict: 'beyond',
    source: derived('fivePointsThree'),
  },
  {
    key: 'fourCornersRising',
    given: {
      ...points([30, 30, 0], [170, 30, 0.14], [170, 170, 0.14], [30, 170, 0]),
      W: '200 ± 0',
      D: '200 ± 0',
      b_a: '30 ± 0',
    },
    choices: { by: 'height', layout: 'corners', keep_4: '1' },
    expect: {
      i_x: [1, 1e-9],
      i_y: [0, 1e-9],
      F: [0, 1e-9],
      t_x: [0.2, 1e-9],
      psi_1: [0, 1e-9],
      psi_2: [(-0.14 / 0.7) * 360, 1e-6],
      psi_3: [(-0.14 / 0.7) * 360, 1e-6],
      psi_4: [0, 1e-9],
      dh_m: [-0.07, 1e-9],
    },
    verdict: 'beyond',
    source: derived('fourCornersRising'),
  },
  {
    key: 'gapsUnderNozzle',
    given: points([30, 30, 0.1], [190, 30, 0.1], [190, 190, 0.1], [30, 190, 0.1], [110, 110, 0.3]),
    choices: { by: 'gap' },
    expect: {
      i_x: [0, 1e-9],
      i_y: [0, 1e-9],
      h_m: [-0.14, 1e-9],
      e_h: [0.04, 1e-9],
      e_l: [-0.16, 1e-9],
      F: [0.2, 1e-9],
      e_r: [0.08, 1e-9],
      k_l: [5, 0],
    },
    verdict: 'beyond',
    source: derived('gapsUnderNozzle'),
  },
  {
    key: 'threeZScrews',
    given: {
      ...points([30, 30, 0.2], [170, 30, 0.05], [100, 170, 0.05]),
      W: '200 ± 0',
      D: '200 ± 0',
      b_a: '30 ± 0',
    },
    choices: { by: 'height', layout: 'front', build: 'z', judge: 'tilt', keep_3: 'all' },
    expect: {
      psi_1: [-4.5, 1e-9],
      psi_2: [2.25, 1e-9],
      psi_3: [2.25, 1e-9],
    },
    verdict: 'beyond',
    source: derived('threeZScrews'),
  },
] as const;
