/** Words of the check “Squareness”. */
const en = {
  inputs: {
    d_1: {
      label: 'Diagonal, front left to back right',
      hint: 'As it lay or stands, seen from above, front towards you: mark the front left corner of a print before taking it off.',
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
      label: 'Side runs to the right of the blade',
    },
    m_1: {
      label: 'Blade on the left: side runs to its right',
    },
    m_2: {
      label: 'Turned over, blade on the right: side runs to its right',
      hint: 'The same face of the stock along X, the square flipped left for right; the same sign as before: to the right, going back, is +.',
    },
    l: {
      label: 'Length of blade between the two places',
    },
    i_e: {
      label: 'Error of the square, wider than 90° is +',
      hint: 'Blade on the left; with the blade on the right enter it with the other sign. A workshop square is good to some 0.05 mm per 100 mm; taken both ways round it shows its error itself.',
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
    switchOffUnplug: 'Switch off and unplug before hands go near beam, belts or screws.',
    supportBeamUpright: 'Support a beam or an upright before its screws are slackened: it can drop or tip.',
    letNozzleBed: 'Let nozzle and bed cool before a square is laid on the bed.',
  },
  proof:
    'Measure again in the same way, a print printed anew: both diagonals should be alike to within the tool, or the square’s gap gone. Measure a second piece turned by a quarter on the bed: a piece that warped tells another story each time.',
  beware: {
    differentDiagonalsAlone:
      'Two different diagonals alone do not prove skew: opposite sides of different length do it too. Hence the sides, and the check of d₁² + d₂² against them.',
    shrinkagePrintCancels:
      'Shrinkage of a print cancels here: it takes both diagonals and both sides alike. It does not cancel where the piece shrank unevenly, warped, or has thick corners: measure above the first layers, between flat faces.',
    xAgainstY:
      'This is X against Y. A beam that is higher at one end is Dual-Z sync’s matter; a leaning upright shows on a tall piece in the same way, front taken for bottom.',
  },
  examples: {
    frameMmMillimetre: 'A frame of 300 mm, one millimetre between the diagonals',
    printedSquareMm: 'A printed square of 100 mm, measured with a caliper',
    squareBothWays: 'The square both ways round: half of what it shows is its own',
    sameSquareFrame: 'The same square on the frame',
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
    trySquareMm: '0.30 / 200 = 1.5 mm/m, less the square’s own 1 mm/m',
    trySquareTrue: '0.05 mm in 100 mm is 0.11 mm in 220 mm',
  },
  orders: {},
  steps: {},
};
export default en;
