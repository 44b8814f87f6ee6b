/** Words of the check “Steps per length”. */
import { BELT_LABELS } from '../../../reference/belts';
import { orders, steps } from './en/orders';

export type { Scaling, Start, Suspect } from './en/orders';

const asSet = 'As set in the machine now; microsteps count as steps.';

const en = {
  inputs: {
    S_x: {
      label: 'Steps per length, X',
      hint: asSet,
    },
    S_y: {
      label: 'Steps per length, Y',
      hint: asSet,
    },
    S_z: {
      label: 'Steps per length, Z',
      hint: asSet,
    },
    S_e: {
      label: 'Steps per length, filament',
      hint: asSet,
    },
    l_c: {
      label: 'Length commanded',
      hint: 'One move, slow, away from where the last one came from. The longer, the less doubt.',
    },
    x_1: {
      label: 'Place before the move',
      hint: 'Of the carriage from a fixed stop, or 0 where the tool is set to zero there.',
    },
    x_2: {
      label: 'Place after the move',
      hint: 'From the same stop; the move goes away from it. With an indicator: touch a gauge of known length at both ends. Enter its length plus what the indicator shows beyond it, or less what is short.',
    },
    b: {
      label: 'Lost motion not taken up before the start',
      hint: 'None where the last move before the start went the same way. Else what the carriage gives when pushed to and fro with the motor holding.',
    },
    l_f: {
      label: 'Filament commanded',
      hint: 'Slowly, hot end at printing heat: fed cold, the gear grinds. Feed a little first, so that its slack is taken up.',
    },
    r_1: {
      label: 'Mark from the inlet, before',
      hint: 'A pen mark on the filament, farther than will be fed: what is left afterwards can then be measured.',
    },
    r_2: {
      label: 'Mark from the inlet, after',
    },
    r_3: {
      label: 'Mark after feeding it at print speed',
      hint: 'May be left empty. The same test from the same mark, at the flow that you print with: what is missing then is slip.',
    },
    N_k: {
      label: 'Ticks of the feeder meanwhile',
      hint: 'May be left empty. Knocks or clicks while it fed the length above: the phone counts them.',
    },
    D_o: {
      label: 'Outside size, as drawn',
    },
    m_o: {
      label: 'Outside size, measured',
      hint: 'Clear of the first layers, which are squeezed wide, and of the seam. Cold.',
    },
    D_i: {
      label: 'Inside size, as drawn',
    },
    m_i: {
      label: 'Inside size, measured',
      hint: 'Between flat walls of the same piece, along the same axis.',
    },
    l_1: {
      label: 'Short size, as drawn',
    },
    m_1: {
      label: 'Short size, measured',
      hint: 'Clear of the first layers, which are squeezed wide, and of the seam. Cold.',
    },
    l_2: {
      label: 'Long size, as drawn',
    },
    m_2: {
      label: 'Long size, measured',
    },
    alpha: {
      label: 'Expansion of the plastic',
    },
    T_g: {
      label: 'Glass transition: where it goes stiff',
    },
    T_r: {
      label: 'Temperature of the piece when measured',
    },
    s_m: {
      label: 'Shrinkage of the plastic',
      hint: 'Of a printed piece; a maker’s mould shrinkage is the next best. Half-crystalline plastics (polyamide, polypropylene) shrink 1 to 2 %.',
    },
    m_b: {
      label: 'Microsteps per full step',
    },
    m_e: {
      label: 'Microsteps per full step',
    },
    p: {
      hint: 'As marked. Over 50 teeth by rule: 100 mm, or 101.6 mm for an inch belt of 2.032 mm.',
    },
    P_h: {
      hint: 'Lead = pitch × starts: travel of the nut in one turn.',
    },
    d_g: {
      hint: 'A little less than over its teeth. A start only: the filament fed tells it better.',
    },
    i_e: {
      label: 'Gear ratio, motor turns per turn of the feed gear',
      hint: 'Teeth of the large wheel over teeth of the small one; 1 where the gear sits on the motor.',
    },
    T_a: {
      label: 'Allowable tension of the belt, at 10 mm width',
      hint: 'The most it can have been stretched by.',
    },
    C_0: {
      label: 'Specific spring rate of the belt, at 10 mm width',
      hint: 'Force that would stretch it to double its length. Both stand for one width: the stretch does not depend on it.',
    },
    q_p: {
      label: 'Tolerance of the belt’s pitch',
    },
    q_lim: {
      label: 'Most that the class of screw or belt explains',
      hint: 'Tables allow a screw a tenth of a percent and more. Farther than this from the counted number, a part is other than counted.',
    },
    e_lim: {
      label: 'Allowed error of travel',
    },
  },
  choices: {
    axis: {
      label: 'Steps of',
      options: {
        x: 'X, or the left motor, by a belt',
        y: 'Y, or the right motor, by a belt',
        z: 'Z, by a screw',
        zb: 'Z, by a belt and pinion',
        feed: 'the filament feed',
      },
    },
    by: {
      label: 'To go by',
      hint: 'A printed piece also shrinks; the drive’s own travel does not.',
      options: {
        parts: 'the parts alone: count',
        travel: 'the drive’s own travel, measured',
        print: 'printed pieces, measured',
      },
    },
    fed: {
      label: 'To go by',
      hint: 'How deep the gear bites is not known: only a measured length tells.',
      options: {
        parts: 'the parts alone: count',
        travel: 'filament fed, measured',
      },
    },
    belt: {
      hint: BELT_LABELS,
    },
    pair: {
      label: 'Sizes measured on the piece',
      hint: 'Both along this axis. One size alone cannot tell a wide line from a wrong scale.',
      options: {
        sides: 'an outside and an inside one',
        lengths: 'two outside ones, short and long',
      },
    },
    material: {
      label: 'Plastic of the piece',
      options: {
        pla: 'PLA',
        petg: 'PETG',
        abs: 'ABS',
        pc: 'polycarbonate',
        other: 'another: enter its shrinkage',
      },
    },
  },
  results: {
    S_0: 'Steps per length, set',
    S_c: 'Steps per length, counted from the parts',
    x_m: 'Travel of one microstep',
    q: 'Set above counted',
    l_d_travel: 'Travel of the drive',
    l_d_feed: 'Filament fed',
    c_travel: 'Moved above commanded',
    c_feed: 'Fed above commanded',
    S_n_travel: 'Steps per length that the travel asks for',
    S_n_feed: 'Steps per length that the filament asks for',
    q_n: 'Asked for above counted',
    q_m: 'Most that stretch and tolerance explain',
    p_e: 'Belt pitch that would explain it',
    P_e: 'Screw lead that would explain it',
    d_e: 'Feed gear: diameter where it grips, from the filament',
    s_f: 'Slip at print speed',
    l_k: 'Filament not fed, if each tick is the motor that falls back',
    c_t: 'Error of the piece in proportion',
    o: 'Constant part of an outside size',
    y: 'A wall stands out by',
    s: 'Shrinkage of the plastic',
    e_d: 'Left for the drive',
    k_s: 'Scale for pieces of this plastic',
  },
  limits: {
    c: 'Moved against commanded',
    c_feed: 'Fed against commanded',
    e_d: 'What shrinkage leaves for the drive',
    q: 'Set against counted from the parts',
    q_travel: 'Set against counted, the belt stretched',
  },
  cautions: {
    keepFingersCaliper:
      'Keep fingers and caliper out while the axis moves: a homing move can crush a finger. Measure only when it stands still.',
    filamentFedThrough:
      'The hot end is at printing heat: it burns, and what comes out as well. Keep clear of the nozzle.',
    switchOffUnplug:
      'Switch off and unplug before you touch a pulley, belt or plug. A motor’s plug pulled under power can destroy the driver.',
  },
  proof:
    'Command the longest move the machine has, both ways, and measure it against a rule or a gauge: it must agree within the limit. For the feed, mark and feed again. Then print the same piece once more and compare it with the drawing.',
  beware: {
    beltsPitchDoes:
      'A belt’s pitch does not change with the plastic. If the steps counted from the parts and the drive’s measured travel agree, leave the drive and scale the piece, per plastic.',
    stepsCorrectedPrinted:
      'Steps corrected by a printed piece carry that plastic’s shrinkage into every other one, and into moves that lay nothing down.',
    beltUnderN:
      'A belt under 20 N is longer by about 0.1 % than a slack one (6 mm, rubber with glass cord), and so is its pitch: set the tension before the steps.',
    lostMotionLooks:
      'Lost motion looks like a wrong scale on a short length and like none on a long one. Go away from the stop twice in the same direction and read at the second.',
    holesComeOut:
      'Holes come out smaller than the formula’s inside size: a round wall is laid on the inner side and cut into short chords. Measure flat walls.',
    firstLayersSqueezed:
      'The first layers are squeezed wide and a seam stands proud: measure above the one and beside the other.',
    filamentNumberFound:
      'Filament: a number found cold, or with the hot end off, leaves out the back pressure; one found at print speed hides slip. Find the steps slowly and hot, then lower what makes it slip: flow too high, nozzle too cold or clogged, the idler too soft or too tight.',
    shrinkageWorkedOut:
      'Shrinkage is worked out as the plain cooling from the glass transition. Fillers, thick pieces and half-crystalline plastics shrink otherwise: enter theirs.',
  },
  examples: {
    beltMmPitch: 'A belt of 2 mm pitch on 20 teeth, 16 microsteps: 80 steps per mm, and it moves as told',
    pulleyWasChanged: 'The pulley was changed from 16 to 20 teeth and the number left',
    steelRuleOver: 'By steel rule over 100 mm a tenth of a percent cannot be told',
    screwMmLead: 'A screw of 8 mm lead: 400 steps per mm',
    filamentMmTold: 'Filament: 100 mm told, 25 mm left of 120 mm',
    feederTicked: 'A feeder that ticked ten times and fed 8 % too little: no matter of steps',
    piecePlaOutside: 'A piece of PLA, outside and inside: it shrank, and its lines stand out',
    shortLongSize: 'A short and a long size: 0.08 mm and 0.32 mm short is 0.24 % and 0.03 mm',
  },
  sources: {
    beltMmPitch: '200 × 16 / (2 × 20) = 80; 1/80 mm = 12.5 µm',
    pulleyWasChanged: '20 / 16 = 1.25; 100 × 100 / 125 = 80',
    steelRuleOver: '2 × √2 × 0.5 mm / √3 / 100 mm = 0.8 %',
    screwMmLead: '200 × 16 / 8 = 400',
    filamentMmTold: '120 − 25 = 95; 128 × 100 / 95 = 134.7368; 1 − 90.25 / 95 = 5 %',
    feederTicked: '10 × 4 × 1.8° are a fifth of a turn; π × 11 mm / 5 = 6.91 mm',
    piecePlaOutside: '179.54 / 180 − 1; 99.86 − 100 × 0.99744444; 68 × 10⁻⁶ × 38; 0.99744444 / 0.997416 − 1',
    shortLongSize: '(119.68 − 19.92) / 100 − 1 = −0.24 %; 19.92 − 20 × 0.9976 = −0.032',
    fallsFourSteps: 'a motor that loses its step falls back by four full steps, or by a multiple',
    stepAngleOver: 'step angle: 360° over steps per turn',
    turnMovesPitch: 'one turn moves pitch × teeth',
    powerScrewsLead: 'power screws: lead, the travel in one turn',
    stepsSentStay: 'the steps sent stay the same: steps per length × length commanded = new steps × length moved',
    straightLineThrough: 'a straight line through two sizes: measured = drawn × (1 + error) + offset',
    chapterLinearExpansion: 'chapter 1, linear expansion',
    setAxis: 'as set for this axis',
    turnGearFeeds: 'one turn of the gear feeds its circumference',
    ratioLess: 'ratio less one',
    differencePlacesTook: 'difference of two places, and what took up the slack',
    wentMissingMarks: 'what went in is missing from the mark’s distance',
    shareSlowFeed: 'share of the slow feed that is missing',
    outsideSizeHas: 'an outside size has two walls, one at each end',
    entered: 'as entered',
    pieceDriveLaid: 'the piece is what the drive laid down, shrunk',
    stretchAndPitch:
      'Hooke’s law: tension over spring rate, the belt pulled as hard as it may be; and the tolerance of its pitch',
    reciprocal: 'reciprocal',
    expansionBelowGlass: 'expansion below the glass transition',
    glassTransition: 'glass transition',
    judgedBeltN:
      'judged: a belt at 20 N is some 0.1 % longer than slack, and tables allow a screw as much; a feed repeats to about 1 %',
  },
  orders,
  steps,
  figure: {
    label: 'The drive, and what it was told against what it did',
    turn: (travel: string) => `one turn: ${travel}`,
    counted: (number: string) => `counted: ${number}`,
    set: (number: string) => `set: ${number}`,
    told: (length: string) => `told ${length}`,
    drawn: (length: string) => `drawn ${length}`,
    bars: {
      outside: (length: string) => `outside ${length}`,
      inside: (length: string) => `inside ${length}`,
      short: (length: string) => `short ${length}`,
      long: (length: string) => `long ${length}`,
      fed: (length: string) => `fed ${length}`,
      moved: (length: string) => `moved ${length}`,
    },
    enlarged: (times: number) => `lengths to scale, differences drawn ${times} times too large`,
    toScale: 'lengths to scale',
  },
};
export default en;
