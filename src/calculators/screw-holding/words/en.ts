/** Words of the check “Screw holding”. */
import type { Amount, Print } from '../../../engine/order';

type Side = 'left' | 'right';
const sides = { left: 'left', right: 'right' };
const places = { nut: 'beside the nut', midway: 'midway between the screws', eachNut: 'beside each nut in turn' };

const en = {
  inputs: {
    M_z: {
      label: 'Mass that the Z drive carries',
      hint: 'Gantry with its carriage, or bed with a print on it. Motors off, lift it clear with a luggage scale, screws uncoupled.',
    },
    M: {
      hint: 'The carriage alone; it counts in the mass carried as well.',
    },
    x: {
      label: 'Carriage from the middle',
      hint: 'Where it stands when the motors go off: the nearer screw carries more.',
    },
    n_z: {
      label: 'Screws that share the load',
    },
    k_u: {
      label: 'Fullest screw’s load over the mean',
    },
    P_h: {
      hint: 'Lead = pitch × starts: travel of the nut in one turn.',
    },
    P: {
      label: 'Pitch of the thread',
      hint: 'From groove to the next groove.',
    },
    d: {
      label: 'Outer diameter of the screw',
    },
    a_c: {
      label: 'Crest clearance of the thread',
    },
    d_k: {
      hint: 'At the bottom of the thread.',
    },
    alpha: {
      label: 'Half angle of the thread’s flanks',
      hint: '15° trapezoidal, 14.5° Acme, 0° square.',
    },
    mu: {
      label: 'Friction in the thread, from rest',
      hint: 'To have your own: measure the torque that just raises the load, and ask the other way round which friction gives it.',
    },
    eta_b: {
      label: 'Efficiency of the ball screw',
    },
    T_d: {
      label: 'Detent torque of a motor without current',
      hint: 'From its data sheet. Or a thread round the pulley, pulled until the bare motor clicks on: force × radius. 0 counts on none.',
    },
    T_b: {
      label: 'Drag of bearings and seals at one screw',
      hint: 'Without load and without motor.',
    },
    mu_c: {
      label: 'Friction of the thrust bearing or collar',
      hint: 'About 0.003 for balls, 0.15 for a plain washer or a screw standing on its end.',
    },
    d_c: {
      label: 'Mean diameter of that bearing',
    },
    m_lim: {
      label: 'Least margin wanted',
    },
    F_x: {
      label: 'Most pull that scale and frame should bear',
    },
    L: {
      hint: 'Between the places that hold it in the machine; to the end where the top is free.',
    },
    tau_h: {
      hint: 'From its data sheet, at the rated current.',
    },
    k_I: {
      label: 'Current that the driver gives, of the rated one',
    },
    m_bl: {
      label: 'Least margin against buckling',
    },
    v: {
      label: 'Fastest move of the Z drive',
    },
    k_n: {
      label: 'Share of the critical speed allowed',
    },
    K: {
      label: 'End factor for buckling',
    },
    k_1: {
      label: 'End factor for whirling',
    },
    E: {
      label: 'Young’s modulus of the screw',
    },
    R_e: {
      label: 'Yield strength of the screw',
    },
    rho: {
      label: 'Density of the screw',
    },
  },
  choices: {
    screw: {
      label: 'Screw',
      hint: 'The number after × is the lead: travel in one turn. P in brackets is the pitch between neighbouring grooves.',
      options: {
        'tr8x1.5': 'Tr 8 × 1.5',
        tr8x2: 'Tr 8 × 2',
        tr8x4: 'Tr 8 × 4 (P2), 2 starts',
        tr8x8: 'Tr 8 × 8 (P2), 4 starts',
        tr10x2: 'Tr 10 × 2',
        tr10x3: 'Tr 10 × 3',
        tr10x4: 'Tr 10 × 4 (P2), 2 starts',
        tr12x3: 'Tr 12 × 3',
        tr12x6: 'Tr 12 × 6 (P3), 2 starts',
        tr16x4: 'Tr 16 × 4',
        acme: 'Acme 3/8-12; type others',
        own: 'trapezoidal, core measured',
        ball: 'ball screw',
      },
    },
    pair: {
      label: 'Nut on steel screw',
      options: {
        'bronze-greased': 'bronze or brass, greased or oiled',
        'bronze-dry': 'bronze or brass, dry',
        polyacetal: 'polyoxymethylene, dry',
        filled: 'plastic with lubricant in it',
        steel: 'steel, oiled',
      },
    },
    screws: {
      label: 'Carried by',
      options: {
        one: 'one screw',
        two: 'two screws',
        more: 'three or more, a motor each',
      },
    },
    side: {
      label: 'Carriage stands towards',
      hint: 'As seen from the front of the machine.',
      options: {
        left: 'the left',
        right: 'the right',
      },
    },
    ends: {
      hint: 'Clamped true: a rigid coupling on the motor’s shaft, or a pair of bearings. A flexible coupling counts as a bearing.',
    },
  },
  results: {
    F: 'Weight on the screw that lets go first',
    F_2: 'Weight on the other screw',
    n_s: 'Starts',
    d_2: 'Pitch diameter',
    d_3: 'Core diameter',
    lambda: 'Lead angle',
    mu_l: 'Friction at which the thread just locks',
    m_t_marginThreadAlone: 'Margin of the thread alone',
    m_t_marginBallScrew: 'Margin of the ball screw alone',
    T_R_torqueRaiseThread: 'Torque to raise, thread alone',
    T_R_torqueRaiseBall: 'Torque to raise, ball screw alone',
    T_L_torqueLowerThread: 'Torque to lower, thread alone (below zero: it runs down)',
    T_L_torqueLowerBall: 'Torque to lower, ball screw alone (below zero: it runs down)',
    T_c: 'Torque of the thrust bearing or collar',
    T_u: 'Torque to raise, from rest',
    T_n: 'Torque to lower, motor uncoupled',
    eta: 'Efficiency raising, thread alone',
    eta_s: 'The same as of a square thread, a cross-check',
    eta_c: 'Efficiency raising, with the collar',
    T_m: 'The motor’s detent torque at one screw',
    T_1: 'Torque that counts as a margin of one',
    m_p: 'Margin of screw and thrust bearing',
    m: 'Margin with everything that holds',
    m_2: 'Margin at the other screw',
    T_k: 'Brake torque wanting at a screw (below zero: to spare)',
    F_m: 'Weight on a screw with the margin wanted (below zero: any)',
    P_n: 'Lead with the margin wanted, thread alone',
    F_p: 'Pull down for the trial (below zero: no pull tells)',
    T_t: 'Torque on the screw for the trial',
    h_e: 'A side that slipped comes back out by this, or a multiple',
    F_s: 'Push of the screw when the motor stalls',
    I: 'Second moment of area',
    s: 'Slenderness',
    r_s: 'Slenderness over that at which Euler takes over from Johnson',
    F_E: 'Buckling load after Euler',
    sigma: 'Buckling stress, Euler or Johnson',
    F_b: 'Buckling load',
    m_b: 'Margin against buckling',
    n: 'Turning at the fastest move',
    n_c: 'Critical speed, without a margin',
    n_m: 'Fastest turning, with the margin',
    v_m: 'Fastest move, with the margin',
  },
  limits: {
    m: 'Margin against running down, motors off',
    m_b: 'Margin against buckling when a motor stalls',
    n: 'Turning below the critical speed',
  },
  cautions: {
    gantryBedMay:
      'The gantry or bed can fall and crush a hand the moment the current goes. Put blocks under it first, whatever the numbers say.',
    keepHandsOther: 'Keep both hands out from under it, and off nuts and screws: a falling gantry turns them.',
    trialLetHave:
      'For the trial leave a finger’s breadth to fall, onto blocks, never onto a hand. Pull by a cord, from beside it. Hot end and bed cold.',
    fallingLoadMakes:
      'A falling gantry makes current in the motors and can destroy the board. Never let it run down freely. Unplug motors with the power off only.',
  },
  proof:
    'Gantry a finger’s breadth above blocks, a pen line on each coupling and its mount. Motors off for an hour, a fan or a door slammed now and then; then the trial again, as told. The pen lines must still meet. Repeat after every cleaning, greasing or new nut.',
  beware: {
    marginPromiseFriction:
      'A margin is no promise. Friction of threads scatters by a third and more, falls with grease and wear, and vibration can let go of a thread that stands still by the numbers.',
    frictionRestOnce: 'The friction is that from rest. Once it moves, friction is less: what has begun to run runs on.',
    motorsIdleTorque:
      'A motor’s detent torque is felt as steps; it holds only up to its peak, and pulling the load from one step to the next costs up to half a step of height each time.',
    withoutCurrentMotor:
      'Without current a motor goes to its nearest full step: even a gantry that holds can move by up to half a step, two motors not alike.',
    factorsCriticalSpeed:
      'Printed factors of critical speed often hold a margin already, others do not. Here the margin is taken once, and shown.',
    bucklingCountsOnly:
      'Buckling counts only a screw that is pushed. One that hangs from a bearing at the top is pulled by the load, and pushed when the gantry is driven down onto something.',
    pitchesMmMm:
      'Pitches of 2 mm on 8 mm are not in the list of ISO 2902; their limits are those of neighbours, and screws differ. The core decides about buckling: measure it.',
    efficiencyWithoutCollar:
      'Efficiency with and without collar differ, and tables by the square thread’s formula read a few percent high.',
  },
  examples: {
    squareThreadCollar: 'A square thread with a collar',
    fourStartsMm: 'Four starts on 8 mm, two motors: the thread does not lock, the near side goes first',
    startMmMotor: 'One start on 8 mm, one motor by a belt: locks by the thread alone',
    ballScrewRuns: 'A ball screw of 90 %: runs down, three motors',
    coreMeasuredBuckling: 'Core measured, buckling and whirling of a long thin screw',
  },
  sources: {
    exampleTenthLoad: 'example 8-1, at a tenth of its load',
    fourStartsMm: '1.125 and 0.875 kg · 9.80665; tan λ = 8/(7 π); 0.15/0.3514; 7.2/360 of 8 mm',
    startMmMotor: 'tan λ = 2/(7 π), times cos 15°; 0.15/0.0878',
    ballScrewRuns: '9.80665 · 4/(2 π) = 6.2430; over 0.9; times 2 − 1/0.9; 1/0.9 − 1',
    coreMeasuredBuckling: 'π² · 206 GPa · 44.918 mm⁴ / (400 mm)²; first bending note of a pinned round bar, 69.15 Hz',
    clauseBasicDimensions: 'clause 5, basic dimensions',
    sectionMechanicsPower: 'section 8-2, mechanics of power screws',
    chapterTorqueAcme: 'chapter 17, torque of Acme screws, example 17-1',
    ballScrewsForward: 'work of one turn, the same friction lost both ways: driven back, 2 − 1/η',
    elasticStabilityBars: 'elastic stability of bars',
    eulerJB: 'Euler and J. B. Johnson columns',
    singleSpanBeams: 'single-span beams',
    weight: 'weight',
    balanceMomentsAbout: 'balance of moments about the other screw',
    lockingConditionTan: 'the locking condition μ > tan λ · cos α with the other torques counted as friction',
    beltMakesScrews: 'a belt makes two screws turn as one',
    meanShareTimes: 'mean share times unevenness',
    designationLeadPitch: 'designation: lead and pitch',
    measured: 'as measured',
    blockOnSlope: 'a block pushed up a slope, flat flanks',
    pullGrowsFriction:
      'friction of thread and collar grows with the pull: m_p + (m_lim − m_p) · F/(F + F_p) = 1, the edge of creeping',
    torqueOverDrive: 'what turns a screw with the margin wanted: that margin less one, times the torque of its load',
    torqueThroughGearing: 'torque through the gearing',
    motorScrews: 'one motor, two screws',
    phaseMotorFour:
      'two-phase motor: four full steps are one electrical turn, so after slipping more than two it comes back a whole one out',
    energyTurnTimes: 'energy of one turn times efficiency',
    bucklingLoadOver: 'buckling load over push',
    leadTurn: 'one lead a turn',
    basicProfileCrest: 'basic profile and crest clearance',
    elasticStabilityBars2: 'elastic stability of bars, end factors',
    rollingBearingsFriction:
      'a rolling bearing’s friction of 0.001 to 0.005 at its mean diameter (handbooks, from memory)',
    chapterFrictionThreaded: 'chapter 8, friction of threaded pairs',
    singleSpanBeams2: 'single-span beams, first root squared',
    moduliElasticitySteels: 'moduli of elasticity of steels',
    tablesHotRolled: 'tables of hot-rolled, cold-drawn and stainless steels',
    densitySteels: 'density of steels',
  },
  orders: {
    leave: (a: { margin: Amount }, p: Print) => ({
      glance: '✓ Leave the screws',
      sentence: `Leave the screws as they are: the gantry should stay, at a margin of ${p(a.margin)}.`,
    }),
    smallMargin: (a: { margin: Amount; wanted: Amount }, p: Print) => ({
      glance: '⚠ Support the gantry',
      sentence: `Support the gantry before switching off: it holds by a margin of only ${p(a.margin)}, wanted ${p(a.wanted)}.`,
    }),
    runsDown: (a: { margin: Amount }, p: Print) => ({
      glance: '⚠ Support the gantry',
      sentence: `Support the gantry before switching off: with the motors off it runs down, at a margin of ${p(a.margin)}.`,
    }),
    tooClose: (a: { margin: Amount; wanted: Amount }, p: Print) => ({
      glance: '⚠ Support the gantry',
      sentence: `Support the gantry for now: the margin, ${p(a.margin)}, is too close to the ${p(a.wanted)} wanted.`,
    }),
    setCurrent: (a: { certain: boolean; push: Amount; buckles: Amount; to: Amount }, p: Print) => ({
      glance: `▾ Motor’s current to ${p(a.to)}`,
      sentence: `Leave the nut; ${a.certain ? 'lower' : 'better lower'} the motor’s current to ${p(a.to)} of the rated one: stalled, it pushes with ${p(a.push)}, and the screw buckles at ${p(a.buckles)}.`,
    }),
    stiffen: (a: { certain: boolean; push: Amount; buckles: Amount }, p: Print) => ({
      glance: '⟂ Hold the ends truer',
      sentence: `${a.certain ? 'Hold' : 'Better hold'} the screw’s ends truer, or fit a thicker one: stalled, the motor pushes with ${p(a.push)}, the screw buckles at ${p(a.buckles)}, and no current that still lifts is low enough.`,
    }),
    noSpeed: {
      glance: '⟂ Hold the ends truer',
      sentence: 'Hold the screw’s ends truer, or fit a thicker one: it would whirl at any speed that can be set.',
    },
    slower: (a: { certain: boolean; from: Amount; to: Amount }, p: Print) => ({
      glance: `▾ Z at most ${p(a.to)}`,
      sentence: `${a.certain ? 'Lower' : 'Better lower'} the fastest Z move from ${p(a.from)} to ${p(a.to)}: the screw would whirl.`,
    }),
  },
  steps: {
    sinkApart: (a: { step: Amount }, p: Print) =>
      `Two motors sink each for itself. A side that has slipped by more than half of ${p(a.step)} comes back that much out, or a multiple: level the gantry anew before the next print.`,
    slideCarriage: (
      a: {
        by: Amount;
        towards: Side;
        near: Side;
        load: Amount;
        other: Amount;
        margin: Amount;
        otherMargin: Amount;
      },
      p: Print,
    ) =>
      `Slide the carriage ${p(a.by)} to the ${sides[a.towards]}, seen from the front, to the middle, before switching off: the ${sides[a.near]} screw carries ${p(a.load)}, the other ${p(a.other)}, so the ${sides[a.near]} side lets go first (margins ${p(a.margin)} and ${p(a.otherMargin)}).`,
    park: 'Before every switching-off, drive the gantry down onto blocks or its rest, low, so that it cannot fall. In pauses keep the motors’ holding current on.',
    grease:
      'Never count on dry or dirty thread to hold. With the load on a support, clean it and give it the same thin grease as before, then measure again: fresh grease lowers the margin, and so does shaking.',
    brake: (a: { torque: Amount; wanted: Amount }, p: Print) =>
      `Brake: one that closes without current on each screw, ${p(a.torque)} or more, brings the margin to ${p(a.wanted)}.`,
    counterweight: (a: { most: Amount | undefined; load: Amount }, p: Print) =>
      `Counterweight or constant-force spring: leave at most ${a.most ? p(a.most) : 'none'} of the ${p(a.load)} on the screw; guard it, and never hang it by the cable.`,
    ballScrew: 'A ball screw hardly ever holds by itself: a trapezoidal screw of low lead would.',
    leadMade: (a: { lead: Amount }, p: Print) =>
      `Lower lead: a screw of ${p(a.lead)} lead is made at this diameter and holds by the thread alone. Change screws and nuts in pairs, and the drive’s steps with them.`,
    noLeadMade:
      'Lower lead: none that is made at this diameter surely holds by the thread alone with this friction. Take a brake or a counterweight.',
    measureFriction:
      'The friction is the weakest number: measure the torque that just raises the load, and ask which friction gives it.',
    measureIdle:
      'The motor’s detent torque is the weakest number: take it from its data sheet, or with a thread round the pulley of the bare motor.',
    measureDrag: 'The bearings’ drag is the weakest number: measure it with the screw uncoupled.',
    weigh: 'The mass is the weakest number: weigh what the screws carry.',
    trial: (a: { where: keyof typeof places; pull: Amount }, p: Print) =>
      `Trial: gantry a finger’s breadth above blocks, motors off, hands out from under it. Pull down by a cord ${places[a.where]} with ${p(a.pull)} on a luggage scale and tap the frame. It must not creep in five minutes.`,
    noPullTells:
      'No pull on the gantry tells here: the friction that grows with the pull would hold it too, or the pull would be more than scale, frame or screw should bear.',
    torqueTrial: (a: { torque: Amount; radius: Amount; pull: Amount; each: boolean }, p: Print) =>
      `Trial by turning: a prop a finger’s breadth under the gantry, motors off, hands out from under it. Turn ${a.each ? 'each screw in turn' : 'the screw'} the way that lowers the gantry, with ${p(a.torque)}: a thread wound round the coupling, at ${p(a.radius)} from the axis a pull of ${p(a.pull)}. Tap the frame. It must not turn in five minutes.`,
    stalledPush: (a: { push: Amount; buckles: Amount }, p: Print) =>
      `Once it is held up: a stalled motor pushes with ${p(a.push)}, and the screw buckles at ${p(a.buckles)}.`,
    currentTo: (a: { to: Amount }, p: Print) =>
      `Set the current in the motor’s driver to ${p(a.to)} of the rated one; then raise the gantry at its fastest ten times: no step may be lost.`,
    alsoSlower: (a: { from: Amount; to: Amount }, p: Print) =>
      `Lower the fastest Z move from ${p(a.from)} to ${p(a.to)} as well: the screw would whirl.`,
    marginIs: (a: { margin: Amount; wanted: Amount; euler: boolean }, p: Print) =>
      `The margin is ${p(a.margin)}, wanted ${p(a.wanted)} (by ${a.euler ? 'Euler' : 'Johnson'}). The push is that of the full holding torque against a stop.`,
    truerEnds:
      'Or hold the ends truer: a pair of bearings or a rigid coupling in line at the lower end, a bearing at the top. Or fit a thicker screw.',
    afterCollision: 'After a collision take the screw out and roll it on a flat: a bend stays.',
    truerOrThicker:
      'Or hold the ends truer, with a bearing at the top; or take a thicker screw, or one of a larger lead if it still holds.',
    stopAtOnce: 'Stop at once if the screw whips: hands and cables away.',
    comesFrom: (a: { byThread: boolean; thread: Amount }, p: Print) =>
      `Where it comes from: ${a.byThread ? `the thread alone, ${p(a.thread)}` : `thread ${p(a.thread)}, the rest is bearings and the motor’s detent torque`}. Shaking and fresh grease take from it, so support the gantry all the same before a hand goes under it.`,
  },
  contradictions: {
    outsideScrews:
      'Support the gantry first: what holds it is not known. The carriage stands farther from the middle than the screws do. Which is right, its place or the distance of the screws?',
    liftsOtherSide:
      'Support the gantry first: what holds it is not known. The carriage would lift the other side: the mass that the Z drive carries includes the carriage. Which of the masses is right?',
    leadNoPitches: (a: { lead: Amount; pitch: Amount }, p: Print) =>
      `Support the gantry first: what holds it is not known. A lead of ${p(a.lead)} is no whole number of pitches of ${p(a.pitch)}. Which is right? Count the grooves that end at the screw’s face: lead = pitch × starts.`,
    jamsBothWays:
      'Support the gantry first: what holds it is not known. A thread this steep with this much friction jams in both directions: no torque could raise the load. Which is right, lead or friction?',
  },
  figure: {
    label: 'Screw and load, the slope of its thread, and the margin that holds it',
    toScale: 'screw to scale',
    ballsRoll: (efficiency: string) => `balls roll: efficiency ${efficiency}`,
    laidFlat: (angle: string) => `λ = ${angle}, one turn laid flat`,
    slope: 'line: what friction holds',
    lead: (lead: string, diameter: string) => `lead ${lead} up on ${diameter} · π`,
    margin: (margin: string) => `margin ${margin}`,
    wanted: (margin: string) => `wanted ${margin}`,
    alone: (margin: string) => `screw alone ${margin}`,
  },
};
export default en;
