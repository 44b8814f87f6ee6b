import type { heatInspections as inspections } from '../../heat-inspections';
import type { InspectionsWords } from '../../wording';
import { LIMIT, UNSURE } from './answers';

const COLD = 'Unplugged, and cold to the hand.';
const HEATING = 'Stay beside it with a hand on the switch while it heats; nothing that burns within an arm’s length.';
const MAINS = 'Covers over mains parts stay shut: that side is for a qualified person.';

export const heatInspections: InspectionsWords<typeof inspections> = {
  'sensor-tug': {
    title: 'Tug at the sensor’s wire',
    how: ['Find where the sensor’s thin wires enter the block.', 'Tug gently; it must not move.'],
    cautions: [COLD],
    answers: { yes: 'It comes out or moves', no: 'It sits fast', unsure: UNSURE },
  },
  'sensor-ohms': {
    title: 'Measure the sensor’s resistance at room temperature',
    how: [
      'Unplug the sensor at the board, let it take the room’s temperature.',
      'Measure it, bending the wire meanwhile; the check turns it into a temperature.',
    ],
    cautions: [COLD, MAINS],
    answers: LIMIT,
  },
  'sensor-setting': {
    title: 'Compare the set sensor type with the one fitted',
    how: [
      'Read the type from the bag, the order or the data sheet.',
      'Compare with what the board is set to, before any heating: heaters stay at zero.',
    ],
    cautions: [HEATING],
    answers: { yes: 'They differ', no: 'They agree', unsure: UNSURE },
  },
  'switch-ohms': {
    title: 'Measure across the heater’s switch',
    how: [
      'Low-voltage DC only: the board and its heater, plug out, supply and heater output under 1 V.',
      'Take both heater wires off their terminals. Short the leads, note what they read, and take it off each reading.',
      'Find which side the board switches. Switching minus: measure from the switched terminal to the supply’s minus. Switching plus: to its plus.',
      'Measure both ways round. Low both ways is a shorted switch; the other side reads its own wire and says nothing.',
    ],
    cautions: [
      COLD,
      MAINS,
      'A relay or switch for mains is measured by a qualified person only.',
      'High clears nothing that fails hot.',
    ],
    answers: { yes: 'Low both ways round', no: 'High one way or both', unsure: UNSURE },
  },
  'heater-ohms': {
    title: 'Measure the heater’s resistance',
    how: ['Unplug the heater at the board and measure it.', 'The check gives its power at the supply’s voltage.'],
    cautions: [COLD, MAINS],
    answers: LIMIT,
  },
  'heating-curve': {
    title: 'Record a heating curve',
    how: [
      'Note the temperature every ten seconds from cold to 100 °C.',
      'The check compares it with what this heater and block should do.',
    ],
    cautions: [HEATING],
    answers: LIMIT,
  },
  'temperature-swing': {
    title: 'Watch the temperature for five minutes',
    how: [
      'Let it settle at printing temperature, part fan on.',
      'Write down the highest and lowest, and how long a swing takes.',
    ],
    cautions: [HEATING],
    answers: { yes: 'A slow, even swing', no: 'Steady, or in jumps', unsure: UNSURE },
  },
  'fan-drop': {
    title: 'Switch the part fan on and watch the temperature',
    how: ['Hold at printing temperature with the part fan off.', 'Set it to full and watch for a minute.'],
    cautions: [HEATING],
    answers: { yes: 'It drops by 5 °C or more', no: 'It holds', unsure: UNSURE },
  },
  'sleeve-look': {
    title: 'Look at the block’s sleeve and the fan’s duct',
    how: ['Look from the front and from below where the part fan blows.'],
    cautions: [COLD],
    answers: { yes: 'Sleeve off, or duct askew', no: 'Both in place', unsure: UNSURE },
  },
  'plug-look': {
    title: 'Look at the heaters’ plugs and clamps',
    how: ['Take each heater plug apart and look at both halves.', 'Tug each wire at its clamp.'],
    cautions: [COLD, MAINS],
    answers: { yes: 'Browned, melted or loose', no: 'Clean and tight', unsure: UNSURE },
  },
  'terminal-look': {
    title: 'Look at the supply’s terminals',
    how: [
      'Unplugged for ten minutes.',
      'Look at the low-voltage screws and tug each wire; the mains side by a qualified person.',
    ],
    cautions: [COLD, MAINS, 'A supply holds its charge for minutes.'],
    answers: { yes: 'Browned, or a wire moves', no: 'Clean and tight', unsure: UNSURE },
  },
  'block-look': {
    title: 'Look for plastic above the nozzle',
    how: ['Look under and behind the sleeve with a lamp.', 'Smell it from close by.'],
    cautions: [COLD],
    answers: { yes: 'Charred plastic on the block', no: 'Clean', unsure: UNSURE },
  },
  'supply-volts': {
    title: 'Measure the supply’s low voltage under load',
    how: ['Meter on volts at the board’s supply screws.', 'Read with heaters off, then with all of them on.'],
    cautions: [MAINS, 'Probes only where one hand can hold both; do not bridge two screws.', HEATING],
    answers: { yes: 'It falls by more than 5 %', no: 'It holds', unsure: UNSURE },
  },
  'plugs-one-by-one': {
    title: 'Reseat the plugs one at a time and write down each',
    how: [
      'One plug out, look at its pins, in again until it latches.',
      'Write down which, then the next: what was touched is known when the fault stays away.',
    ],
    cautions: [COLD, MAINS],
    answers: { yes: 'One was loose or dirty', no: 'All were tight', unsure: UNSURE },
  },
  'wire-bend': {
    title: 'Bend the suspected wire with a meter on it',
    how: [
      'Unplug the wire at both ends, meter on ohms.',
      'Bend it along its whole length, where it moves most of all.',
    ],
    cautions: [COLD],
    answers: { yes: 'The reading jumps', no: 'It holds', unsure: UNSURE },
  },
  'switch-click': {
    title: 'Work the limit switch by hand twenty times',
    how: ['Watch what the board reports, or listen for the click.', 'Nudge the switch sideways: its mount must hold.'],
    cautions: ['Motors off; fingers away from where the carriage runs.'],
    answers: { yes: 'One press is missed', no: 'All are seen', unsure: UNSURE },
  },
  'wire-route': {
    title: 'Look how the sensor’s wires run',
    how: ['Follow each sensor’s wires from end to end.'],
    cautions: [COLD],
    answers: { yes: 'Along motor or heater wires', no: 'Apart', unsure: UNSURE },
  },
  'calm-off': {
    title: 'Compare the reading with motors on and off',
    how: ['Watch the reading for a minute with motors and heaters off.', 'Then with the motors moving.'],
    cautions: [HEATING],
    answers: { yes: 'Calm only when they are off', no: 'The same', unsure: UNSURE },
  },
  'mains-look': {
    title: 'Look at the mains lead and where it goes in',
    how: [
      'Plug out and in your hand: does it, and the socket it was in, have an earth contact?',
      'Follow the lead: a nick, a kink, a crushed or browned place, a loose grip where it goes in, anything wet.',
      'Does the lead end in a supply that stands apart, with a thin plug to the machine? Then no mains goes into the machine.',
    ],
    cautions: [
      'Plug out before anything is touched.',
      MAINS,
      'Look only: opening and measuring are for a qualified person.',
    ],
    answers: {
      earth: 'No earth contact, or it is torn',
      insulation: 'Damaged, browned, loose or wet',
      none: 'No mains goes into the machine',
      sound: 'Mains goes in; nothing to be seen',
      unsure: UNSURE,
    },
  },
  'mains-test': {
    title: 'Have a qualified person test the mains side',
    how: [
      'Hand over the machine unplugged, with the case report.',
      'Ask for protective earth, insulation, and relays or switches of mains heaters to be tested, by the rules where you live.',
      'Write down what was found.',
    ],
    cautions: ['Not by yourself: mains kills. It stays unplugged until it was tested.'],
    answers: {
      earth: 'The protective earth is missing',
      insulation: 'Insulation is damaged',
      relay: 'A relay or switch stays closed',
      sound: 'All tested and sound',
      unsure: 'Not tested',
    },
  },
};
