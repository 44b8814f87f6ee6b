import type { Amount, Print } from '../../../../engine/order';

/** Humidity in the box, and the most that is wanted there. */
interface Inside {
  readonly inside: Amount;
  readonly most: Amount;
}
type Bring = 'nearer' | 'farther';

const gaps = { wider: 'wider', narrower: 'narrower' };
const nearerOrFarther = { nearer: 'nearer', farther: 'farther' };
const fromEachOther = { nearer: 'nearer to each other', farther: 'farther from each other' };

export const orders = {
  unwrap: (a: { above: Amount; dew: Amount }, p: Print) => ({
    glance: '✓ Unwrap it',
    sentence: `Unwrap it: its surface is ${p(a.above)} above ${p(a.dew)}, where water settles.`,
  }),
  waitAndRead: (a: { until: Amount }, p: Print) => ({
    glance: '⟳ Keep wrapped, read again',
    sentence: `Leave it wrapped until its surface has ${p(a.until)}: whether this air wets it now is too close to call.`,
  }),
  getsWet: (a: { until: Amount }, p: Print) => ({
    glance: '⚠ Keep wrapped, switched off',
    sentence: `Leave it wrapped and switched off: unwrapped now, it gets wet. Wait until its surface has ${p(a.until)}.`,
  }),
  tooNear: (a: { until: Amount }, p: Print) => ({
    glance: `✕ Keep wrapped until ${p(a.until)}`,
    sentence: `Leave it wrapped until its surface has ${p(a.until)}: nearer than wanted to where water settles.`,
  }),
  neverDry: (a: { settles: Amount; air: Amount }, p: Print) => ({
    glance: '⚠ Keep wrapped, dry the air',
    sentence: `Leave it wrapped and dry the air first: water settles at ${p(a.settles)}, and the room’s ${p(a.air)} are too near that.`,
  }),
  coolBox: (a: { to: Amount; at: Amount; soft: Amount }, p: Print) => ({
    glance: `↓ Cool box to ${p(a.to)}`,
    sentence: `Turn the box down from ${p(a.at)} to ${p(a.to)}: what lies in it goes soft at ${p(a.soft)}.`,
  }),
  outOfBox: (a: { at: Amount; soft: Amount }, p: Print) => ({
    glance: '⚠ Take it out, keep cool',
    sentence: `Take it out of this box and keep it in a cooler room: it goes soft at ${p(a.soft)}, and the box has ${p(a.at)}.`,
  }),
  probeBox: (a: { at: Amount; most: Amount }, p: Print) => ({
    glance: '⟳ Measure beside the spool',
    sentence: `Measure beside the spool: whether ${p(a.at)} stays below ${p(a.most)} is too close to call.`,
  }),
  dryBox: (a: { at: Amount; soft: Amount } & Inside, p: Print) => ({
    glance: '⚠ Dry the box by desiccant',
    sentence: `Dry the box’s air with desiccant, not with heat: at ${p(a.at)} it has ${p(a.inside)} where ${p(a.most)} is wanted, and only a box hotter than its filament bears would do: that goes soft at ${p(a.soft)}.`,
  }),
  keepBox: (a: { at: Amount } & Inside, p: Print) => ({
    glance: `✓ Keep box at ${p(a.at)}`,
    sentence: `Keep the box at ${p(a.at)}: the room’s air has ${p(a.inside)} in it, no more than the ${p(a.most)} wanted.`,
  }),
  hygrometerInside: (a: Inside, p: Print) => ({
    glance: '⟳ Hygrometer into the box',
    sentence: `Put a hygrometer inside the box: whether ${p(a.inside)} stays below ${p(a.most)} is too close to call.`,
  }),
  warmBox: (a: { to: Amount; at: Amount } & Inside, p: Print) => ({
    glance: `↑ Warm box to ${p(a.to)}`,
    sentence: `Warm the box to ${p(a.to)}, or dry its air: at ${p(a.at)} the room’s air has ${p(a.inside)} in it, and ${p(a.most)} is wanted.`,
  }),
  leaveZero: (a: { moved: Amount; swung: Amount; allowed: Amount }, p: Print) => ({
    glance: '✓ Leave Z zero',
    sentence: `Leave Z zero: the gap moves by ${p.size(a.moved)} over a swing of ${p(a.swung)}, within the ${p(a.allowed)} allowed.`,
  }),
  readFrame: (a: { moved: Amount; allowed: Amount }, p: Print) => ({
    glance: '⟳ Read frame’s temperature better',
    sentence: `Read the frame’s temperature better before touching Z zero: a change of ${p.size(a.moved)} against ${p(a.allowed)} is too close to call.`,
  }),
  setZero: (a: { moved: Amount; gap: 'wider' | 'narrower'; bring: Bring }, p: Print) => ({
    glance: `↕ Z zero: ${p.size(a.moved)} ${nearerOrFarther[a.bring]}`,
    sentence: `Set Z zero again for printing at this temperature: the gap is ${p.size(a.moved)} ${gaps[a.gap]} than when it was set.`,
  }),
};

export const steps = {
  frost: 'Below freezing it settles as frost, sooner than dew would: that is counted.',
  rust: 'Bare steel rusts at this humidity even without drops: oil the screws and rods thinly, or warm it further.',
  roomFirst: 'Let it come to room temperature all the same before tramming: it still grows while it warms.',
  readAgain:
    'Read air, humidity and surface again, each with its tool left there for ten minutes. The hygrometer is usually the weakest.',
  mirror: 'A mirror or a piece of sheet metal as cold as it shows dew first: lay one beside it.',
  closedBag:
    'Bring it to room temperature first, in its closed bag or under a sheet taped shut: the water then settles outside.',
  spools: 'Spools stay in their bag; filament with dew on it takes the water up.',
  wipeBed:
    'A bed already in the machine: wipe it dry, then warm it with its own heater before the first layer, once the electronics are dry.',
  drierAir:
    'Or make the air drier: what counts is the dew point, so heating the room alone does not help, airing in frost does.',
  letBreathe: 'Let it breathe: a wet spool in a shut box makes its own damp.',
  dampSpell: 'A damp spell raises it in proportion; look at the hygrometer again then.',
  desiccant: 'Fresh desiccant in a shut box dries further than heat; a warm box with a vent keeps to this figure.',
  lookAfter: 'Look at the filament: oval, flattened or stuck, it is scrap.',
  probeBeside: 'Hang a probe beside the spool through several swings of the heater, and type the swing after ±.',
  belowSoft: 'Stay below the temperature at which the material or its spool goes soft.',
  warmedThrough: 'Tram and set Z zero with the machine warmed through, as it prints: bed on for half an hour or more.',
  notTheWarmth: 'If the first layer still changes over the day, the day’s warmth is not the reason.',
  holdToUpright: 'Hold the sensor to an upright for ten minutes, at both ends of the day.',
  feelerTwice: 'Or measure the gap itself with a feeler, cold in the morning and warm in the evening.',
  bring: (a: { moved: Amount; bring: Bring }, p: Print) =>
    `Bring nozzle and bed ${p.size(a.moved)} ${fromEachOther[a.bring]}, then prove it with a feeler. The bed’s screws stay as they are: both sides move alike.`,
  otherEnd: 'Tram again at the other end of the day, or note both settings and take the one that fits.',
  outOfTheSun:
    'Keep the machine off the outer wall, out of the sun and away from the radiator; a cover halves the swing.',
  zeroOnBed: 'Finding zero on the bed itself, just before the print, takes this change away.',
};
