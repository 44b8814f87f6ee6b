import { cause, mend, up } from './make';

const UNPLUGGED = 'Unplugged, and left until it is cold to the hand.';
const FIRE = 'A heater that does not stop can start a fire: stay beside the first run.';

export const heatCauses = [
  cause('sensor-fallen', 'Temperature sensor', 'The sensor has come out of the block', {
    danger: true,
    raisedBy: [up('crashed', 2), up('hot-end-changed', 2), up('nozzle-changed', 1.8)],
    mend: mend(
      'Seat the sensor and clamp its wires',
      [
        UNPLUGGED,
        'Push the sensor to the bottom of its hole.',
        'Clamp its wires so that no pull reaches the bead; do not crush the bead.',
        'Run the heating test of the check, hand on the switch.',
      ],
      { minutes: 15, cost: 1, works: 0.93, risk: FIRE, calculator: 'heater-check' },
    ),
    proof: 'The heating curve passes the check’s test, and the sensor stays when its wire is tugged.',
  }),
  cause('sensor-loose', 'Temperature sensor', 'The sensor sits loosely in the block', {
    danger: true,
    raisedBy: [up('hot-end-changed', 2), up('nozzle-changed', 1.8), up('many-hours', 1.3)],
    mend: mend(
      'Clamp the sensor',
      [
        UNPLUGGED,
        'Seat it to the bottom of its hole, wires clamped free of pull.',
        'Run the heating test of the check, hand on the switch.',
      ],
      { minutes: 12, cost: 1, works: 0.92, risk: FIRE, calculator: 'heater-check' },
    ),
    proof: 'The temperature holds within 1 °C while the wire is nudged with a wooden stick.',
  }),
  cause('sensor-contact', 'Temperature sensor', 'The sensor’s wire or plug makes bad contact', {
    danger: true,
    raisedBy: [up('many-hours', 1.7), up('worked-on', 1.7), up('just-moved', 1.4)],
    mend: mend(
      'Renew the sensor with its wire',
      [
        UNPLUGGED,
        'Change sensor, wire and plug as one.',
        'Leave a free loop where it bends.',
        'Check its resistance at room temperature before switching on.',
      ],
      { minutes: 25, cost: 5, works: 0.92, risk: FIRE, calculator: 'sensor-check' },
    ),
    proof: 'Its resistance at room temperature is right and does not jump when the wire is bent.',
  }),
  cause('sensor-type', 'Settings', 'The wrong type of sensor is set', {
    raisedBy: [up('hot-end-changed', 4, 0.4), up('new-build', 2)],
    mend: mend(
      'Set the type of the sensor that is fitted',
      [
        'Read the type from the sensor’s bag or data sheet.',
        'Set it, and compare three temperatures with a probe thermometer.',
      ],
      {
        minutes: 12,
        works: 0.92,
        risk: 'Until it is set right, the hot end may be far hotter than shown.',
        calculator: 'sensor-check',
      },
    ),
    proof: 'At room temperature and at two others, shown and measured agree.',
  }),
  cause('switch-shorted', 'Heater switch', 'The electronic switch of the heater has failed closed', {
    danger: true,
    raisedBy: [up('many-hours', 1.5), up('warm-cupboard', 1.6), up('worked-on', 1.4)],
    mend: mend(
      'Replace the switch or the board',
      [
        UNPLUGGED,
        'Leave it unplugged: software cannot stop a switch that has failed closed.',
        'Have board or switch changed by someone qualified.',
        'Add a thermal cut-off that breaks the heater’s supply by itself.',
      ],
      { minutes: 60, cost: 35, works: 0.95, risk: `${FIRE} Mains parts are for a qualified person.` },
    ),
    proof: 'With the heater set to zero, no voltage reaches it, and it stays cold for half an hour.',
  }),
  cause('heater-strong', 'Heater', 'The heater is for another voltage or far too strong', {
    danger: true,
    raisedBy: [up('hot-end-changed', 3, 0.4), up('new-build', 1.8)],
    mend: mend(
      'Fit the heater that belongs there',
      [
        UNPLUGGED,
        'Measure its resistance; the check gives its power at the supply’s voltage.',
        'Fit one of the right voltage and power, and clamp its wires.',
      ],
      { minutes: 25, cost: 7, works: 0.95, risk: FIRE, calculator: 'heater-check' },
    ),
    proof: 'The heating curve passes the check’s test.',
  }),
  cause('heater-contact', 'Heater’s plug', 'A plug or clamp of a heater makes bad contact', {
    danger: true,
    raisedBy: [up('many-hours', 1.8), up('worked-on', 1.8), up('hot-end-changed', 1.6)],
    mend: mend(
      'Renew plug and socket together',
      [
        UNPLUGGED,
        'Cut back to bright wire; crimp a ferrule, no solder under a screw.',
        'Plug and socket both new: a browned one ruins its partner.',
        'Feel it after ten minutes’ heating, switched off and unplugged.',
      ],
      { minutes: 25, cost: 4, works: 0.93, risk: `${FIRE} Mains-fed beds are for a qualified person.` },
    ),
    proof: 'After half an hour’s heating the plug is no warmer than its wire.',
  }),
  cause('supply-terminal', 'Supply', 'A screw terminal at the supply is loose', {
    danger: true,
    raisedBy: [up('new-build', 1.8), up('many-hours', 1.5), up('just-moved', 1.4)],
    mend: mend(
      'Have the terminal remade',
      [
        UNPLUGGED,
        'The mains side is for a qualified person, by the local rules.',
        'On the low-voltage side: bright wire, ferrule, screw tightened; tug each wire.',
      ],
      {
        minutes: 30,
        cost: 3,
        works: 0.94,
        risk: 'A supply holds its charge for minutes after unplugging. Mains kills.',
      },
    ),
    proof: 'No terminal is warm after half an hour’s heating, felt unplugged.',
  }),
  cause('loop-untuned', 'Settings', 'The temperature control is badly tuned', {
    raisedBy: [up('hot-end-changed', 2), up('hotter', 1.5), up('new-build', 1.4)],
    mend: mend(
      'Tune the control at the temperature you print at',
      [
        'Part fan as when printing.',
        'Run the board’s own tuning, or halve the gain until it stops swinging.',
        'Watch five minutes.',
      ],
      { minutes: 15, works: 0.9, risk: 'Stay beside it while it heats.' },
    ),
    proof: 'The temperature stays within 1 °C for five minutes at print temperature.',
  }),
  cause('block-blown', 'Hot end', 'The part fan blows on the heater block', {
    raisedBy: [up('hot-end-changed', 2), up('nozzle-changed', 1.6), up('crashed', 1.4)],
    mend: mend(
      'Turn the air off the block',
      [
        UNPLUGGED,
        'Put the block’s insulating sleeve back on.',
        'Bend or refit the duct so that it points below the nozzle.',
      ],
      { minutes: 10, cost: 2, works: 0.92, risk: 'None worth naming, once it is cold.' },
    ),
    proof: 'The temperature does not drop when the part fan comes on.',
  }),
  cause('supply-weak', 'Supply', 'The supply’s voltage sags under load', {
    raisedBy: [up('many-hours', 1.5), up('warm-cupboard', 1.5)],
    mend: mend(
      'Replace the supply',
      [
        UNPLUGGED,
        'Measure the low voltage with all heaters on and off first.',
        'Fit a supply of the right voltage and half as much power again as all heaters; mains side by a qualified person.',
      ],
      { minutes: 35, cost: 30, works: 0.92, risk: 'Mains: for a qualified person, by the local rules.' },
    ),
    proof: 'The voltage holds within 3 % with both heaters on.',
  }),
  cause('plastic-on-block', 'Hot end', 'Plastic burns on the heater block', {
    raisedBy: [up('nozzle-changed', 2), up('hot-end-changed', 1.8), up('hotter', 1.6)],
    mend: mend(
      'Clean the block and stop the leak',
      [
        'Warm the block until the plastic is soft; switch off and unplug.',
        'Scrape with wood or brass, gloves on.',
        'Retighten the nozzle against the tube hot, block held by a spanner.',
      ],
      { minutes: 25, works: 0.9, risk: 'Burns; and a nicked sensor wire is a worse fault than the plastic.' },
    ),
    proof: 'No smoke, no smell and no bead of plastic above the nozzle after an hour.',
  }),
  cause('board-hot', 'Board', 'The board overheats', {
    raisedBy: [up('warm-cupboard', 3), up('many-hours', 1.4), up('stood-long', 1.2)],
    mend: mend(
      'Give the board air',
      [UNPLUGGED, 'Clear the dust; replace a fan that does not start.', 'Open the case to the room.'],
      { minutes: 18, cost: 6, works: 0.88, risk: 'Board and supply stay live until unplugged.' },
    ),
    proof: 'It runs through a long print on a warm day, the fan audible.',
  }),
  cause('plug-loose', 'Plug', 'A plug has worked loose', {
    raisedBy: [up('just-moved', 2), up('worked-on', 1.8), up('new-build', 1.4)],
    mend: mend(
      'Reseat the plugs and hold them',
      [
        UNPLUGGED,
        'One plug at a time: out, look at the pins, in until it latches. Write down which.',
        'A dab of removable glue on plugs without a latch.',
      ],
      { minutes: 10, works: 0.88, risk: 'Two plugs swapped can end a board: one at a time.' },
    ),
    proof: 'It stays there while the loom is nudged with a wooden stick, and for a day’s printing.',
  }),
  cause('cable-broken', 'Cable', 'A wire is broken inside its sheath', {
    raisedBy: [up('many-hours', 2, 0.7), up('crashed', 1.2)],
    mend: mend(
      'Replace the cable',
      [UNPLUGGED, 'Fit a cable made for bending, with plugs crimped on.', 'Lay it in a wide loop, held at both ends.'],
      { minutes: 35, cost: 6, works: 0.92, risk: 'A patched wire breaks beside the patch.' },
    ),
    proof: 'Its resistance does not jump when it is bent along its length.',
  }),
  cause('end-switch-worn', 'End switch', 'The end switch or its sensor is worn or out of place', {
    raisedBy: [up('many-hours', 1.6), up('crashed', 1.8)],
    mend: mend(
      'Set or replace the switch',
      [
        'Work it by hand twenty times and watch what the board reports.',
        'Tighten its mount; change it if one press is missed.',
      ],
      { minutes: 15, cost: 3, works: 0.92, risk: 'The home position moves: set the first layer’s gap again.' },
    ),
    proof: 'Fifty homings end in the same place.',
  }),
  cause('wires-disturb', 'Wiring', 'A sensor’s wire picks up motor or heater current', {
    raisedBy: [up('worked-on', 2), up('hot-end-changed', 1.5), up('new-build', 1.5)],
    mend: mend(
      'Part the wires',
      [
        UNPLUGGED,
        'Lay sensor wires a hand’s width from motor and heater wires, twisted in pairs.',
        'Cross the others only at right angles.',
      ],
      { minutes: 20, cost: 1, works: 0.85, risk: 'Wires left long get caught: tie them.' },
    ),
    proof: 'The reading is as calm with motors and heaters on as with them off.',
  }),
];
