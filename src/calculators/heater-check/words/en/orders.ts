import type { Amount, Print } from '../../../../engine/order';

type Part = 'liner' | 'sensor' | 'block' | 'nozzle';
/** Parts that a stuck heater surely ruins, and those that it perhaps does. */
interface Harm {
  readonly sure: readonly Part[];
  readonly perhaps: readonly Part[];
}
/** When the guard acts after the sensor fell out, and how hot the block is then. */
interface Acts {
  readonly after: Amount;
  readonly at: Amount;
}

const parts = { liner: 'the liner', sensor: 'the sensor', block: 'the block', nozzle: 'the nozzle' };

const list = (all: readonly Part[]): string => {
  const names = all.map((part) => parts[part]);
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
};

/** The sure before the possible: "would ruin the liner, perhaps the block too". */
const ruins = ({ sure, perhaps }: Harm): string => {
  if (sure.length === 0) return `may ruin ${list(perhaps)}`;
  return `would ruin ${list(sure)}${perhaps.length > 0 ? `, perhaps ${list(perhaps)} too` : ''}`;
};

const acts = ({ after, at }: Acts, p: Print): string =>
  `it acts ${p(after)} after the sensor falls out, with the block at ${p(at)}`;

export const orders = {
  cutOffLower: (a: { opens: Amount; harm: Harm }, p: Print) => ({
    glance: '✕ Cut-off that opens lower',
    sentence: `Change the cut-off for one that opens lower: at ${p(a.opens)} a stuck heater ${ruins(a.harm)} first.`,
  }),
  fitCutOff: (a: { ends: Amount; harm: Harm }, p: Print) => ({
    glance: '⚠ Fit a thermal cut-off',
    sentence: `Fit a separate thermal cut-off: a heater stuck on would reach ${p(a.ends)} and ${ruins(a.harm)}.`,
  }),
  doNotUse: (a: Acts, p: Print) => ({
    glance: '⚠ Do not use it',
    sentence: `Do not use it as it is: no reaction time is short enough (${acts(a, p)}).`,
  }),
  quickEnough: (a: Acts, p: Print) => ({
    glance: '⟳ Guard: too close to call',
    sentence: `Whether the heater guard is quick enough is too close to call: ${acts(a, p)}.`,
  }),
  /** `to` in seconds. */
  shortenTime: (a: Acts & { from: Amount; to: number }, p: Print) => ({
    glance: `↓ Guard’s reaction time: ${p.number(a.to)} s`,
    sentence: `Shorten the heater guard’s reaction time from ${p(a.from)} to ${p.number(a.to)} s or less: ${acts(a, p)}.`,
  }),
  /** `to` in kelvin. */
  lowerRise: (a: { to: number; rise: Amount }, p: Print) => ({
    glance: `↓ Rise wanted: ${p.number(a.to)} K`,
    sentence: `Lower the rise that the heater guard wants to ${p.number(a.to)} K: a healthy heater rises only ${p(a.rise)} in the reaction time, near its working temperature.`,
  }),
  /** `to` in seconds. */
  lengthenTime: (a: { from: Amount; to: number; rise: Amount }, p: Print) => ({
    glance: `↑ Guard’s reaction time: ${p.number(a.to)} s`,
    sentence: `Lengthen the heater guard’s reaction time from ${p(a.from)} to ${p.number(a.to)} s: a healthy heater rises only ${p(a.rise)} in it now, near its working temperature.`,
  }),
  /** `time` in seconds, `wanted` in kelvin. */
  setBoth: (a: Acts & { time: number; wanted: number; rise: Amount }, p: Print) => ({
    glance: `↕ Guard: ${p.number(a.time)} s, ${p.number(a.wanted)} K`,
    sentence: `Set the heater guard’s reaction time to ${p.number(a.time)} s and the rise wanted to ${p.number(a.wanted)} K: now ${acts(a, p)}, and a healthy heater rises ${p(a.rise)} in that time.`,
  }),
  cutOffHigher: (a: { least: Amount }, p: Print) => ({
    glance: '✕ Cut-off that opens higher',
    sentence: `Change the cut-off for one that opens at ${p(a.least)} or above: this one opens in normal use.`,
  }),
  leaveGuard: (a: { rise: Amount }, p: Print) => ({
    glance: '⟳ Time the real rise',
    sentence: `Leave the heater guard: whether it gives false alarms is too close to call (${p(a.rise)} in its reaction time).`,
  }),
  lookUpRating: (a: { opens: Amount }, p: Print) => ({
    glance: '⟳ Look up cut-off’s rating',
    sentence: `Leave it and look up the cut-off’s rating: whether ${p(a.opens)} clears the working heat is too close to call.`,
  }),
  leaveAndProve: (a: { after: Amount; ends: Amount }, p: Print) => ({
    glance: '✓ Leave it, prove it',
    sentence: `Leave it as it is and prove it: the heater guard acts after ${p(a.after)}, and a heater stuck on ends at ${p(a.ends)}.`,
  }),
};

export const steps = {
  failedClosed:
    'The heater guard is software: it cannot open a switch that has failed closed. A separate thermal cut-off in the heater’s own supply does, or your hand at the supply’s switch.',
  testHealthy: (a: { to: Amount; after: Amount }, p: Print) =>
    `Test 1, healthy: cold, someone at the switch, heat to ${p(a.to)} with the stopwatch on. Pass mark: there after ${p(a.after)}, give or take a quarter. Much slower: loose heater or sensor, weak supply, wrong heater. Much faster: a heater of too much power.`,
  testSensorOut: (a: { to: Amount; within: Amount; block: Amount }, p: Print) =>
    `Test 2, sensor out: cold again and unplugged, take the sensor out of the block and let it hang free. Hand at the supply’s switch, plug in, set ${p(a.to)}, start the stopwatch. Pass mark: the guard cuts the heater within ${p(a.within)}; the block is then at about ${p(a.block)}. Not cut by then: switch off by hand, and do not use it. Cold and unplugged, put the sensor back, fixed by its screw.`,
  testsWithheld: (a: { to: Amount; bears: Amount }, p: Print) =>
    `No test here: working at ${p(a.to)} is itself beyond the ${p(a.bears)} that the weakest part stands. Work colder, or replace that part first.`,
  sensorOutWithheld: (a: { within: Amount; block: Amount; bears: Amount }, p: Print) =>
    `Do not take the sensor out for a test here: by the pass mark of ${p(a.within)} the block would have about ${p(a.block)}, and the weakest part stands ${p(a.bears)}. Fit a weaker heater or a cut-off first, or ask for an earlier pass mark.`,
  /** In °C. */
  cutOffHolds: (a: { holds: number; opens: number }, p: Print) =>
    `A thermal link or switch by IEC 60691: its holding temperature (Th) at least ${p.number(a.holds)} °C, where it opens (Tf) at most ${p.number(a.opens)} °C. Clamp it to the block, in series with the heater; crimp or screw its leads, never solder them: the heat opens or weakens it.`,
  /** In °C. */
  holdsToo: (a: { holds: number }, p: Print) =>
    `Look up the cut-off’s holding temperature (Th, IEC 60691): below ${p.number(a.holds)} °C it ages and opens in normal use.`,
  noCutOffFits:
    'No cut-off fits between the working temperature and what the weakest part stands: change that part, or work colder.',
  qualified:
    'On mains voltage have the cut-off fitted by a qualified person, to the local code. Until then do not leave it alone while it is plugged in; smoke alarm above it, nothing that burns beside it.',
  higherResistance: 'Or fit a heater of higher resistance: ask below, the other way round, which one ends low enough.',
  colderOrWeaker: 'Work colder, fit a weaker heater, or replace the part that stands least.',
  /** `to` in seconds. */
  orShorten: (a: { from: Amount; to: number }, p: Print) =>
    `Or shorten its reaction time from ${p(a.from)} to ${p.number(a.to)} s: that is surely quick enough, and a healthy rise still clears the rise wanted.`,
  clearsStill: 'A healthy rise still clears the rise wanted in that time, at its slowest.',
  staysQuick: 'With that time it is still quick enough, and the block stays below what the weakest part stands.',
  neverOff: 'A false alarm tempts people to switch the guard off: never do that.',
  coverIt: 'Or cover the block against the fan, and read its loss anew.',
  timeRealRise: 'Time the real rise with the stopwatch, and take the loss from that curve.',
};

export const problems = {
  fewReadings: (a: { least: number; taken: number }) =>
    `The curve needs ${a.least} readings or more, each with time and temperature: there are ${a.taken}.`,
  sameTime: 'Two readings have the same time.',
  noCurve: 'These readings follow no heating or cooling curve: look for a slip in one of them.',
  notFalling: 'The readings do not fall: a cooling curve is read after the heater is switched off.',
  notRising: 'The readings do not rise: a heating curve is read while the heater is fully on.',
  tooStraight:
    'The curve is too straight to tell the loss. Start at 50 °C, read on until it is as hot as it is used, more often; or read the cooling curve.',
  workingNeeded: 'The working temperature is needed first.',
  workingTooLow: 'The working temperature is too low for steps of 10 °C.',
};
