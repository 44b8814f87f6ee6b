/** Words of the check “Belt pair”. */
import type { Amount, Print } from '../../../engine/order';
import { BELT_LABELS } from '../../../reference/belts';

type Belt = 'first' | 'second';
interface Change {
  readonly slacken: boolean;
  readonly moved: Belt;
  readonly note: Amount;
}

const names = { first: 'first', second: 'second' };
const teeth = (n: number) => `${n} ${n === 1 ? 'tooth' : 'teeth'}`;

const en = {
  inputs: {
    L_2: {
      hint: 'Tangent point to tangent point: from where the belt leaves one pulley, or its clamp, to where it meets the next. Where the carriage allows, make both spans alike.',
    },
    L_1: {
      hint: 'Tangent point to tangent point: from where the belt leaves one pulley, or its clamp, to where it meets the next.',
    },
    f_1: {
      label: 'Note of the first belt',
      hint: 'Pluck the middle softly across its flat side, nothing touching it. The lowest note counts.',
    },
    f_2: {
      label: 'Note of the second belt',
      hint: 'Pluck the middle softly across its flat side, nothing touching it. The lowest note counts.',
    },
    w_2: {
      label: 'Width of the second belt',
    },
    m_s: {
      label: 'Mass of the piece weighed',
    },
    l_s: {
      label: 'Length of the piece weighed',
    },
    m_s2: {
      label: 'Mass of the piece weighed, second belt',
    },
    l_s2: {
      label: 'Length of the piece weighed, second belt',
    },
    mu_b: {
      label: 'Mass per metre of the second belt',
    },
    EI_1: {
      hint: 'The check “Belt tension” finds it from the droop of an overhanging piece.',
    },
    EI_2: {
      label: 'Bending stiffness E·I of the second belt',
    },
    x: {
      label: 'Offset of the tensioners',
      hint: 'May be left empty. Once both pull alike, measure from one edge of the frame to each tensioned pulley. Enter the difference and pick which stands further out.',
    },
    x_d: {
      label: 'Offset that the machine has by design',
    },
    theta_w: {
      hint: 'Half round is 180°. Where a clamp is moved in line with the belt, enter 60°: it takes up as much as it travels.',
    },
    d_lim: {
      label: 'Difference allowed, of the mean tension',
    },
    w_0: {
      label: 'Width that the table’s values stand for',
    },
    m_0: {
      label: 'Mass per metre at that width',
    },
    m_02: {
      label: 'Mass per metre at that width, second belt',
    },
    T_b: {
      label: 'Least tension that seats the teeth, at that width',
    },
    T_a: {
      label: 'Allowable working tension, at that width',
    },
    T_b2: {
      label: 'Least tension that seats the teeth, second belt',
    },
    T_a2: {
      label: 'Allowable working tension, second belt',
    },
    EI_01: {
      label: 'Bending stiffness E·I, at that width',
      hint: 'A rough value: belts of one sort differ by half and more. The check “Belt tension” finds it from a droop.',
    },
    EI_02: {
      label: 'Bending stiffness E·I at that width, second belt',
    },
    chi_1: {
      label: 'How firmly the first span’s ends hold: 0 free, 1 held',
      hint: 'A belt on pulleys lies between; where, nobody can see. The doubt of the tension counts both.',
    },
    chi_2: {
      label: 'How firmly the second span’s ends hold: 0 free, 1 held',
    },
    epsilon_max: {
      label: 'Most stiffness ε for which the correction holds',
    },
  },
  choices: {
    belts: {
      label: 'The two belts',
      options: {
        same: 'are of one sort and width',
        different: 'differ in sort or width',
      },
    },
    belt: {
      hint: BELT_LABELS,
    },
    belt_2: {
      label: 'Sort of the second belt',
      options: {},
    },
    mass: {
      label: 'Mass of the belts',
      hint: 'For two belts of one sort the difference does not depend on it, only the tension itself does.',
      options: {
        weigh: 'weighed: a known length',
        table: 'from the table, by width',
        typed: 'known: per metre',
      },
    },
    ends: {
      label: 'Ends of the spans, and their stiffness',
      hint: 'Held ends raise the note far more than free ones, and that of a short span most.',
      options: {
        string: 'on pulleys: between free and held; stiffness from the table',
        between: 'on pulleys: between free and held; stiffness measured',
        pinned: 'free to swing; stiffness measured',
        clamped: 'held by clamps; stiffness measured',
      },
    },
  },
  results: {
    mu_1: 'Mass per metre, first belt',
    mu_2: 'Mass per metre, second belt',
    T_01: 'First belt, as of a string without stiffness',
    T_02: 'Second belt, as of a string without stiffness',
    EI_a: 'Bending stiffness of the first belt',
    EI_b: 'Bending stiffness of the second belt',
    T_p1: 'First belt, if its ends swing freely',
    T_p2: 'Second belt, if its ends swing freely',
    T_c1: 'First belt, if its ends are held',
    T_c2: 'Second belt, if its ends are held',
    B_1: 'Share of the stiffness, first belt',
    B_2: 'Share of the stiffness, second belt',
    beta_1: 'First belt’s stiffness against its note',
    beta_2: 'Second belt’s stiffness against its note',
    T_1: 'Tension of the first belt',
    T_2: 'Tension of the second belt',
    epsilon_1: 'First belt’s stiffness against its tension',
    epsilon_2: 'Second belt’s stiffness against its tension',
    d_T: 'Second belt tighter than the first by',
    f_2e: 'Note the second belt should have to match the first',
    f_1e: 'Note the first belt should have to match the second',
    T_aim: 'Tension to aim at',
    f_1a: 'Note of the first belt at that tension',
    f_2a: 'Note of the second belt at that tension',
    T_lo1: 'Least tension, first belt',
    T_hi1: 'Allowable tension, first belt',
    T_lo2: 'Least tension, second belt',
    T_hi2: 'Allowable tension, second belt',
    x_1: 'Travel of a tensioner that takes up one tooth',
    n: 'Teeth by which the second loop is longer, as measured',
    n_w: 'Whole teeth by which the second loop is longer',
    r_x: 'Offset that whole teeth leave',
  },
  limits: {
    d_T: 'Difference between the two belts',
    T_1: 'First belt between slack and overloaded',
    T_2: 'Second belt between slack and overloaded',
    epsilon_1: 'First belt’s stiffness small',
    epsilon_2: 'Second belt’s stiffness small',
  },
  cautions: {
    motorsOffUnplugged: 'Motors off and unplugged: a moving belt pulls a finger in and can crush it.',
    beltUnderTension:
      'A tight belt can whip into the face. Ease the tensioner before you undo a clamp, and hold what the belt carries.',
    blockUprightCarriage:
      'Block an upright carriage before you ease its belts: it drops and can crush a hand. Let hot parts cool first.',
  },
  proof:
    'Move the carriage through all its travel and back to the same place, pluck both again: the difference must stay within the limit. Then print or draw a square and compare its diagonals.',
  beware: {
    sameTensionSame:
      'The same tension is the same note only where the spans are alike: f₂ = f₁ · L₁ / L₂ for belts of one sort.',
    equalPlacesTensioners: 'Equal places of the tensioners are equal tension only where the loops are equally long.',
    suspectNoteWhere:
      'Suspect the note where one belt seems four times as tight as the other: a microphone took the octave for the note. Halve it, and pluck at the middle.',
    crossedBeltsMotor:
      'On crossed belts a motor that holds keeps the two apart: switch the motors off and push the carriage to and fro before reading.',
    leftOutStiffness:
      'Stiffness raises the note of the shorter span more. A belt on pulleys lies between free and held ends; each tension has the doubt between both.',
    offsetTeethTold:
      'Offset in teeth is told only where both pull alike: stretch of a soft belt looks like part of a tooth.',
    toothBeltClamp:
      'A tooth of belt at the clamp and a tooth on the motor pulley look the same here; on two drives with one shaft only the pulley’s tooth sets the gantry askew.',
    rangeCountsBelt: 'The range counts the belt at rest; what accelerating adds is in the check “Belt tension”.',
  },
  examples: {
    equalTensionUnlike: 'Equal tension, unlike spans: 80 Hz on 300 mm is 100 Hz on 240 mm',
    sameNoteBoth: 'The same note on both: the longer span is the tighter belt, by 44 %',
    teethShowMm: 'Two teeth show as 2 mm of tensioner at half a turn of wrap',
    quarterWrapTooth: 'A quarter of wrap: a tooth of 3 mm is 2.12 mm of tensioner',
    beltsDifferNine: 'Belts that differ: nine times the mass, a third of the note',
    shortSpansEnds: 'Short spans, ends held: counted, two belts that seemed 4.5 % apart are alike',
    sameEndsFree: 'The same with ends free to swing',
  },
  sources: {
    equalTensionUnlike: '80 × 300 / 240; 4 × 0.0078 × 0.3² × 80²',
    sameNoteBoth: 'tensions as 0.3² to 0.24², 0.09 to 0.0576: 2 × (0.0576 − 0.09) / 0.1476',
    teethShowMm: '2 mm / (2 × sin 90°) = 1 mm; 2.1 mm are 2 teeth and 0.1 mm',
    quarterWrapTooth: '3 mm / (2 × sin 45°) = 3 / √2',
    chapterNoteGoes: 'chapter 16: the note goes with one over the root of the mass',
    shortSpansEnds:
      'exact frequency of held beams under 20 N, E·I 5 × 10⁻⁵ N·m², by a root finder of a numerical library',
    sameEndsFree: '√((20 + π² · 5·10⁻⁵ / L²) / 0.008) / 2L',
    chapterWavesStretched: 'chapter 16, waves on a stretched string',
    equationBeamUnder: 'equation 8.20, beam under tension, pinned ends, as corrected in a published validation case',
    stiffStringHeld: 'stiff string with held ends, series to second order',
    seriesHeldStiff:
      'the series of a held stiff string, √T₀ = √T · (1 + 2ε + (4 + π²/2) ε²), solved for T (Morse, from memory)',
    massOverLength: 'mass over length of the piece weighed',
    toothIsPitch: 'one tooth is one pitch',
    betweenFreeHeld:
      'the ends of a span on pulleys hold more than hinges and less than clamps: between the two, all the way alike',
    entered: 'as entered',
    sortWidth: 'of one sort and width',
    differenceOverMean: 'difference over the mean of both',
    eachRunGrows: 'each of two runs grows by the travel times the sine of half the wrap: half a pitch at 180°',
    nearestWholeNumber: 'nearest whole number',
    difference: 'difference',
    exactFrequencyHeld: 'exact frequency of a held span: there the corrected tension is 0.5 % high',
    loopsEqualLength: 'two loops of equal length',
    allRowsBrought: 'all rows are brought to this width',
  },
  orders: {
    leave: { glance: '✓ Leave both tensioners', sentence: 'Leave both tensioners: the belts pull alike.' },
    longerLoop: (a: { longer: Belt; teeth: number }) => ({
      glance: `✓ Alike · ${teeth(a.teeth)} longer`,
      sentence: `Leave the tension: the belts pull alike. But the ${names[a.longer]} loop is ${teeth(a.teeth)} longer.`,
    }),
    again: {
      glance: '⟳ Measure again first',
      sentence: 'Leave both tensioners and measure again: whether the belts pull alike is too close to call.',
    },
    enough: {
      glance: '⟳ Measure again first',
      sentence: 'Leave both tensioners: the belts pull alike; whether they pull enough is too close to call.',
    },
    finerFirst: {
      glance: '⟳ Read finer first',
      sentence: 'The belts pull unlike or wrong, but these readings are too rough to set them by: read finer first.',
    },
    tooStiff: {
      glance: '⟳ Take longer spans',
      sentence: 'Leave both tensioners: a span is too stiff for its note to tell the tension.',
    },
    tuneBoth: (a: { first: Amount; second: Amount }, p: Print) => ({
      glance: `♪ First ${p(a.first)}, second ${p(a.second)}`,
      sentence: `Tune both: the first belt until it sounds ${p(a.first)}, the second until it sounds ${p(a.second)}; then they pull alike, and enough.`,
    }),
    even: (a: { tight: Belt; by: Amount } & Change, p: Print) => ({
      glance: `${a.slacken ? '−' : '+'} ${names[a.moved]} belt, to ${p(a.note)}`,
      sentence: `The ${names[a.tight]} belt pulls ${p.size(a.by)} harder: ${a.slacken ? 'slacken' : 'tighten'} the ${names[a.moved]} until it sounds ${p(a.note)}.`,
    }),
  },
  contradictions: {
    leastOverMost: (a: { least: Amount; most: Amount }, p: Print) =>
      `The least tension is ${p(a.least)} and the allowable one ${p(a.most)}. Which of the two is right?`,
  },
  steps: {
    pluckFirst: 'Pluck the first belt five times and take the middle note.',
    pluckSecond: 'Pluck the second belt five times and take the middle note.',
    measureFirstSpan: 'Measure the first belt’s span again; best bring the carriage where both spans are alike.',
    measureSecondSpan: 'Measure the second belt’s span again; best bring the carriage where both spans are alike.',
    weighBelt: 'Weigh a known length of the belt instead of taking the table’s mass.',
    weighEach: 'Weigh a known length of each belt instead of taking the table’s masses.',
    weighLonger: 'Weigh a longer piece, or on a finer scale.',
    weighForMass: 'Weigh a known length of the belt.',
    weighSecond: 'Weigh a known length of the second belt.',
    longerForEnds:
      'Choose longer spans: how firmly their ends hold is the weakest number here, and long spans depend on it least.',
    droopForStiffness:
      'Let a piece of the belt droop over an edge (Belt tension), choose “stiffness measured” above and enter it.',
    longerSpans: 'Choose longer spans: the bending stiffness is the weakest number here.',
    repeatFive: 'Repeat both readings five times and take the means.',
    offsetAgain: 'Measure the offset of the tensioners again once both pull alike: now part of it is stretch.',
    betweenTeeth: (a: { teeth: Amount }, p: Print) =>
      `The tensioners stand ${p.size(a.teeth)} teeth apart, which is no whole number: look for a clamp that slipped, a bent bracket or loops cut unlike.`,
    cannotTell: (a: { tooth: Amount }, p: Print) =>
      `How many teeth the tensioners stand apart cannot be told from this offset: one tooth is ${p(a.tooth)}. Measure it with a caliper.`,
    noTooth: 'No whole tooth lies between the two loops: leave the clamps.',
    drawThrough: (a: { longer: Belt; teeth: number }) =>
      `The ${names[a.longer]} belt’s loop is ${teeth(a.teeth)} longer. Slacken it, draw it ${teeth(a.teeth)} further through its clamp, tighten to the same note: the tensioners then stand level.`,
    bothLong: 'Bring the carriage where both free spans are long and much alike.',
    wouldBe: (a: { first: Amount; second: Amount }, p: Print) =>
      `As far as can be told, ${p(a.first)} on the first and ${p(a.second)} on the second would be right.`,
    oneAfterOther:
      'First the one, a little at a time, then the other, and move the carriage to and fro after each; then the first once more: on crossed belts each moves the other.',
    aLittle: (a: Change, p: Print) =>
      `${a.slacken ? 'Slacken' : 'Tighten'} the ${names[a.moved]} belt a little, move the carriage to and fro once, pluck again; stop at ${p(a.note)}. Then pluck the other again: on crossed belts each moves the other.`,
    notSameNote:
      'Equal tension is not the same note where the spans differ, nor the same place of the tensioners where the loops do.',
    writeDown:
      'Write both notes and the place of the carriage down, and pluck again after a week: new belts settle unlike.',
  },
  figure: {
    label: 'The two spans, their tensions, and the offset of their tensioners',
    names,
    span: (name: string, length: string) => `${name}: ${length}`,
    sounds: (note: string, alike: string) => `sounds ${note}, alike at ${alike}`,
    tensioners: 'tensioners,',
    inTeeth: 'in teeth',
    oneTooth: (offset: string) => `one tooth is ${offset} of tensioner`,
    second: (teeth: string) => `second ${teeth}`,
  },
};
export default en;
