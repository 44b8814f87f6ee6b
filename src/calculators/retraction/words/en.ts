/** Words of the check “Retraction and nozzle”. */
import { orders, steps } from './en/orders';
import { sources, works } from './en/sources';

const en = {
  inputs: {
    x_set: {
      label: 'Retraction now',
    },
    x_p: {
      label: 'Retraction that the test piece showed',
      hint: 'The shortest that left all gaps of the comb clean and started each line at full width. Empty until it is printed: listed flow values settle nothing by themselves.',
    },
    d: {
      label: 'Nozzle bore',
    },
    l: {
      label: 'Length of the land',
      hint: 'The straight part of the bore, at the tip.',
    },
    alpha: {
      label: 'Half angle of the cone',
      hint: 'Between axis and wall. The formula holds to about 30°: for a steeper cone enter 30°.',
    },
    d_0: {
      label: 'Bore above the cone',
    },
    f_c: {
      label: 'Stretching of the melt: the cone’s pressure, times',
    },
    K: {
      label: 'Consistency of the melt',
      hint: 'Shear stress at a shear rate of 1/s. Tables differ widely: see the factor below.',
    },
    f_K: {
      label: 'Factor by which that may be off',
    },
    beta: {
      label: 'Consistency of this batch, thicker than listed is +',
      hint: '0 is as listed, +1 the high end of the factor above, −1 the low end. Leave at 0 ± 1. After a test piece, ask for the value here that gives the length you found.',
    },
    F_m: {
      label: 'Push force measured at this flow',
      hint: 'Hot end at heat, tube off. Press the filament into the hot end’s inlet with a scale or a weight, at the feed speed given below.',
    },
    n: {
      label: 'Flow index of the melt',
      hint: 'Below 1, which would flow like oil: for that enter 0.99.',
    },
    gamma_min: {
      label: 'Least shear rate the power law is good for',
    },
    E: {
      label: 'Modulus of the filament',
    },
    B: {
      label: 'Bulk modulus of the melt',
    },
    rho: {
      label: 'Density of the plastic',
    },
    L: {
      label: 'Free length from gear to melt',
    },
    D_t: {
      label: 'Bore of the tube',
    },
    Theta: {
      label: 'All bends of the tube added up',
      hint: 'Half a loop is 180°. Bends to either side add.',
    },
    mu_t: {
      label: 'Friction coefficient, filament in the tube',
    },
    s_b: {
      label: 'Backlash of the drive',
      hint: 'How far the filament moves to and fro while the motor holds still.',
    },
    v_x: {
      label: 'Retraction speed',
    },
    v_t: {
      label: 'Travel speed',
    },
    a_lo: {
      label: 'Shortfall allowed',
    },
    a_hi: {
      label: 'Excess allowed',
      hint: 'More than the shortfall: the springiness of the melt wants some and is not in the figure.',
    },
    x_max: {
      label: 'Most retraction: the soft end stays below the cold part',
      hint: 'Softened filament pulled into the cold part swells, sets there and jams. Less where the hot end is metal all through.',
    },
    F_max: {
      label: 'Most that the drive pushes',
      hint: 'Above it the gear slips or grinds: hook a scale to the cold filament and let the drive pull.',
    },
    x_step: {
      label: 'Step to change it by',
    },
    d_2: {
      label: 'Bore of the other nozzle',
    },
    phi: {
      label: 'Pressure share at which oozing counts as over',
      hint: 'The flow falls much faster than the pressure: see the share of the flow left then.',
    },
    g: {
      label: 'Planned test piece: longest gap',
    },
    b: {
      label: 'Planned test piece: side of a tooth',
    },
    h_b: {
      label: 'Planned test piece: height',
    },
    d_v: {
      label: 'Thinnest hair you can see',
    },
  },
  choices: {
    drive: {
      label: 'Feeder',
      options: {
        tube: 'pushes through a tube',
        head: 'sits on the hot end',
      },
    },
    material: {
      label: 'Plastic',
      options: {
        pla: 'PLA',
        abs: 'ABS',
        petg: 'PETG (flow values: guesses)',
        other: 'another: enter its values',
      },
    },
    source: {
      label: 'Pressure from',
      options: {
        table: 'the plastic’s flow values',
        force: 'a push force you measured',
      },
    },
    land: {
      label: 'Land of the other nozzle',
      options: {
        same: 'as long as this one’s',
        scaled: 'scales with its bore',
      },
    },
  },
  results: {
    A_f: 'Cross-section of the filament',
    Q: 'Flow',
    q_r: 'Less flow than that for a lone line with half-round edges',
    v_f: 'Feed speed of the filament',
    r: 'Radius of the bore',
    gamma_w: 'Shear rate at the wall of the land',
    K_e_consistencyUsed: 'Consistency used',
    K_e_consistencyExplainsPush: 'Consistency that explains the push',
    dp_l: 'Pressure over the land',
    dp_c: 'Pressure over the cone, shear times a factor for stretching',
    dp: 'Pressure in the melt',
    F: 'Force on the filament',
    F_g_pushDriveFriction: 'Push of the drive, with the friction of the tube',
    F_g_pushDrive: 'Push of the drive',
    s_f: 'Filament compressed',
    s_t: 'Slack of the filament in the tube',
    s_m: 'Melt compressed, as filament',
    x_r: 'Retraction that is needed',
    x_lo: 'Band, lower end',
    x_hi: 'Band, upper end',
    x_d: 'Set length less the computed one',
    dx_p: 'Set length less that of the test piece',
    t_x: 'Time the retraction takes',
    k_q: 'Other nozzle, same flow: pressure over the land, times',
    k_v: 'Other nozzle, same speed, line and layer in proportion: pressure over the land, times',
    k_c: 'Other nozzle, same flow: pressure over the cone, times',
    x_q: 'Other nozzle, same flow: retraction',
    x_v: 'Other nozzle, same speed: retraction',
    t_b: 'Time for the pressure to fall to that share, without retraction',
    q_b: 'Share of the flow left then',
    gamma_b: 'Shear rate left then',
    x_b: 'Travel in that time: the nozzle oozes over this length',
    t_1: 'Time for a drop as wide as the bore, without retraction',
    x_1: 'Travel before that drop: shorter ones hardly show',
    V_o: 'Plastic that oozes in the bleeding time',
    d_s: 'Hair it draws across the planned gap, thickness',
    b_min: 'Least side of a tooth: four lines',
    N_t: 'Layers of the planned piece, two travels in each',
    m_p: 'Plastic for two teeth of the planned piece, solid',
  },
  limits: {
    x_set: 'Retraction against the computed band',
    dx_p: 'Retraction against the test piece',
    x_r: 'Computed length leaves the soft end below the cold part',
    x_max: 'Length set now leaves the soft end below the cold part',
    F_g: 'Push that the drive can give',
    gamma_w: 'Shear rate high enough for the power law',
    D_t: 'Tube wide enough for the filament',
    d_0: 'Cone wider above than at the tip',
  },
  cautions: {
    nozzleHeaterBlock: 'Nozzle, heater block and fresh plastic burn the skin at once. Hands off: pliers for hairs.',
    hotPlasticGives:
      'Hot plastic gives off fumes that harm the lungs: print only where the air is changed, and follow the plastic’s safety sheet.',
    feedGearCrushes: 'The feed gear can crush a finger: keep fingers and sleeves away while it has power.',
  },
  proof:
    'Print the test piece at the new length. The gap should stay clean and the first line after each travel should start full width; a thin or late start means too much retraction.',
  beware: {
    absolutePressuresTabulated:
      'Absolute pressures from tabulated flow values are good to a factor of three at best; trust the ratios between nozzles and flows, and let the test piece decide the rest.',
    conesFormulaCounts:
      'The cone’s formula counts shear only. Stretching of the melt is in it as a judged factor, from none to as much again.',
    bendsTakenEven:
      'The bends are taken as even along the tube, and one friction coefficient for all of it; a kink or a scraped wall holds more.',
    partLagSpringiness: 'Part of the lag is the springiness of the melt itself: no retraction takes it up.',
    slackCountsWhole:
      'The slack counts all the room from the outer wall of the tube to the inner; filament that keeps the curl of its spool moves less.',
    coldDriveWorn:
      'A cold drive, a worn bore, or plastic leaking back past the filament adds force that is not in the figures. Wet filament foams and strings whatever the length.',
    towardsEndBleeding:
      'Towards the end of the bleeding the melt flows more easily than a power law says, so that the true time is shorter.',
  },
  examples: {
    stiffMeltMm: 'A stiff melt at 5 mm³/s through 0.4 mm',
    otherNozzleHalf: 'Other nozzle: half the bore at the same flow',
    sameLandScaled: 'The same with the land scaled: one power of two less',
    throughTubeSlack: 'Through a tube: slack outweighs the rest',
    samePushedRound:
      'The same pushed round half a loop with friction: 37 % more at the gear, 17 % more in the filament',
    driveHotEnd: 'Drive on the hot end: little is stored',
  },
  sources,
  works,
  orders,
  steps,
  figure: {
    label: 'Filament from gear to nozzle, and the lengths stored on the way',
    parts: { filament: 'filament', slack: 'slack', melt: 'melt', backlash: 'backlash' },
    bends: (angle: string) => `bends ${angle}`,
    notToScale: 'not to scale',
    stored: (length: string, most: string) => `stored ${length}, band up to ${most}`,
    set: (length: string) => `set ${length}`,
    lengths: (count: number) => `lengths to scale, 1 to ${count} from the left`,
  },
  download: {
    label: 'Save the test piece (STL)',
    fillIn: 'The size follows from nozzle, line, layer and bleeding time: fill those in first.',
    file: (bore: string) => `comb-${bore}-mm-nozzle.stl`,
  },
};
export default en;
