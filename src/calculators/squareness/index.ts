import { angle, length, ratio, slope } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator, formula } from '../../engine/calculator';
import { action } from './action';
import { AXES, choices, inputs } from './inputs';

const cosines = derived('law of cosines in both halves of a parallelogram');
const reversal = cite('Evans, Hocken and Estler, CIRP Annals 1996', 'self-calibration: reversal', true);
const rise = derived('rise over run');
const diagonals = { way: 'diagonals' } as const;
const square = { way: 'square' } as const;
const turned = { way: 'reversal' } as const;

export default calculator({
  cautions: [
    'Switch off and unplug before hands go near beam, belts or screws.',
    'Support a beam or an upright before its screws are slackened: it can drop or tip.',
    'Let nozzle and bed cool before a square is laid on the bed.',
  ],
  choices,
  inputs,
  formulas: [
    formula('s = (d_1 ^ 2 - d_2 ^ 2) / (4 * A * B)', 'Sine of the skew', ratio.one, cosines, diagonals),
    formula('epsilon = asin(s)', 'Skew: front left corner sharper than 90° is +', angle.deg, cosines, diagonals),
    formula(
      'd_e = sqrt((d_1 ^ 2 + d_2 ^ 2) / 2) - sqrt(A ^ 2 + B ^ 2)',
      'Diagonals longer than the sides allow',
      length.mm,
      derived('parallelogram law: d₁² + d₂² = 2 (A² + B²)'),
      diagonals,
    ),
    formula('i_m = m / l - i_e', 'Side against a true square', slope.mm_m, rise, square),
    formula('epsilon = atan(i_m)', 'Skew: front left corner sharper than 90° is +', angle.deg, rise, square),
    formula('m_e = (m_1 + m_2) / 2', 'Skew over the blade, the square’s error gone', length.mm, reversal, turned),
    formula('m_s = (m_1 - m_2) / 2', 'The square’s own error over the blade', length.mm, reversal, turned),
    formula('i_q = m_s / l', 'The square’s own error, wider than 90° is +', slope.mm_m, rise, turned),
    formula('epsilon = atan(m_e / l)', 'Skew: front left corner sharper than 90° is +', angle.deg, rise, turned),
    formula('e_0 = l_0 * tan(epsilon)', 'Skew over the stated length', length.mm, rise),
    formula('e_D = D * tan(epsilon)', 'Sideways error over the bed’s depth', length.mm, rise, { of: AXES }),
    formula('dy = S_b * tan(epsilon)', 'Right end of the beam too far back', length.mm, rise, { of: AXES }),
    formula('dx = L_f * tan(epsilon)', 'Back of the frame too far right', length.mm, rise, { of: 'frame' }),
  ],
  limits: [{ of: 'e_0', max: 'e_lim', symmetric: true, label: 'Skew over the stated length', cite: commonPractice }],
  action,
  proof:
    'Measure again in the same way, a print printed anew: both diagonals should be alike to within the tool, or the square’s gap gone. Measure a second piece turned by a quarter on the bed: a piece that warped tells another story each time.',
  beware: [
    'Two different diagonals alone do not prove skew: opposite sides of different length do it too. Hence the sides, and the check of d₁² + d₂² against them.',
    'Shrinkage of a print cancels here: it takes both diagonals and both sides alike. It does not cancel where the piece shrank unevenly, warped, or has thick corners: measure above the first layers, between flat faces.',
    'This is X against Y. A beam that is higher at one end is Dual-Z sync’s matter; a leaning upright shows on a tall piece in the same way, front taken for bottom.',
  ],
  examples: [
    {
      title: 'A frame of 300 mm, one millimetre between the diagonals',
      given: { d_1: '424.76 ± 0', d_2: '423.76 ± 0', A: '300 ± 0', B: '300 ± 0', L_f: '300 ± 0' },
      choices: { of: 'frame' },
      expect: { epsilon: [0.135, 0.0001], e_0: [0.2357, 0.0001], dx: [0.7071, 0.0001] },
      verdict: 'beyond',
      source: derived('(424.76² − 423.76²) / (4 · 300²) = 848.52 / 360 000 = 0.002357'),
    },
    {
      title: 'A printed square of 100 mm, measured with a caliper',
      given: { d_1: '141.42 ± 0.03', d_2: '141.00 ± 0.03', A: '99.85 ± 0.03', B: '99.85 ± 0.03', S_b: '350 ± 0' },
      expect: { epsilon: [0.17, 0.0005], e_0: [0.2974, 0.0005] },
      verdict: 'beyond',
      source: derived('(141.42² − 141.00²) / (4 · 99.85²) = 118.6164 / 39 880 = 0.002974'),
    },
    {
      title: 'The square both ways round: half of what it shows is its own',
      given: { m_1: '0.30 ± 0', m_2: '0.10 ± 0', l: '100 ± 0', S_b: '400 ± 0' },
      choices: { way: 'reversal' },
      expect: { m_e: [0.2, 1e-9], m_s: [0.1, 1e-9], i_q: [1, 1e-9], e_0: [0.2, 1e-9], dy: [0.8, 1e-9] },
      verdict: 'beyond',
      source: derived('(0.30 ± 0.10) / 2 by hand; 0.2 in 100 is 0.8 in 400'),
    },
    {
      title: 'The same square on the frame',
      given: { m_1: '0.30 ± 0', m_2: '0.10 ± 0', l: '100 ± 0', L_f: '400 ± 0' },
      choices: { way: 'reversal', of: 'frame' },
      expect: { i_q: [1, 1e-9], e_0: [0.2, 1e-9], dx: [0.8, 1e-9] },
      verdict: 'beyond',
      source: derived('0.2 in 100 is 0.8 in 400'),
    },
    {
      title: 'A try square 1 mm/m too wide, in the frame’s corner',
      given: { m: '0.30 ± 0', l: '200 ± 0', i_e: '1 ± 0', L_f: '400 ± 0' },
      choices: { way: 'square', of: 'frame' },
      expect: { i_m: [0.5, 1e-9], e_0: [0.05, 1e-9], dx: [0.2, 1e-9] },
      verdict: 'within',
      source: derived('0.30 / 200 = 1.5 mm/m, less the square’s own 1 mm/m'),
    },
    {
      title: 'A try square that is true, gap open at the front',
      given: { m: '-0.05 ± 0', l: '100 ± 0', i_e: '0 ± 0', D: '220 ± 0' },
      choices: { way: 'square' },
      expect: { i_m: [-0.5, 1e-9], e_0: [-0.05, 1e-9], e_D: [-0.11, 1e-9] },
      verdict: 'within',
      source: derived('0.05 mm in 100 mm is 0.11 mm in 220 mm'),
    },
  ],
});
