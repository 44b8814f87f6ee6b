import { describe, expect, it } from 'vitest';
import { calculators, situation } from '../../../test/support/calculators';
import { coarseThreads } from '../../reference/threads';
import type { Choices } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import { choices } from './choices';
import { model } from './model';
import { clockOf, spotOf } from './turning';
import words from './words/en';

const tram = calculators.find(([id]) => id === 'bed-tram')![1];
type Line = readonly [x: number, y: number, z: number | string];

function measure(lines: readonly Line[], choices: Choices = {}, more: Record<string, string> = {}) {
  const given: Record<string, string> = { ...more };
  lines.forEach(([x, y, z], i) => {
    Object.assign(given, { [`x_${i + 1}`]: `${x} ± 0`, [`y_${i + 1}`]: `${y} ± 0`, [`z_${i + 1}`]: String(z) });
  });
  return evaluate(tram, situation(tram, given, choices));
}

const corners = (fl: number, fr: number, br: number, bl: number, half = 0.01): Line[] => [
  [30, 30, `${fl} ± ${half}`],
  [190, 30, `${fr} ± ${half}`],
  [190, 190, `${br} ± ${half}`],
  [30, 190, `${bl} ± ${half}`],
];
const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;
const moves = (found: ReturnType<typeof evaluate>) =>
  Object.fromEntries(
    (found.instruction?.movements ?? []).map(({ part, direction, amount }) => [part, { direction, amount }]),
  );

describe('which way a knob is turned', () => {
  const high: Line[] = corners(0, 0, 0, 0.6, 0.001);

  // Right-hand screw theory, and nuts on studs: a nut run up a hanging screw from below pulls the bed down. Seen from above
  // that is anticlockwise. The others by the same rule.
  it.each([
    ['nut', 'right', 'anticlockwise'],
    ['nut', 'left', 'clockwise'],
    ['screw', 'right', 'clockwise'],
    ['screw', 'left', 'anticlockwise'],
    ['rest', 'right', 'clockwise'],
    ['rest', 'left', 'anticlockwise'],
    ['z', 'right', 'anticlockwise'],
    ['z', 'left', 'clockwise'],
    ['raises', 'left', 'anticlockwise'],
    ['lowers', 'left', 'clockwise'],
  ])('to lower the bed, %s with a %s-hand thread: %s, seen from above', (build, hand, way) => {
    const found = moves(measure(high, { build, hand, keep_4: '2' }));
    expect(found['back left adjuster']?.direction).toBe(way);
  });

  it('mirrors when the readings mirror, up and down', () => {
    for (const keep_4 of ['1', '3', 'all']) {
      const up = moves(measure(corners(0, 0.3, 0.5, 0.2), { keep_4 }));
      const down = moves(measure(corners(0, -0.3, -0.5, -0.2), { keep_4 }));
      expect(Object.keys(up).length).toBeGreaterThan(1);
      expect(Object.keys(down)).toEqual(Object.keys(up));
      for (const [part, { direction, amount }] of Object.entries(up)) {
        expect(down[part]!.direction).toBe(opposite[direction as 'clockwise']);
        expect(down[part]!.amount).toBeCloseTo(amount, 12);
      }
    }
  });

  it('mirrors when the readings mirror, left and right', () => {
    const there = moves(measure(corners(0, 0.3, 0.5, 0.2), { keep_4: 'all' }));
    const back = moves(measure(corners(0.3, 0, 0.2, 0.5), { keep_4: 'all' }));
    for (const [part, move] of Object.entries(there)) {
      const swapped = part.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left'));
      expect(back[swapped]!.direction).toBe(move.direction);
      expect(back[swapped]!.amount).toBeCloseTo(move.amount, 12);
    }
  });

  it('turns the other way for gaps than for heights', () => {
    const heights = moves(measure(corners(0, 0.3, 0.5, 0.2), { by: 'height' }));
    const gaps = moves(measure(corners(0, 0.3, 0.5, 0.2), { by: 'gap' }));
    for (const [part, { direction }] of Object.entries(heights))
      expect(gaps[part]!.direction).toBe(opposite[direction as 'clockwise']);
  });
});

describe('after the turns', () => {
  // Raising each adjuster by turn × pitch, as a plate moves on three points, leaves no tilt: the fit of the moved points.
  it.each(['front', 'back'])('a plate on three adjusters (%s) is level', (layout) => {
    for (const keep_3 of ['1', '2', '3', 'all']) {
      const lines: Line[] = [
        [20, 15, 0.31],
        [200, 30, -0.12],
        [180, 205, 0.08],
        [25, 190, 0.44],
        [110, 100, 0.2],
      ];
      const found = measure(lines, { layout, keep_3 });
      const value = (symbol: string): number => {
        const outcome = found.outcomes[symbol];
        if (!outcome?.ok) throw new Error(symbol);
        return outcome.value;
      };
      const [A, B, C] = [1, 2, 3].map((i) => ({
        x: value(`X_${i}`),
        y: value(`Y_${i}`),
        lift: (value(`psi_${i}`) / (2 * Math.PI)) * 0.7e-3,
      })) as [Corner, Corner, Corner];
      const moved = lines.map(([x, y, z]): Line => [x, y, Number(z) + 1e3 * lift(x / 1e3, y / 1e3, A, B, C)]);
      const after = measure(moved, { layout, keep_3 });
      for (const symbol of ['i_x', 'i_y']) {
        const outcome = after.outcomes[symbol];
        expect(outcome?.ok && Math.abs(outcome.value)).toBeLessThan(1e-12);
      }
      const F = after.outcomes.F;
      expect(F?.ok && F.value).toBeCloseTo(value('F'), 12);
    }
  });
});

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly lift: number;
}

/** Lift of a stiff plate at a place, from its lifts at three: barycentric coordinates. */
function lift(x: number, y: number, a: Corner, b: Corner, c: Corner): number {
  const area = (p: { x: number; y: number }, q: { x: number; y: number }, r: { x: number; y: number }): number =>
    (q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y);
  const here = { x, y };
  return (area(here, b, c) * a.lift + area(a, here, c) * b.lift + area(a, b, here) * c.lift) / area(a, b, c);
}

/** What is told: the key of the order, its arguments, and its steps by key. */
function told(found: ReturnType<typeof evaluate>) {
  const { say, args, steps } = found.instruction!.order;
  return { say, args, keys: steps.map((one) => one.say), step: (key: string) => steps.find((one) => one.say === key) };
}

describe('what is said', () => {
  it('starts with the farthest off, and with four brings the last to touch', () => {
    const found = measure(corners(0, 0.1, 0.4, 0.25, 0.002), { keep_4: '1' });
    expect(found.verdict.state).toBe('beyond');
    const { say, args, keys, step } = told(found);
    expect(say).toBe('turn');
    expect(args).toMatchObject({
      name: 'back right',
      turn: { way: 'anticlockwise', clock: { whole: 0, fraction: '5/8', off: 'under' } },
      more: 2,
    });
    expect(keys).toEqual([
      'liftNozzle',
      'fromAbove',
      'fourthLast',
      'turnOne',
      'turnOne',
      'turnLast',
      'leaveOne',
      'middleMoves',
      'measureAll',
      'leftOver',
    ]);
    const turned = found.instruction!.order.steps.filter((one) => one.say === 'turnOne').map(({ args }) => args.at);
    expect(turned).toMatchObject([{ name: 'back right' }, { name: 'back left' }]);
    expect(step('fourthLast')?.args.at).toMatchObject({ name: 'front right' });
    expect(step('turnLast')?.args.at).toMatchObject({ name: 'front right' });
    expect(step('leaveOne')?.args).toMatchObject({ at: { name: 'front left' }, why: 'still' });
    expect(step('middleMoves')?.args.raises).toBe(false);
    expect(found.instruction!.sentence).toMatch(/just under 5\/8 turn .*\(\d+(\.\d)?°\)/);
  });

  it('names the place of an adjuster that has only a number', () => {
    const places = { X_a: '10', Y_a: '10', X_b: '210', Y_b: '10', X_c: '110', Y_c: '210' };
    const { args, step } = told(measure(corners(0, 0, 0.5, 0.5), { layout: 'three', keep_3: '1' }, places));
    expect(args.name).toBe('third');
    expect(step('turnOne')?.args.at).toEqual({ name: 'third', spot: 'back middle' });
    expect(told(measure(corners(0, 0, 0.5, 0.5))).step('turnOne')?.args.at).toMatchObject({ spot: undefined });
  });

  it('says which turns are less than a hand can set, and which less than the readings tell', () => {
    const small = measure(corners(0, 0.01, 0.3, 0.29, 0.001), { keep_4: '1' });
    expect(told(small).step('returnLast')?.args).toMatchObject({ at: { name: 'front right' }, why: 'small' });
    expect(moves(small)).not.toHaveProperty('front right adjuster');
    const rough = measure(corners(0, 0.1, 0.5, 0.4, 0.1), { keep_4: '1' });
    expect(told(rough).step('returnLast')?.args).toMatchObject({ at: { name: 'front right' }, why: 'doubt' });
  });

  it('leaves all where none has to turn by as much as a hand can set', () => {
    const found = measure(corners(0, 0.06, 0.06, 0, 0.001), { keep_4: 'all', build: 'z' }, { phi_h: '10' });
    expect(found.verdict.state).toBe('beyond');
    expect(told(found).say).toBe('finerThread');
    expect(found.instruction!.movements).toEqual([]);
  });

  it('judges tilt and warp apart', () => {
    const bowl = measure([...corners(0, 0, 0, 0), [110, 110, '-0.3 ± 0.01']]);
    expect(bowl.verdict.checks.map(({ state }) => state)).toEqual(['within', 'within', 'beyond']);
    expect(told(bowl).say).toBe('turnNothing');
    expect(told(bowl).keys).toEqual(['leftOver', 'freeBed', 'shimLowPlace']);
    expect((told(bowl).args.left as { si: number }).si).toBeCloseTo(0.3e-3, 9);
    const { low } = told(bowl).step('leftOver')!.args as { low: { point: number; by: { si: number } } };
    expect(low.point).toBe(5);
    expect(low.by.si).toBeCloseTo(-0.24e-3, 9);
    expect(bowl.instruction!.movements).toEqual([]);
    expect(measure([...corners(0, 0, 0, 0), [110, 110, '-0.3']], { judge: 'tilt' }).verdict.state).toBe('within');
  });

  it('is too close to call where the doubt is larger than what matters', () => {
    const rough = measure(corners(0, 0.02, 0.05, 0.03, 0.1));
    expect(rough.verdict.state).toBe('too close');
    expect(rough.instruction).toMatchObject({ measureAgain: true });
    expect(rough.instruction!.movements).toEqual([]);
    const warped = measure(corners(0.025, -0.025, 0.025, -0.025, 0.01), { judge: 'both' });
    expect(warped.verdict.checks.map(({ state }) => state)).toEqual(['within', 'within', 'within']);
    const doubtful = measure(corners(0.05, -0.05, 0.05, -0.05, 0.01));
    expect(doubtful.verdict.checks.at(-1)?.state).toBe('too close');
    expect(told(doubtful)).toMatchObject({ say: 'flatUnsure', keys: ['leftOverUnsure', 'pointsFinerTool'] });
  });

  it('has no verdict on warp from three points, and says so', () => {
    const three = corners(0, 0, 0, 0).slice(0, 3);
    const both = measure(three);
    expect(both.verdict.state).toBe('none');
    expect(told(both).keys).toContain('threePoints');
    expect(measure(three, { judge: 'tilt' }).verdict.state).toBe('within');
  });

  it('refuses too few points, points in one line, and a height without a place', () => {
    const { problems } = words;
    expect(measure([]).cannot).toBe(problems.tooFew({ points: 0 }));
    expect(measure(corners(0, 0, 0, 0).slice(0, 2)).cannot).toBe(problems.tooFew({ points: 2 }));
    expect(
      measure([
        [0, 0, 0],
        [50, 50, 0.1],
        [100, 100, 0],
      ]).cannot,
    ).toBe(problems.inOneLine);
    const found = model.compute({ z_1: { value: 1e-4, u: 0, shape: 'normal' } }, {});
    expect(found).toEqual({ ok: false, problem: { say: 'noPlace', args: { line: 1 } } });
    expect(evaluate(tram, situation(tram, { z_1: '0.1' })).cannot).toMatch(/1/);
  });

  it('counts only lines with a reading: places filled in beforehand wait', () => {
    const given: Record<string, string> = {};
    corners(0, 0.1, 0.2, 0.1).forEach(([x, y, z], i) =>
      Object.assign(given, { [`x_${i + 1}`]: String(x), [`y_${i + 1}`]: String(y), [`z_${i + 1}`]: String(z) }),
    );
    const bare = evaluate(tram, situation(tram, given)).outcomes.i_x;
    const more = evaluate(tram, situation(tram, { ...given, x_5: '110', y_5: '110' })).outcomes.i_x;
    expect(more).toEqual(bare);
  });
});

describe('the doubt', () => {
  // Four corners, equal doubt: each slope rests on two pairs 160 mm apart, so u = u_z / 160 (JCGM 100, 5.1.2, by hand).
  it('of a slope is that of the heights over the distance', () => {
    const outcome = measure(corners(0, 0, 0, 0)).outcomes.i_x;
    expect(outcome?.ok && outcome.u).toBeCloseTo(0.01e-3 / Math.sqrt(3) / 0.16, 12);
  });

  it('of the adjuster left alone is none: the others are counted from it', () => {
    const outcome = measure(corners(0, 0.1, 0.2, 0.1), { keep_4: '1' }).outcomes.psi_1;
    expect(outcome).toMatchObject({ ok: true, value: 0, u: 0 });
  });
});

describe('a turn on a clock face', () => {
  const turn = 2 * Math.PI;

  it.each([
    [0.08, 0, '1/12', undefined],
    [0.26, 0, '1/4', undefined],
    [0.28, 0, '1/4', 'over'],
    [0.49, 0, '1/2', undefined],
    [0.97, 1, undefined, 'under'],
    [1, 1, undefined, undefined],
    [1.3, 1, '1/3', 'under'],
    [2.26, 2, '1/4', undefined],
    [5.99, 6, undefined, undefined],
    [-0.25, 0, '1/4', undefined],
  ])('%d of a turn', (part, whole, fraction, off) => {
    expect(clockOf(part * turn)).toEqual({ whole, fraction, off });
  });

  it('is none below a twenty-fourth', () => {
    expect(clockOf(0.02 * turn)).toBeUndefined();
  });

  it('is one turn up to one, turns above it', () => {
    const count = (part: number) => words.figure.adjuster(2, clockOf(part * turn));
    expect([0.02, 0.25, 1.5, 2].map(count)).toEqual(['2: leave', '2: 1/4', '2: 1 1/2', '2: 2']);
  });
});

it('says where on the bed', () => {
  expect(spotOf(10, 10, 200, 200)).toBe('front left');
  expect(spotOf(100, 190, 200, 200)).toBe('back middle');
  expect(spotOf(190, 100, 200, 200)).toBe('right middle');
  expect(spotOf(100, 100, 200, 200)).toBe('middle');
});

describe('the pitches', () => {
  it.each(Object.entries(choices.thread.options))('%s is ISO 261’s', (name, { set }) => {
    const thread = coarseThreads.find((one) => one.name === name);
    expect(set).toEqual({ P_s: thread?.P });
  });
});
