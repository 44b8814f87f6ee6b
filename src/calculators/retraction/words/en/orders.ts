import type { Amount, Print } from '../../../../engine/order';
import type { PieceReason } from '../../model';

interface Change {
  readonly longer: boolean;
  readonly set: Amount;
  readonly wanted: Amount;
  readonly step: Amount;
}

/** What the doubt may come from, by symbol. */
const doubts: Readonly<Record<string, string>> = {
  beta: 'the melt’s flow values',
  K: 'the melt’s flow values',
  n: 'the flow index',
  F_m: 'the push force',
  f_c: 'the stretching of the melt',
  mu_t: 'the friction in the tube',
  E: 'the modulus of the filament',
  B: 'the bulk modulus of the melt',
  V: 'the volume of melt',
  L: 'the free length',
  D_t: 'the bore of the tube',
  d_f: 'the filament diameter',
  Theta: 'the bend of the tube',
  s_b: 'the backlash',
  d: 'the nozzle bore',
  l: 'the length of the land',
  d_0: 'the bore above the cone',
};

const reasons: Readonly<Record<PieceReason, string>> = {
  thinTeeth: 'The teeth are thinner than four lines: make them wider.',
  beforeDrop: 'The gap is crossed before a drop can form: widen it.',
  beforeBleeding: 'The gap may be crossed before the pressure has bled away: widen it, or travel more slowly.',
  hairTooThin: 'The hair would be thinner than the eye can find: narrow the gap, or print faster before it.',
  hairPerhapsTooThin: 'The hair may be too thin to see: look with a lens against the light.',
};

interface Reasoned {
  readonly reasons: readonly PieceReason[];
}
const why = (a: Reasoned): string => a.reasons.map((reason) => reasons[reason]).join(' ');

export const orders = {
  measureBores: {
    glance: '⟳ Measure the bores again',
    sentence: 'Leave the length alone and measure tube, filament and nozzle again.',
  },
  flowTooSlow: {
    glance: '✓ Leave the length alone',
    sentence: 'Leave the length alone: the flow is too slow for this figure.',
  },
  lowerToMost: (a: { from: Amount; to: Amount }, p: Print) => ({
    glance: `↓ Length: ${p(a.to)}`,
    sentence: `Lower the retraction from ${p(a.from)} to ${p(a.to)}, the most for this hot end.`,
  }),
  lowerAndSlower: (a: { from: Amount; to: Amount }, p: Print) => ({
    glance: `↓ Length: ${p(a.to)}, print slower`,
    sentence: `Lower the retraction from ${p(a.from)} to ${p(a.to)}, the most for this hot end; print slower, hotter or wider.`,
  }),
  printSlower: (a: { set: Amount }, p: Print) => ({
    glance: '⚠ Print slower, hotter, wider',
    sentence: `Leave the retraction at ${p(a.set)}: print slower, hotter or wider.`,
  }),
  leave: (a: { set: Amount }, p: Print) => ({
    glance: `✓ Leave it at ${p(a.set)}`,
    sentence: `Leave the retraction at ${p(a.set)}: nothing to change.`,
  }),
  printFirst: {
    glance: '⟳ Print the test piece',
    sentence: 'Print the test piece before changing the length: these figures do not settle it.',
  },
  setLength: (a: { longer: boolean; set: Amount; to: Amount; stored: Amount }, p: Print) => ({
    glance: `${a.longer ? '↑' : '↓'} Retraction ${p(a.to)}`,
    sentence: `${a.longer ? 'Raise' : 'Lower'} the retraction from ${p(a.set)} to ${p(a.to)}: by the push you measured ${p(a.stored)} is stored.`,
  }),
  setAsPiece: (a: { longer: boolean; set: Amount; to: Amount }, p: Print) => ({
    glance: `${a.longer ? '↑' : '↓'} Retraction ${p(a.to)}`,
    sentence: `${a.longer ? 'Raise' : 'Lower'} the retraction from ${p(a.set)} to ${p(a.to)}, as the test piece showed.`,
  }),
  printPiece: (a: { start: Amount; usual: Amount }, p: Print) => ({
    glance: '⟳ Print the test piece',
    sentence: `Print the test piece, from ${p(a.start)} on in steps of ${p(a.usual)}: listed flow values settle no retraction.`,
  }),
};

export const steps = {
  restsOnEntries: 'The figure rests on your entries alone; print the test piece to settle it.',
  /** `share` in percent; `symbol` as it is printed, for what has no name here. */
  mostOfTheDoubt: (a: { share: number; of: string; symbol: string }, p: Print) =>
    `Most of the doubt (${p.number(a.share)} %) comes from ${doubts[a.of] ?? a.symbol}; the test piece settles it without knowing that.`,
  pieceUnknown: 'Whether the planned test piece can show the difference cannot be told from these values.',
  pieceShows: 'The test piece you planned shows the difference with this nozzle.',
  pieceMayShow: (a: Reasoned) =>
    `The test piece you planned may or may not show the difference. ${why(a)} Or save the one offered here, sized for this nozzle.`,
  pieceCannotShow: (a: Reasoned) =>
    `The test piece you planned cannot show the difference. ${why(a)} Or save the one offered here, sized for this nozzle.`,
  printComb:
    'Print the comb at one retraction. The number under its last clean gap is the ooze length: so far the nozzle travels before a hair shows. Take the shortest retraction that leaves all gaps clean.',
  boresDoNotFit:
    'These bores do not fit each other: the tube must pass the filament, and the cone must narrow to the tip.',
  noPowerLaw:
    'At so low a shear rate the melt no longer follows a power law. Measure the push force instead, or go by the test piece.',
  pushTooHard: (a: { push: Amount; most: Amount }, p: Print) =>
    `This line would take a push of ${p(a.push)}, and a drive gives about ${p(a.most)}.`,
  flowValuesWrong:
    'If the drive keeps up without slipping, the flow values are wrong for this plastic: measure the push.',
  readScaleAgain: 'Read the scale again: a drive that keeps up at this flow cannot be pushing that hard.',
  lessPressure: 'Print slower, hotter or with a wider nozzle: less pressure stores less, and less oozes.',
  shorterTube: 'A shorter tube with fewer bends, or a stiffer filament, stores less as well.',
  neverMore: (a: { most: Amount }, p: Print) =>
    `Never set a retraction above ${p(a.most)}: the soft end would reach the cold part, set there and jam.`,
  reachesPush: (a: { most: Amount }, p: Print) =>
    `The doubt reaches a push of more than ${p(a.most)}: if the drive slips or grinds, print slower or hotter.`,
  otherTooWide: (a: { other: Amount; above: Amount }, p: Print) =>
    `The other nozzle (${p(a.other)}) is as wide as the bore above the cone (${p(a.above)}) or wider: its lengths cannot be told.`,
  heatAndDamp: 'If it still strings, look at heat and damp filament before the length.',
  neverBeyond: (a: { most: Amount }, p: Print) =>
    `Never beyond ${p(a.most)}: the soft end would reach the cold part, set there and jam.`,
  startAt: (a: Change & { most: Amount }, p: Print) =>
    `Start at ${p(a.set)} and go ${a.longer ? 'up' : 'down'} in steps of ${p(a.step)}; the figures point to ${p(a.wanted)}, with ${p(a.most)} the most.`,
  listedValues: (a: { points: Amount }, p: Print) =>
    `The listed values point to ${p(a.points)}. They are off by more than their own interval says, so there is no verdict from them.`,
  pushNarrows: 'A push force measured at this flow narrows the figure.',
  underPressure: 'More is stored than the retraction takes up, so the tip stays under pressure on travels.',
  airAndCold: 'Retraction beyond the stored length draws air into the tip and soft plastic up into the cold part.',
  airAndWear: 'Retraction beyond the stored length draws air into the tip, and wears the filament at the gear.',
  pullFaster: (a: { takes: Amount }, p: Print) =>
    `The retraction takes ${p(a.takes)}, longer than the pressure needs to bleed by itself: set it faster.`,
};
