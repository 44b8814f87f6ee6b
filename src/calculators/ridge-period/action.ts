import { length, ratio } from '../../quantity/kinds';
import { expanded } from '../../formula/outcome';
import { fromSi, toSi } from '../../quantity/unit';
import { exact, telling, type Amount, type Order, type Told } from '../../engine/order';
import type { Ask, PartKey } from './asked';
import { lineOf, isNear, rank, stateOf, type Compared, type Line, type Ranking } from './model';
import { partingOf, type Parting } from './parting';
import type words from './words/en';

const { tell, step } = telling<typeof words>();

const comparedIn = (ask: Ask): Compared => ({
  known: ask.known,
  choices: { by: ask.choice('by'), way: ask.choice('way'), lift: ask.choice('lift') },
});

/** The verdict: one part fits, several, or none. */
export function judge(ask: Ask) {
  ask.number('P');
  return stateOf(rank(comparedIn(ask)));
}

const mm = (si: number, width = 0): Amount => ({ si, width, kind: length.mm.kind.id, unit: length.mm.unit.id });
/** Three or four digits are what a ridge is known to. */
function about(si: number, digits = 4): Amount {
  const { unit } = length.mm;
  return mm(toSi(Number(fromSi(si, unit).toPrecision(digits)), unit));
}
/** A bare number to two digits. */
const two = (x: number): Amount => exact(Number(x.toPrecision(2)), ratio.one);

/** How the ridges stand against a part's period: so many times, or percent, closer or not. */
function mismatch(line: Line) {
  const times = 1 + line.value;
  const closer = line.value < 0;
  if (!isNear(line)) return { closer, times: two(Math.max(times, 1 / times)), percent: undefined };
  return { closer, times: undefined, percent: two(Math.abs(line.value) * 100) };
}

/** The period a part would print, to the digits that what is known of the part supports. */
function periodOfPart(ask: Ask, line: Line): Amount {
  const known = ask.known(line.part.period);
  const width = known ? (expanded(known) / Math.abs(known.value)) * line.period : 0;
  return width > 0 ? mm(line.period, width) : about(line.period);
}

const withPeriod = (ask: Ask, line: Line) => ({ part: line.part.key, period: periodOfPart(ask, line) });

const lessLikely = (ask: Ask, line: Line): Told =>
  step('lessLikely', { half: line.multiple < 1, ...withPeriod(ask, line) });

/** What was left out, and which entries would take it in. */
function leftOut(ask: Ask, { ruledOut, unknown }: Ranking): Told[] {
  const asked = unknown.map((part) => ({ part: part.key, enter: ask.lacking(part.period) }));
  const ruled = ruledOut.map(({ part, why }) => ({ part: part.key, why }));
  return [
    ...(asked.length > 0 ? [step('notCompared', { asked })] : []),
    ...(ruled.length > 0 ? [step('ruledOut', { ruled })] : []),
  ];
}

function runnersUp(ask: Ask, { lines, multiples }: Ranking): Told[] {
  const others = lines.filter((line) => !line.fits).slice(0, 2);
  return [
    ...others.map((line, i) => step('runnerUp', { first: i === 0, ...withPeriod(ask, line), off: mismatch(line) })),
    ...multiples.map((line) => lessLikely(ask, line)),
  ];
}

function oneFits(ask: Ask, ranking: Ranking, best: Line): Order {
  const { key } = best.part;
  return tell(
    'fits',
    { ...withPeriod(ask, best), ridges: ask.quantity('P') },
    {
      steps: [
        step('lookMore', { part: key }),
        step('proveIt', { part: key }),
        step('onlyOne', { compared: ranking.lines.length }),
        ...runnersUp(ask, ranking),
        ...leftOut(ask, ranking),
      ],
    },
  );
}

/** One more or one fewer ridge than counted: the parts that would then fit. */
function miscounted(ask: Ask, { lines }: Ranking): Told[] {
  if (ask.choice('by') !== 'count') return [];
  const counted = ask.number('N');
  return [counted - 1, counted + 1].flatMap((spaces) => {
    if (spaces < 1) return [];
    const fitting = lines.flatMap((line): PartKey[] => {
      const found = ask.known(line.part.mismatch);
      // The same length over another number: as if the part's period were that much longer.
      const scale = (spaces / counted) * (line.period / periodOf(ask, line));
      return found && lineOf(line.part, found, 1, scale).fits ? [line.part.key] : [];
    });
    return fitting.length > 0 ? [step('countAgain', { spaces, counted, parts: fitting })] : [];
  });
}

/** The period behind a line's mismatch, m: another than its own only for the repeat of rounding. */
function periodOf(ask: Ask, line: Line): number {
  const value = ask.number(line.part.period);
  return line.part.period === 'k_odd' ? 1 / value : value;
}

function noneFits(ask: Ask, ranking: Ranking): Order {
  const { lines, multiples } = ranking;
  const nearest = lines[0];
  return tell(
    'noneFits',
    { compared: lines.length, ridges: ask.quantity('P') },
    {
      steps: [
        ...(nearest ? [step('nearest', { ...withPeriod(ask, nearest), off: mismatch(nearest) })] : []),
        ...miscounted(ask, ranking),
        ...multiples.map((line) => lessLikely(ask, line)),
        ...leftOut(ask, ranking),
        ask.choice('way') === 'along' ? step('ringing') : step('layersDiffer'),
      ],
    },
  );
}

/** What would tell two parts apart, to be said. */
function apart(ask: Ask, parting: Parting) {
  const pair = { a: parting.a.part.key, b: parting.b.part.key };
  if (parting.kind === 'same') return { kind: 'same', ...pair } as const;
  if (parting.kind === 'machine') return { kind: 'machine', ...pair, symbol: parting.symbol } as const;
  if (ask.choice('by') === 'direct') {
    return { kind: 'period', ...pair, half: about(parting.half * ask.number('P'), 1) } as const;
  }
  const spaces = Math.ceil(ask.number('N') / parting.share);
  const wall = about(spaces * ask.number('P'), 2);
  return { kind: 'spaces', ...pair, spaces, wall, tool: parting.tool?.id } as const;
}

function severalFit(ask: Ask, ranking: Ranking, fitting: readonly Line[]): Order {
  const counted = ask.choice('by') === 'count' ? ask.number('L') : undefined;
  const partings = fitting.flatMap((a, i) =>
    fitting.slice(i + 1).flatMap((b) => partingOf(a, b, (line) => ask.known(line.part.mismatch), counted) ?? []),
  );
  const readings = partings.filter((one) => one.kind === 'reading');
  const hardest = readings.reduce<(typeof readings)[number] | undefined>(
    (least, one) => (least && least.share <= one.share ? least : one),
    undefined,
  );
  return tell(
    'severalFit',
    {
      fitting: fitting.map((line) => withPeriod(ask, line)),
      parting: hardest ? apart(ask, hardest) : undefined,
    },
    {
      steps: [
        ...partings.filter((one) => one.kind !== 'reading').map((one) => step('part', apart(ask, one))),
        ...fitting.slice(0, 3).map((line) => step('lookAndProve', { part: line.part.key })),
        ...runnersUp(ask, ranking),
        ...leftOut(ask, ranking),
      ],
      measureAgain: true,
    },
  );
}

/** What to look at, how to prove it, and what else it might be. */
export function action(ask: Ask): Order {
  ask.number('P');
  const ranking = rank(comparedIn(ask));
  const fitting = ranking.lines.filter((line) => line.fits);
  const [best] = fitting;
  if (ranking.lines.length === 0) {
    return tell('nothingYet', { ridges: ask.quantity('P') }, { steps: leftOut(ask, ranking), measureAgain: true });
  }
  if (!best) return noneFits(ask, ranking);
  return fitting.length === 1 ? oneFits(ask, ranking, best) : severalFit(ask, ranking, fitting);
}
