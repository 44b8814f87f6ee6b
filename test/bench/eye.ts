import { findRidges, readStrip } from '../../src/signal/ridge';
import { seeded } from '../support/level-support';
import { findRipples } from '../../src/signal/ripple';
import { findSkew, skewOf, type SheetFinding } from '../../src/signal/sheet';
import { PLAIN, shootWall, type WallTrial } from '../support/ridge-photos';
import { RIPPLED, shootRipples, type RippleTrial } from '../support/ripple-photos';
import { shootPair, SQUARE, type SheetTrial } from '../support/sheet-photos';

const TRIALS = Number(process.env.TRIALS ?? 20);
/** Only the cells whose name this fits. */
const CELLS = new RegExp(process.env.CELLS ?? '');
const DEGREE = Math.PI / 180;
const MM = 1e-3;

/** What one trial came to: the share by which it was off, and the half-width stated; or the reason why it said nothing. */
type Outcome = { readonly error: number; readonly half: number } | string;

const share = (n: number, of: number) => (of === 0 ? '' : `${((100 * n) / of).toFixed(0)} %`);

function row(name: string, outcomes: readonly Outcome[], wrong: (error: number) => boolean): string[] {
  const heard = outcomes.flatMap((one) => (typeof one === 'string' ? [] : [one]));
  const reasons = new Map<string, number>();
  for (const one of outcomes) if (typeof one === 'string') reasons.set(one, (reasons.get(one) ?? 0) + 1);
  const sizes = heard.map(({ error }) => Math.abs(error)).sort((a, b) => a - b);
  const inside = heard.filter(({ error, half }) => Math.abs(error) <= half).length;
  const halves = heard.map(({ half }) => half).sort((a, b) => a - b);
  const percent = (x: number | undefined) => (x === undefined ? '' : `${(100 * x).toFixed(2)} %`);
  const line = [
    name,
    String(heard.length),
    String(heard.filter(({ error }) => wrong(error)).length),
    String(outcomes.length - heard.length),
    share(inside, heard.length),
    `${percent(sizes[sizes.length >> 1])}, ± ${percent(halves[halves.length >> 1])}`,
    [...reasons].map(([reason, n]) => `${reason} ${n}`).join(', '),
  ];
  process.stdout.write(`${line.map((cell, i) => (i === 0 ? cell.padEnd(34) : cell.padEnd(8))).join(' ')}\n`);
  return line;
}

function ridges(name: string, trial: Partial<WallTrial>, { typed = true, truth = true } = {}, seed = 11): string[][] {
  if (!CELLS.test(name)) return [];
  const random = seeded(seed).uniform;
  const outcomes = Array.from({ length: TRIALS }, (): Outcome => {
    const whole = { ...PLAIN, ...trial };
    const shot = shootWall(whole, random);
    const found = findRidges(readStrip(shot.picture, shot.strip), shot.scale, typed ? { layer: whole.layer } : {});
    if (found.status === 'refused') return found.reason;
    const close = truth ? [shot.period, ...(whole.second > 0 ? [shot.period * whole.second] : [])] : [Infinity];
    const error = close.map((one) => found.period / one - 1).sort((a, b) => Math.abs(a) - Math.abs(b))[0] ?? 1;
    return { error, half: found.halfWidth / found.period };
  });
  return [row(name, outcomes, (error) => Math.abs(error) > 0.03)];
}

function ripples(name: string, trial: Partial<RippleTrial>, seed = 12): string[][] {
  if (!CELLS.test(name)) return [];
  const random = seeded(seed).uniform;
  const whole = { ...RIPPLED, ...trial };
  const outcomes = Array.from({ length: TRIALS }, (): Outcome => {
    const shot = shootRipples(whole, random);
    const found = findRipples(readStrip(shot.picture, shot.strip), shot.scale, shot.picture);
    if (found.status === 'refused') return found.reason;
    return { error: whole.height > 0 ? found.period / shot.period - 1 : 1, half: found.halfWidth / found.period };
  });
  return [row(name, outcomes, (error) => Math.abs(error) > 0.05)];
}

function skewed(first: SheetFinding | undefined, second: SheetFinding | undefined, truth: number): Outcome {
  if (first?.status !== 'seen') return first?.reason ?? 'nothing';
  if (second?.status !== 'seen') return second?.reason ?? 'nothing';
  const both = skewOf(first, second);
  if (both.status === 'refused') return both.reason;
  return { error: both.skew - truth, half: both.halfWidth };
}

/** As shares of the length: a hundredth of what it is over 100 mm in mm. */
function skew(name: string, trial: Partial<SheetTrial>, seed = 13): string[][] {
  if (!CELLS.test(name)) return [];
  const random = seeded(seed).uniform;
  const whole = { ...SQUARE, ...trial };
  const outcomes = Array.from({ length: TRIALS }, (): Outcome => {
    const [first, second] = shootPair(whole, random).map(findSkew);
    return skewed(first, second, whole.skew);
  });
  return [row(name, outcomes, (error) => Math.abs(error) > 0.003)];
}

export const rows = [
  ...ridges('ridges: plain', {}),
  ...[3, 5, 8, 20, 40].flatMap((n) => ridges(`ridges: ${n}`, { ridges: n })),
  ...[10, 15, 20, 25].flatMap((yaw) => ridges(`ridges: yaw ${yaw}°`, { yaw: yaw * DEGREE })),
  ...[10, 20].flatMap((pitch) => ridges(`ridges: pitch ${pitch}°`, { pitch: pitch * DEGREE })),
  ...[-0.15, -0.08, -0.04, 0.05, 0.1].flatMap((lens) => ridges(`ridges: lens ${lens}`, { lens })),
  ...[-0.15, 0.1].flatMap((lens) =>
    ridges(`ridges: lens ${lens}, 40, short marks`, { lens, ridges: 40, marks: 'short' }),
  ),
  ...[-0.15, 0.1].flatMap((lens) => ridges(`ridges: lens ${lens}, short marks`, { lens, marks: 'short' })),
  ...ridges('ridges: lens -0.08, 5, short marks', { lens: -0.08, ridges: 5, marks: 'short' }),
  ...ridges('ridges: yaw 25°, lens -0.08, short', { lens: -0.08, yaw: 25 * DEGREE, marks: 'short' }),
  ...ridges('ridges: cylinder 40 mm', { radius: 40 * MM }),
  ...ridges('ridges: cylinder 20 mm', { radius: 20 * MM }),
  ...ridges('ridges: rule 5 mm before it, said', { ruleBefore: 5 * MM }),
  ...ridges('ridges: narrow strip', { strip: 44 }),
  ...ridges('ridges: logos', { logo: true }),
  ...ridges('ridges: two periods', { second: 0.62 }),
  ...ridges('ridges: rough', { noise: 10, layerSpread: 0.006 * MM }),
  ...ridges('none', { depth: 0 }, { truth: false }),
  ...ridges('none: no layer height typed', { depth: 0 }, { typed: false, truth: false }),
  ...ridges('none: coarse layers, none typed', { depth: 0, layer: 0.8 * MM }, { typed: false, truth: false }),
  ...ridges('none: coarse layers, typed', { depth: 0, layer: 0.8 * MM }, { truth: false }),
  ...ridges('none: waviness', { depth: 0, waviness: 0.05 * MM }, { truth: false }),
  ...ridges('none: strong waviness', { depth: 0, waviness: 0.2 * MM }, { truth: false }),
  ...ridges('none: logos', { depth: 0, logo: true }, { truth: false }),
  ...ridges('ridges and waviness', { waviness: 0.05 * MM }),
  ...ripples('ripples: plain', {}),
  ...[-12, 12].flatMap((yaw) => ripples(`ripples: yaw ${yaw}°`, { yaw: yaw * DEGREE })),
  ...[-0.15, 0.1].flatMap((lens) => ripples(`ripples: lens ${lens}`, { lens })),
  ...[0.02, 0.09].flatMap((damping) => ripples(`ripples: damping ${damping}`, { damping })),
  ...ripples('ripples: faint', { height: 0.006 * MM }),
  ...ripples('ripples and waviness', { waviness: 0.01 * MM }),
  ...ripples('ripples: pitch 30°', { pitch: 30 * DEGREE }),
  ...ripples('no ripples', { height: 0 }),
  ...ripples('no ripples: waviness', { height: 0, waviness: 0.05 * MM }),
  ...ripples('no ripples: logos', { height: 0, logo: true }),
  ...ripples('no ripples: shaken', { height: 0, shake: 30 }),
  ...skew('skew: none', {}),
  ...skew('skew: 3 mm/m', { skew: 3e-3 }),
  ...[-0.15, 0.1].flatMap((lens) => skew(`skew: lens ${lens}`, { lens, skew: 2e-3 })),
  ...skew('skew: camera to 15° aside', { tilt: 15 * DEGREE, skew: -3e-3 }),
  ...skew('skew: 10 mm thick', { height: 10 * MM, skew: 2e-3 }),
  ...skew('skew: 60 mm part', { side: 60 * MM, skew: 2e-3 }),
  ...skew('skew: part to 8° turned', { turn: 8 * DEGREE, skew: 2e-3 }),
  ...skew('skew: camera to 40° aside', { tilt: 40 * DEGREE, skew: 2e-3 }),
  ...skew('no skew: shaken', { shake: 14 }),
  ...skew('no skew: light part', { colour: 0.8 }),
  ...skew('no skew: light table', { table: 0.85 }),
  ...skew('no skew: sheet cut off', { aside: 120 * MM }),
  ...skew('no skew: round part', { round: true }),
];
