/** What the check “Bed tram” tells to do, what it refuses, and the writing on its drawing. */
import type { Amount, Print } from '../../../../engine/order';
import type { AdjusterName, Spot, Turn } from '../../turning';

interface At {
  readonly name: AdjusterName;
  readonly spot: Spot | undefined;
  readonly n: number;
}
interface Turned {
  readonly way: Turn;
  readonly turns: number;
  readonly rest: Amount;
}
interface Stiff {
  readonly plate: Amount;
  readonly spring: Amount;
  readonly load: Amount;
}
interface Rise {
  readonly rises: boolean;
  readonly by: Amount;
}
interface Lean {
  readonly right: Rise;
  readonly back: Rise;
}
interface Farthest {
  readonly point: number;
  readonly by: Amount;
}
interface Left {
  readonly by: Amount;
  readonly high: Farthest;
  readonly low: Farthest;
}

const names: Readonly<Record<AdjusterName, string>> = {
  'front left': 'front left',
  'front middle': 'front middle',
  'front right': 'front right',
  'left middle': 'left middle',
  middle: 'middle',
  'right middle': 'right middle',
  'back left': 'back left',
  'back middle': 'back middle',
  'back right': 'back right',
  first: 'first',
  second: 'second',
  third: 'third',
  fourth: 'fourth',
};
const ways = { clockwise: 'clockwise', anticlockwise: 'anticlockwise' };
const arrows = { clockwise: '↻', anticlockwise: '↺' };
const reasons = {
  still: 'the others are counted from it',
  small: 'less than a hand can set',
};

/** “90°”, “2 turns”, “1 turn and 90°”. */
const turned = ({ turns, rest }: Turned, p: Print): string => {
  if (turns === 0) return p.size(rest);
  const whole = `${p.number(turns)} ${turns === 1 ? 'turn' : 'turns'}`;
  return rest.si === 0 ? whole : `${whole} and ${p.size(rest)}`;
};

/** “front right adjuster (2)”, “third adjuster, back middle”: by the numbers of table and drawing. */
const adjuster = ({ name, spot, n }: At, p: Print): string =>
  spot === undefined ? `${names[name]} adjuster (${p.number(n)})` : `${names[name]} adjuster, ${names[spot]}`;

const stiffness = ({ plate, spring, load }: Stiff, p: Print): string =>
  `${p.size(plate)} at each corner, against springs of ${p(spring)} pressed with ${p.size(load)}`;

/** “rises 0.20 mm from left to right, falls 0.08 mm from front to back”. */
const leaning = ({ right, back }: Lean, p: Print): string =>
  `${right.rises ? 'rises' : 'falls'} ${p.size(right.by)} from left to right, ${back.rises ? 'rises' : 'falls'} ${p.size(back.by)} from front to back`;

const leftOver = ({ by, high, low }: Left, p: Print): string =>
  `${p(by)} from top to bottom is left that no screw can fix: point ${p.number(high.point)} lies ${p.size(high.by)} above the plane, point ${p.number(low.point)} ${p.size(low.by)} below it.`;

const en = {
  orders: {
    turnSet: (a: { at: At; turn: Turned; more: number; thicker: Amount | undefined }, p: Print) => ({
      glance: `${arrows[a.turn.way]} ${turned(a.turn, p)} · ${names[a.at.name]}`,
      sentence: `Turn the ${adjuster(a.at, p)} ${turned(a.turn, p)} ${ways[a.turn.way]}, seen from above with the front towards you${a.more > 0 ? `; then ${p.number(a.more)} more, in the steps` : ''}${a.thicker ? `; and set a first layer of ${p(a.thicker)}` : ''}.`,
    }),
    coarseThread: (a: { to: Amount }, p: Print) => ({
      glance: `↑ First layer ${p(a.to)}`,
      sentence: `Turn nothing, set a first layer of ${p(a.to)}: the bed leans, but no adjuster by as much as a hand can set. A finer thread would level it.`,
    }),
    thickerLayer: (a: { left: Amount; to: Amount }, p: Print) => ({
      glance: `↑ First layer ${p(a.to)}`,
      sentence: `Turn nothing: the tilt is within its limit, but ${p(a.left)} of warp is left that no screw can fix. A first layer of ${p(a.to)} takes it up.`,
    }),
    finerThread: {
      glance: '✓ Leave it, or finer thread',
      sentence: 'The bed leans, but no adjuster by as much as a hand can set: leave it, or use a finer thread.',
    },
    again: {
      glance: '⟳ Measure again, finer tool',
      sentence: 'Measure again before turning anything: whether the bed leans too far is too close to call.',
    },
    turnNothing: (a: { left: Amount }, p: Print) => ({
      glance: `✕ ${p(a.left)} warp · turn nothing`,
      sentence: `Turn nothing: the tilt is within its limit, but ${p(a.left)} of warp is left that no screw can fix.`,
    }),
    flatUnsure: {
      glance: '⟳ Measure flatness again, finer tool',
      sentence:
        'Leave the adjusters: the tilt is within its limit. Whether the bed is flat enough is too close to call.',
    },
    leave: { glance: '✓ Leave it', sentence: 'Leave it: the bed is level enough.' },
  },
  steps: {
    leans: (a: { lean: Lean }, p: Print) => `As measured, and seen from the front, it ${leaning(a.lean, p)}.`,
    leansInDoubt: (a: { lean: Lean }, p: Print) =>
      `As measured, and seen from the front, it ${leaning(a.lean, p)}; the doubt of the readings is as large as what matters.`,
    liftNozzle: (a: { lean: Lean }, p: Print) =>
      `Seen from the front, the bed ${leaning(a.lean, p)}. Lift the nozzle well clear first.`,
    finerTool: 'Take a finer tool, more points, or each point twice.',
    pointsFinerTool: 'Measure the points again with a finer tool, each twice.',
    note: 'Note the reading for this machine.',
    threePoints: 'Three points always lie in a plane: to see warp take a fourth, or pick “tilt alone”.',
    leftOver: (a: Left, p: Print) => leftOver(a, p),
    leftOverUnsure: (a: Left, p: Print) =>
      `${leftOver(a, p)} Whether that is too much cannot be told from these readings.`,
    freeBed:
      'Take off a bed that is clamped or screwed down, look for dirt or plastic beneath, and slacken any adjuster that strains it; measure again.',
    shimLowPlace:
      'If it stays: shim the low place from beneath the loose plate, change the plate, or print a thicker first layer.',
    leftOfTwist: (a: { by: Amount }, p: Print) =>
      `Plane and twist set, ${p(a.by)} from top to bottom is left that no screw can fix.`,
    fifthPoint: 'Four points cannot show more than plane and twist: take a fifth in the middle to see a bow.',
    elseThicker: (a: { to: Amount }, p: Print) =>
      `If it still stays, or until then: a first layer of ${p(a.to)}, which the nozzle’s bore must allow (three quarters of it, common practice).`,
    thickerToo: (a: { to: Amount }, p: Print) =>
      `What is left then needs a first layer of ${p(a.to)}, which the nozzle’s bore must allow (three quarters of it, common practice).`,
    thinPlate: (a: Stiff & { force: Amount }, p: Print) =>
      `The plate is thin enough for its springs: it twists with ${stiffness(a, p)}. Taking out this twist needs ${p.size(a.force)}, so each of the four adjusters sets its own corner.`,
    stiffPlate: (a: Stiff, p: Print) =>
      `The plate is too stiff for its springs: it twists with ${stiffness(a, p)}. Three adjusters fix it.`,
    fourthLast: (a: { at: At }, p: Print) =>
      `Three carry a plate, a fourth bends it: the ${adjuster(a.at, p)} comes last. Slacken it now if it is tight, counting the turns.`,
    turnBy: (a: { at: At; turn: Turned; raises: boolean }, p: Print) =>
      `The ${adjuster(a.at, p)}: ${turned(a.turn, p)} ${ways[a.turn.way]}, seen from above, ${a.raises ? 'raising' : 'lowering'} the bed there.`,
    turnLastBy: (a: { at: At; turn: Turned }, p: Print) =>
      `Last the ${adjuster(a.at, p)}: ${turned(a.turn, p)} ${ways[a.turn.way]}, seen from above, from where it stood, but stop where it just takes up the load without bending the plate.`,
    returnLast: (a: { at: At; why: keyof typeof reasons }, p: Print) =>
      `Last the ${adjuster(a.at, p)}: back to where it stood (${reasons[a.why]}), but stop where it just takes up the load without bending the plate.`,
    leaveOne: (a: { at: At; why: keyof typeof reasons }, p: Print) =>
      `Leave the ${adjuster(a.at, p)}: ${reasons[a.why]}.`,
    fromAbove: 'Clockwise is as seen from above, through the bed; looking up from beneath it is the other way round.',
    middleKeeps: 'The middle of the bed keeps its height; look at the first layer all the same.',
    middleMoves: (a: { raises: boolean; by: Amount }, p: Print) =>
      `This ${a.raises ? 'raises' : 'lowers'} the middle of the bed by ${p.size(a.by)}: set the height of the first layer anew before the nozzle comes down.`,
    measureAll:
      'Measure all points again and repeat: two rounds bring it in; if a third is needed, something gives or sticks.',
  },
  contradictions: {
    pastMiddle: (a: { inset: Amount }, p: Print) =>
      `Adjusters ${p(a.inset)} inside the edges would stand past the middle of the bed, left and right exchanged. Which is right, that or the size of the bed?`,
  },
  problems: {
    noPlace: (a: { line: number }, p: Print) =>
      `Point ${p.number(a.line)} has a height but no place: enter x and y beside it, or take the line out.`,
    tooFew: (a: { points: 0 | 1 | 2 }) =>
      `${['No point', 'One point', 'Two points'][a.points] ?? ''} so far: a plane needs the heights of at least three, not in one line.`,
    inOneLine: 'These points all lie in one line: they do not say how the bed leans across it. Add one to the side.',
    edgesNeeded: 'Bed width, depth and margin are needed first.',
    marginTooLarge: 'The margin leaves nothing of the bed: make it smaller.',
    adjustersNeeded: 'The places of the adjusters are needed first.',
  },
  figure: {
    label: 'Levelling plan of the bed from above: spot heights, and contours with ticks to the side that falls',
    left: 'left',
    right: 'right',
    front: 'front',
    back: 'back',
    frontAndHeights: 'front: mm above (+) and below the mean; ticks fall',
    adjuster: (n: number, turns: number, rest: string | undefined) =>
      rest === undefined && turns === 0
        ? `${n}: leave`
        : `${n}: ${[...(turns > 0 ? [`${turns} ×`] : []), ...(rest ? [rest] : [])].join(' ')}`,
    point: (n: number, height: string) => `point ${n}: ${height}`,
    scale: (factor: number) => `plan to scale; below, the tilt drawn ${factor} times too large`,
  },
};
export default en;
