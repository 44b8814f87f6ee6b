import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../../src/engine/calculator';
import type { InputUsed } from '../../../src/engine/entry';
import { evaluate, type Evaluation, type Situation } from '../../../src/engine/evaluate';
import { predict } from '../../../src/engine/predict';
import { calculators, cases, entriesFrom } from '../../support/calculators';
import { carriedOut, draws, secondOf, settingThatGives } from '../../support/second';
import { times } from '../../support/sweep';

const COUNT = times(250, 3);
/** How far the second model may lie from what the order promised, as a share of what it changes: a slope for a sine, a chord for an arc. */
const AGREE = 0.02;

const told = (situation: Situation, found: Evaluation): string =>
  JSON.stringify({
    choices: found.choices,
    given: Object.fromEntries(
      Object.entries(situation.entries).map(([name, one]) => [name, `${one?.text} ${one?.unit}`]),
    ),
    order: found.instruction?.order,
  });

/** Situations of a check with their evaluations: those that are beyond, and say what to do. */
const ordered = (calc: Calculator) =>
  draws(calc, COUNT, 1709)
    .map((situation) => ({ situation, found: evaluate(calc, situation) }))
    .filter(({ found }) => found.instruction !== undefined);

const valueIn = (found: Evaluation, symbol: string): number => {
  const state = found.inputs[symbol];
  return state?.ok ? state.value : 0;
};

const ways = ({ instruction }: Evaluation): string =>
  (instruction?.movements ?? []).map(({ part, direction, amount }) => `${part} ${direction} ${amount}`).join(', ');

const isOrder = ({ instruction }: Evaluation): boolean =>
  instruction !== undefined && (instruction.order.effect !== undefined || instruction.movements.length > 0);

describe.each(calculators)('%s: its orders', (id, calc) => {
  const all = ordered(calc);
  const beyond = all.filter(({ found }) => found.verdict.state === 'beyond');

  it('are met by the readings that are tried', () => {
    expect(all.length, 'widen test/support/second.ts draws(): hardly any situation has an order').toBeGreaterThan(
      COUNT / 10,
    );
  });

  it('name inputs that they change', () => {
    for (const { situation, found } of all)
      for (const symbol of Object.keys(found.instruction!.order.effect ?? {}))
        expect(
          found.inputs[symbol],
          `effect names ${symbol}, no input in force: ${told(situation, found)}`,
        ).toBeDefined();
  });

  it('give within when they are carried out in the second model', () => {
    const second = secondOf[id];
    for (const { situation, found } of beyond.filter(({ found }) => isOrder(found))) {
      const { order } = found.instruction!;
      expect(second, `add second.ts: a model of the machine by other means, to carry out ${order.say}`).toBeDefined();
      const read = carriedOut(calc, second!, found, order);
      expect(Object.keys(read), `second.ts carries out nothing of ${told(situation, found)}`).not.toEqual([]);
      const after = evaluate(calc, { ...situation, read });
      if (after.verdict.state === 'within') continue;
      const better = settingThatGives(calc, situation, found);
      const where = `${order.say} leaves it ${after.verdict.state}, but ${better?.symbol} = ${better?.value} (SI) is settable and within; read anew: ${JSON.stringify(read)}; ${told(situation, found)}`;
      expect(better, where).toBeUndefined();
      expect(
        Object.keys(calc.levers),
        `add levers: what a hand can set, so that “no setting helps” can be looked at: ${told(situation, found)}`,
      ).not.toEqual([]);
    }
  });

  it('read afterwards as they promise', () => {
    const second = secondOf[id];
    for (const { situation, found } of all.filter(({ found }) => isOrder(found))) {
      const { order } = found.instruction!;
      expect(
        order.effect,
        `${order.say} moves ${order.movements.map(({ part }) => part).join(', ')}: add \`effect\`, what is read once it is done`,
      ).toBeDefined();
      const read = carriedOut(calc, second!, found, order);
      const promised = predict(calc, situation, found);
      for (const [symbol, { value, half }] of Object.entries(promised?.inputs ?? {})) {
        const was = found.inputs[symbol];
        const now = read[symbol]?.value;
        expect(now, `second.ts does not say what ${symbol} reads after ${order.say}`).toBeDefined();
        const change = was?.ok ? Math.abs(value - was.value) : Math.abs(value);
        const where = `${order.say} promises ${symbol} = ${value}, the second model reads ${now}: ${told(situation, found)}`;
        expect(Math.abs(now! - value), where).toBeLessThanOrEqual(AGREE * change + 0.1 * half + 1e-12);
      }
    }
  });

  it('are given wherever something that can be set would help', () => {
    for (const { situation, found } of beyond.filter((one) => !isOrder(one.found))) {
      if (found.instruction!.measureAgain) continue;
      const better = settingThatGives(calc, situation, found);
      expect(
        better,
        `${found.instruction!.order.say} orders nothing, but ${better?.symbol} = ${better?.value} (SI) gives within: ${told(situation, found)}`,
      ).toBeUndefined();
    }
  });

  it('turn to the other side where the picture does', () => {
    const directions = Object.entries(calc.inputs).filter(
      ([, { signed }]) => signed !== undefined && signed !== 'scale',
    );
    for (const [symbol, spec] of directions)
      expect(spec.signed, `${symbol}: give it two pictures, or 'scale' where the sign is no direction`).not.toBe(true);
    for (const { situation, found } of all) {
      // Two tilts at once do not turn over with one of them.
      const tilted = directions.filter(([symbol]) => valueIn(found, symbol) !== 0);
      const [symbol] = tilted[0] ?? [];
      if (tilted.length !== 1 || symbol === undefined) continue;
      // An order about something else goes the same way on either side.
      if (!Object.hasOwn(found.instruction!.order.effect ?? {}, symbol)) continue;
      const { half } = found.inputs[symbol] as InputUsed;
      const mirrored = evaluate(calc, { ...situation, read: { [symbol]: { value: -valueIn(found, symbol), half } } });
      if (ways(found) === '' || ways(mirrored) === '') continue;
      expect(ways(mirrored), `${symbol} mirrored, and the order is the same: ${told(situation, found)}`).not.toBe(
        ways(found),
      );
    }
  });

  it('say no sign in words', () => {
    for (const [symbol, { label, hint = '' }] of Object.entries(calc.inputs))
      expect(`${label} ${hint}`, `${symbol}: give it pictures, and take the sign out of its words`).not.toMatch(
        /\b(?:minus|negative|positive)\b|(?:higher|lower|longer|shorter|back|front|left|right|up|down) (?:is|=) [+−-]|[(,] ?[+−-] (?:is|for|means)/iu,
      );
  });

  it('ask about entries that cannot all be right, and judge none of them', () => {
    const asked = secondOf[id]?.contradictions ?? {};
    expect(Object.keys(asked).sort(), 'second.ts: give entries for each contradiction of the words').toEqual(
      Object.keys(calc.words.contradictions ?? {}).sort(),
    );
    for (const [key, { given, choices = {} }] of Object.entries(asked)) {
      const found = evaluate(calc, { entries: entriesFrom(calc, given), choices, kept: {}, mark: 'point' });
      expect(found.contradiction, `${key}: these entries are not asked about`).toBeDefined();
      expect(found.verdict.state, `${key}: judged all the same`).toBe('none');
      expect(found.instruction, `${key}: an order all the same`).toBeUndefined();
    }
  });
});

describe.each(calculators)('%s: what counts as measured', (_id, calc) => {
  it('names what its readings are', () => {
    expect(calc.measured, 'add `measured:` the inputs that must have been read before there is a verdict').not.toEqual(
      [],
    );
    for (const symbol of calc.measured) expect(calc.inputs[symbol], `measured: ${symbol} is no input`).toBeDefined();
  });
});

describe.each(cases)('%s (%s): nothing measured', (_id, _options, calc, choices) => {
  it('gives no verdict and no order', () => {
    const found = evaluate(calc, { entries: {}, choices, kept: {}, mark: 'point' });
    expect(found.verdict.state, 'a verdict from nothing: name in `measured:` what must be read').toBe('none');
    expect(found.instruction, 'an order from nothing: name in `measured:` what must be read').toBeUndefined();
  });
});
