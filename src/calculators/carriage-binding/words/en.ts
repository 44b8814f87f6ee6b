/** Words of the check “Carriage binding”. */
import type { Amount, Print } from '../../../engine/order';

/** What goes on this guide, and what does not. */
const care = {
  bronze:
    'Wipe the rod and give each bush a drop of thin mineral oil, no grease; run it end to end ten times and wipe off the rest.',
  filled: 'Wipe the rod and leave the bushes dry: oil and grease hold dust and swell some plastics.',
  polyacetal: 'Wipe the rod; a thin film of PTFE or silicone grease is right, mineral oil does little.',
  printed: 'A thin film of PTFE grease helps for a while; bushes of sintered bronze or filled plastic are the cure.',
  balls:
    'Wash the balls out, then light bearing grease into them; a ball bush that still catches is worn: replace it. Oil is for short strokes only.',
  wheels:
    'No lubricant on wheels or rail: wipe both with a dry cloth. A drop of thin oil belongs in a dry bearing alone.',
  stuck:
    'Find the wheel that slides: mark each with a pen and roll. Clean or replace its bearing, or ease its eccentric bush. No lubricant on wheels or rail.',
};
type Guide = keyof typeof care;
interface Why {
  /** It binds by its offset; else friction eats a share of the push. */
  readonly bound?: { readonly at: Amount; readonly pushed: Amount };
  readonly eaten?: { readonly share: Amount; readonly allowed: Amount };
  readonly needs?: Needs;
}
interface Needs {
  readonly force: Amount;
  readonly has: Amount;
}

const sides = { left: 'left', right: 'right' };
const needed = ({ force, has }: Needs, p: Print) => `it needs ${p(force)} of the drive’s ${p(has)}`;
const why = ({ bound, eaten, needs }: Why, p: Print) => {
  if (bound) return `it binds at an offset of ${p(bound.at)} and is pushed at ${p.size(bound.pushed)}`;
  if (eaten) return `friction eats ${p.size(eaten.share)} of the push, allowed ${p(eaten.allowed)}`;
  return needs ? needed(needs, p) : '';
};

const en = {
  inputs: {
    L: {
      label: 'Guide length',
      hint: 'Along the travel, between the outer ends of what guides sideways. One bush, or the first to the last of several. Wheels: from axle to axle.',
    },
    d_0: {
      label: 'Drive’s line from the guide',
      hint: 'Square to the travel, from the belt, screw or hand to the middle of the guide that takes the sideways force.',
    },
    d_1: {
      label: 'Left drive’s line from the guide',
      hint: 'Seen along the travel, from behind. From the guide that takes the sideways force.',
    },
    d_2: {
      label: 'Right drive’s line from the guide',
    },
    s: {
      label: 'Left drive’s share of the pull',
      hint: 'Half each where both belts or screws pull alike. Two drives a step apart do not.',
    },
    mu_p: {
      label: 'Friction of the pair',
    },
    F_a: {
      label: 'Pull near the guide',
      hint: 'Motors off, belt off. Hook the scale in at the drive’s point, or nearer. Pull slowly along the travel. Take the steady reading, mean of five.',
    },
    a_1: {
      label: 'That pull’s line from the guide',
    },
    F_b: {
      label: 'Pull far out',
      hint: 'The same at the far end, on the same side of the guide. If nothing moves it there, hook in nearer.',
    },
    a_2: {
      label: 'That pull’s line from the guide, far out',
    },
    F_0: {
      label: 'Drag when pushed in the guide’s line',
      hint: 'Pushed dead in line, slowly, with a luggage scale; upright, less the weight.',
    },
    e: {
      label: 'Mass centre from the guide',
      hint: 'Where it would balance, square to the travel; pick the side where it hangs.',
    },
    e_l: {
      label: 'Mass centre from the guide, two drives',
      hint: 'Where it would balance, square to the travel, seen from behind as the drives are; pick the side.',
    },
    F_m: {
      label: 'Most that the drive can pull',
      hint: 'Motor torque at speed over pulley radius; half the holding torque is a fair guess.',
    },
    q_lim: {
      label: 'Most of the push that friction may eat',
      hint: '100 % is binding; 50 % keeps a margin of two.',
    },
    dx: {
      label: 'One end of the gantry ahead of the other',
      hint: 'Forced so by its drives, belts or rails: from each end to the frame, the difference.',
    },
    W_g: {
      label: 'Distance between the gantry’s ends',
    },
    j: {
      label: 'Sideways play of the guide',
      hint: 'How far one end of the guide can be rocked against the rail.',
    },
    c_g: {
      label: 'Sideways stiffness at an end of the guide',
      hint: 'Push there with a luggage scale, dial indicator opposite: force over movement beyond the play.',
    },
  },
  choices: {
    by: {
      label: 'Friction known from',
      hint: 'The two pulls say more: they measure this guide as it is.',
      options: {
        pair: 'what slides on what',
        scale: 'two pulls with a luggage scale',
      },
    },
    pair: {
      label: 'Guide',
      hint: 'Also says which lubricant is right.',
      options: {
        bronze: 'sintered bronze on steel, oiled',
        filled: 'filled plastic bush, dry',
        polyacetal: 'polyoxymethylene, dry',
        printed: 'printed plastic on steel, dry',
        balls: 'ball bushes or ball rail',
        wheels: 'wheels, all turning',
        stuck: 'wheels that slide, or dirt',
      },
    },
    way: {
      label: 'It runs',
      hint: 'Upright, its weight is part of the load, and acts at the load’s line.',
      options: {
        level: 'level',
        upright: 'up and down',
      },
    },
    drive: {
      label: 'Driven',
      options: {
        one: 'at one place',
        both: 'on both sides of the guide',
      },
    },
  },
  results: {
    d_one: 'Offset of the drive',
    d_both: 'Offset of both drives together (left positive)',
    s_0: 'Left share at which both cancel',
    e_w: 'Mass centre, on the side of the drive, or left',
    kappa: 'Growth of the pull with offset',
    mu_friction: 'Friction',
    mu_frictionMeasured: 'Friction, measured',
    q: 'Share of the push that friction eats (binds at 100 %)',
    d_b: 'Offset at which it binds',
    d_m: 'Most offset with the margin',
    L_m: 'Least guide length with the margin',
    x_d: 'Offset to take off',
    x_L: 'Length to add',
    q_e: 'Share of the weight that friction eats, sinking',
    psi_0: 'Tilt that the play allows',
    dx_0: 'One end ahead until the play is used up',
    psi: 'Tilt forced on it',
    N_c: 'Clamping force at each end of the guide',
    F_c: 'Drag of the clamping',
    W_level: 'Force of the mass',
    W_upright: 'Force of the mass, rising',
    F_d: 'Drag in the guide’s line',
    R: 'Force without the offset',
    A: 'Moment on the guide, before friction adds to it',
    N: 'Sideways force at each end of the guide',
    F_t: 'Force that gets through when the drive pulls its most',
    F: 'Force that the drive needs',
    k_F: 'The same as a multiple of that without offset',
  },
  limits: {
    q: 'Push that friction eats, against binding',
    q_e: 'The same for its own weight, sinking',
    F_t: 'Force that gets through, against what the carriage needs',
  },
  cautions: {
    motorsOffUnplugged: 'Motors off and unplugged before you touch carriage or belt: a homing move can crush a finger.',
    supportCarriageRuns:
      'An upright carriage drops without warning and can crush a hand. Support it before you free its drive or loosen its guide.',
    pullSlowlyHand: 'Pull slowly. Keep the hand clear of where it may jump. Hot end and bed cold.',
  },
  proof:
    'Motors off: push the carriage with one finger at the drive’s point, at both ends and in the middle of its travel: it must start without a jerk. Then pull with the luggage scale in the guide’s line and at the drive’s point: the second pull may be at most 1/(1 − allowed share) of the first, twice at 50 %.',
  beware: {
    whetherBindsDepends:
      'Whether it binds depends on offset, length and friction alone, not on force or load: a stronger motor only presses harder.',
    ruleTakesGuide:
      'The sums take the guide to touch at its two ends. A snug, soft or short bush presses over part of its length: count two thirds of it.',
    playDoesChange:
      'Play does not change that, but it lets the carriage tilt, and a bush that stands on its edge bites: look for two bright spots crosswise.',
    drivesCancelOnly:
      'Two drives cancel only while they pull alike. Out of step they clamp the guide instead; that part is counted under the tilt forced on it.',
    frictionRestGreater:
      'Friction from rest is greater than sliding, and grows where a carriage has stood. Near binding the force rises without bound, so small changes decide.',
    wheelsTurnDo:
      'Wheels that turn do not bind by friction; what jams them is a tilt larger than their play, or one that no longer turns.',
    offsetsCountSquare:
      'Offsets count square to the travel, in both planes: look from above and from the side, and enter the worse.',
  },
  examples: {
    ruleFrictionQuarter: 'A friction of a quarter binds at an offset of twice the length',
    halfWayBinding: 'Half of the way to binding doubles the force',
    pullsNLine: 'Two pulls: 2 N in line, 3 N at 60 mm',
    armUprightRail: 'An arm on an upright rail, lifted near the rail: hangs up on the way down',
    drivesPullAlike: 'Two drives that pull alike cancel; one end 2 mm ahead clamps',
  },
  sources: {
    ruleFrictionQuarter: '2 · 0.25 · 80/40 = 1; 40/(2 · 0.25) = 80 mm',
    halfWayBinding: '2/(1 − 0.5) = 4 N; balance: 4 · 40/40 = 4 N at each end, 2 · 0.25 · 4 = 2 N of friction',
    pullsNLine: 'κ = (3 − 2)/(3 · 60) = 1/180 per mm; μ = 36/360; 20/180; 2/(1 − 1/9)',
    armUprightRail: '−9.80665 · 140 N·mm; over 60 · (1 + 2/15); 9.80665 + 0.4 · 20.19',
    drivesPullAlike: '2/300 · 60 = 0.4 mm, less 0.1, half at each end; 100 · 0.15 = 15 N; 2 · 0.15 · 15 = 4.5 N',
    balanceForcesMoments: 'balance of forces and of moments, contacts at the two ends of the guide, Coulomb’s friction',
    fSameBoth: 'F · (1 − κ · a) is the same for both pulls, κ = 2 μ / L',
    fLessPressing:
      'balance of forces and moments of both slow lifts: F less the friction of what presses, κ · |F · a − weight · offset|, is the same; κ = 2 μ / L',
    halfAtEachEnd:
      'a guide of length L with play j, tilted further than j / L: each of its ends takes half of what is left of the way',
    similarTriangles: 'similar triangles',
    newtonsSecondLaw: 'Newton’s second law',
    guideLengthL: 'a guide of length L with play j can turn by j / L',
    measured: 'as measured',
    pair: 'of the pair',
    difference: 'difference',
    sumThree: 'sum of the three',
    ratio: 'ratio of the two',
  },
  orders: {
    leave: (a: { share: Amount }, p: Print) => ({
      glance: '✓ Leave the guide',
      sentence: `Leave the guide: friction eats ${p.size(a.share)} of the push, and the drive has force to spare.`,
    }),
    finerFirst: {
      glance: '⟳ Measure the friction',
      sentence:
        'It is beyond the limit, but the friction is known too roughly to say what would surely do: measure that first.',
    },
    measure: {
      glance: '⟳ Measure the friction',
      sentence: 'Leave the drive where it is and measure: it is too close to call.',
    },
    shareOut: (a: { to: 'left' | 'right'; share: Amount } & Why, p: Print) => ({
      glance: `${a.to === 'left' ? '←' : '→'} Left drive pulls ${p(a.share)}`,
      sentence: `Bring more of the pull to the ${sides[a.to]}, until the left drive has ${p(a.share)} of it: ${why(a, p)}.`,
    }),
    driveTo: (a: { to: Amount; now: Amount } & Why, p: Print) => ({
      glance: `⇥ Drive ${p(a.to)} from guide`,
      sentence: `Move the drive’s line from ${p(a.now)} to ${p(a.to)} from the guide: ${why(a, p)}.`,
    }),
    support: (a: { most: Amount; eaten: Amount | undefined }, p: Print) => ({
      glance: '⚠ Support it first',
      sentence: `Support it, then bring its mass to within ${p(a.most)} of the guide: ${a.eaten ? `friction eats ${p.size(a.eaten)} of its weight on the way down` : 'it hangs by its own friction on the way down'}.`,
    }),
    squareFirst: (a: Needs, p: Print) => ({
      glance: '∟ Square the gantry first',
      sentence: `Square the gantry before anything else: clamped in its guide, ${needed(a, p)}.`,
    }),
    slower: (a: { to: Amount } & Needs, p: Print) => ({
      glance: `▾ Acceleration, at most ${p(a.to)}`,
      sentence: `Leave the guide; lower the acceleration to ${p(a.to)}: ${needed(a, p)}.`,
    }),
    tooWeak: (a: Needs, p: Print) => ({
      glance: '✕ Drive too weak',
      sentence: `Find what drags: ${needed(a, p)}, and no offset and no acceleration takes enough off.`,
    }),
  },
  contradictions: {
    farIsNear: (a: { near: Amount; far: Amount }, p: Print) =>
      `The pull far out is at ${p(a.far)} from the guide, the pull near it at ${p(a.near)}. Which of the two is right?`,
    belowNothing: (a: { near: Amount; far: Amount }, p: Print) =>
      `${p(a.near)} near the guide and ${p(a.far)} far out would be a friction below nothing. Pull again, at the same slow speed, straight along the travel: which of the two is right?`,
  },
  steps: {
    care: (a: { guide: Guide }) => care[a.guide],
    careFirst: (a: { guide: Guide }) => `First, motors off: ${care[a.guide]}`,
    careMeanwhile: (a: { guide: Guide }) => `Meanwhile, motors off: ${care[a.guide]}`,
    freeOneSide: (a: { drive: 'one' | 'both' }) =>
      `On two rods or rails leave one tight and free the other, the one ${a.drive === 'one' ? 'farther from the drive' : 'that does not set the line'}: slacken its holders a quarter turn, run the carriage to one end and tighten there, then the other end.`,
    square: (a: { ahead: Amount; play: Amount; cost: Amount }, p: Print) =>
      `Square the gantry: one end is ${p(a.ahead)} ahead, the play allows ${p(a.play)}. Slacken the drive of the end that leads, push that end back until both are alike, tighten. The clamping costs ${p(a.cost)}.`,
    cancelPullsBy:
      'Equal belt tension, pulleys tight on their shafts, both drives started from the same stop: then the sides pull as they should.',
    spreadGuide: (a: { most: Amount }, p: Print) =>
      `Or spread the guide: with all the pull on one side the drive would have to stand within ${p(a.most)} of it.`,
    alsoDrive: (a: { to: Amount; now: Amount }, p: Print) =>
      `Besides, move the drive’s line from ${p(a.now)} to ${p(a.to)} from the guide.`,
    alsoMass: (a: { to: Amount; now: Amount }, p: Print) =>
      `Besides, bring the mass centre from ${p.size(a.now)} to ${p.size(a.to)} from the guide.`,
    alsoSlower: (a: { to: Amount }, p: Print) => `Besides, lower the acceleration to ${p(a.to)}.`,
    alsoShare: (a: { to: Amount; now: Amount }, p: Print) =>
      `Besides, let the left drive have ${p(a.to)} of the pull instead of ${p(a.now)}.`,
    findDrag:
      'Push it by hand in the guide’s line: what drags there is dirt, a tight bush or two rails out of parallel.',
    lengthen: (a: { to: Amount; now: Amount }, p: Print) =>
      `Or lengthen the guide to ${p(a.to)}: a second bush or wheel farther along, outer ends that far apart. It has ${p(a.now)}.`,
    driveBoth: 'Or drive both sides of the guide, tied by a shaft or one belt.',
    noMoreForce:
      'More force does not help: what binds by its offset binds at any force. Do not raise the motor’s current.',
    massOut: (a: { out: Amount }, p: Print) =>
      `Its mass centre stands ${p.size(a.out)} out. It may hang where it is, then drop all at once.`,
    inProportion: 'Or lengthen the guide in the same proportion.',
    withoutOffset: (a: { force: Amount; times: Amount }, p: Print) =>
      `Without the offset it would need ${p(a.force)}; the offset makes that ${p(a.times)} times as much.`,
    pullTwice:
      'Pull it with a luggage scale, motors and belt off: once in the guide’s line, once as far out as it still moves, and choose the two pulls as the source of the friction.',
    repeatPulls: 'Repeat both pulls five times at the same slow speed; take the far one farther out.',
    wouldBind: (a: { at: Amount; stands: Amount }, p: Print) =>
      `It would bind at ${p(a.at)}; the drive stands at ${p.size(a.stands)}.`,
    bindsAndNeeds: (a: { at: Amount; stands: Amount; force: Amount }, p: Print) =>
      `It would bind at an offset of ${p(a.at)}; the drive stands at ${p.size(a.stands)}. It needs ${p(a.force)}.`,
    ifItSticks:
      'If it sticks all the same, look for a bent rod, a guide out of parallel, or dirt: push it along and feel where.',
  },
  figure: {
    label: 'The guide, the line it is driven in, and the line where it would bind',
    mass: 'mass',
    pushed: (offset: string) => `pushed at d = ${offset}`,
    binds: (drawn: boolean, at: string) => (drawn ? `dashed: binds at ${at}` : `off the drawing: binds at ${at}`),
    margin: (drawn: boolean, to: string) => (drawn ? `thin: margin to ${to}` : `margin to ${to}`),
    guide: (length: string) => `guide L = ${length}, to scale`,
    contacts: (force: string) => `contacts N = ${force}`,
  },
};
export default en;
