import type { heatCauses as causes } from '../../heat-causes';
import type { CausesWords } from '../../wording';
import { HOT_END_RISK, OPEN_HOT_END, SEAT_NOZZLE } from './hot-end';

/** IEC 60691, from memory: a thermal-link has a rated functioning temperature and, below it, a holding temperature. */
const CUT_OFF =
  'Have a thermal cut-off fitted that breaks the heater’s supply by itself. Choose it by its holding temperature too (IEC 60691): that lies above what its place reaches in use. Crimp it, never solder it: solder’s heat opens it.';
const UNPLUGGED = 'Unplugged, and left until it is cold to the hand.';
const FIRE = 'A heater that does not stop can start a fire: stay beside the first run.';
const MAINS = 'Mains kills. Nobody but a qualified person opens, measures or mends it.';
const QUALIFIED = [
  'Unplugged, and left so, with a note on the plug.',
  'Hand it over to a qualified person, with the case report.',
  'Let them mend, test and sign for it, by the rules where you live.',
] as const;

export const heatCauses: CausesWords<typeof causes> = {
  'sensor-fallen': {
    part: 'Temperature sensor',
    title: 'The sensor has come out of the block',
    mend: {
      headline: 'Seat the sensor and clamp its wires',
      steps: [
        UNPLUGGED,
        'Push the sensor to the bottom of its hole.',
        'Clamp its wires so that no pull reaches the bead; do not crush the bead.',
        'Run the heating test of the check, hand on the switch.',
      ],
      risk: FIRE,
    },
    proof: 'The heating curve passes the check’s test, and the sensor stays when its wire is tugged.',
  },
  'sensor-loose': {
    part: 'Temperature sensor',
    title: 'The sensor sits loosely in the block',
    mend: {
      headline: 'Clamp the sensor',
      steps: [
        UNPLUGGED,
        'Seat it to the bottom of its hole, wires clamped free of pull.',
        'Run the heating test of the check, hand on the switch.',
      ],
      risk: FIRE,
    },
    proof: 'The temperature holds within 1 °C while the wire is nudged with a wooden stick.',
  },
  'sensor-contact': {
    part: 'Temperature sensor',
    title: 'The sensor’s wire or plug makes bad contact',
    mend: {
      headline: 'Renew the sensor with its wire',
      steps: [
        UNPLUGGED,
        'Change sensor, wire and plug as one.',
        'Leave a free loop where it bends.',
        'Check its resistance at room temperature before switching on.',
      ],
      risk: FIRE,
    },
    proof: 'Its resistance at room temperature is right and does not jump when the wire is bent.',
  },
  'sensor-type': {
    part: 'Settings',
    title: 'The wrong type of sensor is set',
    mend: {
      headline: 'Set the type of the sensor that is fitted',
      steps: [
        'Read the type from the sensor’s bag or data sheet.',
        'Set it, and compare three temperatures with a probe thermometer.',
      ],
      risk: 'Until it is set right, the hot end may be far hotter than shown.',
    },
    proof: 'At room temperature and at two others, shown and measured agree.',
  },
  'switch-shorted': {
    part: 'Heater switch',
    title: 'The electronic switch of the heater has failed closed',
    mend: {
      headline: 'Replace the switch or the board',
      steps: [
        UNPLUGGED,
        'Leave it unplugged: software cannot stop a switch that has failed closed.',
        'Have board or switch changed by someone qualified.',
        CUT_OFF,
      ],
      risk: `${FIRE} Mains parts are for a qualified person.`,
    },
    proof: 'With the heater set to zero, no voltage reaches it, and it stays cold for half an hour.',
  },
  'heater-strong': {
    part: 'Heater',
    title: 'The heater is for another voltage or far too strong',
    mend: {
      headline: 'Fit the heater that belongs there',
      steps: [
        UNPLUGGED,
        'Measure its resistance; the check gives its power at the supply’s voltage.',
        'Fit one of the right voltage and power, and clamp its wires.',
      ],
      risk: FIRE,
    },
    proof: 'The heating curve passes the check’s test.',
  },
  'heater-contact': {
    part: 'Heater’s plug',
    title: 'A plug or clamp of a heater makes bad contact',
    mend: {
      headline: 'Renew plug and socket together',
      steps: [
        UNPLUGGED,
        'Cut back to bright wire; crimp a ferrule, no solder under a screw.',
        'Plug and socket both new: a browned one ruins its partner.',
        'Feel it after ten minutes’ heating, switched off and unplugged.',
      ],
      risk: `${FIRE} Mains-fed beds are for a qualified person.`,
    },
    proof: 'After half an hour’s heating the plug is no warmer than its wire.',
  },
  'supply-terminal': {
    part: 'Supply',
    title: 'A screw terminal at the supply is loose',
    mend: {
      headline: 'Have the terminal remade',
      steps: [
        UNPLUGGED,
        'The mains side is for a qualified person, by the local rules.',
        'On the low-voltage side: bright wire, ferrule, screw tightened; tug each wire.',
      ],
      risk: 'A supply holds its charge for minutes after unplugging. Mains kills.',
    },
    proof: 'No terminal is warm after half an hour’s heating, felt unplugged.',
  },
  'loop-untuned': {
    part: 'Settings',
    title: 'The temperature control is badly tuned',
    mend: {
      headline: 'Tune the control at the temperature you print at',
      steps: [
        'Part fan as when printing.',
        'Run the board’s own tuning, or halve the gain until it stops swinging.',
        'Watch five minutes.',
      ],
      risk: 'Stay beside it while it heats.',
    },
    proof: 'The temperature stays within 1 °C for five minutes at print temperature.',
  },
  'block-blown': {
    part: 'Hot end',
    title: 'The part fan blows on the heater block',
    mend: {
      headline: 'Turn the air off the block',
      steps: [
        UNPLUGGED,
        'Put the block’s insulating sleeve back on.',
        'Bend or refit the duct so that it points below the nozzle.',
      ],
      risk: 'None worth naming, once it is cold.',
    },
    proof: 'The temperature does not drop when the part fan comes on.',
  },
  'supply-weak': {
    part: 'Supply',
    title: 'The supply’s voltage sags under load',
    mend: {
      headline: 'Replace the supply',
      steps: [
        UNPLUGGED,
        'Measure the low voltage with all heaters on and off first.',
        'Fit a supply of the right voltage and half as much power again as all heaters; mains side by a qualified person.',
      ],
      risk: 'Mains: for a qualified person, by the local rules.',
    },
    proof: 'The voltage holds within 3 % with both heaters on.',
  },
  'plastic-on-block': {
    part: 'Hot end',
    title: 'Plastic burns on the heater block',
    mend: {
      headline: 'Clean the block and stop the leak',
      steps: [
        ...OPEN_HOT_END,
        'Scrape the plastic off with wood or brass, clear of the sensor’s wires: a nicked one is a worse fault.',
        ...SEAT_NOZZLE,
        'Plug in, heat, and look for a leak above the nozzle.',
      ],
      risk: HOT_END_RISK,
    },
    proof: 'No smoke, no smell and no bead of plastic above the nozzle after an hour.',
  },
  'board-hot': {
    part: 'Board',
    title: 'The board overheats',
    mend: {
      headline: 'Give the board air',
      steps: [UNPLUGGED, 'Clear the dust; replace a fan that does not start.', 'Open the case to the room.'],
      risk: 'Board and supply stay live until unplugged.',
    },
    proof: 'It runs through a long print on a warm day, the fan audible.',
  },
  'plug-loose': {
    part: 'Plug',
    title: 'A plug has worked loose',
    mend: {
      headline: 'Reseat the plugs and hold them',
      steps: [
        UNPLUGGED,
        'One plug at a time: out, look at the pins, in until it latches. Write down which.',
        'A dab of removable glue on plugs without a latch.',
      ],
      risk: 'Two plugs swapped can end a board: one at a time.',
    },
    proof: 'It stays there while the loom is nudged with a wooden stick, and for a day’s printing.',
  },
  'cable-broken': {
    part: 'Cable',
    title: 'A wire is broken inside its sheath',
    mend: {
      headline: 'Replace the cable',
      steps: [
        UNPLUGGED,
        'Fit a cable made for bending, with plugs crimped on.',
        'Lay it in a wide loop, held at both ends.',
      ],
      risk: 'A patched wire breaks beside the patch.',
    },
    proof: 'Its resistance does not jump when it is bent along its length.',
  },
  'limit-switch-worn': {
    part: 'Limit switch',
    title: 'The limit switch or its sensor is worn or out of place',
    mend: {
      headline: 'Set or replace the switch',
      steps: [
        'Work it by hand twenty times and watch what the board reports.',
        'Tighten its mount; change it if one press is missed.',
      ],
      risk: 'The home position moves: set the first layer’s gap again.',
    },
    proof: 'Fifty homings end in the same place.',
  },
  'wires-disturb': {
    part: 'Wiring',
    title: 'A sensor’s wire picks up motor or heater current',
    mend: {
      headline: 'Part the wires',
      steps: [
        UNPLUGGED,
        'Lay sensor wires a hand’s width from motor and heater wires, twisted in pairs.',
        'Cross the others only at right angles.',
      ],
      risk: 'Wires left long get caught: tie them.',
    },
    proof: 'The reading is as calm with motors and heaters on as with them off.',
  },
  'earth-missing': {
    part: 'Mains side',
    title: 'The protective earth is missing or broken',
    mend: {
      headline: 'Have the protective earth restored',
      steps: QUALIFIED,
      risk: MAINS,
    },
    proof: 'The qualified person’s test is written down: earth from plug to every metal part that can be touched.',
  },
  'insulation-damaged': {
    part: 'Mains side',
    title: 'Insulation on the mains side is damaged',
    mend: {
      headline: 'Have the damaged part replaced',
      steps: QUALIFIED,
      risk: MAINS,
    },
    proof: 'The qualified person’s test of the insulation is written down, and nobody feels a tingle.',
  },
  'relay-closed': {
    part: 'Mains side',
    title: 'A relay or switch of a mains heater has failed closed',
    mend: {
      headline: 'Have the relay replaced',
      steps: QUALIFIED,
      risk: `${MAINS} ${FIRE}`,
    },
    proof: 'The qualified person’s test is written down; with the heater set to zero it stays cold for half an hour.',
  },
};
