import { orders, steps } from './en/orders';

/** Words of the check “Sensor and heater”. */
const en = {
  inputs: {
    R_m: {
      label: 'Sensor’s resistance, measured',
      hint: 'Cold, unplugged, at the sensor’s own connector. Do not touch the pins: fingers conduct. Where the meter shows OL or ∞ type 100000 kΩ.',
    },
    T_r: {
      label: 'Temperature shown',
      hint: 'Cold machine, heater off.',
    },
    T_a: {
      label: 'Temperature by the room thermometer',
      hint: 'Beside the sensor, both left alone for half an hour; the machine off for three hours, no fan, no sun.',
    },
    R_n: {
      label: 'Sensor: resistance at 25 °C',
    },
    B: {
      label: 'Sensor: B value',
      hint: 'As marked. B 25/50 and B 25/85 of the same sensor differ by a per cent.',
    },
    T_1: {
      label: 'Table, first line: temperature',
    },
    R_1: {
      label: 'Table, first line: resistance',
      hint: 'From the maker’s table of this very sensor.',
    },
    T_2: {
      label: 'Table, second line: temperature',
    },
    R_2: {
      label: 'Table, second line: resistance',
      hint: 'From the maker’s table of this very sensor.',
    },
    T_3: {
      label: 'Table, third line: temperature',
    },
    R_3: {
      label: 'Table, third line: resistance',
      hint: 'From the maker’s table of this very sensor.',
    },
    dT_max: {
      label: 'May differ from the thermometer by',
    },
    delta_B: {
      label: 'B value may be off by',
    },
    T_n: {
      label: 'Reference temperature of the B value',
    },
    R_lo: {
      label: 'Shorted below',
    },
    R_hi: {
      label: 'Broken above',
    },
    T_lo: {
      label: 'Broken where it shows less than',
    },
    T_hi: {
      label: 'Shorted where it shows more than, cold',
    },
    R_h: {
      hint: 'Unplugged and cold, at the heater’s own wires, taken off the board; less what the meter shows with its tips together. OL or ∞: type 1000000 Ω.',
    },
    V: {
      hint: 'As marked on the supply. Measuring on mains is for qualified people.',
    },
    V_r: {
      label: 'Heater marked: voltage',
    },
    P_r: {
      label: 'Heater marked: power',
    },
    k_lo: {
      label: 'Least power, over the marked',
    },
    k_hi: {
      label: 'Most power, over the marked',
    },
  },
  choices: {
    what: {
      label: 'What to check',
      options: {
        sensor: 'temperature sensor',
        heater: 'heater',
      },
    },
    by: {
      label: 'Sensor read',
      hint: 'The meter tests the sensor; the screen tests sensor, wires, board and settings at once.',
      options: {
        ohms: 'with an ohmmeter, unplugged',
        shown: 'on the machine’s screen',
      },
    },
    law: {
      label: 'Sensor known by',
      options: {
        beta: 'its B value',
        three: 'three lines of its table',
      },
    },
  },
  results: {
    L_1: 'Logarithm of the first resistance',
    L_2: 'Logarithm of the second resistance',
    L_3: 'Logarithm of the third resistance',
    D_2: 'Slope from first to second',
    D_3: 'Slope from first to third',
    c_S: 'Third coefficient',
    b_S: 'Second coefficient',
    a_S: 'First coefficient',
    y_s: 'One over the temperature that it means',
    T_s_ohms: 'Temperature that the resistance means',
    T_s_shown: 'Temperature that it tells',
    dT_s: 'Sensor less room thermometer',
    R_e: 'Resistance due at room temperature',
    R_w: 'Resistance due at working temperature',
    E_2: 'Way back: slope from first to second',
    E_3: 'Way back: its bend',
    alpha_w: 'Change of resistance per kelvin, working',
    dT_B: 'Working: reading off by, if B is off',
    q_ohms: 'Resistance measured over that due',
    q_shown: 'Resistance seen over that due',
    dT_R: 'Working: reading off by about, if it is all in the resistance',
    P: 'Heater’s power, fully on',
    I: 'Current, fully on',
    R_x: 'Resistance of a heater so marked',
    k_P: 'Power over the marked power',
  },
  limits: {
    dT_s: 'Sensor against the room thermometer',
    R_m: 'Neither shorted nor broken',
    T_r: 'Neither broken nor shorted',
    k_P: 'Power against the marking',
  },
  cautions: {
    switchOffUnplug:
      'Switch off, unplug and let it go cold before a wire is touched or resistance is measured: a meter set to ohms on a live wire is destroyed, and you with it on mains.',
    mainsHeaters: 'Mains heaters and their covers are for qualified people, to the local code.',
    blockBurns: 'The block burns at once and stays hot for a quarter of an hour.',
    heaterWrongVoltage:
      'A heater of the wrong voltage starts fires. A switch that has failed closed is beyond any program: what cuts it off is a separate thermal cut-off in the heater’s supply, or the supply switched off by hand.',
    neverRunHeater: 'Never run the heater with the sensor out of its hole, but for the cold test of the heater check.',
  },
  proof:
    'Plug in and compare again, cold: screen and room thermometer within the limit. Then heat to 50 °C with a probe thermometer in the nozzle’s bore and compare once more; steady, without a jump when the cable is moved.',
  beware: {
    roomTestOnly:
      'A test at room temperature shows a wrong sensor, a broken wire or a wrong setting of resistance. It does not show a wrong B value or table: that grows with temperature.',
    bValueFit:
      'A B value is a fit between two temperatures (25 and 50, or 25 and 85 °C). Against the maker’s table expect several kelvin at 200 °C: take three lines of the table instead.',
    looseInHole: 'A sensor loose in its hole is right in itself and reads too low hot.',
    otherLaws: 'Platinum sensors and thermocouples follow other laws: compare only what the screen shows.',
    betweenLines: 'The equation of Steinhart and Hart is good between its three lines; beyond them it is a guess.',
    risesWhenHot: 'The heater’s resistance rises by a few per cent when hot.',
  },
  examples: {
    atRatedPoint: '100 kΩ, B 3950, in a room of 25 °C',
    wrongSetting: 'A 100 kΩ sensor in a machine set for another: 36 °C shown in a room of 20 °C',
    brokenWire: 'Sensor with a broken wire',
    threeLines: 'By three lines of a table: 10 kΩ at 25 °C',
    twelveOnTwentyFour: 'A 12 V 40 W heater on 24 V',
  },
  sources: {
    ratedPoint: 'rated point; 100 kΩ × e^(3950 (1/473.15 − 1/298.15)); 1 % of B',
    coldRoom: '100 kΩ × e^(3950 (1/293.15 − 1/298.15))',
    wrongSetting: '36 − 20',
    threeLines: 'the equation passes through its three lines',
    twelveOnTwentyFour: 'Ohm’s law: 24² / 3.6; 24 / 3.6; 12² / 40',
    lawOfB: 'R = R25 exp(B (1/T − 1/T25))',
    steinhartHart: '1/T = a + b ln R + c (ln R)³',
    eliminated: 'the equation of Steinhart and Hart at the three lines, eliminated in turn',
    newton:
      'Newton’s interpolation of ln R over 1/T through the three lines: within 0.1 K of Steinhart and Hart between them',
    ohmsLaw: 'Ohm’s law',
    oneOver: 'one over it; a logarithm, so that a short has no temperature',
    shown: 'as shown',
    difference: 'difference',
    slopeOfB: 'α = −B/T²',
    oneOverOther: 'one over the other',
    usualClasses: 'usual classes',
    ratedAt25: 'rated at 25 °C',
  },
  orders,
  steps,
  figure: {
    sensor: 'The sensor’s resistance over temperature, with the reading at room temperature',
    heater: 'The heater’s power against its marking',
    due: (has: string, at: string) => `${has} at ${at}`,
    markedHere: 'the reading is marked here',
    tells: (tells: string, room: string) => `tells ${tells}, room ${room}`,
    barComes: 'the bar comes with the heater’s resistance',
    marked: (power: string, voltage: string, has: string) => `marked ${power} at ${voltage}: ${has}`,
    measured: (has: string, voltage: string, power: string, current: string) =>
      `${has} on ${voltage}: ${power}, ${current}`,
    dashed: (least: string, most: string) => `dashed: ${least} to ${most} of the marking`,
    square: 'twice the voltage: four times the power',
  },
};
export default en;
