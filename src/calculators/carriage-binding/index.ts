import { calculator } from '../../engine/calculator';
import { contradiction, instruct } from './action';
import { STEPS } from './asked';
import { choices } from './choices';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['motorsOffUnplugged', 'supportCarriageRuns', 'pullSlowlyHand'],
    choices,
    inputs,
    formulas,
    limits,
    measured: ['L', 'd_0', 'd_1', 'd_2', 'F_a', 'F_b'],
    // Nearer, squarer and slower is what a hand can do.
    levers: {
      d_0: { step: () => STEPS.d_0, to: (ask) => ask.number('d_0') },
      s: { step: () => STEPS.s },
      e: { step: () => STEPS.e, from: (ask) => -Math.abs(ask.number('e')), to: (ask) => Math.abs(ask.number('e')) },
      e_l: {
        step: () => STEPS.e_l,
        from: (ask) => -Math.abs(ask.number('e_l')),
        to: (ask) => Math.abs(ask.number('e_l')),
      },
      dx: { step: () => STEPS.dx, to: (ask) => ask.number('dx') },
      a: { step: () => STEPS.a, to: (ask) => ask.number('a') },
    },
    action: instruct,
    contradiction,
    beware: [
      'whetherBindsDepends',
      'ruleTakesGuide',
      'playDoesChange',
      'drivesCancelOnly',
      'frictionRestGreater',
      'wheelsTurnDo',
      'offsetsCountSquare',
    ],
    examples,
  },
  words,
);
