import type { Amount, Print } from '../../../../engine/order';

export type WayId = 'resume' | 'glue' | 'anew';

export interface Missing {
  readonly layers: number;
  readonly height: Amount;
}

export interface Coins {
  readonly value: number;
  readonly decimals: number;
}

/** What speaks against a way: the seam of going on, the glued joint, the starved band, the part's place. */
export type Against =
  | { readonly what: 'seam' | 'joint' | 'band'; readonly how: 'surely' | 'perhaps' | 'unknown' }
  | { readonly what: 'place' | 'duty'; readonly how: 'surely' };

const findings = {
  seam: {
    surely: 'The seam surely holds less than wanted.',
    perhaps: 'The seam perhaps holds less than wanted.',
    unknown: 'Whether the seam holds enough is not known.',
  },
  joint: {
    surely: 'The glued joint surely holds less than wanted.',
    perhaps: 'The glued joint perhaps holds less than wanted.',
    unknown: 'Whether the glued joint holds enough is not known.',
  },
  band: {
    surely: 'The starved band is surely too high to cut away in place.',
    perhaps: 'The starved band is perhaps too high to cut away in place.',
    unknown: 'Whether the starved band can be cut away in place is not known.',
  },
  duty: 'It holds a person, heat, mains or a raised load: such a part is never saved with a seam.',
  moved: 'A part that has moved cannot go back to its place to a tenth of a line.',
};

const sure = { resume: 'go on with it', glue: 'cut it, print the rest and glue it on', anew: 'print it again' };
const sureShort = { resume: 'go on', glue: 'glue it', anew: 'print again' };

const against = (a: Against): string => {
  if (a.what === 'duty') return findings.duty;
  return a.what === 'place' ? findings.moved : findings[a.what][a.how];
};
const coins = (a: Coins, p: Print): string => p.number(a.value, a.decimals);
const missing = (a: Missing, p: Print): string => `about ${p.number(a.layers)} layers, ${p(a.height)}, are missing`;

interface Plan {
  readonly missing: Missing;
  readonly hours: number;
}

export const orders = {
  neverSeam: (a: { missing: Missing }, p: Print) => ({
    glance: '✕ Never with a seam: print again',
    sentence: `Print it again: a part that holds a person, heat, mains or a raised load is never saved with a seam; ${missing(a.missing, p)}.`,
  }),
  resume: (a: Plan, p: Print) => ({
    glance: `▸ Go on · ${p.number(a.hours)} h`,
    sentence: `Go on with this part: ${missing(a.missing, p)}; ${p.number(a.hours)} h to the end.`,
    spoken: `Go on with this part: ${missing(a.missing, p)}; ${p.number(a.hours)} hours to the end.`,
  }),
  glue: (a: Plan, p: Print) => ({
    glance: '✂ Cut, print rest, glue',
    sentence: `Cut it flat, print the rest as a second part and glue it on: ${missing(a.missing, p)}; ${p.number(a.hours)} h to the end.`,
    spoken: `Cut it flat, print the rest as a second part and glue it on: ${missing(a.missing, p)}; ${p.number(a.hours)} hours to the end.`,
  }),
  anew: (a: { missing: Missing }, p: Print) => ({
    glance: '✕ Print it again',
    sentence: `Print it again: ${missing(a.missing, p)}, and saving it does not pay.`,
  }),
  tooClose: (a: { missing: Missing; sure: WayId }, p: Print) => ({
    glance: `≈ Surely right: ${sureShort[a.sure]}`,
    sentence: `Whether the seam is worth it is too close to call: ${missing(a.missing, p)}. Surely right is: ${sure[a.sure]}.`,
  }),
};

export const steps = {
  lastSound: (a: { layer: number; at: Amount }, p: Print) =>
    `The last sound layer is number ${p.number(a.layer)}, at Z = ${p(a.at)}.`,
  lastSoundBetween: (a: { from: number; to: number; low: Amount; high: Amount }, p: Print) =>
    `The last sound layer lies between ${p.number(a.from)} and ${p.number(a.to)}, Z = ${p(a.low)} to ${p(a.high)}.`,
  findCause:
    'Find the cause before anything else: filament broken or tangled, gear slipping, nozzle blocked. Feed 100 mm hot and look at it before a restart.',
  measureFirst:
    'Where exactly to go on is not to be had from times and weights: cut down to a sound, closed layer, measure its height, and take layer and Z from “Resume height”.',
  soakBand: 'Soak the thin band with thin glue, let it set, and cut off what stands above it.',
  cutBand: (a: { height: Amount }, p: Print) =>
    `Cut off the starved band, up to ${p(a.height)} high, down to closed lines; the part must not move.`,
  sawFlat: 'Saw off the starved layers, sand the top flat on a plate, and measure what is left.',
  tryDry: 'Take the second part’s height from “Resume height”, print it, try it dry, then glue.',
  costs: (a: { anew: Coins; glue: Coins; resume: Coins | undefined }, p: Print) =>
    a.resume
      ? `A new one costs ${coins(a.anew, p)}, work and risk counted; gluing ${coins(a.glue, p)}, going on ${coins(a.resume, p)}.`
      : `A new one costs ${coins(a.anew, p)}, work and risk counted; gluing ${coins(a.glue, p)}.`,
  speaksAgainst: (a: { against: readonly Against[] }) => a.against.map(against).join(' '),
  spent: 'What it has cost so far is spent whatever is done now: it does not count.',
  weighSpool: (a: { takes: Amount }, p: Print) => `Weigh the spool: a new one takes ${p(a.takes)}.`,
  /** Percent of a sound layer. */
  strength: (a: { holds: number; wanted: number }, p: Print) =>
    `Strength: the seam holds about ${p.number(a.holds)} % of a sound layer and ${p.number(a.wanted)} % is wanted. Make two bars of this plastic with the same joint and break them by hand against a whole one.`,
  cutIntoBand: 'Band: cut into it with a knife at one corner and see how deep the open lines go.',
  cost: (a: { saved: Coins; anew: Coins }, p: Print) =>
    `Cost: ${coins(a.saved, p)} against ${coins(a.anew, p)} for a new one. Read the time left from the job instead of the layer time.`,
};

export const contradictions = {
  stoppedAbove: (a: { at: Amount; whole: Amount }, p: Print) =>
    `It stopped at ${p(a.at)}, above the height of the whole, ${p(a.whole)}. Which is right? Z at the stop counts from the bed, without any lift for a move.`,
  moreThanStopped:
    'By the filament used the part is higher than where the nozzle stopped. Which is right? A broad foot, a rim or supports take more plastic than layers higher up: say so in the line “plastic in a layer so far”.',
  lostMoreThanAll: (a: { by: Amount }, p: Print) =>
    `By ${p(a.by)} without feed nothing at all was printed. Is that right, or the height Z at the stop?`,
};

export const ways = {
  title: 'Ways out, side by side',
  note: 'Strength of the seam over that of a sound layer, typical. Hours: printing and work from now on. Cost: plastic, machine, work, and the chance that it fails and a new one is due, as set among the seldom changed lines. What is already spent counts for none of them.',
  columns: { strength: 'Strength', hours: 'Hours', cost: 'Cost' },
  names: {
    resume: 'Go on where it stands',
    glue: 'Cut, print the rest, glue',
    anew: 'Print it again',
  },
  facts: {
    strength: (a: { percent: number }, p: Print) => `${p.number(a.percent)}%`,
    hours: (a: { hours: number }, p: Print) => p.number(a.hours),
    cost: coins,
  },
  why: { against },
  needs: {
    knifeAndFile: 'sharp knife and file',
    caliperOrFeeler: 'caliper or feeler',
    jobCutOff: 'the job cut off below the new layer',
    fineSaw: 'fine saw, sandpaper on a plate',
    glue: 'glue for this plastic',
    dowels: 'two dowels of filament',
    filament: 'enough filament',
  },
};
