import { commonPractice, derived } from '../../reference/citation';
import { calculator, choice } from '../../engine/calculator';
import { instruct } from './action';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import { plastics } from './materials';

export default calculator({
  cautions: [
    'Nozzle, heater block and fresh plastic burn the skin at once: keep hands off, and use pliers for strings.',
    'Hot plastic gives off fumes: print and purge only where the air is changed, and follow the plastic’s safety sheet.',
    'The drive gear pinches: keep fingers and sleeves away from it while it is powered.',
  ],
  choices: {
    drive: choice(
      'Filament drive',
      {
        tube: { label: 'pushes through a tube', set: { L: [450, 20], a_lo: 0.5, a_hi: 2, x_max: 7, x_step: 0.5 } },
        head: { label: 'sits on the hot end', set: { L: [45, 10], a_lo: 0.1, a_hi: 0.7, x_max: 2, x_step: 0.1 } },
      },
      'tube',
      { from: 'extruder.drive' },
    ),
    material: choice('Plastic', plastics, 'pla'),
    source: choice(
      'Pressure from',
      { table: { label: 'the plastic’s flow values' }, force: { label: 'a push force you measured' } },
      'table',
    ),
    land: choice(
      'Land of the other nozzle',
      { same: { label: 'as long as this one’s' }, scaled: { label: 'scales with its bore' } },
      'same',
    ),
  },
  inputs,
  formulas,
  limits: [
    {
      of: 'x_set',
      min: 'x_lo',
      max: 'x_hi',
      label: 'Pull-back length against the computed band',
      cite: commonPractice,
    },
    // One for the figure and one for the setting, each by its own name, so that the instruction can tell them apart.
    { of: 'x_r', max: 'x_max', label: 'Computed length leaves the soft end below the cold part', cite: commonPractice },
    {
      of: 'x_max',
      min: 'x_set',
      label: 'Length set now leaves the soft end below the cold part',
      cite: commonPractice,
    },
    { of: 'F_g', max: 'F_max', label: 'Push that the drive can give', cite: commonPractice },
    {
      of: 'gamma_w',
      min: 'gamma_min',
      label: 'Shear rate high enough for the power law',
      cite: commonPractice,
      when: { source: 'table' },
    },
    {
      of: 'D_t',
      min: 'd_f',
      label: 'Tube wide enough for the filament',
      cite: derived('it must pass'),
      when: { drive: 'tube' },
    },
    { of: 'd_0', min: 'd', label: 'Cone wider above than at the tip', cite: derived('shape of a nozzle') },
  ],
  action: (ctx) => instruct(ctx, ctx.choice('drive'), ctx.choice('source')),
  proof:
    'Print the test piece at the new length. The gap should stay clean and the first line after each travel should start full width; a thin or late start means too much was pulled back.',
  beware: [
    'Absolute pressures from tabulated flow values are good to a factor of three at best; trust the ratios between nozzles and flows, and let the test piece decide the rest.',
    'The cone’s formula counts shear only. Stretching of the melt is in it as a judged factor, from none to as much again.',
    'The bends are taken as even along the tube, and one friction coefficient for all of it; a kink or a scraped wall holds more.',
    'Part of the lag is the springiness of the melt itself: no pull-back length takes it up.',
    'The slack counts the whole way from the outer wall of the tube to the inner; filament that keeps the curl of its spool moves less.',
    'A cold drive, a worn bore, or plastic leaking back past the filament adds force that is not in the figures. Wet filament foams and strings whatever the length.',
    'Towards the end of the bleeding the melt flows more easily than a power law says, so that the true time is shorter.',
  ],
  examples,
});
