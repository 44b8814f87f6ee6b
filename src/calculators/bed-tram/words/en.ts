/** Words of the check “Bed tram”. */
import orders from './en/orders';

const FROM_ABOVE = 'Left as seen from above, front towards you.';
const SHARE = '1 if it stays, 0 if another does, else all alike';
const TWIST = '(x − x_c) (y − y_c) there, over the same at the first adjuster, the plane of the points taken out';

const en = {
  inputs: {
    b_a: {
      label: 'Adjusters from the bed’s edges',
      hint: 'From the edge of the bed inwards to the middle of an adjuster; below zero where it lies outside the bed.',
    },
    X_a: {
      label: 'First adjuster, from the left edge',
      hint: FROM_ABOVE,
    },
    Y_a: {
      label: 'First adjuster, from the front edge',
    },
    X_b: {
      label: 'Second adjuster, from the left edge',
      hint: FROM_ABOVE,
    },
    Y_b: {
      label: 'Second adjuster, from the front edge',
    },
    X_c: {
      label: 'Third adjuster, from the left edge',
      hint: FROM_ABOVE,
    },
    Y_c: {
      label: 'Third adjuster, from the front edge',
    },
    X_d: {
      label: 'Fourth adjuster, from the left edge',
      hint: FROM_ABOVE,
    },
    Y_d: {
      label: 'Fourth adjuster, from the front edge',
    },
    P_s: {
      label: 'Pitch of the adjusters',
      hint: 'Travel in one turn. A plain screw: its pitch (M3 0.5 mm, M4 0.7 mm). A Z screw: its lead.',
    },
    d_b: {
      label: 'Plate thickness',
      hint: 'Of what the adjusters hold, without a loose sheet that lies on it.',
    },
    k_s: {
      label: 'Spring stiffness',
      hint: 'Press it on a kitchen scale: force over how much shorter it gets.',
    },
    y_s: {
      label: 'Spring compression',
      hint: 'Free length less the length it has under the bed.',
    },
    E_b: {
      label: 'Young’s modulus of the plate',
    },
    nu_b: {
      label: 'Poisson’s ratio of the plate',
    },
    c_m: {
      label: 'Margin of the points',
      hint: 'For the keys over the table: how far inside the edges the outer points lie.',
    },
    k_t: {
      label: 'Share of the first layer allowed for tilt',
    },
    k_F: {
      label: 'Share of the first layer allowed for warp',
    },
    phi_h: {
      label: 'Least turn a hand can set',
    },
  },
  choices: {
    by: {
      label: 'What is read',
      hint: 'A feeler or paper under the nozzle, which stays at one Z, reads gaps: a wider gap is a lower bed. An indicator in place of the nozzle reads heights: its number grows where the bed is higher.',
      options: {
        gap: 'gaps under the nozzle, by feeler',
        height: 'heights of the bed, by indicator',
      },
    },
    layout: {
      label: 'Adjusters',
      options: {
        corners: 'four, at the corners',
        front: 'three: two in front, one behind',
        back: 'three: one in front, two behind',
        three: 'three, places typed in',
        four: 'four, places typed in',
      },
    },
    build: {
      label: 'What is turned',
      hint: 'Not sure? Turn one knob half a turn clockwise, seen from above, look whether the bed rises there, and pick “tried”.',
      options: {
        nut: 'nut or knob under the carrier; its screw hangs from the bed, spring between',
        screw: 'screw, from above; thread or held nut in the carrier',
        rest: 'nut on a standing screw; the bed rests on the nut',
        z: 'the Z screws themselves; their nuts carry the bed',
        raises: 'tried: clockwise, seen from above, raises the bed',
        lowers: 'tried: clockwise, seen from above, lowers the bed',
      },
    },
    thread: {
      label: 'Thread of the adjusters',
      options: {},
    },
    hand: {
      label: 'Its hand',
      options: {
        right: 'right-hand',
        left: 'left-hand',
      },
    },
    keep_3: {
      label: 'Adjuster to leave alone',
      hint: 'The first layer’s height is then set anew only once.',
      options: {
        1: 'the first',
        2: 'the second',
        3: 'the third',
        all: 'none: keep the mean height',
      },
    },
    keep_4: {
      label: 'Adjuster to leave alone',
      hint: 'Seen from above, front towards you: first front left, second front right, third back right, fourth back left.',
      options: {
        1: 'the first',
        2: 'the second',
        3: 'the third',
        4: 'the fourth',
        all: 'none: keep the mean height',
        fewest: 'as few to turn as can be',
      },
    },
    plate: {
      label: 'Plate that the adjusters hold',
      hint: 'A thin one twists, and each of four adjusters then sets its own corner; a stiff one follows three of them.',
      options: {
        aluminium: 'aluminium',
        glass: 'glass',
        steel: 'steel',
      },
    },
    judge: {
      label: 'To judge',
      hint: 'Three points always lie in a plane: they can show tilt, never warp.',
      options: {
        both: 'tilt, and what no screw can fix',
        tilt: 'tilt alone',
      },
    },
  },
  results: {
    i_x: 'Slope, left to right',
    t_x: 'Rise from left to right',
    t_y: 'Rise from front to back',
    t_p: 'Tilt, front left to back right',
    t_q: 'Tilt, back left to front right',
    t_lim: 'Tilt allowed',
    F_lim: 'Warp allowed',
    X_1: 'First adjuster, from left',
    Y_1: 'First adjuster, from front',
    X_2: 'Second adjuster, from left',
    Y_2: 'Second adjuster, from front',
    X_3: 'Third adjuster, from left',
    Y_3: 'Third adjuster, from front',
    X_4: 'Fourth adjuster, from left',
    Y_4: 'Fourth adjuster, from front',
    H_1: 'Bed at the first adjuster',
    H_2: 'Bed at the second adjuster',
    H_3: 'Bed at the third adjuster',
    H_4: 'Bed at the fourth adjuster',
    H_0: 'Height to bring all to',
    dh_m: 'Rise of the bed’s middle by it',
    psi_1: 'Turn at the first adjuster, to raise it',
    psi_2: 'Turn at the second adjuster, to raise it',
    psi_3: 'Turn at the third adjuster, to raise it',
    psi_4: 'Turn at the fourth adjuster, to raise it',
    D_b: 'Bending stiffness of the plate',
    K_b: 'Force at each corner that twists it, per height there',
    F_b: 'Force at each corner that takes out this twist',
    F_k: 'Force of one spring',
    h_m: 'Height of the plane at its centre',
    i_p: 'Slope along x, y going along with it',
    i_y: 'Slope, front to back',
    kappa: 'How y goes along with x',
    x_m: 'Centre of the points, from left',
    y_m: 'Centre of the points, from front',
    F: 'Warp: off the plane, top to bottom',
    F_r: 'What no screw can fix, top to bottom',
    tau: 'Twist that the adjusters set, at the first of them',
    v_0: 'Share of the twist in the bed’s middle',
    v_1: 'Share of the twist at the first adjuster',
    v_2: 'Share of the twist at the second adjuster',
    v_3: 'Share of the twist at the third adjuster',
    v_4: 'Share of the twist at the fourth adjuster',
    a_x: 'Adjusters apart, left to right',
    a_y: 'Adjusters apart, front to back',
    e_h: 'Highest point above the plane',
    e_l: 'Lowest point, from the plane',
    e_r: 'Root mean square from the plane',
    k_h: 'Point that lies highest',
    k_l: 'Point that lies lowest',
    w_1: 'Share of the first adjuster in the height kept',
    w_2: 'Share of the second adjuster in the height kept',
    w_3: 'Share of the third adjuster in the height kept',
    w_4: 'Share of the fourth adjuster in the height kept',
  },
  equations: {
    h_m: 'least Σ (z − h − i_p (x − x_m) − i_y (y − y_m + κ (x − x_m)))²',
    i_p: 'the same least squares',
    i_y: 'the same least squares',
    kappa: 'so chosen that i_p and i_y are uncorrelated',
    x_m: 'where height and slopes are uncorrelated',
    y_m: 'where height and slopes are uncorrelated',
    F: 'highest less lowest point from the plane',
    e_h: 'largest of z − plane',
    e_l: 'smallest of z − plane',
    e_r: '√(Σ (z − plane)² / n)',
    k_h: 'its line in the table',
    k_l: 'its line in the table',
    F_r: 'highest less lowest point from what the adjusters set: plane, or plane and twist',
    tau: 'least squares of what the plane leaves by (x − x_c) (y − y_c); 0 where the plate is too stiff for its springs',
    v_0: TWIST,
    v_1: TWIST,
    v_2: TWIST,
    v_3: TWIST,
    v_4: TWIST,
    a_x: 'largest less smallest of their x',
    a_y: 'largest less smallest of their y',
    w_1: SHARE,
    w_2: SHARE,
    w_3: SHARE,
    w_4: SHARE,
  },
  tables: {
    points: {
      label: 'Points of the bed',
      line: 'Point',
      hint: 'Bed at printing heat for a quarter of an hour. Wipe bed and nozzle: a drop of plastic reads as bed. Keep the nozzle too cool to ooze (150 °C or less, common practice). Front towards you: x runs from the left edge to the right, y from the front to the back. Any height may count as zero.',
      columns: {
        x: { head: 'x, from left', cell: (line: number) => `Point ${line}, from the left edge` },
        y: { head: 'y, from front', cell: (line: number) => `Point ${line}, from the front edge` },
        z: { head: 'Height or gap', cell: (line: number) => `Point ${line}, height or gap` },
      },
      presets: {
        adjusters: 'at the adjusters',
        two: '4 corners',
        three: '3 × 3',
        four: '4 × 4',
        five: '5 × 5',
      },
    },
  },
  limits: {
    t_p: 'Tilt, front left to back right',
    t_q: 'Tilt, back left to front right',
    F: 'Warp, off the plane',
  },
  cautions: {
    warmBedBurns:
      'Bed and nozzle are hot: both burn the hand. Reach in with the tool, not with a finger. Wear gloves. Let nothing loose touch a heater or its wires.',
    switchMotorsOff:
      'Switch the motors off before you turn a screw by hand. Keep fingers out from under the bed: it can drop and crush them.',
    liftNozzleClear: 'Lift the nozzle clear before you turn an adjuster: it scores a bed that rises under it.',
  },
  proof:
    'Measure the same points again: the tilt along both diagonals should now be within its limit, and what no screw can fix as before. Then print one layer over the whole bed.',
  beware: {
    doubtCountsTool:
      'The doubt counts what the tool can miss. Readings that do not repeat have more: take one point three times, lifting off in between.',
    leftManyPoints:
      'What is left of many points is never nothing, since each reading errs by itself: 25 readings with a feeler of ± 0.01 mm show some 0.02 mm on a bed that is dead flat.',
    bedTakenCold:
      'A bed read cold, or not yet soaked, tells of another bed than the one printed on: plates of two metals bow as they warm.',
    heightsUnderNozzle:
      'Heights under the nozzle also hold the bend of what carries the nozzle; a straight edge laid on the bed tells which it is.',
  },
  examples: {
    fivePointsThree: 'Five points, three adjusters counted from the first',
    fourCornersRising: 'Four corners: rising to the right, knobs on M4',
    gapsUnderNozzle: 'Gaps under the nozzle, a hollow in the middle: nothing to turn',
    threeZScrews: 'Three Z screws of 8 mm lead, all turned, mean height kept',
  },
  sources: {
    fivePointsThree:
      'normal equations by hand: slopes −0.875 and 0.375 mm/m, residuals 4, −6, 4, −6, 4 µm; the right adjuster lies 0.175 mm low, 0.35 turn of 0.5 mm',
    fourCornersRising:
      '1 mm/m over 140 mm between adjusters is 0.14 mm, by 0.7 mm a turn; the middle comes down half of it',
    gapsUnderNozzle:
      'mean gap 0.14 mm; the middle 0.16 mm below it, the corners 0.04 mm above: √((4·0.04² + 0.16²)/5) = 0.08',
    threeZScrews: 'mean height 0.1 mm: −0.1, +0.05, +0.05 mm at 8 mm a turn, 45° a millimetre',
    whereAdjusterSits: 'where an adjuster sits, from the edges of the bed',
    heightPlanePlace: 'height of a plane at a place',
    screwThreadsTurn: 'vocabulary of screw threads: one turn travels one lead',
    elasticConstants:
      'aluminium 70 GPa and 0.3 (EN 1999-1-1, 3.2.5), steel 210 GPa and 0.3 (EN 1993-1-1, 3.2.6), soda-lime glass 70 GPa and 0.2 (EN 572-1, table of properties)',
    cornerForce:
      'articles 4 and 22: D, and the force at a corner 2 M_xy = 2 D (1 − ν) ∂²w/∂x∂y; with w = 4 τ x y / (a_x a_y)',
    stiffnessTwist: 'stiffness × twist',
    springForce: 'stiffness × how far it is pressed together',
    twistLeastSquares: 'least squares of x y on what the plane leaves',
    spanAdjusters: 'rectangle that the adjusters span',
    riseSlopeRun: 'rise = slope × run',
    fittedPlaneAlong: 'the fitted plane along x alone',
    sectionLeastSquares: 'section 5.3, least squares by an orthogonal basis',
    covarianceCoefficientsTaken:
      'covariance of the coefficients taken apart as L D Lᵀ, so that none moves with another',
    clauseDeviationReference: 'clause 3: deviation from the reference plane',
    whichAdjusterStays: 'which adjuster stays, or all alike',
  },
  ...orders,
};
export default en;
