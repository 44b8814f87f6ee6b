import { placed } from '../../engine/shared-places';
import { count, length, ratio } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { calculator, cite, derived, formula, input } from '../../engine/calculator';
import { action, contradiction, likely } from './action';
import words from './words/en';

const lead = cite('ISO 5408:2009', 'powerScrewsLead', true);

export const inputs = {
  x: input(length.mm, {
    feature: 'travel',
    // A reading that names no tool is no surer than a caliper's: its digits would be printed as if all were known.
    spread: 0.03,
    range: [0.5, 2000],
    tool: 'caliper',
  }),
  N: input(count.one, {
    typical: 5,
    range: [1, 200],
  }),
  P_h: placed('z.lead', {
    range: [0.5, 50],
  }),
  P: input(length.mm, {
    feature: 'set',
    optional: true,
    seldom: true,
    range: [0.2, 50],
  }),
  n_s: input(count.one, {
    optional: true,
    seldom: true,
    range: [1, 12],
  }),
  k_a: input(ratio.percent, {
    seldom: true,
    typical: 0.5,
    range: [0.05, 5],
    basis: commonPractice,
  }),
};

export const formulas = [
  formula('P_m = x / N', length.mm, lead),
  formula('dP = P_m - P_h', length.mm, derived('difference')),
  formula('a = k_a * P_m', length.mm, commonPractice),
  formula('P_d = P * n_s', length.mm, cite('ISO 2902:1977', 'designation', true)),
] as const;

/** The smallest calculator there is, and the one to copy: DEVELOPERS.md says how. */
export default calculator(
  {
    cautions: ['switchOffUnplug'],
    choices: {},
    inputs,
    formulas,
    limits: [{ of: 'dP', max: 'a', symmetric: true, cite: commonPractice }],
    measured: ['x'],
    // Only what such a screw is made with is ever set.
    levers: {
      P_h: {
        step: (ask) => Math.abs(likely(ask) - ask.number('P_h')) || 1,
        from: (ask) => likely(ask) - 1e-12,
        to: (ask) => likely(ask) + 1e-12,
      },
    },
    contradiction,
    action,
    beware: ['leadRightAverage'],
    examples: [
      {
        key: 'tenTurnsFour',
        given: { x: '80 mm', N: '10', P_h: '8 mm' },
        expect: { P_m: [8, 1e-9], dP: [0, 1e-9] },
        verdict: 'within',
        source: derived('tenTurnsFour'),
      },
      {
        key: 'singleStartScrew',
        given: { x: '10 mm', N: '5', P_h: '8 mm' },
        expect: { P_m: [2, 1e-9], dP: [-6, 1e-9] },
        verdict: 'beyond',
        source: derived('singleStartScrew'),
      },
      {
        key: 'turnSteelRule',
        given: { x: '8 mm ± 0.5 mm', N: '1', P_h: '8 mm' },
        expect: { P_m: [8, 1e-9] },
        verdict: 'too close',
        source: derived('turnSteelRule'),
      },
    ],
  },
  words,
);
