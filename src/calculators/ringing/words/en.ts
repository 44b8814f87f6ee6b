/** Words of the check “Ringing”. */
import type { Amount, Print } from '../../../engine/order';
import { BELT_LABELS } from '../../../reference/belts';

interface Corner {
  readonly kept: Amount;
  readonly high: Amount;
  readonly most: Amount;
}

const cornerRings = (a: Corner, p: Print) =>
  `The ${p(a.kept)} kept through the corner ring ${p(a.high)} high by themselves: lower it to ${p(a.most)}; no acceleration mends that.`;

const like = (a: { teeth: Amount | undefined; fullSteps: Amount | undefined }, p: Print) =>
  [
    ...(a.teeth ? [`the belt’s teeth (${p(a.teeth)})`] : []),
    ...(a.fullSteps ? [`four full steps of the motor (${p(a.fullSteps)})`] : []),
  ].join(' and like ');

const en = {
  inputs: {
    x_N: {
      label: 'Length over the ripples',
      hint: 'From one crest to another, several ripples on. Light from the side shows them; a pencil rubbed flat over the wall marks the crests.',
    },
    N: {
      label: 'Spaces between those two crests',
      hint: 'One less than the crests counted.',
    },
    P_w: {
      label: 'Spacing of the ripples',
      hint: 'From crest to crest. Type its ± behind it where you know it.',
    },
    v: {
      hint: 'Of that very wall, where the ripples are: not of the ramp, not of other walls. Outer walls are often set slower.',
    },
    x_0: {
      label: 'From the corner to where counting began',
      hint: 'Along the wall, after the corner. The first ripples lie in the ramp, closer together: leave them out.',
    },
    a: {
      hint: 'As set for that wall.',
    },
    theta_w: {
      label: 'Angle between wall and axis',
      hint: 'The axis that swings. 0 where the wall runs along it, as behind a plain corner of X and Y.',
    },
    x_N2: {
      label: 'Length over the ripples, second print',
    },
    N_2: {
      label: 'Spaces between those crests, second print',
    },
    P_w2: {
      label: 'Spacing of the ripples, second print',
    },
    v_2: {
      label: 'Speed of the second print',
      hint: 'The same wall at half the speed or less, or twice. Nothing else changed.',
    },
    n_h: {
      label: 'Ripples until they are half as high',
      hint: 'May be left empty. From the highest on; by eye, to half a ripple.',
    },
    v_c: {
      label: 'Speed kept through the corner',
      hint: 'What the axis has when the corner comes, and loses there at once.',
    },
    L_1: {
      label: 'Belt from the carriage to the motor pulley',
      hint: 'The straight run, the carriage where the ripples were printed.',
    },
    L_t1: {
      hint: 'All of it that stretches: round the pulleys, from one clamp to the other.',
    },
    w_0: {
      label: 'Width that the table’s values stand for',
    },
    C_0: {
      label: 'Specific spring rate, at that width',
      hint: 'Force that would stretch it to double its length: a piece of length l has the stiffness C / l.',
    },
    F: {
      label: 'Pull on the frame',
      hint: 'May be left empty. Level, along the axis, where its rail is held; machine on its usual table, motors off.',
    },
    y_f: {
      label: 'Deflection of the frame under it',
      hint: 'Dial indicator at the same height, its stand on the table beside the machine.',
    },
    M_f: {
      label: 'Mass that sways with the frame',
      hint: 'What stands above the soft place: frame top, gantry, spool if it hangs there.',
    },
    x_tol: {
      label: 'Ripple height allowed',
      hint: 'From the even wall to a crest. A gloss wall shows 0.01 mm, a dull one hides 0.03 mm.',
    },
    g_lim: {
      label: 'Spacing counts as another from',
    },
    kappa_lim: {
      label: 'Exponent from which it swings',
    },
  },
  choices: {
    by: {
      label: 'The ripples are',
      options: {
        count: 'measured over several with a caliper',
        direct: 'a spacing: from a photo, or typed',
      },
    },
    along: {
      label: 'Spacing taken',
      options: {
        wall: 'along the wall',
        axis: 'along the axis, the wall at an angle to it',
      },
    },
    test: {
      label: 'Printed at',
      hint: 'What swings keeps its time, so its ripples spread with the speed. A tooth or a step keeps its place.',
      options: {
        one: 'one speed',
        two: 'two speeds: tells swinging from a machine part',
      },
    },
    corner: {
      label: 'Round a corner the machine',
      hint: 'That speed drops at once, which rings by itself, whatever the acceleration.',
      options: {
        rest: 'comes to rest, or it is not known',
        kept: 'keeps a speed that is known',
      },
    },
    belt: {
      hint: BELT_LABELS,
    },
  },
  results: {
    P: 'Spacing of the ripples, as read',
    lambda: 'Spacing along the wall',
    lambda_a: 'Spacing along the axis',
    f: 'Frequency of the ripples',
    omega: 'Angular frequency',
    l_r: 'Length of the ramp up to this speed',
    P_2: 'Spacing of the second print, as read',
    lambda_2: 'Spacing along the wall, second print',
    f_2: 'Frequency, second print',
    kappa: 'Exponent: 1 swings, 0 is a machine part',
    g_p: 'Spacing apart from the belt’s teeth',
    x_f: 'Travel of four full steps, one turn of the motor’s field',
    g_s: 'Spacing apart from four full steps',
    a_s: 'Acceleration that keeps it low, started at once',
    a_q: 'Acceleration above which even a gentle start bends it as far',
    X: 'Most ripple at the present acceleration',
    n_a: 'Swings while the ramp lasts, from rest',
    a_1: 'Acceleration whose ramp lasts one swing',
    k_a: 'Next whole number of swings',
    a_k: 'Acceleration whose ramp lasts so many',
    v_m: 'Corner speed that alone rings as high',
    x_c: 'Ripple of the corner speed alone',
    delta: 'Logarithmic decrement',
    zeta: 'Share of critical damping',
    n_10: 'Ripples until a tenth is left',
    l_10: 'Length of wall that they take',
    k_r: 'Stiffness that the ripples speak for, if this mass swings',
    C: 'Spring rate of this belt',
    k_b: 'Stiffness of the belt, both runs',
    f_b: 'Frequency of the mass on its belt',
    r_b: 'Ripples against the belt’s frequency',
    k_f: 'Stiffness of the frame',
    f_f: 'Frequency of the frame',
    r_f: 'Ripples against the frame’s frequency',
    r_k: 'Stiffer, or lighter, by this factor would do as well',
  },
  limits: {
    a: 'Acceleration that keeps the ripples low',
    x_0: 'Counted beyond the ramp',
    g_p: 'Spaced unlike the belt’s teeth',
    g_s: 'Spaced unlike the motor’s steps',
    kappa: 'Spreads with the speed: it swings',
    x_c: 'Ripple of the corner speed alone',
  },
  cautions: {
    keepHandsOut: 'Keep hands out while it prints: it can crush a finger. Look at ripples on the finished part.',
    motorsOffUnplugged:
      'Motors off, unplugged, nozzle and bed cold before you pull the frame. Hold the machine on its table: pulled high up, it tips over.',
  },
  proof:
    'Print the same corner again with nothing else changed, light from the side: count the ripples and measure them over as many as before. They must be lower; after stiffening or lightening they must also be closer together.',
  beware: {
    speedWallRipples:
      'The speed must be that of the wall at the ripples. Short walls never reach the set speed, outer walls are often slower: print one long straight wall.',
    partsSwingOnce:
      'Two parts that swing at once beat: the ripples swell and fade along the wall, and no one spacing fits. Then X and Y, or belt and frame, want a print each.',
    xYSwing:
      'X and Y swing by themselves: a corner into X shows Y’s ripples as steps of width on the next wall, and the other way round. Measure both.',
    stifferBeltMore:
      'A stiffer belt is one of more or shorter cords. Tension hardly changes a belt’s stiffness, unless it is so slack that one run hangs loose: then half the stiffness is gone.',
    motorsMagneticField:
      'The motor’s magnetic field is a spring too, in line with the belt: a weak current softens it.',
    dampingShiftsFrequency:
      'Damping shifts the frequency by less than a hundredth while ripples need two or more to halve; that is left out.',
    rampLastsWhole:
      'A ramp that lasts whole swings cancels its own ripples only for that one speed and only as well as the frequency is known: a help, no remedy.',
    accelerationStartsSoftly:
      'Acceleration that starts softly rings less than worked out here. The limit is for a start at once, the worst case.',
  },
  examples: {
    fiveRipplesOver: 'Five ripples over 8 mm at 80 mm/s swing at 50 Hz',
    hzMmS: '40 Hz and 3000 mm/s²: nearly five times too much',
    ripplesMmApart: 'Ripples 2 mm apart: as far as the belt’s teeth, so one speed cannot tell',
    sameHalfSpeed: 'The same at half the speed: the spacing halves, so it swings',
    sameHalfSpeed2: 'The same at half the speed, spacing kept: a machine part',
    frameGivesMm:
      'A frame that gives 0.5 mm under 20 N with 4 kg on it: slower than the belt, and nearer to the ripples',
  },
  sources: {
    fiveRipplesOver: '80 / 1.6 = 50; 0.02 × (2π × 50)² / 2 = 986.96; 80² / 1800; 80 × 50 / 5 = 800',
    hzMmS: '50 / 1.25 = 40; 0.02 × (2π × 40)² / 2; ln 2 / 3; 3000 / 631.65',
    ripplesMmApart: '10 / 5 = 2 mm; the belt’s pitch is 2 mm',
    sameHalfSpeed: 'ln(1 / 2) / ln(50 / 100) = 1; 50 / 1 = 50',
    sameHalfSpeed2: 'ln(1) / ln(50 / 100) = 0',
    frameGivesMm: '√(40 000 / 4) / 2π; 18.6 / 0.2 + 18.6 / 0.8 = 116.25; √(116 250 / 0.5) / 2π; 1 / (2π × 16)',
    chapterFreeVibration: 'chapter 2, free vibration',
    sectionLogarithmicDecrement: 'section 2.7, logarithmic decrement',
    responseSuddenlyApplied: 'response to a suddenly applied force: twice the static one',
    pushOppositeWhole: 'a push and its opposite a whole period later leave nothing',
    springRateStiffness: 'Hooke’s law for both runs: stiffness = C / length of each',
    uniformAccelerationV: 'uniform acceleration: v² = 2 · a · l',
    frequencyOverOther: 'one frequency over the other',
    nozzleGoesRipple: 'the nozzle goes one ripple in one swing',
    projectionWallAxis: 'projection of the wall on the axis',
    lengthOverNumber: 'length over the number of spaces',
    read: 'as read',
    spacingGrowsSpeed: 'spacing grows as speed to this power: λ = v / f for what swings, constant for a part',
    logarithmRatio: 'logarithm of the ratio',
    fourFullSteps: 'four full steps make one electrical period',
    forceMassAcceleration: 'force = mass × acceleration against stiffness × deflection: deflection = a / ω²',
    rampTimeV: 'ramp time v / a times frequency',
    freeVibrationSudden: 'free vibration from a sudden speed: deflection = speed / ω',
    forceOverDeflection: 'force over deflection',
    forceOnceBends: 'a force at once bends twice as far as at rest',
    rampSpeedYet: 'in the ramp the speed is not yet that of the wall',
    midwayBetweenPart: 'midway between 0 for a part and 1 for what swings',
    allRowsBrought: 'all rows are brought to this width',
  },
  orders: {
    leave: (a: { upTo: Amount; allowed: Amount }, p: Print) => ({
      glance: '✓ Leave the acceleration',
      sentence: `Leave the acceleration: up to ${p(a.upTo)} the ripples stay within ${p(a.allowed)}.`,
    }),
    again: {
      glance: '⟳ Measure more ripples',
      sentence: 'Leave the acceleration and measure over more ripples: whether it is too high is too close to call.',
    },
    lookAtWall: {
      glance: '⟳ Which height is seen?',
      sentence:
        'Leave the acceleration: whether the ripples are too high depends on which height is seen on this wall. Say that closer first.',
    },
    lowerTo: (a: { from: Amount; to: Amount; times: Amount }, p: Print) => ({
      glance: `▾ Acceleration, at most ${p(a.to)}`,
      sentence: `Lower the acceleration from ${p(a.from)} to ${p(a.to)}, or make what swings ${p(a.times)} times as stiff or that much lighter.`,
    }),
    stiffen: (a: { times: Amount }, p: Print) => ({
      glance: `▲ Stiffen, ${p(a.times)} times`,
      sentence: `Make what swings ${p(a.times)} times as stiff, or that much lighter: no acceleration that can be set brings the ripples low enough.`,
    }),
    lowerCorner: (a: Corner, p: Print) => ({
      glance: `▾ Corners, at most ${p(a.most)}`,
      sentence: `Leave the acceleration, and lower the speed kept through corners from ${p(a.kept)} to ${p(a.most)}.`,
    }),
    cornerTooClose: {
      glance: '⟳ Measure more ripples',
      sentence: 'Leave the acceleration; whether the speed kept through corners is too high is too close to call.',
    },
    insideRamp: (a: { speed: Amount; ramp: Amount }, p: Print) => ({
      glance: '⟳ Count farther from corner',
      sentence: `Leave the acceleration and measure again: the ramp up to ${p(a.speed)} takes ${p(a.ramp)}, and counting began inside it, or nearly.`,
    }),
    keepSpacing: {
      glance: '✓ Leave it: a part',
      sentence:
        'Leave the acceleration: these ripples keep their spacing at another speed, so a part of the drive makes them.',
    },
    fartherApart: {
      glance: '⟳ Print farther apart speeds',
      sentence:
        'Leave the acceleration: whether the ripples spread with the speed is too close to call. Print at speeds farther apart.',
    },
    spacedLike: (a: { teeth: Amount | undefined; fullSteps: Amount | undefined }, p: Print) => ({
      glance: '⟳ Print at half speed',
      sentence: `Leave the acceleration for now: the ripples are spaced like ${like(a, p)}, which makes such ripples without swinging.`,
    }),
  },
  contradictions: {
    oneSpeed: (a: { first: Amount; second: Amount }, p: Print) =>
      `The two prints are at ${p(a.first)} and ${p(a.second)}, which is one speed. At which were they printed?`,
    runOverBelt: (a: { run: Amount; belt: Amount }, p: Print) =>
      `From carriage to pulley the belt is ${p(a.run)}, all of it ${p(a.belt)}. Which of the two is right?`,
  },
  steps: {
    wholeSwings: (a: { one: Amount; next: { readonly at: Amount; readonly swings: number } | undefined }, p: Print) =>
      `A ramp from rest that lasts whole swings cancels its own ripples: ${p(a.one)} lasts one at this speed, half of it two, a third three${a.next ? `; the next below the present one is ${p(a.next.at)}, for ${a.next.swings} of them` : ''}.`,
    dieAway: (a: { count: Amount; wall: Amount; damping: Amount }, p: Print) =>
      `Ripples are down to a tenth after ${p(a.count)} of them, ${p(a.wall)} of wall (damping ${p(a.damping)} of critical).`,
    ifKept: (a: { most: Amount }, p: Print) =>
      `If the machine keeps a speed through corners, more than ${p(a.most)} of it rings as high by itself.`,
    wouldSpread: (a: { first: Amount; at: Amount; second: Amount; atSecond: Amount }, p: Print) =>
      `${p(a.first)} at ${p(a.at)}, ${p(a.second)} at ${p(a.atSecond)}: what swings would spread with the speed.`,
    ridgePeriod: 'Give the spacing to “Ridge period”: it compares it with belt teeth, motor steps, pulley and idlers.',
    toothOrStep:
      'A tooth’s spacing: teeth that run over a smooth idler, a belt too tight, a pulley of another profile. Four full steps: motor current, or the driver’s microsteps.',
    twiceAsFast: 'One at least twice as fast as the other, and measure over more ripples.',
    closerInRamp: 'In the ramp the nozzle is slower than the wall’s speed, so the ripples there stand closer together.',
    beginFarther:
      'Begin to count farther from the corner. Where the ripples have died away by then, print the wall slower: at half the speed the ramp is a quarter as long.',
    halfSpeed:
      'Print the same wall at half the speed, choose “two speeds” above and enter both spacings. If the spacing halves, it swings; if it stays, it is that part.',
    doNotDie: 'Teeth and steps do not die away along the wall; swinging does.',
    cornerRings: (a: Corner, p: Print) => cornerRings(a, p),
    overMore: (a: Corner, p: Print) => `Measure over more ripples. ${cornerRings(a, p)}`,
    mayBeHigh: (a: { at: Amount; high: Amount; allowed: Amount }, p: Print) =>
      `At ${p(a.at)} the ripples may be ${p(a.high)} high; ${p(a.allowed)} is allowed.`,
    countBeyond: (a: { from: Amount }, p: Print) =>
      `The ramp is longer then: begin to count at ${p(a.from)} from the corner or farther.`,
    dependsOnRamp: (a: { quiet: Amount }, p: Print) =>
      `Up to ${p(a.quiet)} it depends on the ramp: where acceleration sets in softly, the present one may pass.`,
    evenSoft: (a: { quiet: Amount }, p: Print) => `Above ${p(a.quiet)} even a soft start bends it too far.`,
    countsDouble: (a: { now: Amount; keeps: Amount; allowed: Amount }, p: Print) =>
      `It is ${p(a.now)}, and ${p(a.keeps)} keeps the ripples at ${p(a.allowed)}. Every share of error in spacing or speed counts double.`,
    heightOfThisWall: (a: { keeps: Amount; allowed: Amount }, p: Print) =>
      `For ${p(a.allowed)} it would be ${p(a.keeps)}. Hold the wall against the light, and enter the ripple height allowed with its ±: on a gloss wall 0.01 mm shows, a dull one hides 0.03 mm.`,
    anotherCause:
      'If they are still seen higher than that, look for another cause: a speed kept through the corner, a loose part on the carriage, a flow that lags behind.',
    ripplesAre: (a: { heard: Amount; belt: Amount | undefined; frame: Amount | undefined }, p: Print) => {
      const parts = [
        ...(a.belt ? [`the mass on its belt alone would ring at ${p(a.belt)}`] : []),
        ...(a.frame ? [`the frame at ${p(a.frame)}`] : []),
      ].join(', ');
      return parts === '' ? `The ripples are ${p(a.heard)}.` : `The ripples are ${p(a.heard)}; ${parts}.`;
    },
    bothFit: 'Both fit. Brace the frame first: if the ripples then move closer together, it was the frame.',
    frame:
      'Frame: screw its corners tight, brace it with a diagonal or a panel, stand it on something heavy that does not rock.',
    belt: 'Belt: see that it is tight enough (Belt tension), then shorten it, or take a wider one or one with steel cord.',
    somethingSofter: (a: { than: 'belt' | 'frame'; frameUnknown: boolean }) =>
      `Something softer than ${a.than === 'belt' ? 'the belt' : 'the frame'} swings: a slack belt of which one run hangs loose, wheels without preload (Wheel preload), a motor or idler bracket${a.frameUnknown ? ', or the frame on its table. Pull the frame with a luggage scale and enter what it gives, to clear it or convict it.' : '.'}`,
    smallParts:
      'What swings is stiffer or lighter than that: look at small parts on the carriage, such as a fan, a cable loop, a hot end that can be wagged by hand.',
  },
  figure: {
    label: 'Ripples on the wall behind the corner, and the acceleration on a scale',
    ramp: (length: string) => `ramp ${length}`,
    corner: 'corner',
    notToScale: 'heights and fading not to scale',
    low: (acceleration: string) => `low to ${acceleration}`,
    high: (acceleration: string) => `high from ${acceleration}`,
  },
};
export default en;
