/** Words of the check “Thread repair”. */
import inputs from './en/inputs';
import orders from './en/orders';

const en = {
  inputs,
  choices: {
    size: {
      label: 'Screw',
      options: {},
    },
    grade: {
      label: 'Marking on the screw’s head',
      hint: 'No marking: reckon with 4.6. Black socket-head screws are mostly 12.9, zinc-plated ones 8.8.',
      options: {
        '4.6': '4.6',
        'A2-70': 'A2-70, stainless',
        '8.8': '8.8',
        '10.9': '10.9',
        '12.9': '12.9',
      },
    },
    part: {
      label: 'The threaded part is of',
      options: {
        'al-6063': 'aluminium extrusion, 6063-T5',
        'al-6061': 'aluminium plate, 6061-T6',
        'al-cast': 'aluminium tooling plate, cast 5083',
        steel: 'mild steel, S235',
        stainless: 'stainless steel, 18 Cr 8 Ni',
        brass: 'free-cutting brass, about 58 Cu 3 Pb',
        copper: 'copper',
        'print-pla': 'PLA, printed',
        'print-petg': 'PETG, printed',
        'print-abs': 'ABS, printed',
        'print-pa': 'polyamide 66, printed',
        'print-pc': 'polycarbonate, printed',
        abs: 'ABS, moulded or machined',
        pa: 'polyamide 66, moulded or machined',
        pc: 'polycarbonate, moulded or machined',
        pom: 'polyoxymethylene, moulded or machined',
      },
    },
    hole: {
      label: 'The hole',
      options: {
        reached: 'goes through, and its back can be reached',
        shut: 'goes through, but its back cannot be reached',
        blind: 'is blind',
      },
    },
    insert: {
      label: 'Length of the wire thread insert',
      hint: 'The lengths they are made in.',
      options: {
        '1d': '1 screw diameter',
        '1.5d': '1.5 screw diameters',
        '2d': '2 screw diameters',
        '2.5d': '2.5 screw diameters',
        '3d': '3 screw diameters',
      },
    },
    way: {
      label: 'Drawing and steps for',
      options: {
        advised: 'the way advised',
        longer: 'a longer screw',
        insert: 'a wire thread insert',
        next: 'the next larger screw',
        bolt: 'a bolt through, with a nut',
        replace: 'a new part',
      },
    },
  },
  results: {
    A_s: 'Stress area of the screw',
    F_p: 'Proof load of the screw',
    tau_s: 'Shear strength of the screw',
    a_i: 'Hole’s thread: shear area per length',
    a_e: 'Screw’s thread: shear area per length',
    f: 'Load that strips one length of thread',
    F_e: 'Load that strips what is left',
    s_e: 'What is left, over the proof load',
    T_e: 'Torque for what is left',
    s_l: 'Longer screw, over the proof load',
    T_l: 'Torque for the longer screw',
    C_l: 'Longer screw: cost in all',
    D_i: 'Outside diameter of the insert’s thread',
    D_m: 'Least bore before the insert’s tap',
    a_w: 'Insert’s hole: shear area per length',
    f_w: 'Load that strips one length of insert',
    L_i: 'Length of the insert',
    s_i: 'Insert, over the proof load',
    w_i: 'Wall beside the insert',
    m_i: 'Wall to spare beside the insert',
    x_i_depthSpareUnder: 'Depth to spare under the insert',
    x_i_blind: 'Depth to spare under the insert and its tap',
    T_i: 'Torque for the insert',
    C_i: 'Insert: cost in all',
    a_n: 'Larger hole: shear area per length',
    b_n: 'Larger screw: shear area per length',
    f_n: 'Load that strips one length of the larger',
    s_n: 'Next larger screw, over the present one’s proof load',
    S_n: 'Proof stress it needs for the same load',
    w_n: 'Wall beside the larger thread',
    m_n: 'Wall to spare beside the larger thread',
    T_n: 'Torque for the larger screw',
    C_n: 'Next larger screw: cost in all',
    b_w: 'Washer’s bearing on the part, over the proof load',
    s_b: 'Bolt and nut, over the proof load',
    w_b: 'Wall beside the clearance hole',
    x_w: 'Room beside the washer',
    T_b: 'Torque for bolt and nut',
    C_b: 'Bolt and nut: cost in all',
    s_r: 'New part, over the proof load',
    T_r: 'Torque for the new part',
    C_r: 'New part: cost in all',
  },
  limits: {
    s_e: 'Thread left, against the strength wanted',
  },
  cautions: {
    switchOffUnplug: 'Switch off, unplug, and let the hot end and the bed go cold.',
    eyeProtectionChips:
      'Eye protection on: chips fly. Brush them away, never with the hand, and keep them out of belts, screws and boards.',
    clampPartNever:
      'Clamp the part. Never hold it by hand against a drill: it climbs and spins. No gloves, no loose sleeves.',
    drillChipsHot: 'Drill and chips are hot. Let plastics cool between passes.',
    takeOutBoards:
      'Take out boards, cables and bearings, or cover them. A tap is glass-hard: stop when it binds, and beware of splinters if it snaps.',
    whereScrewHolds:
      'Where a screw holds up a gantry or a heater, replace the part rather than trust a doubtful thread; leave mains parts to qualified people and the local code.',
  },
  proof:
    'Tighten in three steps to the torque given, waiting a minute between: at each the wrench must come up firm, without turning on. Mark screw and part with one pen line; after a day of printing the line must be unbroken and the torque still there.',
  beware: {
    chartsDrillsWire:
      'Charts of drills for wire thread inserts differ by 0.1 mm. The hole before the tap has a window that follows from the profile: d + 0.217 P, and up to 0.1 to 0.2 mm more. The drill given lies inside it; some kits go 0.1 mm smaller and count on the drill cutting wide in aluminium. Follow the kit.',
    shearAreasThose:
      'The shear areas are those of the loosest pair of thread that the tolerances allow (6g in 6H), on whole thread. A worn tap, a hole drilled too wide, or the first and last turn bear less.',
    thinWallWidens:
      'A thin wall widens under load and lets the flanks slip by: below the wall wanted, the strength shown is too high.',
    torqueCoefficientScatters:
      'The torque coefficient scatters by a quarter or more between dry and oiled; stainless on stainless seizes: grease it, and reckon with less.',
    headsLowButton: 'Heads that are low or button-shaped bear less than the class says, and are so marked.',
    plasticsLoadCreeps:
      'In plastics the load creeps away in days; a thread in a print depends on walls and layers more than on any table. Prefer a bolt with a nut.',
    largerScrewNeeds: 'A larger screw needs room for its head, and a larger hole in what it clamps.',
  },
  examples: {
    mClassExtrusion: 'M3 of class 8.8 in extrusion, torn out over its whole reach',
    fourSixMillimetres: 'Four of six millimetres of M3 thread left',
    threadMSteel: 'Thread of M6 in steel plate, whole: leave it',
    mPrintWall: 'M3 in a print: the wall decides',
  },
  sources: {
    mClassExtrusion: '580 MPa × 5.031 mm²; 3 + 1.299 × 0.5; 1.5 × 3; 12 − 4.5 − 4 × 0.5; 5 − (3.6495 − 3) / 2; 5 − 0.5',
    fourSixMillimetres: 'shear area 5.547 mm² per mm (worked table in references) × 117 MPa × 4 mm, over 2918 N',
    mpaMmTorque:
      '8.8: 580 MPa × 20.12 mm²; torque 0.2 × 0.75 × 11 672 N × 6 mm; washer 235 MPa × π / 4 × (12² − 6.6²) mm²',
    mPrintWall: '2 − 0.3248 = 1.6752; less 0.75 × 3.6495; 2 − 0.5 = 1.5; less 0.75 × 4',
    shearAreaThreads: 'shear area of threads at the loosest fit',
    weakerHoleScrew: 'the weaker of hole and screw thread gives first',
    loadOverProof: 'load over proof load',
    shearAreaScrews:
      'the shear area of the screw’s thread, carried out to the larger hole: pitch and flanks are the same, the circumference is not',
    wallLessGrowth: 'the wall less the growth of the hole on one side',
    torqueCoefficientPull: 'torque = coefficient × pull × diameter',
    moneyPlusTime: 'money plus what the time is worth',
    shareTensileStrength: 'share of its tensile strength',
    yieldStressTimes: 'yield stress times the ring under the washer',
    nutBoltsClass: 'a nut of the bolt’s class bears its proof load',
  },
  ...orders,
};
export default en;
