import type { Amount, Print } from '../../../engine/order';

/** Words of the check “Two Z screws in step”. */
type Side = 'left' | 'right';
type Turn = 'clockwise' | 'anticlockwise';
interface Turned {
  readonly turns: number;
  readonly degrees: number;
}

const sides = { left: 'left', right: 'right' };
const ways = { clockwise: 'clockwise', anticlockwise: 'anticlockwise' };
const arrows = { clockwise: '↻', anticlockwise: '↺' };
const otherCauses = 'look also for a slipped grub screw, a bent mount or a loose wheel';
const teeth = (n: number) => `${n} ${n === 1 ? 'tooth' : 'teeth'}`;

/** "2 turns and 180°", or the plain angle below one turn. */
const turned = ({ turns, degrees }: Turned) => {
  if (turns === 0) return `${degrees}°`;
  const whole = `${turns} ${turns === 1 ? 'turn' : 'turns'}`;
  return degrees === 0 ? whole : `${whole} and ${degrees}°`;
};
const aloud = ({ turns, degrees }: Turned) => {
  const rest = `${degrees} degrees`;
  if (turns === 0) return rest;
  const whole = `${turns} ${turns === 1 ? 'turn' : 'turns'}`;
  return degrees === 0 ? whole : `${whole} and ${rest}`;
};
const isHigh = (high: Side) => `The ${sides[high]} side, seen from the front, is high`;

const en = {
  inputs: {
    dh: {
      label: 'Height difference of the two sides',
      hint: 'Of what the screws lift, from the frame up, at two places. Tap the side that stands higher, seen from the front. A feeler under the nozzle reads gaps. At the wider gap a lifted gantry stands higher, a lifted bed lower.',
    },
    S_m: {
      label: 'Distance between the two places',
      hint: 'At the screws this is the distance between the screws.',
    },
    i_g: {
      label: 'Slope of the gantry',
      hint: 'Along what the screws lift, from screw to screw, on a straight bar laid across it if it is narrow.',
    },
    i_f: {
      label: 'Slope of the frame below',
      hint: 'The same on what the screws stand on. A printer on a crooked table leans as a whole: that is no fault. Enter 0 ± 0 only for a frame that was levelled with something finer.',
    },
    P_h: {
      hint: 'Lead = pitch × starts: travel of the nut in one turn.',
    },
    z: {
      label: 'Teeth of a pulley of the joining belt',
    },
    k_1: {
      label: 'Share of the first layer allowed',
    },
  },
  choices: {
    by: {
      label: 'Height difference known from',
      hint: 'The phone’s level reads against gravity, so the frame is read too; two heights by caliper are usually finer.',
      options: {
        heights: 'two heights',
        level: 'slope of the gantry, with the level',
      },
    },
    hand: {
      label: 'Thread',
      options: {
        right: 'right-hand',
        left: 'left-hand',
      },
    },
  },
  results: {
    h_t_belt: 'Height of one tooth',
    h_t_motors: 'Height of one full step',
    dh_s: 'Difference at the screws',
    n: 'Teeth or steps out, as measured',
    n_w: 'Whole teeth or steps out',
    r: 'Remainder',
    phi: 'Remainder as screw rotation',
    psi: 'Whole difference as screw rotation',
    i: 'Slope',
    alpha: 'Slope angle',
    dh_bed: 'Error across the bed',
    dh_lim: 'Allowed across the bed',
  },
  limits: {
    dh_bed: 'Height difference across the bed',
  },
  cautions: {
    switchOffUnplug: 'Switch off and unplug before you touch belts or screws: a homing move can crush a finger.',
    supportGantryBefore: 'Block the gantry up before you loosen a screw or a belt: it can drop and crush a hand.',
    letNozzleBed: 'Let nozzle and bed cool before you reach under the nozzle: both burn.',
  },
  proof:
    'Measure both ends again at the same places: the difference across the bed should now be within the limit. Then run the gantry up and down once and measure a third time; if it has moved again, something slips.',
  beware: {
    heightsTakenBent:
      'Two heights taken from a bent frame or an untrue bed show the frame, not the screws: measure from something flat.',
    wholeNumberTeeth:
      'A whole number of teeth can also come from a grub screw that slipped; mark screw and pulley with a pen and look again in a week.',
  },
  examples: {
    teethOutRead: 'Two teeth out, read with a caliper',
    sameDifferenceOver: 'The same difference over half the distance counts double',
    motorsStepsInstead: 'Two motors: steps instead of teeth',
    levelTableLeans: 'With the level, on a table that leans',
  },
  sources: {
    pitchGeometryTooth: 'pitch geometry: one tooth is one pitch',
    powerScrewsLead: 'vocabulary of screw threads: the lead is the travel in one turn, pitch × starts',
    similarTriangles: 'similar triangles',
    riseSlopeRun: 'rise = slope × run, the gantry against the frame',
    heightOverHeight: 'height over height of one',
    nearestWholeNumber: 'nearest whole number',
    wholeTeethSteps: 'what whole teeth or steps leave',
    riseOverRun: 'rise over run',
    teethOutRead: '8 mm / 20 = 0.4 mm; 0.75 = 2 × 0.4 − 0.05; 360° × −0.05 / 8 = −2.25°',
    sameDifferenceOver: 'similar triangles by hand',
    motorsStepsInstead: '8 mm × 1.8° / 360° = 0.04 mm; 0.12 / 8 × 360° = 5.4°',
    levelTableLeans: '(5 − 3) mm/m × 0.4 m = 0.8 mm, two teeth of 0.4 mm',
  },
  contradictions: {
    jammed: (a: { rise: Amount; run: Amount }, p: Print) =>
      `A rise of ${p.size(a.rise)} from screw to screw, ${p.size(a.run)} apart, would jam any gantry. Look at the unit and the decimal mark: which of the two readings is right?`,
  },
  orders: {
    leave: { glance: '✓ Leave it', sentence: 'Leave it: the gantry is level enough.' },
    again: {
      glance: '⟳ Measure again, better tool',
      sentence: 'Measure again with a better tool before turning anything.',
    },
    tooLittle: (a: { high: Side }) => ({
      glance: '✓ Leave it',
      sentence: `${isHigh(a.high)} by less than a hand can set: leave it, or even it out at the bed.`,
    }),
    turnAtGrub: (a: { high: Side; way: Turn; by: Turned }) => ({
      glance: `${arrows[a.way]} ${turned(a.by)} · ${sides[a.high]} screw`,
      sentence: `${isHigh(a.high)}: turn the ${sides[a.high]} screw ${ways[a.way]}, seen from above, by ${turned(a.by)}.`,
      spoken: `${isHigh(a.high)}: turn the ${sides[a.high]} screw ${ways[a.way]}, seen from above, by ${aloud(a.by)}.`,
    }),
    turnTeeth: (a: { high: Side; way: Turn; teeth: number }) => ({
      glance: `${arrows[a.way]} ${teeth(a.teeth)} · ${sides[a.high]} screw`,
      sentence: `${isHigh(a.high)}: turn the ${sides[a.high]} screw ${ways[a.way]}, seen from above, by ${teeth(a.teeth)}.`,
    }),
    turnBy: (a: { high: Side; way: Turn; by: Turned }) => ({
      glance: `${arrows[a.way]} ${turned(a.by)} · ${sides[a.high]} screw`,
      sentence: `${isHigh(a.high)}: turn the ${sides[a.high]} screw ${ways[a.way]}, seen from above, by ${turned(a.by)}.`,
      spoken: `${isHigh(a.high)}: turn the ${sides[a.high]} screw ${ways[a.way]}, seen from above, by ${aloud(a.by)}.`,
    }),
    countAgain: (a: { high: Side; from: number; to: number }) => ({
      glance: '⟳ Measure again, better tool',
      sentence: `${isHigh(a.high)}, but how many teeth cannot be told from this reading: anything between ${a.from} and ${a.to}. Measure with a better tool before turning.`,
    }),
  },
  figure: {
    label: 'Front view of the gantry on its two screws',
    scale: (factor: number) => (factor > 1 ? `tilt drawn ${factor} times too large` : 'to scale'),
  },
  steps: {
    note: 'Note the reading for this machine; measure again after the belt or a screw was touched.',
    mayMakeWorse: 'The reading does not tell whether the gantry is out; turning now may make it worse.',
    turnNothing: 'Turn nothing yet: the wrong count of teeth may make it worse.',
    leastSet: (a: { by: Amount }, p: Print) =>
      `It would be ${p.size(a.by)} of screw; about 5° is the least a hand sets.`,
    atGrub: (a: { drive: 'belt' | 'motors'; high: Side; way: Turn; by: Turned }) =>
      a.drive === 'motors'
        ? `Loosen the coupling’s grub screw on the ${sides[a.high]} side, hold the motor still, turn the screw ${ways[a.way]} (seen from above) by ${turned(a.by)}, tighten.`
        : `Loosen the pulley’s grub screw on the ${sides[a.high]} side, leave the belt on, turn the screw ${ways[a.way]} (seen from above) by ${turned(a.by)}, tighten.`,
    notTheMotor:
      'Do not turn the motor by hand instead: switched on, it springs to the nearest of its own places, four full steps apart.',
    byTeeth: (a: { high: Side; way: Turn; teeth: number }) =>
      `Slacken the joining belt, lift it off the ${sides[a.high]} pulley, turn that screw ${ways[a.way]} (seen from above) by ${teeth(a.teeth)}, put the belt back.`,
    thenTurn: (a: { after: boolean; high: Side; way: Turn; by: Turned }) =>
      `${a.after ? 'Then loosen' : 'Loosen'} the pulley’s grub screw on the ${sides[a.high]} side, turn that screw ${ways[a.way]} (seen from above) by ${turned(a.by)}, tighten.`,
    leaveRest: (a: { stays: boolean }) =>
      a.stays
        ? 'Leave what then remains: it is within the limit.'
        : 'Leave what then remains: it is less than a hand can set (about 5°).',
    beyondSlip: (a: { teeth: number }) =>
      `That is ${teeth(a.teeth)}, a full turn of the pulley or more, and no slipped tooth: ${otherCauses}.`,
    notNearWhole: (a: { teeth: Amount }, p: Print) =>
      `${p.size(a.teeth)} is not near a whole number of teeth: ${otherCauses}.`,
    noWholeNumber: (a: { teeth: Amount }, p: Print) => `${p.size(a.teeth)} teeth are no whole number: ${otherCauses}.`,
  },
};
export default en;
