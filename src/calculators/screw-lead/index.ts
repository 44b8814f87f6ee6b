import { count, length } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator, formula, input } from '../../engine/calculator';

const lead = cite('Machinery’s Handbook', 'power screws: the lead is the travel in one turn', true);

/** The smallest calculator there is, and the one to copy: see ../README.md. */
export default calculator({
  cautions: ['Switch off and unplug; turn the screw by its coupling and keep fingers out of the gap under the nut.'],
  choices: {},
  inputs: {
    x: input('Travel of the nut', length.mm, {
      // A reading that names no tool is no surer than a caliper's: its digits would be printed as if all were known.
      spread: 0.03,
      range: [0.5, 2000],
      tool: 'caliper',
      hint: 'From a mark before turning to the mark after it, always turning the same way, so that play does not count.',
    }),
    N: input('Whole turns', count.one, {
      typical: 5,
      range: [1, 200],
      hint: 'A dot on the screw against a line on the frame; more turns, less doubt.',
    }),
    P_h: input('Screw lead', length.mm, {
      typical: 8,
      range: [0.5, 50],
      from: 'z.lead',
      hint: 'As marked, or as set in the machine.',
    }),
    a: input('Allowed difference', length.mm, {
      seldom: true,
      typical: 0.03,
      range: [0.001, 5],
      basis: commonPractice,
    }),
  },
  formulas: [
    formula('P_m = x / N', 'Lead as measured', length.mm, lead),
    formula('dP = P_m - P_h', 'Measured less marked', length.mm, derived('difference')),
  ],
  limits: [{ of: 'dP', max: 'a', symmetric: true, label: 'Difference from the marked lead', cite: commonPractice }],
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
  proof: 'Command a known travel, the longest the machine has, and measure it: it should agree within the tool.',
  beware: ['A lead that is right on average may still be uneven along the screw; measure at both ends.'],
  examples: [
    {
      title: 'Ten turns of a four-start screw of 2 mm pitch',
      given: { x: '80 mm', N: '10', P_h: '8 mm' },
      expect: { P_m: [8, 1e-9], dP: [0, 1e-9] },
      verdict: 'within',
      source: derived(
        'lead = pitch × starts = 2 mm × 4 = 8 mm; ten turns make 80 mm; Tr 8×8(P2) means lead and pitch (designation as in ISO 2902, whose list lacks this size)',
      ),
    },
    {
      title: 'A single-start screw where four starts were expected',
      given: { x: '10 mm', N: '5', P_h: '8 mm' },
      expect: { P_m: [2, 1e-9], dP: [-6, 1e-9] },
      verdict: 'beyond',
      source: derived('10 mm / 5 = 2 mm'),
    },
    {
      title: 'One turn by steel rule cannot tell',
      given: { x: '8 mm ± 0.5 mm', N: '1', P_h: '8 mm' },
      expect: { P_m: [8, 1e-9] },
      verdict: 'too close',
      source: derived('± 0.5 mm on one turn is wider than the allowed 0.03 mm'),
    },
  ],
});
