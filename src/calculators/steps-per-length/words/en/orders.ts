/** What the check “Steps per length” says to do. */
import type { Amount, Print } from '../../../../engine/order';

/** What the steps are of, inside a sentence. */
const axes = { x: 'X', y: 'Y', z: 'Z', zb: 'Z', feed: 'the filament feed' };
/** The same at a glance. */
const short = { x: 'X', y: 'Y', z: 'Z', zb: 'Z', feed: 'feed' };
type Axis = keyof typeof axes;

interface Change {
  readonly axis: Axis;
  readonly raise: boolean;
  readonly from: Amount;
  readonly to: Amount;
}
interface Off {
  readonly axis: Axis;
  readonly by: Amount;
  /** Too far; else too short. */
  readonly far: boolean;
}
/** How to scale a piece; without `scale`, not at all. */
export interface Scaling {
  readonly axis: Axis;
  readonly scale: { readonly up: boolean; readonly to: Amount } | undefined;
}

/** What a suspicion starts from: the number set, the same while the travel is right, or the travel. */
export type Start = 'set' | 'entered' | 'moved';
/** A part other than counted that would explain it: what fits and what was counted; leads and pitches in mm. */
export type Suspect =
  | { readonly part: 'driver' | 'screw' | 'pulley' | 'belt'; readonly fits: number; readonly counted: number }
  | { readonly part: 'motor'; readonly twice: boolean };

/** The unit of length, as it is written and as it is said. */
type Per = (amount: Amount) => string;
const written: Per = ({ unit }) => (unit === 'per_in' ? 'inch' : 'mm');
const said: Per = ({ unit }) => (unit === 'per_in' ? 'inch' : 'millimetre');
/** A sentence with numbers of steps in it, for the eye and for the ear. */
const both = (glance: string, sentence: (per: Per) => string) => ({
  glance,
  sentence: sentence(written),
  spoken: sentence(said),
});

const number = (of: Amount, p: Print, per: Per = written) => `${p.bare(of)}\u00a0steps per ${per(of)}`;
const setting = ({ axis, raise, from, to }: Change, p: Print, per: Per) =>
  `${raise ? 'raise' : 'lower'} the steps of ${axes[axis]} from ${number(from, p, per)} to ${number(to, p, per)}`;
const glanceAt = ({ axis, raise, to }: Change, p: Print) =>
  `${raise ? '↑' : '↓'} ${p.bare(to)} per ${written(to)} · ${short[axis]}`;

const scaling = ({ axis, scale }: Scaling, p: Print) =>
  scale
    ? `Scale pieces of this plastic ${scale.up ? 'up' : 'down'} to ${p(scale.to)} along ${axes[axis]}.`
    : 'Leave the scale: these sizes cannot tell it from 100 %.';
const glanceAtScale = ({ axis, scale }: Scaling, p: Print) =>
  scale ? `${scale.up ? '↑' : '↓'} Scale ${p(scale.to)} · ${short[axis]}` : '✓ Leave steps and scale';

const starts: Readonly<Record<Start, string>> = {
  set: 'The number set would suit',
  entered: 'The number set, which moves right, suits',
  moved: 'It moves like',
};
const suspect = (one: Suspect, p: Print): string => {
  if (one.part === 'motor') return `a motor with full steps ${one.twice ? 'twice' : 'half'} as large (1.8° and 0.9°)`;
  const [fits, counted] = [p.number(one.fits), p.number(one.counted)];
  return {
    driver: `a driver at ${fits} microsteps in place of ${counted}`,
    screw: `a screw of ${fits} mm lead in place of ${counted} mm`,
    pulley: `a pulley of ${fits} teeth in place of ${counted}`,
    belt: `a belt of ${fits} mm pitch in place of ${counted} mm`,
  }[one.part];
};

export const orders = {
  leaveCounted: (a: { axis: Axis; set: Amount }, p: Print) =>
    both(
      `✓ Leave the steps · ${short[a.axis]}`,
      (per) => `Leave the steps of ${axes[a.axis]}: ${number(a.set, p, per)} is what the parts make.`,
    ),
  setCounted: (a: { change: Change }, p: Print) =>
    both(glanceAt(a.change, p), (per) => `The number set is not what the parts make: ${setting(a.change, p, per)}.`),
  measureTravel: (a: { axis: Axis; set: Amount }, p: Print) =>
    both(
      `⟳ Measure the travel · ${short[a.axis]}`,
      (per) =>
        `Leave the steps of ${axes[a.axis]}: counting cannot tell whether ${number(a.set, p, per)} is right. Measure the travel.`,
    ),
  placesSwapped: {
    glance: '⟳ Measure again, places swapped',
    sentence: 'Measure again: the place after the move must be farther from the stop than before.',
  },
  marksSwapped: {
    glance: '⟳ Measure again, marks swapped',
    sentence: 'Measure again: the mark must come nearer to the inlet by feeding.',
  },
  measureLonger: (a: { axis: Axis }) => ({
    glance: `⟳ Measure longer · ${short[a.axis]}`,
    sentence: `Leave the steps of ${axes[a.axis]} and measure over a longer length: the correction is smaller than its doubt allows to tell.`,
  }),
  leaveBoth: (a: { axis: Axis }) => ({
    glance: `✓ Leave the steps · ${short[a.axis]}`,
    sentence: `Leave the steps of ${axes[a.axis]}: it moves what it is told, and the parts make the same number.`,
  }),
  correctEntries: (a: { axis: Axis }) => ({
    glance: '✓ Leave steps · correct entries',
    sentence: `Leave the steps of ${axes[a.axis]}: it moves what it is told. Correct what is entered here about the parts.`,
  }),
  set: (a: Off & { change: Change }, p: Print) =>
    both(
      glanceAt(a.change, p),
      (per) =>
        `${axes[a.axis]} moves ${p.size(a.by)} ${a.far ? 'too far' : 'too short'}: ${setting(a.change, p, per)}.`,
    ),
  findPart: (a: Off, p: Print) => ({
    glance: `⚠ Find the wrong part · ${short[a.axis]}`,
    sentence: `${axes[a.axis]} moves ${p.size(a.by)} ${a.far ? 'too far' : 'too short'}, and no belt or screw stretches that much: find the part that is other than counted before any number is changed.`,
  }),
  leaveFeed: {
    glance: '✓ Leave the feed’s steps',
    sentence: 'Leave the steps of the filament feed: it feeds what it is told.',
  },
  setFeed: (a: { by: Amount; little: boolean; change: Change }, p: Print) =>
    both(
      glanceAt(a.change, p),
      (per) => `The feed gives ${p.size(a.by)} too ${a.little ? 'little' : 'much'}: ${setting(a.change, p, per)}.`,
    ),
  feedTicks: (a: { by: Amount }, p: Print) => ({
    glance: '⟳ Feed again without ticks',
    sentence: `Leave the steps of the filament feed: it ticked, and fed ${p.size(a.by)} too little. Feed again slower, until it does not tick.`,
  }),
  feedLonger: {
    glance: '⟳ Feed a longer piece',
    sentence:
      'Leave the steps of the filament feed and feed a longer piece: the correction is smaller than its doubt allows to tell.',
  },
  driveFirst: (a: { set: Amount; parts: Amount }, p: Print) =>
    both(
      '⟳ Measure the drive first',
      (per) =>
        `Leave the piece for now: ${number(a.set, p, per)} is set and the parts make ${number(a.parts, p, per)}. Measure the drive’s own travel first.`,
    ),
  plasticShrank: (a: Scaling, p: Print) => ({
    glance: glanceAtScale(a, p),
    sentence: `Leave the steps of ${axes[a.axis]}: the plastic shrank as it must. ${scaling(a, p)}`,
  }),
  untilMeasured: (a: { axis: Axis; larger: boolean }) => ({
    glance: `⟳ Measure the travel · ${short[a.axis]}`,
    sentence: `Leave the steps of ${axes[a.axis]} until its own travel is measured: ${a.larger ? 'the piece is larger' : 'the piece is smaller'} than shrinkage explains.`,
  }),
  pieceCannotTell: (a: Scaling, p: Print) => ({
    glance: glanceAtScale(a, p),
    sentence: `Leave the steps of ${axes[a.axis]}: a printed piece cannot tell a drive that well. ${scaling(a, p)}`,
  }),
};

export const steps = {
  measureFeed: 'Then measure what is fed: how deep the gear bites is not known beforehand.',
  measureLongest: 'Then command the longest move there is and measure it: it must agree.',
  countAgain:
    'First count again: teeth of the pulley, pitch or lead, and the microsteps that the driver is switched to.',
  suspect: (a: { start: Start; found: readonly Suspect[] }, p: Print) =>
    `${starts[a.start]} ${a.found.map((one) => suspect(one, p)).join(', or ')}: look there first.`,
  overLonger: 'Measure over a longer length.',
  noLengthSettles:
    'The error stands so near the limit that no length of test will settle it: leaving the number and setting the new one are equally right.',
  thisLong: (a: { length: Amount; slack: boolean }, p: Print) =>
    `With this tool the test has to be about ${p(a.length)} long; a finer tool makes do with less.${a.slack ? ' Or take up the slack first: the lost motion is the largest doubt here.' : ''}`,
  swapped: 'The two readings are swapped, or the move went the other way.',
  travelAsks: (a: { travel: Amount; parts: Amount }, p: Print) =>
    `The travel alone would ask for ${number(a.travel, p)}, the parts make ${number(a.parts, p)}.`,
  scaleThePiece: 'If pieces still come out small, it is the plastic: scale the piece, not the drive.',
  setAndParts: (a: { set: Amount; parts: Amount }, p: Print) =>
    `Set is ${number(a.set, p)}, but the parts as entered would make ${number(a.parts, p)}.`,
  takeCounted: 'Count and travel agree, so take the counted number: it carries no doubt of the tool.',
  couldStretch: (a: { most: Amount; far: boolean }, p: Print) =>
    `This belt, pulled as hard as it may be, is ${p(a.most)} longer at most, its tolerance included${a.far ? '' : '; and a belt does not grow shorter'}.`,
  notThePiece:
    'Where only printed sizes are off, and this travel is right: look at line width and flow for a constant part, at the plastic’s shrinkage for a share.',
  slips:
    'Else look for a grub screw that slips, a belt that jumps teeth, a motor that loses steps: the error then differs from test to test.',
  screwCountsAs: (a: { lead: Amount }, p: Print) =>
    `The screw then counts as one of ${p(a.lead)} lead: measure at two places along it before believing that.`,
  beltCountsAs: (a: { pitch: Amount }, p: Print) =>
    `The belt then counts as one of ${p(a.pitch)} pitch. Set its tension first: tightening lengthens the pitch.`,
  repeatElsewhere:
    'Repeat the test in the other direction and at another place: only an error that stays is one of the steps.',
  feedAtFlow: 'Feed once more at the flow you print with: what is missing then is slip, no matter of steps.',
  slip: (a: { share: Amount }, p: Print) =>
    `At print speed another ${p(a.share)} is missing: that is slip under back pressure. Print slower or hotter, clear the nozzle, set the idler’s pressure; leave the steps out of it.`,
  ticked: (a: { lost: Amount }, p: Print) =>
    `It ticked: if that was the motor falling back, about ${p(a.lost)} or a multiple was not fed. If the gear slipped on the filament, look for its dust.`,
  findTicks:
    'If it ticks slowly too: hotter, clear the nozzle, look at the filament’s way in, set the idler’s pressure. No number of steps mends that.',
  noSlip: 'At print speed no more is missing than this test can see.',
  gearCountsAs: (a: { diameter: Amount }, p: Print) =>
    `The gear then counts as one of ${p(a.diameter)} where it grips.`,
  farOff:
    'That is far: look at the gear ratio and the microsteps entered before you set it, and for ground-down filament.',
  brushTeeth: 'Brush the gear’s teeth clean and repeat once: filament that was ground down feeds too little.',
  explained: (a: { piece: Amount; shrinkage: Amount; left: Amount }, p: Print) =>
    `Of the ${p(a.piece)} of the piece, shrinkage explains −${p(a.shrinkage)}; ${p(a.left)} is left.`,
  scale: scaling,
  leaveOutline: 'Leave the outline: these sizes show no wall that stands out or falls short.',
  moveOutline: (a: { by: Amount; out: boolean }, p: Print) =>
    `Every wall stands ${p.size(a.by)} ${a.out ? 'out' : 'back'}, on a small piece as on a large one, and holes are ${a.out ? 'narrower' : 'wider'} by twice that: draw the outline ${p.size(a.by)} ${a.out ? 'inwards' : 'outwards'}, or set the line width and the flow right. No steps and no scale mend that.`,
  driveBeforePiece: 'Choose “the drive’s own travel” above. Scale and outline come after the drive is right.',
  anotherPlastic: 'A belt’s pitch does not change with the plastic: another one gets another scale.',
  axisByItself:
    'Measure how far the axis moves by itself (choose it above), over the longest length there is. If that agrees with the parts, the rest is the plastic’s too: enter its shrinkage.',
  ownTravel: 'To know about the drive, measure its own travel (choose it above): no shrinkage comes in.',
};
