import type { Check } from '../types';
import { measured, seen } from './make';

const COLD = 'Unplugged, and cold to the hand.';
const HEATING = 'Stay beside it with a hand on the switch while it heats; nothing that burns within an arm’s length.';
const MAINS = 'Covers over mains parts stay shut: that side is for a qualified person.';

export const heatChecks: readonly Check[] = [
  seen('feel', 'sensor-tug', 'Tug at the sensor’s wire', ['It comes out or moves', 'It sits fast'], {
    how: ['Find where the sensor’s thin wires enter the block.', 'Tug gently; it must not move.'],
    cautions: [COLD],
    minutes: 2,
    tells: { 'sensor-fallen': 0.96, 'sensor-loose': 0.87, 'sensor-contact': 0.15 },
    falsely: 0.04,
  }),
  measured('sensor-ohms', 'sensor-check', 'Measure the sensor’s resistance at room temperature', {
    how: [
      'Unplug the sensor at the board, let it take the room’s temperature.',
      'Measure it, bending the wire meanwhile; the check turns it into a temperature.',
    ],
    cautions: [COLD, MAINS],
    minutes: 6,
    tools: ['multimeter', 'room thermometer'],
    tells: { 'sensor-contact': 0.82, 'sensor-type': 0.85 },
    falsely: 0.05,
  }),
  seen('look', 'sensor-setting', 'Compare the set sensor type with the one fitted', ['They differ', 'They agree'], {
    how: [
      'Read the type from the bag, the order or the data sheet.',
      'Compare with what the board is set to, before any heating: heaters stay at zero.',
    ],
    cautions: [HEATING],
    minutes: 4,
    powered: true,
    tells: { 'sensor-type': 0.92 },
    falsely: 0.05,
  }),
  seen('do', 'switch-ohms', 'Measure across the heater’s switch', ['It conducts', 'It blocks'], {
    how: [
      'Unplug the heater from the board.',
      'With the meter on ohms, measure between the heater output and the supply’s minus, then its plus.',
      'A few ohms or less either way is a switch that has failed.',
    ],
    cautions: [COLD, MAINS],
    minutes: 7,
    tools: ['multimeter'],
    tells: { 'switch-shorted': 0.88 },
    falsely: 0.05,
  }),
  measured('heater-ohms', 'sensor-check', 'Measure the heater’s resistance', {
    how: ['Unplug the heater at the board and measure it.', 'The check gives its power at the supply’s voltage.'],
    cautions: [COLD, MAINS],
    minutes: 5,
    tools: ['multimeter'],
    tells: { 'heater-strong': 0.94, 'heater-contact': 0.3 },
    falsely: 0.04,
  }),
  measured('heating-curve', 'heater-check', 'Record a heating curve', {
    how: [
      'Note the temperature every ten seconds from cold to 100 °C.',
      'The check compares it with what this heater and block should do.',
    ],
    cautions: [HEATING],
    minutes: 8,
    powered: true,
    tools: ['stopwatch'],
    tells: {
      'heater-strong': 0.85,
      'sensor-loose': 0.75,
      'sensor-type': 0.6,
      'supply-weak': 0.65,
      'heater-contact': 0.55,
      'sensor-contact': 0.4,
    },
    falsely: 0.08,
  }),
  seen(
    'look',
    'temperature-swing',
    'Watch the temperature for five minutes',
    ['A slow, even swing', 'Steady, or in jumps'],
    {
      how: [
        'Let it settle at printing temperature, part fan on.',
        'Write down the highest and lowest, and how long a swing takes.',
      ],
      cautions: [HEATING],
      minutes: 6,
      powered: true,
      tells: { 'loop-untuned': 0.88, 'sensor-loose': 0.3, 'block-blown': 0.35, 'supply-weak': 0.25 },
      falsely: 0.08,
    },
  ),
  seen(
    'look',
    'fan-drop',
    'Switch the part fan on and watch the temperature',
    ['It drops by 5 °C or more', 'It holds'],
    {
      how: ['Hold at printing temperature with the part fan off.', 'Set it to full and watch for a minute.'],
      cautions: [HEATING],
      minutes: 3,
      powered: true,
      tells: { 'block-blown': 0.88, 'sensor-loose': 0.25, 'loop-untuned': 0.35, 'supply-weak': 0.2 },
      falsely: 0.07,
    },
  ),
  seen(
    'look',
    'sleeve-look',
    'Look at the block’s sleeve and the fan’s duct',
    ['Sleeve off, or duct askew', 'Both in place'],
    {
      how: ['Look from the front and from below where the part fan blows.'],
      cautions: [COLD],
      minutes: 1,
      tells: { 'block-blown': 0.82, 'plastic-on-block': 0.4, 'sensor-fallen': 0.2 },
      falsely: 0.1,
    },
  ),
  seen('look', 'plug-look', 'Look at the heaters’ plugs and clamps', ['Browned, melted or loose', 'Clean and tight'], {
    how: ['Take each heater plug apart and look at both halves.', 'Tug each wire at its clamp.'],
    cautions: [COLD, MAINS],
    minutes: 4,
    tells: { 'heater-contact': 0.88, 'plug-loose': 0.2, 'supply-terminal': 0.1 },
    falsely: 0.05,
  }),
  seen('look', 'terminal-look', 'Look at the supply’s terminals', ['Browned, or a wire moves', 'Clean and tight'], {
    how: [
      'Unplugged for ten minutes.',
      'Look at the low-voltage screws and tug each wire; the mains side by a qualified person.',
    ],
    cautions: [COLD, MAINS, 'A supply holds its charge for minutes.'],
    minutes: 6,
    tells: { 'supply-terminal': 0.9, 'supply-weak': 0.3 },
    falsely: 0.05,
  }),
  seen('look', 'block-look', 'Look for plastic above the nozzle', ['Charred plastic on the block', 'Clean'], {
    how: ['Look under and behind the sleeve with a lamp.', 'Smell it from close by.'],
    cautions: [COLD],
    minutes: 2,
    tells: { 'plastic-on-block': 0.92 },
    falsely: 0.08,
  }),
  seen('do', 'supply-volts', 'Measure the supply’s low voltage under load', ['It falls by more than 5 %', 'It holds'], {
    how: ['Meter on volts at the board’s supply screws.', 'Read with heaters off, then with all of them on.'],
    cautions: [MAINS, 'Probes only where one hand can hold both; do not bridge two screws.', HEATING],
    minutes: 5,
    powered: true,
    tools: ['multimeter'],
    tells: { 'supply-weak': 0.9, 'supply-terminal': 0.5, 'heater-contact': 0.1 },
    falsely: 0.05,
  }),
  seen(
    'do',
    'plugs-one-by-one',
    'Reseat the plugs one at a time and write down each',
    ['One was loose or dirty', 'All were tight'],
    {
      how: [
        'One plug out, look at its pins, in again until it latches.',
        'Write down which, then the next: what was touched is known when the fault stays away.',
      ],
      cautions: [COLD, MAINS],
      minutes: 9,
      tells: { 'plug-loose': 0.88, 'sensor-contact': 0.35, 'z-motor-off': 0.6 },
      falsely: 0.1,
    },
  ),
  seen('do', 'wire-bend', 'Bend the suspected wire with a meter on it', ['The reading jumps', 'It holds'], {
    how: [
      'Unplug the wire at both ends, meter on ohms.',
      'Bend it along its whole length, where it moves most of all.',
    ],
    cautions: [COLD],
    minutes: 6,
    tools: ['multimeter'],
    tells: { 'cable-broken': 0.86, 'sensor-contact': 0.75, 'plug-loose': 0.15 },
    falsely: 0.05,
  }),
  seen('listen', 'switch-click', 'Work the end switch by hand twenty times', ['One press is missed', 'All are seen'], {
    how: ['Watch what the board reports, or listen for the click.', 'Nudge the switch sideways: its mount must hold.'],
    cautions: ['Motors off; fingers away from where the carriage runs.'],
    minutes: 3,
    powered: true,
    tells: { 'end-switch-worn': 0.87, 'cable-broken': 0.25, 'plug-loose': 0.25 },
    falsely: 0.05,
  }),
  seen('look', 'wire-route', 'Look how the sensor’s wires run', ['Along motor or heater wires', 'Apart'], {
    how: ['Follow each sensor’s wires from end to end.'],
    cautions: [COLD],
    minutes: 2,
    tells: { 'wires-disturb': 0.9 },
    falsely: 0.25,
  }),
  seen('do', 'calm-off', 'Compare the reading with motors on and off', ['Calm only when they are off', 'The same'], {
    how: ['Watch the reading for a minute with motors and heaters off.', 'Then with the motors moving.'],
    cautions: [HEATING],
    minutes: 4,
    powered: true,
    tells: { 'wires-disturb': 0.87, 'cable-broken': 0.3, 'supply-weak': 0.35 },
    falsely: 0.07,
  }),
];
