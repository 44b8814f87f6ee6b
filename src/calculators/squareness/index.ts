import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { action, HAND, type Ask } from './action';
import { formulas } from './formulas';
import { choices, inputs } from './inputs';
import words from './words/en';

/** Slope that the least shift of a beam's end or a frame's back makes. */
const perStep = (ask: Ask): number => HAND / (ask.choice('of') === 'frame' ? ask.number('L_f') : ask.number('S_b'));

export default calculator(
  {
    cautions: ['switchOffUnplug', 'supportBeamUpright', 'letNozzleBed'],
    choices,
    inputs,
    formulas,
    limits: [{ of: 'e_0', max: 'e_lim', symmetric: true, cite: commonPractice }],
    measured: ['d_1', 'd_2', 'A', 'B', 'm', 'm_1', 'm_2', 'i_p'],
    // One of two readings that change together: scanned alone, it tells whether any setting helps.
    levers: {
      d_1: { step: (ask) => (2 * ask.number('A') * ask.number('B') * perStep(ask)) / ask.number('d_1') },
      m: { step: (ask) => ask.number('l') * perStep(ask) },
      m_1: { step: (ask) => 2 * ask.number('l') * perStep(ask) },
      i_p: { step: perStep },
    },
    action,
    beware: ['differentDiagonalsAlone', 'shrinkagePrintCancels', 'xAgainstY'],
    examples: [
      {
        key: 'frameMmMillimetre',
        given: { d_1: '424.76 ± 0', d_2: '423.76 ± 0', A: '300 ± 0', B: '300 ± 0', L_f: '300 ± 0' },
        choices: { of: 'frame' },
        expect: { epsilon: [0.135, 0.0001], e_0: [0.2357, 0.0001], dx: [0.7071, 0.0001] },
        verdict: 'beyond',
        source: derived('frameMmMillimetre'),
      },
      {
        key: 'printedSquareMm',
        given: { d_1: '141.42 ± 0.03', d_2: '141.00 ± 0.03', A: '99.85 ± 0.03', B: '99.85 ± 0.03', S_b: '350 ± 0' },
        expect: { epsilon: [0.17, 0.0005], e_0: [0.2974, 0.0005] },
        verdict: 'beyond',
        source: derived('printedSquareMm'),
      },
      {
        key: 'squareBothWays',
        given: { m_1: '0.30 ± 0', m_2: '0.10 ± 0', l: '100 ± 0', S_b: '400 ± 0' },
        choices: { way: 'reversal' },
        expect: { m_e: [0.2, 1e-9], m_s: [0.1, 1e-9], i_q: [1, 1e-9], e_0: [0.2, 1e-9], dy: [0.8, 1e-9] },
        verdict: 'beyond',
        source: derived('squareBothWays'),
      },
      {
        key: 'sameSquareFrame',
        given: { m_1: '0.30 ± 0', m_2: '0.10 ± 0', l: '100 ± 0', L_f: '400 ± 0' },
        choices: { way: 'reversal', of: 'frame' },
        expect: { i_q: [1, 1e-9], e_0: [0.2, 1e-9], dx: [0.8, 1e-9] },
        verdict: 'beyond',
        source: derived('sameSquareFrame'),
      },
      {
        key: 'squareTwoPhotos',
        given: { i_p: '2 ± 0', S_b: '400 ± 0' },
        choices: { way: 'photo' },
        expect: { e_0: [0.2, 1e-9], dy: [0.8, 1e-9] },
        verdict: 'beyond',
        source: derived('squareTwoPhotos'),
      },
      {
        key: 'photosFrame',
        given: { i_p: '2 ± 0', L_f: '400 ± 0' },
        choices: { way: 'photo', of: 'frame' },
        expect: { e_0: [0.2, 1e-9], dx: [0.8, 1e-9] },
        verdict: 'beyond',
        source: derived('photosFrame'),
      },
      {
        key: 'trySquareMm',
        given: { m: '0.30 ± 0', l: '200 ± 0', i_e: '1 ± 0', L_f: '400 ± 0' },
        choices: { way: 'square', of: 'frame' },
        expect: { i_m: [0.5, 1e-9], e_0: [0.05, 1e-9], dx: [0.2, 1e-9] },
        verdict: 'within',
        source: derived('trySquareMm'),
      },
      {
        key: 'trySquareTrue',
        given: { m: '-0.05 ± 0', l: '100 ± 0', i_e: '0 ± 0', D: '200 ± 0' },
        choices: { way: 'square' },
        expect: { i_m: [-0.5, 1e-9], e_0: [-0.05, 1e-9], e_D: [-0.1, 1e-9] },
        verdict: 'within',
        source: derived('trySquareTrue'),
      },
    ],
  },
  words,
);
