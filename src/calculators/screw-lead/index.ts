import { placed } from '../../engine/shared-places';
import { count, length } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { calculator, formula, input, cite, derived } from '../../engine/calculator';
import words from './words/en';

const lead = cite('Machinery’s Handbook', 'powerScrewsLead', true);

/** The smallest calculator there is, and the one to copy: see ../README.md. */
export default calculator({
  cautions: ['switchOffUnplug'],
  choices: {},
  inputs: {
    x: input(length.mm, {
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
    a: input(length.mm, {
      seldom: true,
      typical: 0.03,
      range: [0.001, 5],
      basis: commonPractice,
    }),
  },
  formulas: [
    formula('P_m = x / N', length.mm, lead),
    formula('dP = P_m - P_h', length.mm, derived('difference')),
  ],
  limits: [{ of: 'dP', max: 'a', symmetric: true, cite: commonPractice }],
  action(ctx) {
    const measured = ctx.text('P_m');
    if (ctx.verdict === 'within') {
      return {
        headline: `Leave it: the lead is ${ctx.text('P_h')}, as marked.`,
        steps: ['Keep the reading for this machine.'],
      };
    }
    if (ctx.verdict === 'too close') {
      return {
        headline: 'Turn further and measure again.',
        steps: [
          'Twice the turns halve the doubt about one turn.',
          'Always come from the same side, so that play does not count.',
        ],
      };
    }
    const longer = ctx.number('dP') > 0;
    return {
      headline: `The screw moves ${measured} a turn, ${longer ? 'more' : 'less'} than marked: set the machine’s lead to what the screw has.`,
      steps: [
        'Count the thread starts at the end of the screw: lead = pitch × starts.',
        'Take the nearest lead that such a screw is made with (2, 4, 8 mm…; an inch screw: 25.4 mm over its turns per inch), not the measured digits, and set steps and lead of this machine to it.',
        'If no such lead is near, look for a nut that skips, or a coupling that slips, before blaming the screw.',
      ],
      movements: [{ part: 'set lead', direction: longer ? 'raise' : 'lower', amount: Math.abs(ctx.number('dP')) }],
    };
  },
  beware: ['leadRightAverage'],
  examples: [
    {
      key: 'tenTurnsFour',
      given: { x: '80 mm', N: '10', P_h: '8 mm' },
      expect: { P_m: [8, 1e-9], dP: [0, 1e-9] },
      verdict: 'within',
      source: derived(
        'tenTurnsFour',
      ),
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
}, words);
