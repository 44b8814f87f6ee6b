/** Words of the check “Wheel preload”. */
import type { Amount, Print } from '../../../engine/order';

type Turn = 'clockwise' | 'anticlockwise';
interface BushTurn {
  readonly way: Turn;
  readonly raise: boolean;
  readonly by: Amount;
}

const ways = { clockwise: 'clockwise', anticlockwise: 'anticlockwise' };
const arrows = { clockwise: '↻', anticlockwise: '↺' };
const towards = (raise: boolean) => (raise ? 'towards the rail' : 'away from the rail');

const en = {
  inputs: {
    F_slip: {
      label: 'Slip force at the tread',
      hint: 'Push the carriage slowly and hold the wheel back at its tread. Enter the pull at which it just slides. Mean of five.',
    },
    theta_t: {
      label: 'Bush angle where the wheel first touched',
      hint: 'From fully retracted, at the angle where the wheel just stops spinning freely; by eye within 2°.',
    },
    theta_0: {
      label: 'Present bush angle',
      hint: 'From fully retracted (0°) to fully towards the rail (180°).',
    },
    theta: {
      label: 'Bush angle to try out',
      hint: 'May be left empty. Shows the gap, the preload and the slip force to expect there.',
    },
    d: {
      label: 'Mass centre out from the wheels',
      hint: 'Level distance from the middle between the wheels to where the carriage would balance, in the plane of the wheels. Upright rail: the arm. Level rail: the overhang along it.',
    },
    h: {
      label: 'Mass centre above or below the wheels',
      hint: 'The size only: the push goes both ways.',
    },
    s: {
      label: 'Wheel spacing along the rail',
    },
    n_w: {
      label: 'Wheels that share the force at one end',
    },
    k: {
      label: 'Margin against lifting off',
    },
    N_0: {
      label: 'Preload to keep on every wheel besides',
      hint: 'So that a wheel without a moment to hold still turns with the carriage.',
    },
    mu: {
      label: 'Friction coefficient, wheel on rail, dry',
      hint: 'Lay a wheel flat on the rail’s flat side and tilt. Enter the tangent of the tilt at which it slides.',
    },
    c_rr: {
      label: 'Rolling friction coefficient',
    },
    e: {
      label: 'Eccentricity of the bush',
      hint: 'Half the difference of its thickest and its thinnest wall.',
    },
    c_w: {
      label: 'Stiffness of wheel, bolt and plate',
      hint: 'A rough estimate. Two slip tests give yours: change in preload over gap closed between them.',
    },
    phi_s: {
      label: 'Largest turn between two tests',
    },
    beta: {
      label: 'Half angle of the V',
      hint: 'From the wheel’s middle plane to a flank; 90° for a flat tread.',
    },
    l_f: {
      label: 'Length of contact across one flank',
      hint: 'Width of the bright band on one flank.',
    },
    r_e: {
      label: 'Radius across: rail’s edge, or wheel’s crown',
    },
    E_w: {
      label: 'Elastic modulus of the wheel',
    },
    nu_w: {
      label: 'Poisson’s ratio of the wheel',
    },
    E_r: {
      label: 'Elastic modulus of the rail',
    },
    nu_r: {
      label: 'Poisson’s ratio of the rail',
    },
    p_lim: {
      label: 'Allowable contact pressure, standing',
      hint: 'A line contact first yields at 1.67 times the yield stress. For a load that stands for days, take a third of that.',
    },
    j: {
      label: 'Play felt at the wheels',
      hint: 'May be left empty. Rock the carriage: travel of the plate against the rail at one wheel.',
    },
    R: {
      label: 'Reach of the arm from the wheels',
    },
  },
  choices: {
    by: {
      label: 'Preload known from',
      hint: 'The slip test says more; the bush’s turn is an estimate.',
      options: {
        slip: 'slip test, weight held up by hand',
        hanging: 'slip test, weight left on, wheel that slips most easily',
        bush: 'bush turned on since the wheel first touched',
      },
    },
    material: {
      label: 'Wheel material',
      options: {
        pom: 'polyoxymethylene',
        pc: 'polycarbonate',
        pa: 'polyamide 66, used to room air',
        pu: 'polyurethane, about 95 Shore A',
      },
    },
    contact: {
      label: 'Flank on the rail',
      hint: 'Look for the bright band on the wheel: wide is a line, a hairline is an edge.',
      options: {
        line: 'lies along a bevel or a worn-in band',
        edge: 'rides on a rounded edge',
      },
    },
    side: {
      label: 'Bush’s thick side stands, seen from the bolt head',
      hint: 'Fully retracted: the wheel stands farthest from the rail. Mark the bush there with a pen.',
      options: {
        clockwise: 'clockwise from fully retracted',
        anticlockwise: 'anticlockwise from fully retracted',
      },
    },
  },
  results: {
    M_o: 'Moment to hold',
    F_o: 'Force on a wheel pair',
    F_g: 'Weight’s share on one wheel',
    N_min: 'Least preload of a wheel',
    P: 'Force through the tread, both flanks',
    N: 'Preload carried',
    u_t: 'Gap closed since first touch',
    N_s: 'Standing load of the fullest wheel',
    Q: 'Load of one flank',
    R_n: 'Radius of the flank as it rolls',
    E_s: 'Contact modulus',
    b: 'Half width of the contact',
    p_0: 'Contact pressure, greatest',
    Q_max: 'Flank load at the allowable pressure',
    R_e: 'Equivalent radius',
    a_c: 'Mean radius of the contact',
    N_max: 'Most preload',
    N_aim: 'Preload to aim at',
    du: 'Gap still to close',
    theta_n: 'Bush angle for it',
    dtheta: 'Turn of the bush, estimate',
    x: 'Gap closed from fully retracted',
    u_1: 'Gap closed by one degree here',
    q: 'Share of the best gain, which is at 90°',
    u: 'Gap closed at the angle to try',
    N_1: 'Preload to expect there',
    F_1: 'Slip force to expect there',
    F_r: 'Rolling drag of a wheel',
    y: 'Sag at the reach',
  },
  limits: {
    N: 'Preload between lifting off and flat spots',
    N_min: 'Room between holding and marking',
  },
  cautions: {
    motorsOffUnplugged:
      'Motors off and unplugged: a homing move pulls a finger in between wheel and rail and can crush it.',
    pushCarriageHand:
      'Push the carriage slowly. Finger on the side where the wheel leaves the rail: where it runs on, it crushes the finger.',
    blockCarriageUpright:
      'Block a carriage on an upright rail before you ease a bolt: it can drop and crush a hand. Let nozzle and bed cool first.',
  },
  proof:
    'Slip test again at five places along the rail, both ends and the middle: every wheel must just slip under the finger and none spin freely. Rock the carriage at the end of its reach: no click, no play. Leave it standing overnight, then roll it by hand: a bump once per turn of a wheel is a flat spot, so take preload off.',
  beware: {
    momentHeldOver:
      'The moment is held over the spacing along the rail, so it must lie in the plane of the wheels, as that of an arm on an upright rail does. A mass in front of a level rail turns about the rail itself, which is held across the rail: that is not in the sum.',
    plasticsCreepPreload:
      'Plastics creep: the preload falls and the flats grow in the first days. Test again after a night and after a week.',
    newWheelSharp:
      'A new wheel on a sharp rail edge is marked by almost any load; the mark widens until the flank lies along it. Then take the width of the band and judge as a line.',
    frictionCoefficientWeakest:
      'The friction coefficient is the weakest number here: grease or dust on the rail spoils the slip test. Wipe rail and wheels first.',
    whereWheelsFace:
      'Where the wheels face each other two against one, the single wheel carries twice what each of the two carries: test all, judge lifting by the loosest and pressure by the tightest.',
    bushNearHardly: 'A bush near 0° or 180° is near its dead centre: it hardly moves the wheel.',
  },
  examples: {
    cantileveredArmMoment: 'A cantilevered arm: moment, least preload, slip test in a V, sag',
    bushTurnedFully: 'Bush turned 30° from fully retracted',
    lineContactPolyoxymethylene: 'Line contact of polyoxymethylene on aluminium, 20 N on 5 mm',
    sameLoadBall: 'The same load on a ball-shaped contact',
    preloadTurnBush: 'Preload from the turn of the bush alone',
    crownedWheelBush: 'A crowned wheel, bush turned from 90° to 120°',
    slipTestWeight: 'Slip test with the weight left on',
    sameCrownedWheel: 'The same on a crowned wheel, bush not turned: the slip force stays',
    momentHoldSmall: 'No moment to hold: a small preload all the same, for a line and its room',
    tooLooseHold: 'Too loose to hold: turn the bush in',
  },
  sources: {
    chapterEquationsWorked: 'chapter 4, equations (4.22) and (4.45), worked by hand',
    cantileveredArmMoment: '1 × (9.80665 × 0.1 + 1 × 0.05); 8 / 0.25 × sin 30°; 0.05 × 200 / 100',
    bushTurnedFully: '0.8 mm × (1 − cos 30°) = 0.8 × 0.133975',
    preloadTurnBush: 'cos 60° = 0.5, cos 66° = 0.4067366, cos 70° = 0.3420201; 0.8 mm times the differences',
    crownedWheelBush: '0.8 mm × (0 + 0.5) = 0.4 mm; 50 N/mm × 0.4 mm',
    slipTestWeight: '0.5 × 9.80665 × 40 / 60; 2 / 0.25 × sin 30° + 3.268883',
    sameCrownedWheel: 'no gap closed, no change',
    momentHoldSmall: '2 · π · 12 mm · 5 mm · (35 MPa)² / 3066 MPa = 150.6 N; √(1 · 150.6); carried 40 / 0.25 = 160 N',
    tooLooseHold: '0.5 / 0.25 × sin 45°',
    chapterContactModulus: 'chapter 4, contact modulus',
    sectionCLine: 'section 4.2(c), line contact of cylinders',
    sectionSolidsRevolution: 'section 4.2(a), solids of revolution',
    abstractRadiusAb:
      'abstract: radius (AB(A + B)/2)^(−1/3), A = 1/R_n, B = 1/r_e; pressure 2.3 % low at a ratio of 30',
    coulombsFrictionForce: 'Coulomb’s friction: force over friction coefficient',
    balanceForcesAcross: 'balance of forces across the V: two flanks at the half angle',
    balanceMomentsAbout: 'balance of moments about one pair of wheels',
    eccentricBushHeight: 'eccentric bush: height of a point at radius e on a turned circle',
    momentUsesUp: 'the moment uses up preload, and a wheel that still turns with the carriage has some left',
    stiffnessTimesGap: 'stiffness times gap closed, an estimate',
    coneMeusniersTheorem: 'cone: Meusnier’s theorem',
    equalRatioLeast: 'equal ratio to the least and to the most',
    forceOverStiffness: 'force over stiffness, an estimate',
    definitionRollingFriction: 'definition of the rolling friction coefficient',
    similarTriangles: 'similar triangles',
    propertiesPolyacetalsGpa: 'properties of polyacetals: 2.5 to 3.0 GPa; others from memory',
    materialConstants: 'material constants',
  },
  orders: {
    leave: { glance: '✓ Leave the bush', sentence: 'Leave the bush: the wheels hold and do not mark.' },
    again: {
      glance: '⟳ Slip test again',
      sentence: 'Leave the bush where it is and measure again: it is too close to call.',
    },
    changeCarriage: {
      glance: '✕ Change the carriage',
      sentence: 'Leave the bush alone: the wheels would mark before they hold. Change the carriage.',
    },
    wearIn: {
      glance: '⟳ Let a band wear in',
      sentence: 'Let a band wear in on the wheels, then judge as a line: an edge marks under almost any load.',
    },
    endOfThrow: {
      glance: '✕ Bush at its end',
      sentence: 'Leave the bush: it is at the end of its throw and the wheel still presses too little.',
    },
    fullyRetracted: {
      glance: '✕ Bush fully retracted',
      sentence: 'Leave the bush: it is fully retracted and the wheel still presses too hard.',
    },
    turnBush: (a: BushTurn, p: Print) => ({
      glance: `${arrows[a.way]} ${p(a.by)} · bush`,
      sentence: `The wheel presses ${a.raise ? 'too little' : 'too hard'}: turn the bush ${ways[a.way]}, seen from the bolt head, by ${p(a.by)}, ${towards(a.raise)}.`,
    }),
  },
  steps: {
    markAngle:
      'Mark the bush’s angle with a pen, note the slip force, and test again after a week: plastic wheels settle.',
    fartherApart:
      'Set the wheels farther apart along the rail, or bring the mass nearer to them: both lower the moment.',
    lessForce: 'Lower the acceleration, or add wheels that share the force.',
    stifferWheels: 'Fit wheels of a stiffer material or a larger radius.',
    leaveOrTurnIn: (a: { way: Turn }) =>
      `Leave the bush where the wheel turns with the carriage. If it spins freely, turn the bush ${ways[a.way]}, seen from the bolt head (towards the rail), a few degrees at a time, until it just turns.`,
    brightBand:
      'After a week of use look for the bright band: choose the flank that lies along it, enter its width and judge again.',
    onlyThenCarriage:
      'Only if a line leaves no room either, change the carriage: wheels farther apart along the rail, less mass farther in, less acceleration.',
    doSlipTest: 'Do the slip test: the turn of the bush gives the preload only roughly.',
    repeatSlip:
      'Wipe rail and wheels, repeat the slip test five times at one place and take the mean, with ± half the span.',
    measureFriction: 'Measure the friction coefficient of this wheel on this rail by tilting.',
    measureBand: 'Measure the bright band on the flank with a caliper: the pressure depends on its width.',
    wornWheel: 'Look for a worn wheel, a worn bearing or a bent plate; replace the wheels of that carriage as a set.',
    onSpacers: 'Check that the fixed wheels sit fully on their spacers; then start again from fully retracted.',
    belongTogether:
      'Check that wheel and rail belong together and that no spacer or the bush sits askew; measure the plate’s holes.',
    easeBolt: 'Motors off. Ease the wheel’s bolt by a quarter turn, no more; hold the bush with an open-ended spanner.',
    turnTo: (a: BushTurn & { most: Amount | undefined }, p: Print) =>
      a.most === undefined
        ? `Turn the bush ${ways[a.way]}, seen from the bolt head (${towards(a.raise)}), by ${p(a.by)}. Hold it there and tighten the bolt.`
        : `Turn the bush ${ways[a.way]}, seen from the bolt head (${towards(a.raise)}), by ${p(a.by)} in all: ${p(a.most)} at a time, the bolt tightened and a slip test after each; stop as soon as the test is within.`,
    slipAgain: 'Slip test again at the same place, with the bolt tight.',
    nearEnd: (a: { raise: boolean }) =>
      `The bush stands near ${a.raise ? 'fully retracted' : 'its far end'}, where it hardly moves the wheel: the first degrees do little, the later ones much.`,
    littleRoom: 'There is little room between holding and marking: watch the flanks for a widening band.',
    roughStiffness: 'The turn rests on a rough stiffness: the slip test proves it, not the number.',
  },
  figure: {
    label: 'Wheels on the rail, and the eccentric bush seen from the bolt head',
    rail: 'rail',
    least: (value: string) => `least N = ${value}`,
    now: (value: string) => `now N = ${value}`,
    most: (value: string) => `most N = ${value}`,
    mostGain: 'most gain',
    gain: (value: string) => `gain ${value} per °`,
    nowAt: (value: string) => `now at ${value}`,
    toTheRail: '↑ to the rail',
    retracted: '0° fully retracted',
    scale: (times: number | undefined) =>
      times === undefined ? 'bush angle true' : `bush angle true, throw drawn ${times} times too large`,
  },
};
export default en;
