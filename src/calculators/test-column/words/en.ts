/** Words of the check “Test column”. */
import type { Amount, Print } from '../../../engine/order';

type Fault = 'sigma' | 'x' | 'r_f';
interface Foot {
  readonly how: 'newPad' | 'newRim' | 'widerPad' | 'widerRim';
  readonly width: Amount;
}
interface ToBeSafe {
  readonly toBeSafe: boolean;
}

const faults = { sigma: 'break loose', x: 'sway', r_f: 'be shaken up' };

/** "break loose, sway and be shaken up". */
const all = (found: readonly Fault[]) => {
  const each = found.map((one) => faults[one]);
  return each.length > 1 ? `${each.slice(0, -1).join(', ')} and ${each.at(-1) ?? ''}` : (each[0] ?? 'fail');
};

const widened = ({ how, width }: Foot, p: Print) =>
  ({
    newPad: `give it a pad 2 mm thick and ${p(width)} wide`,
    newRim: `give it a rim of ${p(width)} all round`,
    widerPad: `widen its pad to ${p(width)} all round`,
    widerRim: `widen its rim to ${p(width)} all round`,
  })[how];

const safe = ({ toBeSafe }: ToBeSafe, sentence: string) => (toBeSafe ? `Or to be safe. ${sentence}` : sentence);

const en = {
  inputs: {
    b: {
      label: 'Width of the column; round: diameter',
      hint: 'Or as drawn: then choose “as marked”. A tapered one: the width at a third of its height.',
    },
    L: {
      label: 'Height of the column',
      hint: 'From the bed to the layer being printed; for a whole piece, to its top.',
    },
    t_w: {
      label: 'Thickness of its walls',
      hint: 'Number of wall lines times the line width.',
    },
    q_i: {
      label: 'Infill',
      hint: 'Counts as weight, not as stiffness.',
    },
    F: {
      label: 'Sideways drag of the nozzle',
      hint: 'More with thin layers, too much plastic or curled edges. To find it: see how far a column of known stiffness gives.',
    },
    E: {
      label: 'Modulus of the plastic',
    },
    q_E: {
      label: 'Printed over moulded stiffness',
      hint: 'Lines with gaps between them bend more easily than a solid bar.',
    },
    q_T: {
      label: 'Stiffness left in the warm',
      hint: 'Plastics lose stiffness well before they go soft; near that temperature nearly all of it.',
    },
    rho: {
      label: 'Density of the plastic',
    },
    q_w: {
      label: 'Sway allowed, over the line width',
      hint: 'Beyond a quarter of a line the wall looks rough; beyond a half, lines miss those below.',
    },
    f_m: {
      label: 'Frequency at which the machine shakes it',
      hint: 'That of the ripples after corners: speed over their spacing. It is the fastest shaking there is.',
    },
    r_min: {
      label: 'Least own frequency, over that',
      hint: 'At twice the frequency a column follows with a third more than its still bend; at the same frequency it builds up.',
    },
    sigma_a: {
      label: 'Pull that the bed holds, straight up',
    },
    q_p: {
      label: 'Share of it left when an edge peels',
      hint: 'An edge lifts before the whole face would: the even share-out of the formula is too hopeful.',
    },
    b_t: {
      label: 'Test block: side of its square foot',
      hint: 'Solid, same plastic, same bed and heat, no rim. Twice as tall as it is wide.',
    },
    h_t: {
      label: 'Test block: height at which it is pushed',
    },
    F_t: {
      label: 'Test block: force at which it lets go',
      hint: 'Loop the scale round the block and pull level, slowly. Mean of three.',
    },
    r: {
      label: 'Rim all round the foot',
    },
    q_r: {
      label: 'Share of the rim’s width that holds',
      hint: 'A thin rim bends up before it pulls; a thick pad holds all through.',
    },
  },
  choices: {
    section: {
      label: 'Section of the column',
      hint: 'An oblong one: take it as square with its smaller width, the way it gives most.',
      options: {
        square: 'square',
        round: 'round',
      },
    },
    core: {
      label: 'Inside',
      hint: 'Infill counts as weight only: it is far softer sideways than the walls.',
      options: {
        solid: 'solid: lines all through',
        shell: 'walls, with infill or nothing between',
      },
    },
    plastic: {
      label: 'Plastic',
      options: { pla: 'PLA', petg: 'PETG', abs: 'ABS', pa: 'polyamide', pc: 'polycarbonate' },
    },
    warmth: {
      label: 'While it prints, the column is',
      hint: 'PLA goes soft near 60 °C, PETG near 80 °C. A thin column hardly cools between its short layers.',
      options: {
        cool: 'cool: fan on, layers long',
        warm: 'warm: short layers or a hot bed',
        soft: 'hardly set: it gives to the finger',
      },
    },
    bed: {
      label: 'What holds it to the bed',
      hint: 'The first three are typical and wide. A block pushed off with a scale is worth more than any of them.',
      options: {
        film: 'sheet with a plastic film, clean and warm',
        glass: 'bare glass, clean and warm',
        glue: 'glue stick or spray',
        tested: 'measured: a test block pushed off',
      },
    },
    foot: {
      label: 'Foot',
      options: {
        bare: 'as wide as the column',
        rim: 'with a rim one layer thick',
        pad: 'with a pad some 2 mm thick',
      },
    },
  },
  results: {
    b_i: 'Width of the hollow',
    A_g: 'Section within the outline',
    A: 'Section that carries',
    I_secondMomentArea: 'Second moment of area',
    I_secondMomentArea2: 'Second moment of area, walls only',
    s: 'Height over width',
    E_c: 'Modulus of the column as it prints',
    k: 'Stiffness at the top',
    x: 'Sway at the top',
    x_lim: 'Sway allowed',
    mu_massPerHeight: 'Mass per height',
    mu_massPerHeight2: 'Mass per height, infill counted',
    f: 'Own frequency of the column',
    r_f: 'Own frequency over that of the machine',
    m: 'Mass of the column',
    B: 'Width of the foot that holds',
    F_tip: 'Push that would topple it if nothing stuck',
    Z: 'Section modulus of the foot',
    sigma: 'Pull at the edge of the foot',
    sigma_h_pullEdgeStands: 'Pull that the edge stands',
    sigma_h_tested: 'Pull at which the test block’s edge let go',
    L_x: 'Height up to which it sways no more than allowed',
    L_f: 'Height up to which it is not shaken up',
    L_h: 'Height up to which the foot holds',
    b_x_widthWhichSways: 'Width at which it sways no more than allowed',
    b_x_widthWhichSways2: 'Width at which it sways no more than allowed, about',
    B_n: 'Width of foot needed',
    r_n: 'Rim needed all round; below zero: none',
  },
  limits: {
    x: 'Sway at the top',
    r_f: 'Own frequency above the machine’s',
    sigma: 'Pull at the edge of the foot',
  },
  cautions: {
    keepHandsOut: 'Keep hands out while it moves: it can crush a finger. Nozzle and bed burn.',
    tallPieceLets: 'A tall piece that lets go is dragged about and can block an axis: stay near, a hand on the switch.',
    pushingTestBlock:
      'A test block lets go with a snap that can hurt an eye. Eye protection on, switched off, bed cold or as hot as gloves allow.',
  },
  proof:
    'Print the piece beside one of half the height, or with the foot or bridge added. If roughness goes, it was the piece that swayed. If it stays at the same height above the bed, look at the machine instead.',
  beware: {
    dragNozzleKnown:
      'The drag of the nozzle is known to a factor of several; it counts in full. A verdict too close to call is the rule, not the exception, until it is measured.',
    infillLeftOut:
      'Infill is left out of the stiffness: it is far softer sideways than walls. Layers that hold badly to each other are softer still.',
    stiffnessFallsLong:
      'Stiffness falls long before a plastic goes soft. A warm column is softer than the table, and most of all near its top.',
    pullSharedOut:
      'The pull is shared out evenly over the foot; in truth an edge peels first. A measured test block has that in it, if it is of about the same size.',
    bendingOnlyShear:
      'Bending only. Shear adds 3 % at five widths of height and 20 % at two: a stumpy piece sways a little more than shown, and hardly at all.',
    bedMovesShakes:
      'A bed that moves shakes the column by its own mass as well: 200 mm of solid 10 mm square at 3 m/s² is as if 0.03 N more pulled at the top, twice that at the start of a move. Weight hardly counts.',
    bedSheetMachine: 'The bed, its sheet and the machine give too. This is the piece’s own share.',
  },
  examples: {
    pinMmSquare: 'A pin of 5 mm square and 50 mm height, one newton at its top',
    twiceWideTall: 'Twice as wide and tall: twice as stiff, a quarter of the pull',
    sameColumnTwice: 'The same column twice as tall: an eighth of the stiffness, and it breaks loose',
    tubeMmWalls: 'A tube of 10 mm with walls of 1 mm: over half of the stiffness of a bar, on a third of the plastic',
    holdMeasuredTest: 'Hold measured with a test block, and a rim that makes up for it',
  },
  sources: {
    pinMmSquare: '5⁴ / 12 = 52.083; 3 · 3500 · 52.083 / 50³ = 4.375; 6 · 1 · 50 / 5³ = 2.4',
    twiceWideTall: '10⁴ / 12 = 833.33; 3 · 3500 · 833.33 / 100³ = 8.75; 6 · 0.5 · 100 / 10³ = 0.3',
    sameColumnTwice: '8.75 / 8; (6 · 1 · 200 / 1) ^ (1 / 3) = 10.627',
    tubeMmWalls: 'π (10⁴ − 8⁴) / 64 = 289.81; a solid bar has π 10⁴ / 64 = 490.87',
    holdMeasuredTest: '6 · 5 · 20 / 10³ = 0.6; 6 · 0.3 · 120 / 12³ = 0.125; (360 · 0.6) ^ (1 / 3) with 216 / 0.6 = 360',
    tableCaseLeft: 'table 8.1, case 1a, left end free, right end fixed',
    tablePropertiesSections: 'table A.1, properties of sections',
    tableClampedFree: 'table 8-1, clamped–free beam',
    sectionFlexureStress: 'section 8.1, flexure: stress is moment over section modulus',
    geometrySection: 'geometry of the section',
    wallThickerHalf: 'a wall thicker than half the width leaves no hollow',
    definition: 'definition',
    printWarmthLeave: 'what print and warmth leave of the modulus',
    definitionStiffness: 'definition of stiffness',
    densityTimesSection: 'density times section',
    momentsAboutEdge: 'moments about the edge of the foot: push times height is weight times half the foot',
    secondMomentGoes: 'second moment goes with the fourth power of the width',
    thinWallsSecond: 'thin walls: second moment goes with the third power of the width',
    wellAboveExcitation: 'well above its excitation a beam follows as if loaded slowly; the margin is common practice',
    modulusRoomTemperature: 'modulus at room temperature',
    density: 'density',
  },
  orders: {
    print: (a: { sway: Amount; allowed: Amount }, p: Print) => ({
      glance: '✓ Print it',
      sentence: `Print it as it is: it sways ${p(a.sway)} of the ${p(a.allowed)} allowed, and the foot holds.`,
    }),
    makeSure: (a: { faults: readonly Fault[] }) => ({
      glance: '⟳ Make sure first',
      sentence: `Make sure before printing it: whether it will ${all(a.faults)} is too close to call.`,
    }),
    changeFoot: (a: { faults: readonly Fault[]; foot: Foot | undefined }, p: Print) => ({
      glance: '✕ Give it a wider foot',
      sentence: `Change the piece: as drawn it will ${all(a.faults)}. To begin with, ${a.foot ? widened(a.foot, p) : 'give it a wide pad'}.`,
    }),
    widen: (a: { faults: readonly Fault[]; to: Amount }, p: Print) => ({
      glance: `✕ ${p(a.to)} wide, or bridge`,
      sentence: `Change the piece: as drawn it will ${all(a.faults)}. To begin with, make it ${p(a.to)} wide, or bridge it to a second one.`,
    }),
    lower: (a: { faults: readonly Fault[]; from: Amount; to: Amount }, p: Print) => ({
      glance: `✕ ${p(a.to)} tall, no more`,
      sentence: `Change the piece: as drawn it will ${all(a.faults)}. Make it ${p(a.to)} tall in place of ${p(a.from)}, or bridge it to a second one.`,
    }),
    drawAnew: (a: { faults: readonly Fault[] }) => ({
      glance: '✕ Draw it another way',
      sentence: `Draw the piece another way: as drawn it will ${all(a.faults)}, and neither three times the width nor half the height alone mends that.`,
    }),
  },
  steps: {
    footHolds: (a: { pull: Amount; holds: Amount }, p: Print) =>
      `At the edge of the foot ${p(a.pull)} pulls, and the bed stands ${p(a.holds)}.`,
    lookAtMachine: 'If its walls are rough all the same, look at the machine: the piece is stiff enough to tell.',
    foot: (a: Foot & ToBeSafe, p: Print) =>
      safe(a, `Foot: ${widened(a, p)}. That holds even if drag and hold are both at their worst.`),
    anyFoot: (a: ToBeSafe) => safe(a, 'Foot: a pad 2 mm thick, as wide as there is room for.'),
    shorten: (a: { to: Amount } & ToBeSafe, p: Print) => safe(a, `Shorten: up to ${p(a.to)} it is sure to do.`),
    thicken: (a: { to: Amount; from: Amount } & ToBeSafe, p: Print) =>
      safe(
        a,
        `Thicken: ${p(a.to)} wide instead of ${p(a.from)} is sure to do: it neither sways nor is shaken up, and holds.`,
      ),
    bridge: (a: ToBeSafe) =>
      safe(
        a,
        'Bridge: print a second column a few widths away, joined to it at the top and once between. In line with the pair the sway falls to an eighth, across it to a half: set the pair along the faster axis.',
      ),
    oneMoreWall: (a: ToBeSafe) => safe(a, 'One more wall line does more than any infill.'),
    slowDown: (a: ToBeSafe) =>
      safe(
        a,
        'Slow down: less acceleration and half the speed above the height given; its own frequency lies too near the machine’s.',
      ),
    printTwo: (a: ToBeSafe) =>
      safe(a, 'Print two at once, a hand’s width apart, and more fan: the warm column is the soft one.'),
    inPieces: 'Lay it down, print it in pieces to be joined, or give it ribs that widen towards the foot.',
    measureDrag:
      'Measure the drag: print a thin column of known size till it wavers, note the height, and ask for the drag here that gives that sway. Or take the drag of a piece that just broke loose.',
    pushTestBlock:
      'Push a test block off with a scale and choose “measured”: the typical hold is good to a factor of several.',
    pushForPeel: 'Push a test block off with a scale and choose “measured”: how an edge peels is then in the reading.',
    measureRipples: 'Measure the ripples after a corner and enter their frequency: speed over spacing.',
    touchInPause: 'Touch the column in a pause: if it gives, it is too warm to judge. More fan, or two pieces at once.',
  },
  figure: {
    label: 'The column on its foot, swaying under the nozzle',
    sways: (by: string, factor: number) => (factor > 1 ? `sways ${by}, drawn ${factor} times` : `sways ${by}`),
    usedOfLimit: 'used of limit',
    sway: 'sway',
    shaking: 'shaking',
    foot: 'foot',
  },
};
export default en;
