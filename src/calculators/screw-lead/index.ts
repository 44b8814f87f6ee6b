import { placed } from '../../engine/shared-places';
import { count, length } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { calculator, cite, derived, formula, input, type AskOf } from '../../engine/calculator';
import { telling, type Order } from '../../engine/order';
import words from './words/en';

const lead = cite('Machinery’s Handbook', 'powerScrewsLead', true);

const inputs = {
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
  a: input(length.mm, { feature: 'set', seldom: true, typical: 0.03, range: [0.001, 5], basis: commonPractice }),
};

const formulas = [
  formula('P_m = x / N', length.mm, lead),
  formula('dP = P_m - P_h', length.mm, derived('difference')),
] as const;

type Ask = AskOf<{ inputs: typeof inputs; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

/** Leave it, measure again over more turns, or set what the screw has. */
function action(ask: Ask): Order {
  const lead = ask.quantity('P_m');
  if (ask.verdict === 'within') return tell('leave', { lead: ask.quantity('P_h') }, { steps: [step('keep')] });
  if (ask.verdict === 'too close') return tell('again', {}, { steps: [step('moreTurns'), step('sameSide')] });
  const longer = ask.number('dP') > 0;
  return tell(
    'set',
    { lead, longer },
    {
      steps: [step('countStarts'), step('nearestLead'), step('otherCauses')],
      movements: [{ part: 'set lead', direction: longer ? 'raise' : 'lower', amount: Math.abs(ask.number('dP')) }],
    },
  );
}

/** The smallest calculator there is, and the one to copy: DEVELOPERS.md says how. */
export default calculator(
  {
    cautions: ['switchOffUnplug'],
    choices: {},
    inputs,
    formulas,
    limits: [{ of: 'dP', max: 'a', symmetric: true, cite: commonPractice }],
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
