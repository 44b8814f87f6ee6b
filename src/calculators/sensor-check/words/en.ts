import type { Amount, Print } from '../../../engine/order';
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
    T_h: {
      label: 'Temperature shown after a minute in a warm hand',
      hint: 'Machine still cold, heater off: hold the sensor, or the block it sits in, with the whole hand. A screen that stands still tells nothing.',
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
    R_0: {
      label: 'Platinum sensor: resistance at 0 °C',
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
      label: 'Lowest that the screen shows of a sound sensor',
      hint: 'Colder rooms lower it by themselves.',
    },
    T_hi: {
      label: 'Highest that it shows of a sound one, cold',
    },
    dT_f: {
      label: 'A screen that follows rises by at least',
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
      label: 'Kind of sensor',
      hint: 'First of all: a platinum sensor has more ohms the hotter it is, the others fewer.',
      options: {
        beta: 'NTC, by its B value',
        three: 'NTC, by three lines of its table',
        pt100: 'Pt100: platinum, 100 Ω at 0 °C',
        pt1000: 'Pt1000: platinum, 1000 Ω at 0 °C',
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
    dT_h: 'Rise in a warm hand',
    R_top: 'Broken above, in this room',
    R_low: 'Shorted below, in this room',
    T_top: 'Hot end, in this room',
    T_low: 'Cold end, in this room',
    R_s_shown: 'Resistance that the screen stands for',
    R_e: 'Resistance due at room temperature',
    R_w: 'Resistance due at working temperature',
    E_2: 'Way back: slope from first to second',
    E_3: 'Way back: its bend',
    alpha_w: 'Change of resistance per kelvin, working',
    dT_B: 'Working: reading off by, if B is off',
    q_ohms: 'Resistance measured over that due',
    q_shown: 'Resistance seen over that due',
    dT_R: 'Working: shown less true, if every resistance is wrong by that ratio',
    P: 'Heater’s power, fully on',
    I: 'Current, fully on',
    R_x: 'Resistance of a heater so marked',
    k_P: 'Power over the marked power',
  },
  limits: {
    dT_s: 'Sensor against the room thermometer',
    R_m: 'Neither shorted nor broken',
    T_r: 'Neither broken nor shorted',
    dT_h: 'The screen follows a warm hand',
    k_P: 'Power against the marking',
  },
  cautions: {
    switchOffUnplug:
      'Switch off, unplug, let it go cold before you touch a wire or measure ohms. On mains, a meter set to ohms can kill you.',
    mainsHeaters: 'Mains heaters and their covers are for qualified people, to the local code.',
    blockBurns: 'The block burns at once and stays hot for a quarter of an hour.',
    heaterWrongVoltage:
      'A heater of the wrong voltage starts fires. No program opens a switch that has failed closed. A separate thermal cut-off in the heater’s supply does, or your hand at the supply’s switch.',
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
    otherLaws: 'Thermocouples follow another law: their ohms tell nothing but a break.',
    betweenLines: 'The equation of Steinhart and Hart is good between its three lines; beyond them it is a guess.',
    risesWhenHot: 'The heater’s resistance rises by a few per cent when hot.',
  },
  examples: {
    atRatedPoint: '100 kΩ, B 3950, in a room of 25 °C',
    wrongSetting: 'A 100 kΩ sensor in a machine set for another: 36 °C shown in a room of 20 °C',
    brokenWire: 'Sensor with a broken wire',
    threeLines: 'By three lines of a table: 10 kΩ at 25 °C',
    coldGarage: 'A garage in frost: −12 °C on the screen and on the thermometer',
    platinum: 'A Pt100 in a room of 20 °C',
    twelveOnTwentyFour: 'A 12 V 40 W heater on 24 V',
  },
  sources: {
    ratedPoint: 'rated point; 100 kΩ × e^(3950 (1/473.15 − 1/298.15)); 1 % of B',
    coldRoom: '100 kΩ × e^(3950 (1/293.15 − 1/298.15))',
    wrongSetting: '36 − 20',
    coldGarage: '−12 − (−12)',
    platinum: '100 · (1 + 3.9083·10⁻³ · 20 − 5.775·10⁻⁷ · 400) = 107.79',
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
    classB: 'class B: 0.3 K at 0 °C',
    callendar:
      'equation of Callendar and Van Dusen, R = R₀ (1 + A t + B t² + C (t − 100 °C) t³), the last term below 0 °C only; turned round without it: 0.001 K at −20 °C',
    boundsMove:
      'bounds of common practice, moved where a sound sensor in this room would lie near them: agreement beats a fixed bound',
    ratioCarried:
      'held at what is shown, the block has the temperature at which a sensor wrong by that ratio has the resistance shown',
    ratedAt25: 'rated at 25 °C',
  },
  orders,
  steps,
  contradictions: {
    tableRises: (a: { ohms: readonly Amount[] }, p: Print) =>
      `An NTC’s resistance falls as it gets hotter, and these lines do not (${a.ohms.map((one) => p(one)).join(', ')}): which is right?`,
    boundsCross: (a: { low: Amount; high: Amount }, p: Print) =>
      `The lower bound of ${p(a.low)} is not below the upper one of ${p(a.high)}: which is right?`,
  },
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
