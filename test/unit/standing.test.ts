import { describe, expect, it } from 'vitest';
import { calculator, choice, formula, input } from '../../src/engine/calculator';
import { evaluate, type Situation } from '../../src/engine/evaluate';
import { telling } from '../../src/engine/order';
import { predict } from '../../src/engine/predict';
import { length, ratio } from '../../src/quantity/kinds';
import { commonPractice } from '../../src/reference/citation';

const words = {
  inputs: {
    x: { label: 'Height' },
    k: { label: 'Travel of one turn' },
    lo: { label: 'Least height' },
    hi: { label: 'Most height' },
    o: { label: 'Other height' },
  },
  choices: { by: { label: 'Read by', options: { eye: 'eye', gauge: 'gauge' } } },
  results: { y: 'Height above the foot', n: 'Turns' },
  limits: { y: 'Height' },
  cautions: { off: 'Switch it off and unplug it first.' },
  beware: {},
  contradictions: { twice: (a: { by: number }) => `They differ by ${a.by}. Which is right?` },
  orders: {
    turn: { glance: '↻ Turn', sentence: 'Turn the screw.' },
    leave: { glance: '✓ Leave', sentence: 'Leave it.' },
  },
  steps: { so: 'So.' },
  proof: 'Measure again and see.',
  examples: {},
  sources: {},
};
const { tell, contradict } = telling<typeof words>();

/** A screw that lifts a plate: the smallest check with every mechanism. */
const plate = calculator(
  {
    inputs: {
      x: input(length.mm, { typical: 1, range: [0, 100] }),
      k: input(length.mm, { typical: 2, range: [0.1, 20] }),
      lo: input(length.mm, { typical: 4, range: [0, 100], decided: true }),
      hi: input(length.mm, { typical: 6, range: [0, 100], decided: true }),
      o: input(length.mm, { range: [0, 100], optional: true }),
    },
    choices: { by: choice({ eye: {}, gauge: {} }, 'eye') },
    formulas: [
      formula('y = x + 0 * k', length.mm, commonPractice),
      formula('n = (5 / 1000 - x) / k', ratio.one, commonPractice),
    ],
    limits: [{ of: 'y', min: 'lo', max: 'hi', cite: commonPractice }],
    cautions: ['off'],
    measured: ['x'],
    levers: { x: { step: (ask) => ask.number('k') / 4 } },
    contradiction: (ask) => {
      const by = ask.number('o') - ask.number('x');
      return Math.abs(by) > 0.002 ? contradict('twice', { by }, ['x', 'o']) : undefined;
    },
    action: (ask) =>
      ask.verdict === 'within'
        ? tell('leave', {})
        : tell(
            'turn',
            {},
            {
              movements: [{ part: 'screw', direction: 'clockwise', amount: ask.number('n') }],
              effect: { x: 0.005 },
            },
          ),
    examples: [],
  },
  words,
);

const typed = (given: Record<string, string>): Situation => ({
  entries: Object.fromEntries(Object.entries(given).map(([name, text]) => [name, { text, unit: 'mm', tool: '' }])),
  choices: {},
  kept: {},
  mark: 'point',
});

describe('nothing measured', () => {
  it('gives no verdict and no order, and says what to measure', () => {
    const found = evaluate(plate, typed({ k: '2', lo: '4' }));
    expect(found.verdict.state).toBe('none');
    expect(found.verdict.checks.map(({ state }) => state)).toEqual(['none']);
    expect(found.instruction).toBeUndefined();
    expect(found.cannot).toContain('height');
  });

  it('a machine’s typical value is nobody’s reading, its measured one is', () => {
    const place = { ...typed({}), kept: {} };
    expect(evaluate(plate, place).verdict.state).toBe('none');
    expect(evaluate(plate, { ...place, read: { x: { value: 0.005, half: 0 } } }).verdict.state).toBe('within');
  });
});

describe('an order', () => {
  it('is worked out when it is asked for, once', () => {
    const found = evaluate(plate, typed({ x: '1' }));
    expect(found.instruction).toBe(found.instruction);
    expect(found.trials).toBe(0);
  });
});

describe('an entry that cannot be read', () => {
  it.each(['abc', '9e99'])('%s: no verdict and no order stands over it, and the sentence names it', (text) => {
    for (const symbol of ['o', 'lo', 'k']) {
      const found = evaluate(plate, typed({ x: '1', [symbol]: text }));
      expect(found.verdict.state).toBe('none');
      expect(found.verdict.checks.map(({ state }) => state)).toEqual(['none']);
      expect(found.instruction).toBeUndefined();
      expect(found.cannot).toContain(plate.inputs[symbol]!.label);
    }
  });

  it('is told first of several, the others by name', () => {
    const { cannot } = evaluate(plate, typed({ x: 'abc', k: 'abc' }));
    expect(cannot).toContain('Height: ');
    expect(cannot).toContain('travel of one turn');
  });
});

describe('what is assumed', () => {
  it('stands with the order: in glance, sentence and speech', () => {
    const { instruction } = evaluate(plate, typed({ x: '1' }));
    expect(instruction?.order.assumes?.map(({ symbol }) => symbol)).toEqual(['k']);
    expect(instruction?.glance).toContain('travel of one turn assumed');
    expect(instruction?.sentence).toMatch(/travel of one turn 2.mm/);
    expect(instruction?.spoken).toContain('travel of one turn two millimetres');
  });

  it('is nothing once it was measured, nor where nothing is to be moved', () => {
    expect(evaluate(plate, typed({ x: '1', k: '2' })).instruction?.assumes).toEqual([]);
    expect(evaluate(plate, typed({ x: '5' })).instruction?.assumes).toEqual([]);
  });
});

describe('entries that cannot all be right', () => {
  it('are asked about, and nothing is judged', () => {
    const found = evaluate(plate, typed({ x: '1', o: '9' }));
    expect(found.contradiction).toEqual({
      sentence: expect.stringContaining('Which is right?') as string,
      of: ['x', 'o'],
    });
    expect(found.verdict.state).toBe('none');
    expect(found.instruction).toBeUndefined();
    expect(evaluate(plate, typed({ x: '1', o: '1' })).verdict.state).toBe('beyond');
  });

  it('a least above its most is one, whatever the check says', () => {
    const found = evaluate(plate, typed({ x: '1', lo: '7' }));
    expect(found.contradiction?.of).toEqual(['lo', 'hi']);
    expect(found.verdict.state).toBe('none');
  });
});

describe('what to expect of the reading after an order', () => {
  it('has the doubt of both readings', () => {
    const now = typed({ x: '1 ± 0.1' });
    const prediction = predict(plate, now, evaluate(plate, now));
    expect(prediction?.inputs.x?.value).toBe(0.005);
    expect(prediction?.inputs.x?.half).toBeCloseTo(1e-4 * Math.SQRT2, 12);
    expect(prediction?.results.y?.value).toBeCloseTo(0.005, 12);
    expect(prediction?.after.verdict.state).toBe('within');
  });

  it('is nothing where the order changes nothing', () => {
    const now = typed({ x: '5' });
    expect(predict(plate, now, evaluate(plate, now))).toBeUndefined();
  });
});
