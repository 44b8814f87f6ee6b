import { curvature, force, length, ratio, secondMoment, stiffness } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { calculator, formula, type When, cite, derived } from '../../engine/calculator';
import { advise } from './action';
import { choices, inputs } from './inputs';
import words from './words/en';

const circle = derived('circleThroughThree');
const flatArc = derived('flatArcS');
const roark = cite('Roark’s Formulas for Stress and Strain', 'straightBeamsConcentrated', true);
const springs = derived('springsSideSide');
const apart: When = { method: ['flat', 'blocks'] };
const mounted: When = { method: 'mounted' };
// Both ends clamped hold a bow straight, so a reading between them does not give it back.
const toldMounted: When = { method: 'mounted', ends: ['pinned', 'mixed', 'free'] };

export default calculator(
  {
    cautions: ['switchOffUnplug', 'holdGantryUp', 'screwsThreadsCan'],
    choices,
    inputs,
    formulas: [
      formula('I = pi * d_3^4 / 64', secondMoment.mm4, cite('Machinery’s Handbook', 'propertiesRoundSections', true)),
      formula(
        'y_g = 5 * m_1 * g_n * c^4 / (384 * E * I)',
        length.mm,
        cite('Roark’s Formulas for Stress and Strain', 'straightBeamsUniform', true),
        { method: 'flat' },
      ),
      formula('s = g + y_g - q', length.mm, derived('weightClosesPart'), { method: 'flat', touch: 'gap' }),
      formula('s = f_w * (g_0 + y_g)', length.mm, derived('withoutGapMost'), { method: 'flat', touch: 'none' }),
      formula('s = (TIR - q) / 2', length.mm, derived('pointEOff'), { method: 'blocks' }),
      formula('kappa = 8 * s / (c^2 + 4 * s^2)', curvature.mm_m2, circle, apart),
      formula('s_L = kappa * L^2 / 8', length.mm, flatArc, apart),
      formula('y_0 = b * s_L', length.mm, derived('shareBowEnds'), apart),
      formula('y_0 = (TIR - q - TIR_c) / 2', length.mm, derived('tirELess'), mounted),
      formula('s_L = y_0 / b', length.mm, derived('shareBowEnds'), toldMounted),
      formula('kappa = 8 * s_L / (L^2 + 4 * s_L^2)', curvature.mm_m2, circle, toldMounted),
      formula('s_r = kappa * l_r^2 / 8', length.mm, flatArc, apart),
      formula('s_r = kappa * l_r^2 / 8', length.mm, flatArc, toldMounted),
      formula('f_L = s_L / L', ratio.percent, derived('bowOverLength'), apart),
      formula('f_L = s_L / L', ratio.percent, derived('bowOverLength'), toldMounted),
      formula('k_s = 48 * E * I / L^3', stiffness.N_mm, roark, { ends: 'pinned' }, 'k_s_pinned'),
      formula('k_s = 768 / 7 * E * I / L^3', stiffness.N_mm, roark, { ends: 'mixed' }, 'k_s_pinned'),
      formula('k_s = 192 * E * I / L^3', stiffness.N_mm, roark, { ends: 'clamped' }, 'k_s_pinned'),
      formula('k_s = 3 * E * I / L^3', stiffness.N_mm, roark, { ends: 'free' }, 'k_s_free'),
      formula('F = k_s * y_0', force.N, derived('stiffnessOffset')),
      formula('r_k = k_s / (k_s + k_g)', ratio.percent, springs),
      formula('x = y_0 * r_k', length.mm, springs),
      formula('w_x = 2 * x', length.mm, derived('eachWayBoth')),
      formula('w_lim = k_w * w', length.mm, commonPractice),
      formula('p_r = P_h', length.mm, derived('swingEachTurn')),
      formula('w_n = 2 * b * s_lim * (L / l_r)^2 * r_k', length.mm, derived('sameCurvatureFlat')),
      formula('k_t = 24 * E * I / L^3', stiffness.N_mm, derived('cantileverHalfLength'), {
        ends: ['pinned', 'mixed', 'clamped'],
      }),
      formula('w_t = 2 * s_L * k_t / (k_t + k_g)', length.mm, derived('smoothBowLower'), {
        ends: ['pinned', 'mixed', 'clamped'],
        ...apart,
      }),
      formula('w_t = 2 * s_L * k_t / (k_t + k_g)', length.mm, derived('smoothBowLower'), {
        ends: ['pinned', 'mixed'],
        ...mounted,
      }),
      formula('y_y = R_e * L^2 / (6 * E * d_3)', length.mm, derived('fLR')),
    ],
    limits: [
      { of: 's_r', max: 's_lim', symmetric: true, cite: commonPractice, when: apart },
      {
        of: 's_r',
        max: 's_lim',
        symmetric: true,
        cite: commonPractice,
        when: toldMounted,
      },
      { of: 'f_L', max: 'f_max', symmetric: true, cite: flatArc, when: apart },
      {
        of: 'f_L',
        max: 'f_max',
        symmetric: true,
        cite: flatArc,
        when: toldMounted,
      },
      { of: 'w_x', max: 'w_lim', symmetric: true, cite: commonPractice },
    ],
    action: advise,
    beware: ['rollingVBlocks', 'tellThemApart', 'vBlocksFeelers', 'flatTruerBow', 'bowPerLength', 'standardWasFound'],
    examples: [
      {
        key: 'vBlocksNeedle',
        given: {
          TIR: '0.2 mm',
          q: '0 mm ± 0',
          c: '300 mm ± 0',
          L: '400 mm ± 0',
          d_3: '5.5 mm ± 0',
          E: '206 GPa ± 0',
          k_g: '100 N/mm ± 0',
        },
        choices: { method: 'blocks' },
        expect: {
          s: [0.1, 1e-12],
          kappa: [8.888885, 1e-6],
          s_r: [0.1, 1e-7],
          s_L: [0.177778, 1e-6],
          I: [44.918, 1e-4],
          k_s: [6.93983, 1e-5],
          F: [1.23375, 1e-5],
          w_x: [0.0230737, 1e-7],
          p_r: [8, 1e-12],
        },
        verdict: 'beyond',
        source: derived('vBlocksNeedle'),
      },
      {
        key: 'flatWeightHides',
        given: {
          g: '0.08 mm',
          q: '0 mm ± 0',
          c: '300 mm ± 0',
          m_1: '300 g/m ± 0',
          L: '300 mm ± 0',
          d_3: '5.5 mm ± 0',
          E: '206 GPa ± 0',
          k_g: '100 N/mm ± 0',
        },
        choices: { method: 'flat' },
        expect: { y_g: [0.0335334, 1e-6], s: [0.1135334, 1e-6], s_r: [0.1135334, 1e-6] },
        source: derived('flatWeightHides'),
      },
      {
        key: 'machineTopFree',
        given: {
          TIR: '0.8 mm',
          TIR_c: '0.1 mm ± 0',
          q: '0 mm ± 0',
          b: '4',
          L: '300 mm ± 0',
          d_3: '5.5 mm ± 0',
          E: '206 GPa ± 0',
          k_g: '100 N/mm ± 0',
        },
        choices: { method: 'mounted', ends: 'free' },
        expect: { y_0: [0.35, 1e-12], s_L: [0.0875, 1e-12], k_s: [1.02812, 1e-5], F: [0.359843, 1e-6] },
        verdict: 'within',
        source: derived('machineTopFree'),
      },
      {
        key: 'straightScrewSwing',
        given: { TIR: '0 mm ± 0', q: '0 mm ± 0' },
        choices: { method: 'blocks', class: 'ground' },
        expect: { kappa: [0, 0], s_L: [0, 0], F: [0, 0], w_x: [0, 0] },
        verdict: 'within',
        source: derived('straightScrewSwing'),
      },
    ],
  },
  words,
);
