/** Words of the check “Belt tension”. */
import type { Amount, Print } from '../../../engine/order';
import { BELT_LABELS } from '../../../reference/belts';

type Turn = 'clockwise' | 'anticlockwise';
interface Range {
  readonly aim: Amount;
  readonly low: Amount;
  readonly high: Amount;
}

type How = Turn | 'outwards' | 'inwards';
const hows: Readonly<Record<How, string>> = {
  clockwise: 'turn the tensioner’s screw clockwise, seen from its head,',
  anticlockwise: 'turn the tensioner’s screw anticlockwise, seen from its head,',
  outwards: 'slide the motor or idler outwards',
  inwards: 'slide the motor or idler inwards',
};
const arrows: Readonly<Record<How, string>> = { clockwise: '↻', anticlockwise: '↺', outwards: '⇥', inwards: '⇤' };
const why = (slack: boolean) => (slack ? 'The belt is too slack' : 'The belt is too tight');

const en = {
  inputs: {
    L_1: {
      hint: 'Tangent point to tangent point: from where the belt leaves one pulley, or its clamp, to where it meets the next. Bring the carriage where this is longest.',
    },
    L_2: {
      hint: 'Tangent point to tangent point: from where the belt leaves one pulley, or its clamp, to where it meets the next. Bring the carriage where this is longest.',
    },
    f: {
      label: 'Note of the plucked span',
      hint: 'Pluck the middle softly across its flat side, nothing touching it. The lowest note counts.',
    },
    F: {
      label: 'Force on the middle of the span',
      hint: 'Hook the scale round the middle and pull square to the belt.',
    },
    y: {
      label: 'Deflection of the middle',
      hint: 'Against a straightedge along the belt at rest. About a sixtieth of the span is usual.',
    },
    m_s: {
      label: 'Mass of the piece weighed',
      hint: 'Of the same belt. With a kitchen scale weigh several metres; a letter or jeweller’s scale does with one: type its ±.',
    },
    l_s: {
      label: 'Length of the piece weighed',
    },
    mu_1: {
      hint: 'As marked by its supplier, or as weighed before.',
    },
    EI: {
      hint: 'No table has it. Let a piece droop over an edge, then ask below for the E·I that gives the droop you see.',
    },
    l_o: {
      label: 'Overhang for finding E·I',
      hint: 'Flat side down, end free, without a curl. So short that it droops by a quarter of itself at most.',
    },
    M_2: {
      label: 'Mass that the second belt moves',
    },
    L_t1: {
      hint: 'All of it that stretches: round the pulleys, from one clamp to the other.',
    },
    L_t2: {
      label: 'Length of the second belt, clamp to clamp',
      hint: 'All of it that stretches: round the pulleys, from one clamp to the other.',
    },
    P_a: {
      label: 'Pitch of the tensioner’s screw',
      hint: 'May be left empty: then no turn is named, the reading tells where to stop.',
    },
    theta_w: {
      hint: 'Half round is 180°. Where a clamp is moved in line with the belt, enter 60°: it takes up as much as it travels.',
    },
    w_0: {
      label: 'Width that the table’s values stand for',
    },
    m_0: {
      label: 'Mass per metre at that width',
    },
    T_b: {
      label: 'Least tension that seats the teeth, at that width',
    },
    T_a: {
      label: 'Allowable working tension, at that width',
    },
    C_0: {
      label: 'Specific spring rate, at that width',
      hint: 'Force that would stretch it to double its length: a piece of length l has the stiffness C / l.',
    },
    EI_0: {
      label: 'Bending stiffness E·I, at that width',
      hint: 'A rough value: belts of one sort differ by half and more. The droop of a piece tells it better.',
    },
    chi: {
      label: 'How firmly the ends hold: 0 free, 1 held',
      hint: 'A belt on pulleys lies between; where, nobody can see. The doubt of the tension counts both.',
    },
    epsilon_max: {
      label: 'Most stiffness ε for which the correction holds',
    },
    s_max: {
      label: 'Most deflection, as a share of the span',
    },
  },
  choices: {
    by: {
      label: 'Tension read by',
      hint: 'The note disturbs the belt less; pressing needs no phone and no mass.',
      options: {
        note: 'the note of the plucked span',
        press: 'pressing its middle: a scale and a rule',
      },
    },
    which: {
      label: 'Belt on this machine',
      options: {
        first: 'the first',
        second: 'the second',
      },
    },
    belt: {
      hint: BELT_LABELS,
    },
    mass: {
      label: 'Mass of the belt',
      hint: 'Tables differ by a sixth. Weighing two metres of it settles that.',
      options: {
        weigh: 'weighed: a known length of it',
        table: 'from the table, by width',
        typed: 'known: per metre',
      },
    },
    ends: {
      label: 'Ends of the span, and its stiffness',
      hint: 'Held ends raise the note far more than free ones. Short and stiff spans depend on it most.',
      options: {
        string: 'on pulleys: between free and held; stiffness from the table',
        between: 'on pulleys: between free and held; stiffness measured',
        pinned: 'free to swing; stiffness measured',
        clamped: 'held by clamps; stiffness measured',
      },
    },
    adjuster: {
      label: 'Tensioner',
      options: {
        clockwise: 'a screw: clockwise tightens, seen from its head',
        anticlockwise: 'a screw: anticlockwise tightens, seen from its head',
        slide: 'no screw: motor or idler slides and is clamped',
      },
    },
  },
  results: {
    L: 'Free span',
    L_t: 'Length that stretches',
    C: 'Spring rate of this belt',
    mu: 'Mass per metre',
    EI_b: 'Bending stiffness of this belt',
    T_p: 'Tension if the ends swing freely',
    T_c: 'Tension if the ends are held',
    T_s: 'Tension while pressed, less what the stiffness carries',
    T_0: 'Tension as of a string without stiffness',
    B: 'Share of the stiffness',
    beta: 'Stiffness against the tension as read',
    T: 'Tension',
    epsilon: 'Stiffness against the tension',
    q_T: 'The string’s formula alone reads too high by',
    y_o: 'Droop of the overhang',
    T_h: 'Tension if the note heard is the octave of the true one',
    T_1: 'Tension by the rule for small deflections',
    T_y: 'Tension while pressed',
    dl: 'Length added by pressing',
    dT_y: 'Tension added by pressing',
    s: 'Deflection as a share of the span',
    q_y: 'Pressing adds, as a share of the tension',
    F_d: 'Force of accelerating',
    T_lo: 'Least tension',
    T_hi: 'Most tension',
    T_aim: 'Tension to aim at',
    f_lo: 'Note at the least tension',
    f_aim: 'Note to tune to',
    f_hi: 'Note at the most tension',
    F_lo: 'Force for this deflection at the least tension',
    F_aim: 'Force for this deflection to aim at',
    F_hi: 'Force for this deflection at the most tension',
    dT: 'Tension to add',
    dl_t: 'Belt to take up',
    dx: 'Travel of the tensioner, outwards',
    psi: 'Turn of its screw, tightening',
    F_s: 'Pull on the shaft of a pulley wrapped half round',
  },
  limits: {
    T: 'Tension between slack and overloaded',
    T_lo: 'Room between slack and overloaded',
    epsilon: 'Bending stiffness small against the tension',
    s: 'Pressed no further than needed',
  },
  cautions: {
    motorsOffUnplugged: 'Motors off and unplugged: a moving belt pulls a finger in and can crush it.',
    beltUnderTension:
      'A tight belt can whip into the face. Ease the tensioner before you undo a clamp, and hold what the belt carries.',
    blockUprightCarriage:
      'Block an upright carriage before you ease its belt: it drops and can crush a hand. Let hot parts cool first.',
  },
  proof:
    'Move the carriage to and fro by hand, bring it back to the same place and read again, the mean of five: the tension must lie in the range and stay there. Then print a circle: a flat where an axis turns round means it is still slack.',
  beware: {
    everyRelativeError:
      'Every relative error of note or span counts double, one of the mass once: a span read 2 % long makes the tension 4 % high.',
    microphoneHearsOctave:
      'A microphone that hears the octave shows four times the tension, one that halves the note a quarter. If the answer is off by four, suspect the note: halve or double it, and pluck at the middle.',
    leftOutStiffness:
      'A belt on pulleys lies between free and held ends: the tension is stated with the doubt between both. On a short span that is most of it; a longer one tells more.',
    pressedStiffBelt:
      'Pressed, a stiff belt carries part of the force itself: twice its stiffness ratio ε with free ends, four times with held ones. Both are counted.',
    runsLoopPull:
      'The runs of a loop pull alike only at rest and after the carriage was moved to and fro; friction of a tight guide holds the difference.',
    pullShaftTwice:
      'The pull on a shaft is twice the tension or nearly so. Hold it against the motor’s or bearing’s data sheet, above all where the pulley sits far out on the shaft.',
    beltHeldTight:
      'A belt held tight by a spring has the spring’s tension: another spring changes it, not the travel of the tensioner.',
    valuesRubberBelts:
      'The values of the belts in the table are common practice; belts of one name differ. Where the belt’s own data sheet states them, enter those.',
    narrowBeltsCarry:
      'Narrow belts carry less for their width than wide ones: cords at the cut edges are not whole loops.',
  },
  examples: {
    spanMmG: 'A span of 150 mm of an 8.4 g/m belt sounds 110 Hz',
    textbooksStringG: 'The textbook’s string: 6 g/m, 2 m, 19.6 N sounds 14.29 Hz',
    slackBeltMm: 'A slack belt, 6 mm wide: which notes it should have, and the turn of the screw',
    shortSpanEnds: 'A short span, ends held: the string’s formula alone reads 6.5 % high',
    shortSpanBetween: 'The same span on pulleys: the tension lies between both',
    sameSpanEnds: 'The same span, ends free to swing: hardly a difference',
    pressedNMm: 'Pressed by 3 N, 300 mm of belt give 10 mm: half of that tension is the pressing’s own',
  },
  sources: {
    spanMmG: '4 × 0.0084 × 0.15² × 110² = 9.1476',
    chapterWavesStretched: 'chapter 16, waves on a stretched string',
    slackBeltMm:
      '15.5 × 0.6 + 0.5; 43.7 × 0.6 − 0.5; √(9.8 / 0.0078) / 0.5; 12.885 N × 1000 mm / 18 600 N, half of it for the travel, over 0.5 mm a turn',
    shortSpanEnds: 'exact frequency of a held beam under 20 N, E·I 10⁻⁴ N·m², by a root finder of a numerical library',
    sameSpanEnds: 'π² × 10⁻⁴ / 0.15² = 0.043865 N on top of 20 N; 0.0084 × 9.80665 × 0.04⁴ / (8 × 10⁻⁴)',
    pressedNMm:
      '3 × 300 / 40; √(150² + 10²) = 150.332964; 18 600 N × 0.665927 mm / 1000 mm; ε = 2.2 × 10⁻⁴ takes 2 ε off',
    equationBeamUnder: 'equation 8.20, beam under tension, pinned ends, as corrected in a published validation case',
    stiffStringHeld: 'stiff string with held ends, series to second order',
    stiffnessOverLength: 'Hooke’s law: stiffness = C / length',
    balanceSmallDeflection: 'balance of forces at the point pressed, for a small deflection',
    betweenFreeHeld:
      'the ends of a span on pulleys hold more than hinges and less than clamps: between the two, all the way alike',
    beamPressedMiddle:
      'a tensioned beam pressed in its middle: its deflection is less by 2 ε of it with free ends, by 4 ε with held ones; to second order',
    shortSpanBetween: 'the tensions of both models for the same note, their middle and half their difference',
    balanceForcesPulley: 'balance of forces on a pulley that the belt wraps half round',
    firstBelts: 'the first belt’s',
    secondBelts: 'the second belt’s',
    massOverLength: 'mass over length of the piece weighed',
    entered: 'as entered',
    seriesHeldStiff:
      'the series of a held stiff string, √T₀ = √T · (1 + 2ε + (4 + π²/2) ε²), solved for T (Morse, from memory)',
    ratioLessOne: 'ratio less one',
    beamFixedEnd: 'beam fixed at one end, load spread evenly',
    halfNoteQuarter: 'half the note is a quarter of the tension',
    balanceForcesPoint: 'balance of forces at the point pressed',
    pythagorasSidesTriangle: 'Pythagoras: two sides of the triangle less the span',
    leftWhenFinger: 'what is left when the finger is taken away',
    deflectionOverSpan: 'deflection over span',
    ratio: 'ratio of the two',
    newtonsSecondLaw: 'Newton’s second law',
    leastKeptAccelerating:
      'the least tension by width, kept also on the run that accelerating relieves of all its force',
    mostLessAccelerating: 'the allowable working tension by width, less the force that accelerating adds to one run',
    difference: 'difference',
    eachRunGrows: 'each of two runs grows by the travel times the sine of half the wrap',
    pitchTurn: 'one pitch a turn',
    leastTensionBelow: 'least tension below the most',
    exactFrequencyHeld: 'exact frequency of a held span: there the corrected tension is 0.5 % high',
    allRowsBrought: 'all rows are brought to this width',
  },
  orders: {
    leave: (a: { tension: Amount }, p: Print) => ({
      glance: '✓ Leave the tensioner',
      sentence: `Leave the tensioner: ${p(a.tension)} is enough to hold and not too much.`,
    }),
    again: (a: { slack: boolean }) => ({
      glance: '⟳ Measure again first',
      sentence: `Leave the tensioner and measure again: whether the belt is too ${a.slack ? 'slack' : 'tight'} is too close to call.`,
    }),
    finerFirst: (a: { slack: boolean }) => ({
      glance: '⟳ Read finer first',
      sentence: `${why(a.slack)}, but these readings are too rough to set it by: read finer first.`,
    }),
    pressLess: {
      glance: '⟳ Press less far',
      sentence: 'Leave the tensioner: press less far and read again.',
    },
    tooStiff: {
      glance: '⟳ Take a longer span',
      sentence: 'Leave the tensioner: this span is too stiff for its note to tell the tension.',
    },
    noTension: {
      glance: '✕ No tension suits',
      sentence: 'Leave the tensioner: at this acceleration no tension suits this belt.',
    },
    lowerFirst: (a: { to: Amount }, p: Print) => ({
      glance: `▾ Acceleration, at most ${p(a.to)}`,
      sentence: `Lower the acceleration to ${p(a.to)}: at the present one no tension suits this belt.`,
    }),
    tune: (a: { slack: boolean; how: How; to: Amount }, p: Print) => ({
      glance: `${arrows[a.how]} to ${p(a.to)} · tensioner`,
      sentence: `${why(a.slack)}: ${hows[a.how]} until the plucked span sounds ${p(a.to)}.`,
    }),
    press: (a: { slack: boolean; how: How; to: Amount; deflection: Amount }, p: Print) => ({
      glance: `${arrows[a.how]} to ${p(a.to)} · tensioner`,
      sentence: `${why(a.slack)}: ${hows[a.how]} until ${p(a.to)} on the scale press its middle in by ${p(a.deflection)}.`,
    }),
  },
  contradictions: {
    leastOverMost: (a: { least: Amount; most: Amount }, p: Print) =>
      `The least tension is ${p(a.least)} and the allowable one ${p(a.most)}. Which of the two is right?`,
  },
  steps: {
    weighLength: 'Weigh a known length of this belt, two metres or more, instead of taking the table’s mass.',
    weighLonger: 'Weigh a longer piece, or on a finer scale.',
    measurePiece: 'Measure the piece weighed again, with a tape under light pull.',
    weighForMass: 'Weigh a known length of this belt: the mass per metre is the weakest number.',
    measureWidth: 'Measure the belt’s width with a caliper.',
    pluckFive: 'Pluck five times and take the middle note.',
    measureSpan: 'Measure the free span again, from tangent point to tangent point.',
    longerForEnds:
      'Bring the carriage where this span is longest: how firmly its ends hold is the weakest number here, and a long span depends on it least.',
    droopForStiffness:
      'Let a piece of this belt droop over an edge, choose “stiffness measured” above and enter it: the table’s bending stiffness is the weakest number here.',
    measureDroop:
      'Measure the droop again: the bending stiffness is the weakest number here. Or bring the carriage where the span is longer.',
    finerScale: 'Read the force with a finer scale, mean of five.',
    readDeflection: 'Read the deflection with a caliper against a straightedge.',
    pressLessFar: 'Press less far: the stretch that pressing adds is the weakest number here.',
    measureBelt: 'Measure the belt from clamp to clamp.',
    repeatFive: 'Repeat the reading five times and take the mean.',
    stretchesBelt: (a: { share: Amount }, p: Print) =>
      `A deflection of ${p(a.share)} of the span stretches the belt itself; a sixtieth of the span is usual.`,
    longestRun:
      'Bring the carriage where this run is longest, or take another run of the same belt: the pull is the same all along a belt at rest.',
    pressMiddle: 'Or press its middle and read the force.',
    wouldNeed: (a: { least: Amount; most: Amount }, p: Print) =>
      `To stay taut it would need ${p(a.least)}, and it may carry ${p(a.most)} at rest.`,
    lowerAcceleration: 'Lower the acceleration, take mass off, or fit a wider or stronger belt.',
    octaveHigh:
      'First make sure of the note: if it is the octave, half of it is right and the tension too. Pluck at the very middle, which hardly sounds the octave.',
    octaveLow:
      'First make sure of the note: if the true one is twice as high, the tension is right. Hum or a fan near half the note misleads: switch them off and pluck again.',
    pluckUntil: (a: Range, p: Print) =>
      `Pluck again after each step: aim at ${p(a.aim)}, anything from ${p(a.low)} to ${p(a.high)} will do.`,
    pressUntil: (a: Range & { deflection: Amount }, p: Print) =>
      `Press to the same ${p(a.deflection)} after each step: aim at ${p(a.aim)} on the scale, anything from ${p(a.low)} to ${p(a.high)} will do.`,
    startWith: (a: { slides: boolean; slack: boolean; by: Amount | undefined }, p: Print) =>
      `${a.slides ? 'Motors off. Ease the clamping screws until it just moves.' : 'Motors off.'} ${a.slack ? 'Tighten' : 'Slacken'} by ${a.by ? `about ${p(a.by)}` : a.slides ? 'a little' : 'an eighth of a turn'} first; then move the carriage to and fro once, so that all runs share.`,
    tuneTo: (a: { how: How; to: Amount; pressing: boolean }, p: Print) =>
      `Then ${hows[a.how]} until ${a.pressing ? `the same deflection takes ${p(a.to)}` : `the plucked span sounds ${p(a.to)}`}.`,
    lighterStronger: 'Less mass, or a wider or stronger belt, would do as well.',
    stretchAlone:
      'The travel rests on the belt’s stretch alone; frame and brackets give too, so the reading decides, not the travel.',
    note: (a: { by: 'note' | 'press' }) =>
      a.by === 'note'
        ? 'Write the note and the place of the carriage down; a new belt settles, so pluck again after a day and after a week.'
        : 'Write force, deflection and the place of the carriage down; a new belt settles, so press again after a day and after a week.',
  },
  figure: {
    label: 'The free span of the belt, and its tension against the range',
    pressed: (factor: number) => `span to scale, deflection drawn ${factor} times too large`,
    plucked: 'span to scale, swing drawn far too large',
    least: (tension: string) => `least ${tension}`,
    most: (tension: string) => `most ${tension}`,
  },
};
export default en;
