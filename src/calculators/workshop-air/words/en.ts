import { orders, steps } from './en/orders';

/** Words of the check “Workshop air”. */
const en = {
  inputs: {
    T: {
      hint: 'Where the hygrometer stands, out of the sun and away from the machine.',
    },
    U: {
      hint: 'Give the hygrometer half an hour. In a closed jar over a wet heap of kitchen salt a good one reads 75 %.',
    },
    T_s: {
      label: 'Surface of the cold thing',
      hint: 'The bed, part, spool or board as it comes in. Not known yet: take the temperature where it stood.',
    },
    m_d: {
      label: 'Wanted above the dew point',
      hint: 'For corners colder than the place measured.',
    },
    T_b: {
      label: 'Temperature in the box',
    },
    T_g: {
      label: 'Filament and spool go soft at',
      hint: 'The lower of the two; a spool of polystyrene at about 90 °C.',
    },
    m_T: {
      label: 'Stay below that by',
    },
    U_lim: {
      label: 'Most humidity wanted in the box',
    },
    p: {
      label: 'Air pressure',
      hint: 'As it is here, not reduced to sea level: about 12 hPa less for each 100 m of height.',
    },
    T_1: {
      label: 'Temperature when Z zero was set',
      hint: 'Of the frame, not of the air: the sensor held to an upright. With a switch: when bed and switch were last set to each other.',
    },
    T_2: {
      label: 'Temperature when printing',
      hint: 'Same place, same sensor, at the other end of the day or with the machine warmed through.',
    },
    l_s: {
      label: 'Screw, from where it is held to its nut',
      hint: 'With the nozzle at the bed, as in the first layer.',
    },
    l_f: {
      label: 'Upright that counts',
      hint: 'From where the screws are held, or from the switch, to the mount of what stands still in Z.',
    },
    q_1: {
      label: 'Allowed share of the first layer',
    },
    alpha_f: {
      label: 'Expansion of the frame',
    },
    alpha_s: {
      label: 'Expansion of the screw',
    },
    alpha_r: {
      label: 'Expansion of the rest',
    },
  },
  choices: {
    ask: {
      label: 'The question',
      options: {
        cold: 'will something cold get wet?',
        box: 'how dry is this air in a warm box?',
        swing: 'how far does the first-layer gap move over the day?',
      },
    },
    plastic: {
      label: 'In the box',
      options: {
        pla: 'PLA',
        petg: 'PETG',
        abs: 'ABS',
        pc: 'polycarbonate',
        tpu: 'TPU',
        pa: 'polyamide',
        other: 'another: enter where it goes soft',
      },
    },
    zero: {
      label: 'Z zero',
      hint: 'Felt on the bed itself before each print, it takes all of this away: then nothing need be worked out.',
      options: {
        kept: 'set once, when trammed, and kept since',
        switch: 'found on a switch on the frame before each print',
      },
    },
    lift: {
      label: 'The screws carry',
      hint: 'Held endways: by a thrust bearing, or by the motor it is coupled to. The other end floats.',
      options: {
        'nozzle-foot': 'the nozzle; held endways at their lower end',
        'nozzle-head': 'the nozzle; held endways at their upper end',
        'bed-foot': 'the bed; held endways at their lower end',
        'bed-head': 'the bed; held endways at their upper end',
      },
    },
    frame: {
      label: 'Material of the frame’s uprights',
      options: {
        aluminium: 'aluminium extrusion, 6063-T5',
        steel: 'mild steel, S235',
        other: 'another: enter its expansion',
      },
    },
    screw: {
      label: 'Material of the screw',
      options: { steel: 'steel', stainless: 'stainless steel' },
    },
    rest: {
      label: 'The rest of the way, mostly',
      hint: 'What fills the height that screw and frame leave open: carriage and hot-end mount, or the bed’s posts.',
      options: {
        aluminium: 'aluminium',
        steel: 'steel',
        petg: 'printed brackets: PETG',
        abs: 'printed brackets: ABS',
        pla: 'printed brackets: PLA',
      },
    },
  },
  results: {
    e_w: 'Vapour pressure of saturated air',
    e_s: 'Vapour pressure saturated at the surface',
    e_b: 'Vapour pressure saturated in the box',
    e: 'Vapour pressure',
    gamma: 'Logarithm of the vapour pressure',
    T_d: 'Dew point',
    T_i: 'Frost point: counts below 0 °C',
    T_k: 'Where water settles, as dew or frost',
    T_max: 'Hottest that the box may be',
    rho_v: 'Absolute humidity',
    w: 'Water to dry air',
    dT_d: 'Surface above where water settles',
    U_s: 'Relative humidity at the surface',
    T_o_surface: 'Surface temperature to wait for',
    T_o_box: 'Box temperature that is enough',
    U_b: 'Relative humidity in the box',
    gamma_b: 'Logarithm of the saturation pressure needed',
    dT: 'Swing',
    dl_s: 'Growth of the screw',
    dl_f: 'Growth of the frame',
    dl_r: 'Growth of the rest',
    dg: 'Growth of the gap under the nozzle',
    dg_lim: 'Allowed change of the gap',
  },
  limits: {
    dT_d: 'Surface above where water settles',
    T_b: 'Box below where its filament goes soft',
    U_b: 'Humidity in the box',
    dg: 'Change of the first-layer gap',
  },
  cautions: {
    gotWet:
      'Mains and water kill: what got wet stays unplugged until it is dry inside too. In doubt, ask someone qualified.',
    dryBoxes:
      'Heaters and dry boxes can start a fire: nothing that burns against them, cables out of the heat, never left alone.',
    freshAir: 'A heater that burns fuel can suffocate in a shut room. Keep the air fresh where plastics melt.',
  },
  proof:
    'Breathe on a small mirror as cold as the part: if the mist goes within seconds and none comes back, the surface is above the dew point. For the gap: a feeler under the nozzle, cold and warm, shows the change worked out here.',
  beware: {
    hygrometers:
      'Most hygrometers of the trade are right to 5 %, old ones less; in the box it counts for more than the formula.',
    againstPrintedTables:
      'Against printed tables Magnus’s formula is 0.3 % low in the middle of its range, 0.2 % high at 60 °C and 2.5 % at 100 °C; that vapour is no ideal gas adds up to 0.5 %. Both are left out, being small against any hygrometer.',
    belowFreezing:
      'Below 0 °C hygrometers refer to water, not ice; so does their reading here. Frost settles by the pressure over ice, which is less, so sooner than dew would.',
    swingTakenSame:
      'The swing is taken to be the same in frame, screw and all: in the first hour after switching on it is not, and the gap moves more, or the other way.',
    unevenWarmthBends:
      'Uneven warmth bends a frame; this counts growth in length only. A sheet of glass or a bed held at four corners bows more than it grows.',
    printedBrackets:
      'Printed brackets: expansion differs between grades and directions by a third or more, and damp polyamide swells as well.',
  },
  examples: {
    coldBed: 'A cold bed of 8 °C comes into 20 °C and 50 %: the dew point is 9.3 °C',
    frost: 'Frost: air of 5 °C and 29.8 %, a part of −9.5 °C',
    muggy: 'Muggy: 25 °C and 80 %, a part of 22 °C',
    roomHygrometer: 'With a room hygrometer, 4 K above the dew point is too close to call',
    warmBox: 'Room air of 22 °C and 50 % in a box of 60 °C',
    steelInAluminium: 'Aluminium uprights and steel screws, 15 K warmer: the gap closes by 0.05 mm',
    bedOnScrews: 'The same with the bed on the screws: the gap opens',
    zeroBySwitch: 'Zero from a switch on the frame, carriage and bed posts printed',
  },
  sources: {
    coldBed: '6.112 · e^(17.62 · 20 / 263.12) = 23.326; ln(11.663 / 6.112) = 0.64622; 243.12 · 0.64622 / 16.97378',
    frost: '6.112 · e^(22.46 · (−10) / 262.62) = 2.599 hPa; 2.599 / 8.717 = 29.8 %',
    at25: '25 °C, 80 %: 21.309 °C',
    roomHygrometer: '10 % of humidity are 3 K of dew point',
    warmBox: '6.112 · e^(17.62 · 60 / 303.12) = 199.93 hPa; 13.187 / 199.93',
    steelInAluminium: '(12 − 23) × 10⁻⁶ × 300 mm × 15 = −0.0495 mm',
    bedOnScrews: 'frame and rest are of one material here, so where the frame ends does not matter',
    zeroBySwitch: '(23 − 68) × 10⁻⁶ × 80 mm × 20',
    chapterPsychrometrics: 'chapter 1, psychrometrics',
    heatingAddsWater: 'heating adds no water: the vapour pressure stays',
    magnussFormulaSolved: 'Magnus’s formula solved for the temperature',
    linearExpansionLength: 'linear expansion: length × coefficient × change of temperature',
    lengthsHeldEnd: 'lengths from the held end up to the nozzle less those up to the bed; both ways are equally long',
    definitionRelativeHumidity: 'definition of relative humidity',
    difference: 'difference',
    overIce:
      'annex 4.B, Magnus’s formula over ice solved for the temperature: 6.112 hPa · e^(22.46 t / (272.62 °C + t))',
    frostAboveDew: 'below 0 °C frost settles before dew, above it there is no frost: the warmer of the two',
    marginBelowSoftening: 'margin below softening',
    softensThere: 'above, wound filament sets oval and sticks; the margin is common practice',
    softens: 'where it goes soft; TPU and polyamide: where wound filament takes a set, common practice',
    dewPointMargin: 'dew point and margin',
    waterSettlesColder: 'water settles on what is colder than the dew point; the margin is common practice',
    seaLevel: 'sea level to 300 m of height, any weather',
  },
  orders,
  steps,
  figure: {
    vapour: 'Vapour pressure of the room’s air against the curve of saturation',
    pressure: (e: string) => `vapour pressure e = ${e}`,
    air: (t: string) => `air ${t}`,
    dew: (t: string) => `dew ${t}`,
    box: (t: string) => `box ${t}`,
    surface: (t: string) => `surface ${t}`,
    growth: 'Screw and frame with what they grow, and the change of the gap',
    frame: 'frame',
    screw: 'screw',
    held: { above: 'held above', below: 'held below', switch: 'mount and switch' },
    drawn: (held: string, factor: number) => `${held}; growth drawn ${factor} times too large`,
    narrower: (by: string, allowed: string) => `gap narrower by ${by}, allowed ${allowed}`,
    wider: (by: string, allowed: string) => `gap wider by ${by}, allowed ${allowed}`,
  },
};
export default en;
