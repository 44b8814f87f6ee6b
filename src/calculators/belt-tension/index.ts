import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

const SHORT = 'Span long enough to be a string';

export default calculator({
  cautions: [
    'Motors off and unplugged: a moving belt takes a finger in between belt and pulley.',
    'A belt under tension stores energy: ease the tensioner before a clamp is undone, keep the face away, hold what it carries.',
    'Block an upright carriage before its belt is eased: it drops. Let hot parts cool first.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    {
      of: 'T',
      min: 'T_lo',
      max: 'T_hi',
      label: 'Tension between slack and overloaded',
      cite: cite('Suppliers’ engineering tables', 'minimum installation and allowable working tension', true),
    },
    {
      of: 'T_lo',
      max: 'T_hi',
      label: 'Room between slack and overloaded',
      cite: derived('least tension below the most'),
    },
    { of: 'L', min: 'L_min', label: SHORT, cite: commonPractice, when: { by: 'note', ends: 'string' } },
    { of: 'L', min: 'L_min', label: SHORT, cite: commonPractice, when: { by: 'press' } },
    {
      of: 'epsilon',
      max: 'epsilon_max',
      label: 'Bending stiffness small against the tension',
      cite: derived('exact frequency of a held span: there the corrected tension is 0.5 % high'),
      when: { by: 'note', ends: ['pinned', 'clamped'] },
    },
    { of: 's', max: 's_max', label: 'Pressed no further than needed', cite: commonPractice, when: { by: 'press' } },
  ],
  action: instruct,
  proof:
    'Move the carriage to and fro by hand, bring it back to the same place and read again, the mean of five: the tension must lie in the range and stay there. Then print a circle: a flat where an axis turns round means it is still slack.',
  beware: [
    'Every relative error of note or span counts double, one of the mass once: a span read 2 % long makes the tension 4 % high.',
    'A microphone that hears the octave shows four times the tension, one that halves the note a quarter. If the answer is off by four, suspect the note: halve or double it, and pluck at the middle.',
    'Left out, stiffness makes the tension seem higher than it is. Held ends count in first order, free ones only in second; a belt on pulleys lies between.',
    'Pressed, a stiff belt reads high as well: by about twice the stiffness ratio ε with free ends, four times with held ones.',
    'The strands of a loop pull alike only at rest and after the carriage was moved to and fro; friction of a tight guide holds the difference.',
    'The pull on a shaft is twice the tension or nearly so. Hold it against the motor’s or bearing’s data sheet, above all where the pulley sits far out on the shaft.',
    'A belt held tight by a spring has the spring’s tension: another spring changes it, not the way of the tensioner.',
    'The values of rubber belts in the table are partly from memory, and suppliers differ. Where the belt’s own supplier states them, enter those.',
    'Narrow belts carry less for their width than wide ones: cords at the cut edges are not whole loops.',
  ],
  examples,
});
