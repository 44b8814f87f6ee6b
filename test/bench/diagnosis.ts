// Expected effort to the true cause in our order and in others, over the whole catalogue: once where the catalogue is right,
// once where its shares and reliabilities are wrong. Fixed seeds: the same numbers on every machine.
import { catalogue } from '../../src/diagnosis/catalogue';
import { propose } from '../../src/diagnosis/order';
import {
  byRule,
  cheapest,
  difference,
  disturbed,
  fixedList,
  meanOf,
  mendsOnly,
  mostLikely,
  ourChecks,
  ours,
  remembered,
  simulate,
  type Ended,
  type Mean,
  type Order,
} from '../support/diagnosis-simulate';

const CASES = Number(process.argv[2] ?? 200);
const SURE = [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
const WORLDS = 8;

const others: readonly (readonly [string, Parameters<typeof byRule>[0]])[] = [
  ['fixed list', fixedList],
  ['most likely first', mostLikely],
  ['cheapest first', cheapest],
  ['our checks, the others’ rule', ourChecks()],
];

/** What was found, for the block in DEVELOPERS.md. */
export const measured: { title: string; head: readonly string[]; rows: (readonly string[])[] }[] = [];

const plusMinus = ({ mean, se }: Mean): string => `${mean.toFixed(1)} ± ${se.toFixed(1)}`;

function line(name: string, ended: readonly Ended[], against?: readonly Ended[]): void {
  const cured = ended.filter((one) => one.cured).length / ended.length;
  const cells = [
    plusMinus(meanOf(ended.map((one) => one.search))),
    plusMinus(meanOf(ended.map((one) => one.effort))),
    against ? plusMinus(difference(ended, against, (one) => one.effort)) : '',
    meanOf(ended.map((one) => one.checks)).mean.toFixed(1),
    `${Math.round(100 * cured)} %`,
  ];
  measured.at(-1)?.rows.push([name, ...cells]);
  console.log(`| ${name.padEnd(34)} | ${cells.map((cell) => cell.padStart(12)).join(' | ')} |`);
}

const head = (title: string, cases: number): void => {
  const said = `${title}: ${cases} cases. Minutes, mean ± standard error; parts counted at the usual hourly worth.`;
  console.log(`\n${said}`);
  const names = ['to the cause', 'to the end', 'more than us', 'checks', 'cured'];
  measured.push({ title: said, head: ['order', ...names], rows: [] });
  console.log(`| ${'order'.padEnd(34)} | ${names.map((name) => name.padStart(12)).join(' | ')} |`);
};

const effortOf = (ended: readonly Ended[]): number => meanOf(ended.map((one) => one.effort)).mean;

// The others are given the threshold that suits each best, found on other cases than those counted.
const tuned = others.map(([name, next]): readonly [string, Order] => {
  const tried = SURE.map((sure) => ({
    sure,
    cost: effortOf(simulate(catalogue, byRule(next, sure), CASES, 'tune')),
  }));
  const { sure } = tried.reduce((best, one) => (one.cost < best.cost ? one : best));
  return [`${name}; mends at ${Math.round(100 * sure)} %`, remembered(byRule(next, sure))];
});
const mineOrder = remembered(ours);
const field: readonly (readonly [string, Order])[] = [...tuned, ['mends only, chance over effort', mendsOnly]];

head('The catalogue is right', CASES * catalogue.symptoms.length);
const mine = simulate(catalogue, mineOrder, CASES, 'bench');
line('ours', mine);
const right = field.map(([name, order]) => {
  const ended = simulate(catalogue, order, CASES, 'bench');
  line(name, ended, mine);
  return difference(ended, mine, (one) => one.effort);
});

const each = Math.ceil(CASES / WORLDS);
const worlds = Array.from({ length: WORLDS }, (_, i) => disturbed(catalogue, `world ${i}`));
const inAll = (order: Order): Ended[] =>
  worlds.flatMap((world, i) => simulate(catalogue, order, each, `wrong ${i}`, world));
head(
  'The catalogue is wrong (shares off by a factor of about two, odds of answers likewise)',
  WORLDS * each * catalogue.symptoms.length,
);
const mineWrong = inAll(mineOrder);
line('ours', mineWrong);
for (const [name, order] of field) line(name, inAll(order), mineWrong);

const times = catalogue.symptoms
  .map(({ id, hazard }) => {
    const course = { symptom: id, facts: {}, log: hazard ? [{ kind: 'made safe' } as const] : [] };
    propose(catalogue, course);
    const before = performance.now();
    for (let i = 0; i < 10; i += 1) propose(catalogue, course);
    return (performance.now() - before) / 10;
  })
  .sort((a, b) => a - b);
console.log(
  `\nOne proposal: median ${(times[8] ?? 0).toFixed(1)} ms, slowest symptom ${(times.at(-1) ?? 0).toFixed(1)} ms.`,
);

if (right.some(({ mean }) => mean <= 0)) {
  console.error('Ours is not the lowest.');
  process.exitCode = 1;
}
