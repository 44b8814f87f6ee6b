import { length } from '../../quantity/kinds';
import { expanded } from '../../formula/outcome';
import { formatNumber, formatValue } from '../../quantity/format';
import { fromSi, toSi } from '../../quantity/unit';
import type { Context, Instruction } from '../../engine/calculator';
import { choices, inputs } from './inputs';
import { lineOf, isNear, rank, stateOf, type Line, type Ranking, type Reading } from './model';
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

/** "the ridges are 12 % closer": against a part's period. */
function mismatchText(line: Line, mark: Ask['mark']): string {
  const times = 1 + line.value;
  if (!isNear(line)) {
    const text = formatNumber(Math.max(times, 1 / times), 2, mark);
    return `the ridges are ${text} times ${times < 1 ? 'closer' : 'as far apart'}`;
  }
  return `the ridges are ${formatNumber(Math.abs(line.value) * 100, 2, mark)} % ${line.value < 0 ? 'closer' : 'wider'}`;
}

const lowerFirst = (text: string): string =>
  text.startsWith('Z ') ? text : text.charAt(0).toLowerCase() + text.slice(1);
/** Sentences, one each. */
const sentences = (text: string): string[] => text.split(/(?<=\.) /);

/** The period a part would print, to the digits that what is known of the part supports. */
function periodText(ctx: Ask, line: Line): string {
  const known = ctx.known(line.part.period);
  const width = known ? (expanded(known) / Math.abs(known.value)) * line.period : 0;
  return width > 0 ? formatValue(line.period, width, length.mm.unit, { mark: ctx.mark }) : about(ctx, line.period);
}

const withPeriod = (ctx: Ask, line: Line): string => `${line.part.name} (${periodText(ctx, line)})`;

function multipleWords(ctx: Ask, line: Line): string {
  return line.multiple < 1
    ? `Less likely: half of ${line.part.name} (${periodText(ctx, line)}), as two flats or an oval on it would print.`
    : `Less likely: twice ${line.part.name} (${periodText(ctx, line)}), as when every second ridge is too weak to be counted.`;
}

/** What was left out, and which entries would take it in. */
function leftOut(ctx: Ask, { ruledOut, unknown }: Ranking): string[] {
  const asked = unknown.map((part) => {
    const labels = ctx.lacking(part.period);
    return labels.length > 0
      ? `${lowerFirst(part.short)} (enter: ${labels.map(lowerFirst).join(', ')})`
      : `${lowerFirst(part.short)} (enter layer height and drive as marked, without a ±)`;
  });
  return [
    ...(asked.length > 0 ? [`Not compared: ${asked.join('; ')}.`] : []),
    ...(ruledOut.length > 0
      ? [`Ruled out: ${ruledOut.map(({ part, why }) => `${lowerFirst(part.short)}, ${why}`).join('; ')}.`]
      : []),
  ];
}

function runnersUp(ctx: Ask, { lines, multiples }: Ranking): string[] {
  const others = lines.filter((line) => !line.fits).slice(0, 2);
  return [
    ...others.map((line, i) => {
      const rankWord = i === 0 ? 'Next nearest' : 'Then';
      return `${rankWord}: ${withPeriod(ctx, line)}; ${mismatchText(line, ctx.mark)}, beyond the doubt.`;
    }),
    ...multiples.map((line) => multipleWords(ctx, line)),
  ];
}

const compared = (count: number): string => (count === 1 ? 'one part compared' : `${count} parts compared`);

function oneFits(ctx: Ask, ranking: Ranking, best: Line): Instruction {
  const { part } = best;
  const [first = '', ...more] = sentences(part.look);
  return {
    headline: `${firstUpper(part.name)} fits: ${periodText(ctx, best)} against ${ctx.text('P')}. ${first}`,
    steps: [
      ...more,
      `${part.prove} If they do not, the part is cleared, however well the numbers agree.`,
      `Of ${compared(ranking.lines.length)} it is the only one that fits.`,
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
    headline:
      lines.length === 1
        ? `The one part compared does not repeat every ${ctx.text('P')}: leave it alone.`
        : `None of the ${compared(lines.length)} repeats every ${ctx.text('P')}: leave them alone.`,
    steps: [
      ...(nearest
        ? [`Nearest: ${withPeriod(ctx, nearest)}; ${mismatchText(nearest, ctx.mark)}, beyond the doubt.`]
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
    headline: `${firstUpper(
      list(fitting.map((line) => withPeriod(ctx, line))),
    )} fit. ${hardest ? partingWords(ctx, hardest) : 'Try the proof by hand on the first.'}`,
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
