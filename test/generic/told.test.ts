import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../src/engine/calculator';
import { contextFor } from '../../src/engine/context';
import { compareWays, evaluate, type Evaluation, type Situation } from '../../src/engine/evaluate';
import type { Amount, Arg, Args, Order, Told } from '../../src/engine/order';
import { calculators, metaOf, situation } from '../support/calculators';
import { draws } from '../support/second';
import { isWhole, onlyCalculator } from '../support/sweep';

/*
 * What each check tells the hand to do, as data, on its worked examples and on drawn readings: keys, arguments, steps,
 * movements, and what its model made of the readings. test/sweep/every/orders.test.ts says whether an order is right; this shows in
 * a commit which orders a change touches. Sentences are no part of it.
 */

/** Readings drawn for each check; of those that are told the same by the same keys, the first is kept. */
const DRAWN = 20;
const SEED = 4253;
/** Of these a part of the sweep sees so many. */
const PART = { worked: 1, drawn: 3 };
/** Digits to which amounts are held: fewer than rounding could turn on another machine. */
const DIGITS = 6;

const number = (x: number): string => String(Number(x.toPrecision(DIGITS)));

const isAmount = (arg: object): arg is Amount => 'si' in arg && 'kind' in arg;

function printed(arg: Arg): string {
  if (typeof arg === 'number') return number(arg);
  if (typeof arg !== 'object') return String(arg);
  if (isAmount(arg)) return `${number(arg.si)} ± ${number(arg.width)} ${arg.unit}`;
  if (Array.isArray(arg)) return `[${(arg as readonly Arg[]).map(printed).join(', ')}]`;
  return `{${inside(arg as Args)}}`;
}

const inside = (args: Args): string =>
  Object.entries(args)
    .filter(([, arg]) => arg !== undefined)
    .map(([name, arg]) => `${name}: ${printed(arg)}`)
    .join(', ');

const told = ({ say, args }: Told): string => (Object.keys(args).length > 0 ? `${say}(${inside(args)})` : say);

function typed({ entries, choices }: Situation): string {
  const options = Object.values(choices);
  const given = Object.entries(entries).flatMap(([symbol, entry]) =>
    entry ? [`${symbol} = ${[entry.text, entry.unit, entry.tool].filter((part) => part !== '').join(' ')}`] : [],
  );
  return [...options, ...given].join(', ');
}

function ordered(order: Order): string[] {
  const movements = order.movements.map(({ part, direction, amount }) => `${part} ${direction} ${number(amount)}`);
  const effect = Object.entries(order.effect ?? {}).map(
    ([symbol, after]) =>
      `${symbol} = ${typeof after === 'number' ? number(after) : `${number(after.value)} ± ${number(after.half)}`}`,
  );
  return [
    `order: ${told(order)}${order.measureAgain ? ', and measure again' : ''}`,
    ...order.steps.map((step) => `step: ${told(step)}`),
    ...(movements.length > 0 ? [`moves: ${movements.join('; ')}`] : []),
    ...(effect.length > 0 ? [`then: ${effect.join(', ')}`] : []),
    ...(order.assumes?.length ? [`assumes: ${order.assumes.map(({ symbol }) => symbol).join(', ')}`] : []),
  ];
}

function modelled(calc: Calculator, { outcomes }: Evaluation): string[] {
  const made = Object.keys(calc.model?.outputs ?? {}).flatMap((symbol) => {
    const outcome = outcomes[symbol];
    return outcome?.ok ? [`${symbol} = ${number(outcome.value)} from ${number(outcome.low)}`] : [];
  });
  return made.length > 0 ? [`model: ${made.join(', ')}`] : [];
}

/** Several ways to the same end, where there are any and enough is known to compare them. */
function compared(calc: Calculator, one: Situation, found: Evaluation): string[] {
  if (!compareWays(calc, found, one)) return [];
  const { ways = [] } = calc.ways?.(contextFor(calc, found, one)) ?? {};
  return ways.map(({ id, standing, facts, why, needs }) =>
    [`way ${id}: ${standing}`, ...[...facts, ...why, ...needs].map(told)].join('; '),
  );
}

function lines(calc: Calculator, one: Situation, found: Evaluation): string[] {
  const verdicts = found.verdict.checks.map(({ limit, state }) => `${limit.of} ${state}`);
  return [
    ...modelled(calc, found),
    `verdict: ${found.verdict.state}${verdicts.length > 0 ? ` (${verdicts.join(', ')})` : ''}`,
    ...(found.contradiction ? ['contradiction'] : []),
    ...(found.instruction ? ordered(found.instruction.order) : []),
    ...compared(calc, one, found),
  ];
}

/** What tells one block from another: its verdicts and keys, with no number. */
const signature = ({ verdict, instruction, contradiction }: Evaluation): string =>
  JSON.stringify([
    verdict.state,
    verdict.checks.map(({ state }) => state),
    contradiction !== undefined,
    instruction?.order.say,
    instruction?.order.steps.map(({ say }) => say),
    instruction?.order.movements.map(({ part, direction }) => [part, direction]),
  ]);

function block(calc: Calculator, title: string, one: Situation, found: Evaluation): string[] {
  return ['', `## ${title}`, '', typed(one), '', ...lines(calc, one, found).map((line) => `- ${line}`)];
}

/** The blocks of the first so many worked examples, and of the first so many draws. */
function blocks(calc: Calculator, worked: number, count: number): string[][] {
  const met = new Set<string>();
  const drawn = draws(calc, count, SEED).flatMap((one, at) => {
    const found = evaluate(calc, one);
    const key = signature(found);
    if (met.has(key)) return [];
    met.add(key);
    return [block(calc, `Drawn ${at + 1}`, one, found)];
  });
  const examples = calc.examples.slice(0, worked).map((example, at) => {
    const one = situation(calc, example.given, example.choices);
    return block(calc, `Example ${at + 1}`, one, evaluate(calc, one));
  });
  return [...examples, ...drawn];
}

function record(id: string, calc: Calculator): string {
  return [
    `# ${metaOf[id]?.title ?? id}: what it tells the hand`,
    '',
    'Written by `npx vitest run --project fast test/generic/told.test.ts -u`, held by the same test. SI, with the unit that is shown.',
    ...blocks(calc, calc.examples.length, DRAWN).flat(),
    '',
  ].join('\n');
}

describe.each(calculators)('%s', (id, calc) => {
  it('tells the hand what its orders.md says', async () => {
    const file = `../../src/calculators/${id}/orders.md`;
    const how =
      'an order, its amount, a step or what a model makes of readings has changed. If it is meant: npx vitest run --project fast test/generic/told.test.ts -u, and read the difference before it is committed';
    if (isWhole || onlyCalculator !== undefined) return expect(record(id, calc), how).toMatchFileSnapshot(file);
    const written = readFileSync(`src/calculators/${id}/orders.md`, 'utf8');
    for (const lines of blocks(calc, PART.worked, PART.drawn)) expect(written, how).toContain(`${lines.join('\n')}\n`);
  });
});
