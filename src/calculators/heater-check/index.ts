import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';
import { LEAST, model } from './model';

/** Steps between taps where the temperatures to wait for are written beforehand, K. */
const STEP = 10;

export default calculator({
  cautions: [
    'Fire and burns: never leave the machine alone during these tests. A hand at the supply’s switch, a smoke alarm above, nothing that burns beside it, a fire blanket or extinguisher within reach.',
    'Mains kills. Covers of the supply and of mains heaters stay shut; what is behind them is for qualified people, to the local code. Switch off and unplug before any wire or sensor is touched, and measure resistance only then.',
    'A switch that has failed closed is beyond any program. What cuts it off is a separate thermal cut-off in the heater’s own supply, or the supply switched off by hand.',
    'The block burns at once and stays hot for a quarter of an hour. Vent the room: hot PTFE and plastics give off harmful gas.',
    'Never switch a watchdog off because it gives alarms.',
  ],
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
  proof:
    'Test 1: the real heating time, by the stopwatch, within a quarter of the reckoned one. Test 2: with the sensor out of the cold block, the watchdog cuts the heater by its pass mark. Repeat both after every change of heater, sensor, board or settings. A cut-off cannot be tested so: check that it is of the right rating, in series with the heater, and firmly clamped.',
  beware: [
    'The block is taken as one lump of one temperature: it is, for small metal blocks (Biot number far below 0.1). Heater and sensor lag a few seconds behind: read from 50 °C on.',
    'Times take the loss as proportional to the excess over the room, right at the working temperature; so a stuck heater is a little slower than reckoned above it and faster below. The end temperature and the drawing count radiation in full.',
    'Air carries more heat off a hotter block, and the strand and the fan take their share: the true end temperature of a stuck heater lies rather below the one reckoned. It is the safe side, no promise.',
    'A sensor half out reads something in between, and the watchdog may never see it. A sensor fixed by a screw does not fall out.',
    'Insulation of wires, solder, crimps and plastic parts near by give way long before metal melts, and are not reckoned here.',
    'A heated bed obeys the same law but is no small lump, and often runs on mains: this sheet does not cover it.',
    'A cut-off opens at the temperature of its own body, later than the block gets there.',
  ],
  examples,
});
