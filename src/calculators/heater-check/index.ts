import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';
import { LEAST, model } from './model';
import words from './words/en';

/** Steps between taps where the temperatures to wait for are written beforehand, K. */
const STEP = 10;

export default calculator(
  {
    cautions: ['fireBurnsNever', 'mainsKillsCovers', 'switchHasFailed', 'blockBurnsOnce', 'neverSwitchWatchdog'],
    choices,
    inputs,
    tables: {
      curve: {
        label: 'Real curve',
        line: 'Line',
        columns: { time: 'Time', temperature: 'Shown' },
        least: LEAST,
        hint: 'Heating: fully on from cold, from 50 °C. Cooling: from the working temperature, switched off. Tap Now as the display changes, then type what it shows; or write the temperatures first and tap as each comes up.',
        stopwatch: 'time',
        presets: {
          'Every 10 °C upwards': (value) => {
            const [low, high] = [323.15, value('T_w')];
            if (high === undefined) return { reason: 'The working temperature is needed first.' };
            const count = Math.floor((high - low) / STEP + 1e-9) + 1;
            if (count < LEAST) return { reason: 'The working temperature is too low for steps of 10 °C.' };
            return Array.from({ length: Math.min(count, 20) }, (_, i) => ({ temperature: low + i * STEP }));
          },
        },
      },
    },
    model,
    formulas,
    limits,
    action: instruct,
    beware: [
      'blockTakenLump',
      'timesTakeLoss',
      'airCarriesMore',
      'sensorHalfOut',
      'insulationWiresSolder',
      'heatedBedObeys',
      'cutOffOpens',
    ],
    examples,
  },
  words,
);
