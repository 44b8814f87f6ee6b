import type { Amount, Print } from '../../../../engine/order';

export interface Time {
  readonly count: number;
  readonly unit: 'h' | 'days';
}

export interface Span {
  readonly from: Time;
  readonly to: Time;
}

/** Percent of the dry mass. */
export interface Shares {
  readonly from: number;
  readonly to: number;
}

interface Oven {
  readonly time: Time;
  readonly oven: Amount;
}

const printed = { h: 'h', days: 'days' };
const aloud = { h: 'hours', days: 'days' };
type Units = typeof printed;

const time = (a: Time, p: Print, units: Units = printed): string => `${p.number(a.count)} ${units[a.unit]}`;
const span = (a: Span, p: Print, units: Units = printed): string =>
  `${time(a.from, p, units)} to ${time(a.to, p, units)}`;
const shares = (a: Shares, p: Print): string => `${p.number(a.from)} to ${p.number(a.to)} %`;

const dryFor = (a: Oven, p: Print, units: Units): string =>
  `Dry it for ${time(a.time, p, units)} at ${p(a.oven)}: enough even by the slowest rate published.`;
const dryThenWeigh = (a: Oven, p: Print, units: Units): string =>
  `Dry it for ${time(a.time, p, units)} at ${p(a.oven)}, then let the scale decide: what is known of this plastic does not settle the time.`;
const dryUpTo = (a: Oven & { upTo: Time }, p: Print, units: Units): string =>
  `Dry it for up to ${time(a.upTo, p, units)} at ${p(a.oven)}, not ${time(a.time, p, units)}: that is enough even by the slowest rate published. Weighing may end it sooner.`;
const ovenDown = (a: { to: Amount; soft: Amount; time: Time }, p: Print, units: Units): string =>
  `Turn the oven down to ${p(a.to)} and dry for ${time(a.time, p, units)}: this filament goes soft at ${p(a.soft)}.`;
const ovenUp = (
  a: { to: Amount; time: Time; oven: Amount; humidity: Amount; held: Amount },
  p: Print,
  units: Units,
): string =>
  `Turn the oven up to ${p(a.to)} and dry for ${time(a.time, p, units)}: at ${p(a.oven)} the room’s air has ${p(a.humidity)} and holds ${p(a.held)} of the water back.`;
const dryLonger = (a: Oven & { takes: Span }, p: Print, units: Units): string =>
  `Dry it longer than ${time(a.time, p, units)}: at ${p(a.oven)} it takes ${span(a.takes, p, units)}.`;

export const orders = {
  probeFirst: (a: { oven: Amount; most: Amount }, p: Print) => ({
    glance: '⟳ Measure beside the spool',
    sentence: `Measure the air beside the spool before drying: whether ${p(a.oven)} stays below ${p(a.most)} is too close to call.`,
  }),
  ovenDown: (a: { to: Amount; soft: Amount; time: Time }, p: Print) => ({
    glance: `↓ Oven: ${p(a.to)}, ${time(a.time, p)}`,
    sentence: ovenDown(a, p, printed),
    spoken: ovenDown(a, p, aloud),
  }),
  ovenUp: (a: { to: Amount; time: Time; oven: Amount; humidity: Amount; held: Amount }, p: Print) => ({
    glance: `↑ Oven: ${p(a.to)}, ${time(a.time, p)}`,
    sentence: ovenUp(a, p, printed),
    spoken: ovenUp(a, p, aloud),
  }),
  driedTooHot: (a: { oven: Amount; to: Amount; soft: Amount }, p: Print) => ({
    glance: `⚠ Too hot: ${p(a.to)} at most`,
    sentence: `Do not dry it at ${p(a.oven)} again: this filament goes soft at ${p(a.soft)}. Turn the oven down to ${p(a.to)} or less, and look at the filament.`,
  }),
  noOven: (a: { soft: Amount }, p: Print) => ({
    glance: '⚠ Dry it without heat',
    sentence: `Dry it without heat: this filament goes soft at ${p(a.soft)}, and no oven keeps below that.`,
  }),
  lieCooler: (a: { air: Amount; soft: Amount }, p: Print) => ({
    glance: '⚠ Store it cooler',
    sentence: `Store it cooler: where it lies there are ${p(a.air)}, and this filament goes soft at ${p(a.soft)}.`,
  }),
  hygrometer: {
    glance: '⟳ Hygrometer into the oven',
    sentence: 'Put a hygrometer into the oven: whether its air is dry enough is too close to call.',
  },
  dryAir: (a: { oven: Amount; humidity: Amount; held: Amount }, p: Print) => ({
    glance: '⚠ Dry the air first',
    sentence: `Dry the air first: at ${p(a.oven)} the room’s air has ${p(a.humidity)} and holds ${p(a.held)} of the water back, however long it lasts.`,
  }),
  dryFor: (a: Oven, p: Print) => ({
    glance: `✓ ${time(a.time, p)} at ${p(a.oven)}`,
    sentence: dryFor(a, p, printed),
    spoken: dryFor(a, p, aloud),
  }),
  dryThenWeigh: (a: Oven, p: Print) => ({
    glance: `⟳ ${time(a.time, p)}, then weigh`,
    sentence: dryThenWeigh(a, p, printed),
    spoken: dryThenWeigh(a, p, aloud),
  }),
  dryLonger: (a: Oven & { takes: Span }, p: Print) => ({
    glance: `+ Longer than ${time(a.time, p)}`,
    sentence: dryLonger(a, p, printed),
    spoken: dryLonger(a, p, aloud),
  }),
  dryUpTo: (a: { time: Time; upTo: Time; oven: Amount }, p: Print) => ({
    glance: `+ Up to ${time(a.upTo, p)} at ${p(a.oven)}`,
    sentence: dryUpTo(a, p, printed),
    spoken: dryUpTo(a, p, aloud),
  }),
  printFromIt: {
    glance: '✓ Print from it',
    sentence: 'Print from it: it cannot have taken up too much yet.',
  },
  listenOrWeigh: {
    glance: '⟳ Listen to it, or weigh',
    sentence: 'Listen to it, or weigh it, before a long print: whether it is too wet is too close to call.',
  },
  dryFirst: {
    glance: '⚠ Dry before printing',
    sentence: 'Dry it before printing: even by the slowest rate published it took up too much.',
  },
  weighAgain: {
    glance: '⟳ Weigh again',
    sentence: 'Weigh again: it did not get lighter, so nothing is shown.',
  },
  stopDrying: (a: { had: Amount; left: Shares }, p: Print) => ({
    glance: '✓ Stop drying',
    sentence: `Stop drying: it had ${p(a.had)} of water, and ${shares(a.left, p)} are left, less than allowed.`,
  }),
  dryAndWeighAgain: {
    glance: '⟳ Dry and weigh again',
    sentence: 'Dry it for the same time again and weigh again: whether it is dry enough is too close to call.',
  },
  dryAgain: (a: { left: Shares; allowed: Amount }, p: Print) => ({
    glance: '+ Dry it again',
    sentence: `Dry it again, for the same time or longer: ${shares(a.left, p)} of water are left, ${p(a.allowed)} is allowed.`,
  }),
};

export const steps = {
  hangProbe:
    'Hang a probe where the filament will be and watch it through several swings of the oven; type the swing after ±.',
  orCooler: 'Or set it 10 K lower and dry longer: filament that went oval or sticks together is scrap.',
  softFilament: 'Soft filament goes oval and sticks together, and a wound spool pulls itself tight.',
  coolerAgain: 'Oval or stuck filament is scrap. Cooler means longer: ask for the time of drying above.',
  desiccantOnly: 'Into a shut box with plenty of fresh desiccant, for weeks, at room temperature.',
  noHotter: (a: { most: Amount; soft: Amount }, p: Print) =>
    `Dry it at ${p(a.most)} or less: this filament goes soft at ${p(a.soft)}.`,
  slowest: (a: { oven: Amount; takes: Span }, p: Print) =>
    `At ${p(a.oven)} it takes ${span(a.takes, p)}, by the fastest and the slowest rate published.`,
  workedOut: (a: { humidity: Amount; held: Amount }, p: Print) =>
    `Worked out: ${p(a.humidity)}; that holds ${p(a.held)} of the water back.`,
  desiccantOrDrier: 'No hotter: fresh desiccant in a shut box, or a day with drier air.',
  vent: 'A vent lets the water out: a shut oven with a wet spool makes its own damp.',
  weigh:
    'Weigh it warm from the oven every hour or two, on the same scale: it is done when two weighings in a row agree.',
  away: 'Put it into a shut bag with desiccant at once: it takes water up again from the first hour.',
  band: (a: { takes: Span; left: Amount }, p: Print) =>
    `${span(a.takes, p)} leave ${p(a.left)} of what this oven can take out, by the slowest and fastest rates published.`,
  weighAllTheSame: 'Weigh it before and after all the same: the loss is the proof.',
  startWith: (a: { time: Time }, p: Print) => `Start with ${time(a.time, p)}, then go by the scale.`,
  looseCoils: 'Loose coils dry sooner than a wound spool.',
  water: (a: { taken: Shares; allowed: Amount }, p: Print) =>
    `Water: ${shares(a.taken, p)} of its mass by now; ${p(a.allowed)} is allowed.`,
  feedIntoAir: 'Feed 10 cm into the air: hissing, popping or a foamy extruded thread means wet.',
  looseTells: 'Weighed before and after drying, 10 g of loose filament on a 0.001 g scale tells 0.02 %.',
  askForTime: 'Change the question above to the time of drying.',
  scaleTooCoarse: 'Nothing dried, or the scale is too coarse: 0.1 % of 1 kg is 1 g.',
  weighLoose: 'Weigh loose filament on a jeweller’s scale, and touch nothing but the filament in between.',
  leftByWeighing: (a: { left: Shares; allowed: Amount }, p: Print) =>
    `Left by this weighing: ${shares(a.left, p)}; allowed ${p(a.allowed)}.`,
  secondLoss: 'If the second drying takes out less than a tenth of the first, it is done.',
  finerScale: 'A finer scale, or a heavier piece on the same one, narrows it.',
};
