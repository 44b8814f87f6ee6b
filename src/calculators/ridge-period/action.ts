import { length } from '../../quantity/kinds';
import { formatNumber, formatValue } from '../../quantity/format';
import { fromSi, toSi } from '../../quantity/unit';
import type { Context, Instruction } from '../calculator';
import { choices, inputs } from './inputs';
import { lineOf, rank, stateOf, type Line, type Ranking, type Reading } from './model';
import { partingOf, type Parting } from './parting';

type Ask = Context<string, typeof choices>;

const readingOf = (ctx: Ask): Reading => ({
  known: (symbol) => ctx.known(symbol),
  choices: { by: ctx.choice('by'), way: ctx.choice('way'), lift: ctx.choice('lift') },
});

/** The verdict: one part fits, several, or none. */
export function judge(ctx: Ask) {
  ctx.number('P');
  return stateOf(rank(readingOf(ctx)));
}

/** "8 mm": three or four digits are what a ridge is known to. */
function about(ctx: Ask, si: number, digits = 4): string {
  const { unit } = length.mm;
  return formatValue(toSi(Number(fromSi(si, unit).toPrecision(digits)), unit), 0, unit, { mark: ctx.mark });
}

const firstUpper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;

/** "12 % longer": the ridges against a part's period. */
export function mismatchText(value: number, mark: Ask['mark']): string {
  const percent = Math.abs(value) * 100;
  const text = percent >= 100 ? `${formatNumber(1 + value, 2, mark)} times` : `${formatNumber(percent, 2, mark)} %`;
  return percent >= 100
    ? `the ridges are ${text} as far apart`
    : `the ridges are ${text} ${value < 0 ? 'closer' : 'wider'}`;
}

const withPeriod = (ctx: Ask, line: Line): string => `${line.part.name}, ${about(ctx, line.period)}`;

function multipleWords(ctx: Ask, line: Line): string {
  return line.multiple < 1
    ? `Less likely: half of ${line.part.name}, ${about(ctx, line.period)}, as two flats or an oval on it would print.`
    : `Less likely: twice ${line.part.name}, ${about(ctx, line.period)}, as when every second ridge is too weak to be counted.`;
}

/** What was left out, and which entries would take it in. */
function leftOut(ctx: Ask, { ruledOut, unknown }: Ranking): string[] {
  const asked = unknown.map((part) => {
    const labels = ctx.lacking(part.period);
    return labels.length > 0
      ? `${part.short.toLowerCase()} (enter: ${labels.join(', ')})`
      : `${part.short.toLowerCase()} (enter layer height and drive as marked, without a ±)`;
  });
  return [
    ...(asked.length > 0 ? [`Not compared: ${asked.join('; ')}.`] : []),
    ...(ruledOut.length > 0
      ? [`Ruled out: ${ruledOut.map(({ part, why }) => `${part.short.toLowerCase()}, ${why}`).join('; ')}.`]
      : []),
  ];
}

function runnersUp(ctx: Ask, { lines, multiples }: Ranking): string[] {
  const others = lines.filter((line) => !line.fits).slice(0, 2);
  return [
    ...others.map((line, i) => {
      const rankWord = i === 0 ? 'Next nearest' : 'Then';
      return `${rankWord}: ${withPeriod(ctx, line)}; ${mismatchText(line.value, ctx.mark)}, beyond the doubt.`;
    }),
    ...multiples.map((line) => multipleWords(ctx, line)),
  ];
}

const compared = (count: number): string => (count === 1 ? 'the one part compared' : `the ${count} parts compared`);

function oneFits(ctx: Ask, ranking: Ranking, best: Line): Instruction {
  const { part } = best;
  return {
    headline: `Of ${compared(ranking.lines.length)}, ${withPeriod(ctx, best)}, fits the ridges at ${ctx.text('P')}. ${part.look}`,
    steps: [
      part.prove,
      'If they do not, the part is cleared, however well the numbers agree.',
      ...runnersUp(ctx, ranking),
      ...leftOut(ctx, ranking),
    ],
    movements: part.mate === undefined ? [] : [{ part: part.name, direction: `half a turn against ${part.mate}`, amount: Math.PI }], // prettier-ignore
  };
}

/** One more or one fewer ridge than counted: the parts that would then fit. */
function miscounted(ctx: Ask, { lines }: Ranking): string[] {
  if (ctx.choice('by') !== 'count') return [];
  const counted = ctx.number('N');
  return [counted - 1, counted + 1].flatMap((spaces) => {
    if (spaces < 1) return [];
    const names = lines.flatMap((line) => {
      const mismatch = ctx.known(line.part.mismatch);
      // The same length over another number: as if the part's period were that much longer.
      const scale = (spaces / counted) * (line.period / periodOf(ctx, line));
      return mismatch && lineOf(line.part, mismatch, 1, scale).fits ? [line.part.name] : [];
    });
    return names.length > 0
      ? [`Count again: with ${spaces} spaces instead of ${counted}, ${list(names)} would fit.`]
      : [];
  });
}

/** The period behind a line's mismatch, m: another than its own only for the repeat of rounding. */
function periodOf(ctx: Ask, line: Line): number {
  const value = ctx.number(line.part.period);
  return line.part.period === 'k_odd' ? 1 / value : value;
}

function noneFits(ctx: Ask, ranking: Ranking): Instruction {
  const { lines, multiples } = ranking;
  const nearest = lines[0];
  const way = ctx.choice('way');
  return {
    headline: `None of ${compared(lines.length)} repeats every ${ctx.text('P')}: leave them alone.`,
    steps: [
      ...(nearest
        ? [`Nearest: ${withPeriod(ctx, nearest)}; ${mismatchText(nearest.value, ctx.mark)}, beyond the doubt.`]
        : []),
      ...miscounted(ctx, ranking),
      ...multiples.map((line) => multipleWords(ctx, line)),
      ...leftOut(ctx, ranking),
      way === 'along'
        ? 'Waves that die away after a corner are ringing and belong to no part that turns. Waves that do not: look at gears and bearings not on this list.'
        : 'Ridges without a fixed spacing come from layers that differ: cooling, hatches in the part, a draught. Measure at another place; if the spacing is another there, no part makes it.',
    ],
  };
}

function partingWords(ctx: Ask, parting: Parting): string {
  const pair = `${parting.a.part.name} and ${parting.b.part.name}`;
  if (parting.kind === 'same') {
    return `${firstUpper(pair)} have the same period here: no reading parts them, only the proof by hand below.`;
  }
  if (parting.kind === 'machine') {
    const label = Object.entries(inputs).find(([symbol]) => symbol === parting.symbol)?.[1].label ?? parting.symbol;
    return `To part ${pair} no reading of the ridges is good enough until this is known better: ${label.toLowerCase()}.`;
  }
  if (ctx.choice('by') === 'direct') {
    return `To part ${pair} the period must be known to ± ${about(ctx, parting.half * ctx.number('P'), 1)} or better: take in more ridges.`;
  }
  const spaces = Math.ceil(ctx.number('N') / parting.share);
  const tool = parting.tool ? `, or the same length with a ${parting.tool.name}` : '';
  return `To part ${pair}: measure over ${spaces} spaces, a wall of ${about(ctx, spaces * ctx.number('P'), 2)}${tool}.`;
}

function severalFit(ctx: Ask, ranking: Ranking, fitting: readonly Line[]): Instruction {
  const counted = ctx.choice('by') === 'count' ? ctx.number('L') : undefined;
  const partings = fitting.flatMap((a, i) =>
    fitting.slice(i + 1).flatMap((b) => partingOf(a, b, (line) => ctx.known(line.part.mismatch), counted) ?? []),
  );
  const readings = partings.filter((one) => one.kind === 'reading');
  const hardest = readings.reduce<(typeof readings)[number] | undefined>(
    (least, one) => (least && least.share <= one.share ? least : one),
    undefined,
  );
  const told = [...partings.filter((one) => one.kind !== 'reading'), ...(hardest ? [hardest] : [])];
  return {
    headline: `${fitting.length} of ${compared(ranking.lines.length)} fit: ${list(fitting.map((line) => withPeriod(ctx, line)))}. ${
      hardest ? partingWords(ctx, hardest) : 'Try the proof by hand on the first.'
    }`,
    steps: [
      ...told.filter((one) => one !== hardest).map((one) => partingWords(ctx, one)),
      ...fitting
        .slice(0, 3)
        .map((line) => `${firstUpper(line.part.name)}. ${line.part.look} Proof: ${line.part.prove}`),
      ...runnersUp(ctx, ranking),
      ...leftOut(ctx, ranking),
    ],
    measureAgain: true,
  };
}

/** What to look at, how to prove it, and what else it might be. */
export function action(ctx: Ask): Instruction {
  ctx.number('P');
  const ranking = rank(readingOf(ctx));
  const fitting = ranking.lines.filter((line) => line.fits);
  const [best] = fitting;
  if (ranking.lines.length === 0) {
    return {
      headline: `Ridges at ${ctx.text('P')}. Nothing to compare them with yet: enter what you know of the machine’s parts.`,
      steps: leftOut(ctx, ranking),
      measureAgain: true,
    };
  }
  if (!best) return noneFits(ctx, ranking);
  return fitting.length === 1 ? oneFits(ctx, ranking, best) : severalFit(ctx, ranking, fitting);
}
