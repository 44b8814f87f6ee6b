/** What the check “Lead-screw straightness” says to do. */
import type { Amount, Print } from '../../../../engine/order';

/** What comes first after the coupling. */
const firsts = { free: 'free the top bearing', float: 'float the nut' };
type First = keyof typeof firsts;

/** Wobble before and after the top is freed. */
interface Freed {
  readonly from: Amount;
  readonly to: Amount;
}
const change = ({ from, to }: Freed, p: Print) =>
  `from about ${p.size(from)} to at most about ${p.size(to)}, nut at mid-height`;
const carriedBelow = 'Only if the lower end carries the load (where a thrust bearing at the top does, the screw drops)';

export const orders = {
  leave: {
    glance: '✓ Leave the screw',
    sentence: 'Leave the screw as it is: its bow does not reach the print.',
  },
  bowedNoHarm: {
    glance: '✓ Leave the bowed screw in',
    sentence: 'Leave the screw in: it is bowed more than its class allows, but the bow does not reach the print.',
  },
  leaveIn: {
    glance: '✓ Leave the screw in',
    sentence: 'Leave the screw in; measure again only if you want to send it back.',
  },
  measureAgain: (a: { guide: boolean }) => ({
    glance: a.guide ? '⟳ Measure guide and screw again' : '⟳ Measure the screw again',
    sentence: `Do not buy a screw yet: measure ${a.guide ? 'the guide and the screw' : 'the screw'} again.`,
  }),
  checkReading: (a: { share: Amount }, p: Print) => ({
    glance: '⟳ Check the reading first',
    sentence: `Check the reading first: a bow of more than ${p(a.share)} of the length is seen by eye.`,
  }),
  bent: (a: { first: First }) => ({
    glance: '✕ Bent · check coupling first',
    sentence: `The screw is bent: check the coupling, ${firsts[a.first]}, and replace the screw if ridges stay.`,
  }),
  keep: (a: { first: First }) => ({
    glance: '✓ Keep screw · check coupling',
    sentence: `Keep the screw: check the coupling, then ${firsts[a.first]}; a new one of this class may be no straighter.`,
  }),
  wobbles: (a: { first: First; wobble: Amount }, p: Print) => ({
    glance: '↻ Coupling half turn on screw',
    sentence: `The carriage wobbles by ${p.size(a.wobble)}: check the coupling, then ${firsts[a.first]}, before buying a screw.`,
  }),
};

export const steps = {
  coupling: (a: { refit: boolean }) =>
    `${a.refit ? 'With the screw back in the machine (rolling cannot show this): draw' : 'Draw'} one pen line across screw and coupling and mark the high point. Loosen the coupling on the screw, turn it half a turn on the screw, tighten, find the high point again. High point still at the screw’s mark: the screw is bent. High point gone over with the coupling: the coupling is off centre; replace the coupling, keep the screw.`,
  tryFreeing: `${carriedBelow}: slacken the top bearing’s screws for a trial, turn the screw one turn and read the carriage: keep it free only if the reading falls.`,
  keepTopTight: (a: Freed, p: Print) =>
    `Leave the top bearing tight: freeing it would take the wobble ${change(a, p)}.`,
  freeTop: (a: Freed, p: Print) =>
    `${carriedBelow}: slacken the top bearing’s screws by half a turn so that the end finds its own place, or take the bearing off: the wobble goes ${change(a, p)}.`,
  swapEnds:
    'With the screw out, read again at a quarter and at three quarters of the span. A smooth bow shows three quarters of the middle’s reading at both, and swapping ends changes nothing. If one place shows more, the bend sits there: swap the screw end for end, if both ends are turned alike and the bend then lies outside the nut’s travel.',
  floatTheNut: (a: { by: Amount }, p: Print) =>
    `Float the nut: let it slide sideways by ${p.size(a.by)} or more each way, held only against turning and against lifting. This works whether the screw or the coupling is at fault.`,
  replaceLast: (a: { bow: Amount; per: Amount; wobble: Amount }, p: Print) =>
    `Replace the screw last: ask for a bow of at most ${p(a.bow)} in ${p(a.per)} and roll it on a flat before fitting. One right at that limit would still give a wobble of ${p(a.wobble)}.`,
  notByHand: (a: { push: Amount; out: Amount }, p: Print) =>
    `Do not straighten it by hand: its middle must be pushed about ${p(a.push)} aside before anything stays, to take out ${p.size(a.out)}, and it mostly ends as a kink. Only a soft rolled screw with one smooth bow, on two blocks under a press, in small pushes with a reading after each and a spare at hand, is worth a try.`,
  measureGuide:
    'Measure the guide’s stiffness at the nut: pull with a luggage scale, dial indicator opposite, three times.',
  flatCannot:
    'A flat cannot settle it: the screw’s own weight closes the gap. Use two V-blocks and a dial indicator, or a shorter span.',
  takeBlocks: 'Measure on two V-blocks with a dial indicator: a bow shows twice as large, and weight drops out.',
  readAtCoupling:
    'Read the swing just above the coupling too, and where its high point faces; better, take the screw out and use V-blocks.',
  readAtBlock:
    'Read the swing close beside a V-block and enter it as the crests’ unevenness; take the middle’s swing three times.',
  hiddenIsSmall: 'A flat shows only that the bow is small; even the most it can hide stays within the limits.',
  pushed: (a: { by: Amount; allowed: Amount }, p: Print) =>
    `The carriage is pushed about by ${p.size(a.by)}, less than the ${p(a.allowed)} allowed.`,
  ridgesRemain: (a: { period: Amount }, p: Print) => `If ridges every ${p(a.period)} remain, look at the coupling.`,
  bowAndWobble: (a: { bow: Amount; per: Amount; bowAllowed: Amount; wobble: Amount; allowed: Amount }, p: Print) =>
    `Bow ${p.size(a.bow)} in ${p(a.per)} (allowed ${p(a.bowAllowed)}); wobble at the carriage ${p.size(a.wobble)} (allowed ${p(a.allowed)}).`,
  sendBackOrLater: 'If it is new, send it back; else replace it when the drive is next apart.',
  sendBack: (a: { bow: Amount; per: Amount }, p: Print) =>
    `The screw is bowed more than its class allows (${p.size(a.bow)} in ${p(a.per)}): if it is new, send it back.`,
  sight:
    'Sight along the screw, or lay it against a straightedge. If it looks straight, the reading is wrong: look at its unit, at swing against bow, and at the distance between the supports.',
  farSupports:
    'Take the supports nearly as far apart as the screw is long; a short span makes a small slip a large bow.',
  replaceIfBowed:
    'If it is really bowed that far, replace it: no straightening makes such a screw true. Nothing else here holds for it.',
};
