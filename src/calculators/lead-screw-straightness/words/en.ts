/** Words of the check “Lead-screw straightness”. */
import { orders, steps } from './en/orders';

const en = {
  inputs: {
    g: {
      label: 'Largest gap under the middle',
      hint: 'Roll it until the bow stands up: both ends touch, the middle is clear. Take the thickest feeler that slides in. Half a turn on, the middle touches and each end rises by as much.',
    },
    g_0: {
      label: 'Thinnest feeler, which does not go in',
    },
    f_w: {
      label: 'Part of what the flat can hide that is there',
    },
    TIR: {
      label: 'Needle swing in one turn (TIR)',
      hint: 'Highest less lowest reading, with a flat foot wider than the pitch, on the crests. On V-blocks: midway, screw stopped endways. In the machine: midway, or at the top where the top is free, with the nut run well away.',
    },
    q: {
      label: 'Unevenness of the crests in the reading',
      hint: 'Turn the screw with the needle close beside a support, where a bow hardly shows: enter 0 ± that swing. It may add to the bow or hide some of it.',
    },
    TIR_c: {
      label: 'The coupling’s part in the swing',
      hint: 'Just above the coupling read the swing: half of it counts midway, all of it at a free top. Tap how the high points there and at the nut face; not looked at, enter 0 ± it.',
    },
    c: {
      label: 'Distance between the supports',
      hint: 'On a flat: between the two places where it touches.',
    },
    m_1: {
      label: 'Mass of the screw per length',
      hint: 'Weigh it and divide by its length: on a flat its weight pulls part of the bow down.',
    },
    L: {
      hint: 'Between the places that hold it in the machine; to the end where the top is free.',
    },
    d_3: {
      hint: 'At the bottom of the thread.',
    },
    P_h: {
      hint: 'Lead = pitch × starts: travel of the nut in one turn.',
    },
    E: {
      label: 'Young’s modulus of the screw',
    },
    R_e: {
      label: 'Yield strength of the screw',
    },
    b: {
      label: 'Share of the bow left at the nut',
      hint: 'Clamped ends straighten part of a bow; a free top swings out further than the middle would.',
    },
    k_g: {
      label: 'Sideways stiffness of the guide at the nut',
      hint: 'Pull the carriage sideways at the nut with a luggage scale, dial indicator opposite: force over movement.',
    },
    j: {
      label: 'Sideways float of the nut, each way',
      hint: 'How far the nut slides in its mount before it pushes the carriage: none where it is screwed tight.',
    },
    l_r: {
      label: 'Length the straightness is stated for',
    },
    s_lim: {
      label: 'Bow allowed in that length',
    },
    f_max: {
      label: 'Most that a bow may be of the length for these sums',
      hint: 'Such a bow is seen by eye: a reading beyond it is more likely a wrong one.',
    },
    k_w: {
      label: 'Share of the line width allowed as wobble',
    },
  },
  choices: {
    method: {
      label: 'How it is measured',
      options: {
        flat: 'out of the machine, rolled on a flat with feelers',
        blocks: 'out of the machine, on two V-blocks under a dial indicator',
        mounted: 'in the machine, dial indicator on the frame',
      },
    },
    touch: {
      label: 'Under the middle',
      options: {
        gap: 'a feeler goes in',
        none: 'not even the thinnest feeler goes in',
      },
    },
    ends: {
      hint: 'Clamped true: a rigid coupling on the motor’s shaft, or a pair of bearings. A flexible coupling counts as a bearing.',
    },
    class: {
      label: 'How straight it should be',
      hint: 'No standard was found for trapezoidal screws; the seller’s figure counts.',
      options: {
        rolled: 'rolled or milled: 0.25 mm in 300 mm',
        ground: 'ground: 0.025 mm in 300 mm',
        metre: '1 mm in a metre',
        own: 'as the seller states',
      },
    },
  },
  results: {
    I: 'Second moment of area',
    y_g: 'Sag under its own weight on the flat',
    s: 'Bow between the supports',
    kappa: 'Curvature, one over the radius',
    s_L: 'Bow over the screw’s length',
    y_0: 'Swing of the screw at the nut, each way, unguided',
    s_r: 'Bow in the stated length',
    f_L: 'Bow as a share of the length',
    k_s_pinned: 'Stiffness of the screw midway',
    k_s_free: 'Stiffness of the screw at its free top',
    F: 'Side force if the guide held the nut dead true',
    r_k: 'Share of the swing that the carriage takes',
    x: 'Carriage pushed aside, each way',
    w_x: 'Wobble on the print, peak to valley',
    w_lim: 'Wobble allowed',
    p_r: 'Period of the ridges to expect',
    w_n: 'Wobble from a screw right at its class limit',
    k_t: 'Stiffness midway with the top freed',
    w_t: 'Wobble midway with the top freed, at most',
    y_y: 'Push midway at which a bend begins to stay',
  },
  limits: {
    s_r: 'Bow in the stated length',
    f_L: 'Bow small enough for a flat arc',
    w_x: 'Wobble of the carriage',
  },
  cautions: {
    switchOffUnplug:
      'Switch off and unplug before you touch a screw; turn it by the coupling, by hand. A turning screw winds up sleeves and hair: never touch it.',
    holdGantryUp: 'Block the gantry up before you loosen a screw, coupling or bearing: it can drop and crush a hand.',
    screwsThreadsCan:
      'A screw’s threads can carry sharp swarf that cuts. Wipe them with a rag, not with bare fingers. Keep the grease off the print.',
  },
  proof:
    'Stand the dial indicator on the frame against the carriage, level with the nut, and run one lead up in eighths of a turn: the swing of the needle should be no more than the wobble allowed. Then print a tall wall: ridges spaced one lead apart should be gone; ridges at another spacing have another cause.',
  beware: {
    rollingVBlocks:
      'Rolling and V-blocks show the screw alone. A coupling off centre, or ends turned off centre, swing the screw just as much in the machine, and a straight screw then shows a bow that is not there.',
    tellThemApart:
      'To tell them apart: mark screw and coupling, loosen, turn the coupling half a turn on the screw, measure again. The high point stays with the screw: the screw. It goes over with the coupling: the coupling.',
    vBlocksFeelers:
      'V-blocks and feelers ride on the crests: an oval or off-centre crest reads as bow. Let each block span two crests or more.',
    flatTruerBow:
      'The flat must be truer than the bow: a surface plate or thick float glass on a firm table, checked with a straightedge.',
    bowPerLength:
      'One bow per length is assumed. An S-shaped screw can read straight in the middle: read at the quarter points too.',
    standardWasFound:
      'No standard was found for the straightness of trapezoidal screws; ISO 3408-3 is for ball screws only. The classes here are common practice.',
  },
  examples: {
    vBlocksNeedle: 'On V-blocks: the needle swings twice the bow',
    flatWeightHides: 'On a flat: its weight hides part of the bow',
    machineTopFree: 'In the machine, top free: part of the swing is the coupling’s',
    straightScrewSwing: 'A straight screw: no swing, no bow, no division by zero',
  },
  sources: {
    circleThroughThree: 'circle through three points: R = c²/(8·s) + s/2, κ = 1/R; no approximation',
    flatArcS: 'flat arc, s = L²/(8·R): within 0.1 % for bows up to 3 mm in 300 mm over 400 mm',
    straightBeamsConcentrated: 'table 8.1, straight beams, concentrated load',
    springsSideSide: 'two springs side by side: screw and guide share the offset that the nut’s float leaves',
    propertiesRoundSections: 'table A.1, properties of round sections',
    straightBeamsUniform: 'table 8.1, straight beams, uniform load, ends supported',
    weightClosesPart: 'the weight closes part of the gap; crests open or close it',
    withoutGapMost: 'without a gap: at most what feeler and weight hide',
    pointEOff: 'a point e off the axis swings from −e to +e: TIR = 2·e',
    shareBowEnds: 'share of the bow that the ends leave',
    tirELess: 'TIR = 2·e, less the coupling’s part',
    bowOverLength: 'bow over length: the flat arc is off by four times its square',
    stiffnessOffset: 'stiffness × offset',
    eachWayBoth: 'each way, to both sides',
    swingEachTurn: 'one swing in each turn, one lead in each turn',
    sameCurvatureFlat: 'same curvature, flat arc: the bow grows with the square of the length',
    cantileverHalfLength: 'cantilever of half the length: 3·E·I/(L/2)³',
    smoothBowLower: 'smooth bow, lower end held true by its coupling: offset κ·(L/2)²/2 = s_L',
    fLR: 'F·L/4 = R_e·I/(d₃/2) and y = F·L³/(48·E·I), ends supported',
    vBlocksNeedle: '0.2/2 = 0.1; 8·0.1/(300² + 0.04) per mm; 0.1·(400/300)²; π·5.5⁴/64; 48·206000·I/400³; by hand',
    flatWeightHides: '5·0.3·9.80665·0.3⁴/(384·206·10⁹·44.918·10⁻¹²) = 0.0335 mm; 0.08 + 0.0335',
    machineTopFree: '(0.8 − 0.1)/2 = 0.35; 0.35/4; 3·206000·44.918/300³ = 1.0281 N/mm; × 0.35 mm',
    straightScrewSwing: 'all follow the bow',
    moduliElasticitySteels: 'table A-5, moduli of elasticity of steels',
    tablesHotRolled: 'table A-20, hot-rolled and cold-drawn steels; stainless ones within the same spread',
    withoutGapBow: 'without a gap the bow lies anywhere between nil and all that feeler and weight hide',
    steelKgM: 'steel of 7850 kg/m³ at a pitch diameter of 7 mm: 302 g/m',
    dDP: 'd₃ = d − P − 2a_c: 8 mm with a pitch of 2 mm',
    beamSmoothBow:
      'beam with a smooth bow, or one kink midway, under these ends: 1; 1/4 or 5/8; 0 or 1/2; 4 or 2 at a free top',
    flatArcOff: 'flat arc: off by 4 · (s/L)², which is 0.1 % at 1.6 %',
  },
  orders,
  steps,
  figure: {
    tir: (runout: string) => `TIR = ${runout}`,
    label: 'Side view of the screw on its supports, with its bow',
    flat: 'flat',
    noFeeler: 'no feeler goes in',
    feeler: (gap: string) => `feeler g = ${gap}`,
    unweighted: (bow: string) => `bow without its weight (dashed) s = ${bow}`,
    bow: (bow: string) => `bow s = ${bow}`,
    coupling: 'coupling',
    nut: 'nut, run away',
    enlarged: (times: number) => `length to scale, bow drawn ${times} times too large`,
    toScale: 'length and bow to scale',
  },
};
export default en;
