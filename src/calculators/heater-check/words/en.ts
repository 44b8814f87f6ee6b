import { orders, problems, steps } from './en/orders';

/** Words of the check “Heater and its guard”. */
const en = {
  inputs: {
    R_h: {
      hint: 'Unplugged and cold, at the heater’s own wires, off the board. A heater of 24 V 40 W has 14.4 Ω, one of 12 V 40 W has 3.6 Ω.',
    },
    V: {
      hint: 'As marked on the supply. Measuring on mains is for qualified people.',
    },
    D_h: {
      label: 'Share of full power that holds it',
      hint: 'Hold it at its working temperature for five minutes. Read the power in per cent on the screen. Or time the heater’s lamp: time on, over a whole cycle.',
    },
    T_w: {
      hint: 'PLA is printed near 215 °C.',
    },
    T_a: {
      label: 'Room temperature',
      hint: 'Under the cover, if there is one.',
    },
    m_b: {
      label: 'Mass of the block',
      hint: 'Or length × width × height in cm × 2.7 g for aluminium, 8.9 for copper, 8.5 for brass, less the holes.',
    },
    m_x: {
      label: 'Mass of heater, nozzle and screws',
      hint: 'All that gets hot with the block.',
    },
    a_1: {
      label: 'Block: length',
    },
    a_2: {
      label: 'Block: width',
    },
    a_3: {
      label: 'Block: height',
    },
    t_g: {
      label: 'Heater guard: reaction time',
      hint: 'As set: how long something may be wrong before the guard cuts the heater. Look it up in the machine’s settings.',
    },
    dT_l: {
      label: 'Heater guard: lag allowed',
      hint: 'As set: how far the reading may stay below its set point.',
    },
    dT_g: {
      label: 'Heater guard: rise wanted in that time',
      hint: 'As set: how much the reading must rise while it heats. One setting for lag and rise? Enter it in both.',
    },
    T_li: {
      label: 'Liner stands',
      hint: 'Its upper end is soft long before: work below 240 °C. It gels at 327 °C and gives off harmful gas from about 400 °C.',
    },
    T_se: {
      label: 'Sensor stands',
      hint: 'As rated: glass bead about 300 °C, platinum 400 to 600 °C.',
    },
    T_f: {
      label: 'Cut-off opens at',
      hint: 'As rated, and where it sits: not where the block is hottest.',
    },
    T_bl: {
      label: 'Block melts at',
    },
    T_no: {
      label: 'Nozzle melts at',
    },
    dT_f: {
      label: 'Cut-off above the working temperature',
    },
    c_b: {
      label: 'Specific heat of the block',
    },
    c_x: {
      label: 'Specific heat of the rest',
    },
    epsilon: {
      label: 'Emissivity of its surface',
      hint: 'Bright metal 0.1, burnt on 0.3, a cover of rubber or cloth 0.9.',
    },
    h_c: {
      label: 'Loss to the air per area',
      hint: 'In still air. Under a fan 30 to 60; under a cover 5 to 8.',
    },
    G_x: {
      label: 'Loss along the heat break and into the filament',
    },
    t_s: {
      label: 'Time constant of the loose sensor in air',
    },
    t_max: {
      label: 'The guard acts within',
    },
    f_g: {
      label: 'Margin of a healthy rise over the rise wanted',
    },
  },
  choices: {
    loss: {
      label: 'How the loss of heat is known',
      hint: 'A measured loss is worth more than one worked out. Fan and cover as in use.',
      options: {
        surface: 'worked out from its surface',
        held: 'from the power that holds it hot',
        heating: 'from a heating curve, fully on',
        cooling: 'from a cooling curve, switched off',
      },
    },
    block: {
      label: 'Block of',
      options: {
        aluminium: 'aluminium alloy',
        copper: 'copper',
        brass: 'brass',
        steel: 'stainless steel',
      },
    },
    nozzle: {
      label: 'Nozzle of',
      options: {
        brass: 'brass',
        copper: 'copper',
        steel: 'steel',
      },
    },
    liner: {
      label: 'Liner of PTFE in the hot part',
      options: {
        ptfe: 'down to the nozzle',
        none: 'none: metal all the way',
      },
    },
    cutoff: {
      label: 'Separate thermal cut-off on the block',
      hint: 'A thermal fuse or a thermal switch that cuts the supply by itself, without any program. A fuse for current is none: a heater that is stuck on draws no more than usual.',
      options: {
        none: 'none',
        fitted: 'fitted, in the heater’s own supply',
      },
    },
  },
  results: {
    T_m: 'Curve: temperature that it tells most about',
    r_m: 'Curve: rate of change there',
    k: 'Curve: loss rate, one over the time constant',
    P: 'Heater’s power, fully on',
    A: 'Surface of the block',
    g_w: 'Radiation per kelvin, working',
    C_mass: 'Heat capacity',
    C_heating: 'Heat capacity, from the heating curve',
    g_m_heating: 'Radiation: slope in the middle of the curve',
    g_m_cooling: 'Radiation per kelvin in the middle of the curve',
    G_c: 'Loss per kelvin without radiation',
    G_w: 'Loss per kelvin, working',
    tau: 'Time constant',
    T_l: 'Where the working curve heads for',
    t_w: 'From cold to the working temperature, fully on',
    t_d: 'Sensor fallen out: until it reads too low',
    t_x: 'Sensor fallen out: until the guard acts',
    T_x: 'Sensor fallen out: block when the guard acts',
    dT_h: 'Healthy: rise in the reaction time, at its slowest',
    dT_m: 'Rise wanted, with the margin',
    T_c: 'Cold test, sensor out: block at the pass mark',
    T_r: 'Stuck on: scale of the balance',
    beta: 'Stuck on: other losses over radiation',
    w: 'Stuck on: helper of the root of x⁴ + βx = 1',
    u: 'Stuck on: its second helper',
    T_e: 'Heater stuck on: temperature in the end',
    T_u: 'Hottest that a stuck heater gets',
    T_p: 'What the weakest part stands',
    t_p: 'Stuck on: from working to what the weakest part stands',
    T_fw: 'Least opening temperature of the cut-off',
  },
  equations: {
    T_m: 'the temperature at which the errors of r_m and k do not correlate',
    r_m: 'least squares of T(t), where dT/dt = r_m − k (T − T_m)',
    k: 'least squares of T(t), where dT/dt = r_m − k (T − T_m)',
  },
  tables: {
    curve: {
      label: 'Real curve',
      line: 'Line',
      hint: 'Heating: fully on from cold, from 50 °C. Cooling: from the working temperature, switched off. Tap Now as the display changes, then type what it shows; or write the temperatures first and tap as each comes up.',
      columns: {
        time: { head: 'Time', cell: (line: number) => `Reading ${line}: time` },
        temperature: { head: 'Shown', cell: (line: number) => `Reading ${line}: temperature` },
      },
      presets: { upwards: 'Every 10 °C upwards' },
    },
  },
  limits: {
    t_x: 'Fallen sensor: the guard is quick enough',
    T_x: 'Fallen sensor: block when the guard acts',
    dT_h: 'Healthy heater: no false alarm',
    T_u: 'Stuck on: the liner',
    T_u_sensor: 'Stuck on: the sensor',
    T_u_block: 'Stuck on: the block',
    T_u_nozzle: 'Stuck on: the nozzle',
    T_f: 'Cut-off above the working heat',
  },
  cautions: {
    neverAlone:
      'Fire and burns: never leave the machine alone during these tests. A hand at the supply’s switch, a smoke alarm above, nothing that burns beside it. A fire blanket or extinguisher within reach.',
    mainsKills:
      'Mains kills. Covers of the supply and of mains heaters stay shut: what is behind them is for qualified people. Switch off and unplug before you touch any wire or sensor, and measure resistance only then.',
    switchFails:
      'No program opens a switch that has failed closed. A separate thermal cut-off in the heater’s own supply does, or your hand at the supply’s switch.',
    blockBurns:
      'The block burns at once and stays hot for a quarter of an hour. Vent the room: hot PTFE and plastics give off harmful gas.',
    keepGuardOn: 'Never switch a heater guard off because it gives alarms: the heater can then start a fire.',
    guardIsSoftware:
      'The heater guard is software, no protective device: it cannot open a switch that has failed closed.',
  },
  proof:
    'Test 1: the real heating time, by the stopwatch, within a quarter of the time worked out. Test 2, only where the check offers it: with the sensor out of the cold block, the guard cuts the heater by its pass mark. Repeat both after every change of heater, sensor, board or settings. A cut-off cannot be tested so: check that it is of the right rating, in series with the heater, crimped or screwed and never soldered, and firmly clamped.',
  beware: {
    oneLump:
      'The block is taken as one lump of one temperature: it is, for small metal blocks (Biot number far below 0.1). Heater and sensor lag a few seconds behind: read from 50 °C on.',
    straightLoss:
      'Times take the loss as proportional to the excess over the room, right at the working temperature; so a stuck heater is a little slower than worked out above it and faster below. The end temperature and the drawing count radiation in full.',
    airCarriesMore:
      'Air carries more heat off a hotter block, and the filament and the fan take their share: the true end temperature of a stuck heater lies rather below the one worked out. It is the safe side, no promise.',
    sensorHalfOut:
      'A sensor half out reads something in between, and the guard may never see it. A sensor fixed by a screw does not fall out.',
    wiresGoFirst:
      'Insulation of wires, solder, crimps and plastic parts near by give way long before metal melts, and are not counted here.',
    notForBeds:
      'A heated bed obeys the same law but is no small lump, and often runs on mains: this check does not cover it.',
    cutOffOpens: 'A cut-off opens at the temperature of its own body, later than the block gets there.',
  },
  examples: {
    heldAt54: '24 V 40 W held at 200 °C by 54 % of its power: 0.12 W/K',
    twelveOnTwentyFour: 'A 12 V 40 W heater on 24 V: four times the power',
    metalAllTheWay: 'Metal all the way, a weak heater and a cut-off at 270 °C',
    fromHeating: 'Loss and heat capacity from a heating curve',
    fromCooling: 'Loss from a cooling curve',
  },
  sources: {
    lossFromDuty: 'ch. 5: 24² / 14.4; 10.37 g × 0.897; 0.54 × 40 / 180; 9.30 / 0.12; −77.5 ln(1 − 180 × 0.12 / 40)',
    twelveOnTwentyFour: '24² / 3.6 = 160 W; 0.135 × 160 / 180; 20 + 160 / 0.12',
    metalAllTheWay: '24² / 19.2; 0.6 × 30 / 180; 20 + 30 / 0.1; 8 ln(180 / 176); + 25',
    fromHeating:
      'readings made of T = 420 − 400 e^(−t / 100 s): at the start P / C = 4 K/s, so C = 40 W / (4 K/s); G = C / 100 s',
    fromCooling: 'readings made of T = 20 + 180 e^(−t / 100 s): G = C / 100 s; 20 + 40 / 0.093',
    lumpedCapacitance: 'ch. 5, lumped capacitance',
    radiation: 'ch. 1: q = ε σ A (T⁴ − T_a⁴)',
    heatStoredHeaters: 'heat stored = heater’s power less losses',
    quartic: '3.8.3, x⁴ + βx = 1',
    ohmsLaw: 'Ohm’s law',
    sixFaces: 'six faces',
    massSpecificHeat: 'mass × specific heat',
    sumLosses: 'sum of the losses',
    timeRunsThere: 'its reaction time runs from there',
    nothingStops: 'nothing stops it',
    cutOffOpens: 'the cut-off opens then, if the heater gets there at all',
    lowerOfTwo: 'the lower of the two',
    meltingPointSolidus: 'melting point, solidus of an alloy; src/reference/materials.ts',
    brassToSteel: 'between brass, 380, and steel, 470 J/(kg·K)',
    tablesEmissivity: 'tables of emissivity',
    churchillChu: 'eq. 9.27 (Churchill and Chu): 13 W/(m²·K) for 20 mm at 210 °C',
    stainlessSteelTube: 'stainless steel tube, 15 W/(m·K), 6 mm outside, 4.2 mm inside, 5 mm long: 0.043 W/K',
    leastSquaresExact: 'least squares of the exact solution, weighted by the readings',
  },
  orders,
  steps,
  problems,
  figure: {
    label: 'Temperature against time: healthy heating, sensor fallen out, heater stuck on, and what the parts stand',
    curvesCome: 'the curves come with the heater’s resistance',
    parts: { T_li: 'liner', T_se: 'sensor', T_f: 'cut-off', T_bl: 'block', T_no: 'nozzle' },
    part: (name: string, celsius: string) => `${name} ${celsius}`,
    stuck: (ends: string) => `stuck on: ends at ${ends}`,
    cuts: (after: string, at: string) => `guard cuts: ${after} after the sensor fell, at ${at}`,
    reads: 'what the fallen sensor reads',
    readsWithDots: 'what the fallen sensor reads; dots: your readings',
    higherUp: (parts: readonly string[]) => `higher up: ${parts.join(', ')} °C`,
  },
};
export default en;
