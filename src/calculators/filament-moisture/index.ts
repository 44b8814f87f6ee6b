import { commonPractice, derived } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import { sources } from './plastics';

export default calculator({
  cautions: [
    'Never leave it unattended: hot air and plastics burn. Use a thermostat with a second cut-out, on a surface that does not burn, with a smoke alarm in the room.',
    'An oven or dryer that filament has been in is not for food any more, nor the other way round.',
    'Warm plastic gives off fumes, fibre-filled ones dust: air the room, and keep to the plastic’s safety sheet.',
    'Oven walls and spool burn the skin; use gloves. The spool itself may soften before the filament does: turn it so that nothing rests on its rim, and look after ten minutes.',
  ],
  choices,
  inputs,
  formulas,
  limits: [
    {
      of: 'T_b',
      max: 'T_max',
      label: 'Temperature below softening',
      cite: sources.softening,
      when: { ask: 'dry' },
    },
    {
      of: 'u_e',
      max: 'u_max',
      label: 'The oven’s air is dry enough',
      cite: commonPractice,
      when: { ask: 'dry' },
    },
    {
      of: 't_q',
      max: 't',
      label: 'Time needed against the time set',
      cite: derived('diffusion out of a cylinder down to the share wanted'),
      when: { ask: 'dry' },
    },
    { of: 'W_o', max: 'W_lim', label: 'Water taken up', cite: sources.allowed, when: { ask: 'store' } },
    { of: 'W_2', max: 'W_lim', label: 'Water still in it', cite: sources.allowed, when: { ask: 'weigh' } },
  ],
  action: instruct,
  proof:
    'Weigh it before drying and after, warm, on the same scale; dry for the same time again: when the second loss is under a tenth of the first it is dry. The share lost is how wet it was. Fed into the air, 10 cm then come out smooth and silent.',
  beware: [
    'Published rates of one plastic differ ten to a hundred times, with grade, crystals, fillers and how they were measured. So there is a band, not a time; the middle is no better than its ends.',
    'The sums are for a bare strand. A wound spool dries from its outside: twice as long, give or take, is a guess of the trade. It also takes an hour or two to get warm through.',
    'Water in polylactic acid and polyamide does not quite follow this law: polylactic acid takes up a second, slow part, and in polyamide water moves ten times faster when wet than when dry. The last tenth of polyamide is slow. Polyamide’s uptake bends upwards with the humidity, too: at 50 % it holds about a third of what it holds saturated, not half.',
    'Softened by water, a damp strand gives way at a lower temperature than a dry one.',
    'Water that has already cut the chains in the nozzle cannot be dried out of the part, and filament that stayed hot and wet for long is weaker for good.',
    'The allowed water is that of moulding shops, who melt for longer; a print may stand more, a clear one less.',
    'Solvents and plasticiser leave with the heat as well and count as water on the scale.',
  ],
  examples,
});
