import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';

const range = cite('Suppliers’ engineering tables', 'minimum installation and allowable working tension', true);
const series = derived('exact frequency of a held span: there the corrected tension is 0.5 % high');
const stiff = { ends: ['pinned', 'clamped'] };

export default calculator({
  cautions: [
    'Motors off and unplugged: a moving belt takes a finger in between belt and pulley.',
    'A belt under tension stores energy: ease the tensioner before a clamp is undone, keep the face away, hold what it carries.',
    'Block an upright carriage before its belts are eased: it drops. Let hot parts cool first.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    { of: 'd_T', max: 'd_lim', symmetric: true, label: 'Difference between the two belts', cite: commonPractice },
    { of: 'T_1', min: 'T_lo1', max: 'T_hi1', label: 'First belt between slack and overloaded', cite: range },
    { of: 'T_2', min: 'T_lo2', max: 'T_hi2', label: 'Second belt between slack and overloaded', cite: range },
    { of: 'L_1', min: 'L_min', label: 'First span long enough', cite: commonPractice, when: { ends: 'string' } },
    { of: 'L_2', min: 'L_min', label: 'Second span long enough', cite: commonPractice, when: { ends: 'string' } },
    { of: 'epsilon_1', max: 'epsilon_max', label: 'First belt’s stiffness small', cite: series, when: stiff },
    { of: 'epsilon_2', max: 'epsilon_max', label: 'Second belt’s stiffness small', cite: series, when: stiff },
  ],
  action: instruct,
  proof:
    'Move the carriage through its whole way and back to the same place, pluck both again: the difference must stay within the limit. Then print or draw a square and compare its diagonals.',
  beware: [
    'The same tension is the same note only where the spans are alike: f₂ = f₁ · L₁ / L₂ for belts of one sort.',
    'Equal places of the tensioners are equal tension only where the loops are equally long.',
    'Suspect the note where one belt seems four times as tight as the other: a microphone took the octave for the note. Halve it, and pluck at the middle.',
    'On crossed belts a motor that holds keeps the two apart: switch the motors off and push the carriage to and fro before reading.',
    'Left out, stiffness raises the note of the shorter span more, so that it seems the tighter one.',
    'Offset in teeth is told only where both pull alike: stretch of a soft belt looks like part of a tooth.',
    'A tooth of belt at the clamp and a tooth on the motor pulley look the same here; on two drives with one shaft only the pulley’s tooth sets the gantry askew.',
    'The range counts the belt at rest; what accelerating adds is in the check “Belt tension”.',
  ],
  examples,
});
