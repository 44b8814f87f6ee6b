import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { advise, FLOAT_STEP } from './action';
import { flatArc, formulas } from './formulas';
import { apart, choices, inputs, toldMounted } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['switchOffUnplug', 'holdGantryUp', 'screwsThreadsCan'],
    choices,
    inputs,
    formulas,
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
    measured: ['g', 'g_0', 'TIR'],
    levers: { j: { step: () => FLOAT_STEP } },
    action: advise,
    beware: ['rollingVBlocks', 'tellThemApart', 'vBlocksFeelers', 'flatTruerBow', 'bowPerLength', 'standardWasFound'],
    examples: [
      {
        key: 'vBlocksNeedle',
        given: {
          TIR: '0.2 mm',
          w: '0.45 mm ± 0',
          k_w: '0.05',
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
