/** Words of the check “Filament moisture”. */
import { orders, steps } from './en/orders';

const en = {
  inputs: {
    U: {
      hint: 'Lying open: the mean over that time.',
    },
    t_o: {
      label: 'Time it lay open',
      hint: 'A day is 24 h, a week 168 h. It is taken to have been dry at first.',
    },
    T_b: {
      label: 'Temperature at the filament in the oven',
      hint: 'Measured beside the spool, not read off the dial: small ovens swing by 10 K and more. Type the swing after ±.',
    },
    t: {
      label: 'Drying time',
      hint: 'From when the spool is warm through: add an hour or two for that.',
    },
    U_0: {
      label: 'Humidity it lay in before',
    },
    q: {
      label: 'Share to leave, of the water the oven can take out',
    },
    u_max: {
      label: 'Most that the oven’s air may hold in it',
      hint: 'As a share of the water it has: where drying ends, however long.',
    },
    m_1: {
      label: 'Mass before drying',
    },
    m_2: {
      label: 'Mass after drying',
      hint: 'Same scale, at once: within minutes of leaving the oven.',
    },
    m_s: {
      label: 'Of that, empty spool',
      hint: 'Loose filament has none: 0. A spool of card gives off water of its own; weigh loose filament instead.',
    },
    k_s: {
      label: 'Times slower than loose filament, air all round',
    },
    D_1: {
      label: 'Diffusion coefficient of water',
    },
    b: {
      label: 'Doubt of the diffusion coefficient, in powers of ten',
      hint: '0 ± 0.7 is five times either way. Where you know this filament by weighing, enter 0 ± 0.1.',
    },
    T_1: {
      label: 'It was measured at',
    },
    E_a: {
      label: 'Activation energy of diffusion',
    },
    W_s: {
      label: 'Water it takes up in saturated air, of its dry mass',
    },
    W_lim: {
      label: 'Water allowed for printing, of its dry mass',
    },
    T_g: {
      label: 'Goes soft at',
    },
    m_T: {
      label: 'Stay below that by',
    },
  },
  choices: {
    ask: {
      label: 'The question',
      options: {
        dry: 'how long must it dry?',
        store: 'how wet did it get, lying open?',
        weigh: 'weighed before and after drying: is it dry?',
      },
    },
    plastic: {
      label: 'Plastic',
      options: {
        pla: 'PLA',
        petg: 'PETG',
        abs: 'ABS',
        pa: 'polyamide 6 or 66',
        pc: 'polycarbonate',
        tpu: 'TPU',
        asa: 'ASA',
        pp: 'polypropylene',
        other: 'another: enter its values',
      },
    },
    form: {
      label: 'Wound or loose',
      options: {
        spool: 'wound on its spool',
        loose: 'a loose coil, air all round',
      },
    },
  },
  results: {
    D: 'Diffusion coefficient at this temperature',
    a: 'Radius of the filament',
    e_w: 'Vapour pressure of saturated air in the room',
    e_b: 'Vapour pressure saturated in the oven',
    U_b: 'Relative humidity in the oven',
    x_1: 'By the first term of the series',
    x_q: 'Scaled time needed',
    t_q: 'Time needed',
    u_e: 'Share that the oven’s air holds in it',
    Q: 'Share of its water left in the end',
    W_e: 'Water left in the end, of the dry mass',
    T_max: 'Hottest it may dry',
    x: 'Time against the filament’s thickness',
    x_l: 'The same, from nothing to where all is done',
    q_l: 'Share still to go, long times',
    x_s: 'The same, as far as the short-time form goes',
    q_s: 'Share still to go, short times',
    q_t: 'Share still to go after this time',
    W_o: 'Water taken up, of the dry mass',
    w_l: 'Mass lost, of the dried mass',
    W_x: 'Water that the oven could take out',
    W_2: 'Water still in it, of the dry mass',
    W_0: 'Water it had before',
  },
  limits: {
    T_b: 'Temperature below softening',
    T: 'Where it lies, below softening',
    u_e: 'The oven’s air is dry enough',
    t_q: 'Time needed against the time set',
    W_o: 'Water taken up',
    W_2: 'Water still in it',
  },
  cautions: {
    neverLeaveUnattended:
      'It can start a fire: never leave it alone. Use a thermostat with a second cut-out, a surface that does not burn, and a smoke alarm in the room.',
    ovenDryerFilament: 'Fumes poison food: never use one oven for filament and for food.',
    warmPlasticGives:
      'Warm plastic gives off fumes, fibre-filled plastic dust: both harm the lungs. Air the room, and keep to the plastic’s safety sheet.',
    ovenWallsSpool:
      'Oven walls and spool burn the skin: gloves. The spool may soften before the filament does: let nothing rest on its rim, and look after ten minutes.',
  },
  proof:
    'Weigh it before drying and after, warm, on the same scale; dry for the same time again: when the second loss is under a tenth of the first it is dry. The share lost is how wet it was. Fed into the air, 10 cm then come out smooth and silent.',
  beware: {
    publishedRatesPlastic:
      'Published rates of one plastic differ ten to a hundred times, with grade, crystals, fillers and how they were measured. So there is a band, not a time; the middle is no better than its ends.',
    sumsBareStrand:
      'The sums are for bare filament. A wound spool dries from its outside: twice as long, give or take, is a guess of the trade. It also takes an hour or two to get warm through.',
    waterPolylacticAcid:
      'Water in polylactic acid and polyamide does not quite follow this law: polylactic acid takes up a second, slow part, and in polyamide water moves ten times faster when wet than when dry. The last tenth of polyamide is slow. Polyamide’s uptake bends upwards with the humidity, too: at 50 % it holds about a third of what it holds saturated, not half.',
    softenedWaterDamp: 'Softened by water, damp filament gives way at a lower temperature than dry.',
    waterHasAlready:
      'Water that has already cut the chains in the nozzle cannot be dried out of the part, and filament that stayed hot and wet for long is weaker for good.',
    allowedWaterMoulding:
      'The allowed water is that of moulding shops, who melt for longer; a print may stand more, a clear one less.',
    solventsPlasticiserLeave: 'Solvents and plasticiser leave with the heat as well and count as water on the scale.',
  },
  examples: {
    looseMm: 'Loose filament of 1.75 mm at 10⁻¹² m²/s: nine tenths of the water are out after 71 h',
    plaSpoolH: 'PLA on its spool, 6 h at 45 °C: the published rates do not settle it',
    ovenTooHot: 'An oven too hot for it',
    halfWayH: 'Half-way: 13.4 h in the oven leave half of what it can take out',
    weekBenchWet: 'A week on the bench: as wet as the room allows',
    spoolKgGets: 'A spool of 1 kg gets 3 g lighter and is not dry yet',
  },
  sources: {
    equationSummedNumerical: 'equation 5.23, summed with a numerical library',
    plaSpoolH: 'the band of D reaches from a sixth of the middle to six times it',
    ovenTooHot: '60 °C less 5 K',
    weekBenchWet: '10⁻¹² · 604 800 / 0.000875² = 0.78994; 0.69166 · e^(−4.5684) = 0.00717',
    spoolKgGets: '3 g / 1000 g; 1 − 0.59089 of it still to go; 0.3 % / 0.59089, and 0.0472 % stay for the oven’s air',
    equationCylinderConstant: 'equation 5.23, cylinder with constant surface: Σ 4/α² · e^(−α² x), J₀(α) = 0',
    equationSmallTimes: 'equation 5.25, small times',
    arrhenius: 'law of Arrhenius: a rate goes with e^(−E / R T)',
    bothLeavePositive: 'both leave positive terms out, so the larger is the nearer: within 0.0001 of the whole series',
    firstTermsSeries: 'first two terms of the series solved for x by one step: within 0.02 % up to a share of 30 %',
    heatingAddsWater: 'heating adds no water: the vapour pressure stays',
    waterProportionHumidity: 'water in proportion to the humidity, a straight sorption line',
    balanceWater: 'balance of water',
    halfDiameter: 'half the diameter',
    xDT: 'x = D t / a²',
    marginBelowSoftening: 'margin below softening',
    seriesPartFifty: 'the series at 3: a part in fifty million is still to go',
    weighed: 'weighed',
    diffusionOutCylinder: 'diffusion out of a cylinder down to the share wanted',
    middleLogarithms: 'middle by logarithms; of the plastics not named common practice',
    publishedCoefficientsPolymer: 'published coefficients of one polymer lie apart by ten to a hundred times',
    activationEnergiesDiffusion:
      'activation energy of diffusion; of the other plastics 30 to 50 kJ/mol, common practice',
    broughtSaturatedAir: 'brought to saturated air; of the plastics not named common practice',
    glassTransitionPolyamide:
      'glass transition. Common practice: ASA; polyamide, partly crystalline, where it yellows; TPU and polypropylene, where wound filament takes a set',
  },
  works: {
    diffusion:
      'Siparsky et al., Water transport in polylactic acid, J. Environ. Polym. Degrad. 5 (1997): 2 to 10 × 10⁻¹¹ m²/s at 50 °C and 90 %; Davis et al., Non-Fickian diffusion of water in polylactide, Ind. Eng. Chem. Res. 52 (2013); Aniskevich et al., Polymers 15 (2023) 2600, twelve filaments; doi 10.20944/preprints202604.1293: TPU 1.06 to 3.40 × 10⁻¹² m²/s; J. Appl. Polym. Sci. 74 (1999) 3275, polypropylene 15.9 × 10⁻¹² m²/s, and with Togashi and Hara, Fusion Sci. Technol. 60 (2011) 1471, 3.4 × 10⁻¹²',
    activation: 'Togashi and Hara, Fusion Sci. Technol. 60 (2011) 1471: polypropylene 41 kJ/mol',
    water:
      'Materials 17 (2024) 1988: ABS filament 0.17 to 0.75 %; doi 10.20944/preprints202604.1293: TPU 1.2 to 1.8 %; Togashi and Hara, Fusion Sci. Technol. 60 (2011) 1471, solubility in polypropylene: 0.015 %',
    softening: 'Table of materials in this app',
  },
  orders,
  steps,
  figure: {
    label: 'Water in the filament over time, as a band of the published rates',
    taken: 'taken up, of what this air gives in the end',
    left: 'left, of the water the oven can take out',
    open: (time: string) => `open ${time}`,
    set: (time: string) => `set ${time}`,
    line: 'line: middle of the published rates',
    shaded: 'shaded: slowest to fastest',
  },
};
export default en;
