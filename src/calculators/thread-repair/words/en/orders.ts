/** What the check “Thread repair” tells to do, and its ways side by side. */
import type { Amount, Print } from '../../../../engine/order';
import type { Against } from '../../judging';
import type { WayId } from '../../model';

interface Tightness {
  readonly torque: Amount;
  /** Of the pull, in percent. */
  readonly scatter: number | undefined;
}
interface Mend {
  /** Strength over the screw's proof load. */
  readonly percent: number;
  readonly but: readonly Against[];
}

const objections = {
  noThreadBelow: 'There is no good thread below the screw’s tip.',
  tooShallow: 'The hole is too shallow for this length and the tap’s lead.',
  breaksOut: 'It would break out of the part.',
  backNotReached: 'The back of the hole cannot be reached.',
  noWasherRoom: 'The washer would hang over the edge.',
  ironHarms: 'An iron overheats this plastic: it gives off formaldehyde.',
  noRoomToMelt: 'The hole is too shallow for the insert and the plastic that it pushes down.',
  noFloorLeft: 'The part is too thin for the nut with a floor of one screw diameter under it.',
  tooWeak: 'Too weak.',
  strengthInDoubt: 'Whether it is strong enough is too close to call.',
  wallThin: 'The wall gets too thin.',
  wallInDoubt: 'Whether the wall is enough is too close to call.',
};
const against = (one: Against): string =>
  one.why === 'otherInsert'
    ? `Choose ${one.diameters} screw diameters: that length is strong enough.`
    : objections[one.why];
/** One sentence after the other. */
const allAgainst = (all: readonly Against[]): string => all.map(against).join(' ');

const strength = (percent: number): string => `about ${percent} % of the screw’s proof load`;
/** “…: about 113 % of the screw’s proof load. Too weak.” */
const mended = (doing: string, { percent, but }: Mend): string =>
  but.length === 0 ? `${doing}: ${strength(percent)}.` : `${doing}: ${strength(percent)}. ${allAgainst(but)}`;

const tighten = ({ torque, scatter }: Tightness, p: Print): string =>
  scatter === undefined
    ? `Tighten to ${p(torque)}, clockwise seen from the head.`
    : `Tighten to ${p(torque)}, clockwise seen from the head. The pull that this makes is known to ${scatter} % only: clean and dry threads, no jerk.`;
/** A drill by its size, and by its name where it has one. */
interface Drill {
  readonly drill: Amount;
  readonly named?: string | undefined;
}
const called = ({ drill, named }: Drill, p: Print): string =>
  named === undefined ? p(drill) : `${p(drill)} (drill ${named})`;
const drillSquare = (a: Drill, blind: boolean, p: Print): string =>
  blind
    ? `Drill ${called(a, p)}, square to the face. Mark the depth on the drill with tape and go no deeper than the hole is.`
    : `Drill ${called(a, p)}, square to the face.`;
const CUT = 'half a turn on, a quarter back, and clear the chips often';

const names: Readonly<Record<WayId, string>> = {
  longer: 'Longer screw',
  insert: 'Wire thread insert',
  next: 'Next larger screw',
  bolt: 'Bolt and nut',
  heatset: 'Heat-set insert',
  nut: 'Captive nut',
  replace: 'New part',
};
/** The same inside a sentence. */
const inSentence: Readonly<Record<WayId, string>> = {
  longer: 'longer screw',
  insert: 'wire thread insert',
  next: 'next larger screw',
  bolt: 'bolt and nut',
  heatset: 'heat-set insert',
  nut: 'captive nut',
  replace: 'new part',
};

const en = {
  orders: {
    longer: (a: Mend & { size: string }) => ({
      glance: `↓ Longer ${a.size} screw`,
      sentence: mended(`Use a longer ${a.size} screw, down into the good thread`, a),
    }),
    insert: (a: Mend & Drill & { size: string; length: Amount }, p: Print) => ({
      glance: `⌀ ${p(a.drill)} · ${a.size} insert`,
      sentence: mended(
        `Fit a wire thread insert: drill ${called(a, p)}, tap ${a.size} wire-insert, insert ${p(a.length)} long`,
        a,
      ),
    }),
    next: (a: Mend & Drill & { size: string }, p: Print) => ({
      glance: `⌀ ${p(a.drill)} · tap ${a.size}`,
      sentence: mended(`Go up to ${a.size}: drill ${called(a, p)}, tap ${a.size}`, a),
    }),
    bolt: (a: Mend & Drill & { size: string }, p: Print) => ({
      glance: `⌀ ${p(a.drill)} through · nut`,
      sentence: mended(`Drill through to ${called(a, p)} and use a bolt ${a.size} with a nut`, a),
    }),
    heatset: (a: Mend & Drill & { size: string; length: Amount }, p: Print) => ({
      glance: `⌀ ${p(a.drill)} · ${a.size} heat-set`,
      sentence: mended(
        `Melt in a heat-set insert ${a.size}, ${p(a.length)} long: hole ${called(a, p)}, or as the insert’s own sheet says`,
        a,
      ),
    }),
    nut: (a: Mend & { size: string; flats: Amount }, p: Print) => ({
      glance: `⬡ Captive nut ${a.size}`,
      sentence: mended(`Let a nut ${a.size} into the part, ${p(a.flats)} across flats`, a),
    }),
    replace: (a: Mend) => ({
      glance: '✕ Replace the part',
      sentence: mended('Replace the part', a),
    }),
    leave: (a: { torque: Amount }, p: Print) => ({
      glance: `✓ Leave it · ${p(a.torque)} most`,
      sentence: `Leave the hole as it is: what is left holds. Tighten to no more than ${p(a.torque)}.`,
    }),
    inDoubt: (a: { torque: Amount; way: WayId }, p: Print) => ({
      glance: `≈ ${p(a.torque)} at most`,
      sentence: `Whether what is left holds is too close to call: tighten to no more than ${p(a.torque)}, or mend it: ${inSentence[a.way]}.`,
    }),
  },
  contradictions: {
    leftBeyondReach: (a: { reach: Amount; left: Amount }, p: Print) =>
      `More good thread is left, ${p(a.left)}, than the screw reaches, ${p(a.reach)}. Which is right? Thread below its tip stands in its own line.`,
    leftBeyondHole: (a: { left: Amount; depth: Amount }, p: Print) =>
      `More good thread is left, ${p(a.left)}, than the hole is deep, ${p(a.depth)}. Which is right?`,
    reachBeyondHole: (a: { reach: Amount; depth: Amount }, p: Print) =>
      `The screw reaches ${p(a.reach)} into a blind hole ${p(a.depth)} deep. Which is right? A screw that meets the bottom never clamps: it may be too long, and the thread sound.`,
    threadBeyondHole: (a: { reach: Amount; below: Amount; depth: Amount }, p: Print) =>
      `The hole ends, at ${p(a.depth)}, before the longer screw’s tip: the screw reaches ${p(a.reach)}, and ${p(a.below)} of good thread is said to lie below. Which of the three is right?`,
  },
  steps: {
    clearMouth: 'Clear torn thread and chips out of the mouth; turn the screw in by hand until it bites squarely.',
    tighten,
    stopIfTurning: 'If it ever turns on without getting tighter, stop: then mend it.',
    measureLeft: 'Measure the good thread again with the depth rod, from both sides of the hole where you can.',
    whyCheapest: (a: { percent: number; only: boolean }) =>
      a.only
        ? `Why this way: it bears ${strength(a.percent)}. It is the only way that is surely strong enough.`
        : `Why this way: it bears ${strength(a.percent)}. It costs least, your time counted, of those that are surely strong enough.`,
    whyStrongest: (a: Mend) =>
      `Why this way: no way is surely strong enough with wall to spare; this one is the strongest that can be done, ${strength(a.percent)}. ${allAgainst(a.but)}`,
    takeLonger: (a: { by: Amount }, p: Print) =>
      `Take a screw longer by ${p(a.by)} at most: it must clamp before it meets the bottom of the hole.`,
    turnInByHand:
      'Turn it in by hand first, by two turns past the stripped part; it must run without force. Clear the torn thread out first, with a scriber.',
    drillForInsert: (a: Drill & { blind: boolean; bore: Amount }, p: Print) =>
      `${drillSquare(a, a.blind, p)} The bore before the tap must be no less than ${p(a.bore)}; where the kit names another drill, take the kit’s.`,
    tapForInsert: (a: { size: string; outside: Amount; blind: boolean }, p: Print) =>
      `Tap with the tap for ${a.size} wire thread inserts (${p(a.outside)} outside: no ordinary tap fits)${a.blind ? ', first the plug tap, then the bottoming tap' : ''}: ${CUT}.`,
    windIn: (a: { size: string; length: Amount }, p: Print) =>
      `Clean the thread. Wind the insert ${a.size} × ${p(a.length)} in with its tool, clockwise seen from above, until its end lies ¾ to 1½ turns below the face. Do not press.`,
    breakTang: 'Break the tang off with the punch in one blow, and take it out.',
    screwForInsert: (a: Tightness & { reach: Amount }, p: Print) =>
      `Use a screw that reaches in by ${p(a.reach)} at least. ${tighten(a, p)}`,
    drillForLarger: (a: Drill & { blind: boolean }, p: Print) => drillSquare(a, a.blind, p),
    tapLarger: (a: { size: string }) =>
      `Tap ${a.size}: ${CUT}. Traces of the old thread may stay at the wall; they do no harm.`,
    openClamped: (a: { size: string }) =>
      `Open the hole in the clamped part for ${a.size} and look whether the larger head has room.`,
    screwLarger: (a: Tightness & { size: string; grade: string | undefined; reach: Amount }, p: Print) =>
      `Use a screw ${a.size}, ${a.grade === undefined ? 'the strongest class there is' : `class ${a.grade} or better`}, that reaches in by ${p(a.reach)} at least. ${tighten(a, p)}`,
    drillThrough: (a: Drill, p: Print) =>
      `Drill the torn thread out to ${called(a, p)}, right through, with a block behind the part.`,
    boltAndWashers: (a: { size: string; grade: string }) =>
      `Bolt ${a.size} of class ${a.grade}, a washer under the head and one under the nut; two threads must stand out of the nut.`,
    turnNut: (a: Tightness, p: Print) => `Hold the head, turn the nut. ${tighten(a, p)}`,
    ironFirst:
      'Part unplugged, cold and clamped, window open, nothing that burns about; the iron in its stand whenever it is not in use.',
    drillForHeat: (a: Drill & { blind: boolean }, p: Print) =>
      `${drillSquare(a, a.blind, p)} Break the edge, so that the insert starts straight. Where the insert’s own sheet names another hole, take that.`,
    meltIn: (a: { size: string; length: Amount; tip: Amount }, p: Print) =>
      `Tip for inserts ${a.size} on the iron, at ${p(a.tip)} and no hotter: this plastic fumes and burns above. Let the insert, ${p(a.length)} long, sink by the heat and its own weight until a fifth of a millimetre still stands out; do not push.`,
    pressFlush:
      'Lift the iron straight off and press the insert flush with cold flat metal for ten seconds. Do not touch it for five minutes; let nothing melted close the bore.',
    letsGo: (a: { softens: Amount }, p: Print) =>
      `This plastic goes soft at about ${p(a.softens)}, and the insert lets go before that: none near the hot end, the bed or a hot motor.`,
    drillForNut: (a: Drill, p: Print) => `Drill ${called(a, p)} through the floor, square to it.`,
    cutPocket: (a: { flats: Amount; deep: Amount; floor: Amount }, p: Print) =>
      `Cut a pocket with six sides from the far face, or a slot from the side: ${p(a.flats)} across flats, ${p(a.deep)} deep, and leave a floor of ${p(a.floor)} between nut and clamped face. Knife away from the hand.`,
    drawNutIn: (a: { size: string }) =>
      `Draw the nut ${a.size} in with a screw and a washer, not with a hammer. A drop of glue beside it, none on the thread, keeps it from falling out.`,
    putNewIn: 'Put the new part in; start every screw by hand, two turns, before tightening any.',
  },
  ways: {
    title: 'Ways to mend it, side by side',
    note: 'Strength: the load that strips the thread (bolt: that crushes the part) over the proof load of the present screw. Cost: money and the time it takes, as set among the seldom changed lines.',
    columns: { strength: 'Strength', wall: 'Wall mm', minutes: 'Min', cost: 'Cost' },
    names,
    facts: {
      strength: (a: { percent: number }, p: Print) => `${p.number(a.percent)}%`,
      wall: (a: { mm: number }, p: Print) => p.number(a.mm, 1),
      minutes: (a: { minutes: number }, p: Print) => p.number(a.minutes),
      cost: (a: { cost: number; decimals: number }, p: Print) => p.number(a.cost, a.decimals),
    },
    why: { against },
    needs: {
      longerScrew: (a: { size: string; by: Amount }, p: Print) => `screw ${a.size}, longer by ${p(a.by)} at most`,
      drill: (a: { size: Amount; named?: string | undefined }, p: Print) =>
        `drill ${called({ drill: a.size, named: a.named }, p)}`,
      insertTap: (a: { size: string; bottoming: boolean }) =>
        a.bottoming ? `tap ${a.size} wire-insert, bottoming` : `tap ${a.size} wire-insert`,
      insert: (a: { size: string; length: Amount }, p: Print) => `insert ${a.size} × ${p(a.length)}`,
      insertTools: 'winding tool, tang punch',
      tap: (a: { size: string }) => `tap ${a.size}`,
      largerScrew: (a: { size: string; grade: string | undefined }) =>
        a.grade === undefined
          ? `screw ${a.size}, class above 12.9 or better`
          : `screw ${a.size}, class ${a.grade} or better`,
      clearanceDrill: 'drill for its clearance hole',
      bolt: (a: { size: string; grade: string }) => `bolt ${a.size}, class ${a.grade}`,
      nut: (a: { size: string }) => `nut ${a.size}`,
      washers: 'two washers',
      heatInsert: (a: { size: string; length: Amount }, p: Print) => `heat-set insert ${a.size} × ${p(a.length)}`,
      iron: 'soldering iron with a tip for it',
      pocketTools: 'knife or small file',
      part: 'the part',
    },
  },
  figure: {
    label: 'Section through the stripped hole',
    mended: {
      longer: (size: string) => `longer screw ${size}`,
      insert: (size: string) => `insert ${size}`,
      next: (size: string) => `larger thread ${size}`,
      bolt: (size: string) => `through hole ${size}`,
      heatset: (size: string) => `melted in, hole ${size}`,
      nut: (size: string) => `nut ${size} across flats`,
      replace: (size: string) => `new thread ${size}`,
    },
    wall: (size: string) => `wall ${size}`,
    reach: (size: string) => `reach ${size}`,
    hole: (screw: string, left: string, depth: string) => `${screw}: ${left} of thread left; hole ${depth} deep`,
    toScale: 'to scale',
    toScaleButWall: 'to scale, but for the wall, which is broken off',
  },
};
export default en;
