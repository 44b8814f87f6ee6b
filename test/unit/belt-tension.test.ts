import { describe, expect, it } from 'vitest';
import { belts, beltOptions, TABLE_WIDTH } from '../../src/reference/belts';
import { evaluate } from '../../src/engine/evaluate';
import calc from '../../src/calculators/belt-tension/index';
import { printCitation } from '../../src/reference/citation';
import { situation } from '../support/calculators';

type Given = Readonly<Record<string, string>>;
const run = (given: Given, choices: Given = {}) => evaluate(calc, situation(calc, given, choices));

// 7.8 g/m over 250 mm: 9.8 N sound 70.9 Hz, 17.76 N 95.4 Hz, 25.72 N 114.8 Hz (√(T/μ)/2L by hand).
const exact = {
  L_1: '250 ± 0',
  w: '6 ± 0',
  EI_0: '10 ± 0',
  m_0: '13 ± 0',
  M: '0.5 ± 0',
  C_0: '31000 ± 0',
  T_b: '15.5 ± 0',
  T_a: '43.7 ± 0',
  L_t1: '1000 ± 0',
  theta_w: '180 ± 0',
};
const at = (f: string, choices: Given = {}) => run({ ...exact, f }, choices);
const words = (found: ReturnType<typeof run>) =>
  [found.instruction?.sentence, ...(found.instruction?.steps ?? [])].join(' ');

describe('the tensioner is turned', () => {
  const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise', slide: '' } as const;

  it.each(['clockwise', 'anticlockwise'] as const)(
    'the way that tightens when slack, the other when tight: %s',
    (way) => {
      const slack = at('60 ± 0', { adjuster: way });
      expect(slack.verdict.state).toBe('beyond');
      expect(slack.instruction?.movements).toMatchObject([{ part: 'tensioner’s screw', direction: way }]);
      expect(slack.instruction?.sentence).toContain('too slack');
      const tight = at('130 ± 0', { adjuster: way });
      expect(tight.instruction?.movements).toMatchObject([{ part: 'tensioner’s screw', direction: opposite[way] }]);
      expect(tight.instruction?.sentence).toContain('too tight');
    },
  );

  it('outwards or inwards where it slides', () => {
    const slack = at('60 ± 0', { adjuster: 'slide' });
    expect(slack.instruction?.movements).toMatchObject([{ part: 'motor or idler', direction: 'outwards' }]);
    expect(at('130 ± 0', { adjuster: 'slide' }).instruction?.movements[0]?.direction).toBe('inwards');
  });

  it('until a note in steps that a hand can tune to, and the belt then surely pulls right', () => {
    for (const f of ['60', '64.3', '130', '150']) {
      const found = at(`${f} ± 0.5`);
      expect(found.instruction?.order.say).toBe('tune');
      const to = found.instruction?.order.effect?.f as number;
      // 95.4 Hz as a string; stiffness between free and held ends adds 0.1 Hz.
      expect(to).toBe(95.5);
      expect(at(`${to} ± 0.5`).verdict.state).toBe('within');
    }
  });

  it('and no turn is named where the pitch of the screw is not known', () => {
    const open = at('60 ± 0').instruction?.order.steps.find(({ say }) => say === 'startWith');
    expect(open?.args.by).toBeUndefined();
    const known = run({ ...exact, f: '40 ± 0', P_a: '0.5' }).instruction?.order.steps;
    const by = known?.find(({ say }) => say === 'startWith')?.args.by as { si: number };
    // Whole eighths of a turn.
    expect((by.si * 4) / Math.PI).toBeCloseTo(Math.round((by.si * 4) / Math.PI), 9);
  });

  it('never beyond what the belt may carry: a range too narrow for the readings is read finer first', () => {
    const narrow = run({ ...exact, T_b: '43 ± 0', T_a: '43.7 ± 0', a: '0', f: '100 ± 1' });
    expect(narrow.verdict.state).toBe('beyond');
    expect(narrow.instruction?.order).toMatchObject({ say: 'finerFirst', measureAgain: true, movements: [] });
  });

  it('prints the ends of the range with the note', () => {
    expect(words(at('60 ± 0'))).toMatch(/aim at 95\.5\sHz, anything from 71\.?\d?\sHz to 11[45]\.?\d?\sHz/);
  });

  it('lowers the acceleration where that alone leaves no tension that suits', () => {
    const found = run({ ...exact, f: '95 ± 0', M: '2 kg ± 0', a: '10000' });
    expect(found.instruction?.order.say).toBe('lowerFirst');
    const { a } = found.instruction?.order.effect as { a: number };
    expect(run({ ...exact, f: '95 ± 0', M: '2 kg ± 0', a: `${a * 1e3}` }).verdict.state).toBe('within');
  });
});

describe('the octave', () => {
  // 190 Hz would be 70.4 N; its half, 95 Hz, is 17.6 N and in the range. 47.5 Hz the other way about.
  it('is named where half or double the note would be right', () => {
    expect(words(at('192 ± 0'))).toContain('half of it is right');
    expect(words(at('47.5 ± 0'))).toContain('twice as high');
  });

  it('is not named where it explains nothing', () => {
    expect(words(at('60 ± 0'))).not.toMatch(/half of it|twice as high/);
    expect(words(at('130 ± 0'))).not.toMatch(/half of it|twice as high/);
  });
});

describe('the tensioner is left alone', () => {
  const stiff = { ...exact, EI: '100 ± 0' };
  it.each([
    ['within', { ...exact, f: '95 ± 0' }, {}, 'enough to hold'],
    ['too close, slack', { ...exact, f: '71 ± 2' }, {}, 'too slack is too close to call'],
    ['too close, tight', { ...exact, f: '114 ± 3' }, {}, 'too tight is too close to call'],
    ['too stiff', { ...stiff, L_1: '40 ± 0', f: '500 ± 0' }, { ends: 'pinned' }, 'too stiff for its note'],
    ['too far pressed', { L_1: '300', F: '3', y: '30' }, { by: 'press' }, 'press less far'],
    ['no room', { ...exact, f: '95', T_b: '43 ± 0', M: '3 kg' }, {}, 'no tension suits this belt'],
  ] as [string, Given, Given, string][])('%s', (_, given, choices, said) => {
    const { instruction } = run(given, choices);
    expect(instruction?.sentence).toContain(said);
    expect(instruction?.sentence).toMatch(/^Leave the tensioner/);
    expect(instruction?.movements ?? []).toEqual([]);
  });

  it('and what would settle it is named by what adds most', () => {
    expect(words(at('71 ± 3'))).toContain('Pluck five times');
    expect(words(run({ ...exact, m_0: '13 ± 2', f: '73 ± 0' }))).toContain('Weigh a known length');
  });
});

it('pressing says the force that the scale should show', () => {
  const given = {
    L_1: '300 ± 0',
    F: '1.2 ± 0',
    y: '7 ± 0',
    M: '0.5 ± 0',
    C_0: '31000 ± 0',
    T_b: '15.5 ± 0',
    T_a: '43.7 ± 0',
    L_t1: '1000 ± 0',
    EI_0: '10 ± 0',
  };
  const found = run(given, { by: 'press' });
  expect(found.verdict.state).toBe('beyond');
  expect(words(found)).toMatch(/Press to the same 7.* aim at .* on the scale/);
  const to = found.instruction?.order.effect?.F as number;
  expect(to * 10).toBeCloseTo(Math.round(to * 10), 9);
  expect(run({ ...given, F: `${to} ± 0` }, { by: 'press' }).verdict.state).toBe('within');
});

it('asks for the reading where there is none', () => {
  expect(run({ L_1: '250' }).cannot).toMatch(/note of the plucked span/);
  expect(run({ L_1: '250', F: '2' }, { by: 'press' }).cannot).toMatch(/deflection of the middle/);
});

describe('the belts', () => {
  it.each(Object.entries(belts))('%s: every value has a source, a place in order and a half-width', (_, row) => {
    const columns = [row.pitch, row.mass, row.least, row.allowable, row.springRate, row.bending];
    for (const { value, half, from } of columns) {
      expect(value).toBeGreaterThan(0);
      expect(half).toBeGreaterThanOrEqual(0);
      expect(half).toBeLessThanOrEqual(0.65 * value);
      expect(printCitation(from)).toMatch(/^(?:ISO (?:5296:2012|17396:2017), .*clause \d|Common practice|Derived)/);
    }
    expect(row.least.value).toBeLessThan(row.allowable.value);
  });

  it('are found by the letters on their backs, where a standard gives them some', () => {
    const letters = { inch2: 'MXL', inch5: 'XL', straight25: 'T2.5', straight5: 'T5', wide5: 'AT5' } as const;
    for (const [id, text] of Object.entries(letters)) {
      expect(belts[id as keyof typeof letters].label).toMatch(new RegExp(`^${text.replace('.', '\\.')}: `));
    }
    const labels = Object.values(belts).map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  });

  it('bring their values to the inputs named, and none where another belt is meant', () => {
    const options = beltOptions({ mass: 'm_0', pitch: 'p' });
    expect(options.straight5.set).toEqual({ m_0: [21, 1], p: [5, 0] });
    expect(options.other.set).toBeUndefined();
    expect(TABLE_WIDTH).toBe(10);
  });
});
