import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate';
import calc from '../../src/calculators/belt-pair/index';
import { situation } from '../support/calculators';

type Given = Readonly<Record<string, string>>;
const run = (given: Given, choices: Given = {}) => evaluate(calc, situation(calc, given, choices));
const words = (found: ReturnType<typeof run>) =>
  [found.instruction?.sentence, ...(found.instruction?.steps ?? [])].join(' ');

// 7.8 g/m, 300 mm: 80 Hz are 17.97 N; least 9.3 N, allowable 26.2 N.
const belt = { m_0: '13 ± 0', theta_w: '180 ± 0' };
const even = { ...belt, L_1: '300 ± 0', L_2: '300 ± 0' };
const alike = { ...even, f_1: '80 ± 0.2', f_2: '80 ± 0.2' };

/** The same reading with first and second exchanged. */
const swapped = (given: Record<string, string>): Record<string, string> => {
  const { f_1, f_2, L_1, L_2, ...rest } = given;
  return { ...rest, f_1: f_2 ?? '', f_2: f_1 ?? '', L_1: L_2 ?? '', L_2: L_1 ?? '' };
};
const exchange = (text: string) => text.replace(/first|second/g, (word) => (word === 'first' ? 'second' : 'first'));

describe('which belt is turned', () => {
  it.each([
    // [given, verb, which, direction]: 70 Hz are 13.8 N, 100 Hz are 28.1 N, 60 Hz 10.1 N.
    ['the looser one up', { ...even, f_1: '80 ± 0', f_2: '70 ± 0' }, 'tighten the second', 'tighter'],
    ['the overloaded one down', { ...even, f_1: '100 ± 0', f_2: '80 ± 0' }, 'slacken the first', 'looser'],
    [
      'unlike spans',
      { ...belt, L_1: '300 ± 0', L_2: '240 ± 0', f_1: '80 ± 0', f_2: '80 ± 0' },
      'tighten the second',
      'tighter',
    ],
  ] as [string, Given, string, string][])(
    '%s, and the other way round when the two are exchanged',
    (_, given, verb, direction) => {
      const found = run(given);
      expect(found.verdict.state).toBe('beyond');
      expect(found.instruction?.sentence).toContain(verb);
      expect(found.instruction?.movements).toMatchObject([{ direction }]);
      const mirrored = run(swapped({ ...given }));
      expect(mirrored.instruction?.sentence).toBe(exchange(found.instruction?.sentence ?? ''));
      const [here] = found.instruction?.movements ?? [];
      const [there] = mirrored.instruction?.movements ?? [];
      expect(there?.part).toBe(exchange(here?.part ?? ''));
      expect(there?.direction).toBe(here?.direction);
      expect(there?.amount).toBeCloseTo(here?.amount ?? NaN, 12);
    },
  );

  it('until the note that makes the tensions equal: 80 Hz on 300 mm is 100 Hz on 240 mm', () => {
    const found = run({ ...belt, L_1: '300 ± 0', L_2: '240 ± 0', f_1: '80 ± 0', f_2: '90 ± 0' });
    expect(found.instruction?.sentence).toMatch(/tighten the second until it sounds 100\sHz/);
  });

  it.each([
    ['one is overloaded and the other slack', '110 ± 0', '50 ± 0', ['looser', 'tighter']],
    ['both pull alike, too little', '40 ± 0.1', '40 ± 0.1', ['tighter', 'tighter']],
    ['both pull alike, too much', '120 ± 0.1', '120 ± 0.1', ['looser', 'looser']],
    ['both are slack, and unlike', '50 ± 0', '40 ± 0', ['tighter', 'tighter']],
  ] as [string, string, string, string[]][])('both to the middle of the range, where %s', (_, f_1, f_2, directions) => {
    const found = run({ ...even, f_1, f_2 });
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction?.order.say).toBe('tuneBoth');
    expect(found.instruction?.movements.map((one) => one.direction)).toEqual(directions);
    const { f_1: first, f_2: second } = found.instruction?.order.effect as Record<string, number>;
    expect(run({ ...even, f_1: `${first} ± 0.2`, f_2: `${second} ± 0.2` }).verdict.state).toBe('within');
  });

  it('never beyond what it may carry: a tighter belt near its most is let down to the other', () => {
    // 98 Hz are 26.9 N, the most is 26.3 N: the other is not brought there.
    const found = run({ ...even, f_1: '98 ± 0.2', f_2: '85 ± 0.2', T_a: '43.8 ± 0', T_b: '15 ± 0' });
    expect(found.instruction?.order).toMatchObject({ say: 'even', args: { slacken: true, moved: 'first' } });
  });

  it('not at all, where the readings are too rough to tune by', () => {
    const found = run({ ...even, f_1: '80 ± 3', f_2: '60 ± 3' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction?.order).toMatchObject({ say: 'finerFirst', measureAgain: true, movements: [] });
  });
});

describe('both are left alone', () => {
  it.each([
    ['alike', alike, {}, 'the belts pull alike.'],
    // 2 % of note are 4 % of tension: between 2 and 6 %.
    ['too close', { ...even, f_1: '80 ± 1', f_2: '81.6 ± 1' }, {}, 'too close to call'],
    [
      'alike, enough too close',
      { ...even, f_1: '58 ± 0.2', f_2: '58 ± 0.2', m_0: '13 ± 2' },
      {},
      'whether they pull enough',
    ],
    [
      'too stiff',
      { ...even, L_2: '50 ± 0', f_1: '80', f_2: '400', EI_1: '300 ± 0' },
      { ends: 'clamped' },
      'too stiff for its note',
    ],
  ] as [string, Given, Given, string][])('%s', (_, given, choices, said) => {
    const { instruction } = run(given, choices);
    expect(instruction?.sentence).toContain(said);
    expect(instruction?.sentence).toMatch(/^Leave both tensioners/);
    expect(instruction?.movements ?? []).toEqual([]);
  });

  it('and the weakest reading is named', () => {
    expect(words(run({ ...even, f_1: '80 ± 2', f_2: '81.6 ± 0.1' }))).toContain('Pluck the first belt five times');
  });
});

describe('teeth', () => {
  it.each([
    ['2 ± 0.05', 'second', '2 teeth'],
    ['-2.9 ± 0.05', 'first', '3 teeth'],
    ['1.1 ± 0.05', 'second', '1 tooth'],
  ])('an offset of %s mm: the %s loop is %s longer', (x, which, teeth) => {
    const found = run({ ...alike, x });
    expect(found.instruction?.sentence).toContain(`the ${which} loop is ${teeth} longer`);
    expect(words(found)).toContain(`The ${which} belt’s loop is ${teeth} longer.`);
    expect(words(found)).toContain(`draw it ${teeth} further through its clamp`);
  });

  it('none, where the offset is by design', () => {
    expect(words(run({ ...alike, x: '3 ± 0.05', x_d: '3' }))).toContain('No whole tooth');
  });

  it('between two teeth another cause is named, however well it was measured', () => {
    expect(words(run({ ...alike, x: '1.5 ± 0.05' }))).toContain('no whole number');
    expect(words(run({ ...alike, x: '1.4 ± 0.01' }))).toContain('no whole number');
  });

  it('cannot be told from a rough reading, and it is said what a tooth is', () => {
    const found = run({ ...alike, x: '1.5 ± 1' });
    expect(found.outcomes.n_w).toMatchObject({ ok: false, failure: { kind: 'undetermined' } });
    expect(words(found)).toMatch(/cannot be told.*one tooth is 1.*mm.*caliper/);
  });

  it('are not told while the belts pull unlike: part of the offset is stretch', () => {
    const found = run({ ...even, f_1: '80 ± 0', f_2: '70 ± 0', x: '2 ± 0.05' });
    expect(words(found)).toContain('part of it is stretch');
    expect(words(found)).not.toContain('through its clamp');
  });

  it('are not asked for: the offset may stay empty', () => {
    expect(run(alike).verdict.state).toBe('within');
    expect(words(run(alike))).not.toMatch(/teeth|tooth/);
  });
});

it('the mass has no say in the difference between two belts of one sort', () => {
  const part = (given: Given) => {
    // Limp: through its stiffness the mass has a little.
    const limp = { EI_1: '0.1 ± 0', f_1: '80 ± 0.5', f_2: '78 ± 0.5' };
    const outcome = run({ ...even, ...limp, ...given }, { ends: 'pinned' }).outcomes.d_T;
    if (!outcome?.ok) throw new Error('no difference');
    return outcome;
  };
  const [sure, unsure] = [part({ m_0: '13 ± 0' }), part({ m_0: '13 ± 4' })];
  expect(unsure.u).toBeCloseTo(sure.u, 7);
  expect(unsure.budget.find((one) => one.symbol === 'm_0')?.share ?? 0).toBeLessThan(1e-6);
});

it('asks for the readings where there are none', () => {
  expect(run({ L_1: '300', f_1: '80', L_2: '300' }).cannot).toMatch(/note of the second belt/);
});
