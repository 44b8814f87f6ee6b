import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

const one = { test: 'one' };

export default calculator({
  cautions: [
    'Keep hands out of the machine while it prints; look at ripples on the finished part.',
    'Motors off, unplugged, nozzle and bed cold before the frame is pulled. Hold the machine on its table: pulled high up, it tips.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    {
      of: 'a',
      max: 'a_s',
      label: 'Acceleration that keeps the ripples low',
      cite: cite('Den Hartog, Mechanical Vibrations', 'a force at once bends twice as far as at rest', true),
    },
    {
      of: 'x_0',
      min: 'l_r',
      label: 'Counted beyond the ramp',
      cite: derived('in the ramp the speed is not yet that of the wall'),
    },
    { of: 'g_p', min: 'g_lim', label: 'Spaced unlike the belt’s teeth', cite: commonPractice, when: one },
    { of: 'g_s', min: 'g_lim', label: 'Spaced unlike the motor’s steps', cite: commonPractice, when: one },
    {
      of: 'kappa',
      min: 'kappa_lim',
      label: 'Spreads with the speed: it swings',
      cite: derived('midway between 0 for a part and 1 for what swings'),
      when: { test: 'two' },
    },
    {
      of: 'x_c',
      max: 'x_tol',
      label: 'Ripple of the corner speed alone',
      cite: commonPractice,
      when: { corner: 'kept' },
    },
  ],
  action: instruct,
  proof:
    'Print the same corner again with nothing else changed, light from the side: count the ripples and measure them over as many as before. They must be lower; after stiffening or lightening they must also be closer together.',
  beware: [
    'The speed must be that of the wall at the ripples. Short walls never reach the set speed, outer walls are often slower: print one long straight wall.',
    'Two parts that swing at once beat: the ripples swell and fade along the wall, and no one spacing fits. Then X and Y, or belt and frame, want a print each.',
    'X and Y swing by themselves: a corner into X shows Y’s ripples as steps of width on the next wall, and the other way round. Measure both.',
    'A stiffer belt is one of more or shorter cords. Tension hardly changes a belt’s stiffness, unless it is so slack that one strand hangs loose: then half the stiffness is gone.',
    'The motor’s magnetic field is a spring too, in line with the belt: a weak current softens it.',
    'Damping shifts the frequency by less than a hundredth while ripples need two or more to halve; that is left out.',
    'A ramp that lasts whole swings cancels its own ripples only for that one speed and only as well as the frequency is known: a help, no remedy.',
    'Acceleration that starts softly rings less than reckoned here. The limit is for a start at once, the worst case.',
  ],
  examples,
});
