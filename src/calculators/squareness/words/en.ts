/** Words of the check “Squareness”. */
import type { Amount, Print } from '../../../engine/order';

type Along = 'forward' | 'back';
interface Skew {
  readonly by: Amount;
  readonly sharp: boolean;
}

const GAP =
  'Seen from above, front towards you: tap where the gap opens, and enter its width. An indicator carried along the blade reads the same.';
const sides = { left: 'left', right: 'right' };
const alongs = { forward: 'forward', back: 'back' };
const skewed = (skew: Skew | undefined, p: Print) => {
  if (!skew) return 'Square as far as these readings tell.';
  const corners = skew.sharp
    ? 'front left and back right, seen from above with the front towards you, sharper than 90°'
    : 'front left and back right, seen from above with the front towards you, wider than 90°';
  return `Out by ${p.size(skew.by)}, ${corners}.`;
};

const en = {
  inputs: {
    d_1: {
      label: 'Diagonal, front left to back right',
      hint: 'As it lay or stands, seen from above, front towards you. Mark a print’s front left corner before you take it off.',
    },
    d_2: {
      label: 'Diagonal, back left to front right',
    },
    A: {
      label: 'Side along X, left to right',
    },
    B: {
      label: 'Side along Y, front to back',
    },
    m: {
      label: 'Gap between blade and side',
      hint: `Stock of the square along X, the blade on the left of the side. ${GAP}`,
    },
    m_1: {
      label: 'Blade on the left: gap to the side',
      hint: `Stock along X. ${GAP}`,
    },
    m_2: {
      label: 'Turned over, blade on the right: gap to the side',
      hint: 'The same face of the stock along X, the square flipped left for right. Tap where the gap opens now.',
    },
    l: {
      label: 'Length of blade between the two places',
    },
    i_e: {
      label: 'Error of the square',
      hint: 'A workshop square is good to some 0.05 mm per 100 mm; taken both ways round it shows its error itself.',
    },
    i_p: {
      label: 'Corner front left against 90°',
      hint: 'Of a printed square, from two photos on paper: tap whether the corner is sharper or wider, enter by how much.',
    },
    S_b: {
      label: 'Beam between its guides',
    },
    L_f: {
      label: 'Depth of the frame',
    },
    e_lim: {
      label: 'Skew allowed',
      hint: 'Over the length below. A tenth of a millimetre in 100 is about what an eye sees at a corner.',
    },
    l_0: {
      label: 'Skew stated over',
    },
  },
  choices: {
    way: {
      label: 'Measured with',
      hint: 'Diagonals of a large flat print need only a caliper. A square shows its own error with the machine’s; turned over, the two part.',
      options: {
        diagonals: 'two diagonals and two sides',
        square: 'a try square and a feeler',
        reversal: 'a square, both ways round',
        photo: 'two photos of a print on paper',
      },
    },
    of: {
      label: 'What it tells of',
      options: {
        beam: 'a print or the movement; the beam runs front to back',
        bed: 'a print or the movement; the bed runs front to back',
        frame: 'the frame itself',
      },
    },
  },
  results: {
    s: 'Sine of the skew',
    epsilon: 'Skew: front left corner sharper than 90° is +',
    d_e: 'Diagonals longer than the sides allow',
    i_m: 'Side against a true square',
    m_e: 'Skew over the blade, the square’s error gone',
    m_s: 'The square’s own error over the blade',
    i_q: 'The square’s own error, wider than 90° is +',
    e_0: 'Skew over the stated length',
    e_D: 'Sideways error over the bed’s depth',
    dy: 'Right end of the beam too far back',
    dx: 'Back of the frame too far right',
  },
  limits: {
    e_0: 'Skew over the stated length',
  },
  cautions: {
    switchOffUnplug: 'Switch off and unplug before you touch beam, belts or screws: a homing move can crush a finger.',
    supportBeamUpright:
      'Support a beam or an upright before you slacken its screws: it can drop or tip and crush a hand.',
    letNozzleBed: 'Let nozzle and bed cool before you lay a square on the bed: both burn.',
  },
  proof:
    'Measure again in the same way, a print printed anew: both diagonals should be alike to within the tool, or the square’s gap gone. Measure a second piece turned by a quarter on the bed: a piece that warped tells another story each time.',
  beware: {
    differentDiagonalsAlone:
      'Two different diagonals alone do not prove skew: opposite sides of different length do it too. Hence the sides, and the check of d₁² + d₂² against them.',
    shrinkagePrintCancels:
      'Shrinkage of a print cancels here: it takes both diagonals and both sides alike. It does not cancel where the piece shrank unevenly, warped, or has thick corners: measure above the first layers, between flat faces.',
    xAgainstY:
      'This is X against Y. A beam that is higher at one end is the matter of Two Z screws in step; a leaning upright shows on a tall piece in the same way, front taken for bottom.',
  },
  examples: {
    frameMmMillimetre: 'A frame of 300 mm, one millimetre between the diagonals',
    printedSquareMm: 'A printed square of 100 mm, measured with a caliper',
    squareBothWays: 'The square both ways round: half of what it shows is its own',
    sameSquareFrame: 'The same square on the frame',
    squareTwoPhotos: 'A printed square in two photos',
    photosFrame: 'Two photos for a frame',
    trySquareMm: 'A try square 1 mm/m too wide, in the frame’s corner',
    trySquareTrue: 'A try square that is true, gap open at the front',
  },
  sources: {
    lawCosinesBoth: 'law of cosines in both halves of a parallelogram',
    selfCalibrationReversal: 'self-calibration: reversal',
    riseOverRun: 'rise over run',
    parallelogramLawD: 'parallelogram law: d₁² + d₂² = 2 (A² + B²)',
    frameMmMillimetre: '(424.76² − 423.76²) / (4 · 300²) = 848.52 / 360 000 = 0.002357',
    printedSquareMm: '(141.42² − 141.00²) / (4 · 99.85²) = 118.6164 / 39 880 = 0.002974',
    squareBothWays: '(0.30 ± 0.10) / 2 by hand; 0.2 in 100 is 0.8 in 400',
    sameSquareFrame: '0.2 in 100 is 0.8 in 400',
    squareTwoPhotos: '2 mm/m is 0.2 in 100 and 0.8 in 400',
    photosFrame: '2 mm/m is 0.2 in 100 and 0.8 in 400',
    trySquareMm: '0.30 / 200 = 1.5 mm/m, less the square’s own 1 mm/m',
    trySquareTrue: '0.05 mm in 100 mm is 0.1 mm in 200 mm',
  },
  orders: {
    leave: { glance: '✓ Leave it', sentence: 'Leave it: the axes are square enough.' },
    again: {
      glance: '⟳ Measure again, larger piece',
      sentence: 'Measure again before moving anything: whether it is square enough is too close to call.',
    },
    doNotFit: {
      glance: '⟳ Measure sides and diagonals',
      sentence: 'Measure again before moving anything: these sides and diagonals do not fit together.',
    },
    tooFine: {
      glance: '✓ Leave it',
      sentence: 'Leave it: it is out by less than a hand can set (0.1 mm at the end).',
    },
    bringBack: (a: { by: Amount; way: 'left' | 'right' }, p: Print) => ({
      glance: `${a.way === 'left' ? '←' : '→'} ${p.size(a.by)} · back of frame`,
      sentence: `Bring the back of the frame ${p.size(a.by)} to the ${sides[a.way]}, seen from above with the front towards you.`,
    }),
    bringEnd: (a: { by: Amount; way: Along }, p: Print) => ({
      glance: `${a.way === 'back' ? '↑' : '↓'} ${p.size(a.by)} · right end`,
      sentence: `Bring the right end of the beam ${a.way === 'back' ? 'back' : 'forward, towards you,'} by ${p.size(a.by)}, right as seen from the front.`,
    }),
  },
  steps: {
    squareTrue: 'The square itself is true as far as these readings tell.',
    squareOut: (a: { wider: boolean; by: Amount }, p: Print) =>
      `The square itself is ${a.wider ? 'wider' : 'narrower'} than 90° by ${p.size(a.by)}: write it on the square.`,
    skewed: (a: { skew: Skew | undefined }, p: Print) => skewed(a.skew, p),
    skewedOverBed: (a: { skew: Skew | undefined; onBed: Amount }, p: Print) =>
      `${skewed(a.skew, p)} Over the bed’s depth that is ${p.size(a.onBed)} sideways.`,
    noParallelogram: (a: { by: Amount; longer: boolean }, p: Print) =>
      `The diagonals are ${p.size(a.by)} ${a.longer ? 'longer' : 'shorter'} on the mean than those of any parallelogram with these sides.`,
    allSides:
      'A reading is wrong, or opposite sides differ in length: measure all four sides and both diagonals, each twice.',
    enterMeans:
      'Where opposite sides do differ, enter their means: the result is then the skew between the middle lines, and no one corner has just that angle.',
    slackenCorners:
      'Take the load off, stand the frame on a flat plate, and slacken the screws of the corners by half a turn, not more.',
    drawTogether: (a: { sharp: boolean; by: Amount; way: 'left' | 'right' }, p: Print) =>
      `Draw the corners ${a.sharp ? 'front left and back right' : 'back left and front right'} together (seen from above, front towards you), with a strap or a long clamp across them, until both diagonals are alike: the back goes ${p.size(a.by)} to the ${sides[a.way]}.`,
    tightenCrosswise:
      'Tighten crosswise, a little at a time, and measure the diagonals again before the last pull: tightening moves them.',
    nothingGives: 'See first that nothing gives: rails or rollers of the bed without play, uprights tight on the base.',
    shiftUpright: (a: { way: Along; back: Along; by: Amount }, p: Print) =>
      `Slacken the foot of the right upright, as seen from the front, shift it ${alongs[a.way]} by ${p.size(a.by)}, tighten; or the left one ${alongs[a.back]} by as much. The same is had by turning the bed’s rails on the base.`,
    climbsFreely:
      'If two screws lift the beam, see that it still climbs freely: uprights twisted against each other bind.',
    whatLetsAskew:
      'See first what lets a beam run askew: belts that pull unequally (Belt pair), a loose wheel or bearing (Wheel preload), a slipped pulley.',
    shiftCarriage: (a: { way: Along; back: Along; by: Amount }, p: Print) =>
      `With equal belts: slacken the screws between the beam and its right carriage, as seen from the front, bring the right end ${alongs[a.way]} by ${p.size(a.by)}, tighten; or the left end ${alongs[a.back]} by as much, or half at each.`,
    slipTooth:
      'Where a belt drives each end, the same is had by letting one belt slip by a tooth, or by turning one pulley on its shaft. Motors off.',
    pushByHand:
      'Push the beam by hand to the front and to the back: both ends should meet their stops together and run freely.',
    note: 'Note the reading; measure again after a belt, a wheel or the frame was touched.',
    largerPiece:
      'A piece twice as large halves the doubt; so does a finer tool. Take each reading twice, turned round in between.',
  },
  figure: {
    label: 'Plan, seen from above: the skewed shape over a true rectangle',
    square: 'square',
    beam: 'beam',
    front: 'front',
    scale: (factor: number) => (factor > 1 ? `skew drawn ${factor} times too large` : 'to scale'),
  },
};
export default en;
