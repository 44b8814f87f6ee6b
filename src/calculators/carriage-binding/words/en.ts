/** Words of the check “Carriage binding”. */
const en = {
  inputs: {
    L: {
      label: 'Guide length',
      hint: 'Along the travel, between the outer ends of what guides sideways: one bush, or from the first to the last of several; wheels from axle to axle.',
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
      hint: 'Motors off, belt off. Hook the scale in at the drive’s point, or nearer, and pull slowly along the travel: the steady reading, mean of five.',
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
      label: 'Mass centre from the guide, positive on the drive’s side',
      hint: 'Where it would balance, square to the travel. With two drives: positive on the left.',
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
    motorsOffUnplugged: 'Motors off and unplugged before a hand goes to carriage or belt: a homing move pinches.',
    supportCarriageRuns:
      'Support a carriage that runs up and down before its drive is freed or its guide loosened: what hangs by friction drops without warning.',
    pullSlowlyHand:
      'Pull slowly, with the hand clear of where it may jump to when it comes free. Hot end and bed cold.',
  },
  proof:
    'Motors off: push the carriage with one finger at the drive’s point, at both ends and in the middle of its travel: it must start without a jerk. Then pull with the luggage scale in the guide’s line and at the drive’s point: the second pull may be at most 1/(1 − allowed share) of the first, twice at 50 %.',
  beware: {
    whetherBindsDepends:
      'Whether it binds depends on offset, length and friction alone, not on force or load: a stronger motor only presses harder.',
    ruleTakesGuide:
      'The rule takes the guide to touch at its two ends. A snug, soft or short bush presses over part of its length: count two thirds of it.',
    playDoesChange:
      'Play does not change the rule, but it lets the carriage tilt, and a bush that stands on its edge bites: look for two bright spots crosswise.',
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
    ruleFrictionQuarter: 'The 2:1 rule: a friction of a quarter binds at twice the length',
    halfWayBinding: 'Half of the way to binding doubles the force',
    pullsNLine: 'Two pulls: 2 N in line, 3 N at 60 mm',
    armUprightRail: 'An arm on an upright rail, lifted near the rail: hangs up on the way down',
    drivesPullAlike: 'Two drives that pull alike cancel; one end 2 mm ahead clamps',
  },
  sources: {
    offsetOverLength: 'offset over length at most 2 at a friction of 0.25',
    halfWayBinding: '2/(1 − 0.5) = 4 N; balance: 4 · 40/40 = 4 N at each end, 2 · 0.25 · 4 = 2 N of friction',
    pullsNLine: 'κ = (3 − 2)/(3 · 60) = 1/180 per mm; μ = 36/360; 20/180; 2/(1 − 1/9)',
    armUprightRail: '−9.80665 · 140 N·mm; over 60 · (1 + 2/15); 9.80665 + 0.4 · 20.19',
    drivesPullAlike: '2/300 · 60 = 0.4 mm, less 0.1; 100 · 0.3 = 30 N; 2 · 0.15 · 30 = 9 N',
    ruleOffsetOver: 'the 2:1 rule: offset over length at most 2, for a friction of 0.25',
    balanceForcesMoments: 'balance of forces and of moments, contacts at the two ends of the guide, Coulomb’s friction',
    fSameBoth: 'F · (1 − κ · a) is the same for both pulls, κ = 2 μ / L',
    similarTriangles: 'similar triangles',
    newtonsSecondLaw: 'Newton’s second law',
    guideLengthL: 'a guide of length L with play j can turn by j / L',
    measured: 'as measured',
    pair: 'of the pair',
    difference: 'difference',
    sumThree: 'sum of the three',
    ratio: 'ratio of the two',
    frictionPair: 'friction by pair',
  },
  orders: {},
  steps: {},
};
export default en;
