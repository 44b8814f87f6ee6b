/** Words of the check “Missed feed”. */
import { contradictions, orders, steps, ways } from './en/orders';

const ownHint = 'Set your own.';

const en = {
  inputs: {
    Z_s: {
      label: 'Nozzle height Z at the stop',
      hint: 'As shown. Write it down before anything is moved.',
    },
    H_t: {
      label: 'Height of the whole, as drawn',
    },
    G: {
      label: 'Gap from the last sound layer up to the nozzle',
      hint: 'At the Z where it stopped: with the depth rod, or lower the nozzle onto the part and subtract.',
    },
    t_d: {
      label: 'Time that it ran without feed',
      hint: 'From the last time it was seen to print well, to the stop. Not known exactly: between 10 and 30 min ago is 20 ± 10.',
    },
    m_f: {
      label: 'Filament used until the stop',
      hint: 'Spool before less spool after. A part off the bed: its own weight, supports and rim with it.',
    },
    m_t: {
      label: 'Filament planned for the whole',
    },
    k_u: {
      label: 'Plastic in a layer so far, over that of the whole',
      hint: '1 where all layers are alike. A broad foot: more.',
    },
    b_m: {
      label: 'Height of the thin band',
      hint: 'From the last layer with closed lines to the last that hangs together.',
    },
    w_b: {
      label: 'Width of the thinnest lines in it',
    },
    t_L: {
      label: 'Time for one layer',
      hint: 'Or the time planned for the whole over its layers; where layers differ, say by how much after ±.',
    },
    q_x: {
      label: 'Share of the time in which plastic comes out',
    },
    rho: {
      label: 'Density of the plastic',
    },
    q_o: {
      label: 'Share of the melt that still ran out',
    },
    q_e: {
      label: 'Flow at which a line counts as missing, over the full flow',
    },
    b_lim: {
      label: 'Highest band that can be cut away in place',
      hint: 'With knife and file on the bed, without loosening the part.',
    },
    k_b: {
      label: 'Strength of the thin lines, over that of sound ones of their width',
    },
    j_c: {
      label: 'New plastic on the cold top holds, of a sound layer',
      hint: 'The top warmed by the bed and the first new layer printed slow and hot: the high end. A cold, dusty top: the low end.',
    },
    j_g: {
      label: 'A glued joint holds, of a sound layer',
      hint: 'Sanded flat, dry, the glue meant for this plastic. Solvent welds ABS; little holds on polyamide.',
    },
    s_n: {
      label: 'Strength wanted at the seam, over a sound layer',
    },
    p_r: {
      label: 'Chance that going on fails again',
    },
    p_g: {
      label: 'Chance that gluing fails',
    },
    t_hr: {
      label: 'Work to go on: cut, measure, restart',
    },
    t_hg: {
      label: 'Work to glue: cut, sand, glue',
    },
    t_hn: {
      label: 'Work to print again: clear, start',
    },
    c_s: {
      label: 'Price of a spool',
      hint: ownHint,
    },
    m_s: {
      label: 'Plastic on a spool',
    },
    c_g: {
      label: 'Glue, sandpaper: money',
      hint: ownHint,
    },
    r_m: {
      label: 'What an hour of the machine costs',
      hint: ownHint,
    },
    r_h: {
      label: 'What an hour of work is worth',
      hint: ownHint,
    },
  },
  choices: {
    by: {
      label: 'What is known of the failure',
      hint: 'The gap is worth most, if the nozzle still stands where it stopped.',
      options: {
        gap: 'the gap left under the nozzle',
        delay: 'how long it ran without feed',
        fed: 'how much filament went in',
      },
    },
    band: {
      label: 'Thin, stringy layers at the end',
      hint: 'Run out or snapped: it stops at once. A clog that grows or a gear that grinds starves layer after layer.',
      options: {
        none: 'none: it stopped at once',
        trim: 'some, to be cut away',
        left: 'some, to be left in and soaked with thin glue',
      },
    },
    stands: {
      label: 'The part',
      options: {
        stuck: 'still stands on the bed, not moved',
        off: 'has come off or moved',
      },
    },
    plastic: {
      label: 'Plastic',
      options: { pla: 'PLA', petg: 'PETG', abs: 'ABS', pa: 'polyamide', pc: 'polycarbonate' },
    },
    duty: {
      label: 'What the part has to do',
      hint: 'For the last one no seam will do, whatever it costs.',
      options: {
        shown: 'stand there, be looked at',
        used: 'be handled and used',
        loaded: 'carry a load across the seam',
        safety: 'hold a person, heat, mains or a raised load',
      },
    },
  },
  results: {
    Q: 'Flow while it prints',
    A_f: 'Section of the filament',
    v_f: 'Speed of the filament',
    V_L: 'Plastic in a layer',
    l_L: 'Filament in a layer',
    m_L: 'Plastic in a layer, by weight',
    n_s: 'Layer at which it stopped',
    n_t: 'Layers of the whole',
    n_g: 'Layers that are sound',
    n_l: 'Layers lost',
    z_l: 'Height lost',
    l_l: 'Filament that was not fed',
    Z_g: 'Height Z of the last sound layer',
    V_o: 'Melt that still ran out',
    tau: 'Time constant of running dry',
    t_o: 'Time until the lines are as good as missing',
    z_b: 'Height of the starved band',
    s_b: 'Strength left in the band, over a sound layer',
    s_r: 'Going on: strength of the seam, over a sound layer',
    s_g: 'Gluing: strength of the seam, over a sound layer',
    n_j: 'Seams that saving it leaves',
    n_0: 'Seams allowed in what holds a person, heat, mains or a raised load',
    t_p: 'Printing time that is in it',
    t_r: 'Printing time still needed',
    t_a: 'Printing time for a new one',
    T_r: 'Going on: time in all',
    T_g: 'Gluing: time in all',
    T_n: 'A new one: time in all',
    m_r: 'Plastic still needed',
    m_a: 'Plastic for a new one',
    C_n: 'A new one: cost',
    C_r: 'Going on: cost, with the chance of a new one',
    C_g: 'Gluing: cost, with the chance of a new one',
  },
  limits: {
    s_r: 'Strength of the seam',
    z_b: 'Height of the starved band',
    C_r: 'Cost of going on',
    s_g: 'Strength of the glued seam',
    C_g: 'Cost of gluing',
    n_j: 'No seam in what holds a person, heat, mains or a raised load',
  },
  cautions: {
    jamClearedHot:
      'A jam is cleared at 200 °C and more. Melt under pressure spits and burns eyes and skin: goggles, heat-proof gloves, sleeves down.',
    wireDrillNeedle:
      'No wire, drill or needle into a hot nozzle with bare hands: it burns. No steel near the heater’s leads: a short can leave the heater on.',
    heaterOffMachine:
      'Heater off, machine unplugged before you take the hot end apart. It burns for a quarter of an hour.',
    plasticBakedBlocked:
      'Plastic baked in a blocked nozzle gives off fumes that harm the lungs. Air the room. Never heat plastic above its own range.',
    knifeSawAway:
      'Knife and saw cut: clamp the part, and work away from the hand. Mask against dust, gloves and fresh air for glue.',
    partHoldsPerson: 'A part that holds a person, heat, mains or a raised load is never saved with a seam.',
  },
  proof:
    'Before the restart: 100 mm fed hot come out as 100 mm, round and steady. After it: press the seam with a thumb on both sides; it must not give, creak or whiten. Where it has to carry, load a test bar with the same joint first.',
  beware: {
    timeWeightTell:
      'Time and weight tell the layer to a few, no more. They say whether it is worth it; the caliper says where to go on.',
    layersDifferArea:
      'Layers that differ in area take different times and plastic: the figures are for the average one. Give layer time and evenness their ±.',
    strengthsTypicalWide:
      'Strengths are typical and wide: they depend on heat, dust and skill. They are for a pull across the layers, the way a print is weakest.',
    starvedLayerLooks: 'A starved layer looks closed from outside when only the infill has run dry: cut into a corner.',
    filamentHasRun:
      'Filament that has run out stops at once, but the last of it may already have been ground thin: look at the end.',
    sensorFilamentStops: 'A sensor for the filament that stops the machine costs less than most of these repairs.',
  },
  examples: {
    ranOutNight: 'Ran out at night, 4 mm below the nozzle: it stands, and going on pays',
    sameWorkCosts: 'The same with work that costs nothing: worth it',
    cameOffBed: 'Came off the bed: only gluing is left, here known by the time it ran dry',
    weightGroundFilament: 'By weight, with ground filament and a thin band left in: too weak to be used',
    typicalStrengthsPart: 'Typical strengths for a part that carries a load: too close to call',
  },
  sources: {
    ranOutNight: '0.2 · 0.5 · 50 = 5 mm³/s, 48 s of 60: 240 mm³, 0.3 g; 25 min of work cost more than a new one',
    sameWorkCosts: '20 · 0.15 + 0.5 · 8.333 = 7.167; 20 · 0.03 + 0.5 · 1.667 + 0.2 · 7.167 = 2.867',
    cameOffBed: '20 min of 60 s are 20 layers, give or take ten; 1 h 40 min and 40 min of work',
    weightGroundFilament: '500 · 120 / 150 = 400; 75 % · 0.1 / 0.5 = 15 %, and 40 % is wanted',
    typicalStrengthsPart: '40 · 25 % / 5 = 2 s; 2 · ln 10 = 4.605 s; 0.2 · 4.605 / 48',
    lineWideHigh: 'a line is as wide and high as set, and as long as the travel',
    firstLayerAll: 'the first layer, and all others alike on top of it',
    goesComesOut: 'what goes in comes out',
    flowProportionLeft:
      'flow in proportion to what is left: it dies away as e^(−t/τ), τ being the volume over the first flow',
    layersTimesTime: 'layers times the time of one',
    plasticWeightHours: 'plastic by weight, hours by their price',
    oneSeam: 'going on leaves one seam, and so does gluing',
    areaCircle: 'area of a circle',
    definitionDensity: 'definition of density',
    definition: 'definition',
    measured: 'as measured',
    linesBondOver: 'lines bond over their width',
    weakerJointBand: 'the weaker of joint and band',
    printingWork: 'printing and work',
    savingCostMore: 'saving it must not cost more than a new one, the chance of failing counted',
    density: 'density',
  },
  works: { materials: 'Table of materials in this app' },
  orders,
  steps,
  contradictions,
  ways,
  figure: {
    label: 'The part with what is missing under the nozzle, and the cost of each way',
    lost: (layers: string) => `lost: ${layers} layers`,
    cost: 'cost, risk counted',
    notPossible: 'go on: not possible',
    resume: 'go on',
    glue: 'glue',
    anew: 'new one',
  },
};
export default en;
