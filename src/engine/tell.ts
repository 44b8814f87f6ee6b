import { formatBare, formatValue } from '../quantity/format';
import { kindById } from '../quantity/all-kinds';
import type { DecimalMark } from '../quantity/parse';
import { speakNumber, speakValue } from '../quantity/speak';
import { unitById } from '../quantity/unit';
import { toolById } from '../reference/tools';
import type { Calculator, Instruction } from './calculator';
import { nameOf } from './name';
import { said, type Amount, type Order, type OrderText, type Print, type Told } from './order';
import type { ComparedWay, ComparedWays, Way, Ways } from './ways';
import say from './words/en';

/** What is left out of a printed amount. */
interface Without {
  readonly magnitude?: boolean;
  readonly bare?: boolean;
}
type Format = (si: number, width: number, unit: NonNullable<ReturnType<typeof unitById>>, without: Without) => string;

function print(calc: Calculator, amount: Format, number: Print['number']): Print {
  const inUnit = ({ si, width, kind, unit }: Amount, without: Without = {}): string => {
    const known = kindById(kind);
    const shown = known && unitById(known, unit);
    return shown ? amount(si, width, shown, without) : number(without.magnitude ? Math.abs(si) : si);
  };
  return Object.assign((one: Amount) => inUnit(one), {
    size: (one: Amount) => inUnit(one, { magnitude: true }),
    bare: (one: Amount) => inUnit(one, { bare: true }),
    number,
    called: (symbol: string) => say.inSentence(nameOf(calc, symbol)),
    tool: (id: string) => toolById(id)?.name ?? id,
  });
}

/** Prints for the eye, with the person's decimal mark. */
function printFor(calc: Calculator, mark: DecimalMark): Print {
  return print(
    calc,
    (si, width, unit, { magnitude = false, bare = false }) =>
      (bare ? formatBare : formatValue)(si, width, unit, { mark, magnitude }),
    (value, decimals) => writeNumber(value, decimals, mark),
  );
}

/** Prints for the ear: units and numbers in words. */
function voiceFor(calc: Calculator): Print {
  return print(
    calc,
    (si, width, unit, { magnitude = false, bare = false }) =>
      bare ? speakNumber(formatBare(si, width, unit, { magnitude })) : speakValue(si, width, unit, { magnitude }),
    // Numbers are said from their form with a point, whichever mark the person writes.
    (value, decimals) => speakNumber(writeNumber(value, decimals, 'point')),
  );
}

function writeNumber(value: number, decimals: number | undefined, mark: DecimalMark): string {
  const text = decimals === undefined ? String(Number(value.toPrecision(12))) : value.toFixed(decimals);
  return (mark === 'comma' ? text.replace('.', ',') : text).replace('-', '\u2212');
}

/** @throws Error for a key that the words lack, which the types should have seen */
function need<T>(found: T | undefined, key: string): T {
  if (found === undefined) throw new Error(`No words for ${key}: add them to the folder's words.`);
  return found;
}

/** An order in words: the instruction that the screen shows. */
export function instructionOf(calc: Calculator, order: Order, mark: DecimalMark): Instruction {
  const { orders, steps } = calc.words;
  const text = (how: Print): OrderText => need(said<OrderText>(orders[order.say], order.args, how), order.say);
  const eye = printFor(calc, mark);
  const { glance, sentence } = text(eye);
  const assumed = (how: Print): readonly string[] =>
    (order.assumes ?? []).map(({ symbol, amount }) => `${how.called(symbol)} ${how(amount)}`);
  const assumes = assumed(eye);
  const names = (order.assumes ?? []).map(({ symbol }) => eye.called(symbol));
  // A step may have nothing to say under its arguments: then the order has it not.
  const told = order.steps
    .map((step) => ({ step, words: need(said<string>(steps[step.say], step.args, eye), step.say) }))
    .filter(({ words }) => words !== '');
  return {
    order: { ...order, steps: told.map(({ step }) => step) },
    glance: say.glanceAssuming(glance, names),
    sentence: say.assuming(sentence, assumes),
    get spoken() {
      const aloud = text(voiceFor(calc));
      return say.assuming(aloud.spoken ?? aloud.sentence, assumed(voiceFor(calc)));
    },
    assumes,
    steps: told.map(({ words }) => words),
    movements: order.movements,
    measureAgain: order.measureAgain,
  };
}

/** Why a model or a preset cannot, as a sentence. */
export function problemText(calc: Calculator, problem: Told, mark: DecimalMark): string {
  return need(said<string>(calc.words.problems?.[problem.say], problem.args, printFor(calc, mark)), problem.say);
}

/** The question that a contradiction asks. */
export function contradictionText(calc: Calculator, found: Told, mark: DecimalMark): string {
  return need(said<string>(calc.words.contradictions?.[found.say], found.args, printFor(calc, mark)), found.say);
}

/** Ways side by side, in words. */
export function waysOf(calc: Calculator, compared: ComparedWays, mark: DecimalMark): Ways | undefined {
  const words = calc.words.ways;
  if (!words) return undefined;
  const how = printFor(calc, mark);
  const texts = (group: typeof words.facts, all: readonly Told[]): readonly string[] =>
    all.map((one) => need(said<string>(group?.[one.say], one.args, how), one.say));
  return {
    title: words.title,
    note: words.note,
    columns: compared.columns.map((key) => need(words.columns[key], key)),
    ways: compared.ways.map(({ id, standing, facts, why, needs }: ComparedWay): Way => ({
      name: need(words.names[id], id),
      standing,
      facts: texts(words.facts, facts),
      why: texts(words.why, why).join(' '),
      needs: texts(words.needs, needs),
    })),
  };
}
