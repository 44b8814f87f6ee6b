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

  it('outwards or inwards where it slides, by half of the belt to take up', () => {
    const slack = at('60 ± 0', { adjuster: 'slide' });
    // T = 4 · 0.0078 · 0.0625 · 3600 = 7.02 N; (17.76 − 7.02) N · 1 m / 18 600 N / 2 = 0.288710 mm.
    expect(slack.instruction?.movements).toMatchObject([{ part: 'motor or idler', direction: 'outwards' }]);
    expect(slack.instruction?.movements[0]?.amount).toBeCloseTo(0.28871e-3, 8);
    expect(at('130 ± 0', { adjuster: 'slide' }).instruction?.movements[0]?.direction).toBe('inwards');
  });

  it('mirrors: as far out from the middle, as far the other way', () => {
    const [low, high] = ['F_a', 'F_b'].map((_, i) => {
      const T = 17.76 + (i === 0 ? -12 : 12);
      return at(`${Math.sqrt(T / 0.0078) / 0.5} ± 0`).instruction?.movements[0];
    });
    expect(low?.amount).toBeCloseTo(high?.amount ?? NaN, 9);
    expect([low?.direction, high?.direction]).toEqual(['clockwise', 'anticlockwise']);
  });

  it('until a note that is printed with both ends of the range', () => {
    expect(words(at('60 ± 0'))).toMatch(/aim at 95\.\d*\sHz, anything from 70\.\d*\sHz to 114\.\d*\sHz/);
  });
});

describe('the octave', () => {
  // 190 Hz would be 70.4 N; its half, 95 Hz, is 17.6 N and in the range. 47.5 Hz the other way about.
  it('is named where half or double the note would be right', () => {
    expect(words(at('190 ± 0'))).toContain('half of it is right');
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
    ['too short a span', { ...exact, L_1: '28 ± 0', f: '800 ± 0' }, {}, 'too short for this check'],
    ['too stiff', { ...stiff, L_1: '40 ± 0', f: '500 ± 0' }, { ends: 'pinned' }, 'too stiff for its note'],
    ['too far pressed', { L_1: '300', F: '3', y: '30' }, { by: 'press' }, 'press less far'],
    ['no room', { ...exact, f: '95', M: '3 kg', a: '10000' }, {}, 'no tension suits this belt'],
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
  };
  const found = run(given, { by: 'press' });
  expect(found.verdict.state).toBe('beyond');
  expect(words(found)).toMatch(/Press to the same 7.* aim at .* on the scale/);
});

it('asks for the reading where there is none', () => {
  expect(run({ L_1: '250' }).cannot).toMatch(/note of the plucked span/);
  expect(run({ L_1: '250', F: '2' }, { by: 'press' }).cannot).toMatch(/way the middle moves/);
});

describe('the belts', () => {
  it.each(Object.entries(belts))('%s: every value has a source, a place in order and a half-width', (_, row) => {
    const columns = [row.pitch, row.height, row.mass, row.least, row.allowable, row.springRate];
    for (const { value, half, from } of columns) {
      expect(value).toBeGreaterThan(0);
      expect(half).toBeGreaterThanOrEqual(0);
      expect(half).toBeLessThan(0.35 * value);
      expect(printCitation(from)).toMatch(/table|ISO|DIN|Common practice/);
    }
    expect(row.least.value).toBeLessThan(row.allowable.value);
    expect(row.height.value).toBeLessThan(row.pitch.value);
  });

  it('bring their values to the inputs named, and none where another belt is meant', () => {
    const options = beltOptions({ mass: 'm_0', pitch: 'p' });
    expect(options.straight5.set).toEqual({ m_0: [21, 1], p: [5, 0] });
    expect(options.other.set).toBeUndefined();
    expect(TABLE_WIDTH).toBe(10);
  });
});
